//! Files that lie on each other: seen by a worker of their own, and asked about. Nothing is made one
//! road before somebody says so.

use super::asked::{Aim, Leg, Origin, Source};
use super::beside::Beside;
use super::entered::Entered;
use super::lie::{Lie, Meeting, grounds, lie};
use super::road_worker::{RoadWorker, Said};
use super::signals::{Signals, State};
use super::work;
use crate::browser::file::Blob;
use crate::browser::timer::Timer;
use leptos::prelude::*;
use workers::message::{Also, Carried, RoadChoice};

/// Looks at files as they come to hand.
pub(super) fn start(state: State) {
    Effect::new(move |_| {
        let legs = state.files.legs.get();
        let known = |leg: &Leg| {
            state
                .files
                .grounds
                .with_untracked(|grounds| grounds.iter().any(|(blob, _)| *blob == leg.file.blob))
        };
        if legs.len() < 2 || legs.iter().all(known) {
            return;
        }
        let also = (1..legs.len()).map(|from| Also { from, course: None }).collect();
        let source = Source { also, ..Source::of(legs, Origin::Given) };
        let files: Vec<Blob> = source.legs.iter().map(|leg| leg.file.blob.clone()).collect();
        look(state, None, source, move |alike| {
            state.files.grounds.set(files.iter().cloned().zip(grounds(&alike)).collect());
        });
    });
}

/// Has a worker look at the recordings of a source; whatever was looked at before is given up.
fn look(state: State, course: Option<usize>, source: Source, told: impl Fn(Vec<Option<usize>>) + 'static) {
    let work = std::rc::Rc::new((source, told));
    let worker = RoadWorker::start(move |said| match said {
        Said::Ready => state.files.looking.with_value(|it| {
            if let Some(worker) = &it.worker {
                worker.look(course, &work.0);
            }
        }),
        Said::Alike(alike) => {
            (work.1)(alike);
            end(state);
        }
        // A look is a service: where it fails, the choices that there always are remain.
        Said::Done(..) | Said::Stopped => end(state),
    });
    state.files.looking.update_value(|it| it.worker = worker);
}

/// Ends the worker in a task of its own, since it is speaking.
fn end(state: State) {
    let clear = move || state.files.looking.update_value(|it| it.worker = None);
    state.files.looking.update_value(|it| it.rest = Timer::after(0, clear));
}

/// A file was opened: once it is shown, it is looked whether it lies on a road that is there now.
pub(super) fn expect(state: State) {
    let number = work::opened(state);
    let shown = state.beside_of_shown();
    let roads = [shown, state.beside.road.get_untracked()].into_iter().flatten();
    let given = roads.filter(|it| it.entered().asked.source.origin == Origin::Given).collect();
    state.files.looking.update_value(|it| it.expected = Some((number, given)));
}

/// A road is shown: what was asked about another one is not asked any more.
pub(super) fn shown(state: State, source: &Source, course: Option<usize>) {
    let other = |it: &Option<Meeting>| it.as_ref().is_some_and(|it| it.source.number != source.number);
    if state.files.meeting.with_untracked(other) {
        state.files.meeting.set(None);
    }
    let expected = state.files.looking.try_update_value(|it| it.expected.take()).flatten();
    let Some((_, roads)) = expected.filter(|(number, _)| *number == source.number) else { return };
    if roads.is_empty() || !source.also.is_empty() {
        return;
    }
    let mut all = source.clone();
    // The number of the first recording of each road.
    let mut firsts = Vec::new();
    for road in &roads {
        firsts.push(all.also.len() + 1);
        let asked = road.entered().asked;
        all.append(&asked.source, asked.task.road.course);
    }
    let (source, roads) = (source.clone(), std::rc::Rc::new((roads, firsts)));
    look(state, course, all, move |alike| {
        let (roads, firsts) = &*roads;
        let lies = firsts.iter().position(|first| alike.get(*first) == Some(&Some(0)));
        let still = state
            .shown
            .asked
            .with_value(|it| it.as_ref().is_some_and(|it| it.source.number == source.number));
        if let Some(earlier) = lies.map(|index| roads[index].clone()).filter(|_| still) {
            state.files.meeting.set(Some(Meeting { earlier, source: source.clone() }));
        }
    });
}

impl Signals {
    /// How the files in hand lie to one another; `None` where no two are of the same road, or nothing is
    /// known of it yet. Tracked.
    pub(crate) fn lie(&self) -> Option<Lie> {
        let ground = |leg: &Leg| {
            self.files
                .grounds
                .with(|grounds| grounds.iter().find(|(blob, _)| *blob == leg.file.blob).map(|(_, it)| *it))
        };
        lie(&self.files.legs.with(|legs| legs.iter().map(ground).collect::<Vec<_>>()))
    }

    /// Makes one road of the files in hand, driven as the first of them is.
    pub(crate) fn combine(&'static self) {
        let legs = self.files.legs.get_untracked();
        self.files.legs.set(Vec::new());
        let Some(first) = legs.first() else { return };
        let reversed = first.turned;
        let also = (1..legs.len()).map(|from| Also { from, course: None }).collect();
        let source = Source { also, ..Source::of(legs, Origin::Given) };
        work::open_aim(self, Aim { source, road: RoadChoice { reversed, ..RoadChoice::default() } });
    }

    /// Makes one road of the one opened and the one before that it lies on, with what was put on both.
    pub(crate) fn combine_meeting(&'static self) {
        let Some((earlier, now)) = self.take_meeting() else { return };
        let Entered { asked, .. } = earlier.entered();
        let mut source = Source { carried: None, ..asked.source.clone() };
        source.append(&now.asked.source, now.asked.task.road.course);
        source.carried =
            Some(Carried { before: asked.task.road.roadside, last: now.asked.task.road.roadside });
        let RoadChoice { course, reversed, .. } = asked.task.road;
        work::open_aim(self, Aim { source, road: RoadChoice { reversed, ..RoadChoice::course(course) } });
    }

    /// Keeps the road before beside the one opened.
    pub(crate) fn compare_meeting(&self) {
        if let Some((earlier, _)) = self.take_meeting() {
            self.place_beside(earlier);
        }
    }

    /// Puts the files of both in order.
    pub(crate) fn join_meeting(&self) {
        if let Some((earlier, now)) = self.take_meeting() {
            let legs = earlier.entered().asked.source.legs.into_iter().chain(now.asked.source.legs);
            self.files.legs.set(legs.collect());
        }
    }

    fn take_meeting(&self) -> Option<(Beside, Entered)> {
        let meeting = self.files.meeting.try_update(Option::take).flatten()?;
        let now = self.entered_for_shown().filter(|it| it.asked.source.number == meeting.source.number)?;
        Some((meeting.earlier, now))
    }

    /// Has the files of a road made of several recordings in hand again; it stays until they are decided on.
    pub(crate) fn take_apart(&self) {
        if let Some(asked) = self.shown.asked.get_value() {
            self.files.legs.set(asked.source.legs);
        }
    }
}
