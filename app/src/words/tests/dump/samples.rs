//! Roads, plans, errors and the like that something is said of.

use crate::entries::Entries;
use crate::exercise::samples::{ROADS, planned, sheet};
use crate::exercise::{BrakeHeat, ControlSpeed, Exercise, GearTried, Ground};
use crate::tell::Curves;
use crate::trouble::WorkTrouble;
use crate::words::tests::card::Case;
use ::tests::plain_roads::road;
use solver::day::{Day, Lead, ServiceBrakes, Surface};
use solver::limits::OutOfRange;
use solver::plan::{Advice, Choice, Descent, NoSafeSpeed, Proof, SlowCurve};
use solver::report::truck_file::TruckFileError;
use solver::road::{
    Bound, Curve, Encoding, FileError, Finding, FindingKind, Foreign, Refusal, Span, Turn, Unassessed,
};
use solver::study::NotMeasured;
use solver::truck::{AxleGroup, BrakeKind, Preset, TruckError};
use solver::units::{Celsius, MetresPerSecond, RevPerMin};
use std::sync::OnceLock;

use super::grid::*;

/// Roads planned for trucks and days that bring out what may be said of them.
pub(super) fn cases() -> &'static [Case] {
    static CASES: OnceLock<Vec<Case>> = OnceLock::new();
    CASES.get_or_init(|| {
        let hill: &[(u32, f64)] = &[(100, 0.0), (250, -1.6), (100, 0.0)];
        let two: &[(u32, f64)] = &[(100, 0.0), (300, -0.8), (50, -0.1), (250, -1.8), (100, 0.0)];
        let start: &[(u32, f64)] = &[(250, -1.6), (100, 0.0)];
        let gentle: &[(u32, f64)] = &[(100, 0.0), (150, -0.6), (100, 0.0)];
        let steps: &[(u32, f64)] =
            &[(50, 0.0), (100, -1.2), (80, 0.3), (90, -1.7), (100, 0.1), (150, -1.4), (50, 0.0)];
        let climb: &[(u32, f64)] = &[(50, 0.0), (200, 1.6), (60, 0.0)];
        let steep: &[(u32, f64)] = &[(100, 0.0), (150, -1.0), (40, -3.4), (150, -1.2), (100, 0.0)];
        let usual = Day::USUAL;
        let snub = Day { service_brakes: ServiceBrakes::MaySnub, ..usual };
        let on = |surface| Day { surface, ..usual };
        let lead = |lead| Day { lead, ..usual };
        let spec = |preset: Preset| Entries::of(preset).truck;
        let tractor = || spec(Preset::FiveAxle36);
        let bare = || solver::truck::TruckSpec { retarder: solver::truck::Retarder::None, ..tractor() };
        let on_road = |legs: &[(u32, f64)], day, truck, reversed| {
            Case::on(day, road("Test road", legs), truck, reversed)
        };
        vec![
            on_road(hill, usual, tractor(), false),
            on_road(hill, snub, tractor(), false),
            on_road(hill, on(Surface::Ice), tractor(), false),
            on_road(hill, on(Surface::Wet), tractor(), false),
            on_road(gentle, on(Surface::Snow), tractor(), false),
            on_road(gentle, usual, bare(), false),
            on_road(hill, snub, bare(), false),
            on_road(two, usual, tractor(), false),
            on_road(two, lead(Lead::OneGear), tractor(), false),
            on_road(two, lead(Lead::Untouched), tractor(), false),
            on_road(start, usual, tractor(), false),
            on_road(steps, usual, spec(Preset::Coach), false),
            on_road(steps, snub, spec(Preset::BDouble), false),
            on_road(climb, usual, tractor(), true),
            on_road(climb, usual, tractor(), false),
            on_road(steep, usual, spec(Preset::Tipper26), false),
            on_road(steep, usual, spec(Preset::CoachConverter), false),
        ]
    })
}

