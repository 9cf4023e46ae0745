//! The screen of forces: drag the hill, the mass, the stage, and see the crossing move.

use super::desk::Class;
use crate::browser::frame::{hold_pointer, place_on};
use crate::chart::forces::{Forces, SIZE};
use crate::format::{self, Units};
use crate::tell::say::capital;
use crate::words::words;
use leptos::ev::PointerEvent;
use leptos::html::Div;
use leptos::prelude::*;
use solver::day::Day;
use solver::limits::{self, Entry};
use solver::motion::{Answer, Trip};
use solver::truck::{Stage, Truck};
use solver::units::{Grade, Metres};

/// Grades that can be asked for, % downhill.
const GRADES: (f64, f64) = (1.0, 14.0);
/// Masses are asked for in these steps, kg.
const MASS_STEP_KG: f64 = 500.0;

/// What is drawn, made anew when something is changed.
#[derive(Clone, PartialEq)]
struct Asked {
    truck: Truck,
    day: Day,
    stage: Stage,
    height: f64,
    downgrade: f64,
    units: Units,
}

impl Asked {
    fn with<T>(&self, tell: impl FnOnce(&Forces<'_>) -> T) -> T {
        let trip = Trip { truck: &self.truck, day: &self.day };
        let grade = Grade(-self.downgrade / 100.0);
        tell(&Forces { trip, height: Metres(self.height), grade, stage: self.stage, units: self.units })
    }
}

/// The screen of forces.
pub(super) fn view(class: Class) -> AnyView {
    let c = words();
    let frame = NodeRef::<Div>::new();
    let asked = Memo::new(move |_| asked(class));
    let drawing = move || {
        let text = asked.with(|it| it.as_ref().map(|it| it.with(|forces| forces.draw().into_string())));
        text.unwrap_or_default()
    };
    let drag = move |event: &PointerEvent| {
        let Some(element) = frame.get_untracked() else { return };
        let (x, y) = place_on(&element, f64::from(event.client_x()), f64::from(event.client_y()));
        let scale = SIZE.0 / f64::from(element.client_width()).max(1.0);
        let grade = asked.with_untracked(|it| {
            it.as_ref().map(|it| it.with(|forces| forces.grade_at(x * scale, y * scale)))
        });
        if let Some(grade) = grade {
            let percent = (-grade * 1_000.0).round() / 10.0;
            class.downgrade.set(percent.clamp(GRADES.0, GRADES.1));
        }
    };
    view! {
        <section class="forces" data-testid="forces-screen">
            <p class="axis-name">{c.holding_axis()}</p>
            <div
                class="force-picture"
                node_ref=frame
                role="img"
                aria-label=c.forces_about()
                data-testid="force-picture"
                on:pointerdown=move |event: PointerEvent| {
                    hold_pointer(&event);
                    drag(&event);
                }
                on:pointermove=move |event: PointerEvent| {
                    if event.buttons() != 0 {
                        drag(&event);
                    }
                }
            >
                <svg viewBox=format!("0 0 {} {}", SIZE.0, SIZE.1) aria-hidden="true" inner_html=drawing></svg>
            </div>
            {controls(class, asked)}
            <div class="force-answers" role="status" data-testid="force-answers">
                {move || asked.with(|it| it.as_ref().map(lines)).unwrap_or_default()}
            </div>
        </section>
    }
    .into_any()
}

/// What is asked; `None` while the truck entered is none.
fn asked(class: Class) -> Option<Asked> {
    let state = class.state;
    let entries = state.entered.entries.get();
    let mut spec = entries.truck;
    if let Some(mass) = class.mass_kg.get() {
        spec.drive_axle_mass_kg *= mass / spec.gross_mass_kg;
        spec.gross_mass_kg = mass;
    }
    let truck = Truck::new(spec).ok()?;
    let full = truck.full_stage();
    let wanted = class.stage.get().and_then(|stage| truck.stages().nth(usize::from(stage)));
    let height = state.shown.worked.with(|worked| {
        let deciding =
            worked.as_ref().and_then(|it| it.plan.deciding().map(|descent| descent.sustained.height.0));
        deciding.unwrap_or(0.0)
    });
    Some(Asked {
        stage: wanted.unwrap_or(full),
        truck,
        day: entries.day,
        height,
        downgrade: class.downgrade.get(),
        units: state.units.get(),
    })
}

/// The gear that settles fastest and the next one: what both do; and that this is no advice, because
/// at a crossing all that holds is used up.
fn lines(asked: &Asked) -> Vec<AnyView> {
    let w = words();
    let units = asked.units;
    let answers = asked.with(|forces| forces.answers());
    let settles = |answer: &Answer| matches!(answer, Answer::Settles { .. });
    let Some(last) = answers.iter().rposition(|(_, answer)| settles(answer)) else {
        return vec![view! { <p>{words().none_settles()}</p> }.into_any()];
    };
    let line = |at: usize| {
        let (gear, answer) = answers.get(at)?;
        let (first, second) = w.answer(answer, units);
        let text = second.map_or(first.clone(), |second| format!("{first}, {second}"));
        Some(view! { <p><b>{capital(&w.gear(*gear))}</b>": "{text}</p> }.into_any())
    };
    let sure = {
        // On a day on which no stage is recommended none is named here either.
        let kept = asked.day.withheld().is_none().then(|| asked.with(|forces| forces.kept()));
        let kept = kept.map(|kept| {
            let kept = kept.map(|(gear, speed)| (w.gear(gear), format::hold_speed(speed.0, units)));
            words().class_reserve(&format::margin(asked.day.reserve), kept)
        });
        view! {
            <p class="reserve" data-testid="reserve">
                {words().nothing_in_reserve()}" "{kept.map(|kept| view! { <b>{kept}</b> })}
            </p>
        }
    };
    [line(last), line(last + 1), Some(sure.into_any())].into_iter().flatten().collect()
}

fn controls(class: Class, asked: Memo<Option<Asked>>) -> AnyView {
    let c = words();
    let units = move || class.state.units.get();
    let mass = move || asked.with(|it| it.as_ref().map_or(0.0, |it| it.truck.spec().gross_mass_kg));
    let full = move || asked.with(|it| it.as_ref().map_or(0, |it| it.truck.full_stage().number()));
    let stage = move || asked.with(|it| it.as_ref().map_or(0, |it| it.stage.number()));
    let stage_text =
        move || asked.with(|it| it.as_ref().map_or_else(String::new, |it| words().stage(it.stage)));
    let limit = limits::of(Entry::GrossMass);
    let entered = move || class.state.entered.entries.with(|it| it.truck.gross_mass_kg);
    let lightest = move || limit.min.max((0.3 * entered() / MASS_STEP_KG).round() * MASS_STEP_KG);
    let heaviest = move || limit.max.min((1.3 * entered() / MASS_STEP_KG).round() * MASS_STEP_KG);
    view! {
        <div class="force-controls">
            {slider("grade", c.grade_label(), Ends::fixed(GRADES.0, GRADES.1, 0.1),
                Signal::derive(move || class.downgrade.get()),
                Signal::derive(move || format::grade(-class.downgrade.get() / 100.0)),
                move |it| class.downgrade.set(it))}
            {slider("mass", c.mass_label(), Ends::moving(lightest, heaviest, MASS_STEP_KG),
                Signal::derive(mass),
                Signal::derive(move || format::mass(mass(), units())),
                move |it| class.mass_kg.set(Some(it)))}
            {slider("stage", c.stage_label(), Ends::moving(|| 0.0, move || f64::from(full()), 1.0),
                Signal::derive(move || f64::from(stage())),
                Signal::derive(stage_text),
                move |it| class.stage.set(Some(it.clamp(0.0, 255.0) as u8)))}
        </div>
    }
    .into_any()
}

/// Ends and step of a slider.
struct Ends {
    low: Signal<f64>,
    high: Signal<f64>,
    step: f64,
}

impl Ends {
    fn fixed(low: f64, high: f64, step: f64) -> Self {
        Self::moving(move || low, move || high, step)
    }

    fn moving(
        low: impl Fn() -> f64 + Send + Sync + 'static,
        high: impl Fn() -> f64 + Send + Sync + 'static,
        step: f64,
    ) -> Self {
        Self { low: Signal::derive(low), high: Signal::derive(high), step }
    }
}

fn slider(
    key: &'static str,
    label: &'static str,
    ends: Ends,
    value: Signal<f64>,
    text: Signal<String>,
    take: impl Fn(f64) + 'static,
) -> AnyView {
    let Ends { low, high, step } = ends;
    view! {
        <label class="slider">
            <span>{label}</span>
            <input
                type="range"
                data-testid=format!("slide-{key}")
                min=move || low.get().to_string()
                max=move || high.get().to_string()
                step=step.to_string()
                aria-valuetext=move || text.get()
                prop:value=move || value.get().to_string()
                on:input=move |event| {
                    if let Ok(value) = event_target_value(&event).parse() {
                        take(value);
                    }
                }
            />
            <output data-testid=format!("shown-{key}")>{move || text.get()}</output>
        </label>
    }
    .into_any()
}
