//! The event loop: XML events in, points and names out.

use super::collect::Collected;
use super::element::Element;
use super::leaf::{Leaf, leaf_at};
use super::tag::{Prefixes, read_position, split_name};
use super::tally::{Repair, line_at};
use super::{number, sniff};
use crate::road::bounds;
use crate::road::error::{FileError, Refusal};
use quick_xml::Reader;
use quick_xml::events::{BytesEnd, BytesRef, BytesStart, Event};
use std::io::BufRead;

/// Events between two reports of progress: well under a millisecond of work.
const EVENTS_PER_REPORT: usize = 8192;

/// An open element: its kind, and the place of its name in the text.
struct Open {
    element: Element,
    name_at: usize,
    name_len: usize,
}

struct Scan<'a> {
    text: &'a str,
    /// Where the reader's text begins in `text`.
    start: usize,
    open: Vec<Open>,
    /// Text of the current element, where it is needed.
    written: String,
    prefixes: Prefixes<'a>,
    rooted: bool,
    collected: Collected,
}

/// Reads `text` from byte `start` on.
pub(super) fn scan(
    text: &str,
    start: usize,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Result<Collected, FileError> {
    let mut reader = Reader::from_str(&text[start..]);
    let config = reader.config_mut();
    config.check_end_names = false;
    config.allow_unmatched_ends = true;
    config.allow_dangling_amp = true;
    let mut scan = Scan {
        text,
        start,
        open: Vec::with_capacity(bounds::MOST_NESTING),
        written: String::with_capacity(bounds::LONGEST_TEXT),
        prefixes: Prefixes::new(),
        rooted: false,
        collected: Collected::default(),
    };
    // Each event except the last consumes at least a byte, so the loop ends with the text.
    for step in 0..=text.len() + 1 {
        if step % EVENTS_PER_REPORT == 0 {
            let share = reader.buffer_position() as f32 / text.len().max(1) as f32;
            if !progress(share) {
                return Err(FileError::Cancelled);
            }
        }
        let before = start + reader.buffer_position() as usize;
        if let Some(leaf) = scan.leaf_here(before) {
            scan.take_leaf(&leaf);
            reader.stream().consume(leaf.end - before);
            continue;
        }
        match reader.read_event() {
            Ok(Event::Eof) => break,
            Ok(event) => scan.take(&event, before)?,
            Err(_) => {
                let at = start + reader.error_position() as usize;
                scan.collected.cut_off(at);
                break;
            }
        }
    }
    scan.finish();
    Ok(scan.collected)
}

impl<'a> Scan<'a> {
    /// One event; `at` is the byte where it begins.
    fn take(&mut self, event: &Event<'_>, at: usize) -> Result<(), FileError> {
        match event {
            Event::Start(tag) => self.start_element(tag, at, false),
            Event::Empty(tag) => self.start_element(tag, at, true),
            Event::End(tag) => {
                self.end_element(tag, at);
                Ok(())
            }
            Event::Text(text) => {
                // A bare “&” arrives as text that begins with it.
                if text.starts_with('&') {
                    self.collected.tally.note(Repair::BadReference, at);
                }
                self.append(text);
                Ok(())
            }
            Event::CData(text) => {
                self.append(text);
                Ok(())
            }
            Event::GeneralRef(reference) => {
                self.append_reference(reference, at);
                Ok(())
            }
            Event::DocType(declaration) => self.judge_doctype(declaration, at),
            Event::Comment(_) | Event::Decl(_) | Event::PI(_) | Event::Eof => Ok(()),
        }
    }

    /// A leaf that the shortcut can read: not the root, not in the middle of a text.
    fn leaf_here(&self, at: usize) -> Option<Leaf<'a>> {
        let top = self.open.last()?;
        if top.element.is_text() {
            return None;
        }
        let leaf = leaf_at(self.text, at)?;
        let (_, local) = split_name(leaf.name);
        let element = Element::named(local, Some(top.element));
        (element.is_text() || element == Element::Other).then_some(leaf)
    }

    fn take_leaf(&mut self, leaf: &Leaf<'a>) {
        let parent = self.open.last().map(|open| open.element);
        let (prefix, local) = split_name(leaf.name);
        self.judge_prefix(prefix, leaf.at);
        match Element::named(local, parent) {
            Element::Height => {
                let number = number::read_number(leaf.text);
                self.collected.set_height(number, parent, leaf.at);
            }
            Element::Name => self.collected.set_name(leaf.text.trim(), parent),
            Element::Symbol => self.collected.set_symbol(leaf.text.trim()),
            Element::Kind => self.collected.set_kind(leaf.text.trim()),
            Element::Gpx
            | Element::Metadata
            | Element::Track
            | Element::Segment
            | Element::TrackPoint
            | Element::Route
            | Element::RoutePoint
            | Element::ShapePoint
            | Element::Waypoint
            | Element::Other => {}
        }
    }

    fn refuse(&self, what: Refusal, at: usize) -> FileError {
        FileError::Refused { what, line: line_at(self.text, at) }
    }

    fn judge_doctype(&mut self, declaration: &str, at: usize) -> Result<(), FileError> {
        // Entities are never expanded here. A file that declares its own is refused all the same.
        if declaration.contains("<!ENTITY") || declaration.contains("<!entity") {
            return Err(self.refuse(Refusal::Entities, at));
        }
        self.collected.tally.note(Repair::DocumentType, at);
        Ok(())
    }

    fn start_element(&mut self, tag: &BytesStart<'_>, at: usize, empty: bool) -> Result<(), FileError> {
        if tag.len() > bounds::LONGEST_TAG {
            return Err(self.refuse(Refusal::LongTag, at));
        }
        if self.open.len() >= bounds::MOST_NESTING {
            return Err(self.refuse(Refusal::Nesting, at));
        }
        let name = tag.name();
        let (prefix, local) = split_name(name.as_ref());
        let mut parent = self.open.last().map(|open| open.element);
        let element = Element::named(local, parent);
        if element == Element::TrackPoint && parent == Some(Element::TrackPoint) {
            // Points do not nest, so the end tag of the point before is missing.
            self.collected.tally.note(Repair::Tags, at);
            self.close_last();
            parent = self.open.last().map(|open| open.element);
        }
        if !self.rooted {
            self.judge_root(element, local)?;
        }
        if !element.is_point() {
            self.declare_prefixes(tag, at);
        }
        self.judge_prefix(prefix, at);
        // A known name at the wrong depth opens nothing.
        let element = if self.begin(element, parent, tag, at)? { element } else { Element::Other };
        // `<` stands before the name; the tag has one line of its own in the text.
        self.open.push(Open { element, name_at: at + 1, name_len: name.as_ref().len() });
        if element.is_text() {
            self.written.clear();
        }
        if empty {
            self.close_last();
        }
        Ok(())
    }

    fn judge_root(&mut self, element: Element, local: &str) -> Result<(), FileError> {
        self.rooted = true;
        match element {
            // A file without its head still has its points.
            Element::Gpx
            | Element::Metadata
            | Element::Track
            | Element::Segment
            | Element::TrackPoint
            | Element::Route
            | Element::RoutePoint
            | Element::ShapePoint
            | Element::Waypoint => Ok(()),
            Element::Height | Element::Name | Element::Symbol | Element::Kind | Element::Other => {
                Err(FileError::NotGpx(sniff::name_root(local)))
            }
        }
    }

    /// Begins what the element stands for. False: it does not belong here and counts as unknown.
    fn begin(
        &mut self,
        element: Element,
        parent: Option<Element>,
        tag: &BytesStart<'_>,
        at: usize,
    ) -> Result<bool, FileError> {
        match element {
            Element::TrackPoint => {
                let position = read_position(tag);
                self.collected.begin_track_point(position, parent, at)?;
                Ok(true)
            }
            Element::RoutePoint => {
                let position = read_position(tag);
                self.collected.begin_route_point(position, parent, at)?;
                Ok(true)
            }
            Element::ShapePoint => {
                let inside = self.open.iter().any(|open| open.element == Element::RoutePoint);
                if inside {
                    let position = read_position(tag);
                    self.collected.begin_shape_point(position, at)?;
                }
                Ok(inside)
            }
            Element::Waypoint => {
                let here = parent == Some(Element::Gpx) || parent.is_none();
                if here {
                    self.collected.begin_waypoint(read_position(tag));
                }
                Ok(here)
            }
            Element::Track => {
                self.collected.begin_track()?;
                Ok(true)
            }
            Element::Segment => {
                self.collected.begin_segment()?;
                Ok(true)
            }
            Element::Route => {
                self.collected.begin_route()?;
                Ok(true)
            }
            Element::Gpx
            | Element::Metadata
            | Element::Height
            | Element::Name
            | Element::Symbol
            | Element::Kind
            | Element::Other => Ok(true),
        }
    }

    /// Remembers the prefixes that `xmlns:` declares, wherever in the file it stands.
    fn declare_prefixes(&mut self, tag: &BytesStart<'_>, at: usize) {
        if tag.contains("xmlns:") {
            // Borrowed from the text, since the tag's own borrow ends with the event.
            let held: &'a str = self.text.get(at + 1..at + 1 + tag.len()).unwrap_or("");
            self.prefixes.declare(held);
        }
    }

    /// Lists a prefix that is nowhere declared.
    fn judge_prefix(&mut self, prefix: &str, at: usize) {
        if !self.prefixes.know(prefix) {
            self.collected.tally.note_prefix(prefix, at);
        }
    }

    fn end_element(&mut self, tag: &BytesEnd<'_>, at: usize) {
        let qualified = tag.name();
        let wanted = qualified.as_ref();
        let found = self.open.iter().rposition(|open| self.name_of(open) == wanted);
        match found {
            None => self.collected.tally.note(Repair::Tags, at),
            Some(index) => {
                if index + 1 != self.open.len() {
                    self.collected.tally.note(Repair::Tags, at);
                }
                // Bounded by the nesting.
                for _ in index..self.open.len() {
                    self.close_last();
                }
            }
        }
    }

    fn name_of(&self, open: &Open) -> &str {
        self.text.get(open.name_at..open.name_at + open.name_len).unwrap_or("")
    }

    /// Closes the innermost element and stores what it held.
    fn close_last(&mut self) {
        let Some(closed) = self.open.pop() else {
            return;
        };
        let parent = self.open.last().map(|open| open.element);
        match closed.element {
            Element::Height => {
                let number = number::read_number(&self.written);
                self.collected.set_height(number, parent, closed.name_at);
            }
            Element::Name => self.collected.set_name(self.written.trim(), parent),
            Element::Symbol => self.collected.set_symbol(self.written.trim()),
            Element::Kind => self.collected.set_kind(self.written.trim()),
            Element::TrackPoint | Element::RoutePoint | Element::ShapePoint | Element::Waypoint => {
                self.collected.end_point();
            }
            Element::Gpx
            | Element::Metadata
            | Element::Track
            | Element::Segment
            | Element::Route
            | Element::Other => {}
        }
    }

    fn append(&mut self, text: &str) {
        if self.open.last().is_some_and(|open| open.element.is_text()) {
            let room = bounds::LONGEST_TEXT.saturating_sub(self.written.len());
            let end = (0..=room.min(text.len())).rev().find(|end| text.is_char_boundary(*end)).unwrap_or(0);
            self.written.push_str(&text[..end]);
        }
    }

    fn append_reference(&mut self, reference: &BytesRef<'_>, at: usize) {
        if let Ok(Some(character)) = reference.resolve_char_ref() {
            self.append(character.encode_utf8(&mut [0; 4]));
            return;
        }
        let name: &str = reference;
        match name {
            "amp" => self.append("&"),
            "lt" => self.append("<"),
            "gt" => self.append(">"),
            "quot" => self.append("\""),
            "apos" => self.append("'"),
            unknown => {
                self.collected.tally.note(Repair::BadReference, at);
                self.append("&");
                self.append(unknown);
                self.append(";");
            }
        }
    }

    /// At the end of the text, every element still open was cut off.
    fn finish(&mut self) {
        if !self.open.is_empty() {
            let unfinished = self.open.iter().any(|open| open.element.is_point());
            self.collected.cut_off(self.text.trim_end().len());
            if unfinished {
                self.collected.drop_unfinished();
            }
        }
        debug_assert!(self.start <= self.text.len(), "the start lies in the text");
    }
}
