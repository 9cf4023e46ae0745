//! The heights shown of a road: filtered, judged and cut into grades. The plan reads other heights.

use super::error::FileError;
use super::finding::{Finding, FindingKind};
use super::profile::cells_in;
use super::quality::{self, Class, Quality};
use super::segments::{self, GradeSegment};
use super::{trend, vertical_curves};
use std::ops::Range;

/// Length over which a grade may count as very steep, metres.
const VERY_STEEP_M: f64 = 200.0;
/// Grade above which that is told (roads for trucks seldom exceed it: common practice, no source).
const VERY_STEEP_GRADE: f64 = 0.13;
/// Grade from which recorded heights count as steep although noise makes them steeper.
const STEEP_GRADE: f64 = 0.15;

/// Heights without what cannot be a road, and what is known of them.
pub(super) struct Mended<'a> {
    /// Metres; finite within the spans.
    pub(super) heights_m: Vec<f64>,
    pub(super) step_m: f64,
    /// The assessed stretches, as ranges of cells.
    pub(super) spans: &'a [Range<usize>],
    /// Whether tunnels or bridges were found.
    pub(super) from_terrain: bool,
    /// Stretches that were bridged, taken out or filled, as ranges of cells.
    pub(super) faults: &'a [Range<usize>],
}

/// What is shown.
pub(super) struct Shown {
    pub(super) heights_m: Vec<f64>,
    pub(super) quality: Quality,
    pub(super) segments: Vec<GradeSegment>,
}

impl Mended<'_> {
    /// Filters, judges and cuts. `surface_m` are the heights that the plan reads.
    pub(super) fn show(
        &self,
        surface_m: &[f64],
        findings: &mut Vec<Finding>,
        report: &mut dyn FnMut(f32) -> Result<(), FileError>,
    ) -> Result<Shown, FileError> {
        let before = quality::roughness(&self.heights_m, self.spans, self.step_m);
        let judged = Quality::new(before, before, self.from_terrain);
        let heights_m = filter_spans(self, judged, report)?;
        let after = quality::roughness(&heights_m, self.spans, self.step_m);
        let quality = Quality::new(before, after, self.from_terrain);
        tell_quality(quality, self.from_terrain, findings);
        tell_very_steep(&heights_m, surface_m, self.spans, self.step_m, findings);
        let mut segments = segments::split(&heights_m, self.spans, self.step_m, quality.class);
        segments::doubt_beside(&mut segments, self.faults, self.step_m);
        Ok(Shown { heights_m, quality, segments })
    }
}

/// Filters each assessed span by itself; between spans a straight line, level at the ends.
fn filter_spans(
    mended: &Mended<'_>,
    quality: Quality,
    report: &mut dyn FnMut(f32) -> Result<(), FileError>,
) -> Result<Vec<f64>, FileError> {
    let mut heights = mended.heights_m.clone();
    let mut last: Option<usize> = None;
    for span in mended.spans {
        report(0.4 + 0.5 * span.start as f32 / heights.len() as f32)?;
        let trend = trend::filter(&heights[span.start..=span.end], quality.lambda_m());
        let curve = cells_in(quality.class.vertical_curve_m(), mended.step_m);
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

/// Counts the stretches steeper than [`VERY_STEEP_GRADE`], or than [`STEEP_GRADE`] as recorded, and names the
/// first.
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
            // Rough heights are steep over 200 m now and then. Below 15 % the filter knows better.
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
