//! The plan as plain data, for the page, the card and the tests.

use super::none::NoSafeSpeed;
use super::stages::StageSpan;
use super::table::Table;
use super::totals::Totals;
use super::ways::{Leg, Proof, Relief, Touch, WayDown};
use crate::day::Withheld;
use crate::motion::Hold;
use crate::order::ascending;
use crate::road::Curve;
use crate::truck::{Gear, Stage};
use crate::units::{Celsius, Grade, Joules, Kilograms, Metres, MetresPerSecond, RevPerMin, Seconds};
use serde::{Deserialize, Serialize};

/// The plan of one road for one truck on one day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Plan {
    /// Descents in road order.
    pub descents: Vec<Descent>,
    /// Sums over the road.
    pub totals: Totals,
    /// Curves that ask for less than the speed limit, in road order.
    pub curves: Vec<SlowCurve>,
    /// Notes on the whole plan that must be said with it.
    pub notes: Vec<Note>,
}

/// A curve that asks for less than the speed limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct SlowCurve {
    /// Where it lies, its radius (an estimate) and which way it turns.
    pub curve: Curve,
    /// The fastest that this truck should take the curve on this day.
    pub speed: MetresPerSecond,
}

impl Plan {
    /// The curves of a descent that ask for less than its hold speed. Without a hold speed, all that ask for
    /// less than the limit.
    pub fn slow_curves(&self, descent: &Descent) -> impl Iterator<Item = &SlowCurve> {
        let hold = descent.choice.advice().map_or(f64::INFINITY, |advice| advice.speed.0);
        let (from, to) = (descent.from, descent.to);
        let within = move |it: &&SlowCurve| it.curve.to > from && it.curve.from < to;
        self.curves.iter().filter(within).filter(move |it| it.speed.0 < hold)
    }

    /// The slowest of [`Plan::slow_curves`].
    #[must_use]
    pub fn slowest_curve(&self, descent: &Descent) -> Option<SlowCurve> {
        self.slow_curves(descent).min_by(|a, b| a.speed.0.total_cmp(&b.speed.0)).copied()
    }

    /// The holds with which the plan's run takes its descents.
    #[must_use]
    pub fn holds(&self) -> Vec<Hold> {
        self.descents.iter().flat_map(Descent::holds).collect()
    }

    /// The descent that decides whether and how the road can be driven, by [`Descent::severity`];
    /// `None` on a road without a descent.
    #[must_use]
    pub fn deciding(&self) -> Option<&Descent> {
        self.worst_first().first().copied()
    }

    /// Descents, the worst first, by [`Descent::severity`].
    #[must_use]
    pub fn worst_first(&self) -> Vec<&Descent> {
        let order = ascending(self.descents.iter().map(|descent| -descent.severity()));
        order.into_iter().map(|index| &self.descents[index]).collect()
    }
}

impl Descent {
    /// A number that is larger for what is worse; it compares descents of different roads, too. The verdict
    /// counts first. Where the retarder holds, slower is worse, and at equal speeds hotter. Where the service
    /// brakes are used, hotter is worse.
    #[must_use]
    pub fn severity(&self) -> f64 {
        let heat = |advice: &Advice| advice.hottest_after_stop.0;
        let within = match &self.choice {
            Choice::Held(advice) => match advice.verdict {
                // Hold speeds differ by whole km/h: a hundred-thousandth of a temperature is far less.
                Verdict::RetarderHolds | Verdict::LittleInReserve => heat(advice) * 1e-5 - advice.speed.0,
                Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => heat(advice),
            },
            Choice::NoSafeSpeed(none) => none.hottest_after_stop.0,
        };
        // The verdict first: no speed or temperature comes near a million.
        f64::from(self.choice.verdict() as u8) * 1e6 + within.clamp(-1e5, 1e5)
    }
}

/// A note that must be said with the whole plan.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Note {
    /// No retarder stage is recommended, and why.
    StagesWithheld(Withheld),
    /// Wet road: the force of the retarder is capped.
    WetCap,
    /// The gearbox would choose gears by itself.
    HoldByHand,
    /// The gearbox shifts up by itself below the highest allowed engine speed, and drops the retarder.
    ShiftsUpByItself,
    /// The road starts in the middle of a descent: what the brakes have taken already is unknown.
    StartsInDescent,
    /// Parts of the road could not be assessed; nothing is said there.
    PartlyUnassessed,
    /// Heights are poor: grades are advisory only.
    PoorHeights,
    /// Away from the descents there are places where one hard stop would pass the heat limit.
    HotElsewhere {
        /// The hottest of them, from the start of the road.
        at: Metres,
    },
    /// The truck cannot climb part of this road at full load.
    CannotClimb,
}

