//! Roads, grades and trucks, one at a time.

use super::{BAD, DEMO, GOOD, ROOT, fails, folder, json, out, run, succeeds, text};
use serde_json::Value;
use std::fs;
use std::path::Path;

#[test]
fn a_road_is_planned_as_text_and_as_json() {
    let told = succeeds(&["road", DEMO, "--preset", "five-axle-40t"]);
    for part in ["40.0 t", "Descent 1", "no approval of a road"] {
        assert!(told.contains(part), "{part}: {told}");
    }
    let plan = json(&["road", DEMO, "--preset", "five-axle-40t", "--json"]);
    let descent = &plan["descents"][0];
    for key in ["gear", "hold_kmh", "crest_m", "foot_m", "legs", "one_gear", "verdict", "in_reserve"] {
        assert!(!descent[key].is_null(), "{key}: {descent}");
    }
    assert!(plan["road"]["length_m"].as_f64().is_some_and(|length_m| length_m > 1_000.0));
    // The other way the hill is another one.
    let back = json(&["road", DEMO, "--preset", "five-axle-40t", "--json", "--reverse"]);
    assert_ne!(plan["descents"], back["descents"]);
}

#[test]
fn the_library_says_the_same_as_the_command() {
    let bytes = fs::read(Path::new(ROOT).join(DEMO)).expect("the demo is there");
    let truck = solver::Truck::new(solver::Preset::BDouble.spec()).expect("a preset");
    let planned = solver::plan_file(&bytes, &truck, &solver::Day::USUAL).expect("the demo is a road");
    let told = json(&["road", DEMO, "--preset", "b-double-62t", "--json"]);
    let told = told["descents"].as_array().expect("a list");
    assert_eq!(told.len(), planned.plan.descents.len());
    for (told, ours) in told.iter().zip(&planned.plan.descents) {
        let advice = ours.choice.advice().expect("a speed is found");
        assert_eq!(told["gear"], u64::from(advice.gear.number()));
        assert_eq!(told["hold_kmh"].as_f64().map(f64::to_bits), Some(advice.speed.kmh().to_bits()));
    }
}

#[test]
fn truck_and_day_change_the_plan() {
    let folder = folder("truck-and-day");
    let (truck, day) = (folder.join("truck.json"), folder.join("day.json"));
    fs::write(&truck, succeeds(&["truck", "--preset", "five-axle-40t"])).expect("written");
    let by_name = json(&["road", DEMO, "--json", "--preset", "five-axle-40t"]);
    assert_eq!(json(&["road", DEMO, "--json", "--truck", text(&truck)]), by_name);
    assert_ne!(json(&["road", DEMO, "--json", "--preset", "five-axle-40t", "--mass-kg", "20000"]), by_name);
    let weak = json(&["road", DEMO, "--json", "--preset", "five-axle-40t", "--retarder", "none"]);
    assert_ne!(weak["descents"], by_name["descents"]);
    let icy = solver::Day { surface: solver::Surface::Ice, ..solver::Day::USUAL };
    fs::write(&day, serde_json::to_string(&icy).expect("a day has a JSON form")).expect("written");
    let icy = json(&["road", DEMO, "--json", "--preset", "five-axle-40t", "--day", text(&day)]);
    assert_eq!(icy["notes"][0], "StagesWithheld(Ice)");
}

#[test]
fn several_files_have_a_line_each_and_a_bad_one_keeps_none_back() {
    let output = run(&["road", BAD, DEMO, "--json"]);
    assert_eq!(output.status.code(), Some(1));
    let told = out(&output);
    let lines: Vec<Value> = told.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect();
    assert_eq!(lines.len(), 2);
    assert_eq!((&lines[0]["file"], &lines[1]["file"]), (&Value::from(BAD), &Value::from(DEMO)));
    assert!(lines[0]["error"].as_str().is_some_and(|it| it.contains("web page") && it.contains("GPX")));
    let mut alone = json(&["road", DEMO, "--json"]);
    alone["file"] = Value::from(DEMO);
    assert_eq!(lines[1], alone);
    let as_text = run(&["road", BAD, DEMO]);
    assert_eq!(as_text.status.code(), Some(1));
    assert!(out(&as_text).contains("web page") && out(&as_text).contains("Descent 1"));
}

