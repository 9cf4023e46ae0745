//! Folders of roads, and the tables made of them.

use super::{BAD, DEMO, GOOD, ROOT, fails, folder, json, run, succeeds, text};
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

/// Three roads, one of them in a folder below, one file that is no road and one that is no GPX file.
fn roads(name: &str) -> PathBuf {
    let all = folder(name);
    fs::create_dir(all.join("b")).expect("a folder can be made");
    let copy = |from: &str, to: &str| {
        fs::copy(Path::new(ROOT).join(from), all.join(to)).expect("a file can be copied");
    };
    copy(DEMO, "c.gpx");
    copy(GOOD, "b/of, \"quotes\".GPX");
    copy("public/lesson-false-finish.gpx", "b/z.gpx");
    copy(BAD, "a.gpx");
    copy("README.md", "d.md");
    all
}

/// The rows of a table of JSON lines.
fn rows(path: &Path) -> Vec<Value> {
    let table = fs::read_to_string(path).expect("a table");
    table.lines().map(|line| serde_json::from_str(line).expect("a row of JSON")).collect()
}

#[test]
fn a_folder_becomes_a_table_in_the_order_of_its_files() {
    let all = roads("folder");
    let table = all.join("plans.ndjson");
    let output = run(&["roads", text(&all), "--out", text(&table), "--preset", "five-axle-40t"]);
    assert!(output.status.success(), "{output:?}");
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(said.contains("4 files") && said.contains("1 of the files could not be planned"), "{said}");
    assert!(said.contains("no approval of a road"), "{said}");
    let rows = rows(&table);
    let mut files: Vec<&str> = rows.iter().map(|row| row["file"].as_str().expect("a name")).collect();
    files.dedup();
    let ends: Vec<String> = files.iter().map(|file| file.replace(text(&all), "")).collect();
    assert_eq!(ends, ["/a.gpx", "/b/of, \"quotes\".GPX", "/b/z.gpx", "/c.gpx"]);
    assert!(rows[0]["error"].as_str().is_some_and(|error| error.contains("web page")));
    assert!(rows[0]["descents"].is_null() && rows[0]["verdict"].is_null());
    // Rows say what the plan of the file alone says.
    let alone = json(&["road", DEMO, "--json", "--preset", "five-axle-40t"]);
    let of_demo: Vec<&Value> =
        rows.iter().filter(|row| row["file"].as_str() == files.last().copied()).collect();
    assert_eq!(of_demo.len(), alone["descents"].as_array().map_or(0, Vec::len));
    for (row, descent) in of_demo.iter().zip(alone["descents"].as_array().expect("a list")) {
        for key in ["gear", "stage", "hold_kmh", "crest_m", "foot_m", "verdict", "proof", "governs", "time_s"]
        {
            assert_eq!(row[key], descent[key], "{key}");
        }
        assert_eq!(row["descents"], of_demo.len());
        assert_eq!(row["quality"], alone["road"]["quality"]);
    }
    assert!(!all.join("plans.ndjson.part").exists());
}

#[test]
fn one_core_or_several_write_the_same_table() {
    let all = roads("cores");
    let (one, many) = (all.join("one.csv"), all.join("many.csv"));
    succeeds(&["roads", text(&all), "--out", text(&one), "--jobs", "1"]);
    succeeds(&["roads", text(&all), "--out", text(&many), "--jobs", "4"]);
    let one = fs::read(&one).expect("a table");
    assert_eq!(one, fs::read(&many).expect("a table"));
    let mut read = csv::Reader::from_reader(&one[..]);
    let heads = read.headers().expect("heads").clone();
    assert_eq!((&heads[0], heads.iter().next_back()), ("file", Some("error")));
    let files: Vec<String> = read.records().map(|row| row.expect("a row")[0].to_owned()).collect();
    assert!(files.iter().any(|file| file.ends_with("of, \"quotes\".GPX")), "{files:?}");
}

#[test]
fn legs_have_rows_of_their_own() {
    let all = roads("legs");
    let table = all.join("legs.ndjson");
    succeeds(&["roads", text(&all), "--out", text(&table), "--rows", "legs"]);
    let alone = json(&["road", DEMO, "--json"]);
    let all_legs = alone["descents"].as_array().expect("a list").iter();
    let holds: Vec<Value> = all_legs
        .flat_map(|descent| descent["legs"].as_array().expect("a list").clone())
        .map(|leg| leg["hold_kmh"].clone())
        .collect();
    let of_demo =
        rows(&table).into_iter().filter(|row| row["file"].as_str().is_some_and(|it| it.ends_with("c.gpx")));
    assert_eq!(of_demo.map(|row| row["hold_kmh"].clone()).collect::<Vec<_>>(), holds);
}

