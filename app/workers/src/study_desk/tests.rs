//! The study worker's part without a browser: a road in, a study and a file out.

use super::*;
use crate::desk::Desk;
use crate::message::study::{RIDE_BYTES, RIDE_FLOATS, ride_lanes};
use crate::message::{Given, Reply, Request, Task};
use ::tests::plain_roads::hill;
use solver::plan::{Descent, Leg};
use solver::report::gpx::{Captions, Wording};
use solver::study::RUNS;
use solver::truck::{Gear, Preset, Stage};
use solver::units::{Grade, Metres, RevPerMin};

fn plan_of_the_hill() -> Plan {
    let truck = Preset::FiveAxle36.spec();
    let task = Task::whole(truck, Day::USUAL);
    let mut plan = None;
    Desk::new().answer(Request::Open(task, Given::joined(vec![false])), vec![hill()], &mut |reply, _| {
        if let Reply::Planned(it) = reply {
            plan = Some(it);
        }
    });
    plan.expect("a hill gives a plan")
}

fn handed_over() -> Vec<u8> {
    let mut desk = Desk::new();
    let truck = Preset::FiveAxle36.spec();
    let task = Task::whole(truck, Day::USUAL);
    desk.answer(Request::Open(task, Given::joined(vec![false])), vec![hill()], &mut |_, _| ());
    let mut bytes = Vec::new();
    desk.answer(Request::HandOver, Vec::new(), &mut |reply, mut arrays| {
        assert_eq!(reply, Reply::HandedOver);
        bytes = arrays.bytes.remove(0);
    });
    bytes
}

fn ask(desk: &mut StudyDesk, request: StudyRequest, road: Option<Vec<u8>>) -> Vec<(StudyReply, Arrays)> {
    let mut replies = Vec::new();
    desk.answer(request, road, &mut |reply, arrays| {
        if !matches!(reply, StudyReply::Progress(..)) {
            replies.push((reply, arrays));
        }
    });
    replies
}

fn study_it() -> StudyRequest {
    StudyRequest::Study(Preset::FiveAxle36.spec(), Day::USUAL)
}

fn ride_it(slip: Slip) -> StudyRequest {
    StudyRequest::Ride(Preset::FiveAxle36.spec(), Day::USUAL, slip)
}

/// What an entry is worth comes back under its name, as the solver has it; nothing for what is none of the
/// truck's, or without a road.
#[test]
fn what_an_entry_is_worth_comes_back() {
    let (mut desk, spec) = (StudyDesk::new(), Preset::FiveAxle36.spec());
    let about = |entry| StudyRequest::Worth(Preset::FiveAxle36.spec(), Day::USUAL, entry);
    let told = |desk: &mut StudyDesk, entry, bytes| match ask(desk, about(entry), bytes).as_slice() {
        [(StudyReply::Worth(of, told), _)] => {
            assert_eq!(*of, entry);
            *told
        }
        other => panic!("{other:?}"),
    };
    assert_eq!(told(&mut desk, Entry::GrossMass, None), None, "no road yet");
    let bytes = handed_over();
    let road: Road = postcard::from_bytes(&bytes).expect("a road");
    let truck = Truck::new(spec).expect("a preset");
    let wanted = worth(&road, &truck, &Day::USUAL, &plan_of_the_hill(), Entry::GrossMass);
    assert!(wanted.is_some());
    assert_eq!(told(&mut desk, Entry::GrossMass, Some(bytes)), wanted);
    assert_eq!(told(&mut desk, Entry::SustainedPower, None), None, "it has no such retarder");
}

/// Each slip comes back under its name with the lanes that the solver has, in an order in which
/// they are taken out again; and with the plan of that day, whatever was asked for before.
#[test]
fn rides_come_back_as_they_were_driven() {
    let (mut desk, truck) = (StudyDesk::new(), Truck::new(Preset::FiveAxle36.spec()).expect("a preset"));
    let mut bytes = Some(handed_over());
    let road: Road = postcard::from_bytes(bytes.as_ref().expect("bytes")).expect("a road");
    let slower = Day { speed_limit_kmh: 20.0, ..Day::USUAL };
    for (day, slip) in
        [Day::USUAL, slower, Day::USUAL].into_iter().flat_map(|day| Slip::ALL.map(|it| (day, it)))
    {
        let request = StudyRequest::Ride(Preset::FiveAxle36.spec(), day, slip);
        let replies = ask(&mut desk, request, bytes.take());
        let [(StudyReply::Ridden(told, Some(end)), arrays)] = &replies[..] else { panic!("{replies:?}") };
        assert_eq!((arrays.floats.len(), arrays.bytes.len()), (RIDE_FLOATS, RIDE_BYTES));
        let byte = |at: usize| arrays.bytes[at - RIDE_FLOATS].clone();
        let lanes = ride_lanes(|at| arrays.floats[at].clone(), byte);
        let (plan, _) = solver::analyse(&road, &truck, &day, &mut |_| true).expect("not stopped");
        let driven = ride(&road, &truck, &day, &plan, slip).expect("this hill can be driven");
        assert_eq!((*told, *end, lanes), (slip, driven.0, driven.1));
    }
}

