//! Words of the road picture.

use super::say::{UNKNOWN, radius};
use crate::chart::{Bracket, GradeStep, Here, Hold, Lane, Reading, ReadoutCell, RoadPicture, SPEED_STEP};
use crate::format::{self, Units};
use crate::words::Spoken;
use solver::{HeatStep, Verdict};

/// A place no further ahead is here, m.
const HERE_M: f64 = 15.0;

impl Spoken {
    /// A value of a reading in the legend: a gear, a stage, a step of heat, speed or grade.
    #[must_use]
    pub fn step(&self, reading: Reading, value: u8, units: Units) -> String {
        let heat = |it: &HeatStep| self.heat_step(*it);
        let grade = |it: &GradeStep| self.grade_step(*it);
        match reading {
            Reading::Gear => value.to_string(),
            Reading::Stage => self.short_stage(value),
            Reading::Heat => HeatStep::ALL.get(usize::from(value)).map_or(UNKNOWN, heat).to_owned(),
            Reading::Speed => {
                let from = u32::from(value) * SPEED_STEP;
                format!("{from}–{} {}", from + SPEED_STEP, units.speed())
            }
            Reading::Grade => GradeStep::ALL.get(usize::from(value)).map_or(UNKNOWN, grade).to_owned(),
        }
    }

    /// A value of a reading on its chip, where a row of them has little room.
    #[must_use]
    pub fn short_step(&self, reading: Reading, value: u8, units: Units) -> String {
        match (reading, GradeStep::ALL.get(usize::from(value))) {
            (Reading::Grade, Some(step)) => match step {
                GradeStep::Down10 => "−10",
                GradeStep::Down8 => "−8",
                GradeStep::Down6 => "−6",
                GradeStep::Down4 => "−4",
                GradeStep::Down2 => "−2",
                GradeStep::Level => "0",
                GradeStep::Up2 => "+2",
                GradeStep::Up5 => "+5",
            }
            .to_owned(),
            (Reading::Speed, _) => (u32::from(value) * SPEED_STEP).to_string(),
            _ => self.step(reading, value, units),
        }
    }

    /// The stages from one grid point to another (crest and foot of a descent, or ends of a leg), weakest to
    /// strongest, as the stage lane shows them: “1–3”, or “2” where it does not change. A dash where none is
    /// told: no speed is safe there, or the road could not be assessed.
    #[must_use]
    pub fn stage_range(&self, picture: &RoadPicture, from: usize, to: usize) -> String {
        match picture.stages_in(from, to) {
            None => UNKNOWN.to_owned(),
            Some((low, high)) if low == high => self.short_stage(low),
            Some((low, high)) => format!("{}–{}", self.short_stage(low), self.short_stage(high)),
        }
    }

    /// The name of a descent's button: its number, from where to where, and the verdict.
    #[must_use]
    pub fn bar_name(&self, descent: &Bracket, [from_m, to_m]: [f64; 2], units: Units) -> String {
        let span = format::span(from_m, to_m, units);
        format!("{}, {span}, {}", self.descent(descent.number), self.verdict(descent.verdict))
    }

    /// A stage, short enough for its band.
    #[must_use]
    pub fn short_stage(&self, stage: u8) -> String {
        if stage == 0 { self.short_stage_off().to_owned() } else { stage.to_string() }
    }

    /// The limit line of the speed lane.
    #[must_use]
    pub fn speed_limit(&self, limit_mps: f64, units: Units) -> String {
        // Entered in whole steps of either unit: rounding down would show 49 for 50 mph.
        format!("{} {}", self.limit(), format::met_speed(limit_mps, units))
    }

    /// The limit line of the temperature lane.
    #[must_use]
    pub fn heat_limit(&self, limit_c: f64, units: Units) -> String {
        format!("{} {}", self.limit(), format::entered_temperature(limit_c, units))
    }

    /// A descent beside its number, the longest wording first.
    #[must_use]
    pub fn bar(
        &self,
        descent: &Bracket,
        [length_m, crest_m]: [f64; 2],
        steepest: Option<f64>,
        units: Units,
    ) -> Vec<String> {
        let crest = format::place(crest_m, units);
        let Some(steepest) = steepest else {
            return vec![crest, format::distance_number(crest_m, units)];
        };
        let length = format::length(length_m, units);
        let mean = format::grade(f64::from(descent.mean));
        vec![
            format!("{length} · {mean} · {} {}", self.steepest_word(), format::grade(steepest)),
            format!("{length} · {mean}"),
            crest,
        ]
    }

