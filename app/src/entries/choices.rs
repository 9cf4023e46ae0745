//! What is chosen of the truck from lists and buttons, and what then follows.

use super::Entries;
use solver::limits::Entry;
use solver::truck::{BrakeKind, RetarderKind, Transmission, TyreSize};

impl Entries {
    /// Takes another kind of retarder, with assumed numbers to be written over.
    pub fn take_retarder(&mut self, kind: RetarderKind) {
        self.truck.take_retarder(kind);
        self.preset = None;
    }

    /// Takes a set of gears.
    pub fn take_gears(&mut self, gears: &[f64]) {
        self.truck.gears = gears.to_vec();
        self.preset = None;
        self.keep_top_gear_speed();
    }

    /// Takes tyres of this size on the driven axles.
    pub fn take_tyres(&mut self, size: &TyreSize) {
        self.truck.set(Entry::RollingRadius, size.rolling_radius_m());
        self.preset = None;
        self.keep_top_gear_speed();
    }

    /// An engine speed in top gear that was entered stays as it is: the axle ratio follows.
    pub(super) fn keep_top_gear_speed(&mut self) {
        if let Some(rpm) = self.top_gear_rpm {
            self.truck.enter(Entry::TopGearSpeed, rpm);
        }
    }

    /// Gives the retarder's lever so many positions.
    pub fn take_lever(&mut self, positions: u8) {
        self.truck.set_lever_positions(positions);
        self.preset = None;
    }

    /// Gives the engine brake a power by an exponent, or the declared one.
    pub fn take_shape(&mut self, by_exponent: bool) {
        self.truck.curve_by_exponent(by_exponent);
        self.preset = None;
    }

    /// Gives an axle group so many axles with this brake; a group behind the last one is a trailer that is
    /// put on.
    pub fn take_axles(&mut self, group: usize, axles: u8, brake: BrakeKind) {
        let mass_before = self.truck.drive_axle_mass_kg;
        if group < self.truck.axle_groups.len() {
            self.truck.set_axles(group, axles, brake);
        } else if axles > 0 {
            self.truck.hook_on(axles, brake);
        }
        match self.drive_share {
            Some(_) => self.drive_share = Some(self.truck.drive_axle_mass_kg / self.truck.gross_mass_kg),
            None => self.truck.set(Entry::DriveAxleMass, mass_before),
        }
        self.preset = None;
    }

    /// Takes another gearbox; the gears stay.
    pub fn take_transmission(&mut self, transmission: Transmission) {
        self.truck.transmission = transmission;
        self.preset = None;
        let own = [Entry::LockUpGear, Entry::LockUpSpeed, Entry::ShiftsUpSpeed];
        self.truck.assumed.retain(|entry| !own.contains(entry));
        let has: Vec<Entry> = own.into_iter().filter(|entry| self.get(*entry).is_some()).collect();
        self.truck.assumed.extend(has);
    }
}

#[cfg(test)]
mod tests;
