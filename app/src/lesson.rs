//! The teaching roads: invented, built into the page, each with a note in
//! [`crate::tell::LessonNote`].
//!
//! What the notes say of them is held by `tests/property/lessons.rs`; the roads themselves are
//! made by `tests/src/generate/lessons.rs`.

/// A teaching road.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lesson {
    /// A long grade that eases as if it were over, and goes on steeper.
    FalseFinish,
    /// Three like steps with short reliefs: heat adds up.
    ThreeSteps,
    /// Short and steep into a town.
    ShortAndSteep,
    /// Long and gentle.
    LongAndGentle,
    /// Hairpins: the curves set the speed.
    Hairpins,
}

impl Lesson {
    /// All, in the order of teaching.
    pub const ALL: [Self; 5] =
        [Self::FalseFinish, Self::ThreeSteps, Self::ShortAndSteep, Self::LongAndGentle, Self::Hairpins];

    /// The `<meta>` by which the page names its file.
    #[must_use]
    pub fn file(self) -> &'static str {
        match self {
            Self::FalseFinish => "lesson-false-finish",
            Self::ThreeSteps => "lesson-three-steps",
            Self::ShortAndSteep => "lesson-short-and-steep",
            Self::LongAndGentle => "lesson-long-and-gentle",
            Self::Hairpins => "lesson-hairpins",
        }
    }

    /// The name of its file, without the hash that the build puts into it.
    #[must_use]
    pub fn file_name(self) -> &'static str {
        match self {
            Self::FalseFinish => "lesson-false-finish.gpx",
            Self::ThreeSteps => "lesson-three-steps.gpx",
            Self::ShortAndSteep => "lesson-short-and-steep.gpx",
            Self::LongAndGentle => "lesson-long-and-gentle.gpx",
            Self::Hairpins => "lesson-hairpins.gpx",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Lesson;
    use std::path::Path;

    /// The page, before the build.
    const PAGE: &str = include_str!("../index.html");

    #[test]
    fn each_is_named_once_in_the_page_and_lies_beside_it() {
        let public = Path::new(env!("CARGO_MANIFEST_DIR")).join("../public");
        for lesson in Lesson::ALL {
            let (file, name) = (lesson.file(), lesson.file_name());
            assert_eq!(name, format!("{file}.gpx"));
            let meta = format!("<meta name=\"{file}\" content=\"./{name}\">");
            assert_eq!(PAGE.matches(&meta).count(), 1, "{meta}");
            assert!(public.join(name).is_file(), "{name}");
        }
        assert_eq!(PAGE.matches("<meta name=\"lesson-").count(), Lesson::ALL.len());
    }
}
