//! Where requests are answered: what the worker does, without anything of a browser.
//!
//! The desk keeps the file read and the road surveyed, so that another truck, day, direction
//! or track is only planned again. A file that fails leaves what was held before.

use crate::message::{Arrays, CourseFacts, Phase, Reply, Request, RoadArrays, RoadFacts, Task, lane_arrays};
use solver::plan::{Lanes, Plan};
use solver::road::{CourseKind, Document, FileError, Road, read, survey};
use solver::truck::Truck;

/// Takes the replies to one request, in order.
pub type Post<'a> = &'a mut dyn FnMut(Reply, Arrays);

/// What is kept between requests.
#[derive(Default)]
pub struct Desk {
    held: Option<Held>,
    /// Road facts that the page has: course and direction.
    told: Option<(usize, bool)>,
    last: Option<(Plan, Lanes)>,
}

struct Held {
    document: Document,
    course: usize,
    recorded: Road,
    reversed: Option<Road>,
}

impl Held {
    fn road(&self, reversed: bool) -> &Road {
        match (&self.reversed, reversed) {
            (Some(road), true) => road,
            (Some(_) | None, false) | (None, true) => &self.recorded,
        }
    }
}

impl Desk {
    /// A desk with nothing on it.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Answers a request; `file` holds the bytes sent along with [`Request::Open`].
    pub fn answer(&mut self, request: Request, file: Option<Vec<u8>>, post: Post<'_>) {
        match request {
            Request::Open(task) => match self.open(&file.unwrap_or_default(), &task, post) {
                Ok(()) => self.plan(&task, post),
                Err(error) => post(Reply::Failed(error), Arrays::default()),
            },
            Request::Plan(task) => match self.turn_to(&task, post) {
                Ok(true) => self.plan(&task, post),
                Ok(false) => post(Reply::NoRoad, Arrays::default()),
                Err(error) => post(Reply::Failed(error), Arrays::default()),
            },
            Request::Export => post(self.export(), Arrays::default()),
        }
    }

    fn open(&mut self, bytes: &[u8], task: &Task, post: Post<'_>) -> Result<(), FileError> {
        let document = read(bytes, &mut progress(Phase::Reading, post))?;
        let (course, road) = first_road(&document, task.course, post)?;
        self.hold(document, course, road);
        Ok(())
    }

    fn hold(&mut self, document: Document, course: usize, recorded: Road) {
        self.held = Some(Held { document, course, recorded, reversed: None });
        self.told = None;
        self.last = None;
    }

    /// Surveys another track of the file where one is asked for; `false` without a file.
    fn turn_to(&mut self, task: &Task, post: Post<'_>) -> Result<bool, FileError> {
        let Some(held) = &mut self.held else { return Ok(false) };
        if let Some(course) = task.course.filter(|course| *course != held.course) {
            held.recorded = survey(&held.document, course, &mut progress(Phase::Surveying, post))?;
            held.course = course;
            held.reversed = None;
            self.told = None;
        }
        Ok(true)
    }

    fn plan(&mut self, task: &Task, post: Post<'_>) {
        let truck = match Truck::new(task.truck.clone()) {
            Ok(truck) => truck,
            Err(error) => return post(Reply::TruckRefused(error.to_string()), Arrays::default()),
        };
        let day = match task.day.checked() {
            Ok(day) => day,
            Err(error) => return post(Reply::TruckRefused(error.to_string()), Arrays::default()),
        };
        let Some(held) = &mut self.held else {
            return post(Reply::NoRoad, Arrays::default());
        };
        if task.reversed && held.reversed.is_none() {
            held.reversed = Some(held.recorded.reversed());
        }
        let direction = (held.course, task.reversed);
        if self.told != Some(direction) {
            let road = held.road(task.reversed);
            let facts = facts(&held.document, road, direction);
            post(Reply::Surveyed(Box::new(facts)), arrays(road).into_arrays());
            self.told = Some(direction);
        }
        let road = held.road(task.reversed);
        let answer = solver::analyse(road, &truck, &day, &mut progress(Phase::Planning, post));
        // Nobody stops the work here: the page cancels by ending the whole worker.
        let Some((plan, lanes)) = answer else {
            return post(Reply::Failed(FileError::Cancelled), Arrays::default());
        };
        post(Reply::Planned(plan.clone()), lane_arrays(&lanes));
        self.last = Some((plan, lanes));
    }

    fn export(&self) -> Reply {
        match (&self.held, &self.told, &self.last) {
            (Some(held), Some((_, reversed)), Some((plan, lanes))) => {
                Reply::Exported(solver::report::gpx::annotated(held.road(*reversed), plan, lanes))
            }
            (Some(_) | None, Some(_) | None, Some(_) | None) => Reply::NoRoad,
        }
    }
}

fn progress<'a>(phase: Phase, post: &'a mut dyn FnMut(Reply, Arrays)) -> impl FnMut(f32) -> bool + 'a {
    move |share| {
        post(Reply::Progress(phase, share), Arrays::default());
        true
    }
}

/// The track asked for, or else the suggested one, or else the first that makes a road: a file
/// with one good track among poor ones is not refused.
fn first_road(document: &Document, asked: Option<usize>, post: Post<'_>) -> Result<(usize, Road), FileError> {
    let suggested = asked.unwrap_or_else(|| document.suggested());
    let first_error = match survey(document, suggested, &mut progress(Phase::Surveying, post)) {
        Ok(road) => return Ok((suggested, road)),
        Err(error) => error,
    };
    let others = (0..document.courses().len()).filter(|course| *course != suggested && asked.is_none());
    for course in others {
        if let Ok(road) = survey(document, course, &mut progress(Phase::Surveying, post)) {
            return Ok((course, road));
        }
    }
    Err(first_error)
}

fn facts(document: &Document, road: &Road, (course, reversed): (usize, bool)) -> RoadFacts {
    let told = document.courses().iter().map(|course| CourseFacts {
        name: course.name.clone(),
        route: course.kind == CourseKind::Route,
        length_m: course.length_m,
    });
    RoadFacts {
        name: road.name().to_owned(),
        length_m: road.length_m(),
        step_m: road.step_m(),
        base_length_m: road.base_length_m(),
        quality: road.quality(),
        segments: road.segments().to_vec(),
        places: road.places().to_vec(),
        findings: road.findings().to_vec(),
        unassessed: road.unassessed().to_vec(),
        courses: told.collect(),
        course,
        reversed,
    }
}

#[allow(clippy::cast_possible_truncation, reason = "a picture needs no more than single precision")]
fn arrays(road: &Road) -> RoadArrays {
    let single = |values: &[f64]| values.iter().map(|value| *value as f32).collect();
    let last = road.cells();
    // A point is assessed where a cell beside it is, so that a band reaches to its edge.
    let cell = |index: usize| road.assessed().get(index).copied().unwrap_or(false);
    let point = |index: usize| u8::from(cell(index) || index.checked_sub(1).is_some_and(cell));
    RoadArrays {
        heights: single(road.heights_m()),
        recorded: single(road.recorded_m()),
        east: road.shape().0.iter().map(|place| place.x as f32).collect(),
        north: road.shape().0.iter().map(|place| place.y as f32).collect(),
        assessed: (0..=last).map(point).collect(),
    }
}

#[cfg(test)]
mod tests;
