//! The tools that a build needs beyond Rust, a C compiler and Node, and how they are installed.
//!
//! | tool | version | why this one |
//! |---|---|---|
//! | wasm32-unknown-unknown | of the pinned Rust | asked for by name, since automatic installation by rustup may be switched off |
//! | wasm-bindgen-cli | as in Cargo.lock | glue and module must come from the same version to the last digit |
//! | trunk | 0.21.14 | 0.22 needs a newer Rust than the pinned one; `--locked`, as its authors tested it |
//! | wasm-split-cli | wasm_split_cli_support 0.2.4 | cuts what `leptos::wasm_split` of Cargo.lock marks; both change together |
//! | wasm-opt | npm's binaryen 132.0.0 | Debian's 108 makes modules of this Rust that fail at the start |
//! | lighthouse | npm's 12.8.2 | audits the page for `bench --page`, and only then is installed; 13 needs Node 22 |
//!
//! Nothing is installed outside the project but the wasm target, which rustup keeps with the
//! compiler. A tool of exactly the right version that the machine has already is used.

use crate::{
    Outcome,
    project::{self, output, program, run, tools_folder},
};
use std::{
    fs,
    path::{Path, PathBuf},
};

const WASM_TARGET: &str = "wasm32-unknown-unknown";
const TRUNK_VERSION: &str = "0.21.14";
const SPLIT_PACKAGE: &str = "wasm_split_cli_support";
const SPLIT_VERSION: &str = "0.2.4";
const BINARYEN_VERSION: &str = "132.0.0";
const LIGHTHOUSE_VERSION: &str = "12.8.2";

/// Installs the tools of a release build that are missing.
///
/// # Errors
/// A sentence that names the tool and the remedy.
pub(crate) fn install_missing() -> Outcome {
    fs::create_dir_all(tools_folder())
        .map_err(|error| format!("cannot make {}: {error}", tools_folder().display()))?;
    install_components()?;
    install_wasm_target()?;
    install_wasm_bindgen()?;
    install_trunk()?;
    install_wasm_split()?;
    install_wasm_opt()
}

fn install_components() -> Outcome {
    for (component, probe) in [("rustfmt", "fmt"), ("clippy", "clippy")] {
        if output(program("cargo").args([probe, "--version"])).is_none() {
            println!("Installing {component} with rustup: some seconds.");
            run(program("rustup").args(["component", "add", component]))?;
        }
    }
    Ok(())
}

fn install_wasm_target() -> Outcome {
    let probe = ["--print", "target-libdir", "--target", WASM_TARGET];
    let folder = output(program("rustc").args(probe)).unwrap_or_default();
    if Path::new(folder.trim()).is_dir() {
        return Ok(());
    }
    println!("Installing the Rust target {WASM_TARGET} with rustup: about a minute.");
    // No --toolchain: in this folder rustup takes the one that rust-toolchain.toml pins.
    run(program("rustup").args(["target", "add", WASM_TARGET])).map_err(|error| {
        format!("{error}; the wasm target of the pinned Rust is needed, for example by rustup")
    })
}

fn install_wasm_bindgen() -> Outcome {
    let version = locked_version("wasm-bindgen")?;
    if has_version("wasm-bindgen", &version) && has_version("wasm-bindgen-test-runner", &version) {
        return Ok(());
    }
    println!("Installing wasm-bindgen-cli {version} into .tools: about 2 minutes on two cores.");
    let locked = cargo_install("wasm-bindgen-cli", &version, true);
    // The tool's lock file names a release that a registry mirror may not carry yet.
    locked.or_else(|error| {
        println!("{error}; trying again without its lock file.");
        cargo_install("wasm-bindgen-cli", &version, false)
    })
}

fn install_trunk() -> Outcome {
    if has_version("trunk", TRUNK_VERSION) {
        return Ok(());
    }
    println!("Installing trunk {TRUNK_VERSION} into .tools: about 6 minutes on two cores.");
    cargo_install("trunk", TRUNK_VERSION, true)
}

