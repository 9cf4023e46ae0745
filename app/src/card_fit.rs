//! How much of the card one page holds: about how high its parts are in each size of type.
//!
//! The page is not measured, for the browser lays it out anew for paper; letters are counted. What a
//! line holds was measured on A4, the narrower paper, and the page is as high as Letter, the lower one;
//! tests in the browser count the pages. Lengths are in px of 1/96 inch.

/// Height of the page between its margins, less what a count of letters is out by.
const PAGE_PX: f64 = 970.0;
/// Rows that a page holds at most, whatever room there is.
const MOST_ROWS: usize = 9;

/// Size of the type.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Size {
    /// As large as it is read best.
    Ease,
    /// A smaller type.
    Dense,
    /// As small as it may be, with a lower picture of the road.
    Tight,
}

/// The texts of a card.
#[derive(Debug, Clone, PartialEq)]
pub struct Texts {
    /// Truck and day.
    pub facts: String,
    /// Not to go down, and why.
    pub stop: Option<[String; 2]>,
    /// What holds for the whole plan.
    pub notes: Vec<String>,
    /// What to know of each descent, the worst descent first, and how many rows below its own have a change
    /// of gear.
    pub rows: Vec<(String, usize)>,
    /// The three lists below the rows.
    pub lists: [Vec<String>; 3],
    /// The small print.
    pub small: String,
}

/// What fits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fit {
    /// How many of the worst descents fit.
    pub rows: usize,
    /// The size of type in which they fit.
    pub size: Size,
}

/// The largest type in which all rows fit, or as many rows as fit in the smallest; one at least.
#[must_use]
pub fn fit(texts: &Texts) -> Fit {
    let wanted = texts.rows.len().min(MOST_ROWS);
    let fits = |it: &Fit| height_px(texts, *it) <= PAGE_PX;
    let sizes = [Size::Ease, Size::Dense, Size::Tight].map(|size| Fit { rows: wanted, size });
    let fewer = (1..wanted).rev().map(|rows| Fit { rows, size: Size::Tight });
    let least = Fit { rows: wanted.min(1), size: Size::Tight };
    sizes.into_iter().chain(fewer).find(fits).unwrap_or(least)
}

/// What a size takes.
struct Type {
    /// Height of a line of text, and letters across the page.
    line: (f64, usize),
    /// Line height and letters of the notes.
    note: (f64, usize),
    /// Line height and letters of what to know of a descent.
    know: (f64, usize),
    /// Line height and letters of the lists.
    list: (f64, usize),
    /// A row at least, and what stands about its lines.
    row: (f64, f64),
    /// The picture of the road with its margins.
    strip: f64,
}

impl Size {
    fn takes(self) -> Type {
        match self {
            Self::Ease => Type {
                line: (20.0, 98),
                note: (18.4, 104),
                know: (20.0, 32),
                list: (20.0, 25),
                row: (60.0, 12.5),
                strip: 163.0,
            },
            Self::Dense => Type {
                line: (16.7, 116),
                note: (17.5, 108),
                know: (15.9, 46),
                list: (16.7, 31),
                row: (41.0, 4.5),
                strip: 163.0,
            },
            Self::Tight => Type {
                line: (15.0, 126),
                note: (16.7, 114),
                know: (15.0, 49),
                list: (15.0, 34),
                row: (39.0, 4.5),
                strip: 103.0,
            },
        }
    }
}

/// Height of so many lines as a text takes.
fn lines(text: &str, (line, letters): (f64, usize)) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "a text has far fewer than 2⁵² lines")]
    let count = text.chars().count().div_ceil(letters) as f64;
    count * line
}

