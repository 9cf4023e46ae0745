//! The worker's part without a browser: a file in, road and plan out.

use super::*;
use crate::message::{LANE_BYTES, LANE_FLOATS};
use crate::test_roads::hill;
use solver::day::Day;
use solver::truck::Preset;

fn task() -> Task {
    Task {
        course: None,
        part: None,
        reversed: false,
        roadside: None,
        truck: Preset::FiveAxle36.spec(),
        day: Day::USUAL,
    }
}

fn ask(desk: &mut Desk, request: Request, file: Option<Vec<u8>>) -> Vec<(Reply, Arrays)> {
    let mut replies = Vec::new();
    desk.answer(request, file.into_iter().collect(), &mut |reply, arrays| {
        if !matches!(reply, Reply::Progress(..)) {
            replies.push((reply, arrays));
        }
    });
    replies
}

#[test]
fn a_file_gives_a_road_and_a_plan_with_one_value_a_point() {
    let mut desk = Desk::new();
    let replies = ask(&mut desk, Request::Open(task(), vec![false]), Some(hill()));
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
    ask(&mut desk, Request::Open(task(), vec![false]), Some(hill()));
    let lighter = Task { truck: Preset::Coach.spec(), ..task() };
    let replies = ask(&mut desk, Request::Plan(lighter), None);
    assert!(matches!(&replies[..], [(Reply::Planned(_), _)]), "{replies:?}");
}

#[test]
fn the_other_direction_is_another_road() {
    let mut desk = Desk::new();
    let there = ask(&mut desk, Request::Open(task(), vec![false]), Some(hill()));
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
    ask(&mut desk, Request::Open(task(), vec![false]), Some(hill()));
    let replies = ask(
        &mut desk,
        Request::Open(task(), vec![false]),
        Some(b"<html><body>Log in</body></html>".to_vec()),
    );
    assert!(matches!(&replies[..], [(Reply::Failed(FileError::NotGpx(_)), _)]), "{replies:?}");
    let replies = ask(&mut desk, Request::Plan(task()), None);
    assert!(matches!(&replies[..], [(Reply::Planned(_), _)]), "{replies:?}");
}

#[test]
fn what_cannot_be_done_is_said() {
    let mut desk = Desk::new();
    assert!(matches!(&ask(&mut desk, Request::Plan(task()), None)[..], [(Reply::NoRoad, _)]));
    assert!(matches!(&ask(&mut desk, Request::HandOver, None)[..], [(Reply::NoRoad, _)]));
    let mut bad = task();
    bad.truck.gears.clear();
    let replies = ask(&mut desk, Request::Open(bad, vec![false]), Some(hill()));
    assert!(matches!(&replies[..], [(Reply::TruckRefused(_), _)]), "{replies:?}");
}

#[test]
fn the_road_handed_over_is_the_one_shown() {
    let mut desk = Desk::new();
    ask(&mut desk, Request::Open(task(), vec![false]), Some(hill()));
    let back = ask(&mut desk, Request::Plan(Task { reversed: true, ..task() }), None);
    let replies = ask(&mut desk, Request::HandOver, None);
    let ([(Reply::Surveyed(_), shown), _], [(Reply::HandedOver, arrays)]) = (&back[..], &replies[..]) else {
        panic!("{replies:?}");
    };
    let road: Road = postcard::from_bytes(&arrays.bytes[0]).expect("a road");
    let heights: Vec<f32> = road.heights_m().iter().map(|height| *height as f32).collect();
    assert_eq!(heights, shown.floats[0]);
}

/// Two roads in one file: the test hill, and the same again under another name.
fn two_tracks() -> Vec<u8> {
    let text = String::from_utf8(hill()).expect("the test hill is text");
    let (head, rest) = text.split_once("<trk>").expect("a track");
    let (track, tail) = rest.split_once("</trk>").expect("its end");
    let again = track.replace("Test hill", "Other hill");
    format!("{head}<trk>{track}</trk><trk>{again}</trk>{tail}").into_bytes()
}

#[test]
fn which_of_several_tracks_is_asked() {
    let mut desk = Desk::new();
    let replies = ask(&mut desk, Request::Open(task(), vec![false]), Some(two_tracks()));
    let [(Reply::Choose(courses), _)] = &replies[..] else { panic!("asked: {replies:?}") };
    assert_eq!(courses.len(), 2);
    assert!(courses.iter().all(|course| course.usable));
    let replies = ask(&mut desk, Request::Plan(Task { course: Some(1), ..task() }), None);
    let [(Reply::Surveyed(road), _), (Reply::Planned(_), _)] = &replies[..] else { panic!("{replies:?}") };
    assert_eq!((road.name.as_str(), road.course), ("Other hill", 1));
}

#[test]
fn a_part_is_planned_alone_and_one_too_short_is_not_cut() {
    let mut desk = Desk::new();
    let whole = ask(&mut desk, Request::Open(task(), vec![false]), Some(hill()));
    let points = whole[0].1.floats[0].len();
    let part = (points / 4, points - 1);
    let replies = ask(&mut desk, Request::Plan(Task { part: Some(part), ..task() }), None);
    let [(Reply::Surveyed(road), arrays), (Reply::Planned(_), _)] = &replies[..] else {
        panic!("{replies:?}")
    };
    assert_eq!(road.part, Some(part));
    assert_eq!(arrays.floats[0], whole[0].1.floats[0][part.0..=part.1]);
    let short = Task { part: Some((0, 10)), ..task() };
    let replies = ask(&mut desk, Request::Plan(short), None);
    let [(Reply::Surveyed(road), arrays), ..] = &replies[..] else { panic!("{replies:?}") };
    assert_eq!((road.part, arrays.floats[0].len()), (None, points));
}

#[test]
fn files_are_joined_in_the_order_and_direction_given() {
    let mut desk = Desk::new();
    let mut replies = Vec::new();
    // There and back: the second file must be turned round, or it begins where the first began.
    desk.answer(Request::Open(task(), vec![false, true]), vec![hill(), hill()], &mut |reply, _| {
        replies.push(reply);
    });
    let surveyed = replies.iter().find_map(|reply| match reply {
        Reply::Surveyed(road) => Some(road),
        _other => None,
    });
    let road = surveyed.expect("a road of both");
    let once = ask(&mut Desk::new(), Request::Open(task(), vec![false]), Some(hill()));
    let [(Reply::Surveyed(single), _), ..] = &once[..] else { panic!("{once:?}") };
    assert!((road.length_m - 2.0 * single.length_m).abs() < 30.0, "{}", road.length_m);

    let mut replies = Vec::new();
    desk.answer(Request::Open(task(), vec![false, false]), vec![hill(), hill()], &mut |reply, _| {
        replies.push(reply);
    });
    let apart = |reply: &Reply| matches!(reply, Reply::Failed(FileError::LegsApart { leg: 2, .. }));
    assert!(replies.iter().any(apart), "{replies:?}");
}
