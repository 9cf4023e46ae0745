//! Words of use without a network.

/// Words of use without a network.
pub trait OfflineWords {
    /// The browser keeps all of the page.
    fn works_offline(&self) -> &'static str;
    /// A newer version waits; what loading it costs.
    fn newer(&self) -> &'static str;
    /// Loads it.
    fn load_newer(&self) -> &'static str;
    /// Puts that off.
    fn later(&self) -> &'static str;
    /// Forgets what is kept on this machine.
    fn forget_all(&self) -> &'static str;
    /// The same, when it was pressed once.
    fn forget_really(&self) -> &'static str;
    /// Link that saves the page as one file.
    fn save_page(&self) -> &'static str;
}
