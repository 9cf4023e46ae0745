//! What must hold for any road, truck and file.

mod export;
mod physics;
mod road;
mod truth;
