//! What the card for the cab says, before it is put into words: which facts, in which order.

use crate::format::Units;
use crate::marker::Marker;
use ::words::down::{self, Touched, metres};
use solver::day::Day;
use solver::plan::{Advice, Choice, Descent, Plan, Snub, Verdict};
use solver::road::{Place, PlaceKind, PostedLimit, Span};
use solver::truck::{Gear, RetarderKind, TruckSpec};
use solver::units::{Grade, MetresPerSecond};

/// A place this near behind the foot waits at the foot, m.
const AT_FOOT_M: f64 = 1_500.0;
/// A place this near before the foot waits there too, m.
const BEFORE_FOOT_M: f64 = 300.0;
/// What begins this near behind the foot is told with it, m: there is no time to look it up.
const NEAR_M: f64 = 1_000.0;

/// In which order the card has its descents.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Order {
    /// As they are driven.
    AlongRoad,
    /// The worst first.
    WorstFirst,
}

/// A row of the card.
#[derive(Debug, Clone, PartialEq)]
pub enum Stretch<'a> {
    /// A descent.
    Descent(&'a Descent),
    /// Stretches that were not assessed, one behind the other without a descent between them, by their ends, m.
    Unknown(Vec<(f64, f64)>),
}

/// What comes soon behind a foot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Beyond {
    /// A stretch that was not assessed.
    Unknown {
        /// From the foot to where it begins, m.
        after_m: f64,
        /// Where it ends, m from the start.
        to_m: f64,
    },
    /// The next descent.
    Crest {
        /// Its number.
        number: usize,
        /// From the foot to its crest, m.
        after_m: f64,
        /// The gear to be in there, and whether it is another than at the foot; `None` where either
        /// descent has no safe speed.
        gear: Option<(Gear, bool)>,
    },
}

/// What a card is about.
#[derive(Clone, Copy)]
pub struct CardOf<'a> {
    /// The plan.
    pub plan: &'a Plan,
    /// Truck and day.
    pub truck: &'a TruckSpec,
    /// Whether the truck is the example that nobody said is theirs.
    pub is_example: bool,
    /// The day.
    pub day: &'a Day,
    /// Places along the road.
    pub places: &'a [Place],
    /// Limits posted on stretches of the road.
    pub limits: &'a [PostedLimit],
    /// Stretches of the road that were not assessed.
    pub unassessed: &'a [Span],
    /// Distance of grid points, m.
    pub step_m: f64,
    /// Length of the road, m.
    pub length_m: f64,
    /// Heights of start and end in the direction of travel, m.
    pub ends_m: (f64, f64),
    /// Driven the other way round than recorded.
    pub reversed: bool,
    /// What stands on the markers.
    pub marker: Marker,
    /// The units chosen; distances and speeds stand in both.
    pub units: Units,
}

/// One thing to know of a descent. Places are m from the start of the road.
#[derive(Debug, Clone, PartialEq)]
pub enum Know {
    /// How the descent is held; always the first fact.
    Verdict(Choice),
    /// The descent begins where a stretch that was not assessed ends.
    BeginsUnknown,
    /// A part of the descent was not assessed.
    NotAssessed {
        /// Where the part begins.
        from_m: f64,
        /// Where the part ends.
        to_m: f64,
    },
    /// How the service brakes are used.
    Snub(Snub),
    /// Where the service brakes are needed, or only touch.
    Brakes {
        /// The service brakes are needed there, not only touched.
        needed: bool,
        /// The worst of the places, where they begin.
        at_m: Vec<f64>,
        /// How many more places there are.
        more: usize,
    },
    /// Steep bits up to this grade cannot be ruled out.
    InDoubt(Grade),
    /// The descent eases here, but is not over.
    Easing {
        /// Where.
        at_m: f64,
    },
    /// The curve that asks for most.
    SlowCurve {
        /// Speed, m/s.
        speed: f64,
        /// Where it begins.
        at_m: f64,
        /// How many ask for less than the hold speed, this one among them, and that speed, m/s; `None` where no
        /// speed is safe.
        below_hold: Option<(usize, f64)>,
    },
    /// How long it is, and how far it falls, m.
    Size {
        /// Length.
        length_m: f64,
        /// Height lost.
        drop_m: f64,
    },
    /// Where it is steepest.
    Steepest {
        /// Grade, negative.
        grade: Grade,
        /// Where that begins.
        at_m: f64,
    },
    /// A limit posted on the way.
    Posted {
        /// Speed, m/s.
        speed: f64,
        /// Where the limit begins, within the descent.
        from_m: f64,
        /// Where the limit ends, within the descent.
        to_m: f64,
    },
    /// An escape ramp.
    Ramp {
        /// Where.
        at_m: f64,
    },
    /// A sign may forbid engine brakes here.
    Quiet {
        /// Where.
        at_m: f64,
    },
    /// What waits at the foot.
    AtFoot {
        /// Its name; may be empty.
        name: String,
        /// Where.
        at_m: f64,
    },
    /// Where it ends.
    Foot {
        /// Where.
        at_m: f64,
        /// What comes soon behind it.
        beyond: Option<Beyond>,
    },
    /// The descent is cut off where the road is not assessed.
    CutShort {
        /// Where.
        at_m: f64,
        /// The gear to stay in; `None` where no speed is safe.
        gear: Option<Gear>,
    },
}

