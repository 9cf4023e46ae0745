//! Many roads in lines: what stands in each column, and in which order they come.

use crate::chart::RoadPicture;
use crate::compare::Figures;
use solver::order::ascending;
use solver::plan::{Choice, Plan, Verdict};
use solver::road::Class;
use workers::message::RoadFacts;

/// Which way the roads of a list are driven.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Way {
    /// The way whose hardest descent is worse, each road by itself.
    #[default]
    Harder,
    /// As recorded.
    Recorded,
    /// Against the direction of recording.
    Reversed,
}

/// A column by which lines can be put in order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    /// Name of the road.
    Road,
    /// Length of the road.
    Length,
    /// Length of its hardest descent.
    Hardest,
    /// Mean grade of that.
    Grade,
    /// Slowest hold speed.
    Hold,
    /// How the hardest descent is held.
    Verdict,
    /// Time in all.
    Time,
    /// Fuel.
    Fuel,
    /// Work of retarder, engine and service brakes.
    Braking,
    /// Hottest service brakes after a hard stop.
    Heat,
    /// Quality of the heights.
    Heights,
}

impl Column {
    /// All of them, from left to right.
    pub const ALL: [Self; 11] = [
        Self::Road,
        Self::Length,
        Self::Hardest,
        Self::Grade,
        Self::Hold,
        Self::Verdict,
        Self::Time,
        Self::Fuel,
        Self::Braking,
        Self::Heat,
        Self::Heights,
    ];
}

/// The hardest descent of a road.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hardest {
    /// Its crest, m from the start.
    pub crest_m: f64,
    /// Its length, m.
    pub length_m: f64,
    /// Its mean grade, rise over run.
    pub grade: f64,
    /// How it is held.
    pub choice: Choice,
    /// The worse the higher: the order of a plan's own descents.
    pub severity: f64,
}

/// A road driven one way, in figures.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Name of the road.
    pub name: String,
    /// What it comes to.
    pub figures: Figures,
    /// Its hardest descent; `None` where it has none.
    pub hardest: Option<Hardest>,
    /// The highest brake temperature allowed, °C.
    pub limit_c: f64,
    /// Quality of its heights.
    pub heights: Class,
}

impl Line {
    /// The line of a road that was worked out.
    #[must_use]
    pub fn of(name: &str, road: &RoadFacts, plan: &Plan, picture: &RoadPicture, limit_c: f64) -> Self {
        let hardest = plan.deciding().map(|it| Hardest {
            crest_m: it.crest.0,
            length_m: it.foot.0 - it.crest.0,
            grade: it.mean.0,
            choice: it.choice,
            severity: it.severity(),
        });
        Self {
            name: name.to_owned(),
            figures: Figures::of(road, plan, picture),
            hardest,
            limit_c,
            heights: road.quality.class,
        }
    }

    /// How its hardest descent is held; `None` where it has none.
    #[must_use]
    pub fn verdict(&self) -> Option<Verdict> {
        self.hardest.map(|it| it.choice.verdict())
    }

    /// Whether the brakes get hotter after a hard stop than the limit allows.
    #[must_use]
    pub fn too_hot(&self) -> bool {
        self.figures.hottest_c > self.limit_c
    }

    /// What a planner looks at first is high: the worst, the longest, the slowest.
    fn weight(&self, column: Column) -> f64 {
        let none = f64::NEG_INFINITY;
        let figures = &self.figures;
        match column {
            Column::Road => 0.0,
            Column::Length => figures.length_m,
            Column::Hardest => self.hardest.map_or(none, |it| it.length_m),
            Column::Grade => self.hardest.map_or(none, |it| -it.grade),
            // A descent without a safe speed is slower than any.
            Column::Hold => match self.verdict() {
                Some(Verdict::NoSafeSpeed) => f64::INFINITY,
                _ => figures.slowest_hold.map_or(none, |it| -it),
            },
            Column::Verdict => self.hardest.map_or(none, |it| it.severity),
            Column::Time => figures.time_s,
            Column::Fuel => figures.fuel_j,
            Column::Braking => figures.holding_j + figures.service_j,
            Column::Heat => figures.hottest_c,
            Column::Heights => match self.heights {
                Class::Good => 0.0,
                Class::Fair => 1.0,
                Class::Poor => 2.0,
            },
        }
    }
}

/// Which of both ways of a road stands in its line: 0 as recorded, 1 against it. `None` where that way is not
/// worked out. What is turned by hand stands the other way.
#[must_use]
pub fn way_shown(lines: [Option<&Line>; 2], way: Way, turned: bool) -> Option<usize> {
    let severity = |line: &Line| line.hardest.map_or(f64::NEG_INFINITY, |it| it.severity);
    let index = match (way, lines) {
        (Way::Harder, [Some(recorded), Some(reversed)]) => {
            usize::from(severity(reversed) > severity(recorded))
        }
        // Until both are known nobody can say which is the harder one.
        (Way::Harder | Way::Recorded, _) => 0,
        (Way::Reversed, _) => 1,
    };
    let index = if turned { 1 - index } else { index };
    lines[index].map(|_| index)
}

