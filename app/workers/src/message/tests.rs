//! Messages arrive as they were sent.

use super::*;
use solver::truck::Preset;

fn task() -> Task {
    Task {
        road: RoadChoice { course: Some(2), part: Some((30, 700)), reversed: true, roadside: None },
        truck: Preset::BDouble.spec(),
        day: Day::USUAL,
    }
}

fn both() -> Given {
    let limits = vec![PostedLimit { from: 3, to: 9, kmh: 40.0 }];
    let last = Some(Roadside { places: vec![], limits });
    let also = vec![Also { from: 1, course: Some(2) }];
    Given { also, carried: Some(Carried { before: None, last }), ..Given::joined(vec![false; 2]) }
}

#[test]
fn requests_arrive_as_sent() {
    for (number, request) in [
        Request::Open(task(), Given::joined(vec![true, false])),
        Request::Look(Some(1), both()),
        Request::Open(task(), both()),
        Request::Plan(task()),
        Request::HandOver,
    ]
    .into_iter()
    .enumerate()
    {
        let number = u32::try_from(number).expect("five") + 7;
        let header = encode(number, &request);
        assert_eq!(decode::<Request>(&header), Some((number, request)));
    }
}

#[test]
fn replies_arrive_as_sent() {
    let replies = [
        Reply::Ready,
        Reply::Progress(Phase::Surveying, 0.25),
        Reply::Failed(FileError::TooShort { found_m: 120.5, needed_m: 500.0 }),
        Reply::TruckRefused(TruckError::Gears),
        Reply::NoRoad,
        Reply::HandedOver,
        Reply::Alike(vec![None, Some(0)]),
        Reply::Panicked("detail".to_owned()),
    ];
    for reply in replies {
        let header = encode(3, &reply);
        assert_eq!(decode::<Reply>(&header), Some((3, reply)));
    }
}

#[test]
fn what_is_no_message_is_refused_without_a_panic() {
    let header = encode(9, &Request::Open(task(), Given::joined(vec![true, false])));
    assert_eq!(decode::<Request>(&[]), None);
    for cut in 0..header.len() {
        // A cut header may never be read as the whole one.
        assert_ne!(
            decode::<Request>(&header[..cut]),
            Some((9, Request::Open(task(), Given::joined(vec![true, false])))),
            "{cut}"
        );
    }
}
