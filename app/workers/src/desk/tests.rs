//! The worker's part without a browser: a file in, road and plan out.

use super::*;
use crate::message::{Also, Carried, LANE_BYTES, LANE_FLOATS};
use ::tests::plain_roads::{hill, road};
use solver::day::Day;
use solver::road::Roadside;
use solver::truck::Preset;

fn task() -> Task {
    Task::whole(Preset::FiveAxle36.spec(), Day::USUAL)
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
    let replies = ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(hill()));
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
    ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(hill()));
    let lighter = Task { truck: Preset::Coach.spec(), ..task() };
    let replies = ask(&mut desk, Request::Plan(lighter), None);
    assert!(matches!(&replies[..], [(Reply::Planned(_), _)]), "{replies:?}");
}

#[test]
fn the_other_direction_is_another_road() {
    let mut desk = Desk::new();
    let there = ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(hill()));
    let back = ask(
        &mut desk,
        Request::Plan(Task { road: RoadChoice { reversed: true, ..RoadChoice::default() }, ..task() }),
        None,
    );
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
    ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(hill()));
    let replies = ask(
        &mut desk,
        Request::Open(task(), Given::joined(vec![false])),
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
    let replies = ask(&mut desk, Request::Open(bad, Given::joined(vec![false])), Some(hill()));
    assert!(matches!(&replies[..], [(Reply::TruckRefused(_), _)]), "{replies:?}");
}

#[test]
fn the_road_handed_over_is_the_one_shown() {
    let mut desk = Desk::new();
    ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(hill()));
    let back = ask(
        &mut desk,
        Request::Plan(Task { road: RoadChoice { reversed: true, ..RoadChoice::default() }, ..task() }),
        None,
    );
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
    let replies = ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(two_tracks()));
    let [(Reply::Choose(courses), _)] = &replies[..] else { panic!("asked: {replies:?}") };
    assert_eq!(courses.len(), 2);
    assert!(courses.iter().all(|course| course.usable));
    let replies = ask(
        &mut desk,
        Request::Plan(Task { road: RoadChoice { course: Some(1), ..RoadChoice::default() }, ..task() }),
        None,
    );
    let [(Reply::Surveyed(road), _), (Reply::Planned(_), _)] = &replies[..] else { panic!("{replies:?}") };
    assert_eq!((road.name.as_str(), road.course), ("Other hill", 1));
}

#[test]
fn a_part_is_planned_alone_and_one_too_short_is_not_cut() {
    let mut desk = Desk::new();
    let whole = ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(hill()));
    let points = whole[0].1.floats[0].len();
    let part = (points / 4, points - 1);
    let replies = ask(
        &mut desk,
        Request::Plan(Task { road: RoadChoice { part: Some(part), ..RoadChoice::default() }, ..task() }),
        None,
    );
    let [(Reply::Surveyed(road), arrays), (Reply::Planned(_), _)] = &replies[..] else {
        panic!("{replies:?}")
    };
    assert_eq!(road.part, Some(part));
    assert_eq!(arrays.floats[0], whole[0].1.floats[0][part.0..=part.1]);
    let short = Task { road: RoadChoice { part: Some((0, 10)), ..RoadChoice::default() }, ..task() };
    let replies = ask(&mut desk, Request::Plan(short), None);
    let [(Reply::Surveyed(road), arrays), ..] = &replies[..] else { panic!("{replies:?}") };
    assert_eq!((road.part, arrays.floats[0].len()), (None, points));
}

#[test]
fn files_are_joined_in_the_order_and_direction_given() {
    let mut desk = Desk::new();
    let mut replies = Vec::new();
    // There and back: the second file must be turned round, or it begins where the first began.
    desk.answer(
        Request::Open(task(), Given::joined(vec![false, true])),
        vec![hill(), hill()],
        &mut |reply, _| {
            replies.push(reply);
        },
    );
    let surveyed = replies.iter().find_map(|reply| match reply {
        Reply::Surveyed(road) => Some(road),
        _other => None,
    });
    let road = surveyed.expect("a road of both");
    let once = ask(&mut Desk::new(), Request::Open(task(), Given::joined(vec![false])), Some(hill()));
    let [(Reply::Surveyed(single), _), ..] = &once[..] else { panic!("{once:?}") };
    assert!((road.length_m - 2.0 * single.length_m).abs() < 30.0, "{}", road.length_m);

    let mut replies = Vec::new();
    desk.answer(
        Request::Open(task(), Given::joined(vec![false, false])),
        vec![hill(), hill()],
        &mut |reply, _| {
            replies.push(reply);
        },
    );
    let apart = |reply: &Reply| matches!(reply, Reply::Failed(FileError::LegsApart { leg: 2, .. }));
    assert!(replies.iter().any(apart), "{replies:?}");
}