impl Know {
    /// Whether it is about how the descent is held, and what of it is in doubt: read before all else.
    #[must_use]
    pub fn is_of_holding(&self) -> bool {
        match self {
            Self::Verdict(_)
            | Self::BeginsUnknown
            | Self::NotAssessed { .. }
            | Self::Snub(_)
            | Self::Brakes { .. }
            | Self::InDoubt(_) => true,
            Self::Size { .. }
            | Self::Steepest { .. }
            | Self::Easing { .. }
            | Self::SlowCurve { .. }
            | Self::Posted { .. }
            | Self::Ramp { .. }
            | Self::Quiet { .. }
            | Self::AtFoot { .. }
            | Self::Foot { .. }
            | Self::CutShort { .. } => false,
        }
    }
}

impl<'a> CardOf<'a> {
    /// What to know of a descent, in the order in which it is read.
    #[must_use]
    pub fn know(&self, descent: &Descent) -> Vec<Know> {
        let (crest, foot) = (descent.crest.0, descent.foot.0);
        let mut all = vec![Know::Verdict(descent.choice)];
        all.extend(self.begins_unknown(descent).then_some(Know::BeginsUnknown));
        let blanks = down::blanks(descent, self.unassessed);
        all.extend(
            blanks.map(|(from, to)| Know::NotAssessed { from_m: self.metres(from), to_m: self.metres(to) }),
        );
        all.extend(descent.choice.advice().and_then(|advice| advice.snub).map(Know::Snub));
        if let Some(touched) = Touched::of(descent) {
            let at_m: Vec<f64> = touched.worst.iter().map(|it| it.from.0).collect();
            let (needed, more) = (touched.needed, touched.more);
            all.extend((!at_m.is_empty()).then_some(Know::Brakes { needed, at_m, more }));
            all.extend(touched.in_doubt.map(Know::InDoubt));
        }
        all.push(Know::Size { length_m: foot - crest, drop_m: descent.drop.0 });
        let steepest = descent.steepest.iter().min_by(|a, b| a.grade.0.total_cmp(&b.grade.0));
        all.extend(steepest.map(|it| Know::Steepest { grade: it.grade, at_m: it.from.0 }));
        all.extend(down::easings(descent).map(|it| Know::Easing { at_m: self.metres(it.from) }));
        let slow = self.plan.slowest_curve(descent);
        let count = self.plan.slow_curves(descent).count();
        let below_hold = descent.choice.advice().map(|advice| (count, advice.speed.0));
        all.extend(slow.map(|it| Know::SlowCurve {
            speed: it.speed.0,
            at_m: self.metres(it.curve.from),
            below_hold,
        }));
        let limits = self.limits.iter().filter_map(|it| it.within(descent.from, descent.to));
        all.extend(limits.map(|it| Know::Posted {
            speed: it.speed().0,
            from_m: self.metres(it.from),
            to_m: self.metres(it.to),
        }));
        let ramps = self.places_of(PlaceKind::EscapeRamp).map(|it| self.metres(it.index));
        let ramps = ramps.filter(|at_m| (crest..=foot + AT_FOOT_M).contains(at_m));
        all.extend(ramps.map(|at_m| Know::Ramp { at_m }));
        let quiet = self.places_of(PlaceKind::QuietZone).map(|it| self.metres(it.index));
        let quiet = quiet.filter(|at_m| (crest..=foot).contains(at_m));
        all.extend(quiet.map(|at_m| Know::Quiet { at_m }));
        let waits = self.places.iter().find(|it| {
            matches!(it.kind, PlaceKind::Stop | PlaceKind::Settlement)
                && (foot - BEFORE_FOOT_M..=foot + AT_FOOT_M).contains(&self.metres(it.index))
        });
        all.extend(waits.map(|it| Know::AtFoot { name: it.name.clone(), at_m: self.metres(it.index) }));
        all.push(self.ends(descent));
        all
    }

    /// How a descent ends.
    fn ends(&self, descent: &Descent) -> Know {
        let at_m = descent.foot.0;
        let gear = last_gear(descent);
        if descent.cut_short {
            return Know::CutShort { at_m, gear };
        }
        let near = |from_m: &f64| (0.0..=NEAR_M).contains(&(from_m - at_m));
        let unknown = self.unassessed.iter().map(|it| (self.metres(it.from), self.metres(it.to)));
        let unknown = unknown.filter(|(from_m, _)| near(from_m)).map(|(from_m, to_m)| {
            let after_m = from_m - at_m;
            (after_m, Beyond::Unknown { after_m, to_m })
        });
        let next = self.plan.descents.iter().filter(|it| it.from >= descent.to && near(&it.crest.0));
        let next = next.map(|it| {
            let after_m = it.crest.0 - at_m;
            let first = it.choice.advice().map(|advice| down::first(it, advice).0);
            // A higher gear is for after the crest: until then the lower one is the careful choice.
            let gear = gear.zip(first).map(|(now, first)| (now.min(first), first < now));
            (after_m, Beyond::Crest { number: it.number, after_m, gear })
        });
        let beyond = unknown.chain(next).min_by(|a, b| a.0.total_cmp(&b.0)).map(|it| it.1);
        Know::Foot { at_m, beyond }
    }

