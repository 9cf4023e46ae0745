//! `cargo xtask test`: everything that must hold, step by step.

use crate::{
    Outcome, browser, budget, build,
    project::{program, run as run_program},
    tally::{Tally, run_counted},
    tools,
};
use std::process::Command;
use std::time::{Duration, Instant};

/// The steps, in their order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Step {
    Tools,
    Formatting,
    LintsNative,
    LintsWasm,
    Docs,
    TestsNative,
    TestsWasm,
    Build,
    Sizes,
    Browser,
}

const STEPS: [Step; 10] = [
    Step::Tools,
    Step::Formatting,
    Step::LintsNative,
    Step::LintsWasm,
    Step::Docs,
    Step::TestsNative,
    Step::TestsWasm,
    Step::Build,
    Step::Sizes,
    Step::Browser,
];

impl Step {
    fn heading(self) -> &'static str {
        match self {
            Step::Tools => "Tools that are missing",
            Step::Formatting => "Formatting",
            Step::LintsNative => "Lints, native",
            Step::LintsWasm => "Lints, wasm",
            Step::Docs => "Documentation",
            Step::TestsNative => "Tests, native",
            Step::TestsWasm => "The same snapshots in wasm",
            Step::Build => "Release build",
            Step::Sizes => "Size budgets",
            Step::Browser => "The page in Chromium",
        }
    }

    /// The step without whose success this one says nothing.
    fn needs(self) -> Option<Step> {
        match self {
            Step::Tools | Step::Formatting | Step::LintsNative | Step::Docs | Step::TestsNative => None,
            Step::LintsWasm | Step::TestsWasm | Step::Build => Some(Step::Tools),
            Step::Sizes | Step::Browser => Some(Step::Build),
        }
    }

    fn run(self) -> (Tally, Outcome) {
        match self {
            Step::Tools => uncounted(tools::install_missing()),
            Step::Formatting => uncounted(run_program(program("cargo").args(["fmt", "--all", "--check"]))),
            Step::LintsNative => uncounted(run_program(program("cargo").args([
                "clippy",
                "--workspace",
                "--all-targets",
                "--",
                "-D",
                "warnings",
            ]))),
            Step::LintsWasm => uncounted(run_program(program("cargo").args([
                "clippy",
                "-p",
                "app",
                "-p",
                "workers",
                "-p",
                "solver",
                "--lib",
                "--bins",
                "--target",
                "wasm32-unknown-unknown",
                "--",
                "-D",
                "warnings",
            ]))),
            Step::Docs => uncounted(run_program(
                program("cargo")
                    .args(["doc", "-p", "solver", "--no-deps"])
                    .env("RUSTDOCFLAGS", "-D warnings"),
            )),
            Step::TestsNative => run_counted(&mut native_tests()),
            Step::TestsWasm => run_counted(program("cargo").args([
                "test",
                "-p",
                "tests",
                "--test",
                "regress",
                "--target",
                "wasm32-unknown-unknown",
            ])),
            Step::Build => uncounted(build::run()),
            Step::Sizes => uncounted(budget::run()),
            Step::Browser => browser::run_tests(),
        }
    }
}

/// All native tests. Snapshots that are to be written anew hold whatever comes out: nobody who asks
/// whether everything holds means that.
fn native_tests() -> Command {
    let mut command = program("cargo");
    command.args(["test", "--workspace", "--no-fail-fast"]).env_remove("STEADYGRADE_UPDATE");
    command
}

/// How a step ended.
enum Ending {
    Held,
    Failed(String),
    NotRun(Step),
}

struct Report {
    step: Step,
    ending: Ending,
    tally: Tally,
    time: Duration,
}

/// Runs all steps, one failure notwithstanding, and prints a summary.
///
/// The last line counts single tests. A step that fails without a failing test in it (a lint,
/// a size, a build) counts as one failed.
///
/// # Errors
/// A sentence when any step failed or could not run.
pub(crate) fn run() -> Outcome {
    let start = Instant::now();
    let mut reports: Vec<Report> = Vec::new();
    for step in STEPS {
        let report = run_step(step, &reports);
        reports.push(report);
    }
    summarise(&reports, start.elapsed())
}

fn run_step(step: Step, before: &[Report]) -> Report {
    println!("\n== {} ==", step.heading());
    let start = Instant::now();
    let missing = before
        .iter()
        .filter(|report| step.needs() == Some(report.step))
        .find(|report| !matches!(report.ending, Ending::Held));
    let (tally, ending) = match missing {
        Some(report) => (Tally::default(), Ending::NotRun(report.step)),
        None => {
            let (tally, outcome) = step.run();
            (tally, outcome.map_or_else(Ending::Failed, |()| Ending::Held))
        }
    };
    let time = start.elapsed();
    match &ending {
        Ending::Held => {}
        Ending::Failed(sentence) => println!("FAILED: {sentence}"),
        Ending::NotRun(needed) => println!("not run, since \"{}\" failed", needed.heading()),
    }
    println!("-- {} s", time.as_secs());
    Report { step, ending, tally, time }
}

fn summarise(reports: &[Report], time: Duration) -> Outcome {
    println!("\n== Summary ==");
    let mut total = Tally::default();
    let mut all_held = true;
    for report in reports {
        let word = match &report.ending {
            Ending::Held => "ok",
            Ending::Failed(_) => "FAILED",
            Ending::NotRun(_) => "not run",
        };
        println!(
            "{word:>8}  {:<28} {:>5} s  {:>5} passed {:>3} failed",
            report.step.heading(),
            report.time.as_secs(),
            report.tally.passed,
            report.tally.failed
        );
        total += report.tally;
        let held = matches!(report.ending, Ending::Held);
        if !held && report.tally.failed == 0 {
            total.failed += 1;
        }
        all_held &= held;
    }
    println!("{} min in all\n", time.as_secs().div_ceil(60));
    println!("{} passed, {} failed", total.passed, total.failed);
    if all_held { Ok(()) } else { Err("not everything holds; the steps that failed say why".into()) }
}

fn uncounted(outcome: Outcome) -> (Tally, Outcome) {
    (Tally::default(), outcome)
}

#[cfg(test)]
mod tests {
    use super::native_tests;

    #[test]
    fn snapshots_are_compared_and_not_written_anew() {
        let tests = native_tests();
        assert!(tests.get_envs().any(|it| it == ("STEADYGRADE_UPDATE".as_ref(), None)));
    }
}
