//! Compression-release engine brake: exhaust valves open near the top of compression.

use super::engine_curve::EngineCurve;

/// Peak power per litre, kW: the middle of 20 to 30 (common practice, no source; declarations of engines and
/// a brochure lie between 19 and 26: RET-LITRE).
const KW_PER_LITRE: f64 = 25.0;
/// Least and largest share of the engine's rated power: 0.8 to 1.1 is common practice, no source.
const SHARE_OF_RATED: (f64, f64) = (0.8, 1.0);
/// Engine speed below which it is off, 1/min (printed by one maker: CUT-2).
pub(super) const CUT_OUT_RPM: f64 = 900.0;

/// A compression-release brake for an engine of this size and rated power, of which nothing else is known.
/// Assumed.
pub(super) fn assumed(litres: f64, rated_kw: f64, highest_rpm: f64) -> EngineCurve {
    let (least, most) = SHARE_OF_RATED;
    let peak = (KW_PER_LITRE * litres).clamp(least * rated_kw, (most * rated_kw).max(least * rated_kw));
    EngineCurve {
        peak_power_kw: peak.round(),
        peak_rpm: highest_rpm,
        exponent: None,
        cut_out_rpm: CUT_OUT_RPM,
    }
}
