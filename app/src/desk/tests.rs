//! The worker's part without a browser: a file in, road and plan out.

use super::*;
use crate::message::{LANE_BYTES, LANE_FLOATS};
use crate::test_roads::hill;
use solver::day::Day;
use solver::truck::Preset;

fn task() -> Task {
    Task { course: None, reversed: false, truck: Preset::FiveAxle36.spec(), day: Day::USUAL }
}

fn ask(desk: &mut Desk, request: Request, file: Option<Vec<u8>>) -> Vec<(Reply, Arrays)> {
    let mut replies = Vec::new();
    desk.answer(request, file, &mut |reply, arrays| {
        if !matches!(reply, Reply::Progress(..)) {
            replies.push((reply, arrays));
        }
    });
    replies
}

#[test]
fn a_file_gives_a_road_and_a_plan_with_one_value_a_point() {
    let mut desk = Desk::new();
    let replies = ask(&mut desk, Request::Open(task()), Some(hill()));
    let [(Reply::Surveyed(road), of_road), (Reply::Planned(plan), lanes)] = &replies[..] else {
        panic!("road, then plan: {replies:?}");
    };
    assert_eq!((road.name.as_str(), road.course, road.reversed), ("Test hill", 0, false));
    assert_eq!(plan.descents.len(), 1);
    let points = of_road.floats[0].len();
    assert_eq!((of_road.floats.len(), of_road.bytes.len()), (RoadArrays::FLOATS, RoadArrays::BYTES));
    assert_eq!((lanes.floats.len(), lanes.bytes.len()), (LANE_FLOATS, LANE_BYTES));
    for arrays in [of_road, lanes] {
        assert!(arrays.floats.iter().all(|it| it.len() == points));
        assert!(arrays.bytes.iter().all(|it| it.len() == points));
    }
}

#[test]
fn another_truck_is_planned_without_another_survey() {
    let mut desk = Desk::new();
    ask(&mut desk, Request::Open(task()), Some(hill()));
    let lighter = Task { truck: Preset::Coach.spec(), ..task() };
    let replies = ask(&mut desk, Request::Plan(lighter), None);
    assert!(matches!(&replies[..], [(Reply::Planned(_), _)]), "{replies:?}");
}

#[test]
fn the_other_direction_is_another_road() {
    let mut desk = Desk::new();
    let there = ask(&mut desk, Request::Open(task()), Some(hill()));
    let back = ask(&mut desk, Request::Plan(Task { reversed: true, ..task() }), None);
    let ([(_, out), _], [(Reply::Surveyed(road), home), (Reply::Planned(plan), _)]) = (&there[..], &back[..])
    else {
        panic!("a road and a plan each");
    };
    assert!(road.reversed && plan.descents.is_empty());
    let turned: Vec<f32> = home.floats[0].iter().rev().copied().collect();
    assert_eq!(turned, out.floats[0]);
}

#[test]
fn a_rotten_file_leaves_the_former_road() {
    let mut desk = Desk::new();
    ask(&mut desk, Request::Open(task()), Some(hill()));
    let replies = ask(&mut desk, Request::Open(task()), Some(b"<html><body>Log in</body></html>".to_vec()));
    assert!(matches!(&replies[..], [(Reply::Failed(FileError::NotGpx(_)), _)]), "{replies:?}");
    let replies = ask(&mut desk, Request::Plan(task()), None);
    assert!(matches!(&replies[..], [(Reply::Planned(_), _)]), "{replies:?}");
}

#[test]
fn what_cannot_be_done_is_said() {
    let mut desk = Desk::new();
    assert!(matches!(&ask(&mut desk, Request::Plan(task()), None)[..], [(Reply::NoRoad, _)]));
    assert!(matches!(&ask(&mut desk, Request::Export, None)[..], [(Reply::NoRoad, _)]));
    let mut bad = task();
    bad.truck.gears.clear();
    let replies = ask(&mut desk, Request::Open(bad), Some(hill()));
    assert!(matches!(&replies[..], [(Reply::TruckRefused(_), _)]), "{replies:?}");
}

#[test]
fn the_export_is_of_the_plan_answered_last() {
    let mut desk = Desk::new();
    ask(&mut desk, Request::Open(task()), Some(hill()));
    let replies = ask(&mut desk, Request::Export, None);
    let [(Reply::Exported(text), _)] = &replies[..] else { panic!("{replies:?}") };
    assert!(text.contains("<wpt") && text.contains("</gpx>"), "{text}");
}