/// The order of lines by a column, the worst first unless `turned`; those that are not known last, in the order
/// given.
#[must_use]
pub fn order(lines: &[Option<&Line>], column: Column, turned: bool) -> Vec<usize> {
    let known = || (0..lines.len()).filter_map(|index| Some((index, lines[index]?)));
    let mut order: Vec<usize> = if column == Column::Road {
        let mut named: Vec<(String, usize)> = Vec::new();
        for (index, line) in known() {
            let name = line.name.to_ascii_lowercase();
            let at = named.partition_point(|(other, _)| *other <= name);
            named.insert(at, (name, index));
        }
        named.into_iter().map(|(_, index)| index).collect()
    } else {
        let indices: Vec<usize> = known().map(|(index, _)| index).collect();
        // Turned over here rather than below: equal ones keep the order given either way.
        let sign = if turned { 1.0 } else { -1.0 };
        let weights = known().map(|(_, line)| sign * line.weight(column));
        ascending(weights).into_iter().map(|at| indices[at]).collect()
    };
    if turned && column == Column::Road {
        order.reverse();
    }
    order.extend((0..lines.len()).filter(|index| lines[*index].is_none()));
    order
}

/// Rows of cells as text for a spreadsheet. `decimal` is the sign that the language writes in numbers: where
/// that is a comma, cells are parted by semicolons, as spreadsheets of that language expect. The text begins
/// with the mark of its encoding; without it they take accents for something else. A cell that would be taken
/// for a formula is made text.
#[must_use]
pub fn spreadsheet(rows: &[Vec<Cell>], decimal: char) -> String {
    let separator = if decimal == ',' { b';' } else { b',' };
    let mut builder = csv::WriterBuilder::new();
    builder.delimiter(separator).terminator(csv::Terminator::CRLF).flexible(true);
    let mut writer = builder.from_writer(Vec::from("\u{feff}"));
    for row in rows {
        // Writing into memory does not fail.
        let _ = writer.write_record(row.iter().map(|cell| cell.written(decimal)));
    }
    writer.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}

/// What stands in a cell of a spreadsheet.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    /// Words.
    Text(String),
    /// A number with so many decimals.
    Number(f64, usize),
    /// Nothing: it is not known, or there is none.
    Empty,
}

impl Cell {
    fn written(&self, decimal: char) -> String {
        match self {
            Self::Text(text) if text.starts_with(['=', '+', '-', '@', '\t', '\r']) => format!("'{text}"),
            Self::Text(text) => text.clone(),
            Self::Number(value, decimals) => {
                format!("{value:.decimals$}").replace('.', decimal.encode_utf8(&mut [0; 4]))
            }
            Self::Empty => String::new(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(name: &str, hottest_c: f64, time_s: f64) -> Line {
        let figures = Figures {
            worst: None,
            descents: 0,
            slowest_hold: None,
            hottest_c,
            braked_m: 0.0,
            service_j: 0.0,
            holding_j: 0.0,
            down_s: 0.0,
            up_s: 0.0,
            time_s,
            crawl: None,
            rise_m: 0.0,
            fall_m: 0.0,
            length_m: 1_000.0,
            fuel_j: 0.0,
            curves: 0,
            stops: [0; 3],
            blank_m: 0.0,
        };
        Line { name: name.to_owned(), figures, hardest: None, limit_c: 260.0, heights: Class::Good }
    }

    #[test]
    fn the_worst_comes_first_and_what_is_not_known_last() {
        let (a, b, c) = (line("b", 80.0, 60.0), line("A", 300.0, 60.0), line("c", 90.0, 30.0));
        let lines = [Some(&a), None, Some(&b), Some(&c)];
        assert_eq!(order(&lines, Column::Heat, false), [2, 3, 0, 1]);
        assert_eq!(order(&lines, Column::Heat, true), [0, 3, 2, 1]);
        // Equal ones keep the order given, turned or not.
        assert_eq!(order(&lines, Column::Time, false), [0, 2, 3, 1]);
        assert_eq!(order(&lines, Column::Time, true), [3, 0, 2, 1]);
        assert_eq!(order(&lines, Column::Road, false), [2, 0, 3, 1]);
        assert_eq!(order(&lines, Column::Road, true), [3, 0, 2, 1]);
        assert!(b.too_hot() && !a.too_hot());
    }

    #[test]
    fn a_way_that_is_not_worked_out_is_not_shown() {
        let known = line("a", 80.0, 60.0);
        assert_eq!(way_shown([Some(&known), None], Way::Harder, false), Some(0));
        assert_eq!(way_shown([Some(&known), None], Way::Harder, true), None);
        assert_eq!(way_shown([Some(&known), None], Way::Reversed, false), None);
        assert_eq!(way_shown([Some(&known), Some(&known)], Way::Recorded, true), Some(1));
        assert_eq!(way_shown([None, None], Way::Harder, false), None);
    }

    /// RFC 4180 for quotation marks; semicolons beside decimal commas are common practice, no source.
    #[test]
    fn cells_survive_a_spreadsheet() {
        let rows = [
            vec![Cell::Text("a, \"b\"".into()), Cell::Number(1234.56, 1), Cell::Empty],
            vec![Cell::Text("=1+1".into()), Cell::Text("c;d".into()), Cell::Number(-0.05, 2)],
        ];
        assert_eq!(spreadsheet(&rows, '.'), "\u{feff}\"a, \"\"b\"\"\",1234.6,\r\n'=1+1,c;d,-0.05\r\n");
        assert_eq!(spreadsheet(&rows, ','), "\u{feff}\"a, \"\"b\"\"\";1234,6;\r\n'=1+1;\"c;d\";-0,05\r\n");
    }
}
