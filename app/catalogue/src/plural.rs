//! Plural forms of whole numbers, by the rules of CLDR.

/// The forms of a language beside `other`, each with a pattern of Rust that whole numbers of that form
/// match. `None` for a language whose rules are not here.
///
/// Spanish and French have `many` as well, for whole millions (“un millón de curvas”). No count here
/// comes near, and `other` stands for it.
pub(crate) fn forms(tag: &str) -> Option<&'static [(&'static str, &'static str)]> {
    match tag {
        "en" | "de" | "es" => Some(&[("one", "1")]),
        "fr" => Some(&[("one", "0 | 1")]),
        _ => None,
    }
}
