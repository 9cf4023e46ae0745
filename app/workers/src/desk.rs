//! Where requests are answered: what the worker does, without anything of a browser.
//!
//! The desk keeps the file read and the road surveyed, so that another truck, day, direction
//! or track is only planned again. A file that fails leaves what was held before.

use crate::message::{
    Arrays, CourseFacts, Given, Phase, Reply, Request, RoadArrays, RoadChoice, RoadFacts, Task, lane_arrays,
};
use solver::road::{CourseKind, Document, FileError, Leg, Road, combine, join, read, survey};
use solver::truck::{Truck, TruckError};

/// Takes the replies to one request, in order.
pub type Post<'a> = &'a mut dyn FnMut(Reply, Arrays);

/// What is kept between requests.
#[derive(Default)]
pub struct Desk {
    held: Option<Held>,
    /// Road that the page has the facts of.
    told: Option<RoadChoice>,
}

/// A document, and the road made of one of its courses once that is known.
struct Held {
    /// None of a road that was made of several recordings.
    document: Option<Document>,
    courses: Vec<CourseFacts>,
    road: Option<Surveyed>,
}

struct Surveyed {
    course: usize,
    recorded: Road,
    /// A part, the other direction, or with other places, made when it was first asked for.
    other: Option<(RoadChoice, Road)>,
}

impl Surveyed {
    /// Makes the road asked for, unless it is there; gives what it is. A part that cannot stand
    /// by itself is not cut: the whole road is shown.
    fn prepare(&mut self, task: &Task) -> RoadChoice {
        let wanted = RoadChoice { course: Some(self.course), ..task.road.clone() };
        let RoadChoice { part, reversed, ref roadside, .. } = wanted;
        let ready = self.other.as_ref().is_some_and(|(shown, _)| *shown == wanted);
        if ready || (part.is_none() && !reversed && roadside.is_none()) {
            return wanted;
        }
        let mut road =
            roadside.as_ref().map_or_else(|| self.recorded.clone(), |it| self.recorded.with_roadside(it));
        let cut = part.and_then(|(from, to)| road.part(from, to));
        let shown = RoadChoice { part: part.filter(|_| cut.is_some()), ..wanted };
        road = cut.unwrap_or(road);
        if reversed {
            road = road.reversed();
        }
        self.other = Some((shown.clone(), road));
        shown
    }

    fn road(&self, shown: &RoadChoice) -> &Road {
        match &self.other {
            Some((other, road)) if other == shown => road,
            Some(_) | None => &self.recorded,
        }
    }
}

impl Desk {
    /// A desk with nothing on it.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Answers a request; `files` holds the bytes sent along with [`Request::Open`].
    pub fn answer(&mut self, request: Request, files: Vec<Vec<u8>>, post: Post<'_>) {
        let (task, ready) = match request {
            Request::Open(task, given) => {
                let opened = self.open(files, &given, task.road.course, post);
                (task, opened)
            }
            Request::Look(course, given) => {
                let alike = alike(files, &given, course, post);
                return post(Reply::Alike(alike), Arrays::default());
            }
            Request::Plan(task) => {
                let turned = self.turn_to(task.road.course, post);
                (task, turned)
            }
            Request::HandOver => return self.hand_over(post),
        };
        match ready {
            Ok(()) => self.plan(&task, post),
            Err(error) => post(Reply::Failed(error), Arrays::default()),
        }
    }

    fn open(
        &mut self,
        files: Vec<Vec<u8>>,
        given: &Given,
        course: Option<usize>,
        post: Post<'_>,
    ) -> Result<(), FileError> {
        let held = if given.also.is_empty() {
            let document = read_all(files, &given.turned, post)?;
            let road = match course.or_else(|| only_usable(&document)) {
                Some(course) => Some(first_survey(&document, course, post)?),
                None => None,
            };
            Held { courses: courses(&document), document: Some(document), road }
        } else {
            all_recordings(files, given, course, post)?
        };
        self.held = Some(held);
        self.told = None;
        Ok(())
    }

