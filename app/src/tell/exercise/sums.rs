//! The way to the answer: each formula with its numbers.
//!
//! Numbers are those of the solver, rounded as they are written, so the last digit of a sum may
//! differ by what the rounding of its parts leaves; then “≈” stands there ([`super::printed`]).

use super::figures::{
    Figures, btu_per_hour_per_horsepower, drag_in_pounds, fixed, foot_pounds_per_btu, trimmed,
};
use super::given::blows;
use super::printed::sum;
use super::{Label, Line, Term};
use crate::exercise::{
    BrakeHeat, BrakingWork, ControlSpeed, Exercise, Forces, GearChoice, GearTried, Haste, Hill,
};
use crate::format::{NO_BREAK, Units};
use solver::motion::Answer;
use solver::units::{Grade, MetresPerSecond};

/// The lines.
pub(super) fn lines(exercise: &Exercise, figures: Figures) -> Vec<Line> {
    match exercise {
        Exercise::ControlSpeed(it) => of_control_speed(it, figures),
        Exercise::GearChoice(it) => of_gear_choice(it, figures),
        Exercise::BrakingWork(it) => of_braking_work(it, figures),
        Exercise::Haste(it) => of_haste(it, figures),
        Exercise::BrakeHeat(it) => of_brake_heat(it, figures),
    }
}

/// Standard gravity as a class writes it, m/s².
const GRAVITY: f64 = 9.81;
/// Feet in a mile.
const FEET_PER_MILE: f64 = 5_280.0;
/// Seconds in a minute, minutes in an hour.
const SIXTY: f64 = 60.0;
/// km/h in 1 m/s.
const KMH: f64 = 3.6;

fn gravity() -> String {
    format!("{}{NO_BREAK}m/s²", fixed(GRAVITY, 2))
}

fn sine_and_cosine(grade: Grade) -> (String, String) {
    let (sine, cosine) = grade.sin_cos();
    (fixed(-sine, 4), fixed(cosine, 4))
}

/// Sine and cosine of a grade given in per cent.
fn angle(grade: Grade) -> [Line; 2] {
    let (sine, cosine) = sine_and_cosine(grade);
    let tangent = trimmed(-grade.0, 3);
    let root = format!("√(1 + {tangent} × {tangent})");
    [
        Line::of(Term::Sine, sum(&format!("{tangent} ÷ {root}"), &sine)),
        Line::of(Term::Cosine, sum(&format!("1 ÷ {root}"), &cosine)),
    ]
}

/// Mass times gravity, as a factor: in pounds the mass is the weight.
fn weight(hill: &Hill, figures: Figures) -> String {
    let mass = figures.mass(hill.mass.0);
    match figures.units {
        Units::Metric => format!("{mass} × {}", gravity()),
        Units::Imperial => mass,
    }
}

/// “+ 10 km/h”, or “− 10 km/h” where the number is negative.
fn plus(number: &str) -> String {
    number.strip_prefix('−').map_or_else(|| format!("+ {number}"), |size| format!("− {size}"))
}

/// “− 0.3 kN”, or “+ 0.3 kN” where the number is negative.
fn minus(number: &str) -> String {
    number.strip_prefix('−').map_or_else(|| format!("− {number}"), |size| format!("+ {size}"))
}

/// The speed against the air, where it is not the road speed in the same unit.
fn against(hill: &Hill, forces: &Forces, speed: MetresPerSecond, figures: Figures) -> Option<Line> {
    let road = figures.speed(speed.0);
    let both = if blows(hill) { format!("{road} {}", plus(&figures.speed(hill.headwind.0))) } else { road };
    let left = match figures.units {
        Units::Metric if blows(hill) => format!("({both}) ÷ {}", trimmed(KMH, 1)),
        Units::Metric => format!("{both} ÷ {}", trimmed(KMH, 1)),
        Units::Imperial if blows(hill) => both,
        Units::Imperial => return None,
    };
    Some(Line::of(Term::AgainstAir, sum(&left, &in_air(forces, figures))))
}

/// The speed against the air as the formula of air resistance takes it.
fn in_air(forces: &Forces, figures: Figures) -> String {
    match figures.units {
        Units::Metric => format!("{}{NO_BREAK}m/s", fixed(forces.against.0, 2)),
        Units::Imperial => figures.speed(forces.against.0),
    }
}

/// Air resistance as factors, in N or lbf.
fn drag(hill: &Hill, forces: &Forces, figures: Figures) -> String {
    let constant = match figures.units {
        Units::Metric => trimmed(0.5, 1),
        Units::Imperial => fixed(drag_in_pounds(), 6),
    };
    let speed = in_air(forces, figures);
    // In a tailwind faster than the truck the air pushes: the sign is kept once, not squared away.
    let size = speed.trim_start_matches('−');
    format!("{constant} × {} × {} × {speed} × {size}", figures.density(hill), figures.area(hill.drag_area_m2))
}

