//! The content security policy: where the page may load from and send to.
//!
//! The served page may use its own origin and nothing else, so that nothing a person loads can leave the
//! machine, not even by mistake. (A worker has the policy of its own response, which a static host seldom
//! sends; the browser tests watch the worker's requests.) As one file the page has no origin to load from. It
//! may use only what stands in the file, by its hash, and addresses in memory; its workers inherit that
//! policy.

use crate::Outcome;
use base64::{Engine, prelude::BASE64_STANDARD};
use sha2::{Digest, Sha256};

/// First tag in `app/index.html`; the policy follows it.
pub(super) const CHARSET: &str = r#"<meta charset="utf-8">"#;
/// Type of text in the page that is no script; browsers do not run it.
pub(super) const TEXT_TYPE: &str = r#"type="text/plain""#;

/// Where the page lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Place {
    /// In a folder of a web host.
    Served,
    /// On a disk, all in one file.
    OneFile,
}

/// Puts the policy right behind the character set, since it must stand before every script.
///
/// # Errors
/// A sentence when the page does not begin as expected, or a script in it is not closed.
pub(super) fn put(html: &str, place: Place) -> Outcome<String> {
    let Some((before, after)) = html.split_once(CHARSET) else {
        return Err(format!("app/index.html must hold, as is: {CHARSET}"));
    };
    if ["<script", "<link", "<style"].iter().any(|tag| before.contains(tag)) {
        return Err(format!("in app/index.html nothing may stand before {CHARSET}"));
    }
    let policy = policy(html, place)?;
    Ok(format!(
        "{before}{CHARSET}\n<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">{after}"
    ))
}

fn policy(html: &str, place: Place) -> Outcome<String> {
    let scripts = inline(html, "script")?.into_iter().filter(|(tag, _)| !is_passive(tag));
    let scripts = hashes(scripts.map(|(_, text)| text));
    let styles = hashes(inline(html, "style")?.into_iter().map(|(_, text)| text));
    Ok(match place {
        Place::Served => format!(
            "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'{scripts}; worker-src 'self'; \
             style-src 'self'{styles}; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; \
             manifest-src 'self'; base-uri 'none'; form-action 'none'"
        ),
        Place::OneFile => format!(
            "default-src 'none'; script-src 'wasm-unsafe-eval'{scripts}; worker-src blob:; \
             style-src{styles}; img-src data: blob:; font-src data:; connect-src blob:; \
             base-uri 'none'; form-action 'none'"
        ),
    })
}

/// Whether a script's tag loads its text from elsewhere, or holds text that is not run.
fn is_passive(tag: &str) -> bool {
    tag.contains("src=") || tag.contains(TEXT_TYPE)
}

fn hashes<'a>(texts: impl Iterator<Item = &'a str>) -> String {
    texts.map(|text| format!(" '{}'", hash(text.as_bytes()))).collect()
}

/// The hash of a text or file, as policies and browsers' integrity checks write it.
pub(super) fn hash(bytes: &[u8]) -> String {
    format!("sha256-{}", BASE64_STANDARD.encode(Sha256::digest(bytes)))
}

/// The attributes and texts of all elements of a kind that hold plain text.
fn inline<'a>(html: &'a str, element: &str) -> Outcome<Vec<(&'a str, &'a str)>> {
    let mut found = Vec::new();
    let mut rest = html;
    while let Some((_, from_tag)) = rest.split_once(&format!("<{element}")) {
        let unclosed = || format!("a {element} in dist/index.html is not closed");
        let (attributes, body) = from_tag.split_once('>').ok_or_else(unclosed)?;
        let (text, behind) = body.split_once(&format!("</{element}>")).ok_or_else(unclosed)?;
        found.push((attributes, text));
        rest = behind;
    }
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<!doctype html><head><meta charset=\"utf-8\">\n<style>a {}</style>\
        <script type=\"module\">alert(1)</script><script src=\"x.js\"></script>\
        <script type=\"text/plain\">no script</script></head>";

    #[test]
    fn the_policy_stands_first_and_carries_the_hashes_of_what_stands_in_the_page() {
        let html = put(PAGE, Place::Served).expect("the page is sound");
        // SHA-256 of `alert(1)`, from `printf 'alert(1)' | openssl dgst -sha256 -binary | base64`.
        let hash = "'sha256-bhHHL3z2vDgxUt0W3dWQOrprscmda2Y5pLsLg4GF+pI='";
        assert_eq!(html.matches("sha256-").count(), 2, "{html}");
        assert!(html.contains(hash), "{html}");
        // SHA-256 of `a {}`, likewise.
        let style = "style-src 'self' 'sha256-mkSHzL7faOU7/U/v8Umg+058R69+vN2A2xmE3Fz1q98='";
        assert!(html.contains(style), "{html}");
        assert!(html.find("Content-Security-Policy") < html.find("<script"));
    }

    #[test]
    fn in_one_file_scripts_and_styles_go_by_their_hashes_and_no_origin_is_named() {
        let html = put(PAGE, Place::OneFile).expect("the page is sound");
        assert_eq!(html.matches("sha256-").count(), 2, "{html}");
        // SHA-256 of `a {}`, from `printf 'a {}' | openssl dgst -sha256 -binary | base64`.
        assert!(html.contains("style-src 'sha256-mkSHzL7faOU7/U/v8Umg+058R69+vN2A2xmE3Fz1q98='"), "{html}");
        for word in ["'self'", "http:", "https:", "'unsafe-inline'", "'unsafe-eval'", "*"] {
            assert!(!html.contains(word), "{word} in {html}");
        }
    }

    #[test]
    fn a_page_that_does_not_begin_as_expected_is_refused() {
        assert!(put("<head></head>", Place::Served).is_err());
        assert!(put("<head><script></script><meta charset=\"utf-8\">", Place::Served).is_err());
        assert!(put("<meta charset=\"utf-8\"><script>open", Place::Served).is_err());
    }
}
