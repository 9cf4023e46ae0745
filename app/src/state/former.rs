//! What was kept in a former shape, written as it is kept now.
//!
//! In shape 2 days had no lead. In shape 3 an engine brake always had an exponent, no truck said at which
//! speed its box shifts up, and no engine speed in top gear was kept.

use crate::browser::theme::Theme;
use crate::format::Units;
use serde::de::DeserializeOwned;
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::Entry;
use solver::truck::{AxleGroup, Driveline, EnteredTable, Transmission};

/// Bytes that are read from the front and written anew.
struct Anew<'a> {
    from: &'a [u8],
    to: Vec<u8>,
}

/// What the page remembers; `has_lead` in shape 3.
pub(super) fn kept(bytes: &[u8], has_lead: bool) -> Option<Vec<u8>> {
    let mut anew = Anew { from: bytes, to: Vec::with_capacity(bytes.len() + 64) };
    anew.pass::<(Units, Theme)>()?;
    anew.truck()?;
    anew.day(has_lead)?;
    anew.pass::<(Option<String>, Option<f64>)>()?;
    // No engine speed in top gear.
    anew.to.push(0);
    let trucks = anew.from;
    anew.pass::<usize>()?;
    let (count, _) = postcard::take_from_bytes::<usize>(trucks).ok()?;
    for _ in 0..count {
        anew.truck()?;
    }
    Some(anew.to)
}

/// The road beside the one shown, behind the number of its shape; `has_lead` in its shape 2. What stands
/// behind truck and day is as it was.
pub(super) fn beside(bytes: &[u8], shape_now: u8, has_lead: bool) -> Option<Vec<u8>> {
    let mut anew = Anew { from: bytes.get(1..)?, to: vec![shape_now] };
    anew.truck()?;
    anew.day(has_lead)?;
    let rest = anew.from;
    anew.to.extend_from_slice(rest);
    Some(anew.to)
}

