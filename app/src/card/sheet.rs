//! The card as texts, and how high each part of it is on paper.
//!
//! Lengths are in pt. The page is as high as Letter, the lower paper, and as wide as A4, the narrower one,
//! each between margins of 10 mm: whoever prints on either has the same pages. The style sheet has these
//! measures, too; a test in the browser holds every part to the height that it is given here.

use super::pages::{Block, Part, Room, pages};
use super::room::{em, lines, lines_of};
use ::words::Piece;

/// Height of a page, less what rounding takes.
const PAGE: f64 = 732.0;
/// Width of all that is printed.
const WIDTH: f64 = 526.0;
/// Width of what to know of a descent.
const KNOW: f64 = 276.0;
/// Width of what to do.
const DO: f64 = 220.0;
/// Width of the place by which a gear is in, pt.
const BY: f64 = 64.0;
/// Size of what to know.
const KNOW_SIZE: f64 = 11.0;
/// A line of text is so much higher than its letters.
const LEADING: f64 = 1.22;
/// A leg: its squares.
const LEG: f64 = 29.0;
/// What stands about the lines of a row: its padding and rule.
const ABOUT_ROW: f64 = 5.2;
/// The least height of a row.
const LEAST_ROW: f64 = LEG + ABOUT_ROW;

/// The card.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// Name of the road.
    pub name: String,
    /// Its length, fall and descents, which way it goes, and what the markers show.
    pub about: String,
    /// Head of what to know: in which units, and from where distances are counted without markers.
    pub know_head: String,
    /// Of how much of the road the card speaks, where that is not all.
    pub covers: Option<String>,
    /// What it was worked out for.
    pub worked: String,
    /// The same in short, for the pages behind the first.
    pub facts: String,
    /// Whether it is the driver's truck, as a question.
    pub your_truck: String,
    /// What follows where it is not.
    pub one_empty: Vec<Piece>,
    /// What must be so that it is the driver's card.
    pub checks: Vec<String>,
    /// That the truck is but an example.
    pub example: Option<String>,
    /// Not to go down, and why.
    pub stop: Option<[String; 2]>,
    /// What holds for the whole plan.
    pub notes: Vec<String>,
    /// The hardest descent; `None` of a road without one.
    pub hardest: Option<Hardest>,
    /// Descents and unknown stretches.
    pub rows: Vec<Row>,
    /// What to do before each crest.
    pub before: Vec<String>,
    /// What to do in trouble, in order.
    pub trouble: Vec<String>,
    /// Places along the road, one behind the other.
    pub places: String,
    /// The small print.
    pub small: String,
}

/// The descent that stands on top of every page.
#[derive(Debug, Clone, PartialEq)]
pub struct Hardest {
    /// Its number.
    pub number: usize,
    /// That it is the hardest, and of how many.
    pub head: String,
    /// How its slowest leg is driven; `None` where no speed is safe.
    pub way: Option<Way>,
    /// How steep it is.
    pub steep: String,
    /// Which are the hardest next; empty where there are none.
    pub then: String,
}

/// A row.
#[derive(Debug, Clone, PartialEq)]
pub enum Row {
    /// A descent.
    Descent(DescentRow),
    /// Stretches of which nothing is known.
    Unknown(String),
}

/// The row of a descent.
#[derive(Debug, Clone, PartialEq)]
pub struct DescentRow {
    /// Its number.
    pub number: usize,
    /// It is the hardest.
    pub is_hardest: bool,
    /// Its legs; where no speed is safe, the way to its crest with that verdict.
    pub ways: Vec<Way>,
    /// What to know: how it is held, then all else.
    pub know: Vec<Vec<Piece>>,
}

/// A leg.
#[derive(Debug, Clone, PartialEq)]
pub struct Way {
    /// What to do before it; `None` of the first.
    pub change: Option<String>,
    /// By where: what stands before the distance, the distance, and that in the other units.
    pub by: [String; 3],
    /// How.
    pub how: How,
}

/// Gear, stage and speed, or that there is none.
#[derive(Debug, Clone, PartialEq)]
pub enum How {
    /// In this gear.
    Held {
        /// Gear.
        gear: u8,
        /// Strongest stage, 0 is off.
        stage: u8,
        /// The speed, its unit, the speed in the other units, the engine speed.
        hold: [String; 4],
    },
    /// No safe speed was found: the words for it.
    None(String),
}

/// A page: what of which row stands on it, and whether it is the last.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Page {
    /// Its number, from 1.
    pub number: usize,
    /// How many there are.
    pub count: usize,
    /// Rows.
    pub parts: Vec<Part>,
}

impl Sheet {
    /// The pages.
    #[must_use]
    pub fn pages(&self) -> Vec<Page> {
        let blocks: Vec<Block> = self.rows.iter().map(Row::block).collect();
        let left = |first: bool| PAGE - self.head(first) - FOOT;
        let room = Room { first: left(true), further: left(false), tail: self.tail() };
        let parts = pages(&blocks, room);
        let count = parts.len();
        parts.into_iter().enumerate().map(|(index, parts)| Page { number: index + 1, count, parts }).collect()
    }

