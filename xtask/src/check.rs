//! `cargo xtask test`: everything that must hold, step by step.

use crate::{
    Outcome, browser, budget, build,
    deny::{self, Ran},
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
    Dependencies,
    Advisories,
    TestsNative,
    TestsWasm,
    Build,
    Sizes,
    Browser,
}

const STEPS: [Step; 12] = [
    Step::Tools,
    Step::Formatting,
    Step::LintsNative,
    Step::LintsWasm,
    Step::Docs,
    Step::Dependencies,
    Step::Advisories,
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
            Step::Dependencies => "Rules for dependencies",
            Step::Advisories => "Weaknesses of dependencies",
            Step::TestsNative => "Tests, native",
            Step::TestsWasm => "The same snapshots in wasm",
            Step::Build => "Release build",
            Step::Sizes => "Size budgets",
            Step::Browser => "The page in Chromium",
        }
    }

    /// The step whose success this one needs in order to say anything.
    fn needs(self) -> Option<Step> {
        match self {
            Step::Tools
            | Step::Formatting
            | Step::LintsNative
            | Step::Docs
            | Step::Dependencies
            | Step::Advisories
            | Step::TestsNative => None,
            Step::LintsWasm | Step::TestsWasm | Step::Build => Some(Step::Tools),
            Step::Sizes | Step::Browser => Some(Step::Build),
        }
    }

    fn run(self) -> (Tally, Ending) {
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
                "-p",
                "words",
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
            Step::Dependencies => (Tally::default(), Ending::of(deny::rules())),
            Step::Advisories => (Tally::default(), Ending::of(deny::advisories())),
            Step::TestsNative => counted(run_counted(&mut native_tests())),
            Step::TestsWasm => counted(run_counted(program("cargo").args([
                "test",
                "-p",
                "tests",
                "--test",
                "regress",
                "--target",
                "wasm32-unknown-unknown",
            ]))),
            Step::Build => uncounted(build::run()),
            Step::Sizes => uncounted(budget::run()),
            Step::Browser => counted(browser::run_tests()),
        }
    }
}

/// All native tests. Without the variable removed, snapshots would be written anew and hold whatever comes
/// out.
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
    Skipped(String),
}

impl Ending {
    fn of(ran: Ran) -> Self {
        match ran {
            Ran::Yes(Ok(())) => Self::Held,
            Ran::Yes(Err(sentence)) => Self::Failed(sentence),
            Ran::No(why) => Self::Skipped(why),
        }
    }

    /// Whether the run as a whole is spoilt by it.
    fn spoils(&self) -> bool {
        match self {
            Self::Held | Self::Skipped(_) => false,
            Self::Failed(_) | Self::NotRun(_) => true,
        }
    }
}

struct Report {
    step: Step,
    ending: Ending,
    tally: Tally,
    time: Duration,
}

/// Runs all steps, even after a failure, and prints a summary.
///
/// The last line counts single tests. A step that fails without a failing test in it (a lint, a size, a
/// build) counts as one failure.
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
        None => step.run(),
    };
    let time = start.elapsed();
    match &ending {
        Ending::Held => {}
        Ending::Failed(sentence) => println!("FAILED: {sentence}"),
        Ending::NotRun(needed) => println!("not run, since \"{}\" failed", needed.heading()),
        Ending::Skipped(why) => println!("SKIPPED: {why}."),
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
            Ending::Skipped(_) => "skipped",
        };
        println!(
            "{word:>8}  {:<28} {:>5} s  {:>5} passed {:>3} failed",
            report.step.heading(),
            report.time.as_secs(),
            report.tally.passed,
            report.tally.failed
        );
        total += report.tally;
        let spoils = report.ending.spoils();
        if spoils && report.tally.failed == 0 {
            total.failed += 1;
        }
        all_held &= !spoils;
    }
    for report in reports {
        if let Ending::Skipped(why) = &report.ending {
            println!("\n{} was skipped: {why}.", report.step.heading());
        }
    }
    println!("{} min in all\n", time.as_secs().div_ceil(60));
    println!("{} passed, {} failed", total.passed, total.failed);
    if all_held { Ok(()) } else { Err("not everything holds; the steps that failed say why".into()) }
}

fn uncounted(outcome: Outcome) -> (Tally, Ending) {
    counted((Tally::default(), outcome))
}

fn counted((tally, outcome): (Tally, Outcome)) -> (Tally, Ending) {
    (tally, Ending::of(Ran::Yes(outcome)))
}

#[cfg(test)]
mod tests {
    use super::{Ending, STEPS, native_tests};
    use crate::deny::Ran;

    #[test]
    fn snapshots_are_compared_and_not_written_anew() {
        let tests = native_tests();
        assert!(tests.get_envs().any(|it| it == ("STEADYGRADE_UPDATE".as_ref(), None)));
    }

    #[test]
    fn a_step_that_was_skipped_is_not_one_that_held() {
        let skipped = Ending::of(Ran::No(String::from("why")));
        assert!(matches!(&skipped, Ending::Skipped(why) if why == "why"));
        assert!(!skipped.spoils() && !matches!(skipped, Ending::Held));
        assert!(Ending::of(Ran::Yes(Err(String::from("broken")))).spoils());
        assert!(Ending::NotRun(STEPS[0]).spoils());
    }
}
