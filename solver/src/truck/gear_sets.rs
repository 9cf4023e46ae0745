//! Gear sets in common use, first gear first.

/// Nine gears, direct on top (value from memory).
pub const NINE: [f64; 9] = [12.65, 8.38, 6.22, 4.57, 3.40, 2.46, 1.83, 1.34, 1.00];
/// Ten gears, the last one overdrive (printed generic data).
pub const TEN_OVERDRIVE: [f64; 10] = [12.80, 9.25, 6.76, 4.90, 3.58, 2.61, 1.89, 1.38, 1.00, 0.73];
/// Ten gears, direct on top (printed generic data).
pub const TEN_DIRECT: [f64; 10] = [14.78, 11.00, 8.17, 6.00, 4.46, 3.31, 2.46, 1.83, 1.34, 1.00];
/// Twelve gears, automated, direct on top (printed generic data).
pub const TWELVE: [f64; 12] = [14.93, 11.64, 9.02, 7.04, 5.64, 4.40, 3.39, 2.65, 2.05, 1.60, 1.28, 1.00];
/// Six gears with a torque converter (printed generic data).
pub const SIX_CONVERTER: [f64; 6] = [3.40, 1.90, 1.42, 1.00, 0.70, 0.62];
/// Thirteen gears (value from memory).
pub const THIRTEEN: [f64; 13] =
    [12.29, 8.51, 6.05, 4.38, 3.20, 2.29, 1.95, 1.62, 1.38, 1.17, 1.00, 0.86, 0.73];
/// Eighteen gears (value from memory).
pub const EIGHTEEN: [f64; 18] = [
    14.40, 12.29, 8.51, 7.26, 6.05, 5.16, 4.38, 3.74, 3.20, 2.73, 2.29, 1.95, 1.62, 1.38, 1.17, 1.00, 0.86,
    0.73,
];