#[test]
fn a_slip_that_cannot_be_driven_is_told_so() {
    let mut spec = Preset::FiveAxle36.spec();
    spec.retarder = solver::truck::Retarder::None;
    let request = StudyRequest::Ride(spec, Day::USUAL, Slip::StageLost);
    let replies = ask(&mut StudyDesk::new(), request, Some(handed_over()));
    let [(StudyReply::Ridden(Slip::StageLost, None), arrays)] = &replies[..] else { panic!("{replies:?}") };
    assert_eq!(*arrays, Arrays::default());
}

/// Words by which the file can be told from an empty one.
struct Numbers;

impl Wording for Numbers {
    fn caution(&self) -> String {
        String::from("caution")
    }
    fn crest(&self, descent: &Descent) -> String {
        format!("crest {}", descent.number)
    }
    fn change(&self, gear: Gear, _: Stage) -> String {
        format!("gear {gear:?}")
    }
    fn leg(&self, leg: &Leg, _: Stage) -> String {
        format!("leg in {:?}", leg.gear)
    }
    fn foot(&self, descent: &Descent, _: Option<u8>) -> String {
        format!("foot {}", descent.number)
    }
}

fn export_it(captions: Captions) -> StudyRequest {
    StudyRequest::Export(Preset::FiveAxle36.spec(), Day::USUAL, captions)
}

#[test]
fn a_road_is_studied_and_its_plan_written() {
    let mut desk = StudyDesk::new();
    let replies = ask(&mut desk, study_it(), Some(handed_over()));
    let [(StudyReply::Studied(study), _), (StudyReply::Sure(Some(sure)), bands)] = &replies[..] else {
        panic!("{replies:?}");
    };
    assert_eq!((study.lost.len(), study.adjustment.len(), sure.descents.len()), (1, 3, 1));
    assert_eq!(sure.runs, RUNS);
    let points = bands.floats[0].len();
    assert!(bands.floats.len() == 4 && bands.floats.iter().all(|it| it.len() == points));
    for (low, high) in [(0, 1), (2, 3)] {
        assert!(bands.floats[low].iter().zip(&bands.floats[high]).all(|(low, high)| low <= high));
    }
    let captions = Captions::of(&plan_of_the_hill(), &[], &Numbers);
    let replies = ask(&mut desk, export_it(captions), None);
    let [(StudyReply::Exported(text), _)] = &replies[..] else { panic!("{replies:?}") };
    assert!(text.contains("<name>crest 1<") && text.contains("</gpx>"), "{text}");
}

#[test]
fn without_a_road_nothing_is_studied_or_written() {
    let mut desk = StudyDesk::new();
    for (request, road) in [
        (study_it(), None),
        (export_it(Captions::default()), None),
        (study_it(), Some(vec![1, 2, 3])),
        (study_it(), Some(Vec::new())),
        (ride_it(Slip::Planned), None),
    ] {
        let replies = ask(&mut desk, request, road);
        assert!(matches!(&replies[..], [(StudyReply::Nothing, _)]), "{replies:?}");
    }
}

#[test]
fn what_was_seen_is_measured_without_a_road() {
    let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a preset");
    let gear = truck.gears().nth(4).expect("ten gears");
    let engine_speed = RevPerMin(1_900.0);
    let speed = truck.road_speed(gear, engine_speed);
    let seen = Seen { gear: 5, stage: 3, engine_speed, speed, grade: Grade(-0.09), height: Metres(0.0) };
    let request = StudyRequest::Measure(Preset::FiveAxle36.spec(), Day::USUAL, seen);
    let replies = ask(&mut StudyDesk::new(), request, None);
    assert!(matches!(&replies[..], [(StudyReply::Measured(Ok(_)), _)]), "{replies:?}");
}
