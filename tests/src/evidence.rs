//! One way to hold a value of ours against a value from outside.

/// Holds `ours` against what the source prints. On a miss the test fails and says by how much.
///
/// # Panics
/// Where the two differ by more than `tolerance`, or ours is not a number.
#[track_caller]
pub fn check(what: &str, source_prints: f64, ours: f64, tolerance: f64) {
    let difference = ours - source_prints;
    assert!(
        difference.abs() <= tolerance,
        "{what}: the source has {source_prints}, ours is {ours} (difference {difference:+.6}, tolerance {tolerance})"
    );
}

/// A known miss, kept in sight: ours differs from the source by `recorded`, and the test fails
/// as soon as that figure changes or the miss is gone. Name such a test DIFFERENCE.
///
/// # Panics
/// Where the difference is no longer the recorded one, within `rounding`.
#[track_caller]
pub fn difference(what: &str, source_prints: f64, ours: f64, recorded: f64, rounding: f64) {
    let now = ours - source_prints;
    assert!(
        (now - recorded).abs() <= rounding,
        "{what}: DIFFERENCE recorded as {recorded:+}, now {now:+.6} (the source has {source_prints}, ours is {ours})"
    );
    println!("DIFFERENCE {what}: the source has {source_prints}, ours is {ours:.4} ({now:+.4})");
}
