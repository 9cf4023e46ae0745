//! Words of two roads side by side.

use crate::compare::{Figures, to_minute};
use crate::format::{self, Units};
use crate::words::Spoken;
use solver::motion::litres_of_fuel;
use solver::units::Joules;

impl Spoken {
    /// Why the road shown rather than the one kept, in figures; what counts most comes first. Nothing is summed up.
    #[must_use]
    pub fn why(&self, name: &str, [kept, shown]: &[Figures; 2], units: Units) -> String {
        let verdict = |it: &Figures| match &it.worst {
            Some(choice) => self.verdict_of(choice).to_owned(),
            None => self.short_no_descent().to_owned(),
        };
        let verdicts = [kept, shown].map(verdict);
        let hold = |it: &Figures| it.slowest_hold.map(|it| format::hold_speed(it, units));
        let heats = [kept, shown].map(|it| format::temperature(it.hottest_c, units));
        let fuels = [kept, shown].map(|it| format::fuel(litres_of_fuel(Joules(it.fuel_j)), units));
        let seconds = to_minute(shown.time_s) - to_minute(kept.time_s);
        // Of what is written, as in the table: so that both say the same.
        let apart = |[kept, shown]: &[String; 2]| format::apart(kept, shown).filter(|_| kept != shown);
        let more = |apart: &str| apart.starts_with('+');
        let bare = |apart: &str| apart.trim_start_matches(['+', '−']).to_owned();
        let parts = [
            (verdicts[0] != verdicts[1]).then(|| self.reason_verdict(&verdicts[0], &verdicts[1])),
            hold(kept).zip(hold(shown)).filter(|(a, b)| a != b).map(|(a, b)| self.reason_hold(&a, &b)),
            apart(&heats).map(|it| self.reason_heat(more(&it), &bare(&it))),
            (seconds != 0.0).then(|| self.reason_time(seconds > 0.0, &self.short_time(seconds.abs()))),
            apart(&fuels).map(|it| self.reason_fuel(more(&it), &bare(&it))),
        ];
        let parts: Vec<String> = parts.into_iter().flatten().collect();
        if parts.is_empty() {
            self.reason_none(name)
        } else {
            self.reason(name, &parts.join(self.semicolon()))
        }
    }

    /// What a rate is for, in its units: fuel, time.
    #[must_use]
    pub fn rate_units(&self, units: Units) -> [&'static str; 2] {
        match units {
            Units::Metric => self.rate_units_metric(),
            Units::Imperial => self.rate_units_imperial(),
        }
    }

    /// Head of the list of roads.
    #[must_use]
    pub fn ranked_head(&self, done: usize, count: usize) -> String {
        if done < count { self.ranked_so_far(done, count) } else { self.ranked_roads(count) }
    }
}
