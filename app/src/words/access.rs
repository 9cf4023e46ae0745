//! Words of the notice before the page, and of what the pictures say in words.

/// Words of the notice before the page, and of what the pictures say in words.
pub trait AccessWords {
    /// The button that acknowledges the notice: the driver's own answer.
    fn i_am_parked(&self) -> &'static str;
}
