//! What is wrong with catalogues is an error of the build. Each folder of `bad/` has one thing wrong, and
//! `says.txt` with what the build must say of it.

use catalogue::{Catalogues, Source, Style};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

const STYLE: Style<'_> = Style {
    owner: "Words",
    visibility: "pub(crate)",
    number: "whole",
    piece: "Piece",
    tongue: ("tongue", "Tongue"),
};

/// What the code stands in: as little as it needs.
const AROUND: &str = r#"
    #![allow(dead_code)]
    #[derive(Clone, Copy)]
    pub struct Words { tongue: Tongue }
    #[derive(Clone, Copy)]
    pub enum Tongue { En, De }
    #[derive(Debug, PartialEq)]
    pub enum Piece { Plain(String), Strong(String) }
    #[derive(Clone, Copy)]
    pub enum How { Up, DownHill }
    pub fn whole(number: f64) -> String { format!("{number:.0}!") }
"#;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests")
}

fn texts(folder: &Path) -> Vec<(String, String)> {
    let read = |tag: &str| fs::read_to_string(folder.join(format!("{tag}.ftl"))).expect("a fixture has both");
    ["en", "de"].map(|tag| (tag.to_owned(), read(tag))).to_vec()
}

fn read(texts: &[(String, String)]) -> Result<Catalogues, Vec<catalogue::Error>> {
    let sources: Vec<Source<'_>> = texts.iter().map(|(tag, text)| (tag.as_str(), text.as_str())).collect();
    Catalogues::read(&sources)
}

#[test]
fn each_mistake_is_said_with_file_and_message() {
    let mut folders: Vec<PathBuf> = fs::read_dir(folder().join("bad"))
        .expect("fixtures")
        .map(|it| it.expect("a folder").path())
        .collect();
    folders.sort();
    assert!(folders.len() >= 12, "{folders:?}");
    for folder in folders {
        let errors = read(&texts(&folder)).expect_err(&format!("{} is wrong", folder.display()));
        let said: Vec<String> = errors.iter().map(ToString::to_string).collect();
        let expected = fs::read_to_string(folder.join("says.txt")).expect("what is to be said");
        assert_eq!(said.join("\n"), expected.trim_end(), "{}", folder.display());
    }
}

/// Compiles a program of these functions and of `rest`; what the compiler says if it refuses.
fn compiled(name: &str, code: &str, rest: &str) -> Result<PathBuf, String> {
    compiled_in(AROUND, name, code, rest)
}

fn compiled_in(around: &str, name: &str, code: &str, rest: &str) -> Result<PathBuf, String> {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let source = out.with_extension("rs");
    fs::write(&source, format!("{around}\n{code}\n{rest}")).expect("a folder to write to");
    let rustc = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let done = Command::new(rustc).args(["--edition", "2024", "-o"]).arg(&out).arg(&source).output();
    let done = done.expect("the compiler runs");
    if done.status.success() { Ok(out) } else { Err(String::from_utf8_lossy(&done.stderr).into_owned()) }
}

fn good() -> Catalogues {
    read(&texts(&folder().join("good"))).expect("nothing is wrong with it")
}

const MAIN: &str = r#"
    fn main() {
        let w = Words { tongue: Tongue::En };
        SAID
    }
"#;

const SAYS_ALL: &str = r#"
    println!("{}", w.still());
    println!("{}", w.heads().join("|"));
    for count in [0, 1, 2] { println!("{}", w.files(count, "7")); }
    for how in [How::Up, How::DownHill] { println!("{}|{}", w.how(how), w.go(how, true, 1234)); }
    println!("{:?}", w.decides("5", 1));
"#;

fn run(program: &Path) -> String {
    let done = Command::new(program).output().expect("a program");
    String::from_utf8(done.stdout).expect("text")
}

#[test]
fn the_functions_say_what_stands_in_the_catalogue() {
    let english = "Still – “{”\none|two \n0 files of 7\n1 file of 7\n2 files of 7\n\
        up|go up, now, 1234!\ndown|go down, now, 1234!\n\
        [Plain(\"One: \"), Strong(\"gear 5\"), Plain(\", \"), Strong(\"now\"), Plain(\".\")]\n";
    let program =
        compiled("one", &good().one("en", STYLE), &MAIN.replace("SAID", SAYS_ALL)).expect("it compiles");
    assert_eq!(run(&program), english);
    let all = good().all(STYLE);
    let program = compiled("all", &all, &MAIN.replace("SAID", SAYS_ALL)).expect("it compiles");
    assert_eq!(run(&program), english, "the same, where all languages are asked");
    let main = MAIN.replace("SAID", SAYS_ALL).replace("Tongue::En }", "Tongue::De }");
    let german = run(&compiled("german", &all, &main).expect("it compiles"));
    assert!(german.starts_with("Ruhig\neins|zwei\n0 Dateien von 7\n1 Datei von 7\n"), "{german}");
    assert!(german.contains("[Strong(\"Gang 5\"), Plain(\" und eins.\")]"), "{german}");
}

#[test]
fn a_message_that_nobody_uses_is_refused() {
    let main = MAIN.replace("SAID", &SAYS_ALL.replace("println!(\"{}\", w.still());", ""));
    let said = compiled("unused", &good().one("en", STYLE), &main).expect_err("one message is not used");
    assert!(said.contains("method `still` is never used"), "{said}");
}

#[test]
fn an_argument_of_another_type_is_refused() {
    for (call, what) in [
        ("w.files(\"1\", \"7\");", "expected `usize`, found `&str`"),
        ("w.how(1);", "expected `How`, found integer"),
        ("w.files(1);", "this method takes 2 arguments but 1 argument was supplied"),
        ("w.nothing();", "no method named `nothing`"),
    ] {
        let said = compiled("typed", &good().one("en", STYLE), &MAIN.replace("SAID", call)).expect_err(call);
        assert!(said.contains(what), "{call}: {said}");
    }
}

#[test]
fn a_variant_that_the_enum_lacks_or_has_more_is_refused() {
    let all = good().all(STYLE);
    assert_eq!(compiled("variants", &all, "fn main() {}").err(), None, "as it is, it compiles");
    for (variants, what) in [("Up, DownHill, Level", "`How::Level` not covered"), ("Up", "`DownHill`")] {
        let around = AROUND.replace("Up, DownHill", variants);
        let said = compiled_in(&around, "variants", &all, "fn main() {}").expect_err(variants);
        assert!(said.contains(what), "{variants}: {said}");
    }
}
