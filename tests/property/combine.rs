//! Two recordings of one road: recognised, combined to less error than either has, and where they
//! disagree it is said and the steeper is used.

use solver::road::{FindingKind, Road, combine, lie_on_each_other};
use tests::generate::{Drive, Instrument, Sample, TrueRoad};
use tests::truth::{survey_drive, survey_samples};

const SEEDS: std::ops::RangeInclusive<u64> = 1..=24;
const LENGTHS_M: [f64; 3] = [200.0, 500.0, 1_000.0];

/// Sums of the squared errors of rises over each length, and how many there are.
#[derive(Clone, Copy, Default)]
struct Errors {
    squares: [f64; 3],
    count: [f64; 3],
    /// How many lie within twice the road's own doubt.
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

/// Combines two recordings of each road: errors of the first, of the second, of both together.
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
        // A recorder beside a receiver gains nothing by it, and loses up to 0.3 m: what each is worth is an
        // estimate, and where the two disagree the steeper is used.
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

/// One of two recordings has a pitch that the other has not: said at its place, and the pitch is kept.
/// Where none is planted, nothing is said.
#[test]
fn a_pitch_in_one_of_them_is_told_and_kept() {
    let (mut told, mut false_ones) = (0, 0);
    for seed in SEEDS {
        let truth = TrueRoad::random(seed, 12_000.0);
        let plain = Drive::new(Instrument::Recorder, 15.0, seed).record(&truth);
        let mut planted: Vec<Sample> = Drive::new(Instrument::Recorder, 11.0, seed + 500).record(&truth);
        let (one, other) = (survey_samples(&plain), survey_samples(&planted));
        false_ones += disagreements(&combine(&one, &other).expect("one road")).len();
        // 300 m fall by 8 points more, 900 m behind it climb back: within what a road does.
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
    // A part lies on the whole, either way round.
    let part = again.part(100, 500).expect("4 km");
    assert!(lie_on_each_other(&one, &part).is_some() && lie_on_each_other(&part, &one).is_some());
}

/// What one recording does not know and the other does is known.
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
