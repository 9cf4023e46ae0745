//! A catalogue, as it is read.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

/// What is wrong, and where.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Error {
    /// Tag of the language.
    pub tag: String,
    /// The message; empty where it is about the file.
    pub message: String,
    /// What is wrong.
    pub what: String,
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { tag, message, what } = self;
        if message.is_empty() {
            write!(f, "{tag}.ftl: {what}")
        } else {
            write!(f, "{tag}.ftl: {message}: {what}")
        }
    }
}

/// The texts of a language.
#[derive(Debug)]
pub(crate) struct Catalogue {
    pub(crate) tag: String,
    /// Types of arguments, by name.
    pub(crate) types: BTreeMap<String, Type>,
    pub(crate) messages: Vec<Message>,
    /// Names of messages that stand in others, and need no caller of their own.
    pub(crate) placed: BTreeSet<String>,
}

impl Catalogue {
    pub(crate) fn message(&self, name: &str) -> Option<&Message> {
        self.messages.iter().find(|it| it.name == name)
    }
}

#[derive(Debug)]
pub(crate) struct Message {
    pub(crate) name: String,
    /// Lines of its comment, without that of the arguments.
    pub(crate) comment: Vec<String>,
    /// Names and types told in its comment, in order.
    pub(crate) told: Vec<(String, Option<Type>)>,
    /// The parameters of its function, once they are known.
    pub(crate) parameters: Vec<(String, Type)>,
    pub(crate) body: Body,
    /// What the function gives, once all languages are known.
    pub(crate) gives: Gives,
}

impl Message {
    /// Its words, where nothing is chosen or placed in it.
    pub(crate) fn fixed(&self) -> Option<String> {
        match &self.body {
            Body::Text(Text(parts)) => match parts.as_slice() {
                [Part::Words(words)] => Some(words.clone()),
                _ => None,
            },
            Body::List(_) => None,
        }
    }
}

#[derive(Debug)]
pub(crate) enum Body {
    Text(Text),
    /// Attributes: names and texts.
    List(Vec<(String, Text)>),
}

impl Body {
    pub(crate) fn texts(&self) -> impl Iterator<Item = &Text> {
        let (one, list) = match self {
            Self::Text(text) => (Some(text), [].as_slice()),
            Self::List(list) => (None, list.as_slice()),
        };
        one.into_iter().chain(list.iter().map(|(_, text)| text))
    }
}

/// What a function gives for each of its texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Gives {
    /// `&'static str`.
    Fixed,
    /// `String`.
    Made,
    /// Pieces.
    Pieces,
}

/// Parts one behind the other.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Text(pub(crate) Vec<Part>);

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Part {
    Words(String),
    Argument {
        name: String,
        /// Written as the language writes numbers.
        number: bool,
    },
    Choice(Choice),
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Choice {
    pub(crate) on: String,
    pub(crate) variants: Vec<(Key, Text)>,
    /// Index of the variant for all else.
    pub(crate) default: usize,
}

#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Key {
    Name(String),
    Number(u64),
}

impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Name(name) => f.write_str(name),
            Self::Number(number) => number.fmt(f),
        }
    }
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Type {
    Text,
    /// `usize`, `u8` …
    Integer(String),
    Flag,
    /// Path of an enum.
    Enum(String),
}

impl Type {
    pub(crate) fn of(name: &str) -> Self {
        match name {
            "text" => Self::Text,
            "bool" => Self::Flag,
            "usize" | "u8" | "u16" | "u32" | "u64" => Self::Integer(name.to_owned()),
            path => Self::Enum(path.to_owned()),
        }
    }
}

impl Text {
    /// All choices in it, within variants too.
    pub(crate) fn choices(&self) -> Vec<&Choice> {
        let own = self.0.iter().filter_map(|part| if let Part::Choice(it) = part { Some(it) } else { None });
        own.flat_map(|choice| {
            let within = choice.variants.iter().flat_map(|(_, text)| text.choices());
            std::iter::once(choice).chain(within)
        })
        .collect()
    }

    /// Names of all arguments, in the order in which they are first met.
    pub(crate) fn arguments(&self) -> Vec<&str> {
        let mut names = Vec::new();
        for part in &self.0 {
            match part {
                Part::Words(_) => {}
                Part::Argument { name, .. } => names.push(name.as_str()),
                Part::Choice(choice) => {
                    names.push(&choice.on);
                    names.extend(choice.variants.iter().flat_map(|(_, text)| text.arguments()));
                }
            }
        }
        names
    }

    /// Nothing in it is put together: words, or one choice between words.
    pub(crate) fn is_fixed(&self) -> bool {
        match self.0.as_slice() {
            [] | [Part::Words(_)] => true,
            [Part::Choice(choice)] => choice.variants.iter().all(|(_, text)| text.is_fixed()),
            _ => false,
        }
    }

    pub(crate) fn has_strong(&self) -> bool {
        self.0.iter().any(|part| matches!(part, Part::Words(words) if words.contains("<strong>")))
    }

    /// Adds a part; words become one with words before them.
    pub(crate) fn push(&mut self, part: Part) {
        match (self.0.last_mut(), part) {
            (_, Part::Words(more)) if more.is_empty() => {}
            (Some(Part::Words(words)), Part::Words(more)) => words.push_str(&more),
            (_, part) => self.0.push(part),
        }
    }
}
