//! Where studies are made: what the study worker does, without anything of a browser.

use crate::message::Arrays;
use crate::message::study::{StudyReply, StudyRequest, band_arrays, ride_arrays};
use solver::day::Day;
use solver::limits::Entry;
use solver::motion::Trip;
use solver::plan::Plan;
use solver::report::gpx::Captions;
use solver::report::{entries, project, truck_file};
use solver::road::Road;
use solver::study::{Seen, Slip, measured, ride, study, sureness, worth};
use solver::truck::{Truck, TruckSpec};

/// Takes the replies to one request, in order.
pub type Post<'a> = &'a mut dyn FnMut(StudyReply, Arrays);

/// What is kept between requests.
#[derive(Default)]
pub struct StudyDesk {
    road: Option<Road>,
    last: Option<Last>,
}

/// The plan worked out last, and what it is for.
struct Last {
    truck: Truck,
    day: Day,
    plan: Plan,
}

impl StudyDesk {
    /// A desk with nothing on it.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Answers a request; `road` holds the bytes of another road where some come along.
    pub fn answer(&mut self, request: StudyRequest, road: Option<Vec<u8>>, post: Post<'_>) {
        if let Some(bytes) = road {
            self.road = postcard::from_bytes(&bytes).ok();
            self.last = None;
        }
        match request {
            StudyRequest::Study(truck, day) => self.study(truck, day, post),
            StudyRequest::Ride(truck, day, slip) => self.ride(truck, day, slip, post),
            StudyRequest::Worth(truck, day, entry) => self.worth(truck, day, entry, post),
            StudyRequest::Measure(truck, day, seen) => measure(truck, &day, seen, post),
            StudyRequest::WriteTruck(truck) => {
                post(StudyReply::TruckWritten(truck_file::write(&truck)), Arrays::default());
            }
            StudyRequest::ReadTruck(text) => {
                let read = truck_file::read(&text).map(Box::new);
                post(StudyReply::TruckRead(read), Arrays::default());
            }
            StudyRequest::WriteLink(truck, day) => {
                post(StudyReply::LinkWritten(entries::write(&truck, &day)), Arrays::default());
            }
            StudyRequest::ReadLink(text) => {
                post(StudyReply::LinkRead(entries::read(&text).map(Box::new)), Arrays::default());
            }
            StudyRequest::WriteProject(it) => {
                post(StudyReply::ProjectWritten(project::write(&it)), Arrays::default());
            }
            StudyRequest::ReadProject(line, behind) => {
                let read = project::read(&line, behind).map(Box::new);
                post(StudyReply::ProjectRead(read), Arrays::default());
            }
            StudyRequest::Export(truck, day, captions) => self.export(truck, day, &captions, post),
        }
    }

    fn study(&mut self, spec: TruckSpec, day: Day, post: Post<'_>) {
        let Some((road, Last { truck, day, plan })) = self.planned(spec, day) else {
            return post(StudyReply::Nothing, Arrays::default());
        };
        post(StudyReply::Studied(study(road, truck, day, plan)), Arrays::default());
        let mut progress = |share: f32| {
            post(StudyReply::Progress(share), Arrays::default());
            true
        };
        match sureness(road, truck, day, plan, &mut progress) {
            Some((sureness, bands)) => post(StudyReply::Sure(Some(sureness)), band_arrays(bands)),
            None => post(StudyReply::Sure(None), Arrays::default()),
        }
    }

    fn ride(&mut self, spec: TruckSpec, day: Day, slip: Slip, post: Post<'_>) {
        let Some((road, Last { truck, day, plan })) = self.planned(spec, day) else {
            return post(StudyReply::Nothing, Arrays::default());
        };
        match ride(road, truck, day, plan, slip) {
            Some((end, lanes)) => post(StudyReply::Ridden(slip, Some(end)), ride_arrays(lanes)),
            None => post(StudyReply::Ridden(slip, None), Arrays::default()),
        }
    }

    fn worth(&mut self, spec: TruckSpec, day: Day, entry: Entry, post: Post<'_>) {
        let planned = self.planned(spec, day);
        let told = planned.and_then(|(road, Last { truck, day, plan })| worth(road, truck, day, plan, entry));
        post(StudyReply::Worth(entry, told), Arrays::default());
    }

    /// The road and its plan for this truck and day. It is worked out here rather than sent along:
    /// that is quick, and it is surely that of this road, truck and day. The last one is kept.
    fn planned(&mut self, spec: TruckSpec, day: Day) -> Option<(&Road, &Last)> {
        let road = self.road.as_ref()?;
        if !self.last.as_ref().is_some_and(|last| *last.truck.spec() == spec && last.day == day) {
            self.last = None;
            let truck = Truck::new(spec).ok()?;
            let (plan, _) = solver::analyse(road, &truck, &day, &mut |_| true)?;
            self.last = Some(Last { truck, day, plan });
        }
        Some((road, self.last.as_ref()?))
    }

    fn export(&mut self, spec: TruckSpec, day: Day, captions: &Captions, post: Post<'_>) {
        let reply = match self.planned(spec, day) {
            Some((road, Last { plan, .. })) => {
                solver::report::gpx::annotated(road, plan, captions).map(StudyReply::Exported)
            }
            None => None,
        };
        let reply = reply.unwrap_or(StudyReply::Nothing);
        post(reply, Arrays::default());
    }
}

fn measure(spec: TruckSpec, day: &Day, seen: Seen, post: Post<'_>) {
    let reply = match Truck::new(spec) {
        Err(_) => StudyReply::Nothing,
        Ok(truck) => StudyReply::Measured(measured(Trip { truck: &truck, day }, seen)),
    };
    post(reply, Arrays::default());
}

#[cfg(test)]
mod tests;
