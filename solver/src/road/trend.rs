//! The ℓ1 trend filter: the height line with few bends that stays near the recorded heights.
//!
//! Source: Kim, Koh, Boyd, Gorinevsky 2009, “ℓ1 Trend Filtering”, SIAM Review 51(2), 339–360,
//! sections 3 and 4 (primal-dual interior point on the dual problem). Minimises
//!
//! > ½‖y − x‖² + λ‖D x‖₁,  (D x)ᵢ = xᵢ − 2xᵢ₊₁ + xᵢ₊₂
//!
//! over x. The dual is min ½‖Dᵀz‖² − (D y)ᵀz with |zᵢ| ≤ λ, and x = y − Dᵀz. Each Newton step
//! solves one pentadiagonal system, so that time grows in proportion to the number of points.
//!
//! Why this filter: a road's alignment is made of straight grades, and of all filters that were
//! compared on roads of known truth this one kept their bends best.

/// Ends when heights are proven to be this near to the optimum, metres: the objective is
/// strongly convex, so a duality gap g bounds ‖x − x*‖ by √(2g).
const CLOSE_M: f64 = 0.01;
const GAP: f64 = 0.5 * CLOSE_M * CLOSE_M;
/// Most Newton steps; 15 to 40 are usual.
const MOST_STEPS: usize = 80;
/// Most halvings of one step.
const MOST_HALVINGS: usize = 30;
/// Share of the expected decrease of the residual that a step must reach.
const DECREASE: f64 = 0.01;
/// Factor by which the barrier is tightened.
const TIGHTEN: f64 = 2.0;
/// A step this long allows tightening.
const LONG_STEP: f64 = 0.2;
/// Share of the way to the bound that a step may go.
const INSIDE: f64 = 0.99;

/// A filtered line, and how near it is proven to be to the best one.
#[derive(Clone, Debug, PartialEq)]
pub struct Trend {
    /// Filtered values, as many as were given, in their unit.
    pub heights_m: Vec<f64>,
    /// Duality gap reached, square metres: no filtered height is off by more than √(2·gap).
    pub gap: f64,
    /// Newton steps taken.
    pub steps: usize,
}

/// Filters heights on a uniform grid.
///
/// `heights_m`: finite, metres. `lambda` ≥ 0, metres: larger bends less. Fewer than three
/// heights come back as they are.
pub fn filter(heights_m: &[f64], lambda: f64) -> Trend {
    let n = heights_m.len();
    if n < 3 || lambda <= 0.0 {
        return Trend { heights_m: heights_m.to_vec(), gap: 0.0, steps: 0 };
    }
    let mut state = State::new(heights_m, lambda);
    let mut gap = state.gap();
    let mut steps = 0;
    // Bounded: each pass is one Newton step.
    while gap > GAP && steps < MOST_STEPS {
        state.tighten(gap);
        state.solve();
        state.advance();
        gap = state.gap();
        steps += 1;
    }
    Trend { heights_m: state.primal(heights_m), gap, steps }
}

struct State {
    lambda: f64,
    /// D y.
    dy: Vec<f64>,
    /// The dual variable, within ±λ.
    z: Vec<f64>,
    /// Multipliers of z ≤ λ and of −z ≤ λ.
    upper: Vec<f64>,
    lower: Vec<f64>,
    /// D Dᵀ z.
    ddz: Vec<f64>,
    /// Newton directions.
    dz: Vec<f64>,
    d_upper: Vec<f64>,
    d_lower: Vec<f64>,
    /// D Dᵀ dz.
    dddz: Vec<f64>,
    /// Factors of the pentadiagonal matrix.
    near: Vec<f64>,
    inverse: Vec<f64>,
    barrier: f64,
    last_step: f64,
}

impl State {
    fn new(y: &[f64], lambda: f64) -> State {
        let m = y.len() - 2;
        State {
            lambda,
            dy: (0..m).map(|i| y[i] - 2.0 * y[i + 1] + y[i + 2]).collect(),
            z: vec![0.0; m],
            upper: vec![1.0; m],
            lower: vec![1.0; m],
            ddz: vec![0.0; m],
            dz: vec![0.0; m],
            d_upper: vec![0.0; m],
            d_lower: vec![0.0; m],
            dddz: vec![0.0; m],
            near: vec![0.0; m],
            inverse: vec![0.0; m],
            barrier: 1e-10,
            last_step: 1.0,
        }
    }

