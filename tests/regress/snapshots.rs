//! The whole way from the bytes of a file to the plan, for every preset, bit for bit.
//!
//! One file of snapshots is read natively and in wasm, so that a number that depends on the machine fails one
//! of them. After a change that is meant to change results, run `STEADYGRADE_UPDATE=1 cargo test -p tests
//! --test regress` and read the difference.

use solver::plan::{Choice, Lanes, Plan};
use solver::road::Road;
use solver::study::{study, sureness};
use solver::truck::Preset;
use solver::{Day, ServiceBrakes, analyse};
use std::fmt::Write;
use tests::generate::{Drive, Instrument, TrueRoad};
use tests::trucks::preset;
use tests::truth::survey_drive;

const KEPT: &str = include_str!("snapshots.txt");

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test::wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn plans_are_the_same_bit_for_bit() {
    let now = snapshots();
    if updating() {
        keep(&now);
        return;
    }
    for (line, (kept, now)) in KEPT.lines().zip(now.lines()).enumerate() {
        assert_eq!(kept, now, "line {} of snapshots.txt", line + 1);
    }
    assert_eq!(KEPT.lines().count(), now.lines().count());
}

fn snapshots() -> String {
    let mut out = String::new();
    for (instrument, seed) in [
        (Instrument::Exact, 11),
        (Instrument::Recorder, 12),
        (Instrument::Receiver, 13),
        (Instrument::Terrain, 14),
    ] {
        let road = survey_drive(&TrueRoad::random(seed, 12_000.0), &Drive::new(instrument, 17.0, seed));
        for (way, road) in [("forth", road.clone()), ("back", road.reversed())] {
            let _ = writeln!(
                out,
                "{instrument:?} {seed} {way} heights {:016x}",
                mixed(road.heights_m().iter().copied())
            );
            for kind in Preset::ALL {
                of_plan(&mut out, &road, kind);
            }
            if (instrument, way) == (Instrument::Recorder, "forth") {
                for kind in [Preset::FiveAxle36, Preset::CoachConverter] {
                    of_study(&mut out, &road, kind);
                }
            }
        }
    }
    out
}

fn of_plan(out: &mut String, road: &Road, kind: Preset) {
    let day = Day { service_brakes: ServiceBrakes::MaySnub, headwind_kmh: 7.0, ..Day::USUAL };
    let (plan, lanes) = analyse(road, &preset(kind), &day, &mut |_| true).expect("not cancelled");
    let _ = writeln!(
        out,
        "  {} time {:016x} lanes {:016x}",
        kind.key(),
        plan.totals.time.0.to_bits(),
        of_lanes(&lanes)
    );
    of_descents(out, &plan);
}

/// The 256 runs, and the study's numbers.
fn of_study(out: &mut String, road: &Road, kind: Preset) {
    let (truck, day) = (preset(kind), Day::USUAL);
    let (plan, _) = analyse(road, &truck, &day, &mut |_| true).expect("not cancelled");
    let found = study(road, &truck, &day, &plan);
    let lost = found.lost.iter().flat_map(|it| [it.stop_until, it.held_from, it.neither_from]);
    let lost = lost.map(|at| at.map_or(f64::NAN, |at| at.0));
    let hot = found.adjustment.iter().map(|it| it.hottest_after_stop.0);
    let off = found.slowing.iter().map(|it| it.lift_off.map_or(f64::NAN, |(at, _)| at.0));
    let (_, bands) = sureness(road, &truck, &day, &plan, &mut |_| true).expect("a road with descents");
    let values = bands.speed.iter().chain(&bands.temperature).flatten().map(|x| f64::from(*x));
    let _ = writeln!(
        out,
        "  {} study {:016x} bands {:016x} fuel {:016x}",
        kind.key(),
        mixed(lost.chain(hot).chain(off)),
        mixed(values),
        plan.totals.fuel.0.to_bits()
    );
}

fn of_descents(out: &mut String, plan: &Plan) {
    for d in &plan.descents {
        for choice in [&d.in_reserve, &d.snubbing] {
            let _ = match choice {
                Choice::Held(a) => writeln!(
                    out,
                    "    {} gear {} stage {} {:.0} km/h {:?} margin {:016x} hottest {:016x}",
                    d.number,
                    a.gear.number(),
                    a.stage.number(),
                    a.speed.kmh(),
                    a.verdict,
                    a.margin.to_bits(),
                    a.hottest_after_stop.0.to_bits()
                ),
                Choice::NoSafeSpeed(none) => {
                    writeln!(
                        out,
                        "    {} none because {:?} {:016x}",
                        d.number,
                        none.because,
                        none.hottest_after_stop.0.to_bits()
                    )
                }
            };
        }
    }
}

fn of_lanes(lanes: &Lanes) -> u64 {
    let values = [&lanes.speed, &lanes.engine_speed, &lanes.temperature, &lanes.after_stop, &lanes.carried];
    let small = [&lanes.gear, &lanes.stage, &lanes.heat];
    let floats = values.into_iter().flatten().map(|x| f64::from(*x));
    mixed(floats.chain(small.into_iter().flatten().map(|x| f64::from(*x))))
}

/// FNV-1a over the bits. Every NaN counts as one and the same, since the bits of NaN may differ.
fn mixed(values: impl Iterator<Item = f64>) -> u64 {
    let bits = values.map(|x| if x.is_nan() { u64::MAX } else { x.to_bits() });
    bits.fold(0xcbf2_9ce4_8422_2325, |hash, x| (hash ^ x).wrapping_mul(0x0100_0000_01b3))
}

#[cfg(not(target_arch = "wasm32"))]
fn updating() -> bool {
    std::env::var_os("STEADYGRADE_UPDATE").is_some()
}

#[cfg(not(target_arch = "wasm32"))]
fn keep(now: &str) {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/regress/snapshots.txt");
    std::fs::write(path, now).expect("snapshots.txt can be written");
}

#[cfg(target_arch = "wasm32")]
fn updating() -> bool {
    false
}

#[cfg(target_arch = "wasm32")]
fn keep(_: &str) {}