#[test]
fn a_second_recording_is_combined_and_a_copy_is_refused() {
    let copy = fails(&["road", DEMO, "--with", DEMO], 1);
    assert!(copy.contains("cannot be combined"), "{copy}");
    let folder = folder("second");
    let second = folder.join("second.gpx");
    // The same places, with heights that tremble by half a metre.
    let bytes = fs::read_to_string(Path::new(ROOT).join(DEMO)).expect("the demo is there");
    let mut up = false;
    let trembling: Vec<String> = bytes
        .split("<ele>")
        .map(|part| {
            let Some((height, rest)) = part.split_once("</ele>") else { return part.to_owned() };
            up = !up;
            let height: f64 = height.parse().expect("a height");
            format!("{:.2}</ele>{rest}", if up { height + 0.5 } else { height - 0.5 })
        })
        .collect();
    fs::write(&second, trembling.join("<ele>")).expect("written");
    let told = succeeds(&["road", DEMO, "--with", text(&second)]);
    assert!(told.contains("together and first"), "{told}");
    let both = json(&["road", DEMO, "--with", text(&second), "--json"]);
    assert!(both["descents"].as_array().is_some_and(|all| !all.is_empty()), "{both}");
}

#[test]
fn a_grade_is_told_by_gear_and_stage() {
    let table = json(&["grade", "-6%", "--preset", "rigid-18t", "--json"]);
    assert_eq!(table["grade"], -0.06);
    assert!(table["rows"].as_array().is_some_and(|rows| rows.len() > 4));
    assert_eq!(json(&["grade", "--json", "--preset", "rigid-18t", "-0.06"]), table);
    assert_ne!(json(&["grade", "-6%", "--preset", "rigid-18t", "--height-m", "2500", "--json"]), table);
    assert!(succeeds(&["grade", "-6%"]).contains("no approval of a road"));
    assert!(succeeds(&["grade", "6%"]).contains("rises"));
    assert!(fails(&["grade", "-6"], 2).contains("-6%"));
}

#[test]
fn trucks_are_listed_and_printed() {
    let list = succeeds(&["truck"]);
    for preset in solver::Preset::ALL {
        assert!(list.contains(preset.key()), "{list}");
        let file = succeeds(&["truck", "--preset", preset.key()]);
        assert_eq!(solver::report::truck_file::read(&file), Ok(preset.spec()));
    }
}

#[test]
fn the_annotated_road_is_written_and_nothing_is_overwritten() {
    let folder = folder("annotated");
    let path = folder.join("out.gpx");
    succeeds(&["road", DEMO, "--gpx-out", text(&path)]);
    let written = fs::read_to_string(&path).expect("written");
    assert!(written.contains("Crest 1") && written.contains("Not permission to descend"));
    assert!(fails(&["road", GOOD, "--gpx-out", text(&path)], 1).contains("--overwrite"));
    assert_eq!(fs::read_to_string(&path).expect("still there"), written);
    succeeds(&["road", GOOD, "--gpx-out", text(&path), "--overwrite"]);
    assert_ne!(fs::read_to_string(&path).expect("written"), written);
}

#[test]
fn what_cannot_be_used_is_told_with_place_and_remedy() {
    let folder = folder("refused");
    let broken = folder.join("broken.json");
    fs::write(&broken, "{\n\"surface\": \"dry\", \"gripp\": 1 }").expect("written");
    let told = fails(&["road", "nowhere.gpx"], 1);
    assert!(told.contains("nowhere.gpx") && told.contains("Check its name"), "{told}");
    let told = fails(&["road", BAD], 1);
    assert!(told.contains(BAD) && told.contains("web page"), "{told}");
    assert!(fails(&["road", GOOD, "--course", "7"], 1).contains("Track number 7"));
    let told = fails(&["road", GOOD, "--day", text(&broken)], 1);
    assert!(told.contains("gripp") && told.contains("line 2") && told.contains("speed_limit_kmh"), "{told}");
    assert!(fails(&["road", GOOD, "--truck", text(&broken)], 1).contains("Line"));
    assert!(fails(&["road", GOOD, "--mass-kg", "1"], 1).contains("mass"));
    let unwritable = folder.join("missing/out.gpx");
    assert!(fails(&["road", GOOD, "--gpx-out", text(&unwritable)], 1).contains("Check that its folder"));
}

#[test]
fn words_that_are_not_understood_end_with_status_2() {
    for words in [
        &["road"][..],
        &["nonsense"],
        &["road", GOOD, "--nonsense"],
        &["road", GOOD, "--preset", "none-such"],
        &["road", GOOD, "--mass-kg", "heavy"],
        &["road", GOOD, "--course", "0"],
        &["road", GOOD, "--with", DEMO, "--study"],
        &["road", GOOD, DEMO, "--study"],
        &["roads", "public"],
    ] {
        assert!(!fails(words, 2).is_empty(), "{words:?}");
    }
    assert!(fails(&["road", GOOD, "--preset", "none-such"], 2).contains("coach-converter"));
}
