//! Exhaust brake: a valve in the exhaust pipe against which the engine pumps.

use super::engine_curve::EngineCurve;

/// Peak power per litre, kW: the middle of 8 to 16 (RET-LITRE: declared 15, printed 12 to 16; below that
/// common practice, no source).
const KW_PER_LITRE: f64 = 12.0;
/// Exponent of its power over engine speed: the middle of 1.1 to 1.5 (RET-EXH, declared by one control unit).
const EXPONENT: f64 = 1.3;
/// Engine speed below which it is off, 1/min (printed by one maker: CUT-2).
const CUT_OUT_RPM: f64 = 1_000.0;

/// An exhaust brake for an engine of this size, of which nothing else is known. Assumed.
pub(super) fn assumed(litres: f64, highest_rpm: f64) -> EngineCurve {
    EngineCurve {
        peak_power_kw: (KW_PER_LITRE * litres).round(),
        peak_rpm: highest_rpm,
        exponent: Some(EXPONENT),
        cut_out_rpm: CUT_OUT_RPM,
    }
}
