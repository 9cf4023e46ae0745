//! The descents: as a row of cards below the picture, and as a table of all.

use super::chart::Look;
use super::choice::choice;
use super::square::{gear_square, stage_square};
use super::verdict::chip;
use crate::format::{self, Units};
use crate::state::{State, View, Worked};
use crate::words::words;
use ::words::down;
use leptos::prelude::*;
use solver::plan::{Choice, Descent};
use std::sync::Arc;

/// How the descents are ordered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Order {
    /// The hardest first.
    Hardest,
    /// As they come.
    Road,
}

fn ordered(worked: &Worked, order: Order) -> Vec<&Descent> {
    match order {
        Order::Hardest => worked.plan.worst_first(),
        Order::Road => worked.plan.descents.iter().collect(),
    }
}

/// As many cards are seen at once at most; with more the hardest stand first.
const SEEN: usize = 4;

/// The row below the picture: a card a descent, what the road comes to, and the way to the card for the cab.
pub(super) fn rail(state: State, look: Look) -> AnyView {
    let w = words();
    let hand = Memo::new(move |_| state.shown.chosen_descent.get());
    let cards = move || {
        let units = state.units.get();
        state.shown.listed.get().map(|worked| {
            let few = worked.plan.descents.len() <= SEEN;
            let order = if few { Order::Road } else { Order::Hardest };
            let cards = ordered(&worked, order).into_iter().map(|it| card(state, look, it, hand, units));
            cards.collect_view()
        })
    };
    let totals = move || {
        let units = state.units.get();
        state.shown.listed.get().map(|worked| {
            let totals = &worked.plan.totals;
            let many = worked.plan.descents.len() > SEEN;
            view! {
                <b>{w.time(totals.time.0)}</b>
                <span>{if many { w.worst_first().to_owned() } else { format!("↓ {}", w.fall(totals, units)) }}</span>
            }
        })
    };
    view! {
        <div class="rail" hidden=move || state.shown.listed.with(Option::is_none)>
            <ol class="rail-cards" tabindex="-1">{cards}</ol>
            <p class="rail-totals">{totals}</p>
            <a class="button rail-card" href="#card" data-testid="to-card">{w.cab_card()}</a>
        </div>
    }
    .into_any()
}

fn card(state: State, look: Look, descent: &Descent, hand: Memo<Option<usize>>, units: Units) -> AnyView {
    let w = words();
    let number = descent.number;
    let how = match &descent.choice {
        Choice::Held(advice) => {
            let speed = |speed: f64| format::hold_speed(speed, units);
            if down::in_legs(descent) {
                let last = descent.legs.len() - 1;
                let leg = |(index, leg): (usize, &solver::plan::Leg)| {
                    let number = format::hold_number(leg.speed.0, units);
                    let text = if index == last { speed(leg.speed.0) } else { number };
                    view! { {gear_square(look, leg.gear)} <b>{text}</b> }
                };
                descent.legs.iter().enumerate().map(leg).collect_view().into_any()
            } else {
                let (gear, stage, hold) = down::first(descent, advice);
                view! {
                    {gear_square(look, gear)}
                    {stage_square(look, stage, descent.from, descent.to)}
                    <b>{speed(hold.0)}</b>
                }
                .into_any()
            }
        }
        Choice::NoSafeSpeed(_) => view! { <b>{w.no_safe_speed()}</b> }.into_any(),
    };
    let held = descent.choice.verdict() == solver::plan::Verdict::RetarderHolds;
    view! {
        <li>
            <button
                type="button"
                class="stop"
                class:in-hand=move || hand.get() == Some(number)
                class:braked=!held
                data-testid=format!("stop-{number}")
                aria-pressed=move || if hand.get() == Some(number) { "true" } else { "false" }
                on:click=move |_| state.shown.chosen_descent.set(Some(number))
            >
                <span class="unseen">{format!("{}{}{}", w.descent(number), w.colon(), w.along(descent, units))}</span>
                <span class="disc" aria-hidden="true">{number}</span>
                <span class="where" aria-hidden="true">
                    <span>{format::span(descent.crest.0, descent.foot.0, units)}</span>
                    <span>{format::length(descent.foot.0 - descent.crest.0, units)}</span>
                </span>
                <span class="do" aria-hidden="true">{how}</span>
            </button>
        </li>
    }
    .into_any()
}

