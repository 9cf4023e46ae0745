//! What is asked of the study worker, and where the conversation with it stands.

use super::queue::Queue;
use crate::browser::worker::{Heard, RawBytes, WorkerClient};
use std::rc::Rc;
use std::sync::Arc;
use workers::message::RoadFacts;
use workers::message::study::{StudyReply, StudyRequest};

/// What becomes of a question.
pub(super) enum Told<'a> {
    /// An answer or a part of it, and the arrays beside it.
    Reply(StudyReply, &'a Heard),
    /// No worker will answer.
    GivenUp,
}

/// A question, and who is told what becomes of it.
pub(super) struct Question {
    pub(super) request: StudyRequest,
    /// The road that it is about.
    pub(super) road: Option<Road>,
    pub(super) told: Rc<dyn Fn(Told<'_>)>,
}

/// The road that a question is about.
#[derive(Clone)]
pub(super) struct Road {
    pub(super) facts: Arc<RoadFacts>,
    /// `None` until the first worker has handed it over.
    pub(super) bytes: Option<RawBytes>,
}

impl Road {
    /// Whether these facts are of this road.
    pub(super) fn is(&self, facts: &Arc<RoadFacts>) -> bool {
        Arc::ptr_eq(&self.facts, facts)
    }
}

impl Question {
    /// Whether the question can be posted only after its road was handed over.
    pub(super) fn lacks_road(&self) -> bool {
        self.road.as_ref().is_some_and(|road| road.bytes.is_none())
    }

    /// Whether the question is about the result shown, and about no other.
    pub(super) fn is_about_the_result(&self) -> bool {
        match self.request {
            StudyRequest::Study(..) | StudyRequest::Ride(..) | StudyRequest::Worth(..) => true,
            StudyRequest::Export(..)
            | StudyRequest::Measure(..)
            | StudyRequest::WriteTruck(_)
            | StudyRequest::ReadTruck(_)
            | StudyRequest::WriteLink(..)
            | StudyRequest::ReadLink(_)
            | StudyRequest::WriteProject(_)
            | StudyRequest::ReadProject(..) => false,
        }
    }
}

/// Where the conversation with the study worker stands.
#[derive(Default)]
pub(super) struct StudyWork {
    pub(super) client: Option<WorkerClient>,
    pub(super) queue: Queue<Question>,
    /// The road that was handed over last.
    pub(super) road: Option<Road>,
    /// The road that the worker has.
    pub(super) holds: Option<Arc<RoadFacts>>,
}
