//! The page, in English or the language of its feature.
//!
//! Where the build cuts the program (`--cfg split`), what a function here names goes into a module of its own,
//! unless the first screen needs it as well. Otherwise the functions are called as they stand.

use app::cut::SplitLoaderError;
#[cfg(split)]
use app::cut::wasm_split;
use app::{Arriving, Parts, Truck, Views};

fn main() {
    app::mount(Parts { truck: load_truck, views: load_views });
}

#[cfg_attr(split, wasm_split(truck, wasm_split_path = app::cut, fallible))]
fn truck() -> Result<&'static Truck, SplitLoaderError> {
    Ok(&app::TRUCK)
}

#[cfg_attr(split, wasm_split(views, wasm_split_path = app::cut, fallible))]
fn views() -> Result<&'static Views, SplitLoaderError> {
    Ok(&app::VIEWS)
}

#[cfg(split)]
fn load_truck() -> Arriving<Truck> {
    Box::pin(truck())
}

#[cfg(split)]
fn load_views() -> Arriving<Views> {
    Box::pin(views())
}

#[cfg(not(split))]
fn load_truck() -> Arriving<Truck> {
    Box::pin(std::future::ready(truck()))
}

#[cfg(not(split))]
fn load_views() -> Arriving<Views> {
    Box::pin(std::future::ready(views()))
}
