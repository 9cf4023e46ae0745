//! What bounds the heat of snubs: no source, arithmetic.

use solver::motion::HeatLump;
use solver::units::{Celsius, Seconds, Watts};
use tests::evidence::check;

/// Source: none, arithmetic: a lump that is heated forever settles at T_air + P/hA.
#[test]
fn a_lump_settles_where_heat_and_cooling_balance() {
    let lump = HeatLump { capacity: 4e5, cooling: 200.0 };
    let settled = lump.after(Celsius(66.0), Celsius(32.0), Watts(40_000.0), Seconds(1e6));
    check("settled temperature", 32.0 + 40_000.0 / 200.0, settled.0, 1e-6);
}
