//! What is printed adds up, is complete, and is the same sum in every language.

use super::arithmetic::holds;
use super::*;
use crate::exercise::samples::{ROADS, every_ground, every_sheet, planned, sheet};
use crate::exercise::{ControlSpeed, Ground, Sheet};
use crate::words::{IN_ALL, words};
use solver::day::Day;
use solver::motion::Answer;
use solver::truck::Preset;
use solver::units::MetresPerSecond;

fn languages() -> [Spoken; 4] {
    IN_ALL
}

/// The sum of a step, without its label and judgement.
fn sum(line: &str, words: Spoken) -> &str {
    let text = line.rsplit_once(words.colon()).map_or(line, |(_, text)| text);
    text.split_once(';').map_or(text, |(text, _)| text).trim_end_matches('\u{202f}')
}

/// Sums read, and how many of them say “≈”.
fn check_sums(sheet: &Sheet, at: &str) -> (usize, usize) {
    let (mut read, mut about) = (0, 0);
    for exercise in &sheet.exercises {
        // Whoever changes the units afterwards reads sums as well, of less round numbers.
        for units in [Units::Metric, Units::Imperial] {
            for line in words().steps(exercise, units) {
                let text = sum(&line, words());
                let Some((right, left)) = holds(text) else { continue };
                assert!(right, "{at}: {line}");
                // A wrong sum must not pass for being vague. Small air resistance is vague.
                assert!(
                    left.open() < 0.3 || line.contains("ir") || line.contains('%'),
                    "{at}: vague: {line}"
                );
                read += 1;
                about += usize::from(text.contains('≈'));
            }
        }
    }
    (read, about)
}

#[test]
fn every_printed_sum_adds_up() {
    let (mut read, mut about) = (0, 0);
    let at = |sheet: &Sheet| format!("seed {} {:?}", sheet.seed, sheet.units);
    every_sheet(&Day::USUAL, |_, _, sheet| {
        let (more, loose) = check_sums(sheet, &at(sheet));
        (read, about) = (read + more, about + loose);
    });
    assert!(read > 100_000, "only {read} sums were read");
    // Where all said “≈” it would say nothing.
    assert!(about > 0 && about * 4 < read, "{about} of {read} are only about right");
    for headwind_kmh in [-60.0, 25.0] {
        let day = Day { headwind_kmh, air_c: -7.5, brakes_at_start_c: 30.25, ..Day::USUAL };
        for (spec, ground) in every_ground(&day) {
            for seed in 0..10 {
                let sheet = sheet(seed, Units::Metric, &ground, &spec, &day);
                let (read, _) =
                    check_sums(&sheet, &format!("{} seed {seed}, wind {headwind_kmh}", spec.name));
                assert!(read > 20, "{read}");
            }
        }
    }
}

/// The set whose sentences are looked at.
fn one_of_each() -> Sheet {
    let spec = Preset::FiveAxle36.spec();
    let ground = Ground::of(&planned(ROADS[0], &spec, &Day::USUAL));
    sheet(7, Units::Metric, &ground, &spec, &Day::USUAL)
}

#[test]
fn gravity_is_written_as_a_class_writes_it() {
    let sheet = one_of_each();
    let steps = words().steps(&sheet.exercises[0], Units::Metric).join("\n");
    assert!(
        steps.contains("Gravity along the road: 22\u{a0}t × 9.81\u{a0}m/s² × 0.0847 = 18.3\u{a0}kN"),
        "{steps}"
    );
    let question = words().question(&sheet.exercises[0], Units::Metric);
    assert!(
        question.contains("22\u{a0}t") && question.contains("8.5\u{a0}% in gear 5, stage 3"),
        "{question}"
    );
}