/// The steepest mean grade over a given length.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Steepest {
    /// The length.
    pub length: Metres,
    /// Where it begins, from the start of the road.
    pub from: Metres,
    /// The grade, negative.
    pub grade: Grade,
}

/// One descent, from its crest to its foot.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Descent {
    /// Its number in road order, from 1.
    pub number: usize,
    /// Grid index of the crest.
    pub from: usize,
    /// Grid index of the foot.
    pub to: usize,
    /// Distance of the crest from the start of the road.
    pub crest: Metres,
    /// Distance of the foot.
    pub foot: Metres,
    /// Height lost.
    pub drop: Metres,
    /// Mean grade from crest to foot.
    pub mean: Grade,
    /// The steepest means over 100 m, 500 m and 1 km, as far as they fit. A length shorter than the road's
    /// base length is not reliable.
    pub steepest: Vec<Steepest>,
    /// The grade that the gear is chosen for.
    pub sustained: Sustained,
    /// Hottest service brakes on arrival at the crest.
    pub brakes_at_crest: Celsius,
    /// The advice, as the day allows the service brakes to be used.
    pub choice: Choice,
    /// The advice with the service brakes kept in reserve.
    pub in_reserve: Choice,
    /// The advice where snubs within the heat limit are allowed.
    pub snubbing: Choice,
    /// The advice with 10 % more mass, used as the day allows; `None` where that mass is out
    /// of range.
    pub heavier: Option<Choice>,
    /// Answer of each gear and stage on the grade that the gear is chosen for.
    pub table: Table,
    /// Stages along the descent, crest to foot.
    pub stages: Vec<StageSpan>,
    /// Flat or rising stretches inside the descent, too short to shift up on.
    pub reliefs: Vec<Relief>,
    /// The legs of the advice, crest to foot. There is one leg where one gear is kept all the way, and none
    /// where no speed is safe.
    pub legs: Vec<Leg>,
    /// The way down in one gear; `None` where no speed is safe.
    pub one_gear: Option<WayDown>,
    /// Gear and speed at which the retarder alone holds every recorded pitch, even those that may be errors;
    /// `None` where none does.
    pub untouched: Option<WayDown>,
    /// Where the truck gains speed against the retarder alone and the service brakes are needed.
    pub touches: Vec<Touch>,
    /// What would let the retarder hold it with the reserve; `None` where it does.
    pub change: Option<Change>,
    /// Speed that the plan carries into a rise within a kilometre of the foot; nobody should release early to
    /// carry more.
    pub carried: Option<Carried>,
    /// Gear and speed that climb the same hill at full load; `None` where none does.
    pub climbs_in: Option<(Gear, MetresPerSecond)>,
    /// The descent ends where the road can no longer be assessed, not at its foot.
    pub cut_short: bool,
}

impl Descent {
    /// The holds with which the plan's run takes the descent, leg by leg. Where no speed is safe, the slowest
    /// speed tried.
    #[must_use]
    pub fn holds(&self) -> Vec<Hold> {
        match &self.choice {
            Choice::Held(advice) => {
                let snub = advice.snub.map(|snub| snub.to);
                let hold = |leg: &Leg| Hold {
                    from: leg.from,
                    to: leg.slows_from,
                    gear: leg.gear,
                    speed: leg.speed,
                    snub,
                };
                self.legs.iter().map(hold).collect()
            }
            Choice::NoSafeSpeed(none) => {
                vec![Hold { from: self.from, to: self.to, gear: none.gear, speed: none.slowest, snub: None }]
            }
        }
    }

    /// The gear and speed told for the descent as a whole: those of the slowest leg.
    #[must_use]
    pub fn hold(&self) -> Hold {
        let (gear, speed) = match &self.choice {
            Choice::Held(advice) => (advice.gear, advice.speed),
            Choice::NoSafeSpeed(none) => (none.gear, none.slowest),
        };
        Hold { from: self.from, to: self.to, gear, speed, snub: None }
    }

    /// Steepest mean grade over a kilometre, or over the whole descent where it is shorter.
    #[must_use]
    pub fn steepest_km(&self) -> Grade {
        let kilometre = self.steepest.iter().find(|it| it.length.0 >= 1_000.0);
        kilometre.map_or(self.mean, |it| it.grade)
    }
}

/// The even grade that asks for as much retarding as the descent; its gear is chosen for it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Sustained {
    /// Start of the stretch that asks for most.
    pub from: Metres,
    /// Its length.
    pub length: Metres,
    /// The grade.
    pub grade: Grade,
    /// Highest point of the descent, where an engine holds least.
    pub height: Metres,
}

