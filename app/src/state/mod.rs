//! The page's state: signals, and what the person does to them.
//!
//! `Work` (in `work`) is the one place that asks the worker. Views read signals and call the
//! functions here. What has no consequence they set themselves: a message put away, a place
//! looked at, the order of files before they are joined.

mod alike;
mod aside;
mod asked;
mod built_in;
mod entered;
mod fields;
mod former;
mod kept;
mod leave;
mod link;
mod markers;
mod opening;
mod project;
mod rank;
mod result;
mod ride;
mod roadside;
mod shelf;
mod show;
mod study;
mod trucks;
mod two;
mod work;
mod worth;

pub(crate) use alike::{Lie, Meeting};
pub(crate) use asked::{Leg, Origin};
pub(crate) use fields::FieldState;
pub(crate) use link::{Carried, Written};
pub(crate) use rank::Ranked;
pub(crate) use result::Worked;
pub(crate) use ride::Ride;
pub(crate) use roadside::{End, MOST_THINGS, Thing, Things};
pub(crate) use study::MeasuredSignal;
pub(crate) use trucks::Trucks;
pub(crate) use two::Beside;
pub(crate) use worth::WorthTold;

use crate::browser::offline::{self, Stored};
use crate::browser::theme::Theme;
use crate::browser::{download, focus, theme, timer::Timer};
use crate::chart::RoadPicture;
use crate::entries::{Entries, Field};
use crate::format::Units;
use crate::trouble::WorkTrouble;
use crate::words::words;
use asked::Asked;
use kept::Kept;
use leptos::prelude::*;
use project::InHand;
use rank::Pool;
use ride::Rides;
use solver::day::Day;
use solver::study::{Study, Sureness};
use solver::truck::{Preset, TruckSpec};
use std::sync::Arc;
use study::StudyWork;
use two::ToCome;
use work::{Followers, Work};
use workers::message::{CourseFacts, Phase};
use worth::Worths;

/// Quiet time after the last key before the road is worked out again, ms.
const PAUSE_MS: i32 = 150;

/// What the worker is at, and how far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Progress {
    /// `None` while the worker itself still loads.
    pub(crate) phase: Option<Phase>,
    /// 0 to 1 within the phase.
    pub(crate) share: f32,
}

/// A file that holds several roads, until one is chosen.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Choice {
    /// Name of the file.
    pub(crate) file: String,
    /// Its tracks and routes.
    pub(crate) courses: Vec<CourseFacts>,
}

