//! What to do, written on the hill: in each leg of each descent its gear, and the speed to hold.

use super::hill::Hill;
use super::label::text_width;
use super::markup::Anchor;
use super::picture::{Bracket, Hold};
use super::reading::Reading;
use super::scene::{Layers, Scene};
use crate::format;
use solver::Verdict;

/// How a figure is set: the size of the gear, and where the speed stands.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Setting {
    /// The speed below it, in this size, px.
    Below(f64, f64),
    /// The speed beside it.
    Beside(f64, f64),
    /// The speed below it without its unit.
    Short(f64, f64),
    /// Without the speed.
    Alone(f64),
}

/// The settings that are tried, the largest first.
const WIDE: [Setting; 7] = [
    Setting::Below(44.0, 16.0),
    Setting::Beside(30.0, 16.0),
    Setting::Below(30.0, 14.0),
    Setting::Alone(30.0),
    Setting::Beside(20.0, 14.0),
    Setting::Alone(20.0),
    Setting::Alone(14.0),
];
const COMPACT: [Setting; 5] = [
    Setting::Below(26.0, 14.0),
    Setting::Short(26.0, 14.0),
    Setting::Alone(26.0),
    Setting::Alone(20.0),
    Setting::Alone(14.0),
];
/// Bold figures are wider by this.
const BOLD: f64 = 1.05;
/// Height of a figure, of its size.
const FIGURE: f64 = 0.74;
/// Space between the figures and the foot of the hill, px.
const FOOT: f64 = 11.0;

impl Setting {
    /// Width and height that it needs, px.
    fn size(self, gear: &str, speed: [&str; 2]) -> (f64, f64) {
        let wide = |text: &str, size: f64| BOLD * text_width(text, size);
        match self {
            Self::Below(size, small) => {
                (wide(gear, size).max(wide(speed[0], small)), FIGURE * (size + small) + 8.0)
            }
            Self::Short(size, small) => {
                (wide(gear, size).max(wide(speed[1], small)), FIGURE * (size + small) + 8.0)
            }
            Self::Beside(size, small) => (wide(gear, size) + 8.0 + wide(speed[0], small), FIGURE * size),
            Self::Alone(size) => (wide(gear, size), FIGURE * size),
        }
    }
}

/// Writes the figures of all legs in the window.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers, hill: &Hill) {
    for descent in &scene.picture().descents {
        if descent.verdict == Verdict::NoSafeSpeed {
            write_none(scene, layers, hill, descent);
        } else if scene.prepared.fill_tones.reading() == Reading::Gear {
            for (leg, to) in scene.picture().legs(descent) {
                if let Some(ends) = scene.shown(leg.from, to) {
                    write_leg(scene, layers, hill, leg, ends);
                }
            }
        }
    }
}

/// Whether something of this size stands in the hill about a place.
fn fits(scene: &Scene, hill: &Hill, (x0, x1): (f64, f64), (width, height): (f64, f64)) -> bool {
    let middle = 0.5 * (x0 + x1);
    let lowest = hill.ends(middle - 0.5 * width, middle + 0.5 * width).1;
    width + 6.0 <= x1 - x0 && lowest + 5.0 <= scene.layout.profile.bottom() - FOOT - height
}

fn write_leg(scene: &Scene, layers: &mut Layers, hill: &Hill, leg: &Hold, ends: (f64, f64)) {
    let units = scene.prepared.units;
    let gear = leg.gear.to_string();
    let full = format::hold_speed(f64::from(leg.speed), units);
    let short = format::hold_number(f64::from(leg.speed), units);
    let speed = [full.as_str(), short.as_str()];
    let settings: &[Setting] = if scene.layout.compact { &COMPACT } else { &WIDE };
    let found = settings.iter().find(|it| fits(scene, hill, ends, it.size(&gear, speed)));
    let Some(setting) = found else { return };
    let (middle, base) = (0.5 * (ends.0 + ends.1), scene.layout.profile.bottom() - FOOT);
    let tone = scene.prepared.gear_tones.class(leg.gear);
    let mut write = |size: f64, anchor: Anchor, place: (f64, f64), text: &str, strong: bool| {
        let strong = if strong { " strong" } else { "" };
        layers.over.text(&format!("on size-{size}{strong} {tone}"), anchor, place, text);
    };
    match *setting {
        Setting::Below(size, small) | Setting::Short(size, small) => {
            let text = if matches!(setting, Setting::Short(..)) { &short } else { &full };
            write(size, Anchor::Middle, (middle, base - FIGURE * small - 8.0), &gear, true);
            write(small, Anchor::Middle, (middle, base), text, false);
        }
        Setting::Beside(size, small) => {
            let (width, _) = setting.size(&gear, speed);
            let split = middle - 0.5 * width + BOLD * text_width(&gear, size);
            write(size, Anchor::End, (split, base), &gear, true);
            write(small, Anchor::Start, (split + 8.0, base), &full, false);
        }
        Setting::Alone(size) => write(size, Anchor::Middle, (middle, base), &gear, true),
    }
}

/// Where no speed is safe, that stands on the hill: a blank would read as all clear.
fn write_none(scene: &Scene, layers: &mut Layers, hill: &Hill, descent: &Bracket) {
    let Some(ends) = scene.shown(descent.from, descent.to) else { return };
    let text = scene.labels.verdict(descent.verdict);
    let (middle, base) = (0.5 * (ends.0 + ends.1), scene.layout.profile.bottom() - FOOT);
    let width = 1.1 * text_width(text, scene.layout.text_size());
    let text = if fits(scene, hill, ends, (width, 13.0)) { text } else { "✕" };
    layers.over.text("no-speed strong", Anchor::Middle, (middle, base), text);
}

#[cfg(test)]
mod tests {
    use super::Setting;

    #[test]
    fn every_setting_needs_less_than_the_one_before_in_width_or_height() {
        for settings in [&super::WIDE[..], &super::COMPACT[..]] {
            let sizes: Vec<_> =
                settings.iter().map(|it: &Setting| it.size("10", ["27 km/h", "27"])).collect();
            for pair in sizes.windows(2) {
                assert!(pair[1].0 < pair[0].0 || pair[1].1 < pair[0].1, "{sizes:?}");
            }
        }
    }
}