    /// What the cursor stands on, in one sentence.
    #[must_use]
    pub fn spoken(&self, here: &Here, units: Units) -> String {
        let at = format::place(here.at_m, units);
        if !here.assessed {
            return format!("{at}{}{}.", self.colon(), self.not_assessed());
        }
        let parts = [
            Some(at),
            here.grade.map(|it| format!("{} {}", self.reading(Reading::Grade), format::grade(it.grade))),
            here.gear.map(|it| self.gear_number(it)),
            here.stage.map(|it| self.numbered_stage(it)),
            here.speed.map(|it| format::hold_speed(it, units)),
            here.heat.map(|it| format!("{} {}", self.lane(Lane::Temperature), self.heat_step(it))),
        ];
        format!("{}.", parts.into_iter().flatten().collect::<Vec<_>>().join(", "))
    }

    /// Head of a cell of the readout.
    #[must_use]
    pub fn readout_head(&self, cell: ReadoutCell, here: &Here) -> String {
        match cell {
            // With the retarder off it is the engine alone that holds.
            ReadoutCell::Carried if here.stage == Some(0) => self.engine_carries().to_owned(),
            _ => self.cell_head(cell).to_owned(),
        }
    }

    /// Content of a cell of the readout.
    #[must_use]
    pub fn readout(&self, cell: ReadoutCell, here: &Here, units: Units) -> String {
        let temperature = |celsius: Option<f64>| or_unknown(celsius, |it| format::temperature(it, units));
        match cell {
            ReadoutCell::At => format::place(here.at_m, units),
            ReadoutCell::Grade => or_unknown(here.grade, |it| format::grade(it.grade)),
            ReadoutCell::Height => or_unknown(here.height_m, |it| format::height(it, units)),
            ReadoutCell::Gear => or_unknown(here.gear, |it| it.to_string()),
            ReadoutCell::Stage => or_unknown(here.stage, |it| self.short_stage(it)),
            ReadoutCell::Speed => or_unknown(here.speed, |it| format::hold_speed(it, units)),
            ReadoutCell::Engine => or_unknown(here.engine_speed, format::engine_speed),
            ReadoutCell::Carried => or_unknown(here.carried, format::margin),
            ReadoutCell::Brakes => temperature(here.temperature),
            ReadoutCell::IfStopped => temperature(here.after_stop),
        }
    }

    /// What a figure of the readout is meant over, and how far it may be off; empty where that is not known.
    #[must_use]
    pub fn readout_note(&self, cell: ReadoutCell, here: &Here, units: Units) -> String {
        match (cell, here.grade) {
            (ReadoutCell::Grade, Some(it)) => {
                let over = self.grade_over(&format::length(it.over_m, units));
                format!("{over}: {} ± {}", format::grade(it.grade), format::tenths(100.0 * it.plus_minus))
            }
            _ => String::new(),
        }
    }

    /// What lies about the cursor and what comes next.
    #[must_use]
    pub fn surroundings(&self, here: &Here, units: Units) -> String {
        let length = |metres: f64| format::length(metres, units);
        let unknown = (!here.assessed).then(|| self.nothing_said_here().to_owned());
        let descent = match (here.descent, here.next_descent) {
            (Some((number, to_foot)), _) => self.on_descent(number, &length(to_foot)),
            (None, Some((number, to_crest))) => self.descent_begins(number, &length(to_crest)),
            (None, None) => self.no_descent_ahead().to_owned(),
        };
        let bend = here.bend.map(|it| {
            let speed = format::hold_speed(f64::from(it.speed), units);
            self.bend(it.hairpin, self.side(it.left), &speed, &radius(f64::from(it.radius_m), units))
        });
        let place = here.next_place.as_ref().map(|(name, ahead)| {
            if *ahead < HERE_M { self.place_here(name) } else { self.place_ahead(name, &length(*ahead)) }
        });
        let parts = [unknown, Some(descent), bend, place];
        parts.into_iter().flatten().collect::<Vec<_>>().join(" ")
    }
}

