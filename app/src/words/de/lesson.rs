//! German words of the teaching roads.

use super::German;
use crate::lesson::Lesson;
use crate::words::{LessonNote, LessonWords};

impl LessonWords for German {
    fn lessons_head(&self) -> &'static str {
        "Lehrstrecken"
    }
    fn lessons_invented(&self) -> &'static str {
        "Diese Strecken sind für den Unterricht erfunden; keine davon gibt es wirklich."
    }
    fn lessons_said_for(&self) -> &'static str {
        "Was geschieht, gilt für das erste Fahrzeug der Liste unter den üblichen Bedingungen. Bei einem anderen Fahrzeug oder unter anderen Bedingungen gilt, was berechnet wird, nicht dieser Text."
    }
    fn lesson_shows_label(&self) -> &'static str {
        "Was sie zeigt"
    }
    fn lesson_believed_label(&self) -> &'static str {
        "Was oft geglaubt wird"
    }
    fn lesson_happens_label(&self) -> &'static str {
        "Was geschieht"
    }
    fn lesson_question_label(&self) -> &'static str {
        "Frage an die Klasse"
    }
    fn lesson(&self, lesson: Lesson) -> LessonNote {
        match lesson {
            Lesson::FalseFinish => LessonNote {
                name: "Falsches Ende",
                shows: "Ein langes Gefälle lässt nach, als wäre es zu Ende, und geht dann steiler weiter.",
                believed: "Wo die Straße flacher wird, ist das Gefälle zu Ende, und man kann hochschalten.",
                happens: "Es ist eine einzige Gefällestrecke. Die Stelle, an der das Gefälle nachlässt, ist zu kurz, um hoch- und wieder herunterzuschalten, und das steilste Stück liegt dahinter. Das Ganze braucht einen niedrigeren Gang, als ihn der Teil davor für sich allein brauchte.",
                question: "Wo muss der niedrige Gang eingelegt sein, und woran hätte man das vor der Kuppe erkennen können?",
            },
            Lesson::ThreeSteps => LessonNote {
                name: "Drei Stufen im Gelände",
                shows: "Drei gleiche Gefällestrecken mit kurzen ebenen Stücken dazwischen.",
                believed: "Ging das erste Gefälle gut, so geht das dritte ebenso gut.",
                happens: "Mit der Dauerbremse allein lassen sich alle drei auf gleiche Weise hinunterfahren, und die Betriebsbremse bleibt kühl. Wo Intervallbremsungen erlaubt sind, beginnt jedes Gefälle mit wärmeren Bremsen als das davor, und das dritte kann nicht mehr so schnell gefahren werden wie das erste. Für sich allein könnte es das.",
                question: "Wie warm dürfen die Bremsen an der dritten Kuppe sein, wenn noch eine kräftige Bremsung bis zum Stillstand möglich sein muss?",
            },
            Lesson::ShortAndSteep => LessonNote {
                name: "Kurz und steil",
                shows: "Ein kurzes, steiles Gefälle mit einer Stadt und einer Ampel am Fuß.",
                believed: "Es ist so kurz, dass die Bremsen damit fertig werden, gleich in welchem Gang.",
                happens: "Von allen diesen Strecken braucht das kürzeste Gefälle den niedrigsten Gang und die niedrigste Geschwindigkeit. Hier entscheidet die Steilheit über den Gang, nicht die Länge.",
                question: "Die Ampel am Fuß wird rot, und der Gang ist zu hoch gewählt. Was bleibt dann noch?",
            },
            Lesson::LongAndGentle => LessonNote {
                name: "Lang und sanft",
                shows: "Ein sanftes Gefälle, das sehr lange nicht aufhört.",
                believed: "Ein so sanftes Gefälle ist harmlos: höchster Gang, und ab und zu die Bremse.",
                happens: "Mit der verlangten Reserve hält die Dauerbremse das Fahrzeug nur unterhalb des höchsten Gangs und unter der üblichen Höchstgeschwindigkeit. Im höchsten Gang bei dieser Geschwindigkeit, mit der Betriebsbremse allein, werden die Bremsen heißer als zulässig. Auf dem kurzen steilen Gefälle würden sie auf dieselbe Weise weniger heiß, weil es dort viel weniger Höhe verliert; falsch wäre es auch dort.",
                question: "Was macht mehr Hitze: wie steil ein Gefälle ist oder wie viel Höhe es verliert? Und wohin geht diese Hitze?",
            },
            Lesson::Hairpins => LessonNote {
                name: "Kehren",
                shows: "Ein mäßiges Gefälle mit einer Kehre nach der anderen.",
                believed: "Allein die Neigung entscheidet über Gang und Geschwindigkeit.",
                happens: "Hier entscheiden die Kurven. Ohne sie ließe sich dasselbe Gefälle schneller und in einem höheren Gang hinunterfahren. Die Dauerbremse allein hält das Fahrzeug im Gefälle, aber zum Abbremsen vor den Kehren braucht es auch die Betriebsbremse, und die Bremsen werden wärmer als auf demselben Gefälle ohne Kurven.",
                question: "Muss das Fahrzeug schon vor der Kehre langsam sein oder erst darin? Und in welchem Gang dreht der Motor dort noch rund?",
            },
        }
    }
}
