//! The page, in Spanish.

fn main() {
    app::mount(&app::words::es::Spanish);
}