pub(super) fn days() -> Vec<Day> {
    service_brakes().map(|service_brakes| Day { service_brakes, ..Day::USUAL }).to_vec()
}

/// Those planned, and what is seldom said of one.
pub(super) fn descents() -> Vec<Descent> {
    let mut all: Vec<Descent> = cases().iter().flat_map(|it| it.plan.descents.clone()).collect();
    let first = all[0].clone();
    all.extend([
        Descent { heavier: None, cut_short: true, climbs_in: None, ..first.clone() },
        Descent { one_gear: None, untouched: None, ..first.clone() },
    ]);
    for because in governs() {
        let none = NoSafeSpeed {
            because,
            slowest: MetresPerSecond(2.0),
            gear: first.hold().gear,
            hottest_after_stop: Celsius(300.0),
        };
        all.push(Descent { choice: Choice::NoSafeSpeed(none), ..first.clone() });
    }
    for proof in [Proof::Holds, Proof::OnAverage, Proof::Touches, Proof::NeedsBrakes] {
        let touch = |from: f64, kelvin: f64, certain| solver::plan::Touch {
            from: solver::units::Metres(from),
            to: solver::units::Metres(from + 200.0),
            kelvin,
            gains: MetresPerSecond(3.0),
            grade: solver::units::Grade(-0.09 - kelvin / 1e4),
            certain,
        };
        let mut it = first.clone();
        if let Choice::Held(advice) = &mut it.choice {
            advice.proof = proof;
        }
        for touches in [
            vec![],
            vec![touch(2_400.0, 3.0, true)],
            vec![touch(2_400.0, 3.0, false)],
            (0..7)
                .map(|at| touch(2_400.0 + 300.0 * f64::from(at), 1.0 + f64::from(at), at % 3 > 0))
                .collect(),
        ] {
            it.touches = touches;
            all.push(it.clone());
        }
    }
    all
}

/// Held in every way that has a word of its own.
pub(super) fn advices() -> Vec<Advice> {
    let mut all: Vec<Advice> = Vec::new();
    for descent in cases().iter().flat_map(|it| &it.plan.descents) {
        all.extend(descent.choice.advice().copied());
    }
    let first = all[0];
    let stages = stages();
    for governs in governs() {
        for verdict in verdicts() {
            for stage in [stages[0], stages[1]] {
                all.push(Advice { governs, verdict, stage, ..first });
            }
        }
    }
    all
}

pub(super) fn curves() -> Vec<Curves> {
    let curve = Curve { from: 20, to: 26, turn: Turn::Left, radius_m: 31.0, hairpin: false };
    let mut all = Vec::new();
    for (count, hairpins) in [(0, 0), (1, 0), (1, 1), (2, 0), (2, 1), (2, 2), (5, 0), (5, 1), (5, 3)] {
        for turn in [Turn::Left, Turn::Right] {
            let slowest = SlowCurve { curve: Curve { turn, ..curve }, speed: MetresPerSecond(6.0) };
            all.push(Curves { count, hairpins, slowest, at_m: 2_345.0 });
        }
    }
    all
}

pub(super) fn truck_errors() -> Vec<TruckError> {
    let mut all = vec![
        TruckError::DriveAxleHeavierThanTruck,
        TruckError::EngineSpeedsCrossed,
        TruckError::Gears,
        TruckError::FullLoad,
        TruckError::Stages,
        TruckError::Table,
        TruckError::AxleGroups,
    ];
    all.extend(entries().map(|entry| TruckError::Entry(OutOfRange { entry, value: 1_234.5 })));
    all
}

pub(super) fn truck_file_errors() -> Vec<TruckFileError> {
    let mut all = vec![
        TruckFileError::Broken { line: 3, what: "unknown field".to_owned() },
        TruckFileError::CutOff,
        TruckFileError::Version { found: 3, newest: 1 },
    ];
    all.extend(truck_errors().into_iter().map(TruckFileError::Truck));
    all
}

