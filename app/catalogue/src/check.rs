//! Holds catalogues against each other.

use crate::model::{Body, Catalogue, Choice, Error, Gives, Key, Message, Type};
use crate::plural;

/// Checks all against the first, and writes into them what follows from all.
pub(crate) fn all(catalogues: &mut [Catalogue], errors: &mut Vec<Error>) {
    let Some((first, others)) = catalogues.split_first_mut() else { return };
    for index in 0..first.messages.len() {
        let parameters = parameters(&first.types, &first.messages[index], &first.tag, errors);
        first.messages[index].parameters = parameters;
    }
    own(first, first, errors);
    for other in &mut *others {
        for message in &first.messages {
            match other.messages.iter_mut().find(|it| it.name == message.name) {
                Some(it) => it.parameters.clone_from(&message.parameters),
                None => errors.push(error(&other.tag, &message.name, "is missing")),
            }
        }
        for message in &other.messages {
            match first.message(&message.name) {
                Some(it) => alike(it, message, &other.tag, errors),
                None => errors.push(error(
                    &other.tag,
                    &message.name,
                    format!("is unknown: {}.ftl has no such message", first.tag),
                )),
            }
        }
        own(other, first, errors);
    }
    let gives: Vec<Gives> = first
        .messages
        .iter()
        .map(|message| {
            let same = others.iter().filter_map(|it| it.message(&message.name));
            same.chain([message]).map(wants).max().unwrap_or(Gives::Fixed)
        })
        .collect();
    for (index, gives) in gives.into_iter().enumerate() {
        let name = first.messages[index].name.clone();
        first.messages[index].gives = gives;
        for other in &mut *others {
            if let Some(it) = other.messages.iter_mut().find(|it| it.name == name) {
                it.gives = gives;
            }
        }
    }
}

fn error(tag: &str, message: &str, what: impl Into<String>) -> Error {
    Error { tag: tag.to_owned(), message: message.to_owned(), what: what.into() }
}

fn wants(message: &Message) -> Gives {
    if message.body.texts().any(crate::model::Text::has_strong) {
        Gives::Pieces
    } else if message.body.texts().all(crate::model::Text::is_fixed) {
        Gives::Fixed
    } else {
        Gives::Made
    }
}

/// The parameters of a message in the first language: those told in its comment, then those met in its texts.
fn parameters(
    types: &std::collections::BTreeMap<String, Type>,
    message: &Message,
    tag: &str,
    errors: &mut Vec<Error>,
) -> Vec<(String, Type)> {
    let mut all: Vec<(String, Type)> = Vec::new();
    let of = |name: &str| types.get(name).cloned().unwrap_or(Type::Text);
    for (name, told) in &message.told {
        all.push((name.clone(), told.clone().unwrap_or_else(|| of(name))));
    }
    for name in message.body.texts().flat_map(crate::model::Text::arguments) {
        if all.iter().any(|(it, _)| it == name) {
            continue;
        }
        if !message.told.is_empty() {
            errors.push(error(
                tag,
                &message.name,
                format!("unknown argument ${name}: its comment does not name it"),
            ));
        }
        all.push((name.to_owned(), of(name)));
    }
    all
}

/// Another language against the first.
fn alike(first: &Message, other: &Message, tag: &str, errors: &mut Vec<Error>) {
    let mut wrong = |what: String| errors.push(error(tag, &other.name, what));
    match (&first.body, &other.body) {
        (Body::Text(_), Body::Text(_)) => {}
        (Body::List(list), Body::List(own)) => {
            let names = |it: &[(String, _)]| it.iter().map(|(name, _)| name.clone()).collect::<Vec<_>>();
            if names(list) != names(own) {
                wrong(format!("its attributes are {:?}, not {:?}", names(own), names(list)));
            }
        }
        (Body::Text(_), Body::List(_)) => wrong("has attributes in place of a text".to_owned()),
        (Body::List(_), Body::Text(_)) => wrong("has a text in place of attributes".to_owned()),
    }
    if (wants(first) == Gives::Pieces) != (wants(other) == Gives::Pieces) {
        wrong("sets something apart with <strong> in one language only".to_owned());
    }
}

