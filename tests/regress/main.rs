//! Unchanged since yesterday: no evidence of being right, only of being the same, natively
//! and in wasm.

mod road;
mod snapshots;
mod traps;
