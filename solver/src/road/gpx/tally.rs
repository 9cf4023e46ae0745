//! Counts what the reader repairs, and where the first case of each kind stood.

use crate::order::ascending;
use crate::road::finding::{Finding, FindingKind};

/// Repairs that are counted while reading. The order is the order of the findings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Repair {
    UndeclaredPrefix,
    BadReference,
    Tags,
    DocumentType,
    DecimalComma,
    Padding,
    MetresWritten,
    ForeignUnit,
    HeightUnreadable,
    PointDropped,
    CutOff,
}

const REPAIRS: [Repair; 11] = [
    Repair::UndeclaredPrefix,
    Repair::BadReference,
    Repair::Tags,
    Repair::DocumentType,
    Repair::DecimalComma,
    Repair::Padding,
    Repair::MetresWritten,
    Repair::ForeignUnit,
    Repair::HeightUnreadable,
    Repair::PointDropped,
    Repair::CutOff,
];

#[derive(Clone, Copy, Default)]
struct Case {
    count: usize,
    first: usize,
}

/// Count of each repair, and the byte of the text where its first case stands.
#[derive(Default)]
pub(super) struct Tally {
    cases: [Case; REPAIRS.len()],
    prefix: String,
}

impl Tally {
    pub(super) fn note(&mut self, repair: Repair, offset: usize) {
        let case = &mut self.cases[repair as usize];
        if case.count == 0 {
            case.first = offset;
        }
        case.count += 1;
    }

    pub(super) fn note_prefix(&mut self, prefix: &str, offset: usize) {
        if self.prefix.is_empty() {
            self.prefix = prefix.chars().take(40).collect();
        }
        self.note(Repair::UndeclaredPrefix, offset);
    }

    pub(super) fn count(&self, repair: Repair) -> usize {
        self.cases[repair as usize].count
    }

    pub(super) fn first(&self, repair: Repair) -> usize {
        self.cases[repair as usize].first
    }

    /// The findings, with offsets turned into line numbers in one pass over the text.
    pub(super) fn into_findings(self, text: &str) -> Vec<Finding> {
        let seen: Vec<(usize, Repair)> =
            REPAIRS.into_iter().filter(|r| self.count(*r) > 0).map(|r| (self.first(r), r)).collect();
        let mut lines = [0usize; REPAIRS.len()];
        let (mut line, mut from) = (1, 0);
        for (first, repair) in
            ascending(seen.iter().map(|(first, _)| *first as f64)).into_iter().map(|i| &seen[i])
        {
            line += count_newlines(&text.as_bytes()[from..*first]);
            from = *first;
            lines[*repair as usize] = line;
        }
        REPAIRS
            .into_iter()
            .filter(|r| self.count(*r) > 0)
            .map(|r| Finding {
                kind: self.name(r, lines[r as usize]),
                count: self.count(r),
                from_m: None,
                to_m: None,
            })
            .collect()
    }

    fn name(&self, repair: Repair, line: usize) -> FindingKind {
        match repair {
            Repair::UndeclaredPrefix => FindingKind::UndeclaredPrefix { prefix: self.prefix.clone(), line },
            Repair::BadReference => FindingKind::BadReference { line },
            Repair::Tags => FindingKind::TagsRepaired { line },
            Repair::DocumentType => FindingKind::DocumentTypeIgnored { line },
            Repair::DecimalComma => FindingKind::DecimalComma { line },
            Repair::Padding => FindingKind::Padding { line },
            Repair::MetresWritten => FindingKind::MetresWritten { line },
            Repair::ForeignUnit => FindingKind::ForeignUnit { line },
            Repair::HeightUnreadable => FindingKind::HeightUnreadable { line },
            Repair::PointDropped => FindingKind::PointsDropped { line },
            Repair::CutOff => FindingKind::CutOff { line },
        }
    }
}

/// Line of the byte at `offset`, from 1.
pub(super) fn line_at(text: &str, offset: usize) -> usize {
    1 + count_newlines(&text.as_bytes()[..offset.min(text.len())])
}

fn count_newlines(bytes: &[u8]) -> usize {
    bytes.iter().filter(|b| **b == b'\n').count()
}
