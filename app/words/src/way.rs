//! Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and
//! other ways down.

use crate::down::{self, Told, Touched};
use crate::format::{self, Units};
use crate::say::{capital, plain, strong};
use crate::{Piece, Spoken};
use solver::plan::{Advice, Choice, Descent, Leg, Proof, Touch, WayDown};

impl Spoken {
    /// The sentence that decides, for the deciding one of `count` descents.
    #[must_use]
    pub fn decides(&self, descent: &Descent, count: usize, units: Units) -> Vec<Piece> {
        let first = descent.choice.advice().map(|advice| down::first(descent, advice));
        let mut pieces = self.decided_first(descent, count, first, units);
        if first.is_some() {
            for (change, leg) in down::changes(descent) {
                let by = capital(&self.by_place(change.how, &format::place(change.at.0, units)));
                pieces.push(plain(format!(". {by}{}", self.colon())));
                pieces.push(strong(self.leg(leg, units)));
            }
            pieces.push(plain("."));
        }
        pieces
    }

    /// The sentence as far as the crest: gear, stage and speed there, without the full stop. Where no speed is
    /// safe it is the whole sentence.
    #[must_use]
    pub fn decided_first(
        &self,
        descent: &Descent,
        count: usize,
        first: Option<Told>,
        units: Units,
    ) -> Vec<Piece> {
        let (number, crest) = (descent.number, format::place(descent.crest.0, units));
        let at_start = descent.from == 0;
        let Some((gear, stage, speed)) = first else {
            return match at_start {
                true => self.none_decided_at_start(number, count),
                false => self.none_decided(number, count, &crest),
            };
        };
        let (gear, stage, speed) = (self.gear(gear), self.stage(stage), format::hold_speed(speed.0, units));
        match at_start {
            true => self.decided_at_start(number, count, &gear, &stage, &speed),
            false => self.decided(number, count, &gear, &stage, &speed, &crest),
        }
    }

    /// “gear 4, 19 km/h”.
    #[must_use]
    pub fn leg(&self, leg: &Leg, units: Units) -> String {
        format!("{}, {}", self.gear(leg.gear), format::hold_speed(leg.speed.0, units))
    }

    /// “gear 5, stage 3, 38 km/h”.
    #[must_use]
    pub fn told(&self, (gear, stage, speed): Told, units: Units) -> String {
        format!("{}, {}, {}", self.gear(gear), self.stage(stage), format::hold_speed(speed.0, units))
    }

    /// How a descent is begun, and each change.
    #[must_use]
    pub fn gears_down(&self, descent: &Descent, advice: &Advice, units: Units) -> String {
        let mut told = self.told(down::first(descent, advice), units);
        for (change, leg) in down::changes(descent) {
            let by = self.by_place(change.how, &format::place(change.at.0, units));
            told += &format!("{}{by}{}{}", self.semicolon(), self.colon(), self.leg(leg, units));
        }
        told
    }

    /// One of all descents in road order: where it begins, gear, stage, speed.
    #[must_use]
    pub fn along(&self, descent: &Descent, units: Units) -> String {
        let crest = format::place(descent.crest.0, units);
        let how = match &descent.choice {
            Choice::Held(advice) => self.gears_down(descent, advice, units),
            Choice::NoSafeSpeed(_) => self.no_safe_speed().to_owned(),
        };
        format!("{crest}{}{how}", self.colon())
    }

    /// When to engage the gear, and what it was chosen for.
    #[must_use]
    pub fn chosen_for(&self, descent: &Descent, units: Units) -> String {
        let sustained = descent.sustained;
        let asks = self.asks(
            &format::grade(sustained.grade.0),
            &format::length(sustained.length.0, units),
            &format::place(sustained.from.0, units),
        );
        let engage = match &descent.choice {
            Choice::Held(_) if down::in_legs(descent) => self.engage_first(descent.from == 0).to_owned(),
            Choice::Held(_) => self.engage(descent.from == 0, &format::place(descent.foot.0, units)),
            Choice::NoSafeSpeed(_) => return self.ruled_out_by(&asks),
        };
        format!("{engage} {}", self.chosen(down::in_legs(descent), &asks))
    }

