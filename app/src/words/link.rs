//! Words of what is handed on: the link with truck and day, the project with all of it.

/// Words of the link and of the project.
pub trait LinkWords {
    /// Makes and copies it.
    fn make_link(&self) -> &'static str;
    /// It was copied; what it carries and what not.
    fn link_copied(&self) -> &'static str;
    /// It could not be copied and is to be taken from the field below; what it carries.
    fn link_made(&self) -> &'static str;
    /// Name of that field.
    fn link_label(&self) -> &'static str;
    /// A link that was opened brings a truck and a day.
    fn link_offered(&self) -> &'static str;
    /// Uses them.
    fn use_link(&self) -> &'static str;
    /// Does not.
    fn keep_mine(&self) -> &'static str;
    /// They are in use.
    fn link_taken(&self) -> &'static str;
    /// Back to what was entered before.
    fn back_to_mine(&self) -> &'static str;
    /// It cannot be read.
    fn link_broken(&self) -> &'static str;
    /// Saves everything as one file.
    fn save_project(&self) -> &'static str;
    /// What it holds, and how it is opened.
    fn project_sentence(&self) -> &'static str;
    /// Name of that file.
    fn project_name(&self, road: &str) -> String;
    /// It was opened: its entries are in use.
    fn project_opened(&self) -> &'static str;
}
