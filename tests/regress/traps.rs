//! Every trap of a file, each with a fixture named by what is wrong with it, and what becomes of it.
//!
//! The fixtures are made by hand for this purpose; their places lie in the open ocean.

use solver::road::{
    Class, CourseKind, Document, Encoding, FileError, FindingKind, Foreign, PlaceKind, Refusal, Road,
    Unassessed, read, survey,
};

/// What became of a file.
enum Outcome {
    Unusable(FileError),
    Usable(Box<(Document, Road)>),
}

struct Trap {
    file: &'static str,
    bytes: &'static [u8],
    holds: fn(&Outcome) -> bool,
}

/// A fixture and what must hold of its outcome.
macro_rules! trap {
    ($file:literal, $holds:expr) => {
        Trap { file: $file, bytes: include_bytes!(concat!("../data/", $file, ".gpx")), holds: $holds }
    };
}

fn work_out(bytes: &[u8]) -> Outcome {
    let document = match read(bytes, &mut |_| true) {
        Ok(document) => document,
        Err(error) => return Outcome::Unusable(error),
    };
    match survey(&document, document.suggested(), &mut |_| true) {
        Ok(road) => Outcome::Usable(Box::new((document, road))),
        Err(error) => Outcome::Unusable(error),
    }
}

impl Outcome {
    fn error(&self, is: fn(&FileError) -> bool) -> bool {
        match self {
            Outcome::Unusable(error) => is(error),
            Outcome::Usable(_) => false,
        }
    }

    /// Exactly one finding that `is`, of this count, and the road otherwise as good as any.
    fn only(&self, count: usize, is: fn(&FindingKind) -> bool) -> bool {
        self.found(count, is) && self.road().is_some_and(|road| road.findings().len() == 1)
    }

    fn found(&self, count: usize, is: fn(&FindingKind) -> bool) -> bool {
        let Some(road) = self.road() else {
            return false;
        };
        road.findings().iter().filter(|finding| is(&finding.kind) && finding.count == count).count() == 1
    }

    fn clean(&self) -> bool {
        self.road().is_some_and(|road| road.findings().is_empty())
    }

    fn road(&self) -> Option<&Road> {
        match self {
            Outcome::Unusable(_) => None,
            Outcome::Usable(both) => Some(&both.1),
        }
    }

    fn document(&self) -> Option<&Document> {
        match self {
            Outcome::Unusable(_) => None,
            Outcome::Usable(both) => Some(&both.0),
        }
    }

    fn named(&self, name: &str) -> bool {
        self.road().is_some_and(|road| road.name() == name)
    }

    /// Lengths of the unassessed stretches with this reason, metres.
    fn unassessed_m(&self, why: Unassessed) -> f64 {
        self.road().map_or(0.0, |road| {
            let spans = road.unassessed().iter().filter(|span| span.why == why);
            spans.map(|span| (span.to - span.from) as f64 * road.step_m()).sum()
        })
    }

    fn text(&self) -> String {
        match self {
            Outcome::Unusable(error) => format!("  {error}\n"),
            Outcome::Usable(both) => {
                both.1.findings().iter().map(|finding| format!("  {finding}\n")).collect()
            }
        }
    }
}

const HIGH_ROAD: &str = "Höhenstraße – Süd";

const UNUSABLE: [Trap; 22] = [
    trap!("empty", |o| o.error(|e| *e == FileError::Empty)),
    trap!("blank", |o| o.error(|e| *e == FileError::Empty)),
    trap!("web-page", |o| o.error(|e| *e == FileError::NotGpx(Foreign::Html))),
    trap!("kml", |o| o.error(|e| *e == FileError::NotGpx(Foreign::Kml))),
    trap!("other-xml", |o| o.error(|e| *e == FileError::NotGpx(Foreign::OtherXml("catalogue".into())))),
    trap!("gzip", |o| o.error(|e| *e == FileError::NotGpx(Foreign::Gzip))),
    trap!("zip", |o| o.error(|e| *e == FileError::NotGpx(Foreign::Zip))),
    trap!("fit", |o| o.error(|e| *e == FileError::NotGpx(Foreign::Fit))),
    trap!("json", |o| o.error(|e| *e == FileError::NotGpx(Foreign::Json))),
    trap!("plain-text", |o| o.error(|e| *e == FileError::NotGpx(Foreign::Unknown))),
    trap!("nothing-inside", |o| o.error(|e| *e == FileError::NothingInside)),
    trap!("waypoints-only", |o| o.error(|e| *e == FileError::WaypointsOnly { count: 3 })),
    trap!("no-heights", |o| o
        .error(|e| *e == FileError::NoHeights { points: 48, constant: false, unreadable: 0 })),
    trap!("zero-heights", |o| o
        .error(|e| *e == FileError::NoHeights { points: 48, constant: true, unreadable: 0 })),
    trap!("heights-in-feet", |o| o
        .error(|e| *e == FileError::NoHeights { points: 48, constant: false, unreadable: 48 })),
    trap!("sparse-route", |o| o
        .error(|e| matches!(e, FileError::TooCoarse { found_m, .. } if (990.0..1_010.0).contains(found_m)))),
    trap!("places-swapped", |o| o
        .error(|e| *e == FileError::TooManyBadPoints { bad: 48, points: 48, line: 4, swapped: true })),
    trap!("many-bad-points", |o| o
        .error(|e| *e == FileError::TooManyBadPoints { bad: 8, points: 48, line: 4, swapped: false })),
    trap!("too-short", |o| o.error(|e| matches!(e, FileError::TooShort { .. }))),
    trap!("entity-bomb", |o| o.error(|e| *e == FileError::Refused { what: Refusal::Entities, line: 2 })),
    trap!("external-entity", |o| o.error(|e| *e == FileError::Refused { what: Refusal::Entities, line: 2 })),
    trap!("nothing-trusted", |o| o.error(|e| matches!(e, FileError::NothingLeft { .. }))),
];