/// About how high the page would be.
fn height_px(texts: &Texts, fit: Fit) -> f64 {
    /// Large type: height of a line, letters across the page.
    const LARGE: (f64, usize) = (31.0, 46);
    /// Small print.
    const SMALL: (f64, usize) = (15.0, 126);
    /// What stands between the letters of a part: rules, paddings, heads.
    const HEAD: f64 = 44.0;
    const BELOW_LIST: f64 = 3.3;
    const NO_SPEED: f64 = 66.0;
    let of = fit.size.takes();
    let head = HEAD + lines(&texts.facts, of.line) + of.line.0;
    let stop = texts.stop.as_ref().map_or(0.0, |[stop, why]| 38.0 + lines(stop, LARGE) + lines(why, of.line));
    let notes: f64 = texts.notes.iter().map(|it| lines(it, of.note) + 2.5).sum::<f64>() + 8.0;
    let heads_of_columns = 2.0 * of.line.0 + 4.0;
    // The large words of a row without a safe speed take several lines.
    let least = if texts.stop.is_some() { of.row.0.max(NO_SPEED) } else { of.row.0 };
    #[allow(clippy::cast_precision_loss, reason = "a descent has far fewer than 2⁵² changes of gear")]
    let changed = |changes: usize| changes as f64 * of.row.0;
    let row =
        |(know, changes): &(String, usize)| (lines(know, of.know) + of.row.1).max(least) + changed(*changes);
    let rows: f64 = texts.rows.iter().take(fit.rows).map(row).sum();
    let more = if texts.rows.len() > fit.rows { 2.0 * of.line.0 } else { 0.0 };
    let list = |all: &Vec<String>| all.iter().map(|it| lines(it, of.list) + BELOW_LIST).sum::<f64>();
    let lists = texts.lists.iter().map(list).fold(0.0, f64::max) + of.line.0 + 14.0;
    head + stop
        + notes
        + of.strip
        + heads_of_columns
        + rows
        + more
        + lists
        + 15.0
        + lines(&texts.small, SMALL)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(rows: usize, notes: usize) -> Texts {
        let text = |letters: usize| "x".repeat(letters);
        Texts {
            facts: text(110),
            stop: None,
            notes: vec![text(170); notes],
            rows: vec![(text(75), 0); rows],
            lists: [vec![text(90); 4], vec![text(85); 4], vec![text(40); 3]],
            small: text(500),
        }
    }

    #[test]
    fn the_type_gets_smaller_before_rows_are_left_out() {
        assert_eq!(fit(&texts(1, 0)), Fit { rows: 1, size: Size::Ease });
        assert_eq!(fit(&texts(5, 0)).rows, 5);
        assert_eq!(fit(&texts(30, 0)).rows, MOST_ROWS);
        let mut before = fit(&texts(30, 0));
        for notes in 1..9 {
            let now = fit(&texts(30, notes));
            assert!(now.rows <= before.rows && now.size as u8 >= before.size as u8, "{notes}: {now:?}");
            assert!(height_px(&texts(30, notes), now) <= PAGE_PX, "{notes}: {now:?}");
            before = now;
        }
        assert!(before.rows < MOST_ROWS, "{before:?}");
    }

    #[test]
    fn changes_of_gear_take_rows() {
        let with = |changes: usize| {
            let mut texts = texts(9, 0);
            texts.rows[8].1 = changes;
            texts
        };
        assert_eq!(fit(&with(0)).rows, 9);
        let mut before = fit(&with(0));
        for changes in 1..12 {
            let now = fit(&with(changes));
            assert!(now.rows <= before.rows && now.size as u8 >= before.size as u8, "{changes}: {now:?}");
            before = now;
        }
        assert!(before.rows < 9, "{before:?}");
    }

    #[test]
    fn a_line_above_the_rows_takes_room_and_one_row_always_stays() {
        let with = Texts { stop: Some(["X".repeat(40), "x".repeat(250)]), ..texts(30, 3) };
        assert!(fit(&with).rows < fit(&texts(30, 3)).rows);
        assert_eq!(fit(&texts(30, 40)), Fit { rows: 1, size: Size::Tight });
        assert_eq!(fit(&texts(0, 1)).rows, 0);
    }
}
