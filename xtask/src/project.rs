//! Paths of the project, and how other programs are started.

use crate::Outcome;
use std::{
    env,
    ffi::OsString,
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

/// The folder of the workspace.
pub(crate) fn root() -> PathBuf {
    let xtask = Path::new(env!("CARGO_MANIFEST_DIR"));
    xtask.parent().unwrap_or(xtask).to_path_buf()
}

/// Where missing tools are installed; ignored by git.
pub(crate) fn tools_folder() -> PathBuf {
    root().join(".tools")
}

/// The finished page.
pub(crate) fn dist_folder() -> PathBuf {
    root().join("dist")
}

/// The program `name`, to be run in the project's folder; the project's own tools are found before the
/// machine's.
pub(crate) fn program(name: &str) -> Command {
    let mut command = Command::new(name);
    command.current_dir(root()).env("PATH", search_path());
    // `cargo run` describes xtask to its children in variables. A cargo started from here must not take them
    // for a description of its own package.
    for (key, _) in env::vars_os() {
        let described = key
            .to_str()
            .is_some_and(|key| key.starts_with("CARGO_PKG_") || key.starts_with("CARGO_MANIFEST_"));
        if described {
            command.env_remove(key);
        }
    }
    command
}

fn search_path() -> OsString {
    let own = [tools_folder().join("bin"), tools_folder().join("node_modules/.bin")];
    let machine = env::var_os("PATH").unwrap_or_default();
    let all = own.into_iter().chain(env::split_paths(&machine));
    // A colon in the project's own path cannot be expressed; then only the machine's tools are found.
    env::join_paths(all).unwrap_or(machine)
}

/// Runs a command to its end with the output on the terminal.
///
/// # Errors
/// A sentence when the program cannot start or fails.
pub(crate) fn run(command: &mut Command) -> Outcome {
    let shown = shown(command);
    match command.status() {
        Ok(status) if status.success() => Ok(()),
        Ok(status) => Err(format!("`{shown}` failed ({status})")),
        Err(error) => Err(format!("`{shown}` could not be started: {error}")),
    }
}

/// Runs a command to its end and returns its standard output; `None` when it cannot start or fails.
pub(crate) fn output(command: &mut Command) -> Option<String> {
    let output = command.stderr(Stdio::null()).output().ok()?;
    output.status.success().then(|| String::from_utf8_lossy(&output.stdout).into_owned())
}

/// The command as a person would type it.
pub(crate) fn shown(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    let words: Vec<_> = words.map(|word| word.to_string_lossy()).collect();
    words.join(" ")
}

/// Path of `name` on the search path, the project's own tools first.
pub(crate) fn find_program(name: &str) -> Option<PathBuf> {
    env::split_paths(&search_path()).map(|folder| folder.join(name)).find(|path| path.is_file())
}
