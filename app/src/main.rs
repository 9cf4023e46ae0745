//! The page, in English.

fn main() {
    app::mount(&app::words::en::English);
}
