//! What leaves the program is read back by others and by ourselves.

use solver::plan::{Descent, Leg};
use solver::report::gpx::{Captions, Wording};
use solver::road::{Place, PlaceKind, Road, Roadside, read, survey};
use solver::truck::{Gear, Preset, Stage};
use solver::{Day, analyse, report};
use tests::generate::demo;
use tests::trucks::preset;

struct Plain;

impl Wording for Plain {
    fn caution(&self) -> String {
        "Signs come first.".to_owned()
    }
    fn crest(&self, descent: &Descent) -> String {
        format!("Crest {}", descent.number)
    }
    fn change(&self, gear: Gear, stage: Stage) -> String {
        format!("Gear {}, stage {}", gear.number(), stage.number())
    }
    fn leg(&self, leg: &Leg, stage: Stage) -> String {
        format!("leg {} {}", leg.gear.number(), stage.number())
    }
    fn foot(&self, descent: &Descent, _: Option<u8>) -> String {
        format!("Foot {}", descent.number)
    }
}

fn survey_text(text: &str) -> Road {
    let document = read(text.as_bytes(), &mut |_| true).unwrap_or_else(|e| panic!("not read: {e}"));
    survey(&document, document.suggested(), &mut |_| true).unwrap_or_else(|e| panic!("not surveyed: {e}"))
}

/// The annotated road is valid to the crate gpx and carries crests, feet and changes of stage. Our own reader
/// finds the road again in it.
#[test]
fn the_annotated_road_is_read_back() {
    let text = demo().text();
    let road = survey_text(&text);
    let truck = preset(Preset::FiveAxle36);
    let (plan, lanes) = analyse(&road, &truck, &Day::USUAL, &mut |_| true).expect("not cancelled");
    assert!(!plan.descents.is_empty());
    let captions = Captions::of(&plan, &lanes.gear, &Plain);
    let written = report::gpx::annotated(&road, &plan, &captions).expect("it has positions");

    let file = gpx::read(written.as_bytes()).expect("the crate gpx reads it");
    assert_eq!(file.version, gpx::GpxVersion::Gpx11);
    let named = |start: &str| {
        file.waypoints
            .iter()
            .filter(|w| w.name.as_deref().is_some_and(|name| name.starts_with(start)))
            .count()
    };
    let changes: usize = plan.descents.iter().map(|d| d.stages.len().saturating_sub(1)).sum();
    assert_eq!(named("Crest"), plan.descents.len());
    assert_eq!(named("Foot"), plan.descents.len());
    assert_eq!(named("Gear"), changes);

    let again = survey_text(&written);
    // The points written are those of the 10 m grid, which cuts bends by this little.
    assert!(
        (again.length_m() / road.length_m() - 1.0).abs() < 2e-3,
        "{} {}",
        again.length_m(),
        road.length_m()
    );
    let fall = |road: &Road| road.heights_m()[0] - road.heights_m()[road.cells()];
    assert!((fall(&again) - fall(&road)).abs() < 1.0);

    // Places come back as they were. The advice, which is for one truck on one day, does not.
    let places =
        |road: &Road| road.places().iter().map(|place| (place.kind, place.name.clone())).collect::<Vec<_>>();
    assert!(places(&road).len() >= 3, "the demo has places");
    assert_eq!(places(&again), places(&road));
}

/// XML 1.0 has no control characters. A name with one, from a file's `&#1;` or typed, is written without it.
#[test]
fn names_go_out_as_xml_can_hold_them() {
    let place =
        Place { name: "In\u{1}n\u{b}\u{fffe} <&>".to_owned(), kind: PlaceKind::Stop, index: 40, off_m: 0.0 };
    let text = demo().text();
    let road = survey_text(&text).with_roadside(&Roadside { places: vec![place], limits: Vec::new() });
    let (plan, lanes) =
        analyse(&road, &preset(Preset::FiveAxle36), &Day::USUAL, &mut |_| true).expect("not cancelled");
    let captions = Captions::of(&plan, &lanes.gear, &Plain);
    let written = report::gpx::annotated(&road, &plan, &captions).expect("it has positions");
    assert!(written.chars().all(|c| c == '\n' || c == '\t' || (c >= ' ' && c != '\u{fffe}')));
    let names: Vec<String> = survey_text(&written).places().iter().map(|it| it.name.clone()).collect();
    assert_eq!(names, ["Inn <&>"]);
}

/// A road with heights along a distance, but no positions.
#[test]
fn a_road_without_positions_is_not_written() {
    let heights: Vec<f64> = (0..400).map(|k| 500.0 - 0.6 * f64::from(k)).collect();
    let road = Road::from_heights("Bench", 10.0, heights).expect("a road");
    let (plan, _) =
        analyse(&road, &preset(Preset::FiveAxle36), &Day::USUAL, &mut |_| true).expect("not cancelled");
    assert_eq!(report::gpx::annotated(&road, &plan, &Captions::default()), None);
}
