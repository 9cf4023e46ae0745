//! Heights of a built road: tangents of constant grade joined by parabolas.

use super::Chance;

/// A stretch of the polygon of grades, from one point of intersection to the next.
#[derive(Clone, Copy, Debug)]
pub struct Tangent {
    /// Horizontal length between the points of intersection, metres.
    pub length_m: f64,
    /// Grade, negative downhill.
    pub grade: f64,
    /// Length of the parabola that joins it to the next one, centred on their intersection.
    pub curve_m: f64,
}

/// Heights along a road, exact at every distance.
#[derive(Clone, Debug)]
pub struct Alignment {
    /// Distance, height and grade where the grade begins or ends to change; between two of them
    /// the grade is linear and the height a parabola.
    corners: Vec<Corner>,
}

#[derive(Clone, Copy, Debug)]
struct Corner {
    s_m: f64,
    height_m: f64,
    grade: f64,
}

impl Alignment {
    /// Joins tangents. Where two parabolas would overlap they are shortened to meet.
    ///
    /// # Panics
    /// Without a tangent.
    #[must_use]
    pub fn new(start_height_m: f64, tangents: &[Tangent]) -> Alignment {
        assert!(!tangents.is_empty(), "a road has at least one grade");
        let mut corners = vec![Corner { s_m: 0.0, height_m: start_height_m, grade: tangents[0].grade }];
        let mut meeting = 0.0;
        for pair in tangents.windows(2) {
            meeting += pair[0].length_m;
            let room = pair[0].length_m.min(pair[1].length_m);
            let half = 0.5 * pair[0].curve_m.min(room);
            push(&mut corners, meeting - half, pair[0].grade);
            push(&mut corners, meeting + half, pair[1].grade);
        }
        let last = tangents[tangents.len() - 1];
        push(&mut corners, meeting + last.length_m, last.grade);
        Alignment { corners }
    }

    /// Grades at stations, linear between them: distance, metres, and grade.
    ///
    /// # Panics
    /// Without a station.
    #[must_use]
    pub fn of_stations(start_height_m: f64, stations: &[(f64, f64)]) -> Alignment {
        let (s_m, grade) = stations[0];
        let mut corners = vec![Corner { s_m, height_m: start_height_m, grade }];
        for (s_m, grade) in &stations[1..] {
            push(&mut corners, *s_m, *grade);
        }
        Alignment { corners }
    }

    /// The alignment, everywhere steeper downhill by this grade.
    #[must_use]
    pub fn steeper(&self, by: f64) -> Alignment {
        let tilt = |corner: &Corner| Corner {
            s_m: corner.s_m,
            height_m: corner.height_m - by * corner.s_m,
            grade: corner.grade - by,
        };
        Alignment { corners: self.corners.iter().map(tilt).collect() }
    }

    /// Random tangents, up and down, of about this length in all.
    #[must_use]
    pub fn random(chance: &mut Chance, length_m: f64) -> Alignment {
        let mut tangents = Vec::new();
        let mut sum = 0.0;
        let mut height_m = 800.0;
        while sum < length_m {
            let grade = match height_m {
                h if h < 300.0 => chance.between(0.0, 0.08),
                h if h > 2_000.0 => chance.between(-0.10, 0.0),
                _between => chance.between(-0.10, 0.08),
            };
            let tangent = Tangent {
                length_m: chance.between(200.0, 1_500.0),
                grade,
                curve_m: chance.between(60.0, 200.0),
            };
            sum += tangent.length_m;
            height_m += tangent.length_m * grade;
            tangents.push(tangent);
        }
        Alignment::new(800.0, &tangents)
    }

    /// Length, metres.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        self.corners[self.corners.len() - 1].s_m
    }

    /// Height at a distance, metres; constant beyond the ends.
    #[must_use]
    pub fn height_m(&self, s_m: f64) -> f64 {
        let (a, b) = self.around(s_m);
        let t = (s_m - a.s_m).clamp(0.0, b.s_m - a.s_m);
        let bend = (b.grade - a.grade) / (b.s_m - a.s_m);
        a.height_m + t * (a.grade + 0.5 * bend * t)
    }

    /// Mean grade between two distances.
    #[must_use]
    pub fn mean_grade(&self, from_m: f64, to_m: f64) -> f64 {
        (self.height_m(to_m) - self.height_m(from_m)) / (to_m - from_m)
    }

    /// Mean grade of the steepest downhill stretch of this length, sought every 10 m.
    #[must_use]
    pub fn steepest(&self, window_m: f64) -> f64 {
        let steps = ((self.length_m() - window_m) / 10.0).floor().max(0.0) as usize;
        (0..=steps).map(|k| 10.0 * k as f64).map(|s| self.mean_grade(s, s + window_m)).fold(0.0, f64::min)
    }

    /// Where the grade changes: the middle of each parabola, metres.
    #[must_use]
    pub fn meetings_m(&self) -> Vec<f64> {
        let inner = &self.corners[1..self.corners.len() - 1];
        inner.chunks(2).map(|pair| 0.5 * (pair[0].s_m + pair[pair.len() - 1].s_m)).collect()
    }

    fn around(&self, s_m: f64) -> (Corner, Corner) {
        let after = self.corners.partition_point(|corner| corner.s_m <= s_m).clamp(1, self.corners.len() - 1);
        (self.corners[after - 1], self.corners[after])
    }
}

fn push(corners: &mut Vec<Corner>, s_m: f64, grade: f64) {
    let last = corners[corners.len() - 1];
    let length = s_m - last.s_m;
    if length > 1e-9 {
        corners.push(Corner { s_m, height_m: last.height_m + 0.5 * (last.grade + grade) * length, grade });
    }
}
