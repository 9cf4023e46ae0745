//! Opening roads: files, their tracks, parts of them, the other way round.

use super::asked::{Leg, Origin};
use super::signals::Signals;
use super::{alike, project, wants, work};
use crate::browser::file::GivenFile;
use crate::trouble::WorkTrouble;
use leptos::prelude::*;

/// Most files that are joined.
const MOST_LEGS: usize = 20;
/// Most files in a list of roads.
const MOST_ROADS: usize = 200;

impl Signals {
    /// Opens what was chosen or dropped: one file at once, several once they are in order.
    pub(crate) fn open(&'static self, mut files: Vec<GivenFile>) {
        // A truck file or a project may be dropped like a road.
        if let [file] = &files[..] {
            let name = file.name.to_ascii_lowercase();
            if name.ends_with(".json") {
                return self.open_truck(files.remove(0));
            }
            if name.ends_with(project::ENDING) {
                return self.open_project(files.remove(0));
            }
        }
        let mut legs: Vec<Leg> = files.into_iter().map(|file| Leg { file, turned: false }).collect();
        match legs.len() {
            0 => self.talk.trouble.set(Some(WorkTrouble::NotAFile)),
            1 => {
                self.files.legs.set(Vec::new());
                work::open(self, legs, Origin::Given);
                alike::expect(self);
            }
            2..=MOST_LEGS => {
                // A few files: put each where its name belongs.
                let given = std::mem::take(&mut legs);
                for leg in given {
                    let at = legs.partition_point(|other| other.file.name <= leg.file.name);
                    legs.insert(at, leg);
                }
                self.talk.trouble.set(None);
                self.files.legs.set(legs);
            }
            _ if legs.len() <= MOST_ROADS => {
                self.talk.trouble.set(None);
                self.list(legs);
            }
            _ => self.talk.trouble.set(Some(WorkTrouble::ManyFiles)),
        }
    }

    /// Joins the files in the order set.
    pub(crate) fn join(&'static self) {
        let legs = self.files.legs.get_untracked();
        self.files.legs.set(Vec::new());
        if !legs.is_empty() {
            work::open(self, legs, Origin::Given);
            alike::expect(self);
        }
    }

    /// Turns the road around.
    pub(crate) fn reverse(&'static self) {
        wants::turn_around(self);
    }

    /// Takes another track of the file.
    pub(crate) fn take_course(&'static self, course: usize) {
        wants::take_course(self, course);
    }

    /// Works out only a stretch of the road shown, by its grid points.
    pub(crate) fn take_part(&'static self, from: usize, to: usize) {
        if let Some(worked) = self.shown.worked.get_untracked() {
            wants::take_part(self, Some(worked.recorded_part(from, to)));
        }
    }

    /// Works out the whole road again.
    pub(crate) fn take_all(&'static self) {
        wants::take_part(self, None);
    }

    /// Leaves the file whose tracks were asked about.
    pub(crate) fn drop_choice(&'static self) {
        wants::drop_choice(self);
    }

    /// Gives up what is being worked out.
    pub(crate) fn cancel(&'static self) {
        work::cancel(self);
    }

    /// Works out what is entered once more.
    pub(crate) fn try_again(&'static self) {
        self.talk.trouble.set(None);
        wants::try_again(self);
    }
}