    /// The rows: each descent, and each stretch that was not assessed unless its descent tells of it. The
    /// worst first, such stretches stand behind all descents.
    #[must_use]
    pub fn stretches(&self, order: Order) -> Vec<Stretch<'a>> {
        let told = |it: &&Span| self.plan.descents.iter().any(|of| of.from <= it.from && it.to <= of.to);
        let unknown = self.unassessed.iter().filter(|it| !told(it));
        let mut unknown = unknown.map(|it| (it.from, (self.metres(it.from), self.metres(it.to)))).peekable();
        let mut rows = Vec::new();
        if order == Order::WorstFirst {
            rows.extend(self.plan.worst_first().into_iter().map(Stretch::Descent));
            rows.extend(unknown_rows(unknown.map(|it| it.1).collect()));
            return rows;
        }
        for descent in &self.plan.descents {
            let mut before = Vec::new();
            while let Some((_, span)) = unknown.next_if(|it| it.0 < descent.from) {
                before.push(span);
            }
            rows.extend(unknown_rows(before));
            rows.push(Stretch::Descent(descent));
        }
        rows.extend(unknown_rows(unknown.map(|it| it.1).collect()));
        rows
    }

    /// Whether a descent begins where a stretch that was not assessed ends: what lies before it may
    /// be a part of the same hill.
    fn begins_unknown(&self, descent: &Descent) -> bool {
        self.unassessed.iter().any(|it| (it.from..=it.to).contains(&descent.from))
    }

    /// Whether the retarder is tried before the crest: there is one, and its stages may be used on
    /// this day.
    #[must_use]
    pub fn tries_retarder(&self) -> bool {
        self.truck.retarder.kind() != RetarderKind::None && self.day.withheld().is_none()
    }

    /// Numbers of the descents for which no safe speed was found, along the road.
    #[must_use]
    pub fn without_speed(&self) -> Vec<usize> {
        let none = |it: &&Descent| it.choice.verdict() == Verdict::NoSafeSpeed;
        self.plan.descents.iter().filter(none).map(|it| it.number).collect()
    }

    /// The descents as a table for other programs, by what stands on the markers, with the direction
    /// of travel and whose truck it is in the last columns.
    #[must_use]
    pub fn csv(&self) -> String {
        let way = if self.reversed { "against recording" } else { "as recorded" };
        let text = solver::report::csv::descents(self.plan, &|metres| self.marker.at(metres));
        let truck = if self.is_example { "example truck not yours" } else { "as entered" };
        let more = |(row, line): (usize, &str)| match row {
            0 => format!("{line},direction,truck\r\n"),
            _ => format!("{line},{way},{truck}\r\n"),
        };
        text.lines().enumerate().map(more).collect()
    }

    /// Places of a kind, along the road.
    pub fn places_of(&self, kind: PlaceKind) -> impl Iterator<Item = &'a Place> {
        self.places.iter().filter(move |it| it.kind == kind)
    }

    /// The first descent that has an advice: its gear is engaged before its crest.
    #[must_use]
    pub fn first_held(&self) -> Option<(&'a Descent, &'a Advice)> {
        let first = self.plan.descents.first()?;
        first.choice.advice().map(|advice| (first, advice))
    }

    /// Engine speed in a gear at a road speed, 1/min, from the engine speed of an advice.
    #[must_use]
    pub fn engine_speed(&self, advice: &Advice, gear: Gear, speed: MetresPerSecond) -> f64 {
        let ratio = |gear: Gear| self.truck.gears.get(usize::from(gear.number()) - 1).copied().unwrap_or(1.0);
        advice.engine_speed.0 * (ratio(gear) / ratio(advice.gear)) * (speed.0 / advice.speed.0)
    }

    /// Metres from the start of the road to a grid point.
    #[must_use]
    pub fn metres(&self, index: usize) -> f64 {
        metres(index, self.step_m)
    }
}

/// Rows of stretches of which nothing is known, so many in one that it is read at a glance.
fn unknown_rows<'a>(spans: Vec<(f64, f64)>) -> impl Iterator<Item = Stretch<'a>> {
    const MOST_SPANS: usize = 12;
    let rows: Vec<Stretch<'a>> = spans.chunks(MOST_SPANS).map(|it| Stretch::Unknown(it.to_vec())).collect();
    rows.into_iter()
}

/// The gear at the foot; `None` where no speed is safe.
fn last_gear(descent: &Descent) -> Option<Gear> {
    let advice = descent.choice.advice()?;
    Some(descent.legs.last().map_or(advice.gear, |leg| leg.gear))
}
