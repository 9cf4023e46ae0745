//! What must hold for any road, truck and file.

mod physics;
mod road;
mod truth;
