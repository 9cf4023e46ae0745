//! The page, in English.

fn main() {
    app::mount();
}
