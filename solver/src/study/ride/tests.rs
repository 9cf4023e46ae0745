//! Tests that need the module's inside: the place where an engine turns too fast.

use super::*;
use crate::truck::Preset;

#[test]
fn the_first_place_where_the_engine_turns_too_fast_is_told() {
    let heights = (0..=300).map(|k| 900.0 - 0.6 * f64::from(k)).collect();
    let road = Road::from_heights("slope", 10.0, heights).expect("heights are sound");
    let (truck, day) = (Truck::new(Preset::FiveAxle36.spec()).expect("a preset"), Day::USUAL);
    let (plan, _) = crate::plan::plan(&road, &truck, &day, &mut |_| true).expect("not stopped");
    let trip = Trip { truck: &truck, day: &day };
    let setting = Setting::of(&road, trip, &plan, Slip::Planned).expect("the plan can be driven");
    let mut run = Run::by_card_then(
        trip,
        &road,
        &setting.caps,
        &setting.holds,
        start_state(trip, &road),
        setting.then(),
    );
    assert_eq!(overspeed_from(&road, &setting, &run), None);
    let first = truck.gears().next().expect("a truck has gears");
    let ceiling = truck.road_speed(first, truck.highest_engine_speed());
    for sample in &mut run.samples[200..] {
        (sample.gear, sample.speed) = (first, ceiling * 1.01);
    }
    assert_eq!(overspeed_from(&road, &setting, &run), Some(Metres(2_010.0)));
}
