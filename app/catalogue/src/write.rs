//! Writes the functions.

use crate::Style;
use crate::model::{Body, Catalogue, Choice, Gives, Key, Message, Part, Text, Type};
use crate::plural;
use std::fmt::Write as _;

const WRITTEN: &str = "#[allow(clippy::all, reason = \"written by a program\")]\n";
const FOR_TESTS: &str = "#[allow(dead_code, unused_imports, reason = \"tests do not ask for all\")]\n";

/// One language, as methods.
pub(crate) fn one(chosen: &Catalogue, first: &Catalogue, style: Style<'_>) -> String {
    let mut code = format!("#[deny(dead_code)]\n{WRITTEN}impl {} {{\n", style.owner);
    for message in &first.messages {
        let Some(own) = chosen.message(&message.name) else { continue };
        if first.placed.contains(&message.name) {
            code += "#[allow(dead_code, reason = \"it stands in another message\")]\n";
        }
        head(&mut code, message, "self, ", style);
        let Coder { code: body, .. } = Coder::of(own, &chosen.tag, style);
        let _ = writeln!(code, " {{\n{body}\n}}");
    }
    code + "}\n"
}

/// All languages: methods that ask the one chosen.
pub(crate) fn all(catalogues: &[Catalogue], style: Style<'_>) -> String {
    let Some(first) = catalogues.first() else { return String::new() };
    let mut code = format!("{FOR_TESTS}{WRITTEN}impl {} {{\n", style.owner);
    let (field, path) = style.tongue;
    for message in &first.messages {
        head(&mut code, message, "self, ", style);
        let _ = writeln!(code, " {{\nmatch self.{field} {{");
        let names: Vec<String> = message.parameters.iter().map(|(name, _)| snake(name)).collect();
        for it in catalogues {
            let _ = writeln!(
                code,
                "{path}::{} => in_{}::{}({}),",
                camel(&it.tag),
                it.tag,
                snake(&message.name),
                names.join(", ")
            );
        }
        code += "}\n}\n";
    }
    code += "}\n";
    for it in catalogues {
        let _ = writeln!(code, "{FOR_TESTS}{WRITTEN}mod in_{} {{\nuse super::*;", it.tag);
        for message in &first.messages {
            let Some(own) = it.message(&message.name) else { continue };
            head(&mut code, message, "", Style { visibility: "pub(crate)", ..style });
            let Coder { code: body, .. } = Coder::of(own, &it.tag, style);
            let _ = writeln!(code, " {{\n{body}\n}}");
        }
        code += "}\n";
    }
    code
}

fn head(code: &mut String, message: &Message, receiver: &str, style: Style<'_>) {
    for line in &message.comment {
        let _ = writeln!(code, "/// {line}");
    }
    let one = match message.gives {
        Gives::Fixed => "&'static str".to_owned(),
        Gives::Made => "String".to_owned(),
        Gives::Pieces => format!("Vec<{}>", style.piece),
    };
    let gives = match &message.body {
        Body::Text(_) => one,
        Body::List(list) => format!("[{one}; {}]", list.len()),
    };
    let parameters = message.parameters.iter().map(|(name, of)| {
        let of = match of {
            Type::Text => "&str",
            Type::Integer(path) | Type::Enum(path) => path,
            Type::Flag => "bool",
        };
        format!("{}: {of}", snake(name))
    });
    let parameters = parameters.collect::<Vec<_>>().join(", ");
    let _ = write!(
        code,
        "#[allow(unused_variables, reason = \"another language may need it\")]\n{} fn {}({receiver}{parameters}) -> {gives}",
        style.visibility,
        snake(&message.name)
    );
}

/// Writes the body of one function.
struct Coder<'a> {
    message: &'a Message,
    tag: &'a str,
    style: Style<'a>,
    code: String,
}

impl<'a> Coder<'a> {
    fn of(message: &'a Message, tag: &'a str, style: Style<'a>) -> Self {
        let mut coder = Self { message, tag, style, code: String::new() };
        let each = |text: &Text| match message.gives {
            Gives::Fixed => coder.fixed(text),
            Gives::Made => coder.made(text),
            Gives::Pieces => coder.pieces(text),
        };
        let all: Vec<String> = message.body.texts().map(each).collect();
        coder.code = match &message.body {
            Body::Text(_) => all.concat(),
            Body::List(_) => format!("[{}]", all.join(", ")),
        };
        coder
    }

    /// An expression of type `&'static str`.
    fn fixed(&self, text: &Text) -> String {
        match text.0.as_slice() {
            [Part::Words(words)] => format!("{words:?}"),
            [Part::Choice(choice)] => self.choice(choice, |it| self.fixed(it)),
            _ => "\"\"".to_owned(),
        }
    }

