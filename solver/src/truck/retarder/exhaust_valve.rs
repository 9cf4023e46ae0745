//! Exhaust brake: a valve in the exhaust pipe that the engine pumps against.

use super::engine_curve::EngineCurve;

/// Peak power per litre, kW: the middle of 8 to 14 (common practice, no source).
const KW_PER_LITRE: f64 = 11.0;

/// One for an engine of this size that nobody has described further. Assumed; the exponent lies
/// between 1.5 and 2, and the larger holds less below the peak: the cautious side.
pub(super) fn assumed(litres: f64, highest_rpm: f64) -> EngineCurve {
    let peak_power_kw = (KW_PER_LITRE * litres).round();
    EngineCurve { peak_power_kw, peak_rpm: highest_rpm, exponent: 2.0, cut_out_rpm: 850.0 }
}
