//! A worker beside the page's own: it works out one road after the other, each by itself.

use super::asked::{Asked, Source};
use super::result::{Surveyed, Worked};
use crate::browser::worker::{Heard, WorkerClient, WorkerKind};
use crate::trouble::WorkTrouble;
use solver::road::FileError;
use solver::truck::TruckError;
use std::cell::RefCell;
use std::rc::Rc;
use std::sync::Arc;
use workers::message::{Reply, Request, decode, encode};

/// Such a worker; it ends when this is dropped, which it must not be while it speaks.
pub(super) struct RoadWorker {
    at: Rc<RefCell<At>>,
}

#[derive(Default)]
struct At {
    client: Option<WorkerClient>,
    asked: Option<Asked>,
    surveyed: Option<Surveyed>,
}

/// What it says.
pub(super) enum Said {
    /// It can be asked.
    Ready,
    /// It is through with what was asked, and can be asked again.
    Done(Box<Asked>, Result<Arc<Worked>, Refused>),
    /// For each recording that was looked at the first one before it that is of the same road.
    Alike(Vec<Option<usize>>),
    /// It stopped on an error; what it was at is given up.
    Stopped,
}

/// Why a road was not worked out.
pub(super) enum Refused {
    /// Because of its file.
    File(FileError),
    /// Because of the truck.
    Truck(TruckError),
    /// No track of it makes a road.
    NoTrack,
}

impl Refused {
    /// What the page says of it.
    pub(super) fn trouble(self, asked: &Asked) -> WorkTrouble {
        match self {
            Self::File(error) => WorkTrouble::File { name: asked.source.name(), error },
            Self::Truck(error) => WorkTrouble::Truck { error },
            Self::NoTrack => WorkTrouble::NotAFile,
        }
    }
}

impl RoadWorker {
    /// Starts one; `None` where the browser has no workers.
    pub(super) fn start(said: impl Fn(Said) + Clone + 'static) -> Option<Self> {
        let at = Rc::new(RefCell::new(At::default()));
        let heard_by = Rc::downgrade(&at);
        let stopped = said.clone();
        let client = WorkerClient::start(
            WorkerKind::First,
            move |heard| {
                // What is said is said with nothing borrowed: the answer may be the next question.
                let told = heard_by.upgrade().and_then(|at| at.borrow_mut().hear(&heard));
                if let Some(told) = told {
                    said(told);
                }
            },
            move || stopped(Said::Stopped),
        )?;
        at.borrow_mut().client = Some(client);
        Some(Self { at })
    }

    /// Gives it a road; once it is ready, and one at a time.
    pub(super) fn work_out(&self, asked: Asked) {
        let mut at = self.at.borrow_mut();
        let request = Request::Open(asked.task.clone(), asked.source.given());
        let files = asked.source.legs.iter().map(|leg| &leg.file.blob);
        if let Some(client) = &at.client {
            client.send(&encode(0, &request), files);
        }
        at.asked = Some(asked);
    }

    /// Has it work out the road that it was at last in another way; one at a time.
    pub(super) fn work_out_again(&self, asked: Asked) {
        let mut at = self.at.borrow_mut();
        if let Some(client) = &at.client {
            client.send(&encode(0, &Request::Plan(asked.task.clone())), std::iter::empty());
        }
        at.asked = Some(asked);
    }

    /// Has it tell which recordings are of the same road; once it is ready. The track of the first is named
    /// by itself.
    pub(super) fn look(&self, course: Option<usize>, source: &Source) {
        let files = source.legs.iter().map(|leg| &leg.file.blob);
        if let Some(client) = &self.at.borrow().client {
            client.send(&encode(0, &Request::Look(course, source.given())), files);
        }
    }
}

impl At {
    fn hear(&mut self, heard: &Heard) -> Option<Said> {
        let (_, reply) = decode::<Reply>(&heard.header())?;
        match reply {
            Reply::Ready => Some(Said::Ready),
            Reply::Surveyed(facts) => {
                self.surveyed = Some(Surveyed::new(*facts, heard, None));
                None
            }
            Reply::Planned(plan) => {
                let mut asked = self.asked.take()?;
                let worked = self.surveyed.take()?.with_plan(plan, heard, &asked);
                asked.take_road(&worked.road);
                Some(Said::Done(Box::new(asked), Ok(Arc::new(worked))))
            }
            // Of several tracks the first that makes a road.
            Reply::Choose(courses) => match courses.iter().position(|course| course.usable) {
                Some(course) => {
                    let mut task = self.asked.as_ref()?.task.clone();
                    task.road.course = Some(course);
                    let header = encode(0, &Request::Plan(task));
                    self.client.as_ref()?.send(&header, std::iter::empty());
                    None
                }
                None => self.refuse(Refused::NoTrack),
            },
            Reply::Failed(error) => self.refuse(Refused::File(error)),
            Reply::TruckRefused(error) => self.refuse(Refused::Truck(error)),
            Reply::NoRoad => self.refuse(Refused::NoTrack),
            Reply::Alike(alike) => Some(Said::Alike(alike)),
            Reply::Progress(..) | Reply::HandedOver | Reply::Panicked(_) => None,
        }
    }

    fn refuse(&mut self, refused: Refused) -> Option<Said> {
        // Only looked at: of files that cannot be read nothing is known.
        let Some(asked) = self.asked.take() else { return Some(Said::Alike(Vec::new())) };
        Some(Said::Done(Box::new(asked), Err(refused)))
    }
}