pub(super) fn axle_groups() -> Vec<AxleGroup> {
    let mut all = Vec::new();
    for place in axle_places() {
        for brake in [BrakeKind::Drum, BrakeKind::Disc] {
            for axles in [1, 2, 3, 5] {
                all.push(AxleGroup { place, axles, brake, effort_share: 0.335 });
            }
        }
    }
    all
}

pub(super) fn exercises() -> Vec<Exercise> {
    let mut all = Vec::new();
    for (preset, legs) in Preset::ALL.into_iter().zip(ROADS.into_iter().cycle()) {
        let spec = preset.spec();
        let ground = Ground::of(&planned(legs, &spec, &Day::USUAL));
        for (seed, units) in (0..6).zip(units().into_iter().cycle()) {
            all.extend(sheet(seed, units, &ground, &spec, &Day::USUAL).exercises);
        }
    }
    all
}
pub(super) fn control_speeds() -> Vec<ControlSpeed> {
    let own = |it| if let Exercise::ControlSpeed(it) = it { Some(it) } else { None };
    exercises().into_iter().filter_map(own).take(8).collect()
}
pub(super) fn brake_heats() -> Vec<BrakeHeat> {
    let own = |it| if let Exercise::BrakeHeat(it) = it { Some(it) } else { None };
    let one = exercises().into_iter().find_map(own).expect("one is set");
    let each = |place| [1, 2, 3].map(|axles| BrakeHeat { place, axles, ..one });
    axle_places().into_iter().flat_map(each).collect()
}
pub(super) fn gears_tried() -> Vec<GearTried> {
    let own = |it| if let Exercise::GearChoice(it) = it { Some(it) } else { None };
    exercises().into_iter().filter_map(own).take(4).flat_map(|it| it.gears).collect()
}

pub(super) fn troubles() -> Vec<WorkTrouble> {
    let name = || "Kestrel Gap.gpx".to_owned();
    let mut all = vec![
        WorkTrouble::ManyFiles,
        WorkTrouble::NotAFile,
        WorkTrouble::BuiltInMissing,
        WorkTrouble::CannotStart,
        WorkTrouble::Stopped { detail: "⟨detail⟩".to_owned() },
        WorkTrouble::Cancelled,
        WorkTrouble::CannotExport,
        WorkTrouble::NoPicture,
    ];
    all.extend(file_errors().into_iter().map(|error| WorkTrouble::File { name: name(), error }));
    all.extend(truck_errors().into_iter().map(|error| WorkTrouble::Truck { error }));
    for error in truck_file_errors() {
        all.extend([WorkTrouble::TruckFile { error: error.clone() }, WorkTrouble::ProjectFile { error }]);
    }
    all
}

pub(super) fn file_errors() -> Vec<FileError> {
    let mut all = vec![FileError::Empty, FileError::NothingInside, FileError::Cancelled];
    all.extend(
        [
            Foreign::Html,
            Foreign::Kml,
            Foreign::Gzip,
            Foreign::Zip,
            Foreign::Fit,
            Foreign::Json,
            Foreign::Pdf,
            Foreign::Picture,
            Foreign::OtherXml("svg".to_owned()),
            Foreign::Unknown,
        ]
        .map(FileError::NotGpx),
    );
    for count in counts() {
        all.push(FileError::WaypointsOnly { count });
        for (constant, unreadable) in [(false, 0), (true, 0), (false, 1), (true, 7)] {
            all.push(FileError::NoHeights { points: count, constant, unreadable });
        }
        all.extend([false, true].map(|swapped| FileError::TooManyBadPoints {
            bad: count,
            points: 2 * count,
            line: count + 1,
            swapped,
        }));
        all.push(FileError::BadHeights { index: count });
        all.push(FileError::NoSuchCourse { asked: count, found: 2 });
        all.push(FileError::NoSuchCourse { asked: 3, found: count });
        all.push(FileError::LegsApart { leg: count + 2, gap_m: 2_345.0 });
    }
    for metres in [0.4, 61.5, 1_949.0, 123_456.0] {
        all.push(FileError::TooCoarse { found_m: metres, needed_m: 60.0 });
        all.push(FileError::TooShort { found_m: metres, needed_m: 200.0 });
        all.push(FileError::NothingLeft { length_m: metres });
        all.push(FileError::TooLarge(Bound::Length(metres * 1e3)));
    }
    all.extend([1, 2, 5].map(|recording| FileError::NotOneRoad { recording }));
    all.extend([Bound::Bytes(1_234_567_890), Bound::Points, Bound::Courses].map(FileError::TooLarge));
    for what in [Refusal::Entities, Refusal::Nesting, Refusal::LongTag] {
        all.push(FileError::Refused { what, line: 1_234 });
    }
    all
}

