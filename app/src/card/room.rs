//! How much room a text takes on paper, before any browser lays it out.
//!
//! Letters are reckoned at least as wide as they are in the page's face, so that a browser never needs more
//! lines than are counted here. A test in the browser holds each row to the height it is given.

use ::words::Piece;

/// Width of a letter, em: in the regular and in the bold face.
fn letter(letter: char) -> (f64, f64) {
    match letter {
        ' ' | '\u{a0}' | '\u{202f}' => (0.2, 0.2),
        '.' | ',' | ':' | ';' => (0.2, 0.24),
        '\'' | '|' | '·' | '’' | '‘' => (0.24, 0.3),
        'i' | 'j' | 'l' | '!' | '`' | 'í' | 'ì' | 'î' | 'ï' => (0.29, 0.33),
        't' | 'f' | 'r' => (0.35, 0.38),
        '"' | '(' | ')' | '[' | ']' => (0.33, 0.41),
        '-' | '/' | '°' => (0.38, 0.44),
        'I' | '“' | '”' | 's' | 'z' | 'v' | 'y' | 'x' | '–' => (0.48, 0.53),
        'w' => (0.66, 0.72),
        'm' | 'W' | 'M' | '→' | '—' | '…' => (0.85, 0.9),
        '+' | '−' | '=' => (0.61, 0.63),
        '%' => (0.94, 0.99),
        'a'..='z' => (0.57, 0.62),
        '1' => (0.41, 0.45),
        '2' | '7' => (0.55, 0.59),
        '0'..='9' => (0.65, 0.66),
        'à'..='å' | 'ç'..='ö' | 'ø'..='ÿ' => (0.57, 0.62),
        'A'..='Z' | 'ß' | '?' | '&' => (0.76, 0.79),
        _ => (1.05, 1.1),
    }
}

/// Width of a text, em.
#[must_use]
pub fn em(text: &str, bold: bool) -> f64 {
    text.chars().map(letter).map(|(regular, heavy)| if bold { heavy } else { regular }).sum()
}

/// Lines that a text takes within a width, em; one at least. Words are broken where they are wider.
#[must_use]
pub fn lines(text: &str, width: f64, bold: bool) -> usize {
    wrapped(text.chars().map(|it| (it, bold)), width)
}

/// The same of a sentence.
#[must_use]
pub fn lines_of(pieces: &[Piece], width: f64) -> usize {
    let letters = pieces.iter().flat_map(|piece| text(piece).0.chars().map(|it| (it, text(piece).1)));
    wrapped(letters, width)
}

/// Sentences one behind the other; those without a full stop are set apart from the next.
#[must_use]
pub fn flowing(sentences: impl IntoIterator<Item = Vec<Piece>>) -> Vec<Piece> {
    let mut all: Vec<Piece> = Vec::new();
    for sentence in sentences {
        if let Some(last) = all.last() {
            let between = if text(last).0.ends_with('.') { " " } else { " · " };
            all.push(Piece::Plain(between.to_owned()));
        }
        all.extend(sentence);
    }
    all
}

/// Words of a piece, and whether they are bold.
fn text(piece: &Piece) -> (&str, bool) {
    match piece {
        Piece::Plain(text) => (text, false),
        Piece::Strong(text) => (text, true),
    }
}

fn wrapped(letters: impl Iterator<Item = (char, bool)>, width: f64) -> usize {
    let (mut count, mut used, mut word) = (1, 0.0, 0.0);
    let mut end_word = |word: f64| {
        let blank = if used > 0.0 { 0.2 } else { 0.0 };
        if used + blank + word <= width {
            used += blank + word;
            return;
        }
        count += usize::from(used > 0.0);
        used = word;
        while used > width {
            count += 1;
            // A letter that finds no room in full goes to the next line.
            used -= (width - 1.1).max(1.1);
        }
    };
    for (it, bold) in letters {
        if it == ' ' {
            end_word(word);
            word = 0.0;
        } else {
            let (regular, heavy) = letter(it);
            word += if bold { heavy } else { regular };
        }
    }
    end_word(word);
    count
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_go_to_the_next_line_whole_and_the_longest_are_broken() {
        assert_eq!(lines("", 10.0, false), 1);
        let word = "nnnn";
        let wide = em(word, false);
        let three = [word; 3].join(" ");
        assert_eq!(lines(&three, 3.0 * wide + 0.5, false), 1);
        assert_eq!(lines(&three, 3.0 * wide + 0.3, false), 2);
        assert_eq!(lines(&three, wide, false), 3);
        assert!(lines(&"n".repeat(100), 10.0, false) >= 6);
        assert!(em("km 12.4", true) > em("km 12.4", false));
    }

    #[test]
    fn sentences_flow_and_those_without_a_full_stop_are_set_apart() {
        let sentence = |text: &str| vec![Piece::Strong("one".to_owned()), Piece::Plain(text.to_owned())];
        let all = flowing([sentence(" then"), sentence(" is."), sentence(" then")]);
        assert_eq!(::words::joined(&all), "one then · one is. one then");
        assert_eq!(flowing([]), []);
        let wide: f64 = all.iter().map(|it| em(text(it).0, text(it).1)).sum();
        assert_eq!(lines_of(&all, wide + 0.01), 1);
        assert_eq!(lines_of(&all, wide - 0.1), 2);
    }
}
