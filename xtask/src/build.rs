//! `cargo xtask build`: the release page into `dist/`.

use crate::{
    Outcome, dist,
    project::{self, program},
    tools,
};
use std::{fs, io::ErrorKind, path::Path};

/// Installs what is missing, builds with Trunk and finishes the result.
///
/// # Errors
/// A sentence from the step that failed.
pub(crate) fn run_build() -> Outcome {
    tools::install_missing()?;
    let dist = project::dist_folder();
    clear(&dist)?;
    // Glue of a removed binary or package must not get into the page.
    clear(&project::root().join("target/wasm-bindgen/release"))?;

    println!("Building the page: about 5 minutes the first time, on two cores.");
    // Trunk runs offline, so that a wrong tool is an error and not a download. So the sources must be fetched
    // before.
    project::run(program("cargo").args(["fetch", "--target", "wasm32-unknown-unknown"]))?;
    let mut trunk = program("trunk");
    trunk.args(["build", "--release", "--offline"]);
    // Trunk 0.21 rejects the usual NO_COLOR=1 and stops.
    trunk.env_remove("NO_COLOR");
    // A trace through Trunk hides the compiler's message.
    trunk.env_remove("RUST_BACKTRACE");
    project::run(&mut trunk)?;
    dist::build_languages(&dist)?;
    dist::finish(&dist)
}

/// As [`run_build`], and prints where the result is.
///
/// # Errors
/// As [`run_build`].
pub(crate) fn run() -> Outcome {
    run_build()?;
    println!("The page is in {}", project::dist_folder().display());
    Ok(())
}

/// Removes a folder with all that is in it.
///
/// # Errors
/// A sentence when that fails.
pub(crate) fn clear(folder: &Path) -> Outcome {
    match fs::remove_dir_all(folder) {
        Ok(()) => Ok(()),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
        Err(error) => Err(format!("cannot clear {}: {error}", folder.display())),
    }
}
