//! The one sort.

/// Indices that put the keys in ascending order; equal keys keep their order.
///
/// A sort of each further type costs page and worker kilobytes, so all lists are sorted by numbers.
#[must_use]
pub fn ascending(keys: impl Iterator<Item = f64>) -> Vec<usize> {
    let mut keyed: Vec<(f64, usize)> = keys.zip(0..).collect();
    keyed.sort_unstable_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
    keyed.into_iter().map(|(_, index)| index).collect()
}

#[cfg(test)]
mod tests {
    use super::ascending;

    #[test]
    fn equal_keys_stay_as_they_come() {
        assert_eq!(ascending([3.0, 1.0, 3.0, -2.0, 1.0].into_iter()), [3, 1, 4, 0, 2]);
        assert!(ascending(std::iter::empty()).is_empty());
    }
}
