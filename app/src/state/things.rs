//! Places and posted limits on a road, with their changes.
//!
//! They lie on grid points of the road as recorded, so that the other direction, or a part of the
//! road, leaves them where they are.

use solver::road::{Place, PlaceKind, PostedLimit, Roadside};

/// Most things on one road.
pub(crate) const MOST_THINGS: usize = 100;
/// Most changes that can be undone.
const MOST_UNDONE: usize = 50;
/// The speed of a new limit, km/h, until something else is typed.
const NEW_LIMIT_KMH: f64 = 50.0;

/// One thing on the road.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Thing {
    /// A place.
    Place(Place),
    /// A limit on a stretch.
    Limit(PostedLimit),
}

/// An end of a thing in the direction shown; a place has only one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum End {
    /// Where a place lies or a limit begins.
    From,
    /// Where a limit ends.
    To,
}

impl End {
    /// Its key in the page.
    pub(crate) fn key(self) -> &'static str {
        match self {
            Self::From => "from",
            Self::To => "to",
        }
    }
}

impl Thing {
    /// The kind of a place; `None` for a limit.
    pub(crate) fn kind(&self) -> Option<PlaceKind> {
        match self {
            Self::Place(place) => Some(place.kind),
            Self::Limit(_) => None,
        }
    }

    /// Where an end lies on the road as recorded.
    pub(crate) fn end(&self, end: End, reversed: bool) -> usize {
        match self {
            Self::Place(place) => place.index,
            Self::Limit(limit) if (end == End::From) != reversed => limit.from,
            Self::Limit(limit) => limit.to,
        }
    }

    /// This thing with an end elsewhere; `None` where a stretch would be none.
    pub(super) fn moved(&self, end: End, reversed: bool, to: usize) -> Option<Self> {
        match self {
            Self::Place(place) => Some(Self::Place(Place { index: to, ..place.clone() })),
            Self::Limit(limit) => {
                let first = (end == End::From) != reversed;
                let moved =
                    if first { PostedLimit { from: to, ..*limit } } else { PostedLimit { to, ..*limit } };
                (moved.from < moved.to).then_some(Self::Limit(moved))
            }
        }
    }
}

/// A thing with a number that stays while it is changed.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Put {
    pub(crate) id: u32,
    pub(crate) thing: Thing,
    /// What a limit was called while it was a place.
    was_called: Option<String>,
}

impl Put {
    /// Makes it a place of this kind, or a limit (`None`) on the stretch of the road as recorded. Its
    /// name comes back when it is a place again.
    pub(super) fn take_kind(&mut self, kind: Option<PlaceKind>, stretch: (usize, usize), reversed: bool) {
        self.thing = match (&self.thing, kind) {
            (Thing::Place(place), Some(kind)) => Thing::Place(Place { kind, ..place.clone() }),
            (Thing::Limit(limit), Some(kind)) => {
                let index = if reversed { limit.to } else { limit.from };
                let name = self.was_called.take().unwrap_or_default();
                Thing::Place(Place { name, kind, index, off_m: 0.0 })
            }
            (Thing::Place(place), None) => {
                self.was_called = Some(place.name.clone());
                Thing::Limit(PostedLimit { from: stretch.0, to: stretch.1, kmh: NEW_LIMIT_KMH })
            }
            (Thing::Limit(limit), None) => Thing::Limit(*limit),
        };
    }

    /// Whether this is a limit whose speed nobody entered: it was a place, and still has the speed that it
    /// was given then.
    fn is_assumed(&self) -> bool {
        let assumed = matches!(&self.thing, Thing::Limit(limit) if (limit.kmh - NEW_LIMIT_KMH).abs() < 0.01);
        assumed && self.was_called.is_some()
    }
}

/// All things on the road, in the order in which they are listed.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Things {
    /// Which road they are on: its file, its length, its track.
    pub(super) key: String,
    pub(crate) list: Vec<Put>,
    last: u32,
    before: Vec<Vec<Put>>,
}

impl Things {
    pub(super) fn of(key: String, roadside: Roadside) -> Self {
        let mut things = Self { key, ..Self::default() };
        let places = roadside.places.into_iter().map(Thing::Place);
        for thing in places.chain(roadside.limits.into_iter().map(Thing::Limit)) {
            things.put(thing);
        }
        things
    }

    pub(super) fn put(&mut self, thing: Thing) -> u32 {
        self.last += 1;
        self.list.push(Put { id: self.last, thing, was_called: None });
        self.last
    }

