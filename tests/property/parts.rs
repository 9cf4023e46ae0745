//! A part of a road, and a road of several files.

use solver::road::{Document, FileError, Leg, Road, join, read, survey};
use tests::generate::{Drive, Instrument, TrueRoad, gpx_text};

fn read_all(text: &str) -> Document {
    read(text.as_bytes(), &mut |_| true).expect("a generated file")
}

fn road_of(document: &Document) -> Road {
    survey(document, 0, &mut |_| true).expect("a generated road")
}

fn road() -> Road {
    let truth = TrueRoad::random(11, 15_000.0);
    tests::truth::survey_drive(&truth, &Drive::new(Instrument::Recorder, 15.0, 4))
}

fn assert_same(one: &Road, other: &Road) {
    assert_eq!(one.heights_m(), other.heights_m());
    assert_eq!(one.grades(), other.grades());
    assert_eq!(one.segments(), other.segments());
    assert_eq!(one.unassessed(), other.unassessed());
    assert_eq!(one.positions(), other.positions());
    assert_eq!(one.findings(), other.findings());
}

#[test]
fn a_part_says_what_the_whole_says() {
    let whole = road();
    let (from, to) = (300, 1_100);
    let part = whole.part(from, to).expect("8 km of it");
    assert_eq!(part.cells(), to - from);
    assert_eq!(part.heights_m(), &whole.heights_m()[from..=to]);
    for segment in part.segments() {
        let middle = from + (segment.from + segment.to) / 2;
        let same = whole.segments().iter().find(|s| s.from <= middle && middle < s.to);
        assert_eq!(same.map(|s| (s.grade, s.plus_minus)), Some((segment.grade, segment.plus_minus)));
    }
    let all = whole.part(0, usize::MAX).expect("all of it");
    assert_same(&all, &whole);
}

#[test]
fn parts_and_directions_go_together() {
    let whole = road();
    let last = whole.cells();
    let part = whole.part(200, 900).expect("7 km").reversed();
    let other = whole.reversed().part(last - 900, last - 200).expect("the same 7 km");
    assert_same(&part, &other);
    let inner = whole.part(200, 900).and_then(|part| part.part(100, 400)).expect("3 km");
    assert_same(&inner, &whole.part(300, 600).expect("the same 3 km"));
}

#[test]
fn what_cannot_stand_alone_is_not_cut() {
    let whole = road();
    assert!(whole.part(100, 120).is_none(), "200 m");
    assert!(whole.part(900, 200).is_none(), "backwards");
    assert!(whole.part(whole.cells() + 5, whole.cells() + 900).is_none(), "beyond the end");
}

/// A recording that was stopped and started again makes the road of an unbroken recording.
#[test]
fn two_halves_make_the_whole() {
    let truth = TrueRoad::random(12, 12_000.0);
    let samples = Drive::new(Instrument::Recorder, 15.0, 5).record(&truth);
    let (first, second) = samples.split_at(samples.len() / 3);
    let file = |samples: &[_]| read_all(&gpx_text("Half", samples, &[], 7));
    let (first, second) = (file(first), file(second));
    let legs = [
        Leg { document: &first, course: 0, reversed: false },
        Leg { document: &second, course: 0, reversed: false },
    ];
    let joined = road_of(&join(&legs).expect("they meet"));
    let whole = road_of(&read_all(&gpx_text("Half", &samples, &[], 7)));
    assert_eq!(joined.heights_m(), whole.heights_m());
    assert_eq!(joined.positions(), whole.positions());

    let back = [
        Leg { document: &second, course: 0, reversed: true },
        Leg { document: &first, course: 0, reversed: true },
    ];
    let back = road_of(&join(&back).expect("they meet"));
    let home = whole.reversed();
    assert!(back.cells().abs_diff(home.cells()) <= 1);
    let off = back.heights_m().iter().zip(home.heights_m()).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
    assert!(off < 0.5, "heights of the way back are off by {off:.2} m");

    let wrong = [
        Leg { document: &first, course: 0, reversed: false },
        Leg { document: &second, course: 0, reversed: true },
    ];
    let error = join(&wrong).expect_err("they do not meet");
    assert!(matches!(error, FileError::LegsApart { leg: 2, gap_m } if gap_m > 2_000.0), "{error}");
    assert!(matches!(join(&[]), Err(FileError::Empty)));
}
