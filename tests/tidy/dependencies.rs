//! What the project depends on: licences, origins and versions as `deny.toml` allows them, and a
//! reason beside each. cargo-deny holds the former, too, but takes long to build; this runs everywhere.

use serde::Deserialize;
use serde_json::Value;
use spdx::{Expression, LicenseItem, ParseMode};
use std::{fs, path::Path, process::Command};

/// The rules that are held here, of those in `deny.toml`.
#[derive(Deserialize)]
struct Allowed {
    licenses: Licences,
    sources: Origins,
}

#[derive(Deserialize)]
struct Licences {
    allow: Vec<String>,
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
struct Origins {
    allow_registry: Vec<String>,
}

/// Fewer packages than this would mean that the list went wrong.
const FEWEST_PACKAGES: usize = 50;

fn allowed() -> Allowed {
    let text = fs::read_to_string(super::root().join("deny.toml")).expect("deny.toml can be read");
    toml::from_str(&text).expect("deny.toml is understood")
}

/// All packages of the lock file, for whatever machine, as cargo describes them.
fn packages() -> Vec<Value> {
    let mut cargo = Command::new(env!("CARGO"));
    cargo.args(["metadata", "--locked", "--all-features", "--format-version", "1"]);
    let output = cargo.current_dir(super::root()).output().expect("cargo starts");
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{said}\nWithout a network: run `cargo fetch --locked` once with one.");
    let metadata: Value = serde_json::from_slice(&output.stdout).expect("cargo writes JSON");
    metadata["packages"].as_array().cloned().expect("a list of packages")
}

/// What is wrong with a package; `None` where all is as allowed.
fn breach(package: &Value, allowed: &Allowed) -> Option<String> {
    licence_breach(package["license"].as_str(), &allowed.licenses.allow)
        .or_else(|| origin_breach(package, &allowed.sources.allow_registry))
        .or_else(|| wildcard(package))
}

fn licence_breach(licence: Option<&str>, allowed: &[String]) -> Option<String> {
    let Some(licence) = licence else { return Some(String::from("names no licence")) };
    let Ok(expression) = Expression::parse_mode(licence, ParseMode::LAX) else {
        return Some(format!("has a licence that cannot be read: {licence}"));
    };
    let held = expression.evaluate(|asked| match (&asked.license, &asked.addition) {
        (LicenseItem::Spdx { id, .. }, None) => allowed.iter().any(|name| name == id.name),
        (LicenseItem::Spdx { .. }, Some(_)) | (LicenseItem::Other { .. }, _) => false,
    });
    (!held).then(|| format!("has the licence {licence}, which deny.toml does not allow"))
}

/// Packages come from an allowed registry or lie in the project.
fn origin_breach(package: &Value, registries: &[String]) -> Option<String> {
    let origin = package["source"].as_str();
    let manifest = package["manifest_path"].as_str().unwrap_or_default();
    let root = fs::canonicalize(super::root()).expect("the project has a place");
    let is_allowed = match origin {
        Some(origin) => registries.iter().any(|registry| origin.strip_prefix("registry+") == Some(registry)),
        None => fs::canonicalize(manifest).is_ok_and(|path| path.starts_with(root)),
    };
    (!is_allowed)
        .then(|| format!("comes from {}, which deny.toml does not allow", origin.unwrap_or(manifest)))
}

/// A dependency in any version whatever.
fn wildcard(package: &Value) -> Option<String> {
    let dependencies = package["dependencies"].as_array()?;
    let any = dependencies.iter().find(|it| it["req"] == "*" && it["path"].is_null())?;
    Some(format!("asks for {} in any version", any["name"]))
}

#[test]
fn licences_and_origins_are_as_allowed() {
    let (packages, allowed) = (packages(), allowed());
    assert!(packages.len() > FEWEST_PACKAGES, "only {} packages were found", packages.len());
    let report: Vec<String> = packages
        .iter()
        .filter_map(|package| Some(format!("{} {}", package["name"], breach(package, &allowed)?)))
        .collect();
    assert!(report.is_empty(), "\n{}", report.join("\n"));
}

#[test]
fn licences_and_origins_can_fail() {
    let allow = [String::from("MIT"), String::from("Zlib")];
    for licence in ["MIT", "GPL-3.0-only OR MIT", "Apache-2.0/MIT", "MIT AND Zlib"] {
        assert_eq!(licence_breach(Some(licence), &allow), None, "{licence}");
    }
    for licence in ["GPL-3.0-only", "MIT AND GPL-3.0-only", "LicenseRef-own", "MIT WITH LLVM-exception", "?"]
    {
        assert!(licence_breach(Some(licence), &allow).is_some(), "{licence}");
    }
    assert!(licence_breach(None, &allow).is_some());
    let registry = [String::from("https://example.org/index")];
    let from =
        |source: Value, manifest: &str| serde_json::json!({ "source": source, "manifest_path": manifest });
    let ours = Path::new(env!("CARGO_MANIFEST_DIR")).join("Cargo.toml");
    let ours = ours.to_str().expect("UTF-8");
    assert_eq!(origin_breach(&from("registry+https://example.org/index".into(), "x"), &registry), None);
    assert_eq!(origin_breach(&from(Value::Null, ours), &registry), None);
    assert!(origin_breach(&from("registry+https://example.org/other".into(), "x"), &registry).is_some());
    assert!(origin_breach(&from("git+https://example.org/index".into(), "x"), &registry).is_some());
    assert!(origin_breach(&from(Value::Null, "/Cargo.toml"), &registry).is_some());
    let asks = |req: &str| serde_json::json!({ "dependencies": [{ "name": "a", "req": req, "path": null }] });
    assert!(wildcard(&asks("*")).is_some());
    assert_eq!(wildcard(&asks("^1.2")), None);
}
