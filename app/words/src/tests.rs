//! What is said of what the solver finds and refuses is whole and has its figures, in every language.

use crate::Tongue;
use crate::format::Units;
use solver::limits::{self, OutOfRange};
use solver::report::truck_file::TruckFileError;
use solver::road::{
    Bound, Encoding, FileError, Finding, FindingKind as Kind, Foreign, Refusal, Span, Unassessed,
};
use solver::truck::TruckError;
use std::collections::BTreeMap;

/// A line that no other number in a sentence looks like.
const LINE: usize = 7_391;

fn file_errors() -> Vec<(FileError, &'static [&'static str])> {
    let heights = |constant, unreadable| FileError::NoHeights { points: 4_286, constant, unreadable };
    let bad = |bad, swapped| FileError::TooManyBadPoints { bad, points: 4_286, line: LINE, swapped };
    let refused = |what| FileError::Refused { what, line: LINE };
    let mut all: Vec<(FileError, &'static [&'static str])> = vec![
        (FileError::Empty, &["GPX"]),
        (FileError::NothingInside, &[]),
        (FileError::WaypointsOnly { count: 4_286 }, &["4286"]),
        (heights(false, 0), &["4286"]),
        (heights(true, 0), &["4286"]),
        (heights(false, 1), &["4286", "1"]),
        (heights(false, 17), &["4286", "17"]),
        (FileError::TooCoarse { found_m: 912.0, needed_m: 150.0 }, &["912", "150"]),
        (bad(1, false), &["1", "4286", "7391"]),
        (bad(317, false), &["317", "4286", "7391"]),
        (bad(317, true), &["317", "4286", "7391"]),
        (FileError::TooShort { found_m: 213.0, needed_m: 500.0 }, &["213", "500"]),
        (FileError::NothingLeft { length_m: 12_345.0 }, &["12.3"]),
        (FileError::TooLarge(Bound::Bytes(1_234_567_890)), &["1234", "200"]),
        (FileError::TooLarge(Bound::Points), &["2"]),
        (FileError::TooLarge(Bound::Courses), &["1,000"]),
        (FileError::TooLarge(Bound::Length(4_321e3)), &["4,321", "3,000"]),
        (refused(Refusal::Entities), &["7391"]),
        (refused(Refusal::Nesting), &["7391", "100"]),
        (refused(Refusal::LongTag), &["7391", "64"]),
        (FileError::BadHeights { index: 316 }, &["317"]),
        (FileError::NoSuchCourse { asked: 316, found: 17 }, &["317", "17"]),
        (FileError::LegsApart { leg: 3, gap_m: 12_345.0 }, &["3", "12.3", "2"]),
        (FileError::NotOneRoad { recording: 3 }, &["3"]),
        (FileError::Cancelled, &[]),
    ];
    let foreign = [
        Foreign::Html,
        Foreign::Kml,
        Foreign::Gzip,
        Foreign::Zip,
        Foreign::Fit,
        Foreign::Json,
        Foreign::Pdf,
        Foreign::Picture,
        Foreign::Unknown,
    ];
    all.extend(foreign.map(|it| (FileError::NotGpx(it), ["GPX"].as_slice())));
    all.push((FileError::NotGpx(Foreign::OtherXml("svg".to_owned())), &["svg", "GPX"]));
    all
}

fn kinds() -> Vec<(Kind, &'static [&'static str])> {
    let line = LINE;
    let encoding = |declared: Option<&str>| Kind::EncodingRepaired {
        declared: declared.map(str::to_owned),
        read_as: Encoding::Windows1252,
    };
    let rough = |poor, from_terrain| Kind::RoughHeights { roughness: 3.2, base_m: 640.0, poor, from_terrain };
    let mut all: Vec<(Kind, &'static [&'static str])> = vec![
        (encoding(Some("latin-9")), &["latin-9", "windows-1252"]),
        (encoding(None), &["windows-1252"]),
        (Kind::JunkBeforeStart, &["COUNT"]),
        (Kind::CutOff { line }, &["7391"]),
        (Kind::UndeclaredPrefix { prefix: "ns3".to_owned(), line }, &["ns3", "7391"]),
        (Kind::BadReference { line }, &["COUNT", "&", "7391"]),
        (Kind::TagsRepaired { line }, &["COUNT", "7391"]),
        (Kind::DocumentTypeIgnored { line }, &["7391"]),
        (Kind::DecimalComma { line }, &["COUNT", "7391"]),
        (Kind::Padding { line }, &["COUNT", "7391"]),
        (Kind::MetresWritten { line }, &["COUNT", "7391"]),
        (Kind::ForeignUnit { line }, &["COUNT", "7391"]),
        (Kind::HeightUnreadable { line }, &["COUNT", "7391"]),
        (Kind::PointsDropped { line }, &["COUNT", "7391"]),
        (Kind::WaypointsLeftOut { kept: 2_000 }, &["COUNT", "2000"]),
        (Kind::RouteShapeUsed, &["COUNT"]),
        (Kind::SegmentsJoined { widest_m: 640.0 }, &["MORE", "640"]),
        (Kind::StopsMerged, &["COUNT"]),
        (Kind::JumpsRejected, &["COUNT"]),
        (Kind::ZeroHeights, &["COUNT"]),
        (Kind::SpikesRemoved { largest_m: 640.0 }, &["COUNT", "640"]),
        (Kind::HeightsFilled { longest_m: 640.0 }, &["COUNT", "640"]),
        (Kind::TunnelBridged { rise_m: 61.0 }, &["61"]),
        (Kind::ViaductBridged { drop_m: 61.0 }, &["61"]),
        (Kind::VerySteep { grade: 0.174 }, &["COUNT", "17.4"]),
        (Kind::RecordingsCombined { common_m: 12_345.0 }, &["COUNT", "12.3"]),
        (Kind::RecordingsDisagree { apart_m: 23.0, length_m: 640.0 }, &["23", "640"]),
    ];
    for (poor, from_terrain) in [(false, false), (false, true), (true, false), (true, true)] {
        all.push((rough(poor, from_terrain), &["3.2", "640"]));
    }
    all.extend(WHY.map(|why| (Kind::NotAssessed { why }, [].as_slice())));
    all
}

