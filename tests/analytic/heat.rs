//! Lumps of heat against their closed forms.

use solver::motion::HeatLump;
use solver::units::{Celsius, Seconds, Watts};
use tests::evidence::check;

const LUMP: HeatLump = HeatLump { capacity: 392_800.0, cooling: 205.0 };
const AIR: Celsius = Celsius(20.0);

/// Constant power settles at T_air + P/hA, from either side.
#[test]
fn settles_where_power_and_cooling_balance() {
    let power = Watts(41_000.0);
    for from in [20.0, 220.0, 600.0] {
        let ours = LUMP.after(Celsius(from), AIR, power, Seconds(1e6));
        check("°C", 220.0, ours.0, 1e-9);
    }
}

/// Cooling alone halves the excess in ln 2·C/hA.
#[test]
fn halves_in_its_half_life() {
    let half_life = Seconds(std::f64::consts::LN_2 * LUMP.capacity / LUMP.cooling);
    check("°C", 120.0, LUMP.after(Celsius(220.0), AIR, Watts(0.0), half_life).0, 1e-9);
}

/// With hardly any cooling the rise is power times time over capacity.
#[test]
fn rises_with_energy_alone_where_nothing_cools() {
    let lump = HeatLump { cooling: 1e-6, ..LUMP };
    let ours = lump.after(Celsius(20.0), AIR, Watts(100_000.0), Seconds(60.0));
    check("°C", 20.0 + 6e6 / 392_800.0, ours.0, 1e-6);
}

/// One long step equals many short ones: the step is exact, not approximate.
#[test]
fn the_length_of_the_step_plays_no_part() {
    let (power, whole) = (Watts(90_000.0), 600.0);
    let once = LUMP.after(Celsius(66.0), AIR, power, Seconds(whole));
    let mut many = Celsius(66.0);
    for _ in 0..1_000 {
        many = LUMP.after(many, AIR, power, Seconds(whole / 1_000.0));
    }
    check("°C", once.0, many.0, 1e-9);
}
