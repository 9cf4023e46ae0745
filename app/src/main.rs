//! The page.

fn main() {
    app::mount();
}