/// Gravity, rolling, air and what is left, at one speed.
fn forces(hill: &Hill, at: &Forces, speed: MetresPerSecond, figures: Figures) -> Vec<Line> {
    let (sine, cosine) = sine_and_cosine(hill.grade);
    let weight = weight(hill, figures);
    let rolling = trimmed(hill.rolling, 5);
    let [gravity, roll, air, demand] =
        [at.gravity, at.rolling, at.air, at.demand].map(|force| figures.force(force.0));
    let in_kilonewtons = match figures.units {
        Units::Metric => format!(" ÷ {}", fixed(1_000.0, 0)),
        Units::Imperial => String::new(),
    };
    let mut lines = vec![
        Line::of(Term::Gravity, sum(&format!("{weight} × {sine}"), &gravity)),
        Line::of(Term::Rolling, sum(&format!("{weight} × {cosine} × {rolling}"), &roll)),
    ];
    lines.extend(against(hill, at, speed, figures));
    lines.push(Line::of(Term::Air, sum(&format!("{}{in_kilonewtons}", drag(hill, at, figures)), &air)));
    lines.push(Line::of(Term::Demand, sum(&format!("{gravity} − {roll} {}", minus(&air)), &demand)));
    lines
}

fn of_control_speed(it: &ControlSpeed, figures: Figures) -> Vec<Line> {
    let shown = &it.shown;
    let mut lines = vec![Line::of(Term::ComparedAt, figures.speed(shown.speed.0))];
    lines.extend(angle(it.hill.grade));
    lines.extend(forces(&it.hill, &shown.forces, shown.speed, figures));
    let (held, demand) = (figures.force(shown.holding.0), figures.force(shown.forces.demand.0));
    let compared = match it.answer {
        Answer::Settles { .. } | Answer::Overruns { above: Some(_) } => sum(&held, &demand),
        Answer::MoreThanNeeded => format!("{held} > {demand}"),
        Answer::Overruns { above: None } | Answer::NotUsable(_) => format!("{held} < {demand}"),
    };
    lines.push(Line::of(Term::HoldingAgainstDemand, compared));
    lines
}

fn of_gear_choice(it: &GearChoice, figures: Figures) -> Vec<Line> {
    let mut lines: Vec<Line> = angle(it.hill.grade).into();
    if let Some(GearTried { held, .. }) = it.written_out() {
        lines.push(Line::of(Term::ComparedAt, figures.speed(held.speed.0)));
        lines.extend(forces(&it.hill, &held.forces, held.speed, figures));
    }
    let judged = |tried: &GearTried| {
        let held = &tried.held;
        let (force, demand) = (figures.force(held.holding.0), figures.force(held.forces.demand.0));
        let reserve = format!("{}{NO_BREAK}%", fixed(held.reserve() * 100.0, 1));
        Line {
            label: Label::Gear(tried.gear, held.speed),
            text: sum(&format!("{force} ÷ {demand} − 1"), &reserve),
            enough: Some(tried.keeps(it.reserve)),
        }
    };
    // From the highest gear down to the first that does; the gears below it hold more still.
    let tried = it.answer.map_or(it.gears.len(), |at| at + 1);
    lines.extend(it.gears.iter().take(tried).map(judged));
    lines
}