    /// An expression of type `String`.
    fn made(&self, text: &Text) -> String {
        match text.0.as_slice() {
            [Part::Choice(choice)] if !text.is_fixed() => self.choice(choice, |it| self.made(it)),
            _ if text.is_fixed() => format!("String::from({})", self.fixed(text)),
            _ => self.filled(text),
        }
    }

    /// `format!` with what is placed in it.
    fn filled(&self, text: &Text) -> String {
        let (mut template, mut placed) = (String::new(), Vec::new());
        for part in &text.0 {
            match part {
                Part::Words(words) => template += &words.replace('{', "{{").replace('}', "}}"),
                Part::Argument { name, number: false } => {
                    let _ = write!(template, "{{{}}}", snake(name));
                }
                Part::Argument { name, number: true } => {
                    template += "{}";
                    placed.push(format!("{}({} as f64)", self.style.number, snake(name)));
                }
                Part::Choice(choice) => {
                    let fixed = choice.variants.iter().all(|(_, it)| it.is_fixed());
                    template += "{}";
                    placed.push(if fixed {
                        self.choice(choice, |it| self.fixed(it))
                    } else {
                        self.choice(choice, |it| self.made(it))
                    });
                }
            }
        }
        let placed = placed.iter().fold(String::new(), |all, it| all + ", " + it);
        format!("format!({template:?}{placed})")
    }

    /// A list of pieces, set apart by `<strong>`.
    fn pieces(&self, text: &Text) -> String {
        let (mut pieces, mut strong) = (vec![(false, Text::default())], false);
        for part in &text.0 {
            let Part::Words(words) = part else {
                pieces.last_mut().expect("one is there").1.push(part.clone());
                continue;
            };
            for (index, words) in words.replace("</strong>", "<strong>").split("<strong>").enumerate() {
                if index > 0 {
                    strong = !strong;
                    pieces.push((strong, Text::default()));
                }
                pieces.last_mut().expect("one is there").1.push(Part::Words(words.to_owned()));
            }
        }
        let pieces = pieces.iter().filter(|(_, text)| !text.0.is_empty()).map(|(strong, text)| {
            let variant = if *strong { "Strong" } else { "Plain" };
            format!("{}::{variant}({})", self.style.piece, self.made(text))
        });
        format!("vec![{}]", pieces.collect::<Vec<_>>().join(", "))
    }

    fn choice(&self, choice: &Choice, arm: impl Fn(&Text) -> String) -> String {
        let of = self.message.parameters.iter().find(|(name, _)| *name == choice.on).map(|(_, of)| of);
        let on = snake(&choice.on);
        let forms = plural::forms(self.tag).unwrap_or_default();
        let mut code = format!("match {on} {{\n");
        // Single numbers go before plural forms, and what stands for all else comes last.
        let mut sorted: Vec<(usize, &(Key, Text))> = choice.variants.iter().enumerate().collect();
        sorted.sort_by_key(|(index, (key, _))| {
            (*index == choice.default || *key == Key::Name("other".into()), matches!(key, Key::Name(_)))
        });
        for (_, (key, text)) in sorted {
            let pattern = match (of, key) {
                (_, Key::Name(name)) if name == "other" => "_".to_owned(),
                (_, Key::Number(number)) => number.to_string(),
                (Some(Type::Integer(_)), Key::Name(name)) => {
                    let form = forms.iter().find(|(form, _)| form == name);
                    form.map_or_else(|| "_".to_owned(), |(_, pattern)| without_single(pattern, choice))
                }
                (Some(Type::Enum(path)), Key::Name(name)) => {
                    format!("{}::{} {{ .. }}", path.trim_start_matches('&'), camel(name))
                }
                (_, Key::Name(name)) => name.clone(),
            };
            let _ = writeln!(code, "{pattern} => {},", arm(text));
        }
        code + "}"
    }
}

/// The pattern of a plural form, without what has a variant of its own.
fn without_single(pattern: &str, choice: &Choice) -> String {
    let single = |it: &str| {
        choice.variants.iter().any(|(key, _)| matches!(key, Key::Number(_)) && key.to_string() == it)
    };
    pattern.split(" | ").filter(|it| !single(it)).collect::<Vec<_>>().join(" | ")
}

fn snake(name: &str) -> String {
    name.replace('-', "_")
}

fn camel(name: &str) -> String {
    let parts = name.split(['-', '_']);
    parts.map(|part| part[..1].to_uppercase() + &part[1..]).collect()
}