fn kinds() -> Vec<FindingKind> {
    use FindingKind as Kind;
    let line = 1_234;
    let mut all = vec![
        Kind::JunkBeforeStart,
        Kind::RecordingsCombined { common_m: 12_345.0 },
        Kind::CutOff { line },
        Kind::UndeclaredPrefix { prefix: "ns3".to_owned(), line },
        Kind::BadReference { line },
        Kind::TagsRepaired { line },
        Kind::DocumentTypeIgnored { line },
        Kind::DecimalComma { line },
        Kind::Padding { line },
        Kind::MetresWritten { line },
        Kind::ForeignUnit { line },
        Kind::HeightUnreadable { line },
        Kind::PointsDropped { line },
        Kind::WaypointsLeftOut { kept: 12_345 },
        Kind::RouteShapeUsed,
        Kind::SegmentsJoined { widest_m: 1_234.5 },
        Kind::StopsMerged,
        Kind::JumpsRejected,
        Kind::ZeroHeights,
        Kind::SpikesRemoved { largest_m: 1_234.5 },
        Kind::HeightsFilled { longest_m: 1_234.5 },
        Kind::TunnelBridged { rise_m: 61.5 },
        Kind::ViaductBridged { drop_m: 61.5 },
        Kind::VerySteep { grade: 0.1739 },
        Kind::RecordingsDisagree { apart_m: 12.5, length_m: 1_234.0 },
    ];
    for encoding in [Encoding::Utf8, Encoding::Utf16LowFirst, Encoding::Utf16HighFirst, Encoding::Windows1252]
    {
        all.extend(
            [None, Some("latin-9".to_owned())]
                .map(|declared| Kind::EncodingRepaired { declared, read_as: encoding }),
        );
    }
    all.extend(why().map(|why| Kind::NotAssessed { why }));
    for (poor, from_terrain) in [(false, false), (false, true), (true, false), (true, true)] {
        all.push(Kind::RoughHeights { roughness: 3.25, base_m: 1_234.0, poor, from_terrain });
    }
    all
}

fn why() -> [Unassessed; 4] {
    [Unassessed::Gap, Unassessed::NoHeights, Unassessed::Step, Unassessed::Sliver]
}

pub(super) fn findings() -> Vec<Finding> {
    let mut all = Vec::new();
    for kind in kinds() {
        for count in counts() {
            let from_m = (count > 1).then_some(1_234.0);
            all.push(Finding { kind: kind.clone(), count, from_m, to_m: from_m.map(|it| it + 345.0) });
        }
    }
    all
}

pub(super) fn spans() -> Vec<Span> {
    why().map(|why| Span { from: 10, to: 20, why }).to_vec()
}

pub(super) fn not_measured() -> Vec<NotMeasured> {
    vec![
        NotMeasured::NoSuchStage,
        NotMeasured::Off,
        NotMeasured::NotPushed,
        NotMeasured::GaugesDiffer(RevPerMin(1_890.0)),
        NotMeasured::OutOfReach(1.72),
    ]
}
