//! A link to the page that carries a text behind `#`, which browsers send to nobody.

use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

/// What stands between `#` and the text.
const MARK: &str = "with=";

/// The address of this page with the text in it; `None` where the browser does not tell it.
pub(crate) fn address_with(text: &str) -> Option<String> {
    let address = super::window()?.location().href().ok()?;
    let page = address.split('#').next().unwrap_or_default();
    Some(format!("{page}#{MARK}{}", pack(text)?))
}

/// The text that the link of this page carries, and takes it out of the address, so that a reload
/// does not ask again. `Some(None)` where it cannot be read.
pub(crate) fn take_carried() -> Option<Option<String>> {
    let window = super::window()?;
    let hash = window.location().hash().ok()?;
    let packed = hash.strip_prefix('#')?.strip_prefix(MARK)?;
    let page = window.location().pathname().ok()?;
    let history = window.history().ok();
    // Where the address cannot be changed a reload asks once more.
    let _ = history.map(|it| it.replace_state_with_url(&JsValue::NULL, "", Some(&page)));
    Some(unpack(packed))
}

/// Puts a text where it can be pasted from; `false` where the browser does not let it.
pub(crate) async fn copy(text: String) -> bool {
    let Some(window) = super::window() else { return false };
    // Pages without a secure origin have no clipboard, and web-sys gives an undefined one.
    let clipboard: JsValue = window.navigator().clipboard().into();
    if clipboard.is_undefined() {
        return false;
    }
    JsFuture::from(window.navigator().clipboard().write_text(&text)).await.is_ok()
}

/// Base64 with letters that addresses leave alone (RFC 4648, section 5).
fn pack(text: &str) -> Option<String> {
    let base64 = super::base64(text.as_bytes())?;
    Some(base64.replace('+', "-").replace('/', "_").trim_end_matches('=').to_owned())
}

fn unpack(packed: &str) -> Option<String> {
    let base64 = packed.replace('-', "+").replace('_', "/");
    let bytes = super::window()?.atob(&base64).ok()?;
    let bytes: Vec<u8> = bytes.chars().map(|c| u8::try_from(u32::from(c)).ok()).collect::<Option<_>>()?;
    String::from_utf8(bytes).ok()
}
