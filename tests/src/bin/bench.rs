//! `cargo xtask bench`: how long things take beside a named baseline on one machine at one time. Ratios
//! travel from machine to machine; milliseconds do not.
//!
//! Each group names its baseline first. All entries of a group run in turn, round after round, so that a
//! machine that slows down slows all of them. The median of the rounds is shown, with the fastest and the
//! slowest beside it.

use solver::road::Turn;
use solver::study::{study, sureness};
use solver::{Day, Preset, Truck, analyse, road};
use std::{
    fmt::Write as _,
    hint::black_box,
    process::ExitCode,
    time::{Duration, Instant},
};
use tests::generate::{Drive, Instrument, TrueRoad, gpx_text};
use tests::truth::{Errors, ROADS, bends, mean, measure, survey_drive};

/// Odd, so that the median is one of the measured times.
const ROUNDS: usize = 7;

/// One thing that is timed: a name, and the work. The work returns a figure that is shown, so that one can
/// see that all entries of a group did equal work.
struct Entry {
    name: &'static str,
    work: Box<dyn Fn() -> usize>,
}

/// Entries that are compared; the first is the baseline.
struct Group {
    name: &'static str,
    entries: Vec<Entry>,
}

/// Times and figure of one entry over all rounds.
struct Timing {
    fastest: Duration,
    median: Duration,
    slowest: Duration,
    figure: usize,
}

fn entry(name: &'static str, work: impl Fn() -> usize + 'static) -> Entry {
    Entry { name, work: Box::new(work) }
}

fn time(group: &Group) -> Vec<Timing> {
    let mut times: Vec<Vec<Duration>> = group.entries.iter().map(|_| Vec::new()).collect();
    let mut figures = vec![0; group.entries.len()];
    for _ in 0..ROUNDS {
        for (index, entry) in group.entries.iter().enumerate() {
            let start = Instant::now();
            figures[index] = black_box((entry.work)());
            times[index].push(start.elapsed());
        }
    }
    let summed_up = times.into_iter().zip(figures).map(|(mut times, figure)| {
        times.sort();
        Timing { fastest: times[0], median: times[ROUNDS / 2], slowest: times[ROUNDS - 1], figure }
    });
    summed_up.collect()
}

fn show(group: &Group, timings: &[Timing]) {
    println!("\n{}", group.name);
    println!(
        "  {:<40} {:>10} {:>10} {:>10} {:>8} {:>10}",
        "", "median ms", "fastest", "slowest", "ratio", "figure"
    );
    let ms = |time: Duration| time.as_secs_f64() * 1e3;
    let baseline = timings.first().map_or(f64::NAN, |timing| ms(timing.median));
    for (entry, timing) in group.entries.iter().zip(timings) {
        println!(
            "  {:<40} {:>10.2} {:>10.2} {:>10.2} {:>8.3} {:>10}",
            entry.name,
            ms(timing.median),
            ms(timing.fastest),
            ms(timing.slowest),
            ms(timing.median) / baseline,
            timing.figure
        );
    }
}

/// A GPX 1.1 track of `points` points along an invented road, one point a second and about
/// 100 bytes a point, as a recorder writes it.
fn long_track(points: usize) -> String {
    let mut text = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"bench\" \
         xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><name>Long</name><trkseg>\n",
    );
    for index in 0..points {
        // Whole numbers only, so that the file is equal on every machine.
        let (seconds, minutes) = (index % 60, index / 60 % 60);
        let (hours, day) = (index / 3600 % 24, index / 86_400 + 1);
        let bend = (index * 7919) % 1000;
        let latitude = 46_000_000 + index * 10 + bend / 100;
        let height = 80_000 + (index % 20_000).abs_diff(10_000) * 15;
        // Writing into a String cannot fail.
        let _ = writeln!(
            text,
            "<trkpt lat=\"{}.{:06}\" lon=\"7.{:06}\"><ele>{}.{:02}</ele>\
             <time>2024-05-{day:02}T{hours:02}:{minutes:02}:{seconds:02}Z</time></trkpt>",
            latitude / 1_000_000,
            latitude % 1_000_000,
            100_000 + index,
            height / 100,
            height % 100,
        );
    }
    text.push_str("</trkseg></trk></gpx>\n");
    text
}

