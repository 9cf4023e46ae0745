//! English words of the teaching roads.

use super::English;
use crate::lesson::Lesson;
use crate::words::{LessonNote, LessonWords};

impl LessonWords for English {
    fn lessons_head(&self) -> &'static str {
        "Teaching roads"
    }
    fn lessons_invented(&self) -> &'static str {
        "These roads are invented for teaching; none of them exists."
    }
    fn lessons_said_for(&self) -> &'static str {
        "What happens is said of the first truck in the list on the usual day. With another truck, or on another day, what is worked out counts, not this note."
    }
    fn lesson_shows_label(&self) -> &'static str {
        "What it shows"
    }
    fn lesson_believed_label(&self) -> &'static str {
        "What is often believed"
    }
    fn lesson_happens_label(&self) -> &'static str {
        "What happens"
    }
    fn lesson_question_label(&self) -> &'static str {
        "To ask the class"
    }
    fn lesson(&self, lesson: Lesson) -> LessonNote {
        match lesson {
            Lesson::FalseFinish => LessonNote {
                name: "False finish",
                shows: "A long grade eases as if it were over, and then goes on steeper.",
                believed: "Where the road flattens the descent is over, and one can shift up.",
                happens: "It is one descent. The easing is too short to shift up and down again, and the steepest part lies behind it. The whole needs a lower gear than the part before the easing would need by itself.",
                question: "Where must the low gear be engaged, and what could have told the driver so before the crest?",
            },
            Lesson::ThreeSteps => LessonNote {
                name: "Three steps",
                shows: "Three like steps with short level stretches between them.",
                believed: "If the first step went well, the third will go just as well.",
                happens: "With the retarder alone all three are held in the same way, and the service brakes stay cool. Where snubs are allowed, each step begins with warmer brakes than the one before, and the third can no longer be taken as fast as the first. By itself it could.",
                question: "How warm may the brakes be at the third crest if one hard stop must still be left?",
            },
            Lesson::ShortAndSteep => LessonNote {
                name: "Short and steep",
                shows: "A short, steep hill with a town and a signal at its foot.",
                believed: "It is so short that the brakes will manage it, whatever the gear.",
                happens: "Of all these roads the shortest descent needs the lowest gear and the lowest speed. Here the steepness decides the gear, not the length.",
                question: "The signal at the foot turns red, and the gear was chosen too high. What is left to the driver?",
            },
            Lesson::LongAndGentle => LessonNote {
                name: "Long and gentle",
                shows: "A gentle grade that goes on for a very long way.",
                believed: "So gentle a grade is harmless: top gear, and the brakes now and then.",
                happens: "With the reserve asked for, the retarder holds it only below the top gear and below the usual speed limit. In top gear at that limit, on the service brakes alone, they get hotter than their limit. On the short steep hill the same would heat them less, because far less height is lost there; it would be wrong there too.",
                question: "Which makes more heat: how steep a hill is, or how much height it loses? And where does that heat go?",
            },
            Lesson::Hairpins => LessonNote {
                name: "Hairpins",
                shows: "A moderate grade with one hairpin after another.",
                believed: "The grade alone decides gear and speed.",
                happens: "Here the curves decide. Without them the same grade would be held at a higher speed in a higher gear. The retarder holds the grade alone, but slowing for the hairpins takes the service brakes as well, and they get warmer than on the same grade without curves.",
                question: "Must the truck be slow before the hairpin or in it? And in which gear does the engine still turn over there?",
            },
        }
    }
}
