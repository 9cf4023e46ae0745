//! Small helpers of what is said.

use crate::Piece;
use crate::format::{self, Units};

/// Stands where nothing is known.
pub const UNKNOWN: &str = "–";

/// A part of a sentence, set as the rest.
#[must_use]
pub fn plain(text: impl Into<String>) -> Piece {
    Piece::Plain(text.into())
}

/// A part of a sentence that is read first.
#[must_use]
pub fn strong(text: impl Into<String>) -> Piece {
    Piece::Strong(text.into())
}

/// A name from the file, or what it is where it has none.
#[must_use]
pub fn name_or(name: &str, otherwise: &str) -> String {
    if name.is_empty() { otherwise.to_owned() } else { name.to_owned() }
}

/// “km 12.4 – 18.0”, from m.
#[must_use]
pub fn span(unit: &str, from_m: f64, to_m: f64, units: Units) -> String {
    format!("{unit} {} – {}", format::distance_number(from_m, units), format::distance_number(to_m, units))
}

/// The text with a capital letter at its start.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}

/// A radius: an estimate, told no finer than it is.
#[must_use]
pub fn radius(radius_m: f64, units: Units) -> String {
    format::height((radius_m / 5.0).round() * 5.0, units)
}

/// A whole number of per cent that is enough: rounded up, 1 at least.
#[must_use]
pub fn enough_percent(share: f64) -> String {
    format!("{}\u{a0}%", format::whole((share * 100.0).ceil().max(1.0)))
}

/// The name of a file to save: what a person would recognise, without what file systems refuse.
/// Letters beyond ASCII are let stand; telling them from signs would take large tables.
#[must_use]
pub fn file_name(stem: &str, otherwise: &str, ending: &str) -> String {
    let fits = |c: char| c.is_ascii_alphanumeric() || !c.is_ascii();
    let kept: String = stem.chars().map(|c| if fits(c) { c } else { '-' }).take(60).collect();
    let trimmed = kept.trim_matches('-');
    let stem = if trimmed.is_empty() { otherwise } else { trimmed };
    format!("{stem}{ending}")
}