/// What must hold of a language by itself, given the parameters.
fn own(catalogue: &Catalogue, first: &Catalogue, errors: &mut Vec<Error>) {
    let tag = &catalogue.tag;
    for message in &catalogue.messages {
        let Some(parameters) = first.message(&message.name).map(|it| &it.parameters) else { continue };
        for name in message.body.texts().flat_map(crate::model::Text::arguments) {
            if !parameters.iter().any(|(it, _)| it == name) {
                errors.push(error(tag, &message.name, format!("unknown argument ${name}")));
            }
        }
        for choice in message.body.texts().flat_map(crate::model::Text::choices) {
            let Some((_, of)) = parameters.iter().find(|(it, _)| *it == choice.on) else { continue };
            let what = match of {
                Type::Integer(_) => numbered(tag, choice),
                Type::Flag => flagged(choice),
                Type::Enum(_) => named(choice, first.message(&message.name)),
                Type::Text => Some(format!("selects on ${}, which is text", choice.on)),
            };
            errors.extend(what.map(|what| error(tag, &message.name, what)));
        }
    }
}

fn numbered(tag: &str, choice: &Choice) -> Option<String> {
    let Some(forms) = plural::forms(tag) else { return Some(format!("no plural rules are known of {tag}")) };
    let has = |name: &str| choice.variants.iter().any(|(key, _)| *key == Key::Name(name.to_owned()));
    if !has("other") || choice.variants[choice.default].0 != Key::Name("other".to_owned()) {
        return Some(format!("missing plural: ${} needs *[other]", choice.on));
    }
    for (key, _) in &choice.variants {
        match key {
            Key::Name(name) if name != "other" && !forms.iter().any(|(form, _)| form == name) => {
                return Some(format!("{tag} has no plural form [{name}]"));
            }
            Key::Name(_) | Key::Number(_) => {}
        }
    }
    // Whoever says what holds for single numbers only, has said it for all others in `other`.
    let plain = choice
        .variants
        .iter()
        .all(|(key, _)| matches!(key, Key::Number(0)) || *key == Key::Name("other".into()));
    let missing = forms.iter().find(|(form, _)| !has(form) && !plain);
    missing.map(|(form, _)| format!("missing plural: ${} needs [{form}]", choice.on))
}

fn flagged(choice: &Choice) -> Option<String> {
    let mut keys: Vec<String> = choice.variants.iter().map(|(key, _)| key.to_string()).collect();
    keys.sort();
    (keys != ["false", "true"]).then(|| format!("${} needs [true] and [false], has {keys:?}", choice.on))
}

/// An enum is selected on by the same variants as in the first language, or by fewer and `other`. That the
/// first has all is said by the compiler.
fn named(choice: &Choice, first: Option<&Message>) -> Option<String> {
    let keys = |it: &Choice| it.variants.iter().map(|(key, _)| key.clone()).collect::<Vec<_>>();
    let (own, other) = (keys(choice), Key::Name("other".to_owned()));
    let all = first?.body.texts().flat_map(crate::model::Text::choices).filter(|it| it.on == choice.on);
    let all: Vec<Key> = all.flat_map(keys).collect();
    if all.is_empty() || all.contains(&other) || own.contains(&other) {
        return None;
    }
    let missing: Vec<String> = all.iter().filter(|it| !own.contains(it)).map(ToString::to_string).collect();
    if !missing.is_empty() {
        return Some(format!("${} has no variant for {missing:?}", choice.on));
    }
    let extra: Vec<String> = own.iter().filter(|it| !all.contains(it)).map(ToString::to_string).collect();
    (!extra.is_empty()).then(|| format!("${} has unknown variants {extra:?}", choice.on))
}
