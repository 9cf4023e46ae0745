//! Quantiles and shares of variance of a set of runs.

/// The value below which this share of the values lies, by rank. `values` must not be empty, and its order
/// changes.
pub(super) fn quantile(values: &mut [f32], share: f64) -> f32 {
    let rank = ((values.len() - 1) as f64 * share).round() as usize;
    *values.select_nth_unstable_by(rank, f32::total_cmp).1
}

/// Bins of an input.
const BINS: usize = 8;

/// Share of the variance of `results` due to one input alone (first order), 0 to 1. It comes from the means
/// of eight bins, less the variance that bins show by chance.
pub(super) fn first_order(shares: impl Iterator<Item = f64>, results: &[f64]) -> f64 {
    let n = results.len() as f64;
    let mean = results.iter().sum::<f64>() / n;
    let total: f64 = results.iter().map(|y| (y - mean) * (y - mean)).sum();
    let (mut sums, mut counts) = ([0.0; BINS], [0.0; BINS]);
    for (share, y) in shares.zip(results) {
        let bin = ((share * BINS as f64) as usize).min(BINS - 1);
        sums[bin] += y - mean;
        counts[bin] += 1.0;
    }
    let filled = sums.iter().zip(&counts).filter(|(_, count)| **count > 0.0);
    let between: f64 = filled.map(|(sum, count)| sum * sum / count).sum();
    let freedom = BINS as f64 - 1.0;
    let within = (total - between) / (n - BINS as f64);
    if total <= 0.0 { 0.0 } else { ((between - freedom * within) / total).clamp(0.0, 1.0) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_rank_is_taken() {
        let mut values: Vec<f32> = (0..=100_u8).rev().map(f32::from).collect();
        assert!((quantile(&mut values, 0.05) - 5.0).abs() < 1e-6);
        assert!((quantile(&mut values, 0.95) - 95.0).abs() < 1e-6);
    }

    #[test]
    fn an_input_that_is_everything_has_all_the_variance_and_another_has_none() {
        let first: Vec<f64> = (0..256).map(|k| f64::from(k) / 256.0).collect();
        let other = |k: usize| libm::fmod(k as f64 * 0.618_033_988_75, 1.0);
        assert!(first_order(first.iter().copied(), &first) > 0.97);
        assert!(first_order((0..256).map(other), &first) < 0.02);
    }
}
