//! A small page, as Trunk leaves it, goes through every step.

use super::*;

const PAGE: &str = "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\">\n\
    <meta name=\"description\" content=\"What it is.\">\n<title>The page</title>\n\
    <meta name=\"worker-script\" content=\"./worker_loader.js\">\n\
    <meta name=\"study-script\" content=\"./study_loader.js\">\n\
    <meta name=\"demo-file\" content=\"./demo.gpx\">\n\
    <meta name=\"lesson-false-finish\" content=\"./lesson-false-finish.gpx\">\n\
    <meta name=\"lesson-three-steps\" content=\"./lesson-three-steps.gpx\">\n\
    <meta name=\"lesson-short-and-steep\" content=\"./lesson-short-and-steep.gpx\">\n\
    <meta name=\"lesson-long-and-gentle\" content=\"./lesson-long-and-gentle.gpx\">\n\
    <meta name=\"lesson-hairpins\" content=\"./lesson-hairpins.gpx\">\n\
    <meta name=\"evidence-file\" content=\"./evidence.json\">\n\
    <link rel=\"manifest\" href=\"./manifest.webmanifest\">\n\
    <link rel=\"icon\" type=\"image/svg+xml\" href=\"./icon.svg\">\n\
    <style>.first { color: red; }</style>\n\
    <script type=\"module\" src=\"./offline.js\"></script>\n\
    <link rel=\"modulepreload\" href=\"./app-1.js\" crossorigin=\"anonymous\">\
    <link rel=\"preload\" href=\"./app-1_bg.wasm\" as=\"fetch\"></head><body>\n\
    <noscript><p data-words=\"needs-script\">Needs it.</p></noscript>\n\
    <div class=\"parked-notice\" id=\"parked-notice\">\n\
    <p data-words=\"parked\">Parked?</p>\n<button data-words=\"i-am-parked\" id=\"parked\">Yes</button>\n</div>\n\
    <script>show();</script>\n\
    <link rel=\"stylesheet\" href=\"./main-1.css\">\n\
    <link rel=\"stylesheet\" href=\"./class-1.css\"/>\n\
    <script type=\"module\">import init from './app-1.js';\n\
    await init({ module_or_path: './app-1_bg.wasm' });</script></body>";

const FILES: [(&str, &str); 34] = [
    ("worker.js", "let wasm_bindgen;"),
    ("worker_bg.wasm", "worker"),
    ("worker_loader.js", "old"),
    ("study.js", "let wasm_bindgen;"),
    ("study_bg.wasm", "study"),
    ("study_loader.js", "old"),
    ("demo.gpx", "<gpx/>"),
    ("lesson-false-finish.gpx", "<gpx>1</gpx>"),
    ("lesson-three-steps.gpx", "<gpx>2</gpx>"),
    ("lesson-short-and-steep.gpx", "<gpx>3</gpx>"),
    ("lesson-long-and-gentle.gpx", "<gpx>4</gpx>"),
    ("lesson-hairpins.gpx", "<gpx>5</gpx>"),
    ("evidence.json", "[]"),
    ("offline.js", "keep();"),
    ("icon.svg", "<svg/>"),
    ("face.woff2", "face"),
    ("main-1.css", "a { src: url(\"face.woff2\"); }"),
    ("app-1.js", "export default function __wbg_init() {}"),
    ("app-1_bg.wasm", "page"),
    ("es-2.js", "export default function __wbg_init() {}"),
    ("es-2_bg.wasm", "página"),
    ("fr-3.js", "export default function __wbg_init() {}"),
    ("fr-3_bg.wasm", "page"),
    ("de-4.js", "export default function __wbg_init() {}"),
    ("de-4_bg.wasm", "Seite"),
    ("class-1.css", "h1 { color: red; }"),
    ("class-en-5.js", "export default function __wbg_init() {}"),
    ("class-en-5_bg.wasm", "class"),
    ("class-es-6.js", "export default function __wbg_init() {}"),
    ("class-es-6_bg.wasm", "clase"),
    ("class-fr-7.js", "export default function __wbg_init() {}"),
    ("class-fr-7_bg.wasm", "cours"),
    ("class-de-8.js", "export default function __wbg_init() {}"),
    ("class-de-8_bg.wasm", "Kurs"),
];