    /// Primal less dual objective of the present z. Both are feasible, so it bounds the error.
    fn gap(&self) -> f64 {
        let mut quadratic = 0.0;
        let mut bend = 0.0;
        let mut linear = 0.0;
        for i in 0..self.z.len() {
            quadratic += self.z[i] * self.ddz[i];
            bend += (self.dy[i] - self.ddz[i]).abs();
            linear += self.dy[i] * self.z[i];
        }
        // ½‖Dᵀz‖² + λ‖Dx‖₁ − (−½‖Dᵀz‖² + (Dy)ᵀz)
        quadratic + self.lambda * bend - linear
    }

    fn tighten(&mut self, gap: f64) {
        if self.last_step >= LONG_STEP {
            let m = self.z.len() as f64;
            self.barrier = (2.0 * m * TIGHTEN / gap).max(1.2 * self.barrier);
        }
    }

    /// Newton direction: one pass down (set up, factor, forward), one pass up, one for the rest.
    fn solve(&mut self) {
        let m = self.z.len();
        let relax = 1.0 / self.barrier;
        let (mut near1, mut inverse1, mut inverse2) = (0.0, 0.0, 0.0);
        let (mut r1, mut r2) = (0.0, 0.0);
        for i in 0..m {
            let f_upper = 1.0 / (self.z[i] - self.lambda);
            let f_lower = 1.0 / (-self.z[i] - self.lambda);
            let diagonal = 6.0 - self.upper[i] * f_upper - self.lower[i] * f_lower;
            let right = self.dy[i] - self.ddz[i] + relax * (f_upper - f_lower);
            // L D Lᵀ of the matrix with rows (1, −4, d, −4, 1).
            let product = if i > 0 { -4.0 - near1 } else { 0.0 };
            let near = product * inverse1;
            let far = inverse2;
            let pivot = diagonal - near * product - far;
            let r = right - near * r1 - far * r2;
            self.near[i] = near;
            self.inverse[i] = 1.0 / pivot;
            self.dz[i] = r;
            (inverse2, inverse1, near1) = (inverse1, self.inverse[i], near);
            (r2, r1) = (r1, r);
        }
        let (mut x1, mut x2) = (0.0, 0.0);
        for i in (0..m).rev() {
            let near = if i + 1 < m { self.near[i + 1] } else { 0.0 };
            let far = if i + 2 < m { self.inverse[i] } else { 0.0 };
            let x = self.dz[i] * self.inverse[i] - near * x1 - far * x2;
            self.dz[i] = x;
            (x2, x1) = (x1, x);
        }
        multiply(&self.dz, &mut self.dddz);
        for i in 0..m {
            let f_upper = 1.0 / (self.z[i] - self.lambda);
            let f_lower = 1.0 / (-self.z[i] - self.lambda);
            self.d_upper[i] = -(self.upper[i] + (relax + self.dz[i] * self.upper[i]) * f_upper);
            self.d_lower[i] = -(self.lower[i] + (relax - self.dz[i] * self.lower[i]) * f_lower);
        }
    }

    /// Longest step that keeps the multipliers positive and z within its bounds.
    fn longest_step(&self) -> f64 {
        let mut step = 1.0f64;
        for i in 0..self.z.len() {
            if self.d_upper[i] < 0.0 {
                step = step.min(-INSIDE * self.upper[i] / self.d_upper[i]);
            }
            if self.d_lower[i] < 0.0 {
                step = step.min(-INSIDE * self.lower[i] / self.d_lower[i]);
            }
            let room = if self.dz[i] > 0.0 { self.lambda - self.z[i] } else { self.lambda + self.z[i] };
            if self.dz[i].abs() * step > INSIDE * room {
                step = INSIDE * room / self.dz[i].abs();
            }
        }
        step
    }

    /// Square of the residual after a step of this length along the direction.
    fn residual(&self, step: f64) -> f64 {
        let relax = 1.0 / self.barrier;
        let mut sum = 0.0;
        for i in 0..self.z.len() {
            let z = self.z[i] + step * self.dz[i];
            let upper = self.upper[i] + step * self.d_upper[i];
            let lower = self.lower[i] + step * self.d_lower[i];
            let dual = self.ddz[i] + step * self.dddz[i] - self.dy[i] + upper - lower;
            let centre_upper = -upper * (z - self.lambda) - relax;
            let centre_lower = -lower * (-z - self.lambda) - relax;
            sum += dual * dual + centre_upper * centre_upper + centre_lower * centre_lower;
        }
        sum
    }

