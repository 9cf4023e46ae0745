//! Writes the text of an SVG path to a tenth of a pixel.
//!
//! Integer digits only: a picture of a long road writes thousands of numbers a frame, and
//! the general printing of floats would be most of the work.

/// A path being written.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Path {
    text: String,
    /// Where [`Path::stretch`] ended, in tenths of a px.
    end: Option<(i64, i64)>,
}

/// Pixels are kept inside this bound, so that one wild value cannot break the picture.
const FARTHEST_PX: f64 = 1e6;

impl Path {
    /// Begins a new part at (x, y), px.
    pub(crate) fn move_to(&mut self, x: f64, y: f64) {
        self.text.push('M');
        self.point(x, y);
    }

    /// Draws a straight line to (x, y), px.
    pub(crate) fn line_to(&mut self, x: f64, y: f64) {
        self.text.push('L');
        self.point(x, y);
    }

    /// Closes the part that is open.
    pub(crate) fn close(&mut self) {
        self.text.push('Z');
    }

    /// Adds a closed rectangle.
    pub(crate) fn rectangle(&mut self, x: f64, y: f64, width: f64, height: f64) {
        self.move_to(x, y);
        self.text.push('H');
        write_tenths(&mut self.text, x + width);
        self.text.push('V');
        write_tenths(&mut self.text, y + height);
        self.text.push('H');
        write_tenths(&mut self.text, x);
        self.close();
    }

    /// Adds a line through the points; fewer than two add nothing.
    pub(crate) fn polyline(&mut self, points: &[(f64, f64)]) {
        if points.len() < 2 {
            return;
        }
        let (x, y) = points[0];
        self.move_to(x, y);
        for (x, y) in &points[1..] {
            self.line_to(*x, *y);
        }
    }

    /// Adds a straight stretch; one that begins where the last one ended goes on with it.
    pub(crate) fn stretch(&mut self, from: (f64, f64), to: (f64, f64)) {
        let tenths = |point: (f64, f64)| ((point.0 * 10.0).round() as i64, (point.1 * 10.0).round() as i64);
        if self.end != Some(tenths(from)) {
            self.move_to(from.0, from.1);
        }
        self.line_to(to.0, to.1);
        self.end = Some(tenths(to));
    }

    /// Adds the area between the points and the level `base`; fewer than two add nothing.
    pub(crate) fn area(&mut self, points: &[(f64, f64)], base: f64) {
        if points.len() < 2 {
            return;
        }
        self.move_to(points[0].0, base);
        for (x, y) in points {
            self.line_to(*x, *y);
        }
        self.line_to(points[points.len() - 1].0, base);
        self.close();
    }

    /// Whether nothing was drawn.
    #[must_use]
    pub(crate) fn is_empty(&self) -> bool {
        self.text.is_empty()
    }

    /// What an SVG `d` attribute takes.
    #[must_use]
    pub(crate) fn as_str(&self) -> &str {
        &self.text
    }

    fn point(&mut self, x: f64, y: f64) {
        write_tenths(&mut self.text, x);
        self.text.push(' ');
        write_tenths(&mut self.text, y);
    }
}

/// Writes `value` rounded to a tenth. What is not finite is written as 0: callers leave such
/// points out, and a path that does not parse would blank the whole part.
pub(crate) fn write_tenths(text: &mut String, value: f64) {
    let tenths =
        if value.is_finite() { (value.clamp(-FARTHEST_PX, FARTHEST_PX) * 10.0).round() as i64 } else { 0 };
    if tenths < 0 {
        text.push('-');
    }
    let mut digits = [0_u8; 12];
    let mut rest = tenths.unsigned_abs() / 10;
    let mut count = 0;
    // Ten million has eight digits; the array bounds the loop.
    while count < digits.len() {
        digits[count] = b'0' + (rest % 10) as u8;
        rest /= 10;
        count += 1;
        if rest == 0 {
            break;
        }
    }
    for digit in digits[..count].iter().rev() {
        text.push(char::from(*digit));
    }
    let last = tenths.unsigned_abs() % 10;
    if last != 0 {
        text.push('.');
        text.push(char::from(b'0' + last as u8));
    }
}

#[cfg(test)]
mod tests {
    use super::{Path, write_tenths};

    fn written(value: f64) -> String {
        let mut text = String::new();
        write_tenths(&mut text, value);
        text
    }

    #[test]
    fn numbers_are_written_to_a_tenth() {
        assert_eq!(written(0.0), "0");
        assert_eq!(written(12.34), "12.3");
        assert_eq!(written(-0.26), "-0.3");
        assert_eq!(written(1040.0), "1040");
        assert_eq!(written(-7.96), "-8");
        assert_eq!(written(f64::NAN), "0");
        assert_eq!(written(1e300), "1000000");
    }

    #[test]
    fn shapes() {
        let mut path = Path::default();
        path.rectangle(1.0, 2.0, 3.0, 4.5);
        path.polyline(&[(0.0, 0.0), (5.0, 1.5)]);
        path.polyline(&[(9.0, 9.0)]);
        path.area(&[(0.0, 3.0), (2.0, 1.0)], 10.0);
        assert_eq!(path.as_str(), "M1 2H4V6.5H1ZM0 0L5 1.5M0 10L0 3L2 1L2 10Z");
    }

    #[test]
    fn stretches_that_meet_are_one_line() {
        let mut path = Path::default();
        path.stretch((0.0, 0.0), (1.0, 1.0));
        path.stretch((1.0, 1.0), (2.0, 0.0));
        path.stretch((5.0, 5.0), (6.0, 5.0));
        assert_eq!(path.as_str(), "M0 0L1 1L2 0M5 5L6 5");
    }
}
