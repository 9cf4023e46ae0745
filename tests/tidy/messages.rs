//! No message of `app/words/` is said by nobody. Those of the page are held to that by the compiler, which cannot
//! know who calls a crate's public functions.

use crate::scan::blank_out;

/// The messages of a catalogue that no source asks for, as their functions are called.
pub(crate) fn unused(catalogue: &str, sources: &[String]) -> Vec<String> {
    let code: Vec<String> = sources.iter().map(|text| blank_out(text)).collect();
    let asked = |function: &str| {
        let calls = [format!(".{function}("), format!("::{function}(")];
        code.iter().any(|text| calls.iter().any(|call| text.contains(call)))
    };
    let names = catalogue.lines().filter(|line| line.starts_with(|c: char| c.is_ascii_lowercase()));
    let names = names.filter_map(|line| line.split_once(" =")).map(|(name, _)| name);
    let placed = |name: &str| catalogue.contains(&format!("{{ {name} }}"));
    names.filter(|name| !placed(name)).map(|name| name.replace('-', "_")).filter(|it| !asked(it)).collect()
}

#[test]
fn unused_messages_are_found() {
    let catalogue =
        "# a-b =\na-b = { c }\n    .x = y\nc = word\nd-e = { $f ->\n    [one] 1\n   *[other] 2\n}\n";
    let of =
        |sources: &[&str]| unused(catalogue, &sources.iter().map(|it| (*it).to_owned()).collect::<Vec<_>>());
    assert_eq!(of(&["w.a_b(); self.d_e(3)"]), Vec::<String>::new());
    assert_eq!(of(&["w.a_b();", "// w.d_e(3)"]), ["d_e"]);
    assert_eq!(of(&["w.xa_b(); w.d_e(3)"]), ["a_b"]);
}