const REPAIRED: [Trap; 26] = [
    trap!("good", Outcome::clean),
    trap!("cut-off", |o| o.only(1, |k| matches!(k, FindingKind::CutOff { line: 31 }))),
    trap!("undeclared-prefix", |o| o
        .only(3, |k| matches!(k, FindingKind::UndeclaredPrefix { prefix, line: 4 } if prefix == "dev"))),
    trap!("bare-ampersand", |o| o.only(2, |k| matches!(k, FindingKind::BadReference { line: 3 }))
        && o.named("Heron & Bank &nowhere; hill")),
    trap!("utf8-declared-latin1", |o| o.named(HIGH_ROAD)
        && o.only(1, |k| matches!(k, FindingKind::EncodingRepaired { read_as: Encoding::Utf8, .. }))),
    trap!("latin1", |o| o.clean() && o.named("Höhenstraße Süd")),
    trap!("windows-1252", |o| o.clean() && o.named(HIGH_ROAD)),
    trap!("windows-1252-declared-utf8", |o| o.named(HIGH_ROAD)
        && o.only(1, |k| matches!(k, FindingKind::EncodingRepaired { read_as: Encoding::Windows1252, .. }))),
    trap!("no-declaration", |o| o.clean() && o.named(HIGH_ROAD)),
    trap!("utf8-mark", |o| o.clean() && o.named(HIGH_ROAD)),
    trap!("utf16-low-first", |o| o.clean() && o.named(HIGH_ROAD)),
    trap!("utf16-high-first", |o| o.clean() && o.named(HIGH_ROAD)),
    trap!("utf16-without-mark-declared-utf8", |o| o.named(HIGH_ROAD)
        && o.only(1, |k| matches!(
            k,
            FindingKind::EncodingRepaired { read_as: Encoding::Utf16LowFirst, .. }
        ))),
    trap!("junk-before", |o| o.only(39, |k| *k == FindingKind::JunkBeforeStart)),
    trap!("decimal-comma", |o| o.only(144, |k| matches!(k, FindingKind::DecimalComma { line: 4 }))),
    trap!("padded-numbers", |o| o.only(144, |k| matches!(k, FindingKind::Padding { line: 4 }))),
    trap!("metres-written", |o| o.only(48, |k| matches!(k, FindingKind::MetresWritten { line: 4 }))),
    trap!("one-height-in-feet", |o| o.found(1, |k| matches!(k, FindingKind::ForeignUnit { line: 24 }))),
    trap!("heights-not-numbers", |o| o.found(3, |k| matches!(k, FindingKind::HeightUnreadable { line: 14 }))),
    trap!("thousands-comma", |o| o.found(1, |k| matches!(k, FindingKind::HeightUnreadable { line: 16 }))),
    trap!("few-bad-points", |o| o.only(1, |k| matches!(k, FindingKind::PointsDropped { line: 21 }))),
    trap!("tags-crossed", |o| o.only(2, |k| matches!(k, FindingKind::TagsRepaired { line: 4 }))),
    trap!("point-tag-missing", |o| o.only(1, |k| matches!(k, FindingKind::TagsRepaired { line: 5 }))),
    trap!("document-type", |o| o.only(1, |k| matches!(k, FindingKind::DocumentTypeIgnored { line: 2 }))),
    trap!("gpx-1-0", Outcome::clean),
    trap!("bad-times", Outcome::clean),
];

