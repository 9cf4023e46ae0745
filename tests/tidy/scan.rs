//! Reads Rust source just well enough for the rules: comments and strings blanked out, and the
//! paths that start at the crate's root with their lines.

/// One path as written, without its root: `units::Mass` for `crate::units::Mass`.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct RootPath {
    /// Line in the file, from 1.
    pub(crate) line: usize,
    /// The parts joined by `::`; a glob keeps its `*`.
    pub(crate) path: String,
}

/// The text with comments, string and character literals replaced by spaces; lines stay where
/// they are.
pub(crate) fn blank_out(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let length = literal_length(rest);
        if length == 0 {
            out.push(first);
            rest = &rest[first.len_utf8()..];
        } else {
            let blank = |c| if c == '\n' { '\n' } else { ' ' };
            out.extend(rest[..length].chars().map(blank));
            rest = &rest[length..];
        }
    }
    out
}

/// The length in bytes of the comment or literal that `rest` starts with; 0 when it is code.
fn literal_length(rest: &str) -> usize {
    let until =
        |end: &str, from: usize| rest[from..].find(end).map_or(rest.len(), |at| from + at + end.len());
    if rest.starts_with("//") {
        rest.find('\n').unwrap_or(rest.len())
    } else if rest.starts_with("/*") {
        until("*/", 2)
    } else if rest.starts_with("r#\"") {
        until("\"#", 3)
    } else if rest.starts_with("r\"") {
        until("\"", 2)
    } else if rest.starts_with('"') {
        quoted_length(rest, '"')
    } else if rest.starts_with('\'') {
        character_length(rest)
    } else {
        0
    }
}

fn quoted_length(rest: &str, quote: char) -> usize {
    let mut escaped = false;
    for (at, c) in rest.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            c if c == quote => return at + c.len_utf8(),
            _ => {}
        }
    }
    rest.len()
}

/// A character literal, or 0 for a lifetime.
fn character_length(rest: &str) -> usize {
    let mut chars = rest.char_indices().skip(1);
    match (chars.next(), chars.next()) {
        (Some((_, '\\')), Some(_)) => quoted_length(rest, '\''),
        (Some(_), Some((at, '\''))) => at + 1,
        (Some(_) | None, Some(_) | None) => 0,
    }
}

/// All paths that start with one of `roots` (`crate`, or the crate's name), groups written out.
pub(crate) fn root_paths(text: &str, roots: &[&str]) -> Vec<RootPath> {
    let code = blank_out(text);
    let mut found = Vec::new();
    for root in roots {
        let start = format!("{root}::");
        for (at, _) in code.match_indices(&start) {
            let inside_word = code[..at].ends_with(is_word) || code[..at].ends_with("::");
            // `pub(in crate::road)` says who may look, not where something is from.
            let visibility = code[..at].trim_end().ends_with("(in");
            if !inside_word && !visibility {
                write_out(&code, at + start.len(), "", &mut found);
            }
        }
    }
    found
}

fn is_word(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}

/// Reads one use tree or path at `at`; gives where it ends.
fn write_out(code: &str, at: usize, prefix: &str, found: &mut Vec<RootPath>) -> usize {
    let mut at = skip_space(code, at);
    let begin = at;
    let mut path = String::from(prefix);
    loop {
        if code[at..].starts_with('{') {
            return write_out_group(code, at + 1, &path, found);
        }
        let part = code[at..].find(|c| !is_word(c)).unwrap_or(code.len() - at);
        let part = if code[at..].starts_with('*') { 1 } else { part };
        path.push_str(&code[at..at + part]);
        at += part;
        if part == 0 || !code[at..].starts_with("::") {
            break;
        }
        path.push_str("::");
        at = skip_space(code, at + 2);
    }
    let line = code[..begin].matches('\n').count() + 1;
    found.push(RootPath { line, path });
    at
}

fn write_out_group(code: &str, at: usize, prefix: &str, found: &mut Vec<RootPath>) -> usize {
    let mut at = skip_space(code, at);
    while at < code.len() && !code[at..].starts_with('}') {
        let end = write_out(code, at, prefix, found);
        // Past a rename (`as x`) and the comma, to the next member or the end of the group.
        let next = code[end..].find([',', '}']).map_or(code.len(), |gap| end + gap);
        let comma = code[next..].starts_with(',');
        at = skip_space(code, if comma { next + 1 } else { next });
    }
    (at + 1).min(code.len())
}

fn skip_space(code: &str, at: usize) -> usize {
    let rest = &code[at..];
    at + (rest.len() - rest.trim_start().len())
}

