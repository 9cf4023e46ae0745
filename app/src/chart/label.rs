//! Labels that do not run into each other: how wide a text is, and which row is free.

/// Width of a text in px at a font size in px, a little on the wide side.
///
/// By letter classes measured on the page's face and its usual fall-backs, of which the widest
/// counts: a label that is dropped too early is better than two that overlap.
#[must_use]
pub(crate) fn text_width(text: &str, size_px: f64) -> f64 {
    let em: f64 = text.chars().map(letter_width).sum();
    em * size_px
}

fn letter_width(letter: char) -> f64 {
    match letter {
        ' ' | '.' | ',' | ':' | ';' | '·' | '\'' | '|' | '!' => 0.31,
        'i' | 'j' | 'l' | 'I' | 'f' | 't' | 'r' | '(' | ')' | '/' | '-' => 0.40,
        'm' | 'w' | 'M' | 'W' | '%' => 0.93,
        '0'..='9' => 0.63,
        'a'..='z' => 0.60,
        'A'..='Z' => 0.72,
        _ => 0.80,
    }
}

/// The text if it fits, else its beginning with an ellipsis; `None` if not even four letters fit.
#[must_use]
pub(crate) fn shortened(text: &str, size_px: f64, width_px: f64) -> Option<String> {
    if text_width(text, size_px) <= width_px {
        return Some(text.to_owned());
    }
    let room = width_px - text_width("…", size_px);
    let mut used = 0.0;
    let mut kept = String::new();
    for letter in text.chars() {
        used += letter_width(letter) * size_px;
        if used > room {
            break;
        }
        kept.push(letter);
    }
    let kept = kept.trim_end();
    (kept.chars().count() >= 4).then(|| format!("{kept}…"))
}

/// Rows of labels, each with the stretches already taken.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Rows {
    taken: Vec<Vec<(f64, f64)>>,
}

/// Least space between two labels of a row, px.
const GAP_PX: f64 = 9.0;

impl Rows {
    /// So many empty rows.
    #[must_use]
    pub(crate) fn new(count: usize) -> Self {
        Self { taken: vec![Vec::new(); count] }
    }

    /// The first row in which `x0..x1` is free, now taken; `None` if there is none.
    pub(crate) fn place(&mut self, x0: f64, x1: f64) -> Option<usize> {
        let row = (0..self.taken.len()).find(|row| self.is_free(*row, x0, x1))?;
        self.taken[row].push((x0, x1));
        Some(row)
    }

    fn is_free(&self, row: usize, x0: f64, x1: f64) -> bool {
        self.taken[row].iter().all(|(a, b)| x1 + GAP_PX <= *a || x0 >= *b + GAP_PX)
    }
}

/// A stretch of `width` about `middle`, pushed inside `left..right`.
#[must_use]
pub(crate) fn centred(middle: f64, width: f64, left: f64, right: f64) -> (f64, f64) {
    let x0 = (middle - 0.5 * width).min(right - width).max(left);
    (x0, x0 + width)
}

#[cfg(test)]
mod tests {
    use super::{Rows, centred, shortened, text_width};

    #[test]
    fn rows_never_overlap() {
        let mut rows = Rows::new(2);
        let mut placed: Vec<(usize, f64, f64)> = Vec::new();
        for label in 0..60 {
            let x0 = f64::from(label * 37 % 400);
            let x1 = x0 + 20.0 + f64::from(label % 5) * 9.0;
            if let Some(row) = rows.place(x0, x1) {
                assert!(placed.iter().all(|(r, a, b)| *r != row || x1 <= *a || x0 >= *b));
                placed.push((row, x0, x1));
            }
        }
        assert!(placed.len() > 8, "{}", placed.len());
    }

    #[test]
    fn long_names_are_cut_and_hopeless_ones_dropped() {
        let name = "Brake check area before the summit";
        let cut = shortened(name, 13.0, 90.0).expect("ninety pixels take some letters");
        assert!(cut.ends_with('…') && text_width(&cut, 13.0) <= 90.0, "{cut}");
        assert_eq!(shortened(name, 13.0, 20.0), None);
        assert_eq!(shortened("foot", 13.0, 90.0).as_deref(), Some("foot"));
    }

    #[test]
    fn centred_stays_inside() {
        assert_eq!(centred(5.0, 20.0, 0.0, 100.0), (0.0, 20.0));
        assert_eq!(centred(99.0, 20.0, 0.0, 100.0), (80.0, 100.0));
        assert_eq!(centred(50.0, 20.0, 0.0, 100.0), (40.0, 60.0));
    }
}
