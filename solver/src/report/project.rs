//! The project file: a road with truck, day and all that was put on it, in one file.
//!
//! One line of JSON, `{"steadygrade_project": 1, "truck": { … }, "day": { … }, …}`, and behind it
//! the road's files as they were given, one after the other. So nothing is read and written anew
//! on the way, and what the header does not say comes out of the files as it did before.

use super::truck_file::{TruckFileError, VERSION, broken};
use crate::day::Day;
use crate::road::Roadside;
use crate::truck::{Truck, TruckError, TruckSpec};
use serde::{Deserialize, Serialize};

/// What a project holds beside the bytes of its files.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Project {
    /// The truck.
    pub truck: TruckSpec,
    /// The day.
    pub day: Day,
    /// Which track or route of the file.
    pub course: Option<usize>,
    /// The part of the road as recorded, by grid points.
    pub part: Option<(usize, usize)>,
    /// Against the direction of recording.
    pub reversed: bool,
    /// Places and limits on it.
    pub roadside: Roadside,
    /// What was typed for the marker at its start.
    pub marker: String,
    /// Markers count down.
    pub counts_down: bool,
    /// The files, in the order of travel and of their bytes.
    pub files: Vec<ProjectFile>,
}

/// A file of a project.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProjectFile {
    /// Its name.
    pub name: String,
    /// How many bytes it has.
    pub bytes: u64,
    /// Driven against the direction of recording.
    pub backwards: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Header {
    steadygrade_project: u32,
    project: Project,
}

/// Writes the line that stands before the files, its end included.
#[must_use]
pub fn write(project: &Project) -> String {
    let header = Header { steadygrade_project: VERSION, project: project.clone() };
    // Numbers, texts and lists always have a JSON form, and JSON texts no line ends.
    serde_json::to_string(&header).unwrap_or_default() + "\n"
}

/// Reads that line; `behind` is how many bytes come after it.
///
/// # Errors
/// [`TruckFileError`] says what is wrong: with the line, with truck or day, or that bytes are
/// missing or too many.
pub fn read(line: &str, behind: u64) -> Result<Project, TruckFileError> {
    #[derive(Deserialize)]
    struct Versioned {
        steadygrade_project: u32,
    }
    let version = serde_json::from_str::<Versioned>(line).map_err(broken)?.steadygrade_project;
    if version != VERSION {
        return Err(TruckFileError::Version(version));
    }
    let project = serde_json::from_str::<Header>(line).map_err(broken)?.project;
    Truck::new(project.truck.clone()).map_err(TruckFileError::Truck)?;
    project.day.checked().map_err(|out| TruckFileError::Truck(TruckError::Entry(out)))?;
    let bytes = project.files.iter().try_fold(0_u64, |sum, file| sum.checked_add(file.bytes));
    if project.files.is_empty() || bytes != Some(behind) {
        return Err(TruckFileError::CutOff);
    }
    Ok(project)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::road::{Place, PlaceKind, PostedLimit};
    use crate::truck::Preset;

    fn project() -> Project {
        let file = |name: &str, bytes| ProjectFile { name: name.to_owned(), bytes, backwards: bytes == 7 };
        let place =
            Place { name: "Inn “Nº 2”\n".to_owned(), kind: PlaceKind::Stop, index: 12, off_m: 3.5 };
        Project {
            truck: Preset::Tipper26.spec(),
            day: Day { headwind_kmh: 12.5, ..Day::USUAL },
            course: Some(1),
            part: Some((10, 400)),
            reversed: true,
            roadside: Roadside {
                places: vec![place],
                limits: vec![PostedLimit { from: 3, to: 9, kmh: 40.0 }],
            },
            marker: "12.4".to_owned(),
            counts_down: true,
            files: vec![file("up.gpx", 7), file("down.gpx", 5)],
        }
    }

    #[test]
    fn a_project_comes_back_as_it_went_on_one_line() {
        let line = write(&project());
        assert_eq!(line.matches('\n').count(), 1);
        assert!(line.ends_with('\n'));
        assert_eq!(read(&line, 12), Ok(project()));
    }

    #[test]
    fn what_is_cut_newer_or_out_of_range_is_refused() {
        let line = write(&project());
        for behind in [0, 11, 13] {
            assert_eq!(read(&line, behind), Err(TruckFileError::CutOff));
        }
        assert_eq!(read(&write(&Project { files: vec![], ..project() }), 0), Err(TruckFileError::CutOff));
        let endless = |bytes| ProjectFile { name: String::new(), bytes, backwards: false };
        let endless = Project { files: vec![endless(u64::MAX), endless(2)], ..project() };
        assert_eq!(read(&write(&endless), 1), Err(TruckFileError::CutOff));
        assert!(matches!(read(&line[..40], 12), Err(TruckFileError::Broken { line: 1, .. })));
        let newer = line.replace("\"steadygrade_project\":1", "\"steadygrade_project\":2");
        assert_eq!(read(&newer, 12), Err(TruckFileError::Version(2)));
        let windy = Project { day: Day { headwind_kmh: 900.0, ..Day::USUAL }, ..project() };
        assert!(matches!(read(&write(&windy), 12), Err(TruckFileError::Truck(TruckError::Entry(_)))));
    }
}
