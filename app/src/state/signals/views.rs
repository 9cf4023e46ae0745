//! The views of the page, and which of them is in front.

use leptos::prelude::*;

/// A view of the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum View {
    /// The picture and the answer.
    Road,
    /// All descents, and the road as a table.
    Descents,
    /// Two roads, or many.
    Two,
    /// The card for the cab, and what else leaves the page.
    Card,
    /// Settings, languages, evidence.
    More,
}

impl View {
    /// All of them, in the order of the bar.
    pub(crate) const ALL: [Self; 5] = [Self::Road, Self::Descents, Self::Two, Self::Card, Self::More];

    /// Its key in the address.
    pub(crate) fn key(self) -> &'static str {
        match self {
            Self::Road => "road",
            Self::Descents => "descents",
            Self::Two => "two",
            Self::Card => "card",
            Self::More => "more",
        }
    }

    /// The view that a key means.
    pub(crate) fn of(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.key() == key)
    }
}

/// Which view is in front.
pub(crate) struct ViewSignals {
    /// The view in front.
    pub(crate) front: RwSignal<View>,
    /// Whether the panel of the road is open.
    pub(crate) road: RwSignal<bool>,
    /// Whether the picture of the road has the window to itself.
    pub(crate) alone: RwSignal<bool>,
    /// Whether there is room for a line below the picture.
    pub(crate) room_below: RwSignal<bool>,
}

impl ViewSignals {
    pub(super) fn new() -> Self {
        Self {
            front: RwSignal::new(View::Road),
            road: RwSignal::new(false),
            alone: RwSignal::new(false),
            room_below: RwSignal::new(true),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::View;

    #[test]
    fn every_view_is_found_by_its_key() {
        for view in View::ALL {
            assert_eq!(View::of(view.key()), Some(view));
        }
        assert_eq!(View::of("with=abc"), None);
    }
}
