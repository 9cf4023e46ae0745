//! What happens to the page after Trunk has built it.
//!
//! Trunk leaves the workers' files without a hash in their names. A page from a cache would
//! then meet a newer worker. So the worker's glue and the line that starts it become one
//! script, script and module get their hashes, and the page learns the name from its
//! `<meta name="worker-script">`.
//!
//! Then the page gets its content security policy. It names the page's own origin and nothing
//! else, so that nothing a person loads can leave the machine, not even by mistake. (A worker
//! has the policy of its own response, which a static host seldom sends; the browser tests
//! watch the worker's requests.)

use crate::Outcome;
use base64::{Engine, prelude::BASE64_STANDARD};
use sha2::{Digest, Sha256};
use std::{fs, path::Path};

/// What `app/index.html` says of a worker: its loader before the build puts the real name.
fn meta(worker: &str, script: &str) -> String {
    format!(r#"<meta name="{worker}-script" content="./{script}">"#)
}

/// The workers: the first answers, the second looks further.
const WORKERS: [&str; 2] = ["worker", "study"];
const CHARSET: &str = r#"<meta charset="utf-8">"#;

/// Gives the workers their hashed names and the page its policy.
///
/// # Errors
/// A sentence when a file or a tag that must be there is not.
pub(crate) fn finish(dist: &Path) -> Outcome {
    let index = dist.join("index.html");
    let mut html = read_text(&index)?;
    for worker in WORKERS {
        let script = name_worker(dist, worker)?;
        html = put_worker(&html, worker, &script)?;
    }
    let html = put_policy(&html)?;
    write(&index, html.as_bytes())
}

/// Makes `worker-HASH.js` and `worker-HASH.wasm`; gives the name of the script.
fn name_worker(dist: &Path, worker: &str) -> Outcome<String> {
    let module = dist.join(format!("{worker}_bg.wasm"));
    let bytes = read(&module)?;
    let module_name = format!("{worker}-{}.wasm", short_hash(&bytes));
    let glue = read_text(&dist.join(format!("{worker}.js")))?;
    let script = worker_script(&glue, &module_name);
    let script_name = format!("{worker}-{}.js", short_hash(script.as_bytes()));
    write(&dist.join(&module_name), &bytes)?;
    write(&dist.join(&script_name), script.as_bytes())?;
    for old in ["_bg.wasm", ".js", "_loader.js"] {
        let path = dist.join(format!("{worker}{old}"));
        fs::remove_file(&path).map_err(|error| format!("cannot remove {}: {error}", path.display()))?;
    }
    Ok(script_name)
}

/// The glue and the line that starts it. A module that cannot be loaded is thrown outside the
/// promise: only so does the page's `error` listener on the worker hear of it.
fn worker_script(glue: &str, module_name: &str) -> String {
    format!(
        "{glue}\nwasm_bindgen({{ module_or_path: \"./{module_name}\" }})\
         .catch((error) => setTimeout(() => {{ throw error; }}));\n"
    )
}

fn put_worker(html: &str, worker: &str, script_name: &str) -> Outcome<String> {
    let before = meta(worker, &format!("{worker}_loader.js"));
    if html.matches(&before).count() != 1 {
        return Err(format!("app/index.html must hold once, as is: {before}"));
    }
    Ok(html.replace(&before, &meta(worker, script_name)))
}

/// Puts the policy right behind the character set: it must stand before every script.
fn put_policy(html: &str) -> Outcome<String> {
    let Some((before, after)) = html.split_once(CHARSET) else {
        return Err(format!("app/index.html must hold, as is: {CHARSET}"));
    };
    if before.contains("<script") || before.contains("<link") {
        return Err(format!("in app/index.html nothing may stand before {CHARSET}"));
    }
    let scripts: String = inline_scripts(html)?
        .iter()
        .map(|text| format!(" 'sha256-{}'", BASE64_STANDARD.encode(Sha256::digest(text))))
        .collect();
    let policy = format!(
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'{scripts}; worker-src 'self'; \
         style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; \
         manifest-src 'self'; base-uri 'none'; form-action 'none'"
    );
    Ok(format!(
        "{before}{CHARSET}\n<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">{after}"
    ))
}

/// The texts of all scripts written into the page itself.
fn inline_scripts(html: &str) -> Outcome<Vec<&str>> {
    let mut found = Vec::new();
    let mut rest = html;
    while let Some((_, from_tag)) = rest.split_once("<script") {
        let unclosed = || String::from("a script in dist/index.html is not closed");
        let (attributes, body) = from_tag.split_once('>').ok_or_else(unclosed)?;
        let (text, behind) = body.split_once("</script>").ok_or_else(unclosed)?;
        if !attributes.contains("src=") {
            found.push(text);
        }
        rest = behind;
    }
    Ok(found)
}

/// Sixteen hex digits: enough to tell any two builds apart.
fn short_hash(bytes: &[u8]) -> String {
    let digest = Sha256::digest(bytes);
    digest.iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}

fn read(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path).map_err(|error| format!("cannot read {}: {error}", path.display()))
}

