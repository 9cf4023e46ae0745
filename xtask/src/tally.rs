//! Number of tests that passed and failed, read from the output of the test programs.

use crate::{Outcome, project::shown};
use std::{
    io::{BufRead, BufReader},
    ops::AddAssign,
    process::{Command, Stdio},
};

/// Counts of single tests.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) struct Tally {
    /// Tests that held.
    pub(crate) passed: u64,
    /// Tests that did not.
    pub(crate) failed: u64,
}

impl AddAssign for Tally {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
    }
}

/// Runs a test program to its end, shows its output and counts its tests.
///
/// The error is set when the program could not start or failed; the counts are those up to its end.
pub(crate) fn run_counted(command: &mut Command) -> (Tally, Outcome) {
    let shown = shown(command);
    let mut tally = Tally::default();
    let mut child = match command.stdout(Stdio::piped()).spawn() {
        Ok(child) => child,
        Err(error) => {
            return (tally, Err(format!("`{shown}` could not be started: {error}")));
        }
    };
    if let Some(stdout) = child.stdout.take() {
        // Bytes, not text: a test may print anything.
        for line in BufReader::new(stdout).split(b'\n').map_while(Result::ok) {
            let line = String::from_utf8_lossy(&line);
            println!("{line}");
            tally += count(&line);
        }
    }
    let outcome = match child.wait() {
        Ok(status) if status.success() => Ok(()),
        Ok(status) => Err(format!("`{shown}` failed ({status})")),
        Err(error) => Err(format!("`{shown}` was lost: {error}")),
    };
    (tally, outcome)
}

/// Counts of one line: the closing line of a Rust test program (native or wasm), or one of node's closing
/// lines in its TAP form.
fn count(line: &str) -> Tally {
    let mut tally = Tally::default();
    if let Some(rest) = line.strip_prefix("test result: ") {
        for part in rest.split([';', '.']) {
            let mut words = part.split_whitespace();
            let number = words.next().and_then(|word| word.parse().ok()).unwrap_or(0);
            match words.next() {
                Some("passed") => tally.passed = number,
                Some("failed") => tally.failed = number,
                Some(_) | None => {}
            }
        }
    } else if let Some(number) = line.strip_prefix("# pass ") {
        tally.passed = number.trim().parse().unwrap_or(0);
    } else if let Some(number) = line.strip_prefix("# fail ") {
        tally.failed = number.trim().parse().unwrap_or(0);
    } else if let Some(number) = line.strip_prefix("# cancelled ") {
        tally.failed = number.trim().parse().unwrap_or(0);
    }
    tally
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(line: &str, passed: u64, failed: u64) {
        assert_eq!(count(line), Tally { passed, failed }, "{line}");
    }

    #[test]
    fn closing_lines_are_counted_and_others_are_not() {
        check(
            "test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured; 3 filtered out; finished in 0.01s",
            12,
            0,
        );
        check("test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 measured", 3, 2);
        check("test road::reads ... ok", 0, 0);
        check("# pass 4", 4, 0);
        check("# fail 1", 0, 1);
        check("# cancelled 2", 0, 2);
        check("# tests 5", 0, 0);
        check("  # pass 4", 0, 0);
    }

    #[test]
    fn a_program_that_fails_is_told_from_one_that_does_not() {
        let (tally, outcome) = run_counted(Command::new("sh").args(["-c", "echo '# pass 2'; exit 3"]));
        assert_eq!(tally, Tally { passed: 2, failed: 0 });
        assert!(outcome.is_err_and(|sentence| sentence.contains('3')));
        let (_, outcome) = run_counted(Command::new("sh").args(["-c", "true"]));
        assert_eq!(outcome, Ok(()));
    }
}
