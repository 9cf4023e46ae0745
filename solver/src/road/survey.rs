//! The way from a course to a road, step by step.

use super::document::{Course, Document};
use super::doubt::Doubt;
use super::error::{Bound, FileError};
use super::finding::{Finding, FindingKind, Unassessed};
use super::profile::{Profile, cells_in};
use super::quality::{self, Class, Quality};
use super::{
    Parts, Road, Span, artefacts, bounds, clean, curves, heights, places, profile, segments, track, trend,
    vertical_curves,
};
use std::ops::Range;

/// A grade over this length, metres …
const VERY_STEEP_M: f64 = 200.0;
/// … above this is worth a word (roads for trucks seldom exceed it: common practice, no source).
const VERY_STEEP_GRADE: f64 = 0.13;
/// Heights as recorded, which noise makes steeper, are believed to be so from here on.
const STEEP_GRADE: f64 = 0.15;
/// Reason told for heights that end within a cell.
const TOUCHED: Unassessed = Unassessed::NoHeights;

/// Makes a road of a course of the document.
///
/// `course` is an index into [`Document::courses`]; `progress` gets the share done, from 0 to
/// 1, and answers false to stop.
///
/// # Errors
/// The course has no usable heights, is too short, too long or too coarse, or nothing of it
/// can be trusted: see [`FileError`].
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
    let before = quality::roughness(&mended, &spans, profile.step_m);
    let judged = Quality::new(before, before, from_terrain);
    let surface = filled(&mended);
    let doubt = Doubt::of(&profile.heights_m, profile.step_m);
    let filtered = filter_spans(&profile, mended, &spans, judged, &mut report)?;
    let after = quality::roughness(&filtered, &spans, profile.step_m);
    let quality = Quality::new(before, after, from_terrain);
    tell_quality(quality, from_terrain, &mut findings);
    tell_very_steep(&filtered, &surface, &spans, profile.step_m, &mut findings);
    complete_cut_off(&mut findings, &profile);
    let mut segments = segments::split(&filtered, &spans, profile.step_m, quality.class);
    segments::doubt_beside(&mut segments, &faults, profile.step_m);
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
        heights_m: filtered,
        positions: profile.positions,
        segments,
        curves,
        quality,
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

/// The points seen from above, metres: step by step with the radii of each place, so that a
/// curve is true to scale wherever it lies on a long road.
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

/// One finding for each stretch without points or heights; what was withdrawn is told already.
fn tell_unassessed(profile: &Profile, findings: &mut Vec<Finding>) {
    for span in unassessed(&profile.why) {
        match span.why {
            Unassessed::Gap | Unassessed::NoHeights => findings.push(Finding {
                kind: FindingKind::NotAssessed { why: span.why },
                count: 1,
                from_m: Some(span.from as f64 * profile.step_m),
                to_m: Some(span.to as f64 * profile.step_m),
            }),
            Unassessed::Step | Unassessed::TooSteep | Unassessed::Sliver => {}
        }
    }
}

/// Assessed stretches too short to carry a grade go to their neighbours.
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

/// Heights with straight lines where there are none, level at the ends.
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

/// Filters each assessed span by itself; between spans a straight line, at the ends level.
fn filter_spans(
    profile: &Profile,
    mended: Vec<f64>,
    spans: &[Range<usize>],
    quality: Quality,
    report: &mut dyn FnMut(f32) -> Result<(), FileError>,
) -> Result<Vec<f64>, FileError> {
    let mut heights = mended;
    let mut last: Option<usize> = None;
    for span in spans {
        report(0.4 + 0.5 * span.start as f32 / profile.why.len() as f32)?;
        let trend = trend::filter(&heights[span.start..=span.end], quality.lambda_m());
        let curve = cells_in(quality.class.vertical_curve_m(), profile.step_m);
        heights[span.start..=span.end].copy_from_slice(&vertical_curves::round(&trend.heights_m, curve));
        match last {
            None => heights[..span.start].fill(trend.heights_m[0]),
            Some(from) => {
                let (first, rise) = (heights[from], heights[span.start] - heights[from]);
                let cells = (span.start - from) as f64;
                for (i, height) in heights[from..span.start].iter_mut().enumerate() {
                    *height = first + rise * (i as f64 / cells);
                }
            }
        }
        last = Some(span.end);
    }
    if let Some(end) = last {
        let level = heights[end];
        heights[end..].fill(level);
    }
    Ok(heights)
}

fn tell_quality(quality: Quality, from_terrain: bool, findings: &mut Vec<Finding>) {
    let poor = match quality.class {
        Class::Good => return,
        Class::Fair => false,
        Class::Poor => true,
    };
    findings.push(Finding {
        kind: FindingKind::RoughHeights {
            roughness: quality.roughness_before,
            base_m: quality.class.base_length_m(),
            poor,
            from_terrain,
        },
        count: 1,
        from_m: None,
        to_m: None,
    });
}

/// Counts the stretches steeper than [`VERY_STEEP_GRADE`], or [`STEEP_GRADE`] as recorded, and names
/// the first.
fn tell_very_steep(
    filtered_m: &[f64],
    surface_m: &[f64],
    spans: &[Range<usize>],
    step_m: f64,
    findings: &mut Vec<Finding>,
) {
    let width = cells_in(VERY_STEEP_M, step_m);
    let length_m = width as f64 * step_m;
    let (mut count, mut steepest) = (0, 0.0f64);
    let mut first: Option<Range<usize>> = None;
    let mut end = 0;
    for span in spans.iter().filter(|span| span.len() >= width) {
        for i in span.start..=span.end - width {
            let over = |heights_m: &[f64]| ((heights_m[i + width] - heights_m[i]) / length_m).abs();
            let (grade, recorded) = (over(filtered_m), over(surface_m));
            // Rough heights are steep for 200 m now and then; the filter knows better below 15 %.
            let grade = if recorded >= STEEP_GRADE { grade.max(recorded) } else { grade };
            if grade <= VERY_STEEP_GRADE {
                continue;
            }
            steepest = steepest.max(grade);
            if count == 0 || i > end {
                count += 1;
            }
            end = i + width;
            if let (Some(range), 1) = (&mut first, count) {
                range.end = end;
            }
            first = first.or(Some(i..end));
        }
    }
    if let Some(range) = first {
        findings.push(Finding {
            kind: FindingKind::VerySteep { grade: steepest },
            count,
            from_m: Some(range.start as f64 * step_m),
            to_m: Some(range.end as f64 * step_m),
        });
    }
}

/// A file that was cut off covers the road up to here.
fn complete_cut_off(findings: &mut [Finding], profile: &Profile) {
    for finding in findings {
        if let FindingKind::CutOff { .. } = finding.kind {
            finding.from_m = Some(0.0);
            finding.to_m = Some(profile.why.len() as f64 * profile.step_m);
        }
    }
}

/// Runs of cells with the same reason against them.
fn unassessed(why: &[Option<Unassessed>]) -> Vec<Span> {
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
