//! Words of the link that carries truck and day.

/// Words of the link.
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
}
