//! A descent in legs: on the true road each leg begins where it is told, and one gear all the way stands
//! beside the legs.

use crate::sweep::{at_most, cases};
use solver::day::{Day, Surface};
use solver::motion::Trip;
use solver::plan::{ChangeHow, Descent};
use solver::truck::{Preset, Transmission, Truck};
use std::sync::OnceLock;
use tests::free_run::{Told, gained_free, slowed};
use tests::generate::{Alignment, Bend, Chance, Drive, Instrument, Plan, Tangent, TrueRoad};
use tests::trucks::truck;
use tests::truth::survey_drive;

/// Roads tried in CI, each with one truck shifted by hand and one that shifts by itself.
const USUAL_CASES: u64 = 150;

/// A leg may begin faster than told by this, km/h: the cost of a grid of 10 m.
const COMES_KMH: f64 = 3.5;

/// A long way down in parts of 2 to 5 km, mild and steep by chance.
fn long_hill(chance: &mut Chance) -> TrueRoad {
    let mut tangents = vec![Tangent { length_m: 900.0, grade: -0.002, curve_m: 100.0 }];
    for _ in 0..3 + chance.bits() % 3 {
        let (length_m, grade) = (chance.between(2_000.0, 5_000.0), -chance.between(0.015, 0.085));
        tangents.push(Tangent { length_m, grade, curve_m: 200.0 });
        if chance.happens(0.5) {
            let (length_m, grade) = (chance.between(200.0, 500.0), -chance.between(0.0, 0.02));
            tangents.push(Tangent { length_m, grade, curve_m: 100.0 });
        }
    }
    tangents.push(Tangent { length_m: 900.0, grade: -0.002, curve_m: 100.0 });
    let bends = vec![Bend::straight(1e6)];
    let plan = Plan { lat_deg: -40.0, lon_deg: -20.0, heading_deg: 60.0, bends };
    TrueRoad { alignment: Alignment::new(1_900.0, &tangents), plan }
}

/// A descent, with the data that it is held against.
struct Found {
    truth: TrueRoad,
    truck: Truck,
    descent: Descent,
    /// Length of a grid step, m; below it metres of the true road in a grid step.
    step_m: f64,
    scale: f64,
    words: String,
}

/// All descents of the roads on a day.
fn found(count: u64, day: &Day) -> Vec<Found> {
    let mut all = Vec::new();
    for number in 0..count {
        let mut chance = Chance::new(number ^ 0x1e65);
        let truth = long_hill(&mut chance);
        let preset = Preset::ALL[(chance.bits() % 7) as usize];
        let road = survey_drive(&truth, &Drive::new(Instrument::Exact, 15.0, number));
        let step_m = road.step_m();
        let scale = step_m * truth.length_m() / road.length_m();
        let own = preset.spec().transmission;
        let other = if own == Transmission::Manual { Transmission::Automated } else { own };
        for transmission in [Transmission::Manual, other] {
            let mut spec = preset.spec();
            spec.transmission = transmission;
            let truck = truck(spec);
            let (plan, _) = solver::analyse(&road, &truck, day, &mut |_| true).expect("not stopped");
            let words = format!("road {number}, {}, {transmission:?}", preset.key());
            all.extend(plan.descents.into_iter().map(|descent| Found {
                truth: truth.clone(),
                truck: truck.clone(),
                descent,
                step_m,
                scale,
                words: words.clone(),
            }));
        }
    }
    all
}

/// The descents of the usual day, and whether their number is the usual one.
fn usual_day() -> &'static (Vec<Found>, bool) {
    static FOUND: OnceLock<(Vec<Found>, bool)> = OnceLock::new();
    FOUND.get_or_init(|| {
        let (count, usual) = cases(USUAL_CASES);
        (found(count, &Day::USUAL), usual)
    })
}

fn in_legs(all: &[Found]) -> impl Iterator<Item = &Found> {
    all.iter().filter(|it| it.descent.legs.len() > 1)
}