/// Where a chain of `super::` leads: how many of them, and the name behind, with its line.
pub(crate) fn super_chains(text: &str) -> Vec<(usize, usize, String)> {
    let code = blank_out(text);
    let mut found = Vec::new();
    for (at, _) in code.match_indices("super::") {
        if code[..at].ends_with("super::") || code[..at].ends_with(is_word) {
            continue;
        }
        let mut count = 0;
        let mut rest = &code[at..];
        while let Some(behind) = rest.strip_prefix("super::") {
            count += 1;
            rest = behind;
        }
        let mut members = Vec::new();
        write_out(rest, 0, "", &mut members);
        let line = code[..at].matches('\n').count() + 1;
        found.extend(members.into_iter().map(|member| (line, count, member.path)));
    }
    found
}

/// The code with comments and literals blanked out, and what is there for tests only; lines stay where they
/// are.
pub(crate) fn without_tests(text: &str) -> String {
    const MARK: &str = "#[cfg(test)]";
    let mut code = blank_out(text);
    while let Some(from) = code.find(MARK) {
        let to = from + MARK.len() + item_length(&code[from + MARK.len()..]);
        let blank: String = code[from..to].chars().map(|c| if c == '\n' { '\n' } else { ' ' }).collect();
        code.replace_range(from..to, &blank);
    }
    code
}

/// The length in bytes of the item, field or argument that `rest` starts with.
fn item_length(rest: &str) -> usize {
    let (mut round, mut curly) = (0_usize, 0_usize);
    for (at, c) in rest.char_indices() {
        match c {
            '(' | '[' => round += 1,
            ')' | ']' if round == 0 => return at,
            ')' | ']' => round -= 1,
            '{' => curly += 1,
            '}' if curly == 0 => return at,
            '}' => {
                curly -= 1;
                if curly == 0 && round == 0 {
                    return at + 1;
                }
            }
            ';' | ',' if round == 0 && curly == 0 => return at + 1,
            _ => {}
        }
    }
    rest.len()
}

/// The paths that a module passes on (`pub use`, in whatever visibility), as written. One that is renamed
/// is not among them: it counts as the module's own.
pub(crate) fn re_exports(code: &str) -> Vec<String> {
    let mut found = Vec::new();
    for (at, word) in code.match_indices("use ") {
        let before = code[..at].trim_end();
        let opened = before.strip_suffix(')').and_then(|it| it.rfind('(').map(|at| &before[..at]));
        if opened.unwrap_or(before).ends_with("pub") && code[..at].ends_with([' ', '\t', '\n']) {
            write_out(code, at + word.len(), "", &mut found);
        }
    }
    found.into_iter().map(|it| it.path).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str, expect: &[(usize, &str)]) {
        let found = root_paths(text, &["crate"]);
        let found: Vec<_> = found.iter().map(|p| (p.line, p.path.as_str())).collect();
        assert_eq!(found, expect, "{text}");
    }

    #[test]
    fn paths_are_found_where_they_are_code() {
        check("use crate::units::Mass;", &[(1, "units::Mass")]);
        check("\nlet x = crate::road::read(a);", &[(2, "road::read")]);
        check("// crate::plan\n/* crate::plan */ \"crate::plan\" 'x' r\"crate::plan\"", &[]);
        check("pub(crate) fn a() {}", &[]);
        check("fn a<'a>(x: &'a str) { crate::plan::b() }", &[(1, "plan::b")]);
        check("mycrate::plan::b()", &[]);
        check("pub(in crate::plan) use crate::road::A;", &[(1, "road::A")]);
    }

    #[test]
    fn groups_are_written_out_with_their_lines() {
        check(
            "use crate::{\n    road::{Road, track::*},\n    units as u, limits,\n};\nuse crate::plan;",
            &[(2, "road::Road"), (2, "road::track::*"), (3, "units"), (3, "limits"), (5, "plan")],
        );
    }

    #[test]
    fn chains_of_super_are_followed() {
        let found = super_chains("use super::super::{truck::Truck, a};\nuse super::*;");
        let expect = [(1, 2, "truck::Truck"), (1, 2, "a"), (2, 1, "*")];
        let expect = expect.map(|(line, count, path)| (line, count, String::from(path)));
        assert_eq!(found, expect);
    }

    #[test]
    fn what_is_there_for_tests_is_left_out() {
        for (text, expect) in [
            ("a\n#[cfg(test)]\nmod tests { x { y } }\nb", "a\n\n\nb"),
            ("#[cfg(test)]\npub(crate) mod sample;\nb", "\n\nb"),
            ("f(#[cfg(test)] a, b)", "f( b)"),
            ("struct A { #[cfg(test)] a: B<C> }", "struct A { }"),
            ("#[cfg(test)] use a::{b, c}; d", "; d"),
        ] {
            let squeeze = |text: &str| text.replace(' ', "");
            assert_eq!(squeeze(&without_tests(text)), squeeze(expect), "{text}");
        }
    }

    #[test]
    fn what_is_passed_on_is_found_in_any_visibility() {
        let code = "pub use a::{B, c};\npub(crate) use d::E;\npub(in crate::state) use f::G;\nuse h::I;";
        assert_eq!(re_exports(code), ["a::B", "a::c", "d::E", "f::G"]);
    }
}
