//! A retarder as its owner knows it: a table by speed and stage.

use crate::limits::bounds;
use crate::units::RevPerMin;
use serde::{Deserialize, Serialize};

/// Meaning of a table's numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TableOf {
    /// Power at the engine by engine speed, kW, motoring included.
    EnginePower,
    /// Sustained torque of the retarder at the propeller shaft by shaft speed, N·m.
    ShaftTorque,
}

/// One row.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TableRow {
    /// Engine or shaft speed, 1/min.
    pub rpm: f64,
    /// One value for each stage, weakest first.
    pub values: Vec<f64>,
}

/// Values are linear between rows. Outside the rows the retarder counts as off: nothing is extrapolated.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EnteredTable {
    /// What the values are.
    pub of: TableOf,
    /// Rows by rising speed.
    pub rows: Vec<TableRow>,
}

impl EnteredTable {
    /// Value of the stage with this index, 0 the weakest; `None` outside the rows.
    pub(super) fn at(&self, stage: usize, speed: RevPerMin) -> Option<f64> {
        let (lowest, highest) = (self.rows.first()?.rpm, self.rows.last()?.rpm);
        // Rounding may put a speed at the very edge on either side of it.
        let edge = |rpm: f64| (speed.0 - rpm).abs() <= 1e-9 * rpm;
        let speed = if edge(lowest) || edge(highest) { speed.0.clamp(lowest, highest) } else { speed.0 };
        let after = self.rows.partition_point(|row| row.rpm < speed);
        let right = self.rows.get(after)?;
        let value = |row: &TableRow| row.values.get(stage).copied().unwrap_or(0.0);
        let Some(left) = after.checked_sub(1).map(|index| &self.rows[index]) else {
            return (right.rpm <= speed).then(|| value(right));
        };
        let share = (speed - left.rpm) / (right.rpm - left.rpm);
        Some(value(left) + share * (value(right) - value(left)))
    }

    /// Stages: those of the first row.
    pub(super) fn stages(&self) -> usize {
        self.rows.first().map_or(0, |row| row.values.len())
    }

    /// Lowest speed of the table, 1/min.
    pub(super) fn lowest_rpm(&self) -> f64 {
        self.rows.first().map_or(0.0, |row| row.rpm)
    }

    /// Whether the table can be computed with: see [`super::super::TruckError::Table`].
    pub(in crate::truck) fn is_sound(&self) -> bool {
        let stages = self.stages();
        let (lowest, highest) = bounds::TABLE_RPM;
        let sound = |row: &TableRow| {
            let finite = row.values.iter().all(|value| *value >= 0.0 && *value <= bounds::TABLE_VALUE);
            let rising = row.values.windows(2).all(|pair| pair[0] <= pair[1]);
            row.values.len() == stages && row.rpm >= lowest && row.rpm <= highest && finite && rising
        };
        let ordered = self.rows.windows(2).all(|pair| pair[0].rpm < pair[1].rpm);
        (1..=bounds::STAGES).contains(&stages)
            && (2..=bounds::TABLE_ROWS).contains(&self.rows.len())
            && ordered
            && self.rows.iter().all(sound)
    }
}
