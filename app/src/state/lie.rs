//! How roads and files lie to one another, as far as it is known.

use super::asked::Source;
use super::beside::Beside;
use crate::browser::file::Blob;

/// What is known of files in hand: which of them are of the same road, by a number of their own.
pub(crate) type Grounds = Vec<(Blob, usize)>;

/// How files in hand lie to one another.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Lie {
    /// All are of the same road.
    AllAlike,
    /// These two are of one road, and others are not.
    Two(usize, usize),
}

/// A road that was opened and lies on one that was there before.
#[derive(Clone)]
pub(crate) struct Meeting {
    pub(super) earlier: Beside,
    pub(super) source: Source,
}

impl Meeting {
    /// How many recordings both are.
    pub(crate) fn recordings(&self) -> usize {
        self.earlier.entered().asked.source.also.len() + 2
    }

    /// Names of the files: of the one opened, and of the one before.
    pub(crate) fn names(&self) -> [String; 2] {
        [self.source.name(), self.earlier.entered().asked.source.name()]
    }
}

/// A number for each recording; recordings of one road share it.
pub(super) fn grounds(alike: &[Option<usize>]) -> Vec<usize> {
    let mut grounds: Vec<usize> = Vec::with_capacity(alike.len());
    for (index, before) in alike.iter().enumerate() {
        let ground = before.and_then(|before| grounds.get(before).copied());
        grounds.push(ground.unwrap_or(index));
    }
    grounds
}

/// How files lie to one another, by what is known of each.
pub(super) fn lie(grounds: &[Option<usize>]) -> Option<Lie> {
    let same = |a: usize, b: usize| grounds[a].is_some() && grounds[a] == grounds[b];
    let later = |a: usize| (a + 1..grounds.len()).find(|b| same(a, *b)).map(|b| (a, b));
    let (a, b) = (0..grounds.len()).find_map(later)?;
    let all = (1..grounds.len()).all(|b| same(0, b));
    Some(if all { Lie::AllAlike } else { Lie::Two(a, b) })
}

#[cfg(test)]
mod tests {
    use super::{Lie, grounds, lie};

    #[test]
    fn recordings_of_one_road_have_one_ground() {
        assert_eq!(grounds(&[None, Some(0), None, Some(2), Some(0)]), [0, 0, 2, 2, 0]);
        assert_eq!(grounds(&[None, None]), [0, 1]);
    }

    #[test]
    fn only_files_that_are_known_to_lie_on_each_other_are_one_road() {
        assert_eq!(lie(&[Some(0), Some(0)]), Some(Lie::AllAlike));
        assert_eq!(lie(&[Some(0), Some(1), Some(0)]), Some(Lie::Two(0, 2)));
        assert_eq!(lie(&[Some(1), Some(0), Some(0)]), Some(Lie::Two(1, 2)));
        for apart in [&[Some(0), Some(1)][..], &[None, None], &[None, Some(0)], &[Some(0)], &[]] {
            assert_eq!(lie(apart), None);
        }
    }
}
