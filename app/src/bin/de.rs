//! The page, in German.

fn main() {
    app::mount(&app::words::de::German);
}
