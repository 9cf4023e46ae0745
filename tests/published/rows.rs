//! One test for each key. The source of every value stands in its row (`tests::evidence`).

use std::{fs, path::Path};
use tests::evidence::{KEYS, NOT_USED, Status, all, hold, json, of};

/// Every key that the project promises to check.
const PROMISED: [&str; 90] = [
    "R13-II",
    "R13-IIA",
    "MFDD",
    "STOP",
    "GSRS",
    "GSRS-SPLIT",
    "GSRS-VMAX",
    "GRADE-EQUIV",
    "NAT",
    "ROLL",
    "ROLL-LOAD",
    "LABEL",
    "CLIMB",
    "CRAWL",
    "RAMP",
    "CURVE",
    "ROLLOVER",
    "SNUB",
    "ADHESION",
    "INERTIA",
    "AXLE",
    "SIGN",
    "SIGN-2",
    "R13-II-NONE",
    "R13-II-OWN",
    "I5-35",
    "SA-60",
    "CA-STEPS",
    "GEAR-CLIMB",
    "GEAR-RPM",
    "DOWN-LOAD",
    "GSRS-NEW",
    "GSRS-NEW-SI",
    "GSRS-NEW-VMAX",
    "GSRS-SIGN",
    "SIGN-SHARE",
    "GSRS-LUMP",
    "RECOVER",
    "RECOVER-TAU",
    "FADE-US-T",
    "DISC-H",
    "DISC-SHARE",
    "DISC-REST",
    "STROKE",
    "STROKE-LIMIT",
    "DRUM-M",
    "DESC-250",
    "SNUB-2",
    "GEAR-DOWN-HEAT",
    "RET-A",
    "RET-B",
    "RET-C",
    "RET-D",
    "RET-SHAPE",
    "RET-IDLE",
    "RET-LITRE",
    "RET-EXH",
    "RET-RATED",
    "RET-HYD",
    "HYD-DERATE",
    "HYD-TORQUE",
    "RET-EM",
    "STAGE-2SW",
    "CUT-2",
    "HCM-CRAWL-TT",
    "HCM-CRAWL-SUT",
    "CRAWL-EQ",
    "HCM-SLOW",
    "HCM-SLOW-SUT",
    "HCM-CHAIN",
    "CLIMB-ALT",
    "CFR-GRADE",
    "CFR-HEIGHT",
    "HCM-ROAD",
    "HCM-CURVE",
    "I64-45",
    "I70-45",
    "US421-30",
    "FR-RISK",
    "DOWN-OLD",
    "GEAR-10OD",
    "GEAR-10D",
    "CTRL-10",
    "MOTOR-2",
    "MOTOR-3",
    "RR-HIST",
    "PM-CN",
    "ROAD-LOAD",
    "GEODESIC",
    "TRADE",
];

macro_rules! each_row_holds {
    ($($name:ident: $key:expr;)*) => {
        $(#[test]
        fn $name() {
            hold($key);
        })*

        /// A key without a test would be a promise that nobody keeps.
        const TESTED: &[&str] = &[$($key),*];
    };
}