const WHY: [Unassessed; 4] = [Unassessed::Gap, Unassessed::NoHeights, Unassessed::Step, Unassessed::Sliver];

/// Sentences of one language: each is whole, has its figures, and no two are one.
#[derive(Default)]
struct Said(BTreeMap<String, String>);

impl Said {
    fn has(&mut self, of: &str, text: &str, figures: &[&str]) {
        assert!(text.ends_with('.') && !text.ends_with("..") && !text.contains("  "), "{of}: {text}");
        assert!(text.chars().next().is_some_and(|c| c.is_uppercase() || c.is_ascii_digit()), "{of}: {text}");
        let mut rest = numbers_and_words(text);
        for figure in figures {
            let at = rest.iter().position(|it| it == figure || it.split('-').any(|part| part == *figure));
            let at = at.unwrap_or_else(|| panic!("{of}: no {figure} in “{text}”"));
            rest.remove(at);
        }
        if let Some(other) = self.0.insert(text.to_owned(), of.to_owned()) {
            panic!("“{text}” is said of {other} and of {of}");
        }
    }
}

/// What stands between blanks and marks.
fn numbers_and_words(text: &str) -> Vec<&str> {
    text.split(|c: char| c.is_whitespace() || "“”„«»();:".contains(c))
        .map(|it| it.trim_matches(['.', ',']))
        .collect()
}

#[test]
fn files_that_give_no_road_are_told_with_their_figures_in_every_language() {
    for words in Tongue::ALL.map(Tongue::words) {
        let mut said = Said::default();
        for (error, figures) in file_errors() {
            said.has(&format!("{}: {error:?}", words.tag()), &words.file_error(&error), figures);
        }
    }
}

#[test]
fn findings_are_told_with_their_figures_in_every_language() {
    for words in Tongue::ALL.map(Tongue::words) {
        for count in [1, 2, 317] {
            let mut said = Said::default();
            for (kind, figures) in kinds() {
                let [own, more] = [count, count + 1].map(|it: usize| it.to_string());
                let figures: Vec<&str> = figures
                    .iter()
                    .map(|it| match *it {
                        "COUNT" => own.as_str(),
                        "MORE" => more.as_str(),
                        it => it,
                    })
                    .collect();
                let finding = Finding { kind, count, from_m: None, to_m: None };
                said.has(&format!("{}: {finding:?}", words.tag()), &words.finding(&finding), &figures);
            }
        }
    }
}

#[test]
fn why_a_stretch_is_not_assessed_is_the_end_of_its_finding() {
    for words in Tongue::ALL.map(Tongue::words) {
        for why in WHY {
            let kind = Kind::NotAssessed { why };
            let finding = words.finding(&Finding { kind, count: 1, from_m: None, to_m: None });
            let told = words.unassessed(&Span { from: 10, to: 20, why });
            assert!(
                told.ends_with('.') && finding.ends_with(&format!(": {told}"))
                    || finding.ends_with(&format!("\u{202f}: {told}")),
                "{finding}"
            );
        }
    }
}