/// Signals of the page. Lives as long as the page does.
pub(crate) struct Signals {
    /// Units shown and typed.
    pub(crate) units: RwSignal<Units>,
    /// Theme chosen.
    pub(crate) theme: RwSignal<Theme>,
    /// Entries taken.
    pub(crate) entries: RwSignal<Entries>,
    fields: Vec<FieldState>,
    /// The picture of the last result: a moment ahead of `worked`, see `work::show_in_turn`.
    pub(crate) picture: RwSignal<Option<Arc<RoadPicture>>>,
    /// The last result.
    pub(crate) worked: RwSignal<Option<Arc<Worked>>>,
    /// The result that the list of descents shows: a moment behind `worked`.
    pub(crate) listed: RwSignal<Option<Arc<Worked>>>,
    /// The question which track of a file is meant.
    pub(crate) choice: RwSignal<Option<Choice>>,
    /// Files that are being put in order before they are joined; empty when none are.
    pub(crate) legs: RwSignal<Vec<Leg>, LocalStorage>,
    /// Which of those are known to be of the same road.
    grounds: RwSignal<alike::Grounds, LocalStorage>,
    /// A road that was opened and lies on one before, until it is decided what they are to be.
    pub(crate) meeting: RwSignal<Option<Meeting>, LocalStorage>,
    /// Stretch of the road to be looked at, m from the start: set by whoever names a place.
    pub(crate) look_at: RwSignal<Option<(f64, f64)>>,
    /// What goes on.
    pub(crate) progress: RwSignal<Option<Progress>>,
    /// What went wrong last.
    pub(crate) trouble: RwSignal<Option<WorkTrouble>>,
    /// Whether the result belongs to former entries.
    pub(crate) stale: RwSignal<bool>,
    /// The descent looked at, by its number.
    pub(crate) chosen_descent: RwSignal<Option<usize>>,
    /// Whether a file hovers over the page.
    pub(crate) hovering: RwSignal<bool>,
    /// What the browser keeps of the page.
    pub(crate) stored: RwSignal<Stored>,
    /// Trucks of one's own.
    pub(crate) trucks: RwSignal<Trucks>,
    /// A link that was opened, until it is decided.
    pub(crate) carried: RwSignal<Option<Carried>>,
    /// The link made last.
    pub(crate) link: RwSignal<Option<Written>>,
    /// Places and limits on the road.
    pub(crate) things: RwSignal<Things>,
    /// What is typed for the marker at the start of the road.
    pub(crate) marker_text: RwSignal<String>,
    /// Markers count down.
    pub(crate) counts_down: RwSignal<bool>,
    /// Large targets, for hands in gloves.
    pub(crate) gloves: RwSignal<bool>,
    /// What follows from the plan shown, once it is worked out.
    pub(crate) study: RwSignal<Option<Arc<Study>>>,
    /// How sure the plan shown is, once it is worked out.
    pub(crate) sureness: RwSignal<Option<Arc<Sureness>>>,
    /// How far that got, 0 to 1.
    pub(crate) studying: RwSignal<Option<f32>>,
    /// Rides along the plan shown, as far as they were asked for.
    pub(crate) rides: RwSignal<Rides>,
    /// What wrong entries cost.
    worths: Worths,
    /// What was measured last.
    pub(crate) measured: RwSignal<MeasuredSignal>,
    /// A road kept beside the one shown.
    pub(crate) other: RwSignal<Option<Beside>, LocalStorage>,
    /// Rates for fuel and time, as typed.
    pub(crate) rates: RwSignal<[String; 2]>,
    /// Many roads; empty where none are compared.
    pub(crate) ranked: RwSignal<Vec<Ranked>, LocalStorage>,
    /// The truck and the day that those are for.
    pub(crate) ranked_for: RwSignal<Option<(TruckSpec, Day)>>,
    looking: StoredValue<alike::Looking, LocalStorage>,
    pool: StoredValue<Pool, LocalStorage>,
    other_to_come: StoredValue<ToCome, LocalStorage>,
    worked_for: StoredValue<Option<Asked>, LocalStorage>,
    work: StoredValue<Work, LocalStorage>,
    study_work: StoredValue<StudyWork, LocalStorage>,
    project: StoredValue<Option<InHand>, LocalStorage>,
    pause: StoredValue<Option<Timer>, LocalStorage>,
    rest: StoredValue<Option<Timer>, LocalStorage>,
}

/// The page's state: a handle that is passed around.
pub(crate) type State = &'static Signals;

/// Makes the state from what this machine remembers, starts the worker and fetches the demo.
pub(crate) fn start() -> State {
    let kept = kept::recall();
    let fields = Field::all().map(|field| FieldState {
        text: RwSignal::new(kept.entries.text(field, kept.units)),
        problem: RwSignal::new(None),
    });
    // Leaked on purpose: signals that callbacks of timer and worker read must never go away.
    let state: State = Box::leak(Box::new(Signals {
        units: RwSignal::new(kept.units),
        theme: RwSignal::new(kept.theme),
        fields: fields.collect(),
        entries: RwSignal::new(kept.entries),
        picture: RwSignal::new(None),
        worked: RwSignal::new(None),
        listed: RwSignal::new(None),
        choice: RwSignal::new(None),
        legs: RwSignal::new_local(Vec::new()),
        grounds: RwSignal::new_local(Vec::new()),
        meeting: RwSignal::new_local(None),
        look_at: RwSignal::new(None),
        progress: RwSignal::new(None),
        trouble: RwSignal::new(None),
        stale: RwSignal::new(false),
        chosen_descent: RwSignal::new(None),
        hovering: RwSignal::new(false),
        stored: RwSignal::new(Stored::Nothing),
        trucks: RwSignal::new(Trucks { kept: kept.trucks, before: None }),
        carried: RwSignal::new(None),
        link: RwSignal::new(None),
        things: RwSignal::new(Things::default()),
        marker_text: RwSignal::new(String::new()),
        counts_down: RwSignal::new(false),
        gloves: RwSignal::new(kept::gloves()),
        study: RwSignal::new(None),
        sureness: RwSignal::new(None),
        studying: RwSignal::new(None),
        rides: RwSignal::new(Vec::new()),
        worths: Worths::new(),
        measured: RwSignal::new(None),
        other: RwSignal::new_local(None),
        rates: RwSignal::new(two::recall_rates()),
        ranked: RwSignal::new_local(Vec::new()),
        ranked_for: RwSignal::new(None),
        looking: StoredValue::new_local(alike::Looking::default()),
        pool: StoredValue::new_local(Pool::default()),
        other_to_come: StoredValue::new_local(ToCome::default()),
        worked_for: StoredValue::new_local(None),
        work: StoredValue::new_local(Work::default()),
        study_work: StoredValue::new_local(StudyWork::default()),
        project: StoredValue::new_local(None),
        pause: StoredValue::new_local(None),
        rest: StoredValue::new_local(None),
    }));
    theme::show(kept.theme);
    theme::show_gloves(kept::gloves());
    theme::watch(move || theme::show(state.theme.get_untracked()));
    offline::watch(move |stored| state.stored.set(stored));
    focus::watch(move || state.leave());
    work::start(state, Followers { shown: show::show, road: study::take_road });
    two::start(state);
    alike::start(state);
    shelf::open(state);
    link::look(state);
    state
}