/// At every change down the truck comes to the leg no faster than told, and gains less than 5 km/h while the
/// gear is out. By hand the road is no steeper there than 2 % down.
#[test]
fn each_leg_begins_where_it_is_told() {
    let (all, usual) = usual_day();
    let (mut down, mut up, mut too_fast) = (0, 0, 0);
    let (mut late, mut free, mut steep) = (0.0_f64, 0.0_f64, 0.0_f64);
    for it in in_legs(all) {
        let trip = Trip { truck: &it.truck, day: &Day::USUAL };
        let told = Told::legs(&it.descent, it.scale);
        let spec = it.truck.spec();
        let open = spec.transmission.shift_time().0 + spec.retarder_delay_s;
        for (pair, leg) in told.windows(2).zip(&it.descent.legs[1..]) {
            let [fast, next] = pair else { continue };
            let change = leg.change.expect("a leg behind another is changed to");
            assert!((change.at.0 - leg.from as f64 * it.step_m).abs() < 1e-6, "{}", it.words);
            if change.how == ChangeHow::Up {
                up += 1;
                assert!(next.speed > fast.speed, "{}", it.words);
                continue;
            }
            down += 1;
            assert!(next.speed < fast.speed && next.gear <= fast.gear, "{}", it.words);
            let comes = slowed(trip, &it.truth.alignment, fast, next).kmh() - next.speed.kmh();
            let runs = gained_free(trip, &it.truth.alignment, next, open);
            too_fast += usize::from(comes > COMES_KMH);
            if comes > late {
                println!("comes {comes:.1} km/h too fast: {}, {fast:?}, {next:?}", it.words);
            }
            (late, free) = (late.max(comes), free.max(runs));
            if spec.transmission == Transmission::Manual {
                let steps = ((next.from_m - fast.to_m) / 20.0) as usize;
                let places = (0..steps).map(|k| fast.to_m + 20.0 * k as f64);
                let falls = places.map(|at| -100.0 * it.truth.alignment.mean_grade(at, at + 20.0));
                steep = steep.max(falls.fold(0.0, f64::max));
            }
        }
    }
    println!("{down} changes down, {too_fast} of them too fast, {up} up");
    assert!(down + up >= 20, "{down} changes down, {up} up: too few to say anything");
    at_most("comes to a leg too fast, km/h", late, COMES_KMH, None, *usual);
    at_most("runs away while the gear is out, km/h", free, 5.0, None, *usual);
    at_most("by hand down on, %", steep, 2.1, None, *usual);
}

/// Where the retarder is said to hold, all touches together warm the brakes by no more than 60 K. One gear
/// all the way never takes less time than the legs beside it.
#[test]
fn legs_are_no_way_to_more_heat_and_save_time() {
    let (all, usual) = usual_day();
    let (mut hot, mut slower, mut seen) = (0.0_f64, 0.0_f64, 0);
    for it in in_legs(all) {
        seen += 1;
        let advice = it.descent.choice.advice().expect("legs are held");
        let kelvin: f64 = it.descent.touches.iter().map(|touch| touch.kelvin).sum();
        if kelvin > 60.0 {
            println!("{kelvin:.0} K: {}", it.words);
        }
        hot = hot.max(kelvin);
        let one = it.descent.one_gear.expect("one gear stands beside legs");
        slower = slower.max(advice.time.0 - one.time.0);
    }
    assert!(seen >= 20, "{seen} descents in legs");
    at_most(&format!("heat of all touches of {seen} descents in legs, K"), hot, 60.0, None, *usual);
    at_most("legs take more time than one gear, s", slower, 0.0, None, *usual);
}

/// On a slippery road, and where the truck must not change gear, no change is told.
#[test]
fn a_slippery_road_is_driven_in_one_gear() {
    for surface in [Surface::Wet, Surface::Snow, Surface::Ice] {
        for it in found(30, &Day { surface, ..Day::USUAL }) {
            assert!(it.descent.legs.len() <= 1, "{surface:?}: {}", it.words);
        }
    }
    let lead = solver::Lead::OneGear;
    for it in found(30, &Day { lead, ..Day::USUAL }) {
        assert!(it.descent.legs.len() <= 1, "{}", it.words);
    }
}
