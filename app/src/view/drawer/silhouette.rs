//! A truck from its side, drawn from its axles.
//!
//! Nobody's truck: a cab, a body and as many wheels as there are braked axles, in the order in which they
//! stand on the road. It only has to be told from its neighbours at a glance.

use solver::truck::{AxleGroup, AxlePlace, Preset};
use std::fmt::Write;

/// Where the wheels stand.
const GROUND: f64 = 34.2;
/// The radius of a wheel, and the distance of two, where there is room.
const WHEEL: f64 = 4.2;
const APART: f64 = 9.0;
/// From the front bumper to the first axle.
const OVERHANG: f64 = 7.0;
/// Between the axles of the front and those that are driven.
const BETWEEN: f64 = 8.0;

/// What sits on the wheels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Body {
    /// A box on the truck itself.
    Rigid,
    /// A tipping body.
    Tipper,
    /// A coach.
    Coach,
    /// A semitrailer.
    Semitrailer,
    /// A box, and a trailer behind a drawbar.
    Drawbar,
    /// Two semitrailers.
    Double,
}

impl Body {
    /// That of a truck to begin with.
    pub(super) fn of_preset(preset: Preset) -> Self {
        match preset {
            Preset::Tipper26 => Self::Tipper,
            Preset::Rigid18 | Preset::Refuse26 => Self::Rigid,
            Preset::Coach | Preset::CoachConverter => Self::Coach,
            Preset::Drawbar40 => Self::Drawbar,
            Preset::BDouble => Self::Double,
            Preset::FiveAxle36
            | Preset::FiveAxle40
            | Preset::FiveAxle40Both
            | Preset::FiveAxleEmpty
            | Preset::SixAxle44 => Self::Semitrailer,
        }
    }

    /// That of a truck of which only the axles are known.
    pub(super) fn of_groups(groups: &[AxleGroup]) -> Self {
        match axles(groups, AxlePlace::Trailer) {
            0 => Self::Rigid,
            1..=4 => Self::Semitrailer,
            _ => Self::Double,
        }
    }
}

fn axles(groups: &[AxleGroup], place: AxlePlace) -> usize {
    groups.iter().filter(|it| it.place == place).map(|it| usize::from(it.axles)).sum()
}

/// Axles in a row, from the front: behind the row before, or up to a place.
#[derive(Clone, Copy)]
enum Row {
    Behind(f64, usize),
    UpTo(f64, usize),
}

fn rows(groups: &[AxleGroup], body: Body) -> Vec<Row> {
    let [steer, drive, trailer] =
        [AxlePlace::Steer, AxlePlace::Drive, AxlePlace::Trailer].map(|place| axles(groups, place));
    let first = Row::Behind(front(body) + OVERHANG, steer);
    let tractor = Row::Behind(BETWEEN, drive);
    match body {
        Body::Rigid | Body::Tipper => vec![first, Row::UpTo(64.0, drive)],
        Body::Coach => vec![first, Row::UpTo(66.0, drive)],
        Body::Semitrailer => vec![first, tractor, Row::UpTo(82.0, trailer)],
        Body::Drawbar => {
            let ahead = trailer.min(1);
            vec![first, Row::UpTo(44.0, drive), Row::UpTo(60.0, ahead), Row::UpTo(82.0, trailer - ahead)]
        }
        Body::Double => {
            vec![first, tractor, Row::UpTo(50.0, trailer / 2), Row::UpTo(86.0, trailer - trailer / 2)]
        }
    }
}

/// Where the axles stand so far apart, and the least distance of two rows.
#[allow(clippy::cast_precision_loss, reason = "a few axles")]
fn places(rows: &[Row], apart: f64) -> (Vec<f64>, f64) {
    let mut at: Vec<f64> = Vec::new();
    let mut least = f64::INFINITY;
    for row in rows {
        let (first, count) = match *row {
            Row::Behind(gap, count) => (at.last().map_or(gap, |last| last + apart + gap), count),
            Row::UpTo(last, count) => (last - count.saturating_sub(1) as f64 * apart, count),
        };
        if count > 0 {
            least = at.last().map_or(least, |last| least.min(first - last));
            at.extend((0..count).map(|it| first + it as f64 * apart));
        }
    }
    (at, least)
}

