//! The picture itself: two layers, the cursor between them, the pad that takes keys, fingers and the mouse,
//! and above all that the buttons.

use super::asks::Asks;
use super::look::Look;
use super::sheet::sheet;
use super::{bars, keys, pad, plan, strip};
use crate::browser::frame::SizeWatch;
use crate::chart::drawing;
use crate::chart::label::text_width;
use crate::chart::layout::Space;
use crate::chart::picture::{RoadPicture, value};
use crate::chart::scale::Scale;
use crate::chart::scene::Scene;
use crate::chart::speed::speed_scale;
use crate::chart::temperature::temperature_scale;
use crate::chart::window::Window;
use crate::format;
use leptos::html::{Div, Span};
use leptos::prelude::*;
use leptos::svg::Rect;

/// The picture; `asks` where it is the one that the page works with.
pub(super) fn view(look: Look, asks: Option<Asks>) -> AnyView {
    let frame = NodeRef::<Div>::new();
    let probe = NodeRef::<Span>::new();
    watch_space(look, frame, probe);
    let layers = Memo::new(move |_| {
        if look.space.with(|it| it.width <= 0.0) {
            return (String::new(), String::new());
        }
        let drawn = look.scene(drawing::draw).unwrap_or_default();
        (drawn.under.into_string(), drawn.over.into_string())
    });
    let patterns = drawing::patterns(&look.ids.get_value()).into_string();
    let size = Signal::derive(move || {
        let layout = look.layout();
        (layout.width, layout.height)
    });
    // What a zoom changes is worked out apart from what the pointer changes: a hover must not
    // go over the whole road.
    let rails = Memo::new(move |_| look.scene(rails));
    let marks = Memo::new(move |_| {
        let (rails, prepared) = (rails.get()?, look.prepared.get()?);
        marks(&rails, &prepared.picture, look.cursor.get(), prepared.units)
    });
    // The strip stays as it is while its handles are moved: what is drawn anew has neither pointer nor keyboard.
    let zoomed = Memo::new(move |_| look.is_zoomed());
    let listed = RwSignal::new(false);
    let picture = NodeRef::<Rect>::new();
    let focus = Callback::new(move |()| {
        if let Some(element) = picture.get_untracked() {
            let _ = element.focus();
        }
    });
    let close = Callback::new(move |()| {
        listed.set(false);
        focus.run(());
    });
    // Sheets: the cursor moves between the areas and the labels, and the buttons are above both.
    let under = view! {
        <defs inner_html=patterns></defs>
        <g aria-hidden="true" inner_html=move || layers.with(|it| it.0.clone())></g>
    };
    let over = view! {
        <g aria-hidden="true" inner_html=move || layers.with(|it| it.1.clone())></g>
        {pad::view(look, asks, frame, picture, listed)}
    };
    let buttons = view! {
        {tab(rails, marks)}
        {bars::view(look, focus)}
        {plan::view(look)}
    };
    view! {
        <div class="drawing" node_ref=frame>
            <span class="target-probe" aria-hidden="true" node_ref=probe></span>
            {sheet("under", size, under.into_any())}
            {sheet("between", size, marker(rails, marks))}
            {sheet("over", size, over.into_any())}
            {sheet("buttons", size, buttons.into_any())}
            {move || zoomed.get().then(|| strip::view(look))}
            {asks.map(|_| keys::list(listed, close))}
        </div>
    }
    .into_any()
}

/// Follows the size of the frame, and that of the probe: the style sheet decides how large a target is.
fn watch_space(look: Look, frame: NodeRef<Div>, probe: NodeRef<Span>) {
    let watches = StoredValue::new_local(None::<[Option<SizeWatch>; 2]>);
    let told = move |change: &dyn Fn(&mut Space)| {
        let _ = look.space.try_maybe_update(|space| {
            let before = *space;
            change(space);
            (*space != before, ())
        });
    };
    Effect::new(move |_| {
        let (Some(frame), Some(probe)) = (frame.get(), probe.get()) else { return };
        let whole = SizeWatch::new(&frame, move |width, height| {
            told(&|it| (it.width, it.height) = (width, height));
        });
        let target = SizeWatch::new(&probe, move |width, _| told(&|it| it.target = width));
        watches.set_value(Some([whole, target]));
    });
}

