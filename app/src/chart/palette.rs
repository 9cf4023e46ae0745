//! Holds the colours of `style/chart.css` to their contrast. Tests only.
//!
//! Contrast as in the Web Content Accessibility Guidelines 2.2 (relative luminance and ratio,
//! criteria 1.4.3: 4.5 for text, and 1.4.11: 3 for graphics); lightness as in CIE 1976 L*.

use super::reading::gear_tone;

const CHART: &str = include_str!("../../style/chart.css");
const MAIN: &str = include_str!("../../style/main.css");

/// The two themes, by the head of their block in both style sheets.
const THEMES: [&str; 2] = [":root {", ":root[data-theme=\"night\"] {"];

/// Luminance of `--name` in a theme's first block of a style sheet.
fn luminance(sheet: &str, theme: &str, name: &str) -> f64 {
    let begin = sheet.find(theme).expect("the theme has a block");
    let block = &sheet[begin..begin + sheet[begin..].find("\n}").expect("the block ends")];
    let key = format!("--{name}: #");
    let place = block.find(&key).unwrap_or_else(|| panic!("{theme} lacks {name}")) + key.len();
    let part = |offset: usize| {
        let hex = &block[place + offset..place + offset + 2];
        let share = f64::from(u8::from_str_radix(hex, 16).expect("two hexadecimal digits")) / 255.0;
        if share <= 0.040_45 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
    };
    0.2126 * part(0) + 0.7152 * part(2) + 0.0722 * part(4)
}

fn contrast(a: f64, b: f64) -> f64 {
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn lightness(luminance: f64) -> f64 {
    if luminance > 0.008_856 { 116.0 * luminance.cbrt() - 16.0 } else { 903.3 * luminance }
}

const SCALES: [(&str, usize); 4] = [("gear", 12), ("heat", 4), ("speed", 6), ("grade", 8)];

#[test]
fn text_reads_on_every_tone() {
    for theme in THEMES {
        for (scale, tones) in SCALES {
            for tone in 0..tones {
                let ground = luminance(CHART, theme, &format!("{scale}-{tone}"));
                let text = luminance(CHART, theme, &format!("{scale}-{tone}-on"));
                let ratio = contrast(ground, text);
                assert!(ratio >= 4.5, "{theme} {scale}-{tone}: {ratio:.2}");
            }
        }
    }
}

#[test]
fn gears_in_use_differ_at_a_glance() {
    // Least difference in L* of neighbours, of up to five gears in use and of up to seven; their hue changes
    // as well. By night the scale ends at a quarter of white, so that it is half as wide. About 2 is just seen
    // side by side; common practice, no source.
    for (theme, few, many) in [(THEMES[0], 8.0, 3.9), (THEMES[1], 6.0, 3.0)] {
        let light = gears(theme).map(lightness);
        for used in 2..=7_usize {
            let tone = |rank: usize| light[gear_tone(rank, used)];
            for rank in 1..used {
                let apart = tone(rank) - tone(rank - 1);
                let least = if used <= 5 { few } else { many };
                assert!(apart >= least, "{theme}: {apart:.1} between {rank} of {used}");
            }
        }
    }
}

fn gears(theme: &str) -> [f64; 12] {
    std::array::from_fn(|tone| luminance(CHART, theme, &format!("gear-{tone}")))
}

#[test]
fn slow_is_dark_and_fast_is_light_by_day_and_by_night() {
    for theme in THEMES {
        let light = gears(theme).map(lightness);
        // Each tone is lighter than the one before by what is just seen side by side, or more.
        assert!(light.windows(2).all(|pair| pair[1] - pair[0] >= 2.0), "{theme}: {light:?}");
        // What lies beside a gear: the card above the road line, the ground of other stretches.
        for (sheet, name, enough) in [(MAIN, "card", 1.4), (CHART, "ground", 1.15)] {
            let beside = luminance(sheet, theme, name);
            let faint = gears(theme).map(|tone| contrast(beside, tone));
            let least = faint.into_iter().fold(f64::INFINITY, f64::min);
            assert!(least >= enough, "{theme}: a gear sinks into the {name}, {least:.2}");
        }
    }
}

#[test]
fn by_night_no_gear_dazzles() {
    // A quarter of white's luminance: an area that large blinds eyes used to the dark. Assumed, no source.
    let brightest = gears(THEMES[1]).into_iter().fold(0.0, f64::max);
    assert!(brightest <= 0.25, "{brightest:.3}");
}

#[test]
fn hotter_is_always_further_from_the_ground() {
    for theme in THEMES {
        let card = luminance(MAIN, theme, "card");
        let ratios: Vec<f64> =
            (0..4).map(|tone| contrast(card, luminance(CHART, theme, &format!("heat-{tone}")))).collect();
        assert!(ratios.windows(2).all(|pair| pair[1] > pair[0] * 1.3), "{theme}: {ratios:?}");
        assert!(ratios[2] >= 3.0, "{theme}: hot must stand out, {:.2}", ratios[2]);
    }
}

#[test]
fn lines_and_labels_stand_out_from_the_card() {
    for theme in THEMES {
        let card = luminance(MAIN, theme, "card");
        for (sheet, name, least) in [
            (MAIN, "ink", 4.5),
            (MAIN, "muted", 4.5),
            (MAIN, "accent", 3.0),
            (MAIN, "alarm", 3.0),
            (MAIN, "edge", 3.0),
            (CHART, "hatch", 3.0),
            (CHART, "cursor", 3.0),
            (CHART, "no-speed", 3.0),
        ] {
            let ratio = contrast(card, luminance(sheet, theme, name));
            assert!(ratio >= least, "{theme} {name}: {ratio:.2}");
        }
    }
}
