//! Two recordings of one road are recognised, and combined with less error than either has. Where they
//! disagree, it is said and the steeper is used.

use solver::road::{FindingKind, Place, PlaceKind, PostedLimit, Road, Roadside, combine, lie_on_each_other};
use solver::{Day, Preset, Truck, analyse};
use tests::generate::{Drive, Instrument, Sample, TrueRoad};
use tests::truth::{survey_drive, survey_samples};

const SEEDS: std::ops::RangeInclusive<u64> = 1..=24;
const LENGTHS_M: [f64; 3] = [200.0, 500.0, 1_000.0];

/// Sums of squared errors of rises over each length, and their number.
#[derive(Clone, Copy, Default)]
struct Errors {
    squares: [f64; 3],
    count: [f64; 3],
    /// Number of errors within twice the road's own doubt.
    within: [f64; 3],
}

impl Errors {
    fn add(&mut self, truth: &TrueRoad, road: &Road) {
        let scale = truth.length_m() / road.length_m();
        for (k, length_m) in LENGTHS_M.iter().enumerate() {
            let width = (length_m / road.step_m()).round() as usize;
            for from in 0..=road.cells() - width {
                let at = |i: usize| i as f64 * road.step_m() * scale;
                let rise = truth.alignment.height_m(at(from + width)) - truth.alignment.height_m(at(from));
                let off = road.surface_m()[from + width] - road.surface_m()[from] - rise;
                self.squares[k] += off * off;
                self.count[k] += 1.0;
                let bound = 2.0 * road.doubt().sigma_m(width as f64 * road.step_m());
                self.within[k] += f64::from(u8::from(off.abs() <= bound));
            }
        }
    }

    fn rms(&self) -> [f64; 3] {
        [0, 1, 2].map(|k| (self.squares[k] / self.count[k]).sqrt())
    }

    fn shares(&self) -> [f64; 3] {
        [0, 1, 2].map(|k| self.within[k] / self.count[k])
    }
}

/// Combines two recordings of each road; gives the errors of the first, of the second, and of both together.
fn together(one: Instrument, other: Instrument) -> [Errors; 3] {
    let mut errors = [Errors::default(); 3];
    for seed in SEEDS {
        let truth = TrueRoad::random(seed, 12_000.0);
        let first = survey_drive(&truth, &Drive::new(one, 15.0, seed));
        let second = survey_drive(&truth, &Drive::new(other, 11.0, seed + 500));
        let both = combine(&first, &second).expect("one road");
        for (errors, road) in errors.iter_mut().zip([&first, &second, &both]) {
            errors.add(&truth, road);
        }
    }
    println!(
        "{one:?} {:.2?}, {other:?} {:.2?}, together {:.2?} m rms over 200, 500, 1000 m; within 2 σ {:.3?}",
        errors[0].rms(),
        errors[1].rms(),
        errors[2].rms(),
        errors[2].shares()
    );
    errors
}

fn hold(one: Instrument, other: Instrument) {
    let errors = together(one, other);
    let [first, second, both] = errors.map(|it| it.rms());
    for k in 0..3 {
        // A recorder gains nothing from a receiver beside it, and loses up to 0.3 m: the weights are
        // estimates, and where the two disagree the steeper is used.
        let best = first[k].min(second[k]);
        assert!(both[k] <= 1.30 * best, "{one:?} and {other:?}: {:.2} m of {best:.2} m", both[k]);
        assert!(one != other || both[k] <= 0.90 * best, "{one:?}: {:.2} m of {best:.2} m", both[k]);
    }
    assert!(errors[2].shares().iter().all(|share| *share >= 0.90), "{:?}", errors[2].shares());
}

#[test]
fn two_recorders_are_better_than_one() {
    hold(Instrument::Recorder, Instrument::Recorder);
}

#[test]
fn two_receivers_are_better_than_one() {
    hold(Instrument::Receiver, Instrument::Receiver);
}

#[test]
fn two_terrain_models_are_better_than_one() {
    hold(Instrument::Terrain, Instrument::Terrain);
}

#[test]
fn a_receiver_does_not_spoil_a_recorder() {
    hold(Instrument::Recorder, Instrument::Receiver);
    hold(Instrument::Receiver, Instrument::Recorder);
}

fn disagreements(road: &Road) -> Vec<(f64, f64)> {
    let told = |it: &&solver::road::Finding| matches!(it.kind, FindingKind::RecordingsDisagree { .. });
    road.findings().iter().filter(told).filter_map(|it| it.from_m.zip(it.to_m)).collect()
}