/// Builds in a folder of its own with some files replaced, looks at the result, and removes the folder.
fn check(name: &str, others: &[(&str, &str)], look: impl FnOnce(&Path, Outcome)) {
    let dist = std::env::temp_dir().join(format!("steadygrade-dist-{}-{name}", std::process::id()));
    fs::create_dir_all(&dist).expect("a temporary folder");
    for (name, text) in FILES.iter().chain(&[("index.html", PAGE)]).chain(others) {
        fs::write(dist.join(name), text).expect("a file in it");
    }
    let outcome = finish(&dist);
    look(&dist, outcome);
    fs::remove_dir_all(&dist).expect("the folder was ours");
}

fn text(dist: &Path, name: &str) -> String {
    fs::read_to_string(dist.join(name)).unwrap_or_else(|error| panic!("{name}: {error}"))
}

fn part<'a>(text: &'a str, before: &str) -> &'a str {
    let (_, from) = text.split_once(before).expect("the text holds it");
    from.split_once(['"', '\'']).expect("it ends").0
}

#[test]
fn what_is_fetched_later_gets_names_by_its_contents() {
    let names = |name: &str, worker: &str| {
        let mut found = Vec::new();
        check(name, &[("worker_bg.wasm", worker)], |dist, outcome| {
            assert_eq!(outcome, Ok(()));
            let html = text(dist, "index.html");
            let script = part(&html, "worker-script\" content=\"./");
            let glue = text(dist, script);
            let module = part(&glue, "module_or_path: \"./");
            assert_eq!(text(dist, module), worker);
            for old in ["worker.js", "worker_bg.wasm", "demo.gpx", "evidence.json", "offline.js"] {
                assert!(!dist.join(old).exists(), "{old}");
            }
            let demo = part(&html, "demo-file\" content=\"./");
            assert_eq!(text(dist, demo), "<gpx/>");
            let (kept, taught) = (text(dist, "sw.js"), text(dist, "class.html"));
            assert!(!html.contains("lesson-"), "only the class view names the teaching roads: {html}");
            for (at, lesson) in LESSONS.iter().enumerate() {
                assert!(!dist.join(format!("{lesson}.gpx")).exists(), "{lesson}");
                let file = part(&taught, &format!("{lesson}\" content=\"./"));
                assert!(file.starts_with(lesson) && file.ends_with(".gpx"), "{file}");
                assert_eq!(text(dist, file), format!("<gpx>{}</gpx>", at + 1));
                assert_eq!(kept.matches(&format!("./{file}")).count(), 1, "{kept}");
            }
            assert!(html.contains(&format!("src=\"./offline-{}.js\"", short_hash(b"keep();"))), "{html}");
            found = vec![String::from(script), String::from(module), String::from(demo)];
        });
        found
    };
    let first = names("names-1", "one");
    let second = names("names-2", "two");
    assert_eq!(first, names("names-3", "one"));
    assert_ne!(first[0], second[0]);
    assert_ne!(first[1], second[1]);
    assert_eq!(first[2], second[2]);
}

#[test]
fn the_one_file_holds_everything_and_names_nothing_beside_it() {
    check("one-file", &[], |dist, outcome| {
        assert_eq!(outcome, Ok(()));
        let html = text(dist, "standalone.html");
        for held in [
            // Base64 of the texts, from `printf page | base64` and the like.
            "<script type=\"text/plain\" data-module>cGFnZQ==</script>",
            "module_or_path: Uint8Array.from(atob(\"d29ya2Vy\")",
            "module_or_path: Uint8Array.from(atob(\"c3R1ZHk=\")",
            "url(\"data:font/woff2;base64,ZmFjZQ==\")",
            "href=\"data:image/svg+xml;base64,PHN2Zy8+\"",
            "data-for=\"demo-file\" data-type=\"application/gpx+xml\"><gpx/></script>",
            "data-for=\"evidence-file\" data-type=\"application/json\">[]</script>",
            "function __wbg_init()",
            "<meta name=\"worker-script\" content=\"\">",
            "<script>show();</script>",
        ] {
            assert_eq!(html.matches(held).count(), 1, "{held} in {html}");
        }
        for gone in ["\"./", "lesson-", "manifest", "preload", "offline", "standalone-file"] {
            assert!(!html.contains(gone), "{gone} in {html}");
        }
        let served = text(dist, "index.html");
        assert!(served.contains("<meta name=\"standalone-file\" content=\"./standalone.html\">"));
    });
}