    /// All things, in the order of the list.
    pub(super) fn roadside(&self) -> Roadside {
        let mut roadside = Roadside::default();
        for put in &self.list {
            match &put.thing {
                Thing::Place(place) => roadside.places.push(place.clone()),
                Thing::Limit(limit) => roadside.limits.push(*limit),
            }
        }
        roadside
    }

    /// Changes the list; `false` where that changed nothing.
    pub(super) fn change(&mut self, change: impl FnOnce(&mut Self)) -> bool {
        let before = self.list.clone();
        change(self);
        let changed = before != self.list;
        if changed {
            self.before.push(before);
            if self.before.len() > MOST_UNDONE {
                self.before.remove(0);
            }
        }
        changed
    }

    /// Undoes the last change.
    pub(super) fn undo(&mut self) {
        if let Some(before) = self.before.pop() {
            self.list = before;
        }
    }

    /// Whether there is something to undo.
    pub(crate) fn can_undo(&self) -> bool {
        !self.before.is_empty()
    }

    /// The thing of a number.
    pub(crate) fn get(&self, id: u32) -> Option<&Thing> {
        self.put_of(id).map(|put| &put.thing)
    }

    /// Whether the thing of this number is a limit whose speed nobody entered.
    pub(crate) fn is_assumed(&self, id: u32) -> bool {
        self.put_of(id).is_some_and(Put::is_assumed)
    }

    fn put_of(&self, id: u32) -> Option<&Put> {
        self.list.iter().find(|put| put.id == id)
    }
}

#[cfg(test)]
mod tests {
    use super::{End, Thing, Things};
    use solver::road::{Place, PlaceKind, PostedLimit, Roadside};

    fn place(index: usize) -> Place {
        Place { name: format!("at {index}"), kind: PlaceKind::Stop, index, off_m: 0.0 }
    }

    #[test]
    fn things_keep_their_numbers_and_changes_are_undone() {
        let limit = PostedLimit { from: 3, to: 9, kmh: 40.0 };
        let own = Roadside { places: vec![place(7)], limits: vec![limit] };
        let mut things = Things::of("road".to_owned(), own.clone());
        assert_eq!(things.roadside(), own);
        let mut id = 0;
        assert!(things.change(|it| id = it.put(Thing::Place(place(20)))));
        assert!(things.change(|it| it.list.retain(|put| put.id != 1)));
        assert!(!things.change(|_| ()), "nothing changed, nothing to undo");
        assert_eq!(things.get(id), Some(&Thing::Place(place(20))));
        assert_eq!(things.get(1), None);
        assert_eq!(things.before.len(), 2);
    }

    #[test]
    fn a_place_that_becomes_a_limit_says_so_and_is_called_the_same_again() {
        let own = Roadside { places: vec![place(7)], limits: Vec::new() };
        let mut things = Things::of("road".to_owned(), own);
        let take =
            |things: &mut Things, kind| things.change(|it| it.list[0].take_kind(kind, (7, 107), false));
        assert!(!things.is_assumed(1));
        take(&mut things, None);
        assert!(things.is_assumed(1), "nobody read its speed off a sign");
        take(&mut things, Some(PlaceKind::Danger));
        assert_eq!(things.get(1), Some(&Thing::Place(Place { kind: PlaceKind::Danger, ..place(7) })));
        take(&mut things, None);
        things.change(|it| it.list[0].thing = Thing::Limit(PostedLimit { from: 7, to: 60, kmh: 30.0 }));
        assert!(!things.is_assumed(1));
        // The other way round a limit begins where it ends as recorded.
        things.change(|it| it.list[0].take_kind(Some(PlaceKind::Stop), (0, 1), true));
        assert_eq!(things.get(1), Some(&Thing::Place(Place { index: 60, ..place(7) })));
    }

    #[test]
    fn ends_are_those_of_the_direction_shown() {
        let limit = Thing::Limit(PostedLimit { from: 3, to: 9, kmh: 40.0 });
        assert_eq!((limit.end(End::From, false), limit.end(End::To, false)), (3, 9));
        assert_eq!((limit.end(End::From, true), limit.end(End::To, true)), (9, 3));
        let longer = limit.moved(End::From, true, 12);
        assert_eq!(longer, Some(Thing::Limit(PostedLimit { from: 3, to: 12, kmh: 40.0 })));
        assert_eq!(limit.moved(End::To, true, 9), None, "no stretch is left");
        let there = Thing::Place(place(5)).moved(End::From, true, 6);
        assert_eq!(there.map(|it| it.end(End::From, false)), Some(6));
    }
}
