//! The page, in French.

fn main() {
    app::mount(&app::words::fr::French);
}