const LONG_TRACK_POINTS: usize = 200_000;

/// Reading a long file: the usual GPX crate, and the bare XML scan as the lower bound.
fn reading() -> Group {
    let text: &'static str = long_track(LONG_TRACK_POINTS).leak();
    println!("the long track: {LONG_TRACK_POINTS} points, {} bytes", text.len());
    let by_gpx_crate = || {
        let read = gpx::read(text.as_bytes()).expect("the track is sound");
        read.tracks.iter().flat_map(|track| &track.segments).map(|part| part.points.len()).sum()
    };
    let by_bare_scan = || {
        let mut reader = quick_xml::Reader::from_str(text);
        let mut points = 0;
        loop {
            // Ends with the text: each event takes at least one byte of it.
            match reader.read_event().expect("the track is well formed") {
                quick_xml::events::Event::Start(tag) if tag.name().as_ref() == "trkpt" => {
                    points += 1;
                }
                quick_xml::events::Event::Eof => return points,
                _ => {}
            }
        }
    };
    let by_solver = || {
        let document = road::read(text.as_bytes(), &mut |_| true).expect("the track is sound");
        document.courses()[document.suggested()].points
    };
    let to_road = || {
        let document = road::read(text.as_bytes(), &mut |_| true).expect("the track is sound");
        let course = document.suggested();
        road::survey(&document, course, &mut |_| true).expect("the road is sound");
        document.courses()[course].points
    };
    Group {
        name: "reading a long track",
        entries: vec![
            entry("gpx crate (baseline)", by_gpx_crate),
            entry("solver, read", by_solver),
            entry("solver, read and surveyed to a road", to_road),
            entry("bare scan of the XML, nothing kept", by_bare_scan),
        ],
    }
}

/// The whole way, and its growth with the road: ten times the points take at most twelve times the time.
fn whole_way() -> Group {
    let way = |points: usize| {
        let text: &'static str = Box::leak(recorded_track(points).into_boxed_str());
        move || {
            let document = road::read(text.as_bytes(), &mut |_| true).expect("the track is sound");
            let course = document.suggested();
            road::survey(&document, course, &mut |_| true).expect("the road is sound").cells()
        }
    };
    let long = way(200_000);
    let planned = {
        let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a preset is a truck");
        move || {
            let document = road::read(planned_text().as_bytes(), &mut |_| true).expect("the track is sound");
            let road = road::survey(&document, 0, &mut |_| true).expect("the road is sound");
            let (plan, _) = analyse(&road, &truck, &Day::USUAL, &mut |_| true).expect("not stopped");
            plan.descents.len()
        }
    };
    Group {
        name: "file to road to plan",
        entries: vec![
            entry("20,000 points to a road (baseline)", way(20_000)),
            entry("200,000 points to a road", long),
            entry("200,000 points to a plan", planned),
        ],
    }
}

/// The work after the answer for a road of 100 km. The aim for the runs is one second natively and two in the
/// page (`--page`).
fn looking_further() -> Group {
    let road = survey_drive(&TrueRoad::random(3, 100_000.0), &Drive::new(Instrument::Recorder, 12.0, 3));
    let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a preset is a truck");
    let plan_it = |road: &road::Road, truck: &Truck| {
        analyse(road, truck, &Day::USUAL, &mut |_| true).expect("not stopped").0
    };
    let plan = plan_it(&road, &truck);
    let shared = std::rc::Rc::new((road, truck, plan));
    let (first, second, third) = (shared.clone(), shared.clone(), shared);
    Group {
        name: "looking further, a road of 100 km",
        entries: vec![
            entry("the plan (baseline)", move || plan_it(&first.0, &first.1).descents.len()),
            entry("retarder lost, adjustment, slowing", move || {
                study(&second.0, &second.1, &Day::USUAL, &second.2).lost.len()
            }),
            entry("256 runs", move || {
                let sure = sureness(&third.0, &third.1, &Day::USUAL, &third.2, &mut |_| true);
                sure.map_or(0, |(sure, _)| sure.runs)
            }),
        ],
    }
}

