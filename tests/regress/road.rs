//! The road of a generated drive is equal bit for bit, natively and in wasm.

use tests::generate::{Drive, Instrument, TrueRoad, demo};
use tests::truth::survey_drive;

/// FNV-1a over the bits of all numbers (constants from memory).
fn fingerprint(values: impl Iterator<Item = f64>) -> u64 {
    values.fold(0xcbf2_9ce4_8422_2325, |hash, value| {
        value
            .to_bits()
            .to_le_bytes()
            .iter()
            .fold(hash, |hash, byte| (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3))
    })
}

fn road_fingerprint(road: &solver::road::Road) -> u64 {
    let segments =
        road.segments().iter().flat_map(|segment| [segment.grade, segment.plus_minus, segment.from as f64]);
    let places = road.positions().iter().flat_map(|(lat, lon)| [*lat, *lon]);
    let shape = road.shape().0.iter().flat_map(|at| [at.x, at.y]);
    fingerprint(
        road.heights_m()
            .iter()
            .copied()
            .chain(road.recorded_m().iter().copied())
            .chain(segments)
            .chain(places)
            .chain(shape),
    )
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test::wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn generated_files_are_the_same() {
    let text = demo().text();
    assert_eq!(fingerprint(text.bytes().map(f64::from)), DEMO_TEXT, "the demo file changed");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test::wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn surveys_are_the_same() {
    let road = TrueRoad::random(7, 12_000.0);
    let now = [Instrument::Recorder, Instrument::Receiver, Instrument::Terrain]
        .map(|instrument| road_fingerprint(&survey_drive(&road, &Drive::new(instrument, 17.0, 3))));
    assert_eq!(now, SURVEYS, "the result of a survey changed");
}

const DEMO_TEXT: u64 = 0xb918_fddb_ed2b_0084;
const SURVEYS: [u64; 3] = [0xfdb4_2832_ef40_aac9, 0xae69_6466_6a62_0aa3, 0x9019_81ee_22ec_ff4d];