    /// Numbers of the descents that stand on a page, in the order of their rows.
    #[must_use]
    pub fn numbers_on(&self, page: &Page) -> Vec<usize> {
        page.parts.iter().filter_map(|it| self.rows[it.block].number()).collect()
    }

    /// What stands above the rows.
    fn head(&self, first: bool) -> f64 {
        /// The framed descent with what is about it.
        const HARDEST: f64 = 47.0;
        /// The picture of the road.
        const STRIP: f64 = 73.5;
        /// Heads of the columns.
        const HEADS: f64 = 12.5;
        let top = of_lines(&self.name, 18.0, 400.0, true)
            + of_lines(&self.about, 10.0, 400.0, false)
            + self.covers.as_ref().map_or(0.0, |it| of_lines(it, 10.0, 400.0, true));
        let stop = self.stop.as_ref().map_or(0.0, |[stop, why]| {
            of_lines(stop, 20.0, 500.0, true) + of_lines(why, 11.0, 500.0, false) + 16.0
        });
        let notes: f64 = self.notes.iter().map(|it| of_lines(it, 10.5, 510.0, false) + 2.0).sum();
        let notes = if first && !self.notes.is_empty() { notes + 4.0 } else { 0.0 };
        let hardest = if self.hardest.is_some() { HARDEST } else { 0.0 };
        let mine = if first { self.mine() } else { self.mine_again() };
        // Which page it is, and which descents stand on it.
        let page_of = one_line(13.0) + one_line(9.0) * if self.is_along_road() { 1.0 } else { 3.0 } + 7.6;
        top.max(page_of) + 5.5 + mine + stop + notes + hardest + STRIP + HEADS
    }

    /// What it was worked out for, and whether that is the driver's truck.
    fn mine(&self) -> f64 {
        const WIDE: f64 = 276.0;
        let worked = one_line(10.0) + of_lines(&self.worked, 10.0, 220.0, false);
        let checks = self.checks.chunks(2).map(|pair| pair.iter().map(|it| check(it)).fold(0.0, f64::max));
        let example = self.example.as_ref().map_or(0.0, |it| of_lines(it, 10.0, WIDE, true));
        let empty = high(lines_of(&self.one_empty, WIDE / 10.0), 10.0);
        worked.max(one_line(10.0) + checks.sum::<f64>() + empty + example + 9.0) + 3.0
    }

    /// The same on a page behind the first, line by line.
    fn mine_again(&self) -> f64 {
        /// A box to tick takes about as much as these.
        const BOX: &str = " ww";
        let example = self.example.as_ref().map_or(0.0, |it| of_lines(it, 10.0, WIDTH, true));
        // Nothing is broken within a check.
        let checks = self.checks.iter().map(|it| Piece::Plain(format!("{BOX}{}", it.replace(' ', "\u{a0}"))));
        let asked: Vec<Piece> = std::iter::once(Piece::Strong(self.your_truck.clone()))
            .chain(checks)
            .chain(std::iter::once(Piece::Plain(" ".to_owned())))
            .chain(self.one_empty.clone())
            .collect();
        of_lines(&self.facts, 10.0, WIDTH, false) + high(lines_of(&asked, WIDTH / 10.0), 10.0) + example + 3.0
    }

    /// Whether the rows are in the order of their numbers, so that a few words say which are on a page.
    fn is_along_road(&self) -> bool {
        self.rows.iter().filter_map(Row::number).is_sorted()
    }

    /// What stands below the last row; all cautions stand in it, so that their short line is left out.
    fn tail(&self) -> f64 {
        let list = |all: &[String], width: f64| -> f64 {
            all.iter().map(|it| of_lines(it, 10.0, width, false) + 3.0).sum()
        };
        let lists = list(&self.before, 240.0).max(list(&self.trouble, 240.0)) + 22.0;
        lists
            + of_lines(&self.places, 10.0, WIDTH, false)
            + 3.0
            + of_lines(&self.small, 9.0, WIDTH, false)
            + 6.5
            - FOOT
    }
}

/// The caution below each page.
const FOOT: f64 = 15.0;

fn check(text: &str) -> f64 {
    of_lines(text, 10.0, 119.0, false) + 1.0
}

fn one_line(size: f64) -> f64 {
    size * LEADING
}

/// Height of a text of a size within a width.
fn of_lines(text: &str, size: f64, width: f64, bold: bool) -> f64 {
    high(lines(text, width / size, bold), size)
}

fn high(lines: usize, size: f64) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "a text has far fewer than 2⁵² lines")]
    let count = lines as f64;
    count * one_line(size)
}

impl Row {
    /// Number of the descent; `None` of what is not known.
    fn number(&self) -> Option<usize> {
        match self {
            Self::Descent(row) => Some(row.number),
            Self::Unknown(_) => None,
        }
    }

