//! The project file: a road with truck, day and everything entered for it, and the road kept beside it, in
//! one file.
//!
//! It is one line of JSON, `{"steadygrade_project": 3, "project": { … }}`, followed by the files of both
//! roads as they were given. So the road's own data are never read and written anew, and come out of their
//! files unchanged.

use super::truck_file::{TruckFileError, broken};
use crate::day::Day;
use crate::road::{Roadside, bounds};
use crate::truck::{Truck, TruckError, TruckSpec};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

/// The version written, and the newest that is read. Version 1 has one road; version 2 has no road with
/// several recordings.
pub const VERSION: u32 = 3;

/// Contents of a project besides the bytes of its files. Those follow in order: the files of `road`, then the
/// files of `beside`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Project {
    /// The road shown.
    pub road: ProjectRoad,
    /// The road kept beside it.
    pub beside: Option<ProjectRoad>,
}

/// A road of a project, with everything entered for it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProjectRoad {
    /// The truck.
    pub truck: TruckSpec,
    /// The day.
    pub day: Day,
    /// Number of the track or route in the file.
    pub course: Option<usize>,
    /// The part of the road as recorded, by grid points.
    pub part: Option<(usize, usize)>,
    /// Whether it is driven against the direction of recording.
    pub reversed: bool,
    /// Places and limits on it; `None` for those of the file.
    pub roadside: Option<Roadside>,
    /// Text entered for the marker at its start.
    pub marker: String,
    /// Markers count down.
    pub counts_down: bool,
    /// What a reader of this line has to know of the truck; empty where there is nothing.
    #[serde(default)]
    pub note: String,
    /// Whether it is an invented road that nobody can drive.
    #[serde(default)]
    pub invented: bool,
    /// The files, in the order of travel and of their bytes; at least one.
    pub files: Vec<ProjectFile>,
    /// Recordings of the same road beside the first one, in the order of the files.
    #[serde(default)]
    pub also: Vec<ProjectRecording>,
}

/// Another recording of a road.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProjectRecording {
    /// Number of its first file, from 0; higher than that of the recording before.
    pub from: usize,
    /// Number of the track or route in its file.
    pub course: Option<usize>,
}

impl ProjectRoad {
    /// Whether each recording has a file.
    fn has_recordings(&self) -> bool {
        let mut from = 0;
        self.also.iter().all(|it| {
            let after = it.from > from && it.from < self.files.len();
            from = it.from;
            after
        })
    }
}

/// A file of a project.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProjectFile {
    /// Its name.
    pub name: String,
    /// Its length in bytes.
    pub bytes: u64,
    /// Driven against the direction of recording.
    pub backwards: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Header<T> {
    steadygrade_project: u32,
    project: T,
}

/// Writes the line before the files, its line end included.
#[must_use]
pub fn write(project: &Project) -> String {
    let header = Header { steadygrade_project: VERSION, project };
    // Numbers, texts and lists always have a JSON form, and JSON texts have no line ends.
    serde_json::to_string(&header).unwrap_or_default() + "\n"
}

/// Reads the line before the files; `behind` is the number of bytes after it.
///
/// # Errors
/// [`TruckFileError`] says what is wrong: the line, a truck or a day, or missing or surplus bytes.
pub fn read(line: &str, behind: u64) -> Result<Project, TruckFileError> {
    #[derive(Deserialize)]
    struct Versioned {
        steadygrade_project: u32,
    }
    let version = serde_json::from_str::<Versioned>(line).map_err(broken)?.steadygrade_project;
    let project = match version {
        2 | VERSION => header(line)?,
        1 => Project { road: header(line)?, beside: None },
        found => return Err(TruckFileError::Version { found, newest: VERSION }),
    };
    let mut bytes = Some(0_u64);
    for road in std::iter::once(&project.road).chain(&project.beside) {
        Truck::new(road.truck.clone()).map_err(TruckFileError::Truck)?;
        road.day.checked().map_err(|out| TruckFileError::Truck(TruckError::Entry(out)))?;
        bytes = road.files.iter().fold(bytes, |sum, file| sum?.checked_add(file.bytes));
        if road.files.is_empty() {
            return Err(TruckFileError::CutOff);
        }
        if !road.has_recordings() {
            let what = "a recording of a road without a file".to_owned();
            return Err(TruckFileError::Broken { line: 1, what });
        }
        let roadside = road.roadside.as_ref().map_or((0, 0), |it| (it.places.len(), it.limits.len()));
        if roadside.0 > bounds::MOST_WAYPOINTS || roadside.1 > bounds::MOST_LIMITS {
            let (places, limits) = (bounds::MOST_WAYPOINTS, bounds::MOST_LIMITS);
            let what = format!("more than {places} places or {limits} limits on a road");
            return Err(TruckFileError::Broken { line: 1, what });
        }
    }
    if bytes != Some(behind) {
        return Err(TruckFileError::CutOff);
    }
    Ok(project)
}