fn install_wasm_split() -> Outcome {
    // The program does not tell its version; what installed it does.
    let list = output(program("cargo").args(["install", "--list", "--root"]).arg(tools_folder()));
    if list.unwrap_or_default().contains(&format!("{SPLIT_PACKAGE} v{SPLIT_VERSION}:")) {
        return Ok(());
    }
    println!("Installing {SPLIT_PACKAGE} {SPLIT_VERSION} into .tools: about 2 minutes on two cores.");
    cargo_install_with(SPLIT_PACKAGE, SPLIT_VERSION, true, &["--features", "build-binary"])
}

fn install_wasm_opt() -> Outcome {
    let major = BINARYEN_VERSION.split('.').next().unwrap_or_default();
    if has_version("wasm-opt", major) {
        return Ok(());
    }
    println!("Installing wasm-opt (binaryen {BINARYEN_VERSION}) into .tools: some seconds.");
    npm_install(&tools_folder(), &format!("binaryen@{BINARYEN_VERSION}"))
}

/// The folder of the package that audits the page, which is installed where it is missing.
///
/// # Errors
/// A sentence that names the tool and the remedy.
pub(crate) fn lighthouse() -> Outcome<PathBuf> {
    // By itself: npm removes from a folder what was not asked for last.
    let prefix = tools_folder().join("lighthouse");
    let package = prefix.join("node_modules/lighthouse");
    let described = fs::read_to_string(package.join("package.json")).unwrap_or_default();
    if !described.contains(&format!("\"version\": \"{LIGHTHOUSE_VERSION}\"")) {
        println!("Installing lighthouse {LIGHTHOUSE_VERSION} into .tools: some seconds, 190 MB.");
        npm_install(&prefix, &format!("lighthouse@{LIGHTHOUSE_VERSION}"))?;
    }
    Ok(package)
}

fn npm_install(prefix: &Path, package: &str) -> Outcome {
    let mut npm = program("npm");
    npm.arg("install").arg("--prefix").arg(prefix);
    npm.args(["--no-save", "--no-package-lock", "--no-audit", "--no-fund"]);
    run(npm.arg(package)).map_err(|error| format!("{error}; Node 20 or newer with npm is needed"))
}

fn cargo_install(name: &str, version: &str, locked: bool) -> Outcome {
    cargo_install_with(name, version, locked, &[])
}

fn cargo_install_with(name: &str, version: &str, locked: bool, more: &[&str]) -> Outcome {
    let mut cargo = program("cargo");
    cargo.args(["install", name, "--version", version, "--root"]);
    cargo.arg(tools_folder());
    // A tool left there in another version is replaced.
    cargo.arg("--force").args(more);
    if locked {
        cargo.arg("--locked");
    }
    // Flags meant for our own code must not reach foreign code.
    cargo.env_remove("RUSTFLAGS");
    run(&mut cargo)
}

/// Whether `name --version` answers with `version` as one of its words.
fn has_version(name: &str, version: &str) -> bool {
    let answer = output(program(name).arg("--version")).unwrap_or_default();
    answer.split_whitespace().any(|word| word == version)
}

/// The version of a package in Cargo.lock.
fn locked_version(name: &str) -> Outcome<String> {
    let path = project::root().join("Cargo.lock");
    let lock =
        fs::read_to_string(&path).map_err(|error| format!("cannot read {}: {error}", path.display()))?;
    version_in(&lock, name).ok_or_else(|| format!("Cargo.lock does not name {name}"))
}

fn version_in(lock: &str, name: &str) -> Option<String> {
    let mut lines = lock.lines();
    let wanted = format!("name = \"{name}\"");
    lines.find(|line| *line == wanted)?;
    let version = lines.next()?.strip_prefix("version = \"")?;
    version.strip_suffix('"').map(String::from)
}

#[cfg(test)]
mod tests {
    use super::version_in;

    #[test]
    fn the_locked_version_is_found_and_not_a_namesake() {
        let lock = "[[package]]\nname = \"wasm-bindgen-macro\"\nversion = \"9.9.9\"\n\n\
                    [[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\n";
        assert_eq!(version_in(lock, "wasm-bindgen").as_deref(), Some("0.2.130"));
        assert_eq!(version_in(lock, "wasm"), None);
    }
}
