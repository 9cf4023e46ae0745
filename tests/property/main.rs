//! What must hold for any road, truck and file.

mod curves;
mod export;
mod parts;
mod physics;
mod resampling;
mod road;
mod truth;