fn header<T: DeserializeOwned>(line: &str) -> Result<T, TruckFileError> {
    serde_json::from_str::<Header<T>>(line).map(|header| header.project).map_err(broken)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::day::Lead;
    use crate::road::{Place, PlaceKind, PostedLimit};
    use crate::truck::Preset;

    fn file(name: &str, bytes: u64) -> ProjectFile {
        ProjectFile { name: name.to_owned(), bytes, backwards: bytes == 7 }
    }

    fn road() -> ProjectRoad {
        let place =
            Place { name: "Inn “Nº 2”\n".to_owned(), kind: PlaceKind::Stop, index: 12, off_m: 3.5 };
        ProjectRoad {
            truck: Preset::Tipper26.spec(),
            day: Day { headwind_kmh: 12.5, lead: Lead::Untouched, ..Day::USUAL },
            course: Some(1),
            part: Some((10, 400)),
            reversed: true,
            roadside: Some(Roadside {
                places: vec![place],
                limits: vec![PostedLimit { from: 3, to: 9, kmh: 40.0 }],
            }),
            marker: "12.4".to_owned(),
            counts_down: true,
            note: "An example".to_owned(),
            invented: false,
            files: vec![file("up.gpx", 7), file("down.gpx", 5)],
            also: vec![ProjectRecording { from: 1, course: Some(2) }],
        }
    }

    fn alone() -> Project {
        Project { road: road(), beside: None }
    }

    fn pair() -> Project {
        let other =
            ProjectRoad { files: vec![file("round.gpx", 30)], invented: true, also: vec![], ..road() };
        Project { road: road(), beside: Some(other) }
    }

    #[test]
    fn a_project_comes_back_as_it_went_on_one_line() {
        for (project, bytes) in [(alone(), 12), (pair(), 42)] {
            let line = write(&project);
            assert_eq!(line.matches('\n').count(), 1);
            assert!(line.ends_with('\n'));
            assert_eq!(read(&line, bytes), Ok(project));
        }
    }

    #[test]
    fn a_project_of_the_first_version_is_read_still() {
        let line = serde_json::to_string(&Header { steadygrade_project: 1, project: road() });
        // Version 1 does not say whether its road was invented, and knows nothing of several recordings.
        let line = line.unwrap_or_default().replace("\"invented\":false,", "");
        let line = line.replace(",\"also\":[{\"from\":1,\"course\":2}]", "");
        assert!(!line.contains("invented") && !line.contains("also"));
        let one = Project { road: ProjectRoad { also: vec![], ..road() }, beside: None };
        assert_eq!(read(&line, 12), Ok(one.clone()));
        let second = serde_json::to_string(&Header { steadygrade_project: 2, project: &one });
        let second = second.unwrap_or_default().replace(",\"also\":[]", "");
        assert!(!second.contains("also"));
        assert_eq!(read(&second, 12), Ok(one));
    }

    #[test]
    fn a_recording_without_a_file_is_refused() {
        for also in [vec![0], vec![2], vec![1, 1]] {
            let also = also.into_iter().map(|from| ProjectRecording { from, course: None }).collect();
            let line = write(&Project { road: ProjectRoad { also, ..road() }, beside: None });
            assert!(matches!(read(&line, 12), Err(TruckFileError::Broken { line: 1, .. })));
        }
    }

    #[test]
    fn what_is_cut_newer_or_out_of_range_is_refused() {
        let line = write(&pair());
        for behind in [0, 12, 41, 43] {
            assert_eq!(read(&line, behind), Err(TruckFileError::CutOff));
        }
        let of =
            |files| Project { road: road(), beside: Some(ProjectRoad { files, also: vec![], ..road() }) };
        assert_eq!(read(&write(&of(vec![])), 12), Err(TruckFileError::CutOff));
        let endless = of(vec![file("", u64::MAX), file("", 2)]);
        assert_eq!(read(&write(&endless), 13), Err(TruckFileError::CutOff));
        assert!(matches!(read(&line[..40], 42), Err(TruckFileError::Broken { line: 1, .. })));
        let newer = line.replace("\"steadygrade_project\":3", "\"steadygrade_project\":4");
        assert_eq!(read(&newer, 42), Err(TruckFileError::Version { found: 4, newest: 3 }));
        let limit = PostedLimit { from: 3, to: 9, kmh: 40.0 };
        let crowded = Roadside { places: vec![], limits: vec![limit; bounds::MOST_LIMITS + 1] };
        let crowded = Project { road: ProjectRoad { roadside: Some(crowded), ..road() }, beside: None };
        assert!(matches!(read(&write(&crowded), 12), Err(TruckFileError::Broken { .. })));
        let windy = ProjectRoad { day: Day { headwind_kmh: 900.0, ..Day::USUAL }, ..road() };
        for project in
            [Project { road: windy.clone(), beside: None }, Project { road: road(), beside: Some(windy) }]
        {
            let behind = if project.beside.is_some() { 24 } else { 12 };
            let read = read(&write(&project), behind);
            assert!(matches!(read, Err(TruckFileError::Truck(TruckError::Entry(_)))));
        }
    }
}
