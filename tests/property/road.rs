//! What must hold for any file and any road.

use proptest::prelude::*;
use solver::road::{Document, FileError, Refusal, Road, bounds, read, survey, track};
use std::time::{Duration, Instant};
use tests::generate::{Drive, Instrument, TrueRoad, gpx_text};
use tests::truth::survey_drive;

fn read_all(bytes: &[u8]) -> Result<Document, FileError> {
    read(bytes, &mut |_| true)
}

/// Reads and surveys all courses; it is enough that this returns.
fn survive(bytes: &[u8]) {
    if let Ok(document) = read_all(bytes) {
        for course in 0..document.courses().len() {
            if let Ok(road) = survey(&document, course, &mut |_| true) {
                assert_sound(&road);
            }
        }
        assert!(survey(&document, document.courses().len(), &mut |_| true).is_err());
    }
}

/// Checks what every road promises.
fn assert_sound(road: &Road) {
    assert_eq!(road.heights_m().len(), road.cells() + 1);
    assert!(road.heights_m().iter().all(|h| h.is_finite()), "a height is not finite");
    assert!(road.grades().iter().all(|g| g.is_finite()));
    let mut covered = vec![false; road.cells()];
    for segment in road.segments() {
        assert!(segment.from < segment.to && segment.grade.is_finite() && segment.plus_minus > 0.0);
        for cell in &mut covered[segment.from..segment.to] {
            assert!(!*cell, "segments overlap");
            *cell = true;
        }
    }
    assert_eq!(covered, road.assessed(), "segments tile the assessed cells");
    for span in road.unassessed() {
        assert!(road.assessed()[span.from..span.to].iter().all(|assessed| !assessed));
    }
    for finding in road.findings() {
        assert!(finding.count > 0 && !finding.to_string().is_empty());
    }
    assert_drop_kept(road);
}

/// Over each assessed span, the segments' drops add up to the drop of the heights.
fn assert_drop_kept(road: &Road) {
    let (mut sum, mut start) = (0.0, 0);
    for (k, segment) in road.segments().iter().enumerate() {
        sum += segment.grade * (segment.to - segment.from) as f64 * road.step_m();
        let ends = road.segments().get(k + 1).is_none_or(|next| next.from != segment.to);
        if ends {
            let rise = road.heights_m()[segment.to] - road.heights_m()[start];
            assert!((sum - rise).abs() < 1e-6, "segments drop {sum}, heights {rise}");
            sum = 0.0;
            start = road.segments().get(k + 1).map_or(0, |next| next.from);
        }
    }
}

fn sample_file() -> Vec<u8> {
    let road = TrueRoad::random(5, 2_000.0);
    gpx_text("sample", &Drive::new(Instrument::Recorder, 40.0, 1).record(&road), &[], 6).into_bytes()
}