    fn advance(&mut self) {
        let before = self.residual(0.0).sqrt();
        let mut step = self.longest_step();
        for _ in 0..MOST_HALVINGS {
            if self.residual(step).sqrt() <= (1.0 - DECREASE * step) * before {
                break;
            }
            step *= 0.5;
        }
        for i in 0..self.z.len() {
            self.z[i] += step * self.dz[i];
            self.upper[i] += step * self.d_upper[i];
            self.lower[i] += step * self.d_lower[i];
        }
        // Anew rather than added up: errors of rounding must not gather over the steps.
        multiply(&self.z, &mut self.ddz);
        self.last_step = step;
    }

    /// x = y − Dᵀz.
    fn primal(&self, y: &[f64]) -> Vec<f64> {
        let m = self.z.len();
        let at = |i: usize| if i < m { self.z[i] } else { 0.0 };
        (0..y.len())
            .map(|i| {
                let first = if i >= 2 { at(i - 2) } else { 0.0 };
                let second = if i >= 1 { at(i - 1) } else { 0.0 };
                y[i] - (first - 2.0 * second + at(i))
            })
            .collect()
    }
}

/// D Dᵀ v, rows (1, −4, 6, −4, 1).
fn multiply(v: &[f64], out: &mut [f64]) {
    let m = v.len();
    let at = |i: usize| v.get(i).copied().unwrap_or(0.0);
    for i in 0..m {
        if i >= 2 && i + 2 < m {
            let w = &v[i - 2..i + 3];
            out[i] = (w[0] + w[4]) - 4.0 * (w[1] + w[3]) + 6.0 * w[2];
        } else {
            let back2 = if i >= 2 { v[i - 2] } else { 0.0 };
            let back1 = if i >= 1 { v[i - 1] } else { 0.0 };
            out[i] = (back2 + at(i + 2)) - 4.0 * (back1 + at(i + 1)) + 6.0 * v[i];
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{CLOSE_M, filter};

    fn objective(y: &[f64], x: &[f64], lambda: f64) -> f64 {
        let near: f64 = y.iter().zip(x).map(|(a, b)| 0.5 * (a - b) * (a - b)).sum();
        let bend: f64 = x.windows(3).map(|w| (w[0] - 2.0 * w[1] + w[2]).abs()).sum();
        near + lambda * bend
    }

    fn wavy(n: usize) -> Vec<f64> {
        (0..n).map(|i| ((i * 7919) % 101) as f64 * 0.05 + (i as f64 - 60.0).abs() * 0.6).collect()
    }

    #[test]
    fn leaves_a_straight_line_alone() {
        let line: Vec<f64> = (0..200).map(|i| 1000.0 - 0.7 * i as f64).collect();
        let trend = filter(&line, 30.0);
        for (a, b) in line.iter().zip(&trend.heights_m) {
            assert!((a - b).abs() < 1e-6, "{a} {b}");
        }
    }

    /// A large λ gives the straight line of least squares (Kim et al. 2009, section 2.2).
    #[test]
    fn becomes_the_least_squares_line() {
        let y = wavy(120);
        let trend = filter(&y, 1e7);
        let n = y.len() as f64;
        let mean_i = (n - 1.0) / 2.0;
        let mean_y = y.iter().sum::<f64>() / n;
        let (mut sxy, mut sxx) = (0.0, 0.0);
        for (i, v) in y.iter().enumerate() {
            sxy += (i as f64 - mean_i) * (v - mean_y);
            sxx += (i as f64 - mean_i) * (i as f64 - mean_i);
        }
        for (i, x) in trend.heights_m.iter().enumerate() {
            let line = mean_y + sxy / sxx * (i as f64 - mean_i);
            assert!((x - line).abs() < 2.0 * CLOSE_M, "{i}: {x} {line}");
        }
    }

    /// No small change of the result lowers the objective by more than the gap allows.
    #[test]
    fn reaches_the_optimum() {
        let y = wavy(300);
        let trend = filter(&y, 30.0);
        assert!(trend.gap <= super::GAP, "gap {}", trend.gap);
        let best = objective(&y, &trend.heights_m, 30.0);
        for i in 0..y.len() {
            for push in [-0.05, 0.05] {
                let mut other = trend.heights_m.clone();
                other[i] += push;
                assert!(objective(&y, &other, 30.0) >= best - trend.gap);
            }
        }
    }
}