each_row_holds! {
    type_ii_power_and_energy: "R13-II";
    type_ii_a_power: "R13-IIA";
    mean_fully_developed_deceleration: "MFDD";
    stopping_distances_as_decelerations: "STOP";
    brake_temperatures: "GSRS";
    chained_stretches_and_cooling: "GSRS-SPLIT";
    fastest_speed_within_the_limit: "GSRS-VMAX";
    less_resistance_is_like_a_steeper_grade: "GRADE-EQUIV";
    natural_resistance: "NAT";
    rolling_resistance_by_speed: "ROLL";
    rolling_resistance_by_load: "ROLL-LOAD";
    classes_of_rolling_resistance: "LABEL";
    slowing_on_a_climb: "CLIMB";
    crawl_speeds: "CRAWL";
    lengths_of_escape_ramps: "RAMP";
    side_friction_and_least_radius: "CURVE";
    tipping_speeds: "ROLLOVER";
    snubs_heat_as_much_as_dragging_does: "SNUB";
    friction_asked_of_the_driven_axles: "ADHESION";
    wheels_as_mass: "INERTIA";
    axle_efficiency_both_ways: "AXLE";
    the_heavier_truck_is_slower_as_posted: "SIGN";
    posted_between_without_and_with_a_retarder: "SIGN-2";
    the_speed_of_approval_without_a_retarder: "R13-II-NONE";
    the_speed_of_approval_with_a_retarder: "R13-II-OWN";
    a_posted_limit_is_kept: "I5-35";
    much_slower_than_the_limit_when_loaded: "SA-60";
    no_slower_than_is_ever_posted: "CA-STEPS";
    the_gear_that_climbs_or_a_little_below: "GEAR-CLIMB";
    engine_speeds_of_manuals: "GEAR-RPM";
    loaded_is_slower_than_empty: "DOWN-LOAD";
    newer_temperatures: "GSRS-NEW";
    newer_in_si: "GSRS-NEW-SI";
    newer_fastest: "GSRS-NEW-VMAX";
    posted_pair: "GSRS-SIGN";
    share_of_the_service_brakes: "SIGN-SHARE";
    imbalance: "GSRS-LUMP";
    trailer_and_tractor: "RECOVER";
    time_constants: "RECOVER-TAU";
    fade_test: "FADE-US-T";
    discs_in_a_straight_line: "DISC-H";
    discs_by_speed: "DISC-SHARE";
    discs_at_rest: "DISC-REST";
    stroke_by_heat: "STROKE";
    stroke_limits: "STROKE-LIMIT";
    drum_mass: "DRUM-M";
    temperature_kept: "DESC-250";
    longer_snubs: "SNUB-2";
    application_of_a_change: "GEAR-DOWN-HEAT";
    heavy_of_2015: "RET-A";
    strong_heavy: "RET-B";
    heavy_not_identified: "RET-C";
    medium_with_exhaust_brake: "RET-D";
    shape: "RET-SHAPE";
    near_idle: "RET-IDLE";
    power_by_litre: "RET-LITRE";
    exponent_of_exhaust: "RET-EXH";
    engine_speed_told: "RET-RATED";
    torque_by_shaft_speed: "RET-HYD";
    sustained_share: "HYD-DERATE";
    largest_torque: "HYD-TORQUE";
    hot_and_cold: "RET-EM";
    stages_by_switches: "STAGE-2SW";
    cut_outs: "CUT-2";
    crawling_tractor_trailer: "HCM-CRAWL-TT";
    crawling_single_unit: "HCM-CRAWL-SUT";
    crawling_by_the_equation: "CRAWL-EQ";
    slowing_tractor_trailer: "HCM-SLOW";
    slowing_single_unit: "HCM-SLOW-SUT";
    one_grade_after_the_other: "HCM-CHAIN";
    crawling_high_up: "CLIMB-ALT";
    steepest_means: "CFR-GRADE";
    heights: "CFR-HEIGHT";
    mountain_road: "HCM-ROAD";
    slower_than_cars: "HCM-CURVE";
    limit_of_45_mph: "I64-45";
    limit_of_45_mph_high_up: "I70-45";
    limit_of_30_mph: "US421-30";
    never_missed: "FR-RISK";
    gentle_grades: "DOWN-OLD";
    ten_overdrive: "GEAR-10OD";
    ten_direct: "GEAR-10D";
    third_gear: "CTRL-10";
    motoring_of_a_small_engine: "MOTOR-2";
    motoring_of_a_large_engine: "MOTOR-3";
    rolling_by_age: "RR-HIST";
    power_for_mass: "PM-CN";
    load_of_the_road: "ROAD-LOAD";
    distances_on_the_ellipsoid: "GEODESIC";
    common_practice: "TRADE";
}

#[test]
fn every_promised_key_has_rows_and_a_test() {
    let keys: Vec<&str> = KEYS.iter().map(|(key, _)| *key).collect();
    assert_eq!(keys, PROMISED);
    assert_eq!(TESTED, PROMISED);
    for key in PROMISED {
        let rows = of(key);
        assert!(!rows.is_empty() && rows.iter().all(|row| row.key == key), "{key}");
    }
}

#[test]
fn every_row_names_its_source_and_speaks_for_itself() {
    let rows = all();
    for row in &rows {
        let twins = rows.iter().filter(|other| other.key == row.key && other.what == row.what).count();
        assert_eq!(twins, 1, "{}: {}", row.key, row.what);
        assert!(!row.source.is_empty() && !row.what.is_empty(), "{}", row.key);
        assert_eq!(row.status == Status::CommonPractice, row.source.contains("no source"), "{}", row.key);
    }
}

/// What checks functions that no answer calls says so, where a person reads it.
#[test]
fn what_no_answer_uses_is_told_beside_its_rows() {
    for (key, _) in NOT_USED {
        assert!(PROMISED.contains(key), "{key}");
    }
    for row in all() {
        let unused = NOT_USED.iter().any(|(key, _)| *key == row.key);
        assert_eq!(row.standing().contains("not used by any answer"), unused, "{}: {}", row.key, row.what);
    }
    let told = json().lines().filter(|line| line.contains("not used by any answer")).count();
    assert_eq!(told, NOT_USED.iter().map(|(key, _)| of(key).len()).sum::<usize>());
}

/// The file that the page shows is made of these rows, and of no others.
#[test]
fn the_committed_file_is_that_of_today() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../public/evidence.json");
    let committed = fs::read_to_string(path).unwrap_or_default();
    let today = json();
    let changed = today.lines().find(|line| !committed.lines().any(|other| other == *line));
    assert!(committed == today, "run `cargo run -p tests --bin evidence`; first change: {changed:?}");
}
