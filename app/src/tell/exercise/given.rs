//! What is given beside the question.

use super::figures::{Figures, trimmed};
use super::{Label, Line, Term};
use crate::exercise::{Exercise, GearTried, Held, Hill};
use crate::format::{self, Units};

/// The lines, in the order in which they are needed.
pub(super) fn lines(exercise: &Exercise, figures: Figures) -> Vec<Line> {
    match exercise {
        Exercise::ControlSpeed(it) => {
            let point = |held: &Held| {
                let engine = format::engine_speed(held.engine_speed.0);
                let (speed, force) = (figures.speed(held.speed.0), figures.force(held.holding.0));
                format!("{engine} ({speed}) → {force}")
            };
            let points: Vec<String> = it.points.iter().map(point).collect();
            let mut lines = of_hill(&it.hill, figures);
            lines.push(Line::of(Term::HoldingTable, points.join("; ")));
            lines
        }
        Exercise::GearChoice(it) => {
            let gear = |tried: &GearTried| Line {
                label: Label::Gear(tried.gear, tried.held.speed),
                text: format!(
                    "{} → {}",
                    format::engine_speed(tried.held.engine_speed.0),
                    figures.force(tried.held.holding.0)
                ),
                enough: None,
            };
            let mut lines = of_hill(&it.hill, figures);
            lines.extend(it.gears.iter().map(gear));
            lines
        }
        Exercise::BrakingWork(it) => of_hill(&it.hill, figures),
        Exercise::Haste(_) => Vec::new(),
        Exercise::BrakeHeat(it) => vec![
            Line::of(Term::GroupShare, trimmed(it.share, 3)),
            Line::of(Term::HeatCapacity, figures.capacity(it.lump.capacity)),
            Line::of(Term::Cooling, figures.cooling(it.lump.cooling)),
            Line::of(Term::AirTemperature, figures.temperature(it.air.0)),
            Line::of(Term::BrakesAtCrest, figures.temperature(it.start.0)),
        ],
    }
}

fn of_hill(hill: &Hill, figures: Figures) -> Vec<Line> {
    let density = match figures.units {
        Units::Metric => Term::AirDensity,
        Units::Imperial => Term::AirDensityRatio,
    };
    let mut lines = vec![
        Line::of(Term::RollingCoefficient, trimmed(hill.rolling, 5)),
        Line::of(Term::DragArea, figures.area(hill.drag_area_m2)),
        Line::of(density, figures.density(hill)),
    ];
    if blows(hill) {
        lines.push(Line::of(Term::Headwind, figures.speed(hill.headwind.0)));
    }
    lines
}

/// Whether there is wind worth a line.
pub(super) fn blows(hill: &Hill) -> bool {
    hill.headwind.0.abs() >= 0.01
}