impl Anew<'_> {
    /// Passes on what has not changed.
    fn pass<T: DeserializeOwned>(&mut self) -> Option<()> {
        let (_, rest) = postcard::take_from_bytes::<T>(self.from).ok()?;
        let (passed, rest) = self.from.split_at(self.from.len() - rest.len());
        self.to.extend_from_slice(passed);
        self.from = rest;
        Some(())
    }

    fn numbers(&mut self, count: usize) -> Option<()> {
        (0..count).try_for_each(|_| self.pass::<f64>())
    }

    fn truck(&mut self) -> Option<()> {
        self.pass::<String>()?;
        self.numbers(7)?;
        self.pass::<Vec<(f64, f64)>>()?;
        self.numbers(2)?;
        // No speed at which the box shifts up.
        self.to.push(0);
        self.pass::<Vec<f64>>()?;
        self.numbers(2)?;
        self.pass::<Transmission>()?;
        self.retarder()?;
        self.numbers(3)?;
        self.pass::<(Vec<AxleGroup>, Vec<Entry>)>()
    }

    fn retarder(&mut self) -> Option<()> {
        let kind = *self.from.first()?;
        self.pass::<u8>()?;
        match kind {
            0 => return Some(()),
            1 => self.brake()?,
            2 => self.pass::<Driveline>()?,
            3 => {
                self.brake()?;
                self.pass::<Driveline>()?;
            }
            _ => return self.pass::<EnteredTable>(),
        }
        self.pass::<Vec<f64>>()
    }

    fn brake(&mut self) -> Option<()> {
        self.pass::<u8>()?;
        self.numbers(2)?;
        // `Some`: every engine brake had an exponent.
        self.to.push(1);
        self.numbers(2)
    }

    fn day(&mut self, has_lead: bool) -> Option<()> {
        self.pass::<Surface>()?;
        self.numbers(6)?;
        self.pass::<ServiceBrakes>()?;
        if has_lead {
            self.pass::<Lead>()?;
        } else {
            self.to.push(0);
        }
        self.pass::<(f64, Load, f64)>()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entries::Entries;
    use crate::state::kept::Kept;
    use serde::Serialize;
    use solver::day::Day;
    use solver::truck::{EngineBrake, Preset, Retarder, RetarderKind, TruckSpec};

    /// A retarder in the former shape.
    #[derive(Serialize)]
    enum Was<'a> {
        None,
        Engine(Brake, &'a [f64]),
        Driveline(&'a Driveline, &'a [f64]),
        Both(Brake, &'a Driveline, &'a [f64]),
        Table(&'a EnteredTable),
    }

    #[derive(Serialize)]
    enum Brake {
        CompressionRelease([f64; 4]),
        ExhaustValve([f64; 4]),
    }

    fn brake(it: &EngineBrake) -> Brake {
        let curve = it.curve();
        let exponent = curve.exponent.expect("there always was one");
        let numbers = [curve.peak_power_kw, curve.peak_rpm, exponent, curve.cut_out_rpm];
        match it {
            EngineBrake::CompressionRelease(_) => Brake::CompressionRelease(numbers),
            EngineBrake::ExhaustValve(_) => Brake::ExhaustValve(numbers),
        }
    }

    fn put<T: Serialize>(to: &mut Vec<u8>, it: &T) {
        to.extend(postcard::to_allocvec(it).expect("plain data"));
    }

    fn put_truck(to: &mut Vec<u8>, it: &TruckSpec) {
        let numbers = [
            it.gross_mass_kg,
            it.drive_axle_mass_kg,
            it.rolling_radius_m,
            it.wheel_inertia_kg_m2,
            it.rolling_resistance,
            it.drag_area_m2,
            it.displacement_l,
        ];
        put(to, &(&it.name, numbers, &it.full_load, it.lowest_rpm, it.highest_rpm));
        put(to, &(&it.gears, it.axle_ratio, it.axle_efficiency, it.transmission));
        put(
            to,
            &match &it.retarder {
                Retarder::None => Was::None,
                Retarder::Engine { brake: it, stages } => Was::Engine(brake(it), stages),
                Retarder::Driveline { retarder, stages } => Was::Driveline(retarder, stages),
                Retarder::Both { brake: it, retarder, stages } => Was::Both(brake(it), retarder, stages),
                Retarder::Table(table) => Was::Table(table),
            },
        );
        put(to, &(it.retarder_delay_s, it.retarding_scale, it.rollover_threshold_g));
        put(to, &(&it.axle_groups, &it.assumed));
    }

    fn put_day(to: &mut Vec<u8>, it: &Day, has_lead: bool) {
        let numbers = [
            it.air_c,
            it.brakes_at_start_c,
            it.headwind_kmh,
            it.speed_limit_kmh,
            it.reserve,
            it.heat_limit_c,
        ];
        put(to, &(it.surface, numbers, it.service_brakes));
        if has_lead {
            put(to, &it.lead);
        }
        put(to, &(it.superelevation, it.load, it.brake_check_stop_min));
    }

    fn trucks() -> Vec<TruckSpec> {
        let with = |kind| {
            let mut spec = Preset::CoachConverter.spec();
            spec.take_retarder(kind);
            spec.curve_by_exponent(true);
            spec
        };
        RetarderKind::ALL.map(with).to_vec()
    }

    #[test]
    fn trucks_and_days_of_former_shapes_are_as_they_were() {
        for has_lead in [false, true] {
            let mut entries = Entries::of(Preset::Tipper26);
            entries.truck.curve_by_exponent(true);
            entries.day = Day { headwind_kmh: 7.0, superelevation: 0.04, load: Load::Empty, ..Day::USUAL };
            if has_lead {
                entries.day.lead = Lead::Untouched;
            }
            let now = Kept { units: Units::Imperial, theme: Theme::Night, entries, trucks: trucks() };
            let mut was = Vec::new();
            put(&mut was, &(now.units, now.theme));
            put_truck(&mut was, &now.entries.truck);
            put_day(&mut was, &now.entries.day, has_lead);
            let share = now.entries.truck.drive_axle_mass_kg / now.entries.truck.gross_mass_kg;
            put(&mut was, &(&now.entries.preset, Some(share), now.trucks.len()));
            now.trucks.iter().for_each(|truck| put_truck(&mut was, truck));
            let anew = kept(&was, has_lead).expect("it is sound");
            assert_eq!(postcard::from_bytes::<Kept>(&anew), Ok(now), "has a lead: {has_lead}");
            assert_eq!(kept(&was[..was.len() / 2], has_lead), None);
        }
    }

    #[test]
    fn a_road_beside_keeps_its_truck_and_day() {
        for (has_lead, truck) in [false, true].into_iter().zip(trucks()) {
            let mut was = vec![1];
            put_truck(&mut was, &truck);
            put_day(&mut was, &Day::USUAL, has_lead);
            was.extend([9, 8, 7]);
            let anew = beside(&was, 3, has_lead).expect("it is sound");
            let mut wanted = vec![3];
            put(&mut wanted, &(&truck, Day::USUAL));
            wanted.extend([9, 8, 7]);
            assert_eq!(anew, wanted);
        }
    }
}
