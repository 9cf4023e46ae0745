//! A road whose grades are a little off.

use super::Road;

impl Road {
    /// Takes the grades of `of` with `error` added in each cell. Heights stay: their small effect on the air
    /// does not matter beside the grade itself.
    pub(crate) fn tilt(&mut self, of: &Self, error: impl Fn(usize) -> f64) {
        self.grades.clear();
        self.grades.extend(of.grades.iter().enumerate().map(|(cell, grade)| grade + error(cell)));
    }
}
