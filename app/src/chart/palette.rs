//! Holds the colours of `style/chart.css` to their contrast. Tests only.
//!
//! Contrast as in the Web Content Accessibility Guidelines 2.2 (relative luminance and ratio,
//! criteria 1.4.3: 4.5 for text, and 1.4.11: 3 for graphics); lightness as in CIE 1976 L*.

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
    // Neighbours of up to five gears in use are 8 apart in L*, of up to seven 3.9, and their hue
    // changes as well. About 2 is just seen side by side; common practice, no source.
    for theme in THEMES {
        let light: Vec<f64> =
            (0..12).map(|tone| lightness(luminance(CHART, theme, &format!("gear-{tone}")))).collect();
        for used in 2..=7_usize {
            let tone = |rank: usize| light[(rank * 11 + (used - 1) / 2) / (used - 1)];
            for rank in 1..used {
                let apart = (tone(rank) - tone(rank - 1)).abs();
                let least = if used <= 5 { 8.0 } else { 3.9 };
                assert!(apart >= least, "{theme}: {apart:.1} between {rank} of {used}");
            }
        }
    }
}

#[test]
fn neighbouring_gears_differ_by_night_as_by_day() {
    // The least by which two tones that follow each other differ, in L* and as a ratio: of luminance
    // alone, which no colour blindness takes away.
    let least = |theme| {
        let tones: Vec<f64> = (0..12).map(|tone| luminance(CHART, theme, &format!("gear-{tone}"))).collect();
        let of = |apart: fn(f64, f64) -> f64| {
            tones.windows(2).map(|pair| apart(pair[0], pair[1])).fold(f64::INFINITY, f64::min)
        };
        (of(|a, b| (lightness(a) - lightness(b)).abs()), of(contrast))
    };
    let [day, night] = THEMES.map(least);
    assert!(night.0 >= day.0 && night.1 >= day.1, "{night:?} by night, {day:?} by day");
    for theme in THEMES {
        let card = luminance(MAIN, theme, "card");
        let faint = (0..12).map(|tone| contrast(card, luminance(CHART, theme, &format!("gear-{tone}"))));
        assert!(faint.fold(f64::INFINITY, f64::min) >= 1.4, "{theme}: a gear sinks into the ground");
    }
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
        ] {
            let ratio = contrast(card, luminance(sheet, theme, name));
            assert!(ratio >= least, "{theme} {name}: {ratio:.2}");
        }
    }
}
