//! Questions to a worker that answers one after the other, and what becomes of them when it is ended.
//!
//! Nothing here is of a browser: whoever has a worker posts what may go, and tells what came back.

use std::collections::VecDeque;

/// Questions in the order in which they were asked.
pub(super) struct Queue<Q> {
    waiting: VecDeque<Q>,
    /// Posted and not answered to the end, each with its number.
    posted: VecDeque<(u32, Q)>,
    /// Number of the question posted last, to whichever worker.
    number: u32,
    ready: bool,
}

impl<Q> Default for Queue<Q> {
    fn default() -> Self {
        Self { waiting: VecDeque::new(), posted: VecDeque::new(), number: 0, ready: false }
    }
}

impl<Q> Queue<Q> {
    /// Puts a question behind all others.
    pub(super) fn push(&mut self, question: Q) {
        self.waiting.push_back(question);
    }

    /// Notes that the worker hears from now on.
    pub(super) fn set_ready(&mut self) {
        self.ready = true;
    }

    /// Whether the worker hears.
    pub(super) fn is_ready(&self) -> bool {
        self.ready
    }

    /// The questions that are not posted.
    pub(super) fn waiting(&mut self) -> impl Iterator<Item = &mut Q> {
        self.waiting.iter_mut()
    }

    /// Whether questions wait to be posted.
    pub(super) fn waits(&self) -> bool {
        !self.waiting.is_empty()
    }

    /// Posts the questions that may go, in their order; one that `send` refuses waits on.
    pub(super) fn post(&mut self, may: impl Fn(&Q) -> bool, mut send: impl FnMut(u32, &Q) -> bool) {
        if !self.ready {
            return;
        }
        for question in std::mem::take(&mut self.waiting) {
            if may(&question) && send(self.number + 1, &question) {
                self.number += 1;
                self.posted.push_back((self.number, question));
            } else {
                self.waiting.push_back(question);
            }
        }
    }

    /// The question that a part of an answer is about; `None` where the question was given up.
    pub(super) fn in_part(&self, number: u32) -> Option<&Q> {
        self.posted.iter().find(|(it, _)| *it == number).map(|(_, question)| question)
    }

    /// The question that is answered to the end.
    pub(super) fn answered(&mut self, number: u32) -> Option<Q> {
        let at = self.posted.iter().position(|(it, _)| *it == number)?;
        self.posted.remove(at).map(|(_, question)| question)
    }

    /// Drops the questions that nobody wants answered any more; whether one of them was posted: the worker
    /// may be at it, and only its end stops it.
    pub(super) fn cancel(&mut self, which: impl Fn(&Q) -> bool) -> bool {
        let posted = self.posted.len();
        self.waiting.retain(|question| !which(question));
        self.posted.retain(|(_, question)| !which(question));
        self.posted.len() < posted
    }

    /// The worker ended: what was posted and not answered waits for the next one, before all else.
    pub(super) fn restart(&mut self) {
        self.ready = false;
        for (_, question) in std::mem::take(&mut self.posted).into_iter().rev() {
            self.waiting.push_front(question);
        }
    }

    /// The worker stopped on an error of its own: gives the question that it was at, which is not asked
    /// again. The others wait for the next worker.
    pub(super) fn stopped(&mut self) -> Option<Q> {
        let at_work = self.posted.pop_front().map(|(_, question)| question);
        self.restart();
        at_work
    }

    /// Takes out questions that are not posted.
    pub(super) fn take_waiting(&mut self, which: impl Fn(&Q) -> bool) -> Vec<Q> {
        let all = std::mem::take(&mut self.waiting).into_iter();
        let (taken, kept): (VecDeque<Q>, VecDeque<Q>) = all.partition(which);
        self.waiting = kept;
        taken.into()
    }
}

#[cfg(test)]
mod tests {
    use super::Queue;

    /// Posts all that may go; what went, with its number.
    fn post(queue: &mut Queue<&'static str>) -> Vec<(u32, &'static str)> {
        let mut went = Vec::new();
        queue.post(
            |_| true,
            |number, question| {
                went.push((number, *question));
                true
            },
        );
        went
    }

    fn asked(questions: &[&'static str]) -> Queue<&'static str> {
        let mut queue = Queue::default();
        questions.iter().for_each(|it| queue.push(*it));
        queue
    }

    #[test]
    fn what_is_posted_behind_a_long_answer_survives_the_end_of_the_worker() {
        let mut queue = asked(&["study", "write the truck", "write a project"]);
        assert_eq!(post(&mut queue), [], "no worker hears yet");
        queue.set_ready();
        assert_eq!(post(&mut queue), [(1, "study"), (2, "write the truck"), (3, "write a project")]);
        // Another result: the study is cancelled on purpose, and the worker is ended with it.
        assert!(queue.cancel(|it| *it == "study"));
        queue.restart();
        queue.push("study the other");
        assert_eq!(post(&mut queue), []);
        queue.set_ready();
        assert_eq!(
            post(&mut queue),
            [(4, "write the truck"), (5, "write a project"), (6, "study the other")]
        );
        assert_eq!(queue.answered(2), None, "a late answer of the former worker");
        assert_eq!(queue.answered(4), Some("write the truck"));
        assert_eq!(queue.answered(4), None);
    }

    #[test]
    fn only_what_the_worker_may_be_at_asks_for_its_end() {
        let mut queue = asked(&["write the truck"]);
        queue.set_ready();
        post(&mut queue);
        queue.push("study");
        assert!(!queue.cancel(|it| *it == "study"), "it was not posted");
        assert!(!queue.waits());
        assert_eq!(queue.in_part(1), Some(&"write the truck"));
    }

    #[test]
    fn what_may_not_go_yet_is_overtaken_and_keeps_its_turn() {
        let mut queue = asked(&["study", "write", "ride"]);
        queue.set_ready();
        queue.post(|it| *it == "write", |_, _| true);
        assert_eq!(queue.waiting().map(|it| *it).collect::<Vec<_>>(), ["study", "ride"]);
        // What cannot be sent is not lost.
        queue.post(|_| true, |_, _| false);
        assert_eq!(post(&mut queue), [(2, "study"), (3, "ride")]);
    }

    #[test]
    fn a_question_that_stops_the_worker_is_not_asked_again() {
        let mut queue = asked(&["study", "write", "ride"]);
        queue.set_ready();
        post(&mut queue);
        assert_eq!(queue.answered(1), Some("study"));
        queue.push("read");
        assert_eq!(queue.stopped(), Some("write"));
        assert!(!queue.is_ready());
        assert_eq!(queue.take_waiting(|_| true), ["ride", "read"]);
        assert_eq!(queue.stopped(), None);
    }
}