    /// Surveys another track of what is held where one is asked for.
    fn turn_to(&mut self, course: Option<usize>, post: Post<'_>) -> Result<(), FileError> {
        let Some(held) = &mut self.held else { return Ok(()) };
        let Some(document) = &held.document else { return Ok(()) };
        let now = held.road.as_ref().map(|road| road.course);
        if let Some(course) = course.filter(|course| Some(*course) != now) {
            held.road = Some(first_survey(document, course, post)?);
            self.told = None;
        }
        Ok(())
    }

    fn plan(&mut self, task: &Task, post: Post<'_>) {
        let truck = match Truck::new(task.truck.clone()) {
            Ok(truck) => truck,
            Err(error) => return post(Reply::TruckRefused(error), Arrays::default()),
        };
        let day = match task.day.checked() {
            Ok(day) => day,
            Err(error) => return post(Reply::TruckRefused(TruckError::Entry(error)), Arrays::default()),
        };
        let Some(held) = &mut self.held else {
            return post(Reply::NoRoad, Arrays::default());
        };
        let Some(surveyed) = &mut held.road else {
            return post(Reply::Choose(held.courses.clone()), Arrays::default());
        };
        let shown = surveyed.prepare(task);
        let road = surveyed.road(&shown);
        if self.told.as_ref() != Some(&shown) {
            let facts = facts(&held.courses, surveyed.course, road, &shown);
            post(Reply::Surveyed(Box::new(facts)), arrays(road).into_arrays());
            self.told = Some(shown.clone());
        }
        let answer = solver::analyse(road, &truck, &day, &mut progress(Phase::Planning, post));
        // Nobody stops the work here: the page cancels by ending the whole worker.
        let Some((plan, lanes)) = answer else {
            return post(Reply::Failed(FileError::Cancelled), Arrays::default());
        };
        post(Reply::Planned(plan), lane_arrays(&lanes));
    }

    fn hand_over(&self, post: Post<'_>) {
        let road = self.held.as_ref().and_then(|held| held.road.as_ref());
        let road = road.zip(self.told.as_ref()).map(|(surveyed, shown)| surveyed.road(shown));
        match road.and_then(|road| postcard::to_allocvec(road).ok()) {
            Some(bytes) => post(Reply::HandedOver, Arrays { floats: Vec::new(), bytes: vec![bytes] }),
            None => post(Reply::NoRoad, Arrays::default()),
        }
    }
}

/// Reads each file and lets go of its bytes; several become one document.
fn read_all(files: Vec<Vec<u8>>, turned: &[bool], post: Post<'_>) -> Result<Document, FileError> {
    let count = files.len().max(1) as f32;
    let mut documents = Vec::with_capacity(files.len());
    for (index, bytes) in files.into_iter().enumerate() {
        let mut report = |share: f32| {
            post(Reply::Progress(Phase::Reading, (index as f32 + share) / count), Arrays::default());
            true
        };
        documents.push(read(&bytes, &mut report)?);
    }
    if documents.len() == 1 {
        return Ok(documents.remove(0));
    }
    let reversed = |index: usize| turned.get(index).copied().unwrap_or(false);
    let legs: Vec<Leg<'_>> = documents
        .iter()
        .enumerate()
        .map(|(index, document)| Leg { document, course: document.suggested(), reversed: reversed(index) })
        .collect();
    join(&legs)
}

/// The files of one recording.
struct Recording<'a> {
    files: Vec<Vec<u8>>,
    /// Whether each of the files is driven backwards.
    turned: &'a [bool],
    /// The track asked for.
    course: Option<usize>,
}

/// The recordings among the files.
fn recordings(mut files: Vec<Vec<u8>>, given: &Given, course: Option<usize>) -> Vec<Recording<'_>> {
    let mut apart = Vec::with_capacity(given.also.len() + 1);
    for also in given.also.iter().rev() {
        let from = also.from.min(files.len());
        let turned = given.turned.get(from..).unwrap_or_default();
        apart.push(Recording { files: files.split_off(from), turned, course: also.course });
    }
    apart.push(Recording { files, turned: &given.turned, course });
    apart.reverse();
    apart
}

/// The road of a recording, of the track asked for or else the longest; with the track and its facts.
fn recording(it: Recording<'_>, post: Post<'_>) -> Result<(Road, usize, Vec<CourseFacts>), FileError> {
    let document = read_all(it.files, it.turned, post)?;
    let course = it.course.unwrap_or_else(|| document.suggested());
    let road = survey(&document, course, &mut progress(Phase::Surveying, post))?;
    let only = courses(&document).into_iter().skip(course).take(1).collect();
    Ok((road, course, only))
}

