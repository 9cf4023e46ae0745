//! Every check by its key.

#[cfg(not(target_arch = "wasm32"))]
use super::geodesic;
use super::{
    Row, built_roads, climbing, cooling, curves, downgrade_temperature, downgrades, drums, forces, hills,
    regulation_13, retarders, rolling, service_brakes, stopping, trade, upgrades, vehicles,
};

/// Makes the rows of one key.
pub type Rows = fn() -> Vec<Row>;

/// Every check by its key, in the order in which they are shown.
pub const KEYS: &[(&str, Rows)] = &[
    ("R13-II", regulation_13::type_ii),
    ("R13-IIA", regulation_13::type_ii_a),
    ("MFDD", stopping::mean_fully_developed),
    ("STOP", stopping::distances),
    ("GSRS", downgrade_temperature::temperatures),
    ("GSRS-SPLIT", downgrade_temperature::chained),
    ("GSRS-VMAX", downgrade_temperature::fastest),
    ("GRADE-EQUIV", forces::grade_equivalent),
    ("NAT", forces::natural_resistance),
    ("ROLL", rolling::by_speed),
    ("ROLL-LOAD", rolling::by_load),
    ("LABEL", rolling::label_classes),
    ("CLIMB", climbing::slowing),
    ("CRAWL", climbing::crawling),
    ("RAMP", stopping::ramps),
    ("CURVE", curves::friction_and_radius),
    ("ROLLOVER", curves::tipping),
    ("SNUB", service_brakes::snubbing),
    ("ADHESION", forces::adhesion),
    ("INERTIA", forces::wheels_as_mass),
    ("AXLE", forces::axle_both_ways),
    ("SIGN", service_brakes::posted_speeds),
    ("SIGN-2", downgrades::posted_by_mass),
    ("R13-II-NONE", downgrades::type_ii_without_retarder),
    ("R13-II-OWN", downgrades::type_ii_with_retarder),
    ("I5-35", downgrades::limit_of_35_mph),
    ("SA-60", downgrades::limit_of_60_kmh),
    ("CA-STEPS", downgrades::slowest_posted),
    ("GEAR-CLIMB", downgrades::gear_that_climbs),
    ("GEAR-RPM", downgrades::engine_speed_down),
    ("DOWN-LOAD", downgrades::loaded_and_empty),
    ("GSRS-NEW", cooling::newer_temperatures),
    ("GSRS-NEW-SI", cooling::newer_in_si),
    ("GSRS-NEW-VMAX", cooling::newer_fastest),
    ("GSRS-SIGN", cooling::posted_pair),
    ("SIGN-SHARE", cooling::share_of_the_service_brakes),
    ("GSRS-LUMP", cooling::imbalance),
    ("RECOVER", cooling::trailer_and_tractor),
    ("RECOVER-TAU", cooling::time_constants),
    ("FADE-US-T", cooling::fade_test),
    ("DISC-H", cooling::discs_in_a_straight_line),
    ("DISC-SHARE", cooling::discs_by_speed),
    ("DISC-REST", cooling::discs_at_rest),
    ("STROKE", drums::stroke_by_heat),
    ("STROKE-LIMIT", drums::stroke_limits),
    ("DRUM-M", drums::drum_mass),
    ("DESC-250", drums::temperature_kept),
    ("SNUB-2", drums::longer_snubs),
    ("GEAR-DOWN-HEAT", drums::application_of_a_change),
    ("RET-A", retarders::heavy_of_2015),
    ("RET-B", retarders::strong_heavy),
    ("RET-C", retarders::heavy_not_identified),
    ("RET-D", retarders::medium_with_exhaust_brake),
    ("RET-SHAPE", retarders::shape),
    ("RET-IDLE", retarders::near_idle),
    ("RET-LITRE", retarders::power_by_litre),
    ("RET-EXH", retarders::exponent_of_exhaust),
    ("RET-RATED", retarders::engine_speed_told),
    ("RET-HYD", retarders::torque_by_shaft_speed),
    ("HYD-DERATE", retarders::sustained_share),
    ("HYD-TORQUE", retarders::largest_torque),
    ("RET-EM", retarders::hot_and_cold),
    ("STAGE-2SW", retarders::stages_by_switches),
    ("CUT-2", retarders::cut_outs),
    ("HCM-CRAWL-TT", upgrades::crawling_tractor_trailer),
    ("HCM-CRAWL-SUT", upgrades::crawling_single_unit),
    ("CRAWL-EQ", upgrades::crawling_by_the_equation),
    ("HCM-SLOW", upgrades::slowing_tractor_trailer),
    ("HCM-SLOW-SUT", upgrades::slowing_single_unit),
    ("HCM-CHAIN", upgrades::one_grade_after_the_other),
    ("CLIMB-ALT", upgrades::crawling_high_up),
    ("CFR-GRADE", built_roads::steepest_means),
    ("CFR-HEIGHT", built_roads::heights),
    ("HCM-ROAD", built_roads::mountain_road),
    ("HCM-CURVE", built_roads::slower_than_cars),
    ("I64-45", hills::limit_of_45_mph),
    ("I70-45", hills::limit_of_45_mph_high_up),
    ("US421-30", hills::limit_of_30_mph),
    ("FR-RISK", hills::never_missed),
    ("DOWN-OLD", hills::gentle_grades),
    ("GEAR-10OD", vehicles::ten_overdrive),
    ("GEAR-10D", vehicles::ten_direct),
    ("CTRL-10", vehicles::third_gear),
    ("MOTOR-2", vehicles::motoring_of_a_small_engine),
    ("MOTOR-3", vehicles::motoring_of_a_large_engine),
    ("RR-HIST", vehicles::rolling_by_age),
    ("PM-CN", vehicles::power_for_mass),
    ("ROAD-LOAD", vehicles::load_of_the_road),
    #[cfg(not(target_arch = "wasm32"))]
    ("GEODESIC", geodesic::distances),
    ("TRADE", trade::practice),
];

const ONE_COEFFICIENT: &str = "the plan takes one coefficient for all tyres, as entered";

/// Checks of what no answer of the project calls, and what stands in its place. Their source is
/// read and their arithmetic is right, but no answer is better for it; what they check lives
/// among the tests.
pub const NOT_USED: &[(&str, &str)] =
    &[("ROLL", ONE_COEFFICIENT), ("ROLL-LOAD", ONE_COEFFICIENT), ("LABEL", ONE_COEFFICIENT)];