impl Signals {
    /// Shows other units; what could not be read is looked at again in them.
    pub(crate) fn set_units(&'static self, units: Units) {
        self.units.set(units);
        for field in Field::all() {
            if self.field(field).problem.get_untracked().is_some() {
                self.read_field(field);
            }
        }
        self.fill_fields();
        self.keep();
        self.work_out_later();
    }

    /// Shows another theme.
    pub(crate) fn set_theme(&self, theme: Theme) {
        self.theme.set(theme);
        theme::show(theme);
        self.keep();
    }

    /// Takes a preset.
    pub(crate) fn take_preset(&'static self, preset: Preset) {
        self.entries.update(|entries| entries.take_preset(preset));
        let truck = preset.spec();
        for field in Field::all() {
            let of_truck = match field {
                Field::Number(entry) => truck.get(entry).is_some(),
                Field::Gears | Field::Stages | Field::Table => true,
            };
            if of_truck {
                self.field(field).problem.set(None);
            }
        }
        self.fill_fields();
        self.keep();
        self.work_out_later();
    }

    /// Changes the day's choices, or takes the usual day.
    pub(crate) fn change_day(&'static self, change: impl FnOnce(&mut solver::day::Day)) {
        self.entries.update(|entries| change(&mut entries.day));
        self.fill_fields();
        self.keep();
        self.work_out_later();
    }

    /// Takes the usual day; what was typed for it is dropped.
    pub(crate) fn take_usual_day(&'static self) {
        for limit in solver::limits::ALL {
            if solver::day::Day::USUAL.get(limit.entry).is_some() {
                self.field(Field::Number(limit.entry)).problem.set(None);
            }
        }
        self.change_day(|day| *day = solver::day::Day::USUAL);
    }

    /// Asks for the GPX file with crests and changes.
    pub(crate) fn export(&'static self) {
        study::export(self);
    }

    fn save_export(&self, text: &str) {
        let road = self.worked.with_untracked(|worked| worked.as_ref().map(|it| it.road.name.clone()));
        let name = words().export_name(&road.unwrap_or_default());
        if !download::save(&name, "application/gpx+xml", text) {
            self.trouble.set(Some(WorkTrouble::CannotExport));
        }
    }

    fn work_out_later(&'static self) {
        self.stale.set(work::differs(self));
        self.pause.set_value(Timer::after(PAUSE_MS, move || work::work_out(self)));
    }

    /// Shows targets of another size.
    pub(crate) fn set_gloves(&self, gloves: bool) {
        self.gloves.set(gloves);
        theme::show_gloves(gloves);
        kept::keep_gloves(gloves);
    }

    fn keep(&self) {
        let trucks = self.trucks.get_untracked().kept;
        kept::keep(Kept {
            units: self.units.get_untracked(),
            theme: self.theme.get_untracked(),
            entries: self.entries.get_untracked(),
            trucks,
        });
    }
}