/// Where the cursor's line and dots are, px; `None` where the cursor is outside the window.
#[derive(Clone, PartialEq)]
struct Marks {
    x: f64,
    dots: [Option<f64>; 3],
    /// What stands at its foot: its place.
    at: String,
    /// Where that begins, px right of the line, and its width.
    tab: (f64, f64),
}

/// Scales of the parts on which the cursor has a dot, and where its line runs.
#[derive(Clone, Copy, PartialEq)]
struct Rails {
    across: Scale,
    window: Window,
    ends: (f64, f64),
    base: f64,
    text_size: f64,
    dots: [Option<Scale>; 3],
}

fn rails(scene: &Scene) -> Rails {
    let layout = &scene.layout;
    Rails {
        across: scene.across(),
        window: scene.window,
        ends: (layout.bars.bottom(), layout.axis.top),
        base: layout.axis.bottom() - 5.0,
        text_size: layout.text_size(),
        dots: [
            Some(scene.up),
            layout.speed.is_there().then(|| speed_scale(scene)),
            layout.temperature.is_there().then(|| temperature_scale(scene)),
        ],
    }
}

fn marks(rails: &Rails, picture: &RoadPicture, index: usize, units: format::Units) -> Option<Marks> {
    let at_m = picture.place_of(index);
    let lanes = [&picture.heights_m, &picture.speed, &picture.temperature];
    let dot = |number: usize| {
        let scale = rails.dots[number]?;
        let (bottom, top) = scale.range();
        // What is beyond its scale is drawn at the scale's end; see the lane's own drawing.
        value(lanes[number], index).map(|it| scale.at(it).clamp(top.min(bottom), bottom))
    };
    let x = rails.across.at(at_m);
    let at = format::distance_number(at_m, units);
    let width = 1.1 * text_width(&at, rails.text_size) + 10.0;
    let (left, right) = rails.across.range();
    let from = (x - 0.5 * width).clamp(left - 4.0, (right + 4.0 - width).max(left)) - x;
    rails.window.shows(at_m).then(|| Marks { x, dots: [dot(0), dot(1), dot(2)], at, tab: (from, width) })
}

/// The cursor: one group that moves, between the layers.
fn marker(rails: Memo<Option<Rails>>, marks: Memo<Option<Marks>>) -> AnyView {
    let rail = move |pick: fn(&Rails) -> f64| rails.with(|it| it.as_ref().map_or(0.0, pick));
    let dot = move |number: usize| {
        let y = move || marks.with(|it| it.as_ref().and_then(|it| it.dots[number]));
        let radius = if number == 0 { "6" } else { "4" };
        view! { <circle r=radius cy=move || y().unwrap_or(0.0) visibility=move || y().map_or("hidden", |_| "inherit")></circle> }
    };
    let line = move |class: &'static str| {
        view! { <line class=class y1=move || rail(|it| it.ends.0) y2=move || rail(|it| it.ends.1)></line> }
    };
    view! {
        <g class="cursor" transform=move || shift(marks) visibility=move || shown(marks)>
            {line("casing")}
            {line("needle")}
            {dot(0)}
            {dot(1)}
            {dot(2)}
        </g>
    }
    .into_any()
}

/// Where the cursor is, at its foot, over the marks of the axis.
fn tab(rails: Memo<Option<Rails>>, marks: Memo<Option<Marks>>) -> AnyView {
    let base = move || rails.with(|it| it.as_ref().map_or(0.0, |it| it.base));
    let ends = move || marks.with(|it| it.as_ref().map_or((0.0, 0.0), |it| it.tab));
    let at = move || marks.with(|it| it.as_ref().map(|it| it.at.clone()).unwrap_or_default());
    view! {
        <g class="cursor-tab" aria-hidden="true" transform=move || shift(marks) visibility=move || shown(marks)>
            <rect rx="5" height="19" x=move || ends().0 width=move || ends().1 y=move || base() - 14.0></rect>
            <text text-anchor="middle" x=move || ends().0 + 0.5 * ends().1 y=base>{at}</text>
        </g>
    }
    .into_any()
}

fn shift(marks: Memo<Option<Marks>>) -> String {
    format!("translate({:.1} 0)", marks.with(|it| it.as_ref().map_or(0.0, |it| it.x)))
}

fn shown(marks: Memo<Option<Marks>>) -> &'static str {
    if marks.with(Option::is_some) { "visible" } else { "hidden" }
}