/// One road of two recordings; the second may have been made the other way.
fn together(road: &Road, other: &Road) -> Option<Road> {
    combine(road, other).or_else(|| combine(road, &other.reversed()))
}

fn all_recordings(
    files: Vec<Vec<u8>>,
    given: &Given,
    course: Option<usize>,
    post: Post<'_>,
) -> Result<Held, FileError> {
    let mut held: Option<(Road, usize, Vec<CourseFacts>)> = None;
    let carried = given.carried.as_ref();
    let last = given.also.len();
    for (index, it) in recordings(files, given, course).into_iter().enumerate() {
        let (road, course, facts) = recording(it, post)?;
        let put = if index == last { carried.and_then(|it| it.last.as_ref()) } else { None };
        let road = put.map(|it| road.with_roadside(it)).unwrap_or(road);
        let (mut road, course, facts) = match held {
            None => (road, course, facts),
            Some((before, course, facts)) => {
                let both = together(&before, &road).ok_or(FileError::NotOneRoad { recording: index + 1 })?;
                (both, course, facts)
            }
        };
        if let Some(put) = carried.and_then(|it| it.before.as_ref()).filter(|_| index + 1 == last) {
            road = road.with_roadside(put);
        }
        held = Some((road, course, facts));
    }
    let (recorded, course, courses) = held.ok_or(FileError::Empty)?;
    Ok(Held { document: None, courses, road: Some(Surveyed { course, recorded, other: None }) })
}

/// For each recording the first one before it that is of the same road. One that cannot be read is of none:
/// why not is said when somebody opens it.
fn alike(files: Vec<Vec<u8>>, given: &Given, course: Option<usize>, post: Post<'_>) -> Vec<Option<usize>> {
    let mut roads: Vec<Option<Road>> = Vec::new();
    let mut alike = Vec::new();
    for it in recordings(files, given, course) {
        let road = recording(it, post).ok().map(|(road, ..)| road);
        let same = |before: &Option<Road>| {
            let both = before.as_ref().zip(road.as_ref());
            both.is_some_and(|(before, road)| together(before, road).is_some())
        };
        alike.push(roads.iter().position(same));
        roads.push(road);
    }
    alike
}

/// The course to take without asking: the only one that could make a road, or, where none
/// could, the one whose error tells most.
fn only_usable(document: &Document) -> Option<usize> {
    let mut usable = document.usable();
    match (usable.next(), usable.next()) {
        (Some(only), None) => Some(only),
        (None, _) => Some(document.suggested()),
        (Some(_), Some(_)) => None,
    }
}

fn first_survey(document: &Document, course: usize, post: Post<'_>) -> Result<Surveyed, FileError> {
    let recorded = survey(document, course, &mut progress(Phase::Surveying, post))?;
    Ok(Surveyed { course, recorded, other: None })
}

fn progress<'a>(phase: Phase, post: &'a mut dyn FnMut(Reply, Arrays)) -> impl FnMut(f32) -> bool + 'a {
    move |share| {
        post(Reply::Progress(phase, share), Arrays::default());
        true
    }
}

fn courses(document: &Document) -> Vec<CourseFacts> {
    let mut usable = vec![false; document.courses().len()];
    document.usable().for_each(|course| usable[course] = true);
    let told = document.courses().iter().enumerate().map(|(index, course)| CourseFacts {
        name: course.name.clone(),
        route: course.kind == CourseKind::Route,
        length_m: course.length_m,
        usable: usable[index],
    });
    told.collect()
}

fn facts(courses: &[CourseFacts], course: usize, road: &Road, shown: &RoadChoice) -> RoadFacts {
    RoadFacts {
        name: road.name().to_owned(),
        length_m: road.length_m(),
        step_m: road.step_m(),
        base_length_m: road.base_length_m(),
        quality: road.quality(),
        segments: road.segments().to_vec(),
        places: road.places().to_vec(),
        limits: road.limits().to_vec(),
        findings: road.findings().to_vec(),
        unassessed: road.unassessed().to_vec(),
        courses: courses.to_vec(),
        course,
        part: shown.part,
        reversed: shown.reversed,
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
