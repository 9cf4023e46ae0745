//! What is put together of messages: of what was studied, entered, found and taught.

use super::grid::*;
use super::samples::*;
use super::{Dump, say};
use crate::entries::EntryProblem;
use crate::outline::Blank;
use solver::plan::{Carried, Change};
use solver::road::PlaceKind;
use solver::study::{
    Adjustment, DescentSureness, Input, Lost, Measured, RampAhead, RideEnd, Slip, SlowFor, Slowing,
};
use solver::truck::{BrakeKind, RetarderKind};
use solver::units::{Celsius, Joules, Kilograms, Metres, MetresPerSecond, RevPerMin, Seconds, Watts};

pub(super) fn all(d: &mut Dump) {
    studied(d);
    entered(d);
    roads(d);
    taught(d);
}

fn studied(d: &mut Dump) {
    let mut changes = vec![Change { mass: None, retarding: None, reserve: None, cool_to: None }];
    for (mass, retarding, reserve, cool_to) in [
        (Some(20_050.0), Some(1.231), Some(0.049), Some(150.0)),
        (Some(20_050.0), None, None, None),
        (None, Some(1.231), None, None),
        (None, None, Some(0.049), None),
        (None, None, None, Some(150.0)),
    ] {
        let (mass, cool_to) = (mass.map(Kilograms), cool_to.map(Celsius));
        changes.push(Change { mass, retarding, reserve, cool_to });
    }
    say!(d w change(change at &changes, reserve in [0.15], units in units()));
    let carried = Carried { at: Metres(1_234.0), speed: MetresPerSecond(9.0) };
    say!(d w carried(carried in [carried], units in units()));
    let mut sures = Vec::new();
    for (held, kept) in [(256, 256), (256, 12), (0, 0), (1, 255), (200, 256)] {
        for matters in [
            vec![],
            vec![(Input::Grade, 0.9)],
            vec![(Input::Cooling, 0.8), (Input::Mass, 0.1), (Input::Wind, 0.06)],
            Input::ALL.map(|it| (it, 0.3)).to_vec(),
        ] {
            sures.push(DescentSureness {
                held,
                kept,
                after_stop_c: (101.0, 149.0),
                fastest: (5.0, 6.0),
                matters,
            });
        }
    }
    say!(d w sure(sure at &sures, runs in [256], units in units()));
    say!(d w sure_in_short(sure at &sures, runs in [256]));
    let mut losts = Vec::new();
    let at = |metres: Option<f64>| metres.map(Metres);
    for stop in [None, Some(4_000.0), Some(9_000.0)] {
        for held in [None, Some(1_000.0), Some(5_000.0)] {
            for neither in [None, Some(1_000.0), Some(4_000.0)] {
                for ramps in [0, 1, 2] {
                    let ramp = |number: u8| RampAhead {
                        at: Metres(5_000.0 + f64::from(number) * 700.0),
                        lost_at: Metres(4_000.0),
                        speed: MetresPerSecond(33.0),
                        needs: Metres(123.0),
                    };
                    losts.push(Lost {
                        stop_until: at(stop),
                        held_from: at(held),
                        neither_from: at(neither),
                        ramps: (0..ramps).map(ramp).collect(),
                    });
                }
            }
        }
    }
    say!(d w lost(lost at &losts, crest_m in [1_000.0], foot_m in [9_000.0], units in units()));
    let adjustments: Vec<Adjustment> = axle_places()
        .into_iter()
        .zip([(true, BrakeKind::Drum), (false, BrakeKind::Disc), (true, BrakeKind::Drum)])
        .map(|(place, (kept, brake))| Adjustment {
            place,
            brake,
            hottest: Celsius(234.0),
            hottest_after_stop: Celsius(345.0),
            kept,
        })
        .collect();
    say!(d w adjustment(all in [&adjustments[..0], &adjustments[..1], &adjustments[1..]], units in units()));
    let mut slowings = Vec::new();
    let name = || ["", "Kestrel"].map(str::to_owned);
    let whats = [SlowFor::Curve(31.0), SlowFor::Limit]
        .into_iter()
        .chain(name().map(SlowFor::Stop))
        .chain(name().map(SlowFor::Town))
        .chain(name().map(SlowFor::BrakeCheck));
    for what in whats {
        for (to, lift_off, cut_out) in [
            (0.0, None, None),
            (8.0, Some((Metres(1_000.0), MetresPerSecond(20.0))), None),
            (8.0, Some((Metres(1_000.0), MetresPerSecond(20.0))), Some(MetresPerSecond(3.0))),
        ] {
            slowings.push(Slowing {
                what: what.clone(),
                at: Metres(1_234.0),
                to: MetresPerSecond(to),
                gear: gears()[4],
                lift_off,
                cut_out,
                brakes_need: Metres(123.0),
                brakes_after: Celsius(134.0),
            });
        }
    }
    say!(d w slowing(slowing at &slowings, units in units()));
    let measured = Measured {
        engine_speed: RevPerMin(1_890.0),
        power: Watts(198e3),
        assumed: Watts(234e3),
        factor: 0.846,
        scale: 0.846,
    };
    say!(d w measured(measured at &[measured], units in units()));
}