    /// Where the service brakes are asked for, and what cannot be ruled out: at most a few places.
    #[must_use]
    pub fn touched(&self, descent: &Descent, units: Units) -> Vec<String> {
        let Some(touched) = Touched::of(descent) else { return Vec::new() };
        let mut places: Vec<String> = touched.worst.iter().map(|it| self.touch(it, units)).collect();
        places.extend((touched.more > 0).then(|| self.and_more(touched.more)));
        let certain = (!places.is_empty()).then(|| self.brakes_at_places(touched.needed, &places.join(", ")));
        let doubt = touched.in_doubt.map(|it| self.in_doubt(&format::grade(it.0)));
        certain.into_iter().chain(doubt).collect()
    }

    /// All places where the service brakes are asked for, certain or in doubt.
    #[must_use]
    pub fn touches(&self, descent: &Descent, units: Units) -> Vec<String> {
        let held = descent.choice.advice().is_some_and(|it| it.snub.is_none());
        let all = descent.touches.iter().filter(|_| held);
        all.map(|it| self.touch(it, units) + if it.certain { "" } else { self.doubted() }).collect()
    }

    /// One such place: where, how steep, and by how much the brakes get warmer.
    #[must_use]
    pub fn touch(&self, touch: &Touch, units: Units) -> String {
        let span = format::span(touch.from.0, touch.to.0, units);
        format!(
            "{span} ({}, {})",
            format::grade(touch.grade.0),
            self.brakes_warmer(&format::warmer(touch.kelvin, units))
        )
    }

    /// The legs, each from where its gear is in to where the truck slows for the next, and what happens
    /// between them; nothing where there is one.
    #[must_use]
    pub fn legs(&self, descent: &Descent, step_m: f64, units: Units) -> Vec<String> {
        if !down::in_legs(descent) {
            return Vec::new();
        }
        let place = |index: usize| down::metres(index, step_m);
        let one = |leg: &Leg| {
            let span = format::span(place(leg.from), place(leg.slows_from), units);
            format!("{span}{}{}", self.colon(), self.told((leg.gear, leg.stage, leg.speed), units))
        };
        let between = self.between_legs().to_owned();
        descent.legs.iter().map(one).chain([between]).collect()
    }

    /// The way down that never touches the service brakes.
    #[must_use]
    pub fn untouched(&self, descent: &Descent, advice: &Advice, units: Units) -> String {
        // One gear whose own run gains nothing is such a way, whatever others there are.
        if !down::in_legs(descent) && advice.proof == Proof::Holds && advice.snub.is_none() {
            return self.same_choice().to_owned();
        }
        let none = || self.no_untouched().to_owned();
        descent.untouched.as_ref().map_or_else(none, |it| self.other_way(descent, advice, it, units))
    }

    /// The way down in one gear, where the advice changes gears.
    #[must_use]
    pub fn one_gear(&self, descent: &Descent, advice: &Advice, units: Units) -> Option<String> {
        let none = || format!("{}.", capital(self.no_safe_speed()));
        let told = |it: &WayDown| self.other_way(descent, advice, it, units);
        down::in_legs(descent).then(|| descent.one_gear.as_ref().map_or_else(none, told))
    }

    /// Another way, and the minutes between.
    #[must_use]
    pub fn other_way(&self, descent: &Descent, advice: &Advice, way: &WayDown, units: Units) -> String {
        if !down::in_legs(descent) && way.gear == advice.gear && way.speed == advice.speed {
            return self.same_choice().to_owned();
        }
        let told = capital(&self.told((way.gear, way.stage, way.speed), units));
        self.apart(&told, way.time.0 - advice.time.0)
    }
}