fn of_braking_work(it: &BrakingWork, figures: Figures) -> Vec<Line> {
    let (sine, cosine) = sine_and_cosine(it.hill.grade);
    let (drop, way) = (figures.metres(it.drop.0), figures.metres(it.length.0));
    let weight = weight(&it.hill, figures);
    let rolling = trimmed(it.hill.rolling, 5);
    let thousand = fixed(1_000.0, 0);
    // kN·m to MJ, N·m to MJ; ft·lbf to kBtu both times.
    let (to_energy, drag_to_energy) = match figures.units {
        Units::Metric => (format!("÷ {thousand}"), format!("÷ {}", fixed(1e6, 0))),
        Units::Imperial => {
            let both = format!("÷ {} ÷ {thousand}", fixed(foot_pounds_per_btu(), 1));
            (both.clone(), both)
        }
    };
    let [gravity, roll, air, left, carried, service] =
        [it.gravity, it.rolling, it.air, it.left, it.carried, it.service].map(|work| figures.energy(work.0));
    let share = trimmed(it.carried_share, 2);
    let mut lines = Vec::new();
    if figures.units == Units::Imperial {
        let feet = format!("{} × {}{NO_BREAK}ft", figures.length(it.length.0), fixed(FEET_PER_MILE, 0));
        lines.push(Line::of(Term::LengthInFeet, sum(&feet, &way)));
    }
    lines.push(Line::of(Term::Sine, sum(&format!("{drop} ÷ {way}"), &sine)));
    lines.push(Line::of(Term::Cosine, sum(&format!("√(1 − {sine} × {sine})"), &cosine)));
    lines.push(Line::of(Term::GravityWork, sum(&format!("{weight} × {drop} {to_energy}"), &gravity)));
    lines.push(Line::of(
        Term::RollingWork,
        sum(&format!("{weight} × {cosine} × {rolling} × {way} {to_energy}"), &roll),
    ));
    lines.extend(against(&it.hill, &it.forces, it.speed, figures));
    let drag = drag(&it.hill, &it.forces, figures);
    lines.push(Line::of(Term::AirWork, sum(&format!("{drag} × {way} {drag_to_energy}"), &air)));
    lines.push(Line::of(Term::WorkLeft, sum(&format!("{gravity} − {roll} {}", minus(&air)), &left)));
    lines.push(Line::of(Term::CarriedWork, sum(&format!("{share} × {left}"), &carried)));
    lines.push(Line::of(Term::ServiceWork, sum(&format!("{left} − {carried}"), &service)));
    lines
}

/// Length over speed, in minutes.
fn minutes(length_m: f64, speed: MetresPerSecond, seconds: f64, figures: Figures) -> String {
    let hour = format!("{}{NO_BREAK}min/h", fixed(SIXTY, 0));
    let left = format!("{} ÷ {} × {hour}", figures.length(length_m), figures.speed(speed.0));
    sum(&left, &to_hundredths(seconds))
}

/// Minutes to a hundredth: differences of two are small.
fn to_hundredths(seconds: f64) -> String {
    format!("{}{NO_BREAK}min", fixed(seconds / SIXTY, 2))
}

fn of_haste(it: &Haste, figures: Figures) -> Vec<Line> {
    let (slow, fast) = (to_hundredths(it.slow_time.0), to_hundredths(it.fast_time.0));
    let [slower, faster] = [it.slow, it.fast].map(|speed| figures.speed(speed.0));
    vec![
        Line::of(Term::SlowTime, minutes(it.length.0, it.slow, it.slow_time.0, figures)),
        Line::of(Term::FastTime, minutes(it.length.0, it.fast, it.fast_time.0, figures)),
        Line::of(Term::TimeSaved, sum(&format!("{slow} − {fast}"), &to_hundredths(it.saved.0))),
        Line::of(
            Term::MotionEnergy,
            sum(&format!("{faster} × {faster} ÷ ({slower} × {slower})"), &fixed(it.energy, 2)),
        ),
    ]
}

fn of_brake_heat(it: &BrakeHeat, figures: Figures) -> Vec<Line> {
    let (thousand, sixty) = (fixed(1_000.0, 0), fixed(SIXTY, 0));
    let (capacity, cooling) = (figures.capacity(it.lump.capacity), figures.cooling(it.lump.cooling));
    let (power, group) = (figures.power(it.power.0), figures.heat_power(it.group_power.0));
    let share = trimmed(it.share, 3);
    let [air, start, settled, foot] =
        [it.air, it.start, it.settled, it.foot].map(|celsius| figures.temperature(celsius.0));
    let constant = format!("{}{NO_BREAK}min", fixed(it.time_constant.0 / SIXTY, 1));
    let (group_sum, constant_sum, settled_sum) = match figures.units {
        Units::Metric => (
            format!("{share} × {power}"),
            format!("{capacity} × {thousand} ÷ {cooling} ÷ {sixty}"),
            format!("{air} + {group} × {thousand} ÷ {cooling}"),
        ),
        Units::Imperial => (
            format!("{share} × {power} × {}", fixed(btu_per_hour_per_horsepower(), 1)),
            format!("{capacity} ÷ {cooling} × {sixty}"),
            format!("{air} + {group} ÷ {cooling}"),
        ),
    };
    let ahead = fixed(it.ahead, 3);
    vec![
        Line::of(Term::TimeDown, minutes(it.length.0, it.speed, it.time.0, figures)),
        Line::of(Term::GroupPower, sum(&group_sum, &group)),
        Line::of(Term::TimeConstant, sum(&constant_sum, &constant)),
        Line::of(Term::Settled, sum(&settled_sum, &settled)),
        Line::of(Term::Ahead, sum(&format!("e^(−{} ÷ {constant})", to_hundredths(it.time.0)), &ahead)),
        Line::of(Term::AtFoot, sum(&format!("{settled} − ({settled} − {start}) × {ahead}"), &foot)),
    ]
}