#[test]
fn a_descent_without_a_safe_speed_and_a_road_without_a_descent_are_not_left_out() {
    let all = roads("left-out");
    for (kind, key) in [("descents", "legs"), ("legs", "leg")] {
        let table = all.join(format!("{kind}.ndjson"));
        let words = [
            "roads",
            text(&all),
            "--out",
            text(&table),
            "--rows",
            kind,
            "--mass-kg",
            "60000",
            "--retarder",
            "none",
        ];
        succeeds(&words);
        let unsafe_ones = rows(&table).into_iter().filter(|row| row["verdict"] == "no_safe_speed");
        let mut count = 0;
        for row in unsafe_ones {
            assert!(row["gear"].is_null() && row["hold_kmh"].is_null() && !row["descent"].is_null(), "{row}");
            assert!(row[key].is_null() || row[key] == 0, "{row}");
            count += 1;
        }
        assert!(count > 0, "no hill is too much for it");
    }
    // A straight climb has no descent.
    let climb = folder("climb");
    let point = |k: u32| {
        format!("<trkpt lat=\"{}\" lon=\"7\"><ele>{}</ele></trkpt>", 46.0 + f64::from(k) / 5e3, 500 + k)
    };
    let points: String = (0..400).map(point).collect();
    fs::write(
        climb.join("up.gpx"),
        format!("<gpx version=\"1.1\"><trk><trkseg>{points}</trkseg></trk></gpx>"),
    )
    .expect("written");
    let table = climb.join("t.ndjson");
    succeeds(&["roads", text(&climb), "--out", text(&table)]);
    let rows = rows(&table);
    assert_eq!(rows.len(), 1);
    assert!(
        rows[0]["descents"] == 0 && rows[0]["error"].is_null() && rows[0]["length_m"].is_number(),
        "{}",
        rows[0]
    );
}

#[test]
fn a_table_that_cannot_be_written_is_refused_before_the_work() {
    let all = roads("unwritable");
    let (there, table) = (all.join("there.csv"), all.join("missing/plans.csv"));
    fs::write(&there, "of somebody else").expect("written");
    assert!(fails(&["roads", text(&all), "--out", text(&there)], 1).contains("--overwrite"));
    assert_eq!(fs::read_to_string(&there).expect("still there"), "of somebody else");
    succeeds(&["roads", text(&all), "--out", text(&there), "--overwrite"]);
    let told = fails(&["roads", text(&all), "--out", text(&table)], 1);
    assert!(told.contains("missing") && told.contains("Check that its folder is there"), "{told}");
    let told = fails(&["roads", text(&all), "--out", text(&all.join("plans.xls"))], 1);
    assert!(told.contains(".parquet"), "{told}");
    assert!(!all.join("plans.xls.part").exists());
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_leaves_no_table() {
    let all = roads("full");
    // Whatever is written there, the disk is full.
    std::os::unix::fs::symlink("/dev/full", all.join("plans.csv.part")).expect("a link");
    let told = fails(&["roads", text(&all), "--out", text(&all.join("plans.csv"))], 1);
    assert!(told.contains("plans.csv.part could not be written"), "{told}");
    assert!(!all.join("plans.csv").exists());
}

#[test]
fn a_folder_without_roads_is_said_and_not_passed_over() {
    let empty = folder("empty");
    let table = empty.join("plans.csv");
    assert!(fails(&["roads", text(&empty), "--out", text(&table)], 1).contains("No GPX file"));
    assert!(!table.exists());
    let told = fails(&["roads", "no-such-folder", "--out", text(&table)], 1);
    assert!(told.contains("no-such-folder") && told.contains("Check its name"), "{told}");
    fs::copy(Path::new(ROOT).join(BAD), empty.join("only.gpx")).expect("copied");
    let told = fails(&["roads", text(&empty), "--out", text(&table)], 1);
    assert!(told.contains("None of 1 files could be planned"), "{told}");
    assert!(fs::read_to_string(&table).expect("a table").contains("web page"));
}

#[cfg(feature = "parquet")]
#[test]
fn parquet_has_what_the_lines_have() {
    use parquet::file::reader::{FileReader, SerializedFileReader};
    let all = roads("parquet");
    for kind in ["descents", "legs"] {
        let (lines, table) = (all.join(format!("{kind}.ndjson")), all.join(format!("{kind}.parquet")));
        succeeds(&["roads", text(&all), "--out", text(&lines), "--rows", kind]);
        succeeds(&["roads", text(&all), "--out", text(&table), "--rows", kind]);
        let file = fs::File::open(&table).expect("a table");
        let reader = SerializedFileReader::new(file).expect("Parquet");
        let about = reader.metadata().file_metadata().key_value_metadata().expect("a caution");
        assert!(
            about.iter().any(|it| it.value.as_ref().is_some_and(|it| it.contains("no approval of a road")))
        );
        let read = reader.get_row_iter(None).expect("rows");
        let mut count = 0;
        for (row, line) in read.zip(rows(&lines)) {
            let row = row.expect("a row");
            let columns: Vec<(&String, &parquet::record::Field)> = row.get_column_iter().collect();
            assert_eq!(columns.len(), line.as_object().map_or(0, |it| it.len()));
            for (name, field) in columns {
                use parquet::record::Field;
                let same = match field {
                    Field::Null => line[name].is_null(),
                    Field::Str(text) => line[name] == text.as_str(),
                    Field::UInt(number) => line[name] == *number,
                    Field::Double(number) => line[name].as_f64().map(f64::to_bits) == Some(number.to_bits()),
                    other => panic!("{name}: {other}"),
                };
                assert!(same, "{name}: {field} and {}", line[name]);
            }
            count += 1;
        }
        assert_eq!(count, rows(&lines).len());
    }
}