/// The hill again by another device: 30 m higher, 3 m to the side, uneven by up to a metre, and 60 m of the
/// first stretch missing. `homewards`: recorded from its foot.
fn again(homewards: bool) -> Vec<u8> {
    let mut points = Vec::new();
    let mut height = 930.0;
    for point in 3..450_u32 {
        height += if (100..350).contains(&point) { -1.6 } else { 0.0 };
        let uneven = f64::from(point * 37 % 100) / 100.0 - 0.5;
        let (lat, lon) = (-40.0 + f64::from(point) * 20.0 / 111_000.0, -20.000_035);
        points.push(format!(
            "<trkpt lat=\"{lat:.7}\" lon=\"{lon:.7}\"><ele>{:.1}</ele></trkpt>",
            height + uneven
        ));
    }
    if homewards {
        points.reverse();
    }
    format!("<gpx version=\"1.1\"><trk><name>Again</name><trkseg>{}</trkseg></trk></gpx>", points.concat())
        .into_bytes()
}

fn many(desk: &mut Desk, request: Request, files: Vec<Vec<u8>>) -> Vec<(Reply, Arrays)> {
    let mut replies = Vec::new();
    desk.answer(request, files, &mut |reply, arrays| {
        if !matches!(reply, Reply::Progress(..)) {
            replies.push((reply, arrays));
        }
    });
    replies
}

/// So many files, each a recording by itself.
fn same_road(files: usize) -> Given {
    let also = (1..files).map(|from| Also { from, course: None }).collect();
    Given { also, ..Given::joined(vec![false; files]) }
}

fn surveyed(replies: &[(Reply, Arrays)]) -> &RoadFacts {
    let [(Reply::Surveyed(road), _), (Reply::Planned(_), _)] = replies else { panic!("{replies:?}") };
    road
}

fn combined(road: &RoadFacts) -> Option<usize> {
    let of =
        |it: &&solver::road::Finding| matches!(it.kind, solver::road::FindingKind::RecordingsCombined { .. });
    road.findings.iter().find(of).map(|it| it.count)
}

#[test]
fn recordings_of_one_road_are_told_and_become_one_in_either_direction() {
    for homewards in [false, true] {
        let mut desk = Desk::new();
        let files = || vec![hill(), again(homewards)];
        let looked = many(&mut desk, Request::Look(None, same_road(2)), files());
        assert!(matches!(&looked[..], [(Reply::Alike(alike), _)] if *alike == [None, Some(0)]), "{looked:?}");
        assert!(matches!(&ask(&mut desk, Request::Plan(task()), None)[..], [(Reply::NoRoad, _)]));
        let replies = many(&mut desk, Request::Open(task(), same_road(2)), files());
        let road = surveyed(&replies);
        assert_eq!(
            (road.name.as_str(), combined(road), road.courses.len()),
            ("Test hill + Again", Some(2), 1)
        );
        let heights = &replies[0].1.floats[0];
        assert!(heights[0] > heights[heights.len() - 1], "driven as the first one was recorded");
        // Another truck, the other way, a part: planned on what is held.
        let lighter = Task { road: RoadChoice::course(Some(0)), truck: Preset::Coach.spec(), ..task() };
        let replies = ask(&mut desk, Request::Plan(lighter.clone()), None);
        assert!(matches!(&replies[..], [(Reply::Planned(_), _)]), "{replies:?}");
        let back = ask(
            &mut desk,
            Request::Plan(Task {
                road: RoadChoice { reversed: true, ..lighter.road.clone() },
                ..lighter.clone()
            }),
            None,
        );
        assert_eq!((surveyed(&back).reversed, combined(surveyed(&back))), (true, Some(2)));
        let part = ask(
            &mut desk,
            Request::Plan(Task {
                road: RoadChoice { part: Some((100, 500)), ..lighter.road.clone() },
                ..lighter
            }),
            None,
        );
        assert_eq!((surveyed(&part).part, combined(surveyed(&part))), (Some((100, 500)), Some(2)));
        // For a study the road is handed over with its recordings.
        let handed = ask(&mut desk, Request::HandOver, None);
        let [(Reply::HandedOver, arrays)] = &handed[..] else { panic!("{handed:?}") };
        let road: Road = postcard::from_bytes(&arrays.bytes[0]).expect("a road");
        let truck = Truck::new(Preset::Coach.spec()).expect("a preset");
        let (plan, _) = solver::analyse(&road, &truck, &Day::USUAL, &mut |_| true).expect("not stopped");
        assert!(matches!(&part[1].0, Reply::Planned(shown) if *shown == plan));
    }
}