fn entered(d: &mut Dump) {
    say!(d w asked(entry in entries(), units in units()));
    say!(d w retarder_table_hint(kind in RetarderKind::ALL));
    say!(d w range(low in ["1"], high in ["2"], unit in ["", "t"]));
    for entry in entries() {
        let problems = [EntryProblem::NotANumber(entry), EntryProblem::OutOfRange(entry)];
        say!(d w problem(problem in problems, typed in ["", "⟨typed⟩"], units in units()));
    }
    for error in truck_errors() {
        say!(d w problem(problem in [EntryProblem::Truck(error)], typed in [""], units in units()));
    }
    say!(d w kind_caution(kind in PlaceKind::ALL));
}

fn roads(d: &mut Dump) {
    say!(d w ends(start_m in [1_234.0], end_m in [234.0], units in units()));
    say!(d w ends_spoken(start_m in [1_234.0], end_m in [234.0], units in units()));
    say!(d w climbs(start_m in [1_234.0], end_m in [2_340.0], units in units()));
    let blanks = [0.0, 4.9, 5.0, 123.0].map(|drop_m| Blank { length_m: 1_234.0, drop_m });
    say!(d w blank(blank at &blanks, units in units()));
    for case in cases() {
        for class in classes() {
            let mut road = case.road.clone();
            road.quality.class = class;
            say!(d w quality(road at &[road], units in units()));
        }
    }
    say!(d w where_found(from_m in [0.0, 1_234.0], to_m in [None, Some(0.0), Some(2_345.0)], units in units()));
}

fn taught(d: &mut Dump) {
    say!(d c rate(times in [0.5, 1.0, 2.0, 16.0]));
    say!(d c slip(slip in Slip::ALL, units in units()));
    let end = |seconds: f64, stop: f64, over: Option<f64>| RideEnd {
        time: Seconds(seconds),
        brakes_at_start: Celsius(66.0),
        hottest: Celsius(stop - 80.0),
        hottest_after_stop: Celsius(stop),
        service_work: Joules(5e6),
        service_on_descents: Joules(4e6),
        holding_work: Joules(5e8),
        above_card: MetresPerSecond(1.0),
        over_limit_from: over.map(Metres),
        overspeed_from: None,
        lost_at: None,
        without_safe_speed: 0,
        stalled: false,
    };
    let right = end(600.0, 200.0, None);
    let wrongs = [
        end(600.2, 200.0, None),
        end(540.0, 320.0, Some(4_000.0)),
        end(900.0, 220.0, None),
        end(570.0, 500.0, Some(0.0)),
        end(629.0, 200.0, None),
    ];
    for wrong in wrongs {
        say!(d c pair_end(right at &[right], wrong at &[wrong], slip in Slip::ALL, units in units()));
    }
    say!(d c question(exercise at &exercises(), units in units()));
    say!(d c solution(exercise at &exercises(), units in units()));
    say!(d c given(exercise at &exercises(), units in units()));
    say!(d c steps(exercise at &exercises(), units in units()));
}