/// How a descent can be driven.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Choice {
    /// In this gear at this speed.
    Held(Advice),
    /// No speed was found that keeps the limits.
    NoSafeSpeed(NoSafeSpeed),
}

impl Choice {
    /// The verdict.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        match self {
            Self::Held(advice) => advice.verdict,
            Self::NoSafeSpeed(_) => Verdict::NoSafeSpeed,
        }
    }

    /// The advice, where there is one.
    #[must_use]
    pub fn advice(&self) -> Option<&Advice> {
        match self {
            Self::Held(advice) => Some(advice),
            Self::NoSafeSpeed(_) => None,
        }
    }
}

/// Verdicts, the best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// The retarder holds the truck with the reserve asked for.
    RetarderHolds,
    /// The retarder holds it, with less than that reserve.
    LittleInReserve,
    /// It takes the service brakes as well, within the heat limit.
    NeedsServiceBrakes,
    /// No speed keeps the limits.
    NoSafeSpeed,
}

/// One gear, one speed, and what they lead to.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Advice {
    /// Verdict.
    pub verdict: Verdict,
    /// What a roll down the recorded heights without the service brakes shows.
    pub proof: Proof,
    /// Gear of the slowest leg. Where there is one leg, it is engaged before the crest and kept to the foot.
    pub gear: Gear,
    /// Strongest stage needed on the slowest leg.
    pub stage: Stage,
    /// Speed to hold on the slowest leg.
    pub speed: MetresPerSecond,
    /// Gear and speed of the fastest leg; `None` where one gear and speed are kept all the way.
    pub fastest_leg: Option<(Gear, MetresPerSecond)>,
    /// Engine speed at that road speed.
    pub engine_speed: RevPerMin,
    /// Full-stage holding force over demand on the grade that the gear is chosen for, less 1; negative where
    /// the service brakes must help.
    pub margin: f64,
    /// What keeps the speed from being higher.
    pub governs: Governs,
    /// Hottest service brakes on the descent.
    pub hottest: Celsius,
    /// Hottest service brakes after one hard stop at the worst place.
    pub hottest_after_stop: Celsius,
    /// Further warming, K, if every recorded pitch is real: all touches together, cooling counted. The heat
    /// limit is kept with it, too.
    pub touched_k: f64,
    /// Work of retarder and motoring.
    pub holding_work: Joules,
    /// Work of the service brakes.
    pub service_work: Joules,
    /// Time from crest to foot.
    pub time: Seconds,
    /// How to snub, where the service brakes must help.
    pub snub: Option<Snub>,
}

/// Service braking in snubs: down from the hold speed, release, and again.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Snub {
    /// Speed at which to brake.
    pub from: MetresPerSecond,
    /// Speed at which to release.
    pub to: MetresPerSecond,
    /// Time braking.
    pub on: Seconds,
    /// Time between two snubs, on the steepest sustained grade.
    pub off: Seconds,
    /// Number of snubs on this descent, about. Where it is not assessed, the fall there counts.
    pub count: u32,
}

/// What keeps the speed from being higher.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Governs {
    /// The limit entered for the day.
    SpeedLimit,
    /// A limit posted on a stretch of the descent. In the gear of a higher speed the truck would not keep it,
    /// or the whole descent is posted.
    Posted,
    /// The highest engine speed in the highest gear.
    EngineSpeed,
    /// The retarder: at a higher speed no gear holds with the reserve asked for.
    Control,
    /// Curves: they let the truck go no faster anywhere on the descent, or no gear of a higher speed still
    /// turns the engine in the slowest curve.
    Curve,
    /// Grip of the driven axles.
    Grip,
    /// Heat of the service brakes.
    Heat,
}

/// Changes that would let the retarder hold a descent with the reserve asked for, each by itself.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// Gross mass at which it holds; `None` where not even an empty truck would be held.
    pub mass: Option<Kilograms>,
    /// Factor by which the retarding would have to be stronger; `None` where no factor in reach is enough.
    pub retarding: Option<f64>,
    /// The reserve that the unchanged truck keeps at some speed; `None` where it does not hold at all.
    pub reserve: Option<f64>,
    /// Warmest brakes at the crest that keep the limit, where heat rules the descent out.
    pub cool_to: Option<Celsius>,
}

/// Speed that a descent carries into the rise behind it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Carried {
    /// Where the rise begins.
    pub at: Metres,
    /// Speed there.
    pub speed: MetresPerSecond,
}
