//! The browser of the tests: found, or installed by name from Debian.

use crate::{
    Outcome,
    project::{find_program, output, program, run},
};
use std::{env, path::PathBuf};

const NAMES: [&str; 4] = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
/// Variable that names another browser binary than the one found.
pub(crate) const VARIABLE: &str = "STEADYGRADE_CHROMIUM";

/// Path of the browser; installs it where it is missing and the rights allow it.
///
/// # Errors
/// A sentence that says what to install.
pub(crate) fn find_or_install() -> Outcome<PathBuf> {
    if let Some(named) = env::var_os(VARIABLE) {
        let path = PathBuf::from(named);
        return if path.is_file() {
            Ok(path)
        } else {
            Err(format!("{VARIABLE} names {}, which is not there", path.display()))
        };
    }
    if let Some(path) = find() {
        return Ok(path);
    }
    let is_root = output(program("id").arg("-u")).is_some_and(|uid| uid.trim() == "0");
    if !is_root || find_program("apt-get").is_none() {
        return Err(format!(
            "the browser tests need Chromium: install the package `chromium` of your system, \
             or let {VARIABLE} name its binary"
        ));
    }
    println!("Installing chromium from Debian with apt-get: 2 to 5 minutes.");
    run(apt_get().arg("update"))?;
    // Without a font the pictures have no text.
    run(apt_get()
        .args(["install", "-y", "--no-install-recommends"])
        .args(["chromium", "fonts-dejavu-core"]))?;
    find().ok_or_else(|| "chromium was installed but is not on the PATH".into())
}

fn find() -> Option<PathBuf> {
    NAMES.into_iter().find_map(find_program)
}

fn apt_get() -> std::process::Command {
    let mut command = program("apt-get");
    command.env("DEBIAN_FRONTEND", "noninteractive");
    command
}
