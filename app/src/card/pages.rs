//! Which row of the card stands on which page.
//!
//! Heights are known before anything is drawn. Rows are never reordered, and none is left out: what finds no
//! room on a page begins the next.

use std::ops::Range;

/// A row: a descent with its legs, or stretches of which nothing is known.
#[derive(Debug, Clone, PartialEq)]
pub struct Block {
    /// Its height in one piece, pt.
    pub whole: f64,
    /// Heights of its legs, pt, for a row that is higher than a page; one at least. Each is no higher than the
    /// row, and together they are no lower.
    pub pieces: Vec<f64>,
}

/// Room for rows, pt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Room {
    /// On the first page.
    pub first: f64,
    /// On each other page.
    pub further: f64,
    /// What stands below the rows of the last page.
    pub tail: f64,
}

/// What of a row stands on a page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// Index of the row.
    pub block: usize,
    /// Its legs.
    pub pieces: Range<usize>,
}

/// The pages, one at least. A row is split between two of its legs only where no page holds it whole. Where
/// the tail finds no room below the last rows, the last page has no rows.
#[must_use]
pub fn pages(blocks: &[Block], room: Room) -> Vec<Vec<Part>> {
    let mut pages = Filling { pages: vec![Vec::new()], left: room.first, room };
    for (index, block) in blocks.iter().enumerate() {
        if block.whole > pages.left && block.whole <= room.first.max(room.further) {
            pages.turn_for(block.whole);
        }
        if block.whole <= pages.left {
            pages.put(index, 0..block.pieces.len(), block.whole);
            continue;
        }
        for (piece, height) in block.pieces.iter().enumerate() {
            if *height > pages.left {
                pages.turn_for(*height);
            }
            pages.put(index, piece..piece + 1, *height);
        }
    }
    if room.tail > pages.left {
        pages.turn_for(room.tail);
    }
    pages.pages
}

struct Filling {
    pages: Vec<Vec<Part>>,
    left: f64,
    room: Room,
}

impl Filling {
    /// A new page, unless this one is empty and the next would have no more room.
    fn turn_for(&mut self, height: f64) {
        let is_empty = self.pages.last().is_some_and(Vec::is_empty);
        if is_empty && (height <= self.left || self.left >= self.room.further) {
            return;
        }
        self.pages.push(Vec::new());
        self.left = self.room.further;
    }

    fn put(&mut self, block: usize, pieces: Range<usize>, height: f64) {
        let Some(page) = self.pages.last_mut() else { return };
        match page.last_mut().filter(|it| it.block == block) {
            Some(part) => part.pieces.end = pieces.end,
            None => page.push(Part { block, pieces }),
        }
        self.left -= height;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const ROOM: Room = Room { first: 400.0, further: 500.0, tail: 150.0 };

    fn of(heights: &[f64]) -> Vec<Block> {
        heights.iter().map(|it| Block { whole: *it, pieces: vec![*it] }).collect()
    }

    fn on_pages(heights: &[f64]) -> Vec<Vec<usize>> {
        let of_page = |page: Vec<Part>| page.into_iter().map(|it| it.block).collect();
        pages(&of(heights), ROOM).into_iter().map(of_page).collect()
    }

    #[test]
    fn a_row_begins_a_page_where_it_has_no_room_and_the_tail_has_its_own() {
        assert_eq!(on_pages(&[]), [Vec::<usize>::new()]);
        assert_eq!(on_pages(&[250.0]), [vec![0]]);
        assert_eq!(on_pages(&[251.0]), [vec![0], vec![]], "no room for the tail");
        assert_eq!(on_pages(&[200.0, 200.0, 350.0]), [vec![0, 1], vec![2]]);
        assert_eq!(on_pages(&[200.0, 201.0, 149.0]), [vec![0], vec![1, 2]]);
        assert_eq!(on_pages(&[450.0]), [vec![], vec![0], vec![]], "whole on a page with more room");
    }

    #[test]
    fn a_row_higher_than_a_page_is_split_between_its_legs() {
        let long = Block { whole: 900.0, pieces: vec![300.0; 3] };
        let part = |block, pieces| Part { block, pieces };
        let blocks = [of(&[90.0]), vec![long]].concat();
        let expected = [vec![part(0, 0..1), part(1, 0..1)], vec![part(1, 1..2)], vec![part(1, 2..3)]];
        assert_eq!(pages(&blocks, ROOM), expected);
    }

    /// Legs, and a row that is as high as the highest of them at least and as all of them at most.
    fn block() -> impl Strategy<Value = Block> {
        (prop::collection::vec(20.0..260.0, 1..6), 0.0..=1.0).prop_map(|(pieces, share): (Vec<f64>, f64)| {
            let (most, all) = (pieces.iter().copied().fold(0.0, f64::max), pieces.iter().sum::<f64>());
            Block { whole: most + share * (all - most), pieces }
        })
    }

    proptest! {
        #[test]
        fn every_leg_of_every_row_stands_on_one_page_in_order_and_no_page_is_too_full(
            blocks in prop::collection::vec(block(), 0..40),
            first in 280.0..600.0,
            further in 280.0..600.0,
            tail in 0.0..280.0,
        ) {
            let room = Room { first, further, tail };
            let found = pages(&blocks, room);
            let legs: Vec<(usize, usize)> =
                found.iter().flatten().flat_map(|it| it.pieces.clone().map(|piece| (it.block, piece))).collect();
            let all: Vec<(usize, usize)> =
                blocks.iter().enumerate().flat_map(|(block, it)| (0..it.pieces.len()).map(move |piece| (block, piece))).collect();
            prop_assert_eq!(legs, all);
            let last = found.len() - 1;
            for (number, page) in found.iter().enumerate() {
                let height = |it: &Part| match &blocks[it.block] {
                    block if it.pieces.len() == block.pieces.len() => block.whole,
                    block => block.pieces[it.pieces.clone()].iter().sum(),
                };
                let rows: f64 = page.iter().map(height).sum();
                let below = if number == last { tail } else { 0.0 };
                let within = if number == 0 { first } else { further };
                prop_assert!(rows + below <= within + 1e-6, "page {}: {} of {}", number, rows + below, within);
                // Only the first and the last page may be without rows, the first where it has less room.
                prop_assert!(!page.is_empty() || number == last || number == 0 && first < further);
            }
            for (index, block) in blocks.iter().enumerate() {
                let parts = found.iter().flatten().filter(|it| it.block == index).count();
                prop_assert!(parts == 1 || block.whole > further, "row {} is split", index);
            }
        }
    }
}