#[test]
fn what_the_one_file_cannot_hold_is_an_error() {
    let wrong = [
        ("link", "index.html", PAGE.replace("\"modulepreload\"", "\"alternate\"")),
        ("start", "index.html", PAGE.replace("module_or_path", "path")),
        ("style", "main-1.css", String::from("a { src: url(\"https://elsewhere.invalid/a\"); }")),
        ("import", "app-1.js", String::from("import { a } from './snippets/a.js';")),
        ("script", "evidence.json", String::from("[\"</SCRIPT >\"]")),
        ("missing", "index.html", PAGE.replace("demo-file", "demo")),
    ];
    for (name, file, contents) in wrong {
        check(name, &[(file, &contents)], |_, outcome| assert!(outcome.is_err(), "{name}"));
    }
}

#[test]
fn a_page_without_the_expected_tags_is_refused() {
    assert!(put_worker("<head></head>", "worker", "w.js").is_err());
    assert!(put_once("a a", "a", "b").is_err());
}

#[test]
fn each_language_has_its_page_module_and_one_file() {
    check("languages", &[], |dist, outcome| {
        assert_eq!(outcome, Ok(()));
        let english = text(dist, "index.html");
        assert!(english.contains("content=\"en=./ es=./es.html fr=./fr.html de=./de.html\""), "{english}");
        for (tag, module) in [("es", "es-2"), ("fr", "fr-3"), ("de", "de-4")] {
            let page = text(dist, &format!("{tag}.html"));
            assert!(page.contains(&format!("<html lang=\"{tag}\">")), "{page}");
            assert!(page.contains(&format!("GLUE = \"./{module}.js\"")) && !page.contains("app-1"), "{page}");
            assert!(!page.contains("<title>The page</title>") && !page.contains("What it is."), "{page}");
            assert!(page.contains(&format!("content=\"./standalone-{tag}.html\"")), "{page}");
            assert_eq!(
                part(&page, "worker-script\" content=\""),
                part(&english, "worker-script\" content=\"")
            );
            let one_file = text(dist, &format!("standalone-{tag}.html"));
            assert!(!one_file.contains("name=\"languages\""), "a file on a stick has no pages beside it");
        }
    });
}

#[test]
fn the_class_view_is_a_page_beside_and_nothing_of_it_is_in_the_others() {
    check("class", &[], |dist, outcome| {
        assert_eq!(outcome, Ok(()));
        for (road, class, module, back) in [
            ("index.html", "class.html", "class-en-5", "./"),
            ("fr.html", "class-fr.html", "class-fr-7", "./fr.html"),
        ] {
            let taught = text(dist, class);
            assert!(taught.contains(&format!("GLUE = \"./{module}.js\"")), "{taught}");
            assert!(taught.contains("needs-script") && !taught.contains("parked"), "{taught}");
            assert!(!taught.contains("app-1") && !taught.contains("fr-3"), "{taught}");
            assert!(taught.contains("href=\"./class-1.css\""), "{taught}");
            assert!(taught.contains(&format!("name=\"road-page\" content=\"{back}\"")), "{taught}");
            let one_file = text(dist, &format!("standalone-{class}"));
            let lesson =
                "data-for=\"lesson-hairpins\" data-type=\"application/gpx+xml\"><gpx>5</gpx></script>";
            assert_eq!(one_file.matches(lesson).count(), 1, "{one_file}");
            assert!(!one_file.contains("\"./") && one_file.contains("color: red"), "{one_file}");
            let road = text(dist, road);
            assert!(road.contains(&format!("name=\"class-page\" content=\"./{class}\"")), "{road}");
            assert!(!road.contains("class-1.css") && !road.contains(module), "{road}");
        }
        let worker = text(dist, "sw.js");
        assert!(worker.lines().any(|line| line.contains("./class-de.html") && line.contains("\"class-de\"")));
        assert!(worker.lines().any(|line| line.contains("./class-en-5.js") && line.contains("\"class-en\"")));
        assert!(
            worker.lines().any(|line| line.contains("./class-1.css") && line.ends_with("\"],")),
            "{worker}"
        );
    });
}

#[test]
fn the_start_knows_how_many_bytes_each_module_has() {
    check("start", &[], |dist, outcome| {
        assert_eq!(outcome, Ok(()));
        // `página` has a letter of two bytes.
        for (page, module, bytes) in
            [("index.html", "app-1", 4), ("es.html", "es-2", 7), ("class-de.html", "class-de-8", 4)]
        {
            let html = text(dist, page);
            for line in [
                format!("const GLUE = \"./{module}.js\";"),
                format!("const MODULE = \"./{module}_bg.wasm\";"),
                format!("const BYTES = {bytes};"),
            ] {
                assert_eq!(html.matches(&line).count(), 1, "{line} in {html}");
            }
            assert!(!html.contains("module_or_path: './"), "{html}");
        }
    });
}