#[test]
fn what_is_given_is_enough_for_the_sums() {
    let sheet = one_of_each();
    for exercise in &sheet.exercises {
        for units in [Units::Metric, Units::Imperial] {
            let asked = words().question(exercise, units) + &words().given(exercise, units).join(" ");
            // All the numbers with which a class begins stand in question or table.
            let needs: &[&str] = match exercise {
                Exercise::ControlSpeed(_) | Exercise::GearChoice(_) => {
                    &["coefficient", "Drag", "/min", " → "]
                }
                Exercise::BrakingWork(_) => &["coefficient", "Drag", "Density"],
                Exercise::Haste(_) => &["long", "instead"],
                Exercise::BrakeHeat(_) => &["store", "give off", "Air", "crest", "share"],
            };
            assert!(needs.iter().all(|it| asked.contains(it)), "{asked}");
        }
    }
}

#[test]
fn all_languages_write_the_same_sums() {
    let sheet = one_of_each();
    for exercise in &sheet.exercises {
        for units in [Units::Metric, Units::Imperial] {
            let of = |words: Spoken| -> Vec<String> {
                words.steps(exercise, units).iter().map(|line| sum(line, words).to_owned()).collect()
            };
            let english = of(words());
            assert!(english.len() >= 4, "{english:?}");
            for words in languages() {
                assert_eq!(of(words), english);
            }
        }
    }
}

#[test]
fn every_language_says_everything() {
    let sheet = one_of_each();
    for words in languages() {
        let whole = [words.sheet_caution(), words.no_exercises(), words.stages_left_out()];
        for text in whole {
            assert!(text.len() > 30 && text.ends_with('.'), "{text}");
        }
        let mut labels: Vec<&str> = Term::ALL.into_iter().map(|term| words.term(term)).collect();
        labels.extend([words.given_label(), words.room_label(), words.steps_label()]);
        labels.extend([words.blank_sheet(), words.answer_sheet(), words.another_set()]);
        labels.extend([words.enough(true), words.enough(false)]);
        let count = labels.len();
        labels.sort_unstable();
        labels.dedup();
        assert_eq!(labels.len(), count, "each label is its own: {labels:?}");
        assert!(labels.iter().all(|it| it.chars().count() >= 3), "{labels:?}");
        assert!(words.sheet_head(1_234).contains("1234"));
        for (number, exercise) in (1..).zip(&sheet.exercises) {
            assert!(words.exercise(number, exercise).contains(&number.to_string()));
            for units in [Units::Metric, Units::Imperial] {
                let question = words.question(exercise, units);
                assert!(question.ends_with('?') && question.len() > 60, "{question}");
                let solution = words.solution(exercise, units);
                assert!(solution.ends_with('.') && solution.len() > 30, "{solution}");
            }
        }
    }
}

#[test]
fn every_answer_has_its_own_sentence() {
    let sheet = one_of_each();
    let Exercise::ControlSpeed(settling) = &sheet.exercises[0] else { panic!("{sheet:?}") };
    let answers = [
        settling.answer,
        Answer::MoreThanNeeded,
        Answer::Overruns { above: None },
        Answer::Overruns { above: Some(MetresPerSecond(9.0)) },
    ];
    for words in languages() {
        let said: Vec<String> = answers
            .iter()
            .map(|answer| {
                let it = ControlSpeed { answer: *answer, ..settling.clone() };
                words.solution(&Exercise::ControlSpeed(it), Units::Metric)
            })
            .collect();
        assert!((0..said.len()).all(|at| !said[..at].contains(&said[at])), "{said:?}");
        let Exercise::GearChoice(choice) = &sheet.exercises[2] else { panic!("{sheet:?}") };
        let none = crate::exercise::GearChoice { answer: None, ..choice.clone() };
        let none = words.solution(&Exercise::GearChoice(none), Units::Metric);
        assert_ne!(none, words.solution(&sheet.exercises[2], Units::Metric));
        let Exercise::BrakeHeat(heat) = sheet.exercises[5] else { panic!("{sheet:?}") };
        let kept = crate::exercise::BrakeHeat { foot: heat.limit, ..heat };
        let over = crate::exercise::BrakeHeat { foot: heat.limit + solver::units::Celsius(0.4), ..heat };
        let [kept, over] = [kept, over].map(|it| words.solution(&Exercise::BrakeHeat(it), Units::Metric));
        assert_ne!(kept, over, "the same degrees, but one is over the limit");
    }
}
