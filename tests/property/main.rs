//! What must hold for any road, truck and file.

mod cautious;
mod combine;
mod curves;
mod doubt;
mod export;
mod gaps;
mod legs;
mod lessons;
mod monotone;
mod parts;
mod physics;
mod readers;
mod relief;
mod resampling;
mod retarders;
mod ride;
mod road;
mod roadside;
mod second_opinion;
mod study;
mod sweep;
mod sweep_heat;
mod sweep_noise;
mod sweep_shrunk;
mod sweep_worse;
mod truth;