fn read_text(path: &Path) -> Outcome<String> {
    fs::read_to_string(path).map_err(|error| format!("cannot read {}: {error}", path.display()))
}

fn write(path: &Path, bytes: &[u8]) -> Outcome {
    fs::write(path, bytes).map_err(|error| format!("cannot write {}: {error}", path.display()))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<!doctype html><head><meta charset=\"utf-8\">\n\
        <meta name=\"worker-script\" content=\"./worker_loader.js\">\n\
        <meta name=\"study-script\" content=\"./study_loader.js\">\n\
        <script type=\"module\">alert(1)</script><script src=\"x.js\"></script></head>";

    #[test]
    fn the_policy_stands_first_and_carries_the_hash_of_the_inline_script() {
        let html = put_policy(PAGE).expect("the page is sound");
        // SHA-256 of `alert(1)`, from `printf 'alert(1)' | openssl dgst -sha256 -binary | base64`.
        let hash = "'sha256-bhHHL3z2vDgxUt0W3dWQOrprscmda2Y5pLsLg4GF+pI='";
        assert_eq!(html.matches("sha256-").count(), 1, "{html}");
        assert!(html.contains(hash), "{html}");
        assert!(html.find("Content-Security-Policy") < html.find("<script"));
    }

    #[test]
    fn a_page_without_the_expected_tags_is_refused() {
        assert!(put_policy("<head></head>").is_err());
        assert!(put_policy("<head><script></script><meta charset=\"utf-8\">").is_err());
        assert!(put_policy("<meta charset=\"utf-8\"><script>open").is_err());
        assert!(put_worker("<head></head>", "worker", "w.js").is_err());
    }

    #[test]
    fn the_worker_gets_names_by_its_contents() {
        let dist = std::env::temp_dir().join(format!("steadygrade-dist-{}", std::process::id()));
        fs::create_dir_all(&dist).expect("a temporary folder");
        let names_for = |module: &str| {
            for (name, text) in [
                ("index.html", PAGE),
                ("worker.js", "let wasm_bindgen;"),
                ("worker_bg.wasm", module),
                ("worker_loader.js", "old"),
                ("study.js", "let wasm_bindgen;"),
                ("study_bg.wasm", "study"),
                ("study_loader.js", "old"),
            ] {
                fs::write(dist.join(name), text).expect("a file in it");
            }
            finish(&dist).expect("the folder is sound");
            let html = fs::read_to_string(dist.join("index.html")).expect("the page");
            let (_, from) = html.split_once("worker-script\" content=\"./").expect("the name");
            let (script, _) = from.split_once('"').expect("its end");
            let text = fs::read_to_string(dist.join(script)).expect("the script it names");
            let (_, from) = text.split_once("module_or_path: \"./").expect("the module");
            let (module_name, _) = from.split_once('"').expect("its end");
            assert_eq!(fs::read(dist.join(module_name)).expect("the module"), module.as_bytes());
            assert!(!dist.join("worker.js").exists());
            (String::from(script), String::from(module_name))
        };
        let first = names_for("one");
        let second = names_for("two");
        assert_eq!(first, names_for("one"));
        assert_ne!(first.0, second.0);
        assert_ne!(first.1, second.1);
        fs::remove_dir_all(&dist).expect("the folder was ours");
    }
}
