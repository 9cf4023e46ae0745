//! The truck entered, and trucks of one's own: named, kept, written and read.

use super::fields;
use super::question::Told;
use super::signals::Signals;
use super::study_worker;
use super::trucks::Trucks;
use crate::browser::download;
use crate::browser::file::{self, GivenFile};
use crate::trouble::WorkTrouble;
use crate::words::words;
use leptos::prelude::*;
use solver::truck::TruckSpec;
use workers::message::study::{StudyReply, StudyRequest};

impl Signals {
    /// Gives the truck entered a name.
    pub(crate) fn name_truck(&'static self, name: String) {
        self.entered.entries.update(|entries| entries.truck.name = name);
        self.keep();
    }

    /// Changes the trucks that are kept.
    pub(crate) fn change_trucks(&'static self, change: impl FnOnce(&mut Trucks)) {
        self.entered.trucks.update(change);
        self.keep();
    }

    /// Plans with a kept truck.
    pub(crate) fn take_own_truck(&'static self, truck: TruckSpec) {
        self.talk.trouble.set(None);
        fields::put_entries(self, |entries| entries.take_own(truck));
        self.confirm_truck();
    }

    /// Writes the truck entered as a file.
    pub(crate) fn write_truck(&'static self) {
        let truck = self.entered.entries.get_untracked().truck;
        study_worker::ask(self, StudyRequest::WriteTruck(truck), move |told| match told {
            Told::Reply(StudyReply::TruckWritten(text), _) => self.save_truck(&text),
            Told::Reply(..) | Told::GivenUp => self.talk.trouble.set(Some(WorkTrouble::CannotExport)),
        });
    }

    /// Opens a truck file.
    pub(crate) fn open_truck(&'static self, given: GivenFile) {
        leptos::task::spawn_local(async move {
            match file::text(&given).await {
                Some(text) => self.read_truck(text),
                None => self.talk.trouble.set(Some(WorkTrouble::NotAFile)),
            }
        });
    }

    fn read_truck(&'static self, text: String) {
        study_worker::ask(self, StudyRequest::ReadTruck(text), move |told| match told {
            Told::Reply(StudyReply::TruckRead(Ok(truck)), _) => self.take_own_truck(*truck),
            Told::Reply(StudyReply::TruckRead(Err(error)), _) => {
                self.talk.trouble.set(Some(WorkTrouble::TruckFile { error }));
            }
            Told::Reply(..) | Told::GivenUp => self.talk.trouble.set(Some(WorkTrouble::CannotStart)),
        });
    }

    fn save_truck(&self, text: &str) {
        let name = words()
            .truck_file_name(&self.entered.entries.with_untracked(|entries| entries.truck.name.clone()));
        if !download::save(&name, "application/json", text) {
            self.talk.trouble.set(Some(WorkTrouble::CannotExport));
        }
    }
}
