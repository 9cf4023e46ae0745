//! Where the conversation with the worker stands.

use super::asked::{Aim, Asked};
use super::result::{Surveyed, Worked};
use crate::browser::worker::{RawBytes, WorkerClient};
use std::rc::Rc;
use std::sync::Arc;
use workers::message::RoadFacts;

/// Who is told what comes of a question. They are named at the start: the conversation knows none of them.
#[derive(Clone)]
pub(super) struct Followers {
    /// An answer: what was shown before, what was asked, and what it came to.
    pub(super) shown: Rc<dyn Fn(Option<Asked>, Asked, Worked)>,
    /// The road that was to be handed over, and its bytes.
    pub(super) road: Rc<dyn Fn(Arc<RoadFacts>, RawBytes)>,
}

/// Where the conversation stands.
#[derive(Default)]
pub(super) struct Work {
    pub(super) client: Option<WorkerClient>,
    pub(super) ready: bool,
    pub(super) vain_starts: u32,
    pub(super) panic: Option<String>,
    pub(super) sources: u32,
    pub(super) number: u32,
    pub(super) out: Option<Asked>,
    pub(super) holds: Option<u32>,
    pub(super) aim: Option<Aim>,
    pub(super) surveyed: Option<Surveyed>,
    pub(super) shown: Option<Asked>,
    /// The question that a worker stopped on. It is not asked again until the person wants it.
    pub(super) fatal: Option<Asked>,
    pub(super) followers: Option<Followers>,
}

/// Wants what is shown again, as far as file, track and direction go.
pub(super) fn back_to_shown(work: &mut Work) {
    work.aim = work.shown.as_ref().map(Asked::aim);
}
