//! The class view: for an instructor and a room.

fn main() {
    app::mount_class();
}