    /// The height of the row, and of its legs.
    #[must_use]
    pub fn block(&self) -> Block {
        match self {
            Self::Unknown(text) => {
                let whole = of_lines(text, KNOW_SIZE, WIDTH - 30.0, true) + ABOUT_ROW;
                Block { whole, pieces: vec![whole] }
            }
            Self::Descent(row) => row.block(),
        }
    }
}

impl DescentRow {
    fn block(&self) -> Block {
        let mut pieces: Vec<f64> = self.ways.iter().map(|it| it.height() + ABOUT_ROW).collect();
        let know: usize = self.know.iter().map(|it| lines_of(it, KNOW / KNOW_SIZE)).sum();
        let know = high(know, KNOW_SIZE) + ABOUT_ROW;
        #[allow(clippy::cast_precision_loss, reason = "a descent has far fewer than 2⁵² legs")]
        let between = ABOUT_ROW * pieces.len().saturating_sub(1) as f64;
        let whole = (pieces.iter().sum::<f64>() - between).max(know).max(LEAST_ROW);
        if let Some(first) = pieces.first_mut() {
            *first = first.max(know);
        }
        Block { whole, pieces }
    }
}

impl Way {
    fn height(&self) -> f64 {
        let change = self.change.as_ref().map_or(0.0, |it| of_lines(it, 10.5, DO, true) + 3.0);
        // What stands before the distance and the distance share a line where there is room for both.
        let [word, distance, _] = &self.by;
        let by = em(word, false) * 9.0 + (0.2 + em(distance, true)) * 13.0;
        let by = if by > BY { LEG + one_line(13.0) } else { LEG };
        let how = match &self.how {
            How::Held { .. } => LEG,
            How::None(words) => of_lines(words, 17.0, DO - 76.0, true).max(LEG),
        };
        change + how.max(by)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn way(change: bool) -> Way {
        let text = String::from("4");
        let hold = [text.clone(), text.clone(), text.clone(), text.clone()];
        Way {
            change: change.then(|| "Slow to 20 km/h, then gear 4.".to_owned()),
            by: [text.clone(), text.clone(), text],
            how: How::Held { gear: 4, stage: 2, hold },
        }
    }

    fn row(number: usize, legs: usize, facts: usize) -> Row {
        let fact = vec![Piece::Plain("foot km 46.6 (29.0)".to_owned())];
        let ways = (0..legs).map(|leg| way(leg > 0)).collect();
        Row::Descent(DescentRow { number, is_hardest: false, ways, know: vec![fact; facts] })
    }

    fn sheet(rows: Vec<Row>, notes: usize) -> Sheet {
        let text = |letters: usize| "n".repeat(letters);
        Sheet {
            name: text(20),
            about: text(60),
            know_head: text(20),
            covers: None,
            worked: text(90),
            facts: text(60),
            your_truck: text(18),
            one_empty: vec![Piece::Plain(text(40))],
            checks: vec![text(10); 4],
            example: None,
            stop: None,
            notes: vec!["note ".repeat(34); notes],
            hardest: None,
            rows,
            before: vec![text(30); 4],
            trouble: vec![text(30); 4],
            places: text(40),
            small: "small print ".repeat(30),
        }
    }

    fn of_pages(sheet: &Sheet) -> Vec<usize> {
        sheet.pages().iter().map(|it| it.parts.len()).collect()
    }

    #[test]
    fn every_row_stands_on_a_page_however_many_there_are() {
        for count in [1, 9, 17, 60, 300] {
            let rows = (1..=count).map(|number| row(number, 1 + number % 3, 1 + number % 5)).collect();
            let pages = sheet(rows, 2).pages();
            let blocks: Vec<usize> = pages.iter().flat_map(|it| &it.parts).map(|it| it.block).collect();
            assert_eq!(blocks, (0..count).collect::<Vec<_>>());
            assert!(
                pages.iter().enumerate().all(|(index, it)| it.number == index + 1 && it.count == pages.len())
            );
        }
    }

    #[test]
    fn notes_take_room_on_the_first_page_and_legs_in_their_row() {
        let rows = || (1..=40).map(|number| row(number, 1, 2)).collect::<Vec<_>>();
        let [bare, noted] = [0, 6].map(|notes| of_pages(&sheet(rows(), notes)));
        assert!(noted[0] < bare[0] && noted[1] == bare[1], "{bare:?} {noted:?}");
        let (one, two) = (row(1, 1, 1).block(), row(1, 2, 1).block());
        assert!(two.whole > one.whole + LEG && two.pieces.len() == 2, "{two:?}");
        assert!(row(1, 1, 9).block().whole > one.whole);
        assert!(two.pieces.iter().sum::<f64>() >= two.whole);
    }

    #[test]
    fn an_unknown_stretch_takes_the_lines_of_its_words() {
        let [short, long] =
            ["km 1 – 2", &"km 1 – 2, ".repeat(30)].map(|it| Row::Unknown((*it).to_owned()).block());
        assert!(short.whole < LEAST_ROW && long.whole > 3.0 * short.whole - 3.0 * ABOUT_ROW);
    }
}
