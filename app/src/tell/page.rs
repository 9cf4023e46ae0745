//! Words of the page's frame: names, buttons, files, progress, trouble.

use super::say::file_name;
use crate::format::{self, Units};
use crate::trouble::WorkTrouble;
use crate::words::Spoken;
use solver::report::truck_file::TruckFileError;

impl Spoken {
    /// What part of the road is shown, m from its start as recorded.
    #[must_use]
    pub fn part_shown(&self, from_m: f64, to_m: f64, units: Units) -> String {
        self.part_of(&format::span(from_m, to_m, units))
    }

    /// Name of the exported file.
    #[must_use]
    pub fn export_name(&self, road: &str) -> String {
        file_name(road, self.file_stem(), self.export_name_ending())
    }

    /// Head of the box for a file that cannot be used.
    #[must_use]
    pub fn trouble_head(&self, trouble: &WorkTrouble) -> String {
        let head = match trouble {
            WorkTrouble::File { name, .. } => return self.trouble_head_file(name),
            WorkTrouble::ManyFiles => self.trouble_head_many_files(),
            WorkTrouble::NotAFile => self.trouble_head_not_a_file(),
            WorkTrouble::BuiltInMissing => self.trouble_head_built_in_missing(),
            WorkTrouble::CannotStart => self.trouble_head_cannot_start(),
            WorkTrouble::Stopped { .. } => self.trouble_head_stopped(),
            WorkTrouble::Cancelled => self.trouble_head_cancelled(),
            WorkTrouble::Truck { .. } => self.trouble_head_truck(),
            WorkTrouble::TruckFile { .. } => self.trouble_head_truck_file(),
            WorkTrouble::ProjectFile { .. } => self.trouble_head_project_file(),
            WorkTrouble::CannotExport => self.trouble_head_cannot_export(),
            WorkTrouble::NoPicture => self.trouble_head_no_picture(),
        };
        head.to_owned()
    }

    /// What to do about it.
    #[must_use]
    pub fn trouble(&self, trouble: &WorkTrouble, units: Units) -> String {
        let what = match trouble {
            WorkTrouble::File { error, .. } => return self.file_error(error),
            WorkTrouble::Truck { error } => return self.truck_error(error, units),
            WorkTrouble::TruckFile { error } | WorkTrouble::ProjectFile { error } => {
                let why = self.truck_file_error(error, units);
                let newer = matches!(error, TruckFileError::Version { .. });
                return if newer { format!("{why} {}", self.reload_for_newer()) } else { why };
            }
            WorkTrouble::Stopped { detail } => return self.trouble_stopped(detail),
            WorkTrouble::ManyFiles => self.trouble_many_files(),
            WorkTrouble::NotAFile => self.trouble_not_a_file(),
            WorkTrouble::BuiltInMissing => self.trouble_built_in_missing(),
            WorkTrouble::CannotStart => self.trouble_cannot_start(),
            WorkTrouble::Cancelled => self.trouble_cancelled(),
            WorkTrouble::CannotExport => self.trouble_cannot_export(),
            WorkTrouble::NoPicture => self.trouble_no_picture(),
        };
        what.to_owned()
    }
}