#[test]
fn copies_other_roads_and_rotten_files_are_no_recordings_of_one_road() {
    let other = || road("Other", &[(100, 0.5), (300, -0.8)]);
    let turned =
        || String::from_utf8(other()).expect("text").replace("lon=\"-20\"", "lon=\"-21\"").into_bytes();
    let mut desk = Desk::new();
    ask(&mut desk, Request::Open(task(), Given::joined(vec![false])), Some(hill()));
    for second in [hill(), turned(), b"<html>".to_vec()] {
        let looked = many(&mut desk, Request::Look(None, same_road(2)), vec![hill(), second.clone()]);
        assert!(matches!(&looked[..], [(Reply::Alike(alike), _)] if *alike == [None, None]), "{looked:?}");
        let replies = many(&mut desk, Request::Open(task(), same_road(2)), vec![hill(), second]);
        assert!(matches!(&replies[..], [(Reply::Failed(_), _)]), "{replies:?}");
        // The road before is held still.
        let replies = ask(&mut desk, Request::Plan(task()), None);
        assert!(matches!(&replies[..], [(Reply::Planned(_), _)]), "{replies:?}");
    }
    let replies = many(&mut desk, Request::Open(task(), same_road(2)), vec![hill(), turned()]);
    let not_one = |reply: &Reply| matches!(reply, Reply::Failed(FileError::NotOneRoad { recording: 2 }));
    assert!(not_one(&replies[0].0), "{replies:?}");
    let looked = many(&mut desk, Request::Look(None, same_road(3)), vec![turned(), again(false), hill()]);
    assert!(matches!(&looked[..], [(Reply::Alike(alike), _)] if *alike == [None, None, Some(1)]));
}

/// A road recorded in two files, and once more in one.
#[test]
fn a_recording_of_two_files_is_joined_before_it_is_combined() {
    let text = String::from_utf8(again(false)).expect("text");
    let (points, behind) = text.split_at(text.match_indices("<trkpt").nth(200).expect("points").0);
    let head = &text[..text.find("<trkpt").expect("a point")];
    let (first, second) = (format!("{points}</trkseg></trk></gpx>"), format!("{head}{behind}"));
    let given = Given { also: vec![Also { from: 1, course: Some(0) }], ..Given::joined(vec![false; 3]) };
    let files = vec![hill(), first.into_bytes(), second.into_bytes()];
    let replies = many(&mut Desk::new(), Request::Open(task(), given), files);
    assert_eq!(
        (combined(surveyed(&replies)), surveyed(&replies).name.as_str()),
        (Some(2), "Test hill + Again")
    );
}

#[test]
fn what_was_put_on_the_recordings_comes_along() {
    let limit = |from, to, kmh| solver::road::PostedLimit { from, to, kmh };
    let with = |limit| Some(Roadside { places: vec![], limits: vec![limit] });
    let carried = Carried { before: with(limit(300, 400, 40.0)), last: with(limit(600, 700, 30.0)) };
    let given = Given { carried: Some(carried), ..same_road(2) };
    let replies = many(&mut Desk::new(), Request::Open(task(), given), vec![hill(), again(false)]);
    let limits: Vec<f64> = surveyed(&replies).limits.iter().map(|it| it.kmh).collect();
    assert_eq!(limits, [40.0, 30.0]);
    // Of three, that of the first two is on the road of these.
    let carried = Carried { before: with(limit(300, 400, 40.0)), last: None };
    let given = Given { carried: Some(carried), ..same_road(3) };
    let third = String::from_utf8(again(false)).expect("text").replace("-20.000035", "-19.999965");
    let third = third.replace(".5<", ".1<").replace(".2<", ".8<").into_bytes();
    let replies = many(&mut Desk::new(), Request::Open(task(), given), vec![hill(), again(false), third]);
    assert_eq!((combined(surveyed(&replies)), surveyed(&replies).limits.len()), (Some(3), 1));
}