/// The table of all descents.
pub(super) fn descents(state: State) -> AnyView {
    let w = words();
    let order = RwSignal::new(Order::Hardest);
    let orders = vec![(Order::Hardest, "worst", w.worst_first()), (Order::Road, "road", w.road_order())];
    let content = move || {
        let units = state.units.get();
        let order = order.get();
        state.shown.listed.get().map(|worked| list(state, &worked, order, units))
    };
    let head =
        move || state.shown.listed.with(|it| it.as_ref().map(|it| w.descents_head(it.plan.descents.len())));
    let few = move || state.shown.listed.with(|it| it.as_ref().is_none_or(|it| it.plan.descents.len() < 2));
    view! {
        <section class="card descents" id="list" aria-label=w.descents_section()>
            <div class="section-head">
                <h2>{head}</h2>
                <div hidden=few>
                    {choice(w.order(), "order", orders, move || order.get(), move |it| order.set(it))}
                </div>
            </div>
            {content}
        </section>
    }
    .into_any()
}

fn list(state: State, worked: &Arc<Worked>, order: Order, units: Units) -> AnyView {
    let w = words();
    let heads = w.columns().into_iter().map(|head| view! { <span>{head}</span> });
    let rows = ordered(worked, order).into_iter().map(|descent| row(state, descent, units));
    view! {
        <div class="heads" aria-hidden="true">{heads.collect_view()}</div>
        <ol class="rows">{rows.collect_view()}</ol>
        <p class="totals" data-testid="totals">{w.totals(&worked.plan.totals, units)}</p>
    }
    .into_any()
}

/// One descent; it opens the road there.
fn row(state: State, descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let number = descent.number;
    let figures = figures(descent, units);
    let legs =
        descent.choice.advice().filter(|_| down::in_legs(descent)).map(|it| w.gears_down(descent, it, units));
    view! {
        <li class="descent" data-testid="descent-row">
            <div class="row">
                <h3>
                    <a
                        href=format!("#{}", View::Road.key())
                        data-testid=format!("descent-{number}")
                        aria-label=w.details_of(number)
                        on:click=move |_| state.look_at_descent(number)
                    >
                        <span class="word">{w.descent(number)}</span>
                    </a>
                </h3>
                <dl>{figures}</dl>
                {chip(&descent.choice)}
                {legs.map(|legs| view! { <p class="in-legs">{legs}</p> })}
            </div>
        </li>
    }
    .into_any()
}

fn figures(descent: &Descent, units: Units) -> Vec<AnyView> {
    let dash = || "–".to_owned();
    let (gear, stage, hold, heat) = match &descent.choice {
        Choice::Held(advice) => {
            let (gear, stage, speed) = down::slowest(descent, advice);
            (
                gear.number().to_string(),
                words().short_stage(stage.number()),
                format::hold_speed(speed.0, units),
                format::temperature(advice.hottest_after_stop.0, units),
            )
        }
        Choice::NoSafeSpeed(_) => (dash(), dash(), dash(), dash()),
    };
    let values = [
        format::distance(descent.crest.0, units),
        format::length(descent.foot.0 - descent.crest.0, units),
        format::height(descent.drop.0, units),
        format::grade(descent.mean.0),
        format::grade(descent.sustained.grade.0),
        gear,
        stage,
        hold,
        heat,
    ];
    let labels = words().columns().into_iter().skip(1);
    let keys = ["from", "length", "drop", "mean", "asked", "gear", "stage", "hold", "heat"];
    let figure = |((label, value), key): ((&'static str, String), &'static str)| {
        view! { <div class=key><dt>{label}</dt><dd>{value}</dd></div> }.into_any()
    };
    labels.zip(values).zip(keys).map(figure).collect()
}
