//! English words of the link and of the project.

use super::English;
use crate::words::LinkWords;
use crate::words::say::file_name;

impl LinkWords for English {
    fn make_link(&self) -> &'static str {
        "Copy a link with truck and day"
    }
    fn link_copied(&self) -> &'static str {
        "Copied. The link carries this truck and this day, no road and no place. Who opens it decides whether to use them."
    }
    fn link_made(&self) -> &'static str {
        "Copy the link from here. It carries this truck and this day, no road and no place. Who opens it decides whether to use them."
    }
    fn link_label(&self) -> &'static str {
        "Link with truck and day"
    }
    fn link_offered(&self) -> &'static str {
        "This link brings a truck and a day. Your own entries are in use until you decide. Whoever sent it may drive another vehicle: check every entry."
    }
    fn use_link(&self) -> &'static str {
        "Use truck and day of the link"
    }
    fn keep_mine(&self) -> &'static str {
        "Keep mine"
    }
    fn link_taken(&self) -> &'static str {
        "Truck and day of the link are in use now: check them before you trust the figures."
    }
    fn back_to_mine(&self) -> &'static str {
        "Back to mine"
    }
    fn link_broken(&self) -> &'static str {
        "The truck and the day in this link cannot be read; part of it may be missing. Ask for it once more. Your own entries are in use."
    }
    fn save_project(&self) -> &'static str {
        "Save all of it as one file"
    }
    fn project_sentence(&self) -> &'static str {
        "The road as it was given, places and limits on it, truck and day, and the same for a road kept beside it. It is opened here like a road, on any machine."
    }
    fn project_name(&self, road: &str) -> String {
        file_name(road, "road", ".steadygrade")
    }
    fn project_opened(&self) -> &'static str {
        "The project’s truck, day and places are in use now: check them before you trust the figures."
    }
}
