//! Drums and their limits: stroke, mass, sustained temperature, and the heat of snubs and of a gear change.

use super::{Expected, Origin, Row, Status, near, near_or_known, number};
use crate::trucks::{preset, truck};
use solver::constants::{STROKE_LIMIT, STROKE_PER_KELVIN};
use solver::day::Day;
use solver::motion::{BrakeHeat, Trip};
use solver::truck::{Preset, stroke_limit_at};
use solver::units::{Celsius, Grade, Joules, Metres, MetresPerSecond, Seconds, Watts};

const STROKE: Origin = Origin {
    key: "STROKE",
    status: Status::Secondary,
    source: "Trade articles: a drum grows by 0.040 to 0.060 in on its way to 600 °F, and each 0.020 in asks for a quarter of an inch of pushrod. Ours is from a brake tester's talk: 1½ in at 70 °F, 2⅛ in at 600 °F",
};
const LIMIT: Origin = Origin {
    key: "STROKE-LIMIT",
    status: Status::Computed,
    source: "Limit of a size 30 chamber, 2.0 in, and full stroke, 2.5 in, printed in a trade demonstration; temperatures computed from STROKE",
};
const DRUM: Origin = Origin {
    key: "DRUM-M",
    status: Status::Secondary,
    source: "Parts pages: 16.5 in drums of 99.5 to 160 lb, 45 to 73 kg; cast iron 450 to 500 J/(kg K)",
};
const INDEX: Origin = Origin {
    key: "DESC-250",
    status: Status::Printed,
    source: "Open Mech. Eng. J. 8 (2014) 475, abstract: 250 °C as the limit of a drum on descents",
};
const SNUB: Origin = Origin {
    key: "SNUB-2",
    status: Status::Secondary,
    source: "Conclusions of a university's mountain-descent study, 1992, quoted: temperature for each pound of drum nearly the same by snubs and by dragging; a province's drivers' manual: snubs of 10 to 15 km/h",
};
const CHANGE: Origin = Origin {
    key: "GEAR-DOWN-HEAT",
    status: Status::Computed,
    source: "An army's technical manual TM 9-2320-363-10: down a gear on the hill by one application of the service brakes, from 2,100 to 1,650/min; its heat is computed",
};

/// Growth of the stroke up to 600 °F, from two independent sources.
pub(super) fn stroke_by_heat() -> Vec<Row> {
    const QUARTERS: f64 = 0.25 / 0.020;
    let ours = STROKE_PER_KELVIN * (600.0 - 70.0) / 1.8;
    let expected = Expected::Between(0.040 * QUARTERS, 0.060 * QUARTERS);
    vec![STROKE.row("Growth of a pushrod's stroke from 70 to 600 °F", "in", expected, ours)]
}

/// The tolerance is that of the table, ± 10 % of the growth.
pub(super) fn stroke_limits() -> Vec<Row> {
    let row = |(cold, at): (f64, f64)| {
        let what = format!("Temperature at which a cold stroke of {cold} in reaches {STROKE_LIMIT:.1} in");
        LIMIT.row(what, "°C", near(at, 15.0), stroke_limit_at(cold).0)
    };
    let mut rows =
        [(1.375, 316.0), (1.5, 257.0), (1.625, 198.0), (1.75, 139.0), (1.875, 80.0)].map(row).to_vec();
    rows.push(LIMIT.row(
        "That of 1.5 in, which is well set, less the heat limit of the usual day",
        "K",
        near(0.0, 15.0),
        stroke_limit_at(1.5).0 - Day::USUAL.heat_limit_c,
    ));
    rows
}

/// Mass of iron of 475 J/(kg K) equal to our capacity of drums. The published constants include hub and
/// shoes.
pub(super) fn drum_mass() -> Vec<Row> {
    let steer = preset(Preset::FiveAxle36).spec().axle_groups[0];
    let ours = steer.heat_capacity() / 2.0 / 475.0;
    let expected = near_or_known(59.0, 14.0, Some(23.7), 0.5);
    vec![DRUM.row("Iron at each wheel for which the heat capacity of drums stands", "kg", expected, ours)]
}

pub(super) fn temperature_kept() -> Vec<Row> {
    let what = "Heat limit of the usual day, one hard stop included";
    vec![INDEX.row(what, "°C", near(250.0, 10.0), Day::USUAL.heat_limit_c)]
}

/// Twenty snubs of 12.5 km/h from 50 km/h against dragging for as long, 36 t on 5 %.
pub(super) fn longer_snubs() -> Vec<Row> {
    const COOL: f64 = 66.0;
    let trip = Trip { truck: &preset(Preset::FiveAxle36), day: &Day::USUAL };
    let (loses, on) = (MetresPerSecond::from_kmh(12.5).0, Seconds(4.0));
    let speed = MetresPerSecond(MetresPerSecond::from_kmh(50.0).0 - 0.5 * loses);
    let (push, mass) = (trip.demand(speed, Grade(-0.05), trip.air(Metres(0.0))), trip.truck.mass().0);
    let off = Seconds(loses / (push.0 / mass));
    let braked = Watts((push.0 + mass * loses / on.0) * speed.0);
    let (mut snubbed, mut dragged) = (BrakeHeat::uniform(Celsius(COOL)), BrakeHeat::uniform(Celsius(COOL)));
    for _ in 0..20 {
        snubbed = snubbed.after(trip, braked, speed, on).after(trip, Watts(0.0), speed, off);
        dragged = dragged.after(trip, push * speed, speed, Seconds(on.0 + off.0));
    }
    let rise = |heat: BrakeHeat| heat.hottest(trip).0 - COOL;
    let what = "Rise of the brakes by snubs of 12.5 km/h over their rise by dragging";
    vec![SNUB.row(what, "", near(1.0, 0.05), rise(snubbed) / rise(dragged))]
}

/// All five axles as one group, as in the source's lump.
pub(super) fn application_of_a_change() -> Vec<Row> {
    let mut spec = Preset::FiveAxle36.spec();
    let mut whole = spec.axle_groups[0];
    (whole.axles, whole.effort_share) = (5, 1.0);
    spec.axle_groups = vec![whole];
    let (truck, day) = (truck(spec), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let cold = BrakeHeat::uniform(Celsius(day.brakes_at_start_c));
    let row = |(kmh, kelvin): (f64, f64)| {
        let speed = MetresPerSecond::from_kmh(kmh).0;
        let kept = 1_650.0 / 2_100.0;
        let work = Joules(0.5 * truck.mass().0 * speed * speed * (1.0 - kept * kept));
        let rise = cold.hottest_with(trip, work).0 - day.brakes_at_start_c;
        let what = format!(
            "Rise of the brakes of 36 t by one application from {} km/h, a gear down",
            number(kmh, 0)
        );
        CHANGE.row(what, "K", near(kelvin, (0.02 * kelvin).max(0.05)), rise)
    };
    [(36.0, 1.8), (54.0, 4.0), (72.0, 7.1)].map(row).to_vec()
}