#[test]
fn what_is_said_before_the_program_runs_is_said_in_each_language() {
    check("words", &[], |dist, outcome| {
        assert_eq!(outcome, Ok(()));
        for (page, parked) in [
            ("es.html", "Estoy estacionado"),
            ("fr.html", "Je suis en stationnement"),
            ("de.html", "Ich parke"),
        ] {
            let html = text(dist, page);
            assert!(
                html.contains(&format!("data-words=\"i-am-parked\" id=\"parked\">{parked}</button>")),
                "{html}"
            );
            assert!(!html.contains("Parked?") && !html.contains("Needs it."), "{html}");
        }
    });
    let unknown = PAGE.replace("needs-script", "no-such-message");
    check("unknown-words", &[("index.html", &unknown)], |_, outcome| assert!(outcome.is_err()));
}

#[test]
fn what_says_that_a_page_is_not_kept_is_kept_with_each_language() {
    check("absent", &[], |dist, outcome| {
        assert_eq!(outcome, Ok(()));
        let worker = text(dist, "sw.js");
        for (tag, name, road) in [("en", "absent.html", "./"), ("fr", "absent-fr.html", "./fr.html")] {
            let page = text(dist, name);
            assert!(page.contains(&format!("<html lang=\"{tag}\">")), "{page}");
            assert!(
                page.contains(&format!("href=\"{road}\"")) && page.contains("style-src 'self' 'sha256-"),
                "{page}"
            );
            let ours =
                |line: &str| line.contains(&format!("./{name}")) && line.ends_with(&format!("\"{tag}\"],"));
            assert!(worker.lines().any(ours), "{worker}");
        }
    });
}

#[test]
fn a_page_without_its_language_is_refused() {
    let page = PAGE.replace("<html lang=\"en\">", "<html>");
    check("no-language", &[("index.html", &page)], |_, outcome| assert!(outcome.is_err()));
}

/// What `trunk serve` shows is what the English catalogue says.
#[test]
fn the_english_page_has_the_texts_of_its_catalogue() {
    let html = fs::read_to_string(crate::project::root().join("app/index.html")).expect("the page");
    let texts = languages::Texts::read().expect("catalogues without a mistake");
    assert_eq!(texts.put(&html, ENGLISH).expect("a place for each"), html);
    let spanish = texts.put(&html, "es").expect("a place for each");
    assert!(spanish.contains("<title>Steadygrade: cómo bajar cada pendiente</title>"), "{spanish}");
    assert!(texts.put(&html, "xx").is_err());
}

/// The glue of a page whose program has two parts, as the loader stands before it.
const GLUE_OF_PARTS: &str = "const PARTS = {\n\
      truck: [[\"app-truck-7.wasm\", \"sha256-t\"], [\"app-shared-8.wasm\", \"sha256-s\"]],\n};\n\
    export default function __wbg_init() {}";

#[test]
fn parts_are_kept_with_their_language_and_stand_in_the_one_file() {
    let files = [("app-1.js", GLUE_OF_PARTS), ("app-truck-7.wasm", "truck"), ("app-shared-8.wasm", "shared")];
    check("parts", &files, |dist, outcome| {
        assert_eq!(outcome, Ok(()));
        let worker = text(dist, "sw.js");
        for name in ["app-truck-7.wasm", "app-shared-8.wasm"] {
            let line = worker.lines().find(|line| line.contains(&format!("\"./{name}\"")));
            assert!(line.is_some_and(|line| line.ends_with("\"en\"],")), "{name} in {worker}");
        }
        let one_file = text(dist, "standalone.html");
        // Base64 of the texts, from `printf truck | base64` and the like.
        for block in ["data-part=\"app-truck-7.wasm\">dHJ1Y2s=<", "data-part=\"app-shared-8.wasm\">c2hhcmVk<"]
        {
            assert_eq!(one_file.matches(block).count(), 1, "{block} in {one_file}");
        }
        let spanish = text(dist, "standalone-es.html");
        assert!(!spanish.contains("<script type=\"text/plain\" data-part"), "{spanish}");
    });
}
