//! The study worker: what is looked at further when the first answer stands.
//!
//! Nothing here decides anything; requests are answered by [`workers::study_desk::StudyDesk`]. The
//! page cancels by ending the worker.

use js_sys::Date;
use workers::message::study::{StudyReply, StudyRequest};
use workers::message::{Arrays, decode};
use workers::scope::{bytes_of, listen, post};
use workers::study_desk::StudyDesk;

/// Least time between two progress messages, ms.
const PROGRESS_GAP_MS: f64 = 100.0;

fn main() {
    let mut desk = StudyDesk::new();
    listen(move |header, parts| {
        let Some((number, request)) = decode::<StudyRequest>(header) else { return };
        let road = parts.into_iter().next().and_then(bytes_of);
        let mut told_at = 0.0;
        desk.answer(request, road, &mut |reply, arrays| {
            if matches!(reply, StudyReply::Progress(_)) {
                let now = Date::now();
                if now - told_at < PROGRESS_GAP_MS {
                    return;
                }
                told_at = now;
            }
            post(number, &reply, &arrays);
        });
    });
    post(0, &StudyReply::Ready, &Arrays::default());
}
