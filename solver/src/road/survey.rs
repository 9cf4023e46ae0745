//! The way from a course to a road, step by step.

use super::document::{Course, Document};
use super::doubt::Doubt;
use super::error::{Bound, FileError};
use super::finding::{Finding, FindingKind, Unassessed};
use super::profile::{Profile, cells_in};
use super::shown::Mended;
use super::{Parts, Road, Span, artefacts, bounds, clean, curves, heights, places, profile, track};

/// Reason given for heights that end within a cell.
const TOUCHED: Unassessed = Unassessed::NoHeights;

/// Makes a road from a course of the document.
///
/// `course` is an index into [`Document::courses`]. `progress` receives the share done, from 0 to 1, and
/// answers false to stop.
///
/// # Errors
/// The course has no usable heights, is too short, too long or too coarse, or nothing of it can be trusted:
/// see [`FileError`].
pub fn survey(
    document: &Document,
    course: usize,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Result<Road, FileError> {
    let chosen = document
        .courses()
        .get(course)
        .ok_or(FileError::NoSuchCourse { asked: course, found: document.courses().len() })?;
    let mut report = |share: f32| if progress(share) { Ok(()) } else { Err(FileError::Cancelled) };
    let mut findings = document.findings().to_vec();
    report(0.0)?;
    check_heights(document, chosen)?;
    let mut line = clean::clean(document.parts(course), &mut findings);
    report(0.15)?;
    check_line(document, &line)?;
    heights::clean(&mut line, &mut findings);
    report(0.25)?;
    let mut profile = profile::resample(&line, &mut findings);
    drop(line);
    report(0.35)?;
    let mended = artefacts::mend(&mut profile, &mut findings);
    let (from_terrain, faults, mended) = (mended.bridged, mended.faults, mended.heights_m);
    close_touched(&mut profile, &mended);
    tell_unassessed(&profile, &mut findings);
    drop_slivers(&mut profile, &mut findings);
    let spans = profile.spans();
    if spans.is_empty() {
        return Err(FileError::NothingLeft { length_m: chosen.length_m });
    }
    report(0.4)?;
    let surface = filled(&mended);
    let doubt = Doubt::of(&profile.heights_m, profile.step_m);
    let mended =
        Mended { heights_m: mended, step_m: profile.step_m, spans: &spans, from_terrain, faults: &faults };
    let shown = mended.show(&surface, &mut findings, &mut report)?;
    complete_cut_off(&mut findings, &profile);
    let curves = curves::find(&plan(&profile.positions), &known(&profile), profile.step_m);
    let places = places::snap(document.waypoints(), &profile.positions);
    report(1.0)?;
    Ok(Road::from_parts(Parts {
        name: chosen.name.clone(),
        step_m: profile.step_m,
        unassessed: unassessed(&profile.why),
        recorded_m: profile.heights_m,
        surface_m: surface,
        doubt,
        alone: Vec::new(),
        heights_m: shown.heights_m,
        positions: profile.positions,
        segments: shown.segments,
        curves,
        quality: shown.quality,
        places,
        limits: Vec::new(),
        findings,
    }))
}

fn check_heights(document: &Document, course: &Course) -> Result<(), FileError> {
    if course.heights == 0 {
        return Err(FileError::NoHeights {
            points: course.points,
            constant: false,
            unreadable: document.unreadable_heights(),
        });
    }
    Ok(())
}

fn check_line(document: &Document, line: &clean::Line) -> Result<(), FileError> {
    let length_m = line.length_m();
    if length_m < bounds::SHORTEST_ROAD_M {
        return Err(FileError::TooShort { found_m: length_m, needed_m: bounds::SHORTEST_ROAD_M });
    }
    if length_m > bounds::LONGEST_ROAD_M {
        return Err(FileError::TooLarge(Bound::Length(length_m)));
    }
    let points = line.fixes.len();
    if heights::count(line) < 2 || heights::is_constant(line) {
        return Err(FileError::NoHeights {
            points,
            constant: heights::is_constant(line),
            unreadable: document.unreadable_heights(),
        });
    }
    let found_m = clean::spacing_m(&line.along_m);
    if found_m > bounds::COARSEST_M {
        return Err(FileError::TooCoarse { found_m, needed_m: bounds::COARSEST_M });
    }
    Ok(())
}

/// The points in plan, metres. Each step uses the radii of its own place, so that a curve is true to scale
/// anywhere on a long road.
fn plan(positions: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut at = (0.0, 0.0);
    let mut plan = vec![at; positions.len().min(1)];
    for pair in positions.windows(2) {
        let ((lat, lon), (next_lat, next_lon)) = (pair[0], pair[1]);
        let (meridian, parallel) = track::radii_m(0.5 * (lat + next_lat));
        at.0 += track::turn_deg(lon, next_lon).to_radians() * parallel;
        at.1 += (next_lat - lat).to_radians() * meridian;
        plan.push(at);
    }
    plan
}

/// For each cell, whether the file has points there.
fn known(profile: &Profile) -> Vec<bool> {
    let known = |why: &Option<Unassessed>| !matches!(why, Some(Unassessed::Gap));
    profile.why.iter().map(known).collect()
}

/// A cell counts as assessed only with a height at both ends.
fn close_touched(profile: &mut Profile, heights_m: &[f64]) {
    for (cell, why) in profile.why.iter_mut().enumerate() {
        if !(heights_m[cell].is_finite() && heights_m[cell + 1].is_finite()) {
            *why = why.or(Some(TOUCHED));
        }
    }
}

/// One finding for each stretch without points or heights; withdrawn stretches are told already.
fn tell_unassessed(profile: &Profile, findings: &mut Vec<Finding>) {
    for span in unassessed(&profile.why) {
        match span.why {
            Unassessed::Gap | Unassessed::NoHeights => findings.push(Finding {
                kind: FindingKind::NotAssessed { why: span.why },
                count: 1,
                from_m: Some(span.from as f64 * profile.step_m),
                to_m: Some(span.to as f64 * profile.step_m),
            }),
            Unassessed::Step | Unassessed::Sliver => {}
        }
    }
}

/// Assessed stretches too short to carry a grade join their unassessed neighbours.
fn drop_slivers(profile: &mut Profile, findings: &mut Vec<Finding>) {
    let shortest = cells_in(bounds::SLIVER_M, profile.step_m);
    for span in profile.spans() {
        if span.len() < shortest {
            findings.push(Finding {
                kind: FindingKind::NotAssessed { why: Unassessed::Sliver },
                count: 1,
                from_m: Some(span.start as f64 * profile.step_m),
                to_m: Some(span.end as f64 * profile.step_m),
            });
            profile.why[span].fill(Some(Unassessed::Sliver));
        }
    }
}

/// Heights with straight lines where they are missing, level at the ends.
fn filled(heights_m: &[f64]) -> Vec<f64> {
    let mut filled = heights_m.to_vec();
    let mut last: Option<usize> = None;
    for at in 0..heights_m.len() {
        if !heights_m[at].is_finite() {
            continue;
        }
        match last {
            None => filled[..at].fill(heights_m[at]),
            Some(from) => {
                let rise = (heights_m[at] - heights_m[from]) / (at - from) as f64;
                for (i, height) in filled[from..at].iter_mut().enumerate().skip(1) {
                    *height = heights_m[from] + rise * i as f64;
                }
            }
        }
        last = Some(at);
    }
    if let Some(from) = last {
        filled[from + 1..].fill(heights_m[from]);
    }
    filled
}

/// Gives the finding of a cut-off file its place: the whole road that was read.
fn complete_cut_off(findings: &mut [Finding], profile: &Profile) {
    for finding in findings {
        if let FindingKind::CutOff { .. } = finding.kind {
            finding.from_m = Some(0.0);
            finding.to_m = Some(profile.why.len() as f64 * profile.step_m);
        }
    }
}

/// Runs of cells with one reason against them.
pub(super) fn unassessed(why: &[Option<Unassessed>]) -> Vec<Span> {
    let mut found: Vec<Span> = Vec::new();
    for (cell, reason) in why.iter().enumerate() {
        let Some(why) = *reason else {
            continue;
        };
        match found.last_mut() {
            Some(span) if span.to == cell && span.why == why => span.to = cell + 1,
            Some(_) | None => found.push(Span { from: cell, to: cell + 1, why }),
        }
    }
    found
}