/// One of two recordings has a pitch that the other lacks. It is told at its place, and the pitch is kept.
/// Where none is planted, nothing is told.
#[test]
fn a_pitch_in_one_of_them_is_told_and_kept() {
    let (mut told, mut false_ones) = (0, 0);
    for seed in SEEDS {
        let truth = TrueRoad::random(seed, 12_000.0);
        let plain = Drive::new(Instrument::Recorder, 15.0, seed).record(&truth);
        let mut planted: Vec<Sample> = Drive::new(Instrument::Recorder, 11.0, seed + 500).record(&truth);
        let (one, other) = (survey_samples(&plain), survey_samples(&planted));
        false_ones += disagreements(&combine(&one, &other).expect("one road")).len();
        // 300 m fall by 8 points more, and 900 m further on climb back: within what a road does.
        let from_m = 5_000.0;
        for sample in &mut planted {
            let (down, up) = (sample.s_m - from_m, sample.s_m - from_m - 300.0);
            sample.height_m -= 0.08 * down.clamp(0.0, 300.0) - 0.08 * up.clamp(0.0, 900.0) / 3.0;
        }
        let other = survey_samples(&planted);
        let both = combine(&one, &other).expect("one road");
        let near = |(a, b): &(f64, f64)| *a < from_m + 400.0 && *b > from_m - 100.0;
        told += usize::from(disagreements(&both).iter().any(near));
        let at = |road: &Road, s_m: f64| {
            road.surface_m()[(s_m / truth.length_m() * road.cells() as f64).round() as usize]
        };
        let fall = |road: &Road| at(road, from_m + 290.0) - at(road, from_m + 10.0);
        let steeper = if fall(&one).abs() > fall(&other).abs() { fall(&one) } else { fall(&other) };
        let slack_m = 0.15 * (fall(&one) - fall(&other)).abs();
        assert!(fall(&both).abs() >= steeper.abs() - slack_m || disagreements(&both).is_empty(), "{seed}");
    }
    println!("{told} of 24 planted pitches told, {false_ones} told where none is");
    assert_eq!((told, false_ones), (SEEDS.count(), 0));
}

#[test]
fn other_roads_and_the_way_back_are_not_the_same() {
    let recorded = |seed, with| {
        survey_drive(&TrueRoad::random(seed, 8_000.0), &Drive::new(Instrument::Receiver, 15.0, with))
    };
    let (one, again, other) = (recorded(3, 1), recorded(3, 2), recorded(4, 1));
    assert!(lie_on_each_other(&one, &again).is_some());
    assert!(lie_on_each_other(&one, &other).is_none() && combine(&one, &other).is_none());
    assert!(lie_on_each_other(&one, &again.reversed()).is_none());
    let known = Road::from_heights("heights", 10.0, vec![500.0; 400]).expect("a road");
    assert!(lie_on_each_other(&one, &known).is_none() && lie_on_each_other(&known, &one).is_none());
    // A copy of a recording is no second recording, whatever its file is called, nor is a part of it.
    assert!(combine(&one, &one).is_none() && combine(&one, &one.part(100, 600).expect("5 km")).is_none());
    // Quite different heights all along are no second recording: where everything differs, nothing would
    // stand out.
    let feet: Vec<Sample> = Drive::new(Instrument::Recorder, 15.0, 5)
        .record(&TrueRoad::random(3, 8_000.0))
        .into_iter()
        .map(|sample| Sample { height_m: sample.height_m * 3.28, ..sample })
        .collect();
    let feet = survey_samples(&feet);
    assert!(lie_on_each_other(&one, &feet).is_some() && combine(&one, &feet).is_none());
    // A part lies on the whole, in either order.
    let part = again.part(100, 500).expect("4 km");
    assert!(lie_on_each_other(&one, &part).is_some() && lie_on_each_other(&part, &one).is_some());
}

/// A stretch known to only one of two recordings is known.
#[test]
fn a_gap_in_one_of_them_is_closed() {
    let truth = TrueRoad::random(6, 10_000.0);
    let whole = survey_drive(&truth, &Drive::new(Instrument::Receiver, 15.0, 1));
    let mut samples = Drive::new(Instrument::Recorder, 15.0, 2).record(&truth);
    samples.retain(|sample| !(4_000.0..4_800.0).contains(&sample.s_m));
    let holed = survey_samples(&samples);
    assert!(!holed.unassessed().is_empty() && whole.unassessed().is_empty());
    let both = combine(&whole, &holed).expect("one road");
    assert!(both.unassessed().is_empty(), "{:?}", both.unassessed());
    assert_eq!(both.segments().last().map(|segment| segment.to), Some(both.cells()));
}

/// The speed told for each cell of a descent: infinite where no hold is asked for, 0 where no speed is safe.
fn held_kmh(road: &Road, preset: Preset) -> Vec<f64> {
    let truck = Truck::new(preset.spec()).expect("a preset");
    let (plan, _) = analyse(road, &truck, &Day::USUAL, &mut |_| true).expect("not stopped");
    let mut held = vec![f64::INFINITY; road.cells()];
    for descent in &plan.descents {
        held[descent.from..descent.to].fill(0.0);
        for leg in &descent.legs {
            held[leg.from..leg.to].fill(leg.speed.kmh());
        }
    }
    held
}