// Named by its path, or its methods would hide those of the same name here.
impl crate::chart::Labels for Spoken {
    fn lane_title(&self, lane: Lane) -> &'static str {
        (*self).lane_title(lane)
    }
    fn bar(&self, descent: &Bracket, at_m: [f64; 2], steepest: Option<f64>, units: Units) -> Vec<String> {
        (*self).bar(descent, at_m, steepest, units)
    }
    fn change(&self, [from, to]: [u8; 2]) -> String {
        format!("{from} → {to}")
    }
    fn on_grade(&self, grade: f64) -> String {
        (*self).on_grade(&format::grade(grade))
    }
    fn brake_then(&self, leg: &Hold, units: Units) -> String {
        (*self).brake_then(&format::hold_speed(f64::from(leg.speed), units), &leg.gear.to_string())
    }
    fn verdict(&self, verdict: Verdict) -> &'static str {
        (**self).verdict(verdict)
    }
    fn place(&self, at_m: f64, units: Units) -> String {
        format::distance_number(at_m, units)
    }
    fn mile(&self) -> &'static str {
        (*self).mile()
    }
    fn short_stage(&self, stage: u8) -> String {
        (*self).short_stage(stage)
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        // The crate's own, which this page's would call again and again.
        (**self).heat_step(step)
    }
    fn not_assessed(&self) -> &'static str {
        (*self).not_assessed()
    }
    fn speed_limit(&self, limit_mps: f64, units: Units) -> String {
        (*self).speed_limit(limit_mps, units)
    }
    fn bend_caps(&self) -> &'static str {
        (*self).bend_caps()
    }
    fn heat_limit(&self, limit_c: f64, units: Units) -> String {
        (*self).heat_limit(limit_c, units)
    }
    fn after_stop(&self) -> &'static str {
        (*self).after_stop()
    }
    fn north(&self) -> &'static str {
        (*self).north()
    }
    fn ends(&self) -> [&'static str; 2] {
        [(*self).start(), (*self).end()]
    }
}

fn or_unknown<T>(value: Option<T>, text: impl Fn(T) -> String) -> String {
    value.map_or_else(|| UNKNOWN.to_owned(), text)
}

#[cfg(test)]
mod tests {
    use crate::chart::{Here, ReadoutCell, RoadPicture, sample};
    use crate::format::Units;
    use crate::words::words;

    #[test]
    fn stages_are_told_as_the_lane_shows_them() {
        let mut picture = sample::pass();
        let ends: Vec<_> = picture.descents.iter().map(|it| (it.from, it.to)).collect();
        let told =
            |picture: &RoadPicture, index: usize| words().stage_range(picture, ends[index].0, ends[index].1);
        assert_eq!(told(&picture, 0), "2");
        assert_eq!(told(&picture, 1), "1–3", "a steep stretch, and a gentler one");
        let mut stages = picture.stage.to_vec();
        stages[ends[0].0 + 3] = 0;
        picture.stage = stages.into();
        assert_eq!(told(&picture, 0), "2", "where the hill eases for a moment the lever rests");
        picture.stage = vec![0; picture.points()].into();
        assert_eq!(told(&picture, 0), "off");
        picture.stage = vec![solver::Lanes::BLANK; picture.points()].into();
        assert_eq!(told(&picture, 1), "–", "without a safe speed no stage is told");
    }

    #[test]
    fn with_the_retarder_off_the_engine_carries_and_uphill_nothing_does() {
        let mut picture = sample::pass();
        let descent = picture.descents[0].clone();
        let points = picture.points();
        picture.stage = vec![0; points].into();
        picture.carried = vec![1.0; points].into();
        let here = Here::at(&picture, (descent.from + descent.to) / 2);
        let head = |here: &Here| words().readout_head(ReadoutCell::Carried, here);
        assert_eq!(head(&here), "engine carries");
        assert_eq!(head(&Here { stage: Some(3), ..here }), "retarder carries");
        // The sample climbs before its first descent.
        let uphill = Here::at(&picture, descent.from / 2);
        assert_eq!(words().readout(ReadoutCell::Carried, &uphill, Units::Metric), "–");
    }
}
