//! What is remembered on this machine: bytes under a name, as hexadecimal text.

use std::fmt::Write;

/// The bytes kept under `name`; `None` where there are none, or no storage.
pub(crate) fn recall(name: &str) -> Option<Vec<u8>> {
    let text = super::window()?.local_storage().ok()??.get_item(name).ok()??;
    from_hex(&text)
}

/// Keeps the bytes. A browser that forbids it, or is full, keeps nothing.
pub(crate) fn keep(name: &str, bytes: &[u8]) {
    let storage = super::window().and_then(|window| window.local_storage().ok().flatten());
    if let Some(storage) = storage {
        let _ = storage.set_item(name, &to_hex(bytes));
    }
}

/// Forgets all whose name begins so.
pub(crate) fn forget_all(start: &str) {
    let Some(storage) = super::window().and_then(|window| window.local_storage().ok().flatten()) else {
        return;
    };
    let count = storage.length().unwrap_or(0);
    let names: Vec<String> = (0..count).filter_map(|index| storage.key(index).ok().flatten()).collect();
    for name in names.iter().filter(|name| name.starts_with(start)) {
        let _ = storage.remove_item(name);
    }
}

fn to_hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::with_capacity(bytes.len() * 2), |mut text, byte| {
        // Writing to a String does not fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

fn from_hex(text: &str) -> Option<Vec<u8>> {
    if !text.is_ascii() || !text.len().is_multiple_of(2) {
        return None;
    }
    (0..text.len()).step_by(2).map(|at| u8::from_str_radix(&text[at..at + 2], 16).ok()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hexadecimal_there_and_back() {
        let bytes: Vec<u8> = (0..=255).collect();
        assert_eq!(from_hex(&to_hex(&bytes)), Some(bytes));
        for text in ["0", "zz", "é0", "0g"] {
            assert_eq!(from_hex(text), None, "{text}");
        }
    }
}
