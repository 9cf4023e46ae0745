//! Vertical curves: parabolas join the straight grades of the filtered line, as on a road.
//!
//! The mean of a line over a length L turns a bend between two straight grades into the parabola of length L
//! that touches both. The grades themselves stay.

/// Rounds the bends of a line of straight pieces by means over `cells` + 1 points, `cells` even. Near the
/// ends, which stay, the mean is over fewer points.
pub(super) fn round(heights_m: &[f64], cells: usize) -> Vec<f64> {
    let last = heights_m.len().saturating_sub(1);
    let mean = |i: usize| {
        let half = (cells / 2).min(i).min(last - i);
        let around = &heights_m[i - half..=i + half];
        around.iter().sum::<f64>() / around.len() as f64
    };
    (0..heights_m.len()).map(mean).collect()
}

#[cfg(test)]
mod tests {
    use super::round;

    #[test]
    fn a_bend_becomes_a_parabola_between_the_same_grades() {
        // Level, then 4 % down, points 10 m apart.
        let line: Vec<f64> =
            (0..40).map(|i| if i <= 20 { 100.0 } else { 100.0 - 0.4 * f64::from(i - 20) }).collect();
        let round = round(&line, 4);
        for i in 0..40 {
            let far = (i as i32 - 20).abs() > 2;
            assert!(!far || (round[i] - line[i]).abs() < 1e-9, "{i}: the grades stay");
        }
        // A parabola has a constant second difference: 4 % over five points of 10 m.
        for i in 18..=22 {
            let bend = round[i - 1] - 2.0 * round[i] + round[i + 1];
            assert!((bend + 0.4 / 5.0).abs() < 1e-9, "{i}: {bend}");
        }
        assert!((round[0] - line[0]).abs() < 1e-12 && (round[39] - line[39]).abs() < 1e-12, "the ends stay");
    }

    #[test]
    fn few_points_stay_as_they_are() {
        assert!(round(&[], 4).is_empty());
        assert_eq!(round(&[3.0, 5.0], 4), [3.0, 5.0]);
    }
}
