//! What every language says, over a grid of what it is asked to say: whether it still says the same.
//!
//! `STEADYGRADE_UPDATE=1` writes the sums anew; `STEADYGRADE_WORDS=folder` writes all texts there, to
//! see what differs.

mod composed;
mod grid;
mod messages;
mod messages_more;
mod samples;
mod studied;

use crate::words::{Spoken, Tongue};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::PathBuf;

/// What one language says.
pub(super) struct Dump {
    tongue: Tongue,
    /// By message: how many texts, and all of them as lines.
    said: BTreeMap<String, (usize, String)>,
}

impl Dump {
    fn w(&self) -> Spoken {
        self.tongue.words()
    }

    fn c(&self) -> Spoken {
        self.w()
    }

    fn line(&mut self, name: &str, asked: &[String], text: &str) {
        let (count, lines) = self.said.entry(name.to_owned()).or_default();
        *count += 1;
        writeln!(lines, "{name}({}) = {text}", asked.join(", ")).expect("a string takes all");
    }
}

/// Says a message with all that its arguments range over: `in` values, `at` samples by their number.
/// What was asked otherwise once, by its name of then.
macro_rules! say {
    ($d:ident $name:literal ($($rest:tt)*) $w:ident => $e:expr) => { say!(@@ $d $name ($w => $e) [] $($rest)*) };
    (@@ $d:ident $name:literal ($w:ident => $e:expr) [$($l:expr),*]) => {{
        let asked = [$($l),*];
        let $w = $d.w();
        let text = format!("{:?}", $e);
        $d.line($name, &asked, &text);
    }};
    (@@ $d:ident $name:literal $q:tt [$($done:expr),*] $a:ident in $g:expr $(, $($rest:tt)*)?) => {
        for $a in $g { say!(@@ $d $name $q [$($done,)* format!("{:?}", $a)] $($($rest)*)?); }
    };
    (@@ $d:ident $name:literal $q:tt [$($done:expr),*] $a:ident at $g:expr $(, $($rest:tt)*)?) => {
        for (number, $a) in $g.iter().enumerate() {
            say!(@@ $d $name $q [$($done,)* format!("{} {number}", stringify!($a))] $($($rest)*)?);
        }
    };
    ($d:ident $v:ident $m:ident ($($rest:tt)*)) => { say!(@ $d $v $m [] $($rest)*) };
    (@ $d:ident $v:ident $m:ident [$(($l:expr, $a:ident))*]) => {{
        let asked = [$($l),*];
        let text = format!("{:?}", $d.$v().$m($($a),*));
        $d.line(concat!(stringify!($v), ".", stringify!($m)), &asked, &text);
    }};
    (@ $d:ident $v:ident $m:ident [$($done:tt)*] $a:ident in $g:expr $(, $($rest:tt)*)?) => {
        for $a in $g { say!(@ $d $v $m [$($done)* (format!("{:?}", $a), $a)] $($($rest)*)?); }
    };
    (@ $d:ident $v:ident $m:ident [$($done:tt)*] $a:ident at $g:expr $(, $($rest:tt)*)?) => {
        for (number, $a) in $g.iter().enumerate() {
            say!(@ $d $v $m [$($done)* (format!("{} {number}", stringify!($a)), $a)] $($($rest)*)?);
        }
    };
}
use say;

/// FNV-1a: enough to see that a text differs.
fn sum(text: &str) -> u64 {
    text.bytes()
        .fold(0xcbf2_9ce4_8422_2325, |sum, byte| (sum ^ u64::from(byte)).wrapping_mul(0x100_0000_01b3))
}

fn folder(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src/words/tests/dump").join(name)
}

#[test]
fn every_language_says_what_it_said() {
    let mut all = Vec::new();
    for tongue in Tongue::ALL {
        let mut d = Dump { tongue, said: BTreeMap::new() };
        messages::all(&mut d);
        messages_more::all(&mut d);
        composed::all(&mut d);
        studied::all(&mut d);
        let tag = d.w().tag();
        let sums: String = d
            .said
            .iter()
            .map(|(name, (count, text))| format!("{name} {count} {:016x}\n", sum(text)))
            .collect();
        if let Some(texts) = std::env::var_os("STEADYGRADE_WORDS") {
            let all: String = d.said.values().map(|(_, text)| text.as_str()).collect();
            std::fs::write(PathBuf::from(texts).join(format!("{tag}.txt")), all)
                .expect("the folder is there");
        }
        let kept = folder(&format!("{tag}.txt"));
        if std::env::var_os("STEADYGRADE_UPDATE").is_some() {
            std::fs::write(&kept, &sums).expect("the folder is there");
        }
        let before = std::fs::read_to_string(&kept).expect("sums were written");
        let differs: Vec<&str> = sums.lines().filter(|line| !before.lines().any(|it| it == *line)).collect();
        all.extend(differs.iter().map(|line| format!("{tag}: {line}")));
        assert_eq!(sums.lines().count(), before.lines().count(), "{tag}: messages are missing");
    }
    assert!(all.is_empty(), "{all:#?}");
}
