//! Words of what is handed on: the link with truck and day, the project with all of it.

use super::say::file_name;
use crate::words::Spoken;

impl Spoken {
    /// Name of the file of a project.
    #[must_use]
    pub fn project_name(&self, road: &str) -> String {
        file_name(road, self.file_stem(), self.project_name_ending())
    }
}
