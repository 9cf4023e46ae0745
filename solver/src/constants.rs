//! Physical constants and the assumptions of the model, each with its unit and source.
//!
//! `solver/docs/sources.md` spells out the source keys. "Assumed" means that no printed value was found; the
//! cautious side was taken.

/// Standard gravity, m/s². Exact by definition.
pub const GRAVITY: f64 = 9.806_65;

/// The units of the published temperature model: watts in a mechanical horsepower, joules in a kelvin against
/// a degree Fahrenheit, and metres per second in a mile per hour.
const HORSEPOWER: f64 = 745.699_872;
const FAHRENHEIT_PER_KELVIN: f64 = 1.8;
/// Metres per second in a mile per hour. Exact.
pub const MPH: f64 = 0.447_04;

/// Heat capacity of the service brakes of one axle with drums, J/K. It is a fifth of the five-axle vehicle of
/// the published downgrade temperature model (GSRS, recalled constants). Its K1 = 1.23 + 0.0256·V and 1/K2 =
/// 0.100 + 0.00208·V give 0.0813 hp·h/°F at both 0 and 60 mph. The value at 25 mph is taken: 392.8 kJ/K for
/// the whole vehicle.
pub const AXLE_HEAT_CAPACITY_DRUM: f64 =
    (0.100 + 0.002_08 * 25.0) / (1.23 + 0.0256 * 25.0) * HORSEPOWER * 3_600.0 * FAHRENHEIT_PER_KELVIN / 5.0;

/// Heat capacity of the service brakes of one axle with discs, J/K: a rotor pair of 2 × 32 kg at 480 J/(kg K)
/// with its share of hub and pads. Assumed. Discs store less than drums and so warm sooner.
pub const AXLE_HEAT_CAPACITY_DISC: f64 = 50_000.0;

/// Heat given to still air by the brakes of one axle, W/K (GSRS: 0.100 hp/°F for five, 134.2 W/K).
pub const AXLE_COOLING_STILL: f64 = 0.100 * HORSEPOWER * FAHRENHEIT_PER_KELVIN / 5.0;

/// How this rises with road speed, W/K per m/s (GSRS: 0.00208 hp/°F per mph for five, 6.245).
pub const AXLE_COOLING_PER_SPEED: f64 = 0.002_08 * HORSEPOWER * FAHRENHEIT_PER_KELVIN / MPH / 5.0;

/// How much better the drums of steered and driven axles cool in still air than those of a trailer (RECOVER:
/// 3, 10 and 30 minutes against 8, 18 and 60). The trailer keeps the older constants. With this factor five
/// axles at rest give off 214.7 W/K in all; the newer constants give 215.0 (GSRS-NEW).
pub const TRACTOR_COOLING_STILL: f64 = 2.0;

/// Heat that the discs of one axle give off at rest, W/K. It is 5 W/(m² K), the upper end of what is printed
/// for discs at rest (DISC-REST), times 0.845 m²: two discs of 434 mm with channels 101 mm long (DISC-CV),
/// both faces and both walls of the channel.
pub const DISC_COOLING_AT_REST: f64 = 5.0 * 0.845;

/// Road speed at which the part of a disc's cooling that grows with speed equals the part that does not, m/s
/// (DISC-SHARE: measured, a vented disc of car size).
pub const DISC_STILL_OVER_SLOPE: f64 = 8.0;

/// Road speed at which discs are taken to cool as well as the older constants say, m/s: 60 km/h, in the
/// middle of the speeds told to trucks with discs on descents. Assumed: no figure for a truck's disc was
/// found.
pub const DISC_LIKE_DRUM_AT: f64 = 60.0 / 3.6;

/// Road speed below which a disc's straight line bends down to its cooling at rest, m/s (20 km/h, assumed).
pub const DISC_BENDS_AT: f64 = 20.0 / 3.6;

/// The newer constants (GSRS-NEW, values from memory), the other end of the band. Cooling of the mean axle,
/// W/K at rest and W/K per m/s (0.1602 + 0.0078·V hp/°F for five); capacity of its drums at 25 mph, J/K (568
/// kJ/K for five).
pub const NEWER_COOLING: (f64, f64) = (
    0.1602 * HORSEPOWER * FAHRENHEIT_PER_KELVIN / 5.0,
    0.0078 * HORSEPOWER * FAHRENHEIT_PER_KELVIN / MPH / 5.0,
);
/// See [`NEWER_COOLING`].
pub const NEWER_HEAT_CAPACITY_DRUM: f64 = (0.1602 + 0.0078 * 25.0) / (1.5 * (1.1852 + 0.0331 * 25.0))
    * HORSEPOWER
    * 3_600.0
    * FAHRENHEIT_PER_KELVIN
    / 5.0;

/// Growth of a drum brake's pushrod stroke with the drum's bulk temperature, in per kelvin (STROKE: 1½ in at
/// 70 °F, 2⅛ in at 600 °F), and the temperature of its cold stroke, °C.
pub const STROKE_PER_KELVIN: f64 = (2.125 - 1.5) / (600.0 - 70.0) * FAHRENHEIT_PER_KELVIN;
/// See [`STROKE_PER_KELVIN`]: 70 °F.
pub const STROKE_COLD_AT: f64 = (70.0 - 32.0) / FAHRENHEIT_PER_KELVIN;

/// Stroke at which a size 30 chamber needs adjusting, in (STROKE-LIMIT).
pub const STROKE_LIMIT: f64 = 2.0;

/// Allowance for brakes that do not share the work of one hard stop evenly. Implied by the published
/// constants (GSRS: T_E is 1.498 times the kinetic energy over C).
pub const STOP_IMBALANCE: f64 = 1.5;

/// Deceleration of one hard stop with warm brakes on a grade, m/s². Assumed: about half of what FMVSS 121
/// asks of cold brakes on the level. A larger value would make the hill's share small.
pub const STOP_DECELERATION: f64 = 2.5;

/// Deceleration at which a driver slows ahead of a lower speed with the service brakes
/// when the retarder alone does not do it, m/s². Assumed.
pub const SERVICE_SLOWING: f64 = 0.5;

/// Least deceleration by retarder, hill and resistance that a driver accepts when slowing ahead, m/s²; below
/// it the driver uses the service brakes. Assumed.
pub const LEAST_SLOWING: f64 = 0.15;

/// Speed that a truck may gain on a short steep stretch before the driver brakes, m/s
/// (5 km/h; common practice, no source).
pub const SPEED_SLACK: f64 = 5.0 / 3.6;

/// Time that a driver takes between two descents to decide on another gear and to change to it, s. Assumed;
/// the gearbox itself takes less (`Transmission::shift_time`).
pub const DRIVER_SHIFT_TIME: f64 = 2.0;

/// Duration of a snub, s: about 3 (SNUB).
pub const SNUB_TIME: f64 = 3.0;

/// Slowest road speed that the run considers, m/s: below it the truck is practically standing.
pub const WALKING_SPEED: f64 = 1.0;