#[test]
fn trucks_that_are_not_taken_are_told_with_their_bounds_in_every_language() {
    let errors: [(TruckError, &[&str]); 7] = [
        (TruckError::DriveAxleHeavierThanTruck, &[]),
        (TruckError::EngineSpeedsCrossed, &[]),
        (TruckError::Gears, &["1", "32", "0.3", "40"]),
        (TruckError::FullLoad, &["2", "64", "300", "5000/min", "0", "6000"]),
        (TruckError::Stages, &["1", "12"]),
        (TruckError::Table, &["2", "24", "200", "5000/min", "1", "12"]),
        (TruckError::AxleGroups, &["1", "8", "12"]),
    ];
    for words in Tongue::ALL.map(Tongue::words) {
        let mut said = Said::default();
        for (error, figures) in &errors {
            let of = format!("{}: {error:?}", words.tag());
            let text = words.truck_error(error, Units::Metric);
            said.has(&of, &text, figures);
            let file = TruckFileError::Truck(*error);
            assert_eq!(words.truck_file_error(&file, Units::Metric), text);
        }
        for entry in limits::ALL.map(|limit| limit.entry) {
            for units in [Units::Metric, Units::Imperial] {
                let text = words.entry_error(&OutOfRange { entry, value: f64::NAN }, units);
                let range = words.asked(entry, units);
                assert!(text.starts_with(words.entry(entry)) && text.contains(&range), "{text}");
                assert!(text.ends_with('.') && !text.contains(" /min"), "{text}");
            }
        }
        let broken = TruckFileError::Broken { line: LINE, what: "unknown field".to_owned() };
        let newer = TruckFileError::Version { found: 317, newest: 16 };
        let files: [(_, &[&str]); 3] =
            [(broken, &["7391", "unknown", "field"]), (TruckFileError::CutOff, &[]), (newer, &["317", "16"])];
        for (error, figures) in files {
            let text = words.truck_file_error(&error, Units::Metric);
            said.has(&format!("{}: {error:?}", words.tag()), &text, figures);
        }
    }
}

/// A copied catalogue would still call itself by the language that it was copied from.
#[test]
fn each_language_has_its_own_tag() {
    for tongue in Tongue::ALL {
        assert_eq!(tongue.words().tag(), format!("{tongue:?}").to_lowercase());
    }
}

/// The lines of every catalogue, those of the page too, with their language; comments are left out.
fn lines() -> Vec<(&'static str, String)> {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    let read = |tag: &'static str, of: &str| {
        let text = std::fs::read_to_string(folder.join(of).join(format!("{tag}.ftl"))).expect("a catalogue");
        let told = text.lines().filter(|line| !line.starts_with('#')).map(|line| (tag, line.to_owned()));
        told.collect::<Vec<_>>()
    };
    let tags = Tongue::ALL.map(|tongue| tongue.words().tag());
    tags.into_iter().flat_map(|tag| [read(tag, ""), read(tag, "page")].concat()).collect()
}

#[test]
fn no_line_breaks_between_a_figure_and_its_unit() {
    const UNITS: [&str; 16] =
        ["km", "km/h", "m", "mm", "MB", "kB", "t", "kg", "lb", "%", "min", "s", "h", "mph", "N·m", "°C"];
    let lines = lines();
    assert!(lines.iter().any(|(_, line)| line.contains("\u{a0}km")));
    for (tag, line) in lines {
        let words: Vec<&str> = line.split(' ').collect();
        for pair in words.windows(2) {
            let figure = pair[0].ends_with(|c: char| c == '}' || c.is_numeric());
            let unit = pair[1].trim_end_matches([',', '.', ';', ':', ')', '\u{202f}']);
            assert!(!(figure && UNITS.contains(&unit)), "{tag}: a line may break before {unit} in “{line}”");
        }
    }
}

#[test]
fn french_has_a_thin_space_before_its_double_marks() {
    for (_, line) in lines().into_iter().filter(|(tag, _)| *tag == "fr") {
        for mark in [':', ';', '?', '!'] {
            for blank in [' ', '\u{a0}'] {
                assert!(!line.contains(&format!("{blank}{mark}")), "{line}");
            }
        }
    }
}

/// What a log is searched for: one key for each kind, of small letters.
#[test]
fn keys_for_logs_are_told_apart() {
    fn differ<T: ToString>(all: impl Iterator<Item = T>) {
        let mut by_key = BTreeMap::new();
        for it in all {
            let (text, kind) = (it.to_string(), std::mem::discriminant(&it));
            let key = text.split(' ').next().unwrap_or_default().to_owned();
            assert!(!key.is_empty() && key.chars().all(|c| c.is_ascii_lowercase() || c == '-'), "{text}");
            assert_eq!(*by_key.entry(key).or_insert(kind), kind, "{text}");
        }
    }
    differ(kinds().into_iter().map(|(kind, _)| kind));
    differ(file_errors().into_iter().map(|(error, _)| error));
    differ(WHY.into_iter());
    let keys: BTreeMap<&str, _> = limits::ALL.iter().map(|limit| (limit.entry.key(), limit.entry)).collect();
    assert_eq!(keys.len(), limits::ALL.len());
}
