//! Whether the truck worked out for is the person's own, or still the one that the page begins with.
//!
//! Any other truck was chosen, entered, or brought by a link, a file or a project. Of the one that the page
//! begins with a person has to say that it is theirs: until then each result and each export says that it is
//! an example.

use super::kept;
use super::signals::Signals;
use crate::entries::is_example;
use leptos::prelude::*;
use solver::truck::TruckSpec;

/// Whether a truck is one's own; `example_is_mine` where a person said so of the example.
fn is_yours(truck: &TruckSpec, example_is_mine: bool) -> bool {
    example_is_mine || !is_example(truck)
}

impl Signals {
    /// Whether this is the example that nobody said is theirs. Tracked.
    pub(crate) fn is_not_yours(&self, truck: &TruckSpec) -> bool {
        !is_yours(truck, self.entered.example_is_mine.get())
    }

    /// Whether that holds of the truck entered. Tracked.
    pub(crate) fn asks_for_truck(&self) -> bool {
        self.entered.entries.with(|entries| self.is_not_yours(&entries.truck))
    }

    /// A person chose or changed the truck entered, or says that it is theirs.
    pub(crate) fn confirm_truck(&self) {
        let asks = self.entered.entries.with_untracked(|entries| is_example(&entries.truck));
        if asks && !self.entered.example_is_mine.get_untracked() {
            self.entered.example_is_mine.set(true);
            kept::keep_example_is_mine();
        }
    }

    /// Opens the drawer of truck and day, at one of its fields where an id is given.
    pub(crate) fn open_drawer(&self, field: Option<String>) {
        self.entered.drawer.set(true);
        self.entered.sought.set(field);
    }
}

#[cfg(test)]
mod tests {
    use super::is_yours;
    use crate::entries::{EXAMPLE, Entries, Field};
    use crate::format::Units;
    use solver::day::Day;
    use solver::limits::Entry;
    use solver::truck::{BrakeKind, Preset, RetarderKind, Transmission};

    #[test]
    fn only_the_truck_that_the_page_begins_with_is_asked_about() {
        for preset in Preset::ALL {
            let truck = Entries::of(preset).truck;
            assert_eq!(is_yours(&truck, false), preset != EXAMPLE, "{preset:?}");
            assert!(is_yours(&truck, true));
        }
    }

    #[test]
    fn another_day_or_other_units_make_no_truck_ones_own() {
        let mut entries = Entries::of(EXAMPLE);
        entries.day = Day { speed_limit_kmh: 60.0, ..Day::USUAL };
        let bytes = postcard::to_allocvec(&entries).expect("plain data");
        let again: Entries = postcard::from_bytes(&bytes).expect("as kept");
        assert!(!is_yours(&again.truck, false));
    }

    #[test]
    fn whoever_kept_entries_of_their_own_is_not_asked() {
        let entered: [fn(&mut Entries); 6] = [
            |it| it.take(Field::Number(Entry::GrossMass), "38", Units::Metric).expect("in range"),
            |it| it.take(Field::Number(Entry::RatedPower), "300", Units::Metric).expect("in range"),
            |it| it.take_retarder(RetarderKind::ExhaustValve),
            |it| it.take_axles(1, 1, BrakeKind::Drum),
            |it| it.take_transmission(Transmission::Automated),
            |it| "Number 7".clone_into(&mut it.truck.name),
        ];
        for (index, change) in entered.into_iter().enumerate() {
            let mut entries = Entries::of(EXAMPLE);
            change(&mut entries);
            assert!(is_yours(&entries.truck, false), "change {index}");
        }
    }

    #[test]
    fn who_leaves_a_link_or_takes_the_example_again_is_asked_again() {
        let mut entries = Entries::of(EXAMPLE);
        let mine = entries.clone();
        entries.take_own(Preset::Coach.spec());
        assert!(is_yours(&entries.truck, false));
        assert!(!is_yours(&mine.truck, false));
        // A road of an example that was put away brings it again.
        entries.take_own(mine.truck);
        assert!(!is_yours(&entries.truck, false));
    }
}
