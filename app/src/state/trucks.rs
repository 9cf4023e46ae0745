//! Trucks of one's own, kept on this machine under their names.

use solver::truck::TruckSpec;

/// Most trucks kept.
pub(crate) const MOST_TRUCKS: usize = 40;

/// The list, and the one before it for a change of mind.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Trucks {
    /// In the order of their names.
    pub(crate) kept: Vec<TruckSpec>,
    /// The list before the last change.
    pub(crate) before: Option<Vec<TruckSpec>>,
}

impl Trucks {
    /// Puts a truck in under its name, in place of one of the same name; `false` where there is
    /// no room for another.
    pub(crate) fn keep(&mut self, truck: TruckSpec) -> bool {
        let at = self.kept.partition_point(|other| other.name < truck.name);
        let same = self.kept.get(at).is_some_and(|other| other.name == truck.name);
        if !same && self.kept.len() >= MOST_TRUCKS {
            return false;
        }
        self.before = Some(self.kept.clone());
        if same {
            self.kept[at] = truck;
        } else {
            self.kept.insert(at, truck);
        }
        true
    }

    /// Gives a kept truck another name.
    pub(crate) fn rename(&mut self, name: &str, to: &str) {
        if let Some(at) = self.place(name) {
            let before = self.kept.clone();
            let mut truck = self.kept.remove(at);
            to.clone_into(&mut truck.name);
            self.keep(truck);
            self.before = Some(before);
        }
    }

    /// Takes a truck out.
    pub(crate) fn remove(&mut self, name: &str) {
        if let Some(at) = self.place(name) {
            self.before = Some(self.kept.clone());
            self.kept.remove(at);
        }
    }

    /// Undoes the last change.
    pub(crate) fn undo(&mut self) {
        if let Some(before) = self.before.take() {
            self.kept = before;
        }
    }

    /// The truck of that name.
    pub(crate) fn named(&self, name: &str) -> Option<&TruckSpec> {
        self.place(name).map(|at| &self.kept[at])
    }

    fn place(&self, name: &str) -> Option<usize> {
        self.kept.iter().position(|truck| truck.name == name)
    }
}

#[cfg(test)]
mod tests {
    use super::Trucks;
    use solver::truck::{Preset, TruckSpec};

    fn called(name: &str) -> TruckSpec {
        TruckSpec { name: name.to_owned(), ..Preset::Coach.spec() }
    }

    fn names(trucks: &Trucks) -> Vec<&str> {
        trucks.kept.iter().map(|truck| truck.name.as_str()).collect()
    }

    #[test]
    fn trucks_are_kept_by_name_and_every_change_can_be_undone() {
        let mut trucks = Trucks::default();
        assert!(trucks.keep(called("Heavy")) && trucks.keep(called("Coach")));
        assert_eq!(names(&trucks), ["Coach", "Heavy"]);
        let mut other = called("Heavy");
        other.gross_mass_kg = 12_000.0;
        assert!(trucks.keep(other.clone()));
        assert_eq!(trucks.named("Heavy"), Some(&other));
        trucks.undo();
        assert_eq!(trucks.named("Heavy"), Some(&called("Heavy")));
        trucks.rename("Heavy", "Blue");
        assert_eq!(names(&trucks), ["Blue", "Coach"]);
        trucks.undo();
        trucks.remove("Coach");
        assert_eq!(names(&trucks), ["Heavy"]);
        trucks.undo();
        assert_eq!(names(&trucks), ["Coach", "Heavy"]);
    }

    #[test]
    fn there_is_an_end_to_it() {
        let mut trucks = Trucks::default();
        for k in 0..super::MOST_TRUCKS {
            assert!(trucks.keep(called(&format!("{k}"))));
        }
        assert!(!trucks.keep(called("one more")) && trucks.keep(called("7")));
    }
}