fn bits(values: &[f64]) -> Vec<u64> {
    values.iter().map(|value| value.to_bits()).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn any_bytes_are_survived(bytes in proptest::collection::vec(any::<u8>(), 0..2_000)) {
        survive(&bytes);
    }

    /// Pieces of markup in any order reach the reader's corners better than random bytes do.
    #[test]
    fn any_markup_is_survived(pieces in proptest::collection::vec(0..PIECES.len(), 0..120)) {
        let text: String = pieces.iter().map(|piece| PIECES[*piece]).collect();
        survive(text.as_bytes());
    }

    #[test]
    fn a_damaged_file_is_survived(at in 0.0..1.0f64, length in 0..200usize, with in proptest::collection::vec(any::<u8>(), 0..40)) {
        let mut bytes = sample_file();
        let from = (at * bytes.len() as f64) as usize;
        let to = (from + length).min(bytes.len());
        bytes.splice(from..to, with);
        survive(&bytes);
    }

    #[test]
    fn a_file_cut_off_anywhere_keeps_what_came_before(at in 0.2..1.0f64) {
        let bytes = sample_file();
        let cut = &bytes[..(at * bytes.len() as f64) as usize];
        let whole = String::from_utf8_lossy(cut).matches("</trkpt>").count();
        let document = read_all(cut).expect("the beginning is there");
        prop_assert_eq!(document.courses()[0].points, whole);
    }

    #[test]
    fn reversing_twice_is_the_same_road(seed in 0..1_000u64, spacing in 8.0..60.0f64, kind in 0..3usize) {
        let instrument = [Instrument::Recorder, Instrument::Receiver, Instrument::Terrain][kind];
        let road = survey_drive(&TrueRoad::random(seed, 5_000.0), &Drive::new(instrument, spacing, seed));
        assert_sound(&road);
        let back = road.reversed();
        assert_sound(&back);
        let again = back.reversed();
        prop_assert_eq!(bits(again.heights_m()), bits(road.heights_m()));
        prop_assert_eq!(bits(again.recorded_m()), bits(road.recorded_m()));
        prop_assert_eq!(bits(again.grades()), bits(road.grades()));
        prop_assert_eq!(again.segments(), road.segments());
        prop_assert_eq!(again.findings(), road.findings());
        prop_assert_eq!(again.unassessed(), road.unassessed());
        prop_assert_eq!(again.places(), road.places());
        prop_assert_eq!(again.positions(), road.positions());
        prop_assert_eq!(again.shape(), road.shape());
        let there: Vec<f64> = road.grades().to_vec();
        let here: Vec<f64> = back.grades().iter().rev().map(|g| -g).collect();
        prop_assert_eq!(bits(&there), bits(&here));
    }

    /// One drive recorded with twice or three times as many points: grades between two places barely change.
    /// (They must change a little: a chord cuts a hairpin short.) Where the recordings fall into different
    /// classes, they are filtered differently. Then grades over the quotable length must agree within their
    /// half-widths.
    #[test]
    fn denser_points_barely_move_the_grades(seed in 0..1_000u64, times in 2..4usize) {
        let truth = TrueRoad::random(seed, 6_000.0);
        let sparse = survey_drive(&truth, &Drive::new(Instrument::Exact, 24.0, 1));
        let dense = survey_drive(&truth, &Drive::new(Instrument::Exact, 24.0 / times as f64, 1));
        let (one, other) = (sparse.quality().class, dense.quality().class);
        let length_m = one.base_length_m().max(other.base_length_m());
        // For fair heights nothing is said over less than their base length.
        let (length_m, bound) = if one == other {
            (length_m, 0.006)
        } else {
            (length_m, one.plus_minus(length_m).max(other.plus_minus(length_m)))
        };
        let width = (length_m / sparse.step_m()).round() as usize;
        for from in (0..sparse.cells() - width).step_by(5) {
            let (a, b) = (nearest(&dense, &sparse, from), nearest(&dense, &sparse, from + width));
            let (here, there) = (sparse.mean_grade(from, from + width), dense.mean_grade(a, b));
            prop_assert!((here - there).abs() < bound, "cell {from}: {here} {there} over {length_m} m");
        }
    }
}

/// Grid point of `road` nearest to another road's grid point, sought near an equal share of the length.
fn nearest(road: &Road, other: &Road, index: usize) -> usize {
    let about = index * road.cells() / other.cells();
    let (lat, lon) = other.positions()[index];
    let off = |i: usize| {
        let (a, b) = road.positions()[i];
        track::step_m(lat, lon, a, b)
    };
    (about.saturating_sub(15)..=(about + 15).min(road.cells()))
        .min_by(|a, b| off(*a).total_cmp(&off(*b)))
        .unwrap_or(about)
}

const PIECES: [&str; 26] = [
    "<gpx>",
    "</gpx>",
    "<trk>",
    "</trk>",
    "<trkseg>",
    "</trkseg>",
    "<trkpt lat=\"1\" lon=\"2\">",
    "</trkpt>",
    "<trkpt lat=\"1.001\" lon=\"2.001\"><ele>5</ele></trkpt>",
    "<ele>",
    "</ele>",
    "12.5",
    "&amp;",
    "&",
    "&#x41;",
    "&bad;",
    "<![CDATA[1]]>",
    "<!-- c -->",
    "<?pi?>",
    "<rte>",
    "</rte>",
    "<rtept lat='1' lon='2'/>",
    "<a:rpt lat=\"1\" lon=\"2\"/>",
    "<name>",
    "</name>",
    "<wpt lat=\"1\" lon=\"2\"><name>x</name></wpt>",
];

