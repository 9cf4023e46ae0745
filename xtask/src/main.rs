//! Developer commands, each of which a person types: `cargo xtask serve`, `test`, `build`, `browser`,
//! `bench`, `shots`. `cargo xtask` alone lists them.
//!
//! A command installs everything that it needs beyond Rust, a C compiler and Node, into `.tools` in the
//! project ([`tools`] says what, in which version and why).

mod bench;
mod browser;
mod budget;
mod build;
mod check;
mod chromium;
mod command;
mod deny;
mod dist;
mod project;
mod server;
mod tally;
mod tools;

use command::Command;
use std::process::ExitCode;

/// Result of a step: nothing, or one sentence that says what went wrong and what to do.
pub(crate) type Outcome<T = ()> = Result<T, String>;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let outcome = match command::read(&words) {
        Ok(Command::Help) => {
            print!("{}", command::HELP);
            Ok(())
        }
        Ok(Command::Build) => build::run(),
        Ok(Command::Serve { port, build }) => server::run(port, build),
        Ok(Command::Test) => check::run(),
        Ok(Command::Bench { rest }) => bench::run(&rest),
        Ok(Command::Browser { build }) => browser::run_alone(build),
        Ok(Command::Shots { build }) => browser::take_shots(build),
        Err(sentence) => Err(sentence),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(sentence) => {
            eprintln!("xtask: {sentence}");
            ExitCode::FAILURE
        }
    }
}
