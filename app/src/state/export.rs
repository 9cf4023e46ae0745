//! The GPX file with crests and changes.

use super::question::Told;
use super::signals::Signals;
use super::{study, study_worker};
use crate::browser::download;
use crate::trouble::WorkTrouble;
use crate::words::words;
use ::words::captions;
use leptos::prelude::*;
use workers::message::study::{StudyReply, StudyRequest};

impl Signals {
    /// Asks for the file of the result shown.
    pub(crate) fn export(&'static self) {
        let Some((truck, day)) = study::shown(self, |_| true) else { return };
        let Some(worked) = self.shown.worked.get_untracked() else { return };
        let example = untrack(|| self.is_not_yours(&worked.truck)).then(|| words().example_export());
        let captions = captions(&worked.plan, &worked.picture.gear, self.units.get_untracked(), example);
        let request = StudyRequest::Export(truck, day, captions);
        study_worker::ask_about_road(self, request, move |told| match told {
            Told::Reply(StudyReply::Exported(text), _) => self.save_export(&worked.road.name, &text),
            Told::Reply(..) | Told::GivenUp => self.talk.trouble.set(Some(WorkTrouble::CannotExport)),
        });
    }

    fn save_export(&self, road: &str, text: &str) {
        if !download::save(&words().export_name(road), "application/gpx+xml", text) {
            self.talk.trouble.set(Some(WorkTrouble::CannotExport));
        }
    }
}