/// The long file of the last entry, made once.
fn planned_text() -> &'static str {
    static TEXT: std::sync::OnceLock<String> = std::sync::OnceLock::new();
    TEXT.get_or_init(|| recorded_track(200_000))
}

/// A recording of an invented hilly road, a point every 2.5 m.
fn recorded_track(points: usize) -> String {
    let road = TrueRoad::random(3, points as f64 * 2.5);
    gpx_text("Long", &Drive::new(Instrument::Recorder, 2.5, 3).record(&road), &[], 7)
}

/// Errors on generated roads whose truth is known: the table of `solver/docs/heights.md`.
fn truth() {
    println!("{} roads of 20 km for each instrument; grades in percentage points", ROADS.count());
    println!(
        "| instrument | R | class (0–2) | RMSE of 100 m grade | steepest 500 m, mean | and worst | drop, worst % | length % | bridged | not assessed % |"
    );
    println!("|---|---|---|---|---|---|---|---|---|---|");
    for instrument in [Instrument::Exact, Instrument::Recorder, Instrument::Receiver, Instrument::Terrain] {
        let errors: Vec<_> = ROADS.map(|seed| measure(instrument, seed)).collect();
        let average = mean(&errors);
        let worst = |pick: fn(&Errors) -> f64| errors.iter().map(pick).map(f64::abs).fold(0.0, f64::max);
        println!(
            "| {instrument:?} | {:.1} | {:.1} | {:.3} | {:+.2} | {:.2} | {:.2} | {:+.3} | {}/{} | {:.1} |",
            average.roughness,
            average.class,
            average.grade_100m,
            average.steepest_500m,
            worst(|e| e.steepest_500m),
            worst(|e| e.drop) * 100.0,
            average.length * 100.0,
            average.bridged,
            average.bumps,
            average.unassessed * 100.0,
        );
    }
}

/// Radii found over true radii, by class of radius.
fn radii() {
    println!("\n| instrument | true radius, m | bends | seen | found/true: median | 90 % | other side |");
    println!("|---|---|---|---|---|---|---|");
    for instrument in [Instrument::Exact, Instrument::Recorder, Instrument::Receiver] {
        let all: Vec<_> = ROADS.flat_map(|seed| bends(instrument, seed).0).collect();
        for (least, most) in [(10.0, 18.0), (18.0, 30.0), (55.0, 120.0), (120.0, 250.0), (250.0, 500.0)] {
            let class: Vec<_> = all.iter().filter(|b| b.radius_m >= least && b.radius_m < most).collect();
            let seen: Vec<_> = class.iter().filter_map(|b| b.found.map(|found| (b, found))).collect();
            let mut ratios: Vec<f64> = seen.iter().map(|(b, found)| found.radius_m / b.radius_m).collect();
            ratios.sort_by(f64::total_cmp);
            let at = |share: f64| {
                let rank = (share * (ratios.len() as f64 - 1.0)) as usize;
                ratios.get(rank).copied().unwrap_or(f64::NAN)
            };
            let wrong = seen.iter().filter(|(b, found)| (found.turn == Turn::Left) != (b.turn > 0.0)).count();
            println!(
                "| {instrument:?} | {least} to {most} | {} | {} | {:.2} | {:.2} | {wrong} |",
                class.len(),
                seen.len(),
                at(0.5),
                at(0.9)
            );
        }
    }
}

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match words.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        [] => {}
        ["--truth"] => {
            truth();
            radii();
            return ExitCode::SUCCESS;
        }
        _ => {
            eprintln!("bench: `{}` is not understood; the one option is --truth", words.join(" "));
            return ExitCode::FAILURE;
        }
    }
    println!("median of {ROUNDS} rounds; a ratio below 1 is faster than the baseline");
    let groups: [fn() -> Group; 3] = [reading, whole_way, looking_further];
    for group in groups {
        // Made one after the other: the inputs are large.
        let group = group();
        show(&group, &time(&group));
    }
    ExitCode::SUCCESS
}
