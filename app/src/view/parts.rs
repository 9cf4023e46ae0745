//! What is in the parts of the page's program that come later. Only the program that loads them names these: what
//! anybody else named would stay in the page's module.

use super::chart::every_stretch;
use super::later::{Truck, Views};
use super::{card, descents, drawer, more, questions, road, roadside, side_by_side, study};
use leptos::prelude::*;

/// Truck and day.
pub static TRUCK: Truck = Truck { content: drawer::content, answer: drawer::answer };

/// All else.
pub static VIEWS: Views = Views {
    descents: |state, look| {
        view! { {descents::descents(state)} {study::ahead(state)} {every_stretch(look)} }.into_any()
    },
    two: side_by_side::side_by_side,
    card: card::card,
    more: more::more,
    road: road::content,
    roadside: roadside::content,
    about: questions::about,
    gears: questions::gears,
};