/// Two recordings are no reason to go faster than the faster of both alone. That holds on the way back and on
/// a part as well.
#[test]
fn both_together_are_never_faster_than_each_alone() {
    let (mut compared, mut at_the_bound) = (0, 0);
    for seed in 1..=16 {
        let truth = TrueRoad::random(seed, 12_000.0);
        let drive =
            |instrument, spacing_m, seed| survey_drive(&truth, &Drive::new(instrument, spacing_m, seed));
        let (one, other) =
            (drive(Instrument::Receiver, 15.0, seed), drive(Instrument::Receiver, 11.0, seed + 500));
        let both = combine(&one, &other).expect("one road");
        let part = |road: &Road| road.part(100, 1_000).expect("9 km");
        let ways: [(Road, Road, Road); 3] = [
            (both.clone(), one.clone(), other.clone()),
            (both.reversed(), one.reversed(), other.reversed()),
            (part(&both), one.clone(), other.clone()),
        ];
        for (both, one, other) in &ways {
            for preset in [Preset::FiveAxle36, Preset::FiveAxle40] {
                let [told, a, b] = [both, one, other].map(|road| held_kmh(road, preset));
                let [on_one, on_other] =
                    [one, other].map(|it| lie_on_each_other(both, it).expect("one road"));
                let held = |ground: &solver::road::Match, held: &[f64], cell: usize| {
                    let ends = ground.place(cell).zip(ground.place(cell + 1));
                    ends.map(|(from, to)| held[((0.5 * (from + to)) as usize).min(held.len() - 1)])
                };
                for (cell, told) in told.iter().copied().enumerate().take(both.cells()) {
                    let alone = held(&on_one, &a, cell).zip(held(&on_other, &b, cell));
                    if let Some((a, b)) = alone.filter(|_| told.is_finite()) {
                        assert!(told <= a.max(b) + 1e-6, "{seed} {cell}: {told} of {a} and {b}");
                        compared += 1;
                        at_the_bound += usize::from(told >= a.max(b));
                    }
                }
            }
        }
    }
    println!("{at_the_bound} of {compared} cells at the faster speed of both");
    assert!(compared > 10_000 && at_the_bound > compared / 2, "{at_the_bound} of {compared}");
}

fn count_of(road: &Road) -> Option<usize> {
    let combined = |it: &&solver::road::Finding| matches!(it.kind, FindingKind::RecordingsCombined { .. });
    road.findings().iter().find(combined).map(|it| it.count)
}

/// A third recording is combined with the first two. Turned around twice, the road is the original, bit for
/// bit.
#[test]
fn three_recordings_are_one_road_either_way_round() {
    let truth = TrueRoad::random(9, 9_000.0);
    let drive = |seed| survey_drive(&truth, &Drive::new(Instrument::Receiver, 13.0, seed));
    let two = combine(&drive(1), &drive(2)).expect("one road");
    let three = combine(&two, &drive(3)).expect("one road");
    assert_eq!((count_of(&drive(1)), count_of(&two), count_of(&three)), (None, Some(2), Some(3)));
    assert!(format!("{:?}", three.reversed().reversed()) == format!("{three:?}"));
}

/// Places and limits of both recordings are on the combined road, each once.
#[test]
fn what_was_put_on_either_of_them_stays() {
    let truth = TrueRoad::random(11, 9_000.0);
    let drive = |seed| survey_drive(&truth, &Drive::new(Instrument::Recorder, 13.0, seed));
    let place = |name: &str, index| Place { name: name.to_owned(), kind: PlaceKind::Stop, index, off_m: 0.0 };
    let limit = |from, to, kmh| PostedLimit { from, to, kmh };
    let with = |road: &Road, places, limits| road.with_roadside(&Roadside { places, limits });
    let one = with(&drive(1), vec![place("Inn", 300), place("Mill", 500)], vec![limit(100, 200, 40.0)]);
    let other = with(&drive(2), vec![place("Inn", 302), place("Bridge", 400)], vec![limit(600, 700, 30.0)]);
    for both in [combine(&one, &other), combine(&other, &one)] {
        let both = both.expect("one road");
        let names: Vec<&str> = both.places().iter().map(|it| it.name.as_str()).collect();
        assert_eq!(names, ["Inn", "Bridge", "Mill"]);
        assert!(both.places().iter().zip([301, 400, 500]).all(|(it, at)| it.index.abs_diff(at) <= 6));
        let limits: Vec<f64> = both.limits().iter().map(|it| it.kmh).collect();
        assert_eq!(limits, [40.0, 30.0]);
    }
}
