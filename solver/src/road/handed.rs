//! A road on its way from one thread to another.

use super::{Parts, Road};

impl From<Road> for Parts {
    fn from(road: Road) -> Self {
        Self {
            name: road.name,
            step_m: road.step_m,
            heights_m: road.heights_m,
            recorded_m: road.recorded_m,
            surface_m: road.surface_m,
            doubt: road.doubt,
            alone: road.alone,
            unassessed: road.unassessed,
            segments: road.segments,
            curves: road.curves,
            quality: road.quality,
            positions: road.positions,
            places: road.places,
            limits: road.limits,
            findings: road.findings,
        }
    }
}

impl TryFrom<Parts> for Road {
    type Error = &'static str;

    /// The parts that arrive must make a valid road: nothing is repaired here.
    fn try_from(parts: Parts) -> Result<Self, Self::Error> {
        let points = parts.heights_m.len();
        let cells = points.saturating_sub(1);
        let on_it = |from: usize, to: usize| from < to && to <= cells;
        let sound = points >= 2
            && parts.step_m > 0.0
            && parts.heights_m.iter().all(|height| height.is_finite())
            && parts.recorded_m.len() == points
            && parts.surface_m.len() == points
            && parts.surface_m.iter().all(|height| height.is_finite())
            && parts.doubt.is_finite()
            && parts.alone.iter().all(|it| it.is_on(cells))
            && (parts.positions.is_empty() || parts.positions.len() == points)
            && parts.unassessed.iter().all(|it| on_it(it.from, it.to))
            && parts.segments.iter().all(|it| on_it(it.from, it.to))
            && parts.curves.iter().all(|it| on_it(it.from, it.to))
            && parts.places.iter().all(|it| it.index < points)
            && parts.limits.iter().all(|it| it.is_on(cells));
        if sound { Ok(Self::from_parts(parts)) } else { Err("not a road") }
    }
}
