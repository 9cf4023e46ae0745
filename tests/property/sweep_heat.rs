//! The heat told, held against the road as it was built and driven as told (`tests::true_heat`). Heights are
//! exact, so that no difference comes from the recording. Curves are left out.

use crate::sweep::{Planned, at_most, cases};
use std::sync::OnceLock;
use tests::cases::Case;
use tests::generate::{Hill, Instrument};
use tests::true_heat::heated;

/// Cases tried in CI; a quarter of them have exact heights.
const USUAL_CASES: u64 = 2_000;

/// The told heat may be below the true heat by this, K.
const NEAR_K: f64 = 20.0;

/// Largest warming by all touches together where the retarder is said to hold, K.
const ALL_TOUCHES_K: f64 = 60.0;

#[derive(Default)]
struct Sums {
    /// Descents that are held, those told too cool, and the worst of these, K.
    held: u32,
    cool: u32,
    worst_k: f64,
    /// Descents that the retarder is said to hold, and those with too much warming by touches.
    alone: u32,
    touched: u32,
    /// Descents in snubs, those told too cool, and those over the limit on the true road.
    snubs: u32,
    snubs_cool: u32,
    over: u32,
}

fn swept() -> &'static (Sums, bool) {
    static SWEPT: OnceLock<(Sums, bool)> = OnceLock::new();
    SWEPT.get_or_init(|| {
        let (count, usual) = cases(USUAL_CASES);
        let exact = |case: &Case| case.instrument == Instrument::Exact && case.hill != Hill::Random;
        let mut sums = Sums::default();
        for number in (0..count).filter(|number| exact(&Case::of(*number))) {
            sums.add(&Planned::of(number));
        }
        (sums, usual)
    })
}

impl Sums {
    fn add(&mut self, it: &Planned) {
        for descent in &it.plan.descents {
            let Some(advice) = descent.choice.advice() else { continue };
            let (road, legs) = (&it.truth.alignment, it.told(descent));
            let truth = heated(it.trip(), road, &legs, advice.snub, descent.brakes_at_crest);
            let more = truth.hottest - advice.hottest.0;
            let kelvin: f64 = descent.touches.iter().map(|touch| touch.kelvin).sum();
            let cool = u32::from(more > NEAR_K);
            self.over += u32::from(truth.after_stop > it.case.day.heat_limit_c);
            if advice.snub.is_some() {
                (self.snubs, self.snubs_cool) = (self.snubs + 1, self.snubs_cool + cool);
            } else {
                (self.held, self.cool) = (self.held + 1, self.cool + cool);
                self.worst_k = self.worst_k.max(more);
                if advice.verdict <= solver::Verdict::LittleInReserve {
                    self.alone += 1;
                    self.touched += u32::from(kelvin > ALL_TOUCHES_K);
                }
            }
            if cool > 0 {
                let (told, true_c, stop) = (advice.hottest.0, truth.hottest, truth.after_stop);
                println!(
                    "told {told:.0} °C, in truth {true_c:.0}, {stop:.0} after a stop, touches {kelvin:.0} K, {:?}, {:.0} km/h: {}",
                    advice.verdict,
                    advice.speed.kmh(),
                    it.case.words()
                );
            }
        }
    }
}

fn percent(part: u32, whole: u32) -> f64 {
    100.0 * f64::from(part) / f64::from(whole.max(1))
}

/// The run behind the told heat follows filtered heights, which have no stairs. The extra heat of the
/// recorded road is told beside it.
#[test]
fn the_heat_told_is_that_of_the_true_road() {
    let (sums, usual) = swept();
    let share = percent(sums.cool, sums.held);
    at_most(&format!("told 20 K too cool, % of {}", sums.held), share, 0.0, None, *usual);
    at_most("told too cool by, K", sums.worst_k, NEAR_K, None, *usual);
    let share = percent(sums.snubs_cool, sums.snubs);
    at_most(&format!("in snubs 20 K too cool, % of {}", sums.snubs), share, 0.0, KNOWN_SNUBS, *usual);
    let all = sums.held + sums.snubs;
    at_most(
        &format!("over the limit in truth, % of {all}"),
        percent(sums.over, all),
        0.0,
        KNOWN_OVER,
        *usual,
    );
}

/// DIFFERENCE: wanted none; three of 71 in snubs, by 29 to 36 K, down stairs.
const KNOWN_SNUBS: Option<f64> = Some(4.23);

/// DIFFERENCE: wanted none; two of 430, after one hard stop.
const KNOWN_OVER: Option<f64> = Some(0.48);

/// Where the retarder is said to hold, the told touches add up to no more than 60 K.
#[test]
fn touches_do_not_add_up_to_a_descent_on_the_brakes() {
    let (sums, usual) = swept();
    let share = percent(sums.touched, sums.alone);
    at_most(&format!("touches above 60 K, % of {}", sums.alone), share, 0.0, KNOWN_TOUCHED, *usual);
}

/// DIFFERENCE: wanted none; 0.4 %. The plan counts the cooling between touches towards its 60 K; this test
/// does not.
const KNOWN_TOUCHED: Option<f64> = Some(0.39);