/// Where the wheels stand, and their radius: as large as there is room, with a gap between two rows.
fn wheels(groups: &[AxleGroup], body: Body) -> (Vec<f64>, f64) {
    let rows = rows(groups, body);
    let mut apart = APART;
    loop {
        let (at, least) = places(&rows, apart);
        if least > apart * 1.5 || apart < 1.0 {
            return (at, WHEEL.min(apart * 0.46));
        }
        apart *= 0.95;
    }
}

/// Where the front bumper is.
fn front(body: Body) -> f64 {
    match body {
        Body::Semitrailer | Body::Drawbar | Body::Double => 4.0,
        Body::Rigid | Body::Tipper => 14.0,
        Body::Coach => 10.0,
    }
}

/// The drawing, as the inside of an SVG of 92 by 36.
pub(super) fn drawing(groups: &[AxleGroup], body: Body) -> String {
    let front = front(body);
    let boxes = match body {
        Body::Rigid => "M29 8h43v19H29z".to_owned(),
        Body::Tipper => "M30 12h36l6 2-4 13H32z".to_owned(),
        Body::Coach => "M10 28V11q0-3 3-3h62q3 0 3 3v17z".to_owned(),
        Body::Semitrailer => "M20 6h67v20H20z".to_owned(),
        Body::Drawbar => "M20 8h30v18H20zM54 8h34v18H54zM50 24h4v2h-4z".to_owned(),
        Body::Double => "M20 8h33v18H20zM56 8h33v18H56z".to_owned(),
    };
    let cab = if body == Body::Coach { String::new() } else { format!("M{front} 28V14q0-4 4-4h8v18z") };
    let mut out = format!("<path d=\"{cab}{boxes}\"/>");
    if body == Body::Coach {
        out.push_str("<path class=\"pane\" d=\"M14 12h58v7H14z\"/>");
    }
    let (at, radius) = wheels(groups, body);
    for x in at {
        // Writing to a String does not fail.
        let _ = write!(out, "<circle cx=\"{x:.1}\" cy=\"{:.1}\" r=\"{radius:.1}\"/>", GROUND - radius);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use solver::limits::bounds;
    use solver::truck::BrakeKind;

    /// Of the drawing, as its `viewBox` has it.
    const WIDTH: f64 = 92.0;

    fn is_drawn_whole(groups: &[AxleGroup], body: Body) {
        let (at, radius) = wheels(groups, body);
        let count: usize = groups.iter().map(|it| usize::from(it.axles)).sum();
        assert_eq!(at.len(), count, "{body:?} {groups:?}");
        assert_eq!(drawing(groups, body).matches("<circle").count(), count);
        assert!(radius > 0.9, "{body:?}: {radius}");
        for pair in at.windows(2) {
            assert!(pair[1] - pair[0] > 2.0 * radius, "{body:?} {at:?}");
        }
        assert!(at.iter().all(|x| (radius..=WIDTH - radius).contains(x)), "{body:?} {at:?}");
    }

    #[test]
    fn each_truck_to_begin_with_has_its_axles() {
        for preset in Preset::ALL {
            is_drawn_whole(&preset.spec().axle_groups, Body::of_preset(preset));
        }
    }

    #[test]
    fn no_number_of_axles_runs_over() {
        let group = |place, axles| AxleGroup { place, axles, brake: BrakeKind::Drum, effort_share: 0.3 };
        for steer in 1..=4 {
            for drive in 1..=4 {
                for trailer in 0..=bounds::AXLES_OF_GROUP {
                    let groups = [
                        group(AxlePlace::Steer, steer),
                        group(AxlePlace::Drive, drive),
                        group(AxlePlace::Trailer, trailer),
                    ];
                    is_drawn_whole(&groups, Body::of_groups(&groups));
                }
            }
        }
    }
}
