//! Writes SVG text for one layer of a picture.
//!
//! A layer is set with one call (`inner_html`) instead of a hundred node creations, is drawn
//! the same natively and in the browser, and can be counted in a test. Names of places come
//! from a file that anyone may have made: every text goes through [`Markup::text`], which is
//! the only way in and escapes it. Classes and paths are the program's own.

use super::path::{Path, write_tenths};

/// One layer being written.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Markup {
    text: String,
    nodes: usize,
}

/// Which end of a text stands at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

impl Anchor {
    fn name(self) -> &'static str {
        match self {
            Self::Start => "start",
            Self::Middle => "middle",
            Self::End => "end",
        }
    }
}

impl Markup {
    /// Draws a path; an empty one is left out.
    pub(crate) fn path(&mut self, class: &str, path: &Path) {
        if path.is_empty() {
            return;
        }
        self.begin("path", class);
        self.attribute("d", path.as_str());
        self.text.push_str("/>");
    }

    /// Draws a path filled with the pattern of this id; an empty one is left out.
    pub(crate) fn patterned(&mut self, class: &str, pattern: &str, path: &Path) {
        if path.is_empty() {
            return;
        }
        self.begin("path", class);
        self.attribute("d", path.as_str());
        self.text.push_str(" fill=\"url(#");
        self.text.push_str(pattern);
        self.text.push_str(")\"/>");
    }

    /// Draws a straight line.
    pub(crate) fn line(&mut self, class: &str, from: (f64, f64), to: (f64, f64)) {
        self.begin("line", class);
        self.number("x1", from.0);
        self.number("y1", from.1);
        self.number("x2", to.0);
        self.number("y2", to.1);
        self.text.push_str("/>");
    }

    /// Draws a rectangle with corners rounded by `radius`, px.
    pub(crate) fn rectangle(&mut self, class: &str, corner: (f64, f64), size: (f64, f64), radius: f64) {
        self.begin("rect", class);
        self.number("x", corner.0);
        self.number("y", corner.1);
        self.number("width", size.0.max(0.0));
        self.number("height", size.1.max(0.0));
        if radius > 0.0 {
            self.number("rx", radius);
        }
        self.text.push_str("/>");
    }

    /// Draws a disc.
    pub(crate) fn circle(&mut self, class: &str, centre: (f64, f64), radius: f64) {
        self.begin("circle", class);
        self.number("cx", centre.0);
        self.number("cy", centre.1);
        self.number("r", radius);
        self.text.push_str("/>");
    }

    /// Writes words; the place is on their base line. Empty words are left out.
    pub(crate) fn text(&mut self, class: &str, anchor: Anchor, place: (f64, f64), words: &str) {
        if words.is_empty() {
            return;
        }
        self.begin("text", class);
        self.number("x", place.0);
        self.number("y", place.1);
        self.attribute("text-anchor", anchor.name());
        self.text.push('>');
        push_escaped(&mut self.text, words);
        self.text.push_str("</text>");
    }

    /// A pattern of slanting lines `spacing` px apart, to be filled with by its id.
    pub(crate) fn hatch(&mut self, id: &str, class: &str, spacing: f64) {
        self.text.push_str("<pattern id=\"");
        self.text.push_str(id);
        self.text.push('"');
        self.number("width", spacing);
        self.text.push_str(" height=\"8\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(35)\">");
        self.line(class, (0.5, 0.0), (0.5, 8.0));
        self.text.push_str("</pattern>");
        self.nodes += 1;
    }

    /// Begins a group known by its test mark; [`Markup::end`] ends it.
    pub(crate) fn group(&mut self, mark: &str) {
        self.nodes += 1;
        self.text.push_str("<g");
        self.attribute("data-testid", mark);
        self.text.push('>');
    }

    /// Ends the group that is open.
    pub(crate) fn end(&mut self) {
        self.text.push_str("</g>");
    }

    /// Nodes written.
    #[cfg(test)]
    pub(crate) fn nodes(&self) -> usize {
        self.nodes
    }

    /// The layer as text.
    #[must_use]
    pub(crate) fn into_string(self) -> String {
        self.text
    }

    fn begin(&mut self, tag: &str, class: &str) {
        self.nodes += 1;
        self.text.push('<');
        self.text.push_str(tag);
        self.attribute("class", class);
    }

    fn attribute(&mut self, name: &str, value: &str) {
        self.text.push(' ');
        self.text.push_str(name);
        self.text.push_str("=\"");
        self.text.push_str(value);
        self.text.push('"');
    }

    fn number(&mut self, name: &str, value: f64) {
        self.text.push(' ');
        self.text.push_str(name);
        self.text.push_str("=\"");
        write_tenths(&mut self.text, value);
        self.text.push('"');
    }
}

/// Escapes what XML would read as markup and leaves out control characters, which it forbids.
fn push_escaped(text: &mut String, words: &str) {
    for letter in words.chars().filter(|letter| !letter.is_control()) {
        match letter {
            '<' => text.push_str("&lt;"),
            '>' => text.push_str("&gt;"),
            '&' => text.push_str("&amp;"),
            '"' => text.push_str("&quot;"),
            '\'' => text.push_str("&#39;"),
            plain => text.push(plain),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Anchor, Markup};

    #[test]
    fn a_name_from_a_file_cannot_become_markup() {
        let mut layer = Markup::default();
        layer.text("flag", Anchor::Start, (1.0, 2.0), "</text><script>alert(\"1\")</script>&'\u{0}");
        let text = layer.into_string();
        assert_eq!(
            text,
            "<text class=\"flag\" x=\"1\" y=\"2\" text-anchor=\"start\">&lt;/text&gt;&lt;script&gt;\
             alert(&quot;1&quot;)&lt;/script&gt;&amp;&#39;</text>"
        );
    }

    #[test]
    fn nodes_are_counted_and_empty_ones_left_out() {
        let mut layer = Markup::default();
        layer.path("road", &super::Path::default());
        layer.text("tick", Anchor::End, (0.0, 0.0), "");
        layer.line("grid", (0.0, 0.0), (1.0, 1.0));
        layer.circle("dot", (3.0, 4.0), 2.5);
        assert_eq!(layer.nodes(), 2);
    }
}
