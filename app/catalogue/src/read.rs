//! Reads a catalogue.

use crate::Source;
use crate::model::{Body, Catalogue, Choice, Error, Gives, Key, Message, Part, Text, Type};
use fluent_syntax::ast::{self, Entry, Expression, InlineExpression, PatternElement, VariantKey};
use fluent_syntax::unicode::unescape_unicode_to_string;
use std::collections::{BTreeMap, BTreeSet};

/// Terms and messages may stand in each other, but not in circles.
const DEEPEST: usize = 8;

type Patterns<'a> = BTreeMap<&'a str, &'a ast::Pattern<&'a str>>;

struct Reader<'a> {
    tag: &'a str,
    terms: Patterns<'a>,
    messages: Patterns<'a>,
    errors: &'a mut Vec<Error>,
    at: String,
    placed: BTreeSet<String>,
}

/// Reads one; what is wrong with it is added to the errors.
pub(crate) fn catalogue((tag, source): Source<'_>, errors: &mut Vec<Error>) -> Catalogue {
    let resource = match fluent_syntax::parser::parse(source) {
        Ok(resource) => resource,
        Err((resource, wrong)) => {
            for it in wrong {
                let line = source[..it.pos.start.min(source.len())].matches('\n').count() + 1;
                let what = format!("line {line}: {it}");
                errors.push(Error { tag: tag.to_owned(), message: String::new(), what });
            }
            resource
        }
    };
    let mut reader = Reader {
        tag,
        terms: BTreeMap::new(),
        messages: BTreeMap::new(),
        errors,
        at: String::new(),
        placed: BTreeSet::new(),
    };
    for entry in &resource.body {
        match entry {
            Entry::Term(term) => drop(reader.terms.insert(term.id.name, &term.value)),
            Entry::Message(message) => {
                if let Some(value) = &message.value {
                    reader.messages.insert(message.id.name, value);
                }
            }
            _ => {}
        }
    }
    let mut types = BTreeMap::new();
    let mut messages: Vec<Message> = Vec::new();
    for entry in &resource.body {
        match entry {
            Entry::ResourceComment(comment) => {
                types.extend(comment.content.iter().filter_map(|line| typed(line)));
            }
            Entry::Message(message) => {
                reader.at = message.id.name.to_owned();
                let read = reader.message(message);
                if messages.iter().any(|it| it.name == read.name) {
                    reader.wrong("stands twice");
                }
                messages.push(read);
            }
            _ => {}
        }
    }
    let placed = reader.placed;
    Catalogue { tag: tag.to_owned(), types, messages, placed }
}

/// `$name type`.
fn typed(line: &str) -> Option<(String, Type)> {
    let (name, of) = line.trim().strip_prefix('$')?.split_once(' ')?;
    Some((name.to_owned(), Type::of(of.trim())))
}

impl Reader<'_> {
    fn wrong(&mut self, what: impl Into<String>) {
        self.errors.push(Error { tag: self.tag.to_owned(), message: self.at.clone(), what: what.into() });
    }

    fn message(&mut self, message: &ast::Message<&str>) -> Message {
        let lines = message.comment.iter().flat_map(|it| &it.content);
        let (told, comment): (Vec<&str>, Vec<&str>) = lines.partition(|it| it.starts_with("Arguments:"));
        let told = told.iter().flat_map(|it| it["Arguments:".len()..].split(','));
        let told = told.map(|it| typed(it).map_or_else(|| (bare(it), None), |(name, of)| (name, Some(of))));
        let body = match (&message.value, message.attributes.as_slice()) {
            (Some(value), []) => Body::Text(self.text(value, 0)),
            (None, list) => {
                Body::List(list.iter().map(|it| (it.id.name.to_owned(), self.text(&it.value, 0))).collect())
            }
            (Some(value), _) => {
                self.wrong("has a text and attributes; one of them is wanted");
                Body::Text(self.text(value, 0))
            }
        };
        Message {
            name: message.id.name.to_owned(),
            comment: comment.into_iter().map(str::to_owned).collect(),
            told: told.collect(),
            parameters: Vec::new(),
            body,
            gives: Gives::Fixed,
        }
    }

    fn text(&mut self, pattern: &ast::Pattern<&str>, depth: usize) -> Text {
        let mut text = Text::default();
        if depth > DEEPEST {
            self.wrong("stands in itself");
            return text;
        }
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => text.push(Part::Words((*value).to_owned())),
                PatternElement::Placeable { expression } => self.placed(expression, depth, &mut text),
            }
        }
        text
    }

    fn placed(&mut self, expression: &Expression<&str>, depth: usize, text: &mut Text) {
        match expression {
            Expression::Inline(inline) => self.inline(inline, depth, text),
            Expression::Select { selector, variants } => {
                let InlineExpression::VariableReference { id } = selector else {
                    self.wrong("selects on what is no argument");
                    return;
                };
                let default = variants.iter().position(|it| it.default).unwrap_or_default();
                let read = |it: &ast::Variant<&str>| {
                    let key = match &it.key {
                        VariantKey::Identifier { name } => Key::Name((*name).to_owned()),
                        VariantKey::NumberLiteral { value } => match value.parse() {
                            Ok(number) => Key::Number(number),
                            Err(_) => Key::Name((*value).to_owned()),
                        },
                    };
                    (key, self.text(&it.value, depth + 1))
                };
                let variants = variants.iter().map(read).collect();
                text.push(Part::Choice(Choice { on: id.name.to_owned(), variants, default }));
            }
        }
    }

    fn inline(&mut self, inline: &InlineExpression<&str>, depth: usize, text: &mut Text) {
        match inline {
            InlineExpression::StringLiteral { value } => {
                text.push(Part::Words(unescape_unicode_to_string(value).into_owned()));
            }
            InlineExpression::NumberLiteral { value } => text.push(Part::Words((*value).to_owned())),
            InlineExpression::VariableReference { id } => {
                text.push(Part::Argument { name: id.name.to_owned(), number: false });
            }
            InlineExpression::FunctionReference { id, arguments } => {
                match (id.name, arguments.positional.as_slice(), arguments.named.as_slice()) {
                    ("NUMBER", [InlineExpression::VariableReference { id }], []) => {
                        text.push(Part::Argument { name: id.name.to_owned(), number: true });
                    }
                    _ => self.wrong(format!("calls {} in a way that is not known", id.name)),
                }
            }
            InlineExpression::TermReference { id, attribute: None, arguments: None } => {
                match self.terms.get(id.name).copied() {
                    Some(term) => {
                        let placed = self.text(term, depth + 1);
                        if !placed.arguments().is_empty() {
                            self.wrong(format!("the term -{} has arguments; make it a message", id.name));
                        }
                        placed.0.into_iter().for_each(|part| text.push(part));
                    }
                    None => self.wrong(format!("there is no term -{}", id.name)),
                }
            }
            InlineExpression::MessageReference { id, attribute: None } => {
                match self.messages.get(id.name).copied() {
                    Some(it) => {
                        self.placed.insert(id.name.to_owned());
                        self.text(it, depth + 1).0.into_iter().for_each(|part| text.push(part));
                    }
                    None => self.wrong(format!("there is no message {}", id.name)),
                }
            }
            InlineExpression::Placeable { expression } => self.placed(expression, depth + 1, text),
            InlineExpression::TermReference { .. } | InlineExpression::MessageReference { .. } => {
                self.wrong("refers to an attribute, or to a term with arguments");
            }
        }
    }
}

fn bare(name: &str) -> String {
    name.trim().trim_start_matches('$').to_owned()
}
