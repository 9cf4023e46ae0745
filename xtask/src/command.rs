//! The commands that a person can give, and how the words on the command line are read.

/// Printed by `cargo xtask`, `--help` and `-h`.
pub(crate) const HELP: &str = "\
cargo xtask COMMAND

  serve [--port N] [--no-build]  build the release page and serve it on 127.0.0.1
                                 (port 8087, or the next free one)
  test                           everything that must hold: formatting, lints, dependencies,
                                 tests native and in wasm, the release build, sizes, the page
                                 in Chromium
  browser [--no-build]           of these, the tests in Chromium alone
  build                          the release page into dist/
  bench [--page | --truth]       time the solver, or the page, against its baselines; or
                                 measure roads whose truth is known
  shots [--no-build]             pictures of the page into target/shots/

Missing tools are installed into .tools/ the first time: about ten minutes on two cores.
";

/// The port `serve` tries first.
pub(crate) const DEFAULT_PORT: u16 = 8087;

/// One command with its options.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Command {
    /// List the commands.
    Help,
    /// Release build into `dist/`.
    Build,
    /// Build, then serve `dist/`.
    Serve {
        /// First port to try; `None` when the person named none.
        port: Option<u16>,
        /// False: serve what is in `dist/` already.
        build: bool,
    },
    /// All checks.
    Test,
    /// Timings; the words after `bench` go to the benchmark unchanged.
    Bench {
        /// The words for the benchmark.
        rest: Vec<String>,
    },
    /// The tests in the browser alone.
    Browser {
        /// False: use what is in `dist/` already.
        build: bool,
    },
    /// Pictures of the page.
    Shots {
        /// False: use what is in `dist/` already.
        build: bool,
    },
}

/// Reads the words after `cargo xtask`.
///
/// # Errors
/// A sentence that names the word that was not understood.
pub(crate) fn read(words: &[String]) -> Result<Command, String> {
    let Some((name, rest)) = words.split_first() else {
        return Ok(Command::Help);
    };
    match name.as_str() {
        "help" | "--help" | "-h" => Ok(Command::Help),
        "build" => no_options(name, rest).map(|()| Command::Build),
        "test" => no_options(name, rest).map(|()| Command::Test),
        "bench" => Ok(Command::Bench { rest: rest.to_vec() }),
        "browser" => may_skip_build(name, rest).map(|build| Command::Browser { build }),
        "shots" => may_skip_build(name, rest).map(|build| Command::Shots { build }),
        "serve" => read_serve(rest),
        other => Err(format!("there is no command `{other}`; `cargo xtask` lists them")),
    }
}

fn read_serve(rest: &[String]) -> Result<Command, String> {
    let mut port = None;
    let mut build = true;
    let mut words = rest.iter();
    while let Some(word) = words.next() {
        match word.as_str() {
            "--no-build" => build = false,
            "--port" => {
                let value = words.next().map_or("", String::as_str);
                port = Some(
                    value
                        .parse()
                        .map_err(|_| format!("--port needs a number from 1 to 65535, not `{value}`"))?,
                );
            }
            _ => return Err(misunderstood("serve", rest)),
        }
    }
    Ok(Command::Serve { port, build })
}

/// Whether to build first.
fn may_skip_build(name: &str, rest: &[String]) -> Result<bool, String> {
    match rest {
        [] => Ok(true),
        [word] if word == "--no-build" => Ok(false),
        [..] => Err(misunderstood(name, rest)),
    }
}

fn no_options(name: &str, rest: &[String]) -> Result<(), String> {
    if rest.is_empty() { Ok(()) } else { Err(misunderstood(name, rest)) }
}

fn misunderstood(name: &str, rest: &[String]) -> String {
    format!("`{name}` does not know `{}`; `cargo xtask` lists what it knows", rest.join(" "))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(line: &str, expect: Result<Command, &str>) {
        let words: Vec<String> = line.split_whitespace().map(String::from).collect();
        match (read(&words), expect) {
            (Ok(command), Ok(expected)) => assert_eq!(command, expected, "{line}"),
            (Err(sentence), Err(part)) => assert!(sentence.contains(part), "{line}: {sentence}"),
            (got, expected) => panic!("{line}: {got:?} instead of {expected:?}"),
        }
    }

    #[test]
    fn the_words_are_read() {
        check("", Ok(Command::Help));
        check("--help", Ok(Command::Help));
        check("test", Ok(Command::Test));
        check("test --fast", Err("--fast"));
        check("nonsense", Err("nonsense"));
        check("serve --port 9000 --no-build", Ok(Command::Serve { port: Some(9000), build: false }));
        check("serve --port", Err("needs a number"));
        check("serve --port 99999", Err("99999"));
        check("serve --open", Err("--open"));
        check("shots --no-build", Ok(Command::Shots { build: false }));
        check("bench --truth", Ok(Command::Bench { rest: vec!["--truth".into()] }));
    }
}
