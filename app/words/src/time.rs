//! Times.

use crate::Spoken;

impl Spoken {
    /// A time to the minute, in hours from 60 minutes on.
    #[must_use]
    pub fn time(&self, seconds: f64) -> String {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "no drive takes longer")]
        let minutes = (seconds / 60.0).round() as usize;
        match minutes {
            0 => self.less_than_a_minute().to_owned(),
            1..60 => self.minutes(minutes),
            _ => self.hours_and_minutes(minutes / 60, minutes % 60),
        }
    }
}