/// A longer time is not "at once", even for an unoptimised build on a busy machine.
const AT_ONCE: Duration = Duration::from_secs(5);

fn refused_at_once(text: &str, what: Refusal) {
    let start = Instant::now();
    match read_all(text.as_bytes()) {
        Err(FileError::Refused { what: found, .. }) => assert_eq!(found, what),
        Err(other) => panic!("not refused: {other}"),
        Ok(_) => panic!("accepted"),
    }
    assert!(start.elapsed() < AT_ONCE, "took {:?}", start.elapsed());
}

#[test]
fn deep_nesting_is_refused_at_once() {
    refused_at_once(&format!("<gpx>{}", "<a>".repeat(100_000)), Refusal::Nesting);
    refused_at_once(&format!("<gpx>{}", "<trk><trkseg>".repeat(100_000)), Refusal::Nesting);
}

#[test]
fn an_enormous_attribute_is_refused_at_once() {
    let long = "x".repeat(50_000_000);
    refused_at_once(&format!("<gpx><trk a=\"{long}\"/></gpx>"), Refusal::LongTag);
}

#[test]
fn an_attribute_that_never_ends_is_survived_at_once() {
    let start = Instant::now();
    let outcome = read_all(format!("<gpx><trk a=\"{}", "<b>".repeat(5_000_000)).as_bytes());
    assert_eq!(outcome.err(), Some(FileError::NothingInside));
    assert!(start.elapsed() < AT_ONCE, "took {:?}", start.elapsed());
}

#[test]
fn a_declared_entity_is_refused_wherever_it_stands() {
    refused_at_once("<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY a \"b\">]><gpx/>", Refusal::Entities);
    refused_at_once("<gpx><!DOCTYPE gpx [<!ENTITY a \"b\">]></gpx>", Refusal::Entities);
}

#[test]
fn too_many_courses_are_refused_with_the_bound() {
    let many = |piece: &str, count: usize| format!("<gpx>{}", piece.repeat(count));
    let apart: String = (0..=bounds::MOST_COURSES)
        .map(|k| format!("<trkseg><trkpt lat='{}' lon='2'/></trkseg>", k as f64 * 0.05))
        .collect();
    for text in [
        many("<trk/>", bounds::MOST_COURSES + 1),
        many("<rte/>", bounds::MOST_COURSES + 1),
        many("<trkpt lat='1' lon='2'/><rtept lat='1' lon='2'/>", bounds::MOST_COURSES),
        format!("<gpx><trk>{apart}"),
    ] {
        let refused = read_all(text.as_bytes()).err();
        assert!(matches!(refused, Some(FileError::TooLarge(solver::road::Bound::Courses))), "{refused:?}");
    }
    let most = many("<trk><trkseg><trkpt lat='1' lon='2'/></trkseg></trk>", bounds::MOST_COURSES);
    assert_eq!(read_all(most.as_bytes()).map(|it| it.courses().len()).ok(), Some(bounds::MOST_COURSES));
}

#[test]
fn too_many_points_are_refused_with_the_bound() {
    let mut text = String::from("<gpx><trk><trkseg>");
    text.push_str(&"<trkpt lat='1' lon='2'/>".repeat(bounds::MOST_POINTS + 1));
    let refused = read_all(text.as_bytes()).err();
    assert!(matches!(refused, Some(FileError::TooLarge(solver::road::Bound::Points))), "{refused:?}");
}

#[test]
fn stopping_stops() {
    let bytes = sample_file();
    assert_eq!(read(&bytes, &mut |_| false).err(), Some(FileError::Cancelled));
    let document = read_all(&bytes).expect("usable");
    assert_eq!(survey(&document, 0, &mut |share| share < 0.3).err(), Some(FileError::Cancelled));
}

#[test]
fn progress_goes_from_0_to_1() {
    let mut shares = Vec::new();
    let bytes = sample_file();
    let document = read(&bytes, &mut |share| {
        shares.push(share);
        true
    });
    assert!(document.is_ok());
    assert!(shares.windows(2).all(|pair| pair[0] <= pair[1]), "{shares:?}");
    assert!(shares[0] < 0.01 && shares[shares.len() - 1] > 0.99);
}
