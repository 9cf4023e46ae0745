//! Places and posted limits: what the file has, and what a person makes of it.

use super::result::Worked;
use super::signals::{Signals, State};
use super::things::{End, MOST_THINGS, Thing, Things};
use super::{kept, wants};
use leptos::prelude::*;
use solver::road::{Place, PlaceKind, PostedLimit, Roadside};

/// A limit that is new goes on for this far, m.
const NEW_LIMIT_M: f64 = 1_000.0;

impl Signals {
    /// Puts a place at a grid point of the road shown; its number, or `None` where there is no
    /// room for another.
    pub(crate) fn put_place(&'static self, index: usize) -> Option<u32> {
        let worked = self.shown.worked.get_untracked()?;
        let index = worked.recorded(index);
        if self.roadside.things.with_untracked(|things| things.list.len() >= MOST_THINGS) {
            return None;
        }
        let mut id = 0;
        let place = Place { name: String::new(), kind: PlaceKind::Other, index, off_m: 0.0 };
        self.change_things(|things| id = things.put(Thing::Place(place)));
        Some(id)
    }

    /// Changes a thing.
    pub(crate) fn change_thing(&'static self, id: u32, change: impl FnOnce(&mut Thing)) {
        self.change_things(|things| {
            if let Some(put) = things.list.iter_mut().find(|put| put.id == id) {
                change(&mut put.thing);
            }
        });
    }

    /// Makes a thing a place of this kind, or a limit (`None`).
    pub(crate) fn take_kind(&'static self, id: u32, kind: Option<PlaceKind>) {
        let Some(worked) = self.shown.worked.get_untracked() else { return };
        self.change_things(|things| {
            if let Some(put) = things.list.iter_mut().find(|put| put.id == id) {
                let at = put.thing.end(End::From, worked.road.reversed);
                put.take_kind(kind, worked.ahead_of(at, NEW_LIMIT_M), worked.road.reversed);
            }
        });
    }

    /// Moves an end of a thing to a grid point of the road shown; `false` where a stretch would be
    /// none.
    pub(crate) fn move_thing(&'static self, id: u32, end: End, shown: usize) -> bool {
        let Some(worked) = self.shown.worked.get_untracked() else { return false };
        let to = worked.recorded(shown);
        let moved = self
            .roadside
            .things
            .with_untracked(|things| things.get(id).and_then(|it| it.moved(end, worked.road.reversed, to)));
        let Some(moved) = moved else { return false };
        self.change_thing(id, |thing| *thing = moved);
        true
    }

    /// Takes a thing off the road.
    pub(crate) fn remove_thing(&'static self, id: u32) {
        self.change_things(|things| things.list.retain(|put| put.id != id));
    }

    /// Undoes the last change.
    pub(crate) fn undo_things(&'static self) {
        self.roadside.things.update(Things::undo);
        self.want_things();
    }

    fn change_things(&'static self, change: impl FnOnce(&mut Things)) {
        let mut changed = false;
        self.roadside.things.update(|things| changed = things.change(change));
        if changed {
            self.want_things();
        }
    }

    fn want_things(&'static self) {
        let (key, roadside) =
            self.roadside.things.with_untracked(|things| (things.key.clone(), things.roadside()));
        kept::keep_roadside(&key, &roadside);
        wants::take_roadside(self, roadside);
        self.work_out_later();
    }
}

/// Another road is shown: its things are those that came with it, or else those that were put on it
/// before, or those of its file. `carried`: they came with the recordings that it was made of.
pub(super) fn follow(state: State, given: Option<&Roadside>, carried: bool, worked: &Worked) {
    let key = format!("{}/{}/{:.0}", worked.file, worked.road.course, worked.road.length_m);
    let own = Roadside {
        places: worked.road.places.iter().map(|it| on_recorded(worked, it)).collect(),
        limits: worked.road.limits.iter().map(|it| limit_on_recorded(worked, it)).collect(),
    };
    let given = given.or(carried.then_some(&own));
    let kept = kept::roadside(&key).filter(|kept| *kept != own);
    if let Some(given) = given {
        kept::keep_roadside(&key, given);
        // What was put on this road here is one step back.
        let mut things = Things::of(key, kept.unwrap_or_else(|| given.clone()));
        things.change(|it| it.list = Things::of(String::new(), given.clone()).list);
        return state.roadside.things.set(things);
    }
    if let Some(kept) = &kept {
        wants::take_roadside(state, kept.clone());
    }
    state.roadside.things.set(Things::of(key, kept.unwrap_or(own)));
}

fn limit_on_recorded(worked: &Worked, limit: &PostedLimit) -> PostedLimit {
    let (from, to) = worked.recorded_part(limit.from, limit.to);
    PostedLimit { from, to, ..*limit }
}

fn on_recorded(worked: &Worked, place: &Place) -> Place {
    Place { index: worked.recorded(place.index), ..place.clone() }
}