const JUDGED: [Trap; 19] = [
    trap!("no-version", Outcome::clean),
    trap!("two-tracks", |o| o.clean()
        && o.document().is_some_and(|d| {
            let names: Vec<&str> = d.courses().iter().map(|course| course.name.as_str()).collect();
            names == ["First", "Second"] && d.suggested() == 0
        })),
    trap!("two-segments-near", |o| o.only(
        1,
        |k| matches!(k, FindingKind::SegmentsJoined { widest_m } if (70.0..80.0).contains(widest_m))
    )),
    trap!("two-segments-far", |o| o.clean()
        && o.document().is_some_and(|d| d.courses().len() == 2 && d.suggested() == 1)),
    trap!("heights-missing-short", |o| o.only(
        1,
        |k| matches!(k, FindingKind::HeightsFilled { longest_m } if (145.0..155.0).contains(longest_m))
    )),
    trap!("heights-missing-long", |o| o
        .only(1, |k| *k == FindingKind::NotAssessed { why: Unassessed::NoHeights })
        && (760.0..800.0).contains(&o.unassessed_m(Unassessed::NoHeights))),
    trap!("leading-zeros", |o| o.found(6, |k| *k == FindingKind::ZeroHeights)
        && (140.0..160.0).contains(&o.unassessed_m(Unassessed::NoHeights))),
    trap!("gap", |o| o.only(1, |k| *k == FindingKind::NotAssessed { why: Unassessed::Gap })
        && (520.0..550.0).contains(&o.unassessed_m(Unassessed::Gap))),
    trap!("stop", |o| o.only(11, |k| *k == FindingKind::StopsMerged)),
    trap!("jump", |o| o.only(1, |k| *k == FindingKind::JumpsRejected)),
    trap!("lost-fix-at-zero", |o| o.only(2, |k| *k == FindingKind::JumpsRejected)),
    trap!("height-spike", |o| o.found(
        1,
        |k| matches!(k, FindingKind::SpikesRemoved { largest_m } if (59.0..61.0).contains(largest_m))
    )),
    trap!("tunnel", |o| o
        .found(1, |k| matches!(k, FindingKind::TunnelBridged { rise_m } if (40.0..50.0).contains(rise_m)))
        && o.road().is_some_and(|road| road.quality().class == Class::Fair)),
    trap!("viaduct", |o| o
        .found(1, |k| matches!(k, FindingKind::ViaductBridged { drop_m } if (30.0..40.0).contains(drop_m)))),
    trap!("height-step", |o| o.only(1, |k| *k == FindingKind::NotAssessed { why: Unassessed::Step })),
    trap!("too-steep", |o| o
        .found(1, |k| matches!(k, FindingKind::VerySteep { grade } if (0.185..0.195).contains(grade)))
        && o.road().is_some_and(|road| road.unassessed().is_empty())),
    trap!("metre-steps", |o| o.road().is_some_and(|road| (road.mean_grade(32, 88) + 0.035).abs() < 0.003)),
    trap!("out-and-back", |o| o.clean()
        && o.road().is_some_and(|road| {
            let places = road.places();
            // By distance, not by place: the village is passed twice.
            places.len() == 2
                && places.iter().all(|place| place.kind == PlaceKind::Settlement)
                && places[0].index + places[1].index == road.cells()
        })),
    trap!("route-with-shape", |o| o.found(40, |k| *k == FindingKind::RouteShapeUsed)
        && o.document().is_some_and(|d| d.courses()[0].kind == CourseKind::Route)),
];

fn traps() -> impl Iterator<Item = &'static Trap> {
    UNUSABLE.iter().chain(&REPAIRED).chain(&JUDGED)
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test::wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn each_trap_has_its_answer() {
    for trap in traps() {
        let outcome = work_out(trap.bytes);
        assert!((trap.holds)(&outcome), "{}: not as expected; it says\n{}", trap.file, outcome.text());
    }
}

/// Repairs change nothing but what they mend: the road is that of the good file.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test::wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn repaired_files_give_the_same_road() {
    let good = work_out(include_bytes!("../data/good.gpx"));
    let good = good.road().expect("the good file is usable");
    for file in [
        "undeclared-prefix",
        "latin1",
        "utf16-low-first",
        "junk-before",
        "tags-crossed",
        "point-tag-missing",
        "gpx-1-0",
        "bad-times",
        "no-version",
        "stop",
        "lost-fix-at-zero",
    ] {
        let trap = traps().find(|trap| trap.file == file).expect("a fixture");
        let outcome = work_out(trap.bytes);
        let road = outcome.road().expect("usable");
        assert_eq!(road.cells(), good.cells(), "{file}");
        let off =
            road.heights_m().iter().zip(good.heights_m()).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
        assert!(off < 0.1, "{file}: heights differ by {off} m");
    }
}
