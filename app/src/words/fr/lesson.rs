//! French words of the teaching roads.

use super::French;
use crate::lesson::Lesson;
use crate::words::{LessonNote, LessonWords};

impl LessonWords for French {
    fn lessons_head(&self) -> &'static str {
        "Routes d’enseignement"
    }
    fn lessons_invented(&self) -> &'static str {
        "Ces routes sont inventées pour l’enseignement\u{a0}; aucune n’existe."
    }
    fn lessons_said_for(&self) -> &'static str {
        "Ce qui se passe vaut pour le premier véhicule de la liste, dans les conditions habituelles. Avec un autre véhicule ou dans d’autres conditions, c’est ce qui est calculé qui compte, pas cette note."
    }
    fn lesson_shows_label(&self) -> &'static str {
        "Ce qu’elle montre"
    }
    fn lesson_believed_label(&self) -> &'static str {
        "Ce que l’on croit souvent"
    }
    fn lesson_happens_label(&self) -> &'static str {
        "Ce qui se passe"
    }
    fn lesson_question_label(&self) -> &'static str {
        "Question à la classe"
    }
    fn lesson(&self, lesson: Lesson) -> LessonNote {
        match lesson {
            Lesson::FalseFinish => LessonNote {
                name: "Fausse fin",
                shows: "Une longue pente s’adoucit comme si elle était finie, puis continue, plus raide.",
                believed: "Là où la route s’aplatit, la descente est finie et l’on peut passer au rapport supérieur.",
                happens: "C’est une seule descente. L’endroit où la pente s’adoucit est trop court pour passer au rapport supérieur et revenir, et la partie la plus raide se trouve derrière. L’ensemble demande un rapport plus bas que la partie d’avant ne le demanderait à elle seule.",
                question: "Où le rapport bas doit-il être engagé, et qu’est-ce qui aurait pu l’annoncer avant le sommet\u{a0}?",
            },
            Lesson::ThreeSteps => LessonNote {
                name: "Trois marches",
                shows: "Trois descentes semblables, séparées par de courts tronçons plats.",
                believed: "Si la première s’est bien passée, la troisième se passera aussi bien.",
                happens: "Avec le ralentisseur seul, les trois se descendent de la même façon, et les freins de service restent froids. Là où le freinage intermittent est permis, chaque descente commence avec des freins plus chauds que la précédente, et la troisième ne peut plus être prise aussi vite que la première. À elle seule, elle le pourrait.",
                question: "Quelle chaleur des freins est encore acceptable au troisième sommet, s’il doit rester de quoi faire un freinage énergique jusqu’à l’arrêt\u{a0}?",
            },
            Lesson::ShortAndSteep => LessonNote {
                name: "Courte et raide",
                shows: "Une descente courte et raide, avec une ville et des feux à son pied.",
                believed: "Elle est si courte que les freins y suffiront, quel que soit le rapport.",
                happens: "De toutes ces routes, c’est la descente la plus courte qui demande le rapport le plus bas et la vitesse la plus basse. Ici, c’est la pente qui décide du rapport, pas la longueur.",
                question: "Les feux passent au rouge au pied de la descente, et le rapport choisi est trop haut. Que reste-t-il au conducteur\u{a0}?",
            },
            Lesson::LongAndGentle => LessonNote {
                name: "Longue et douce",
                shows: "Une pente douce qui continue très longtemps.",
                believed: "Une pente si douce est sans danger\u{a0}: le rapport le plus haut, et les freins de temps en temps.",
                happens: "Avec la réserve demandée, le ralentisseur ne retient le véhicule qu’au-dessous du rapport le plus haut et au-dessous de la limitation de vitesse habituelle. Au rapport le plus haut et à cette vitesse, avec les freins de service seuls, ceux-ci deviennent plus chauds que leur limite. Sur la descente courte et raide, la même conduite les chaufferait moins, parce que le dénivelé y est bien plus faible\u{a0}; elle y serait tout aussi mauvaise.",
                question: "Qu’est-ce qui fait le plus de chaleur\u{a0}: la pente ou le dénivelé\u{a0}? Et où va cette chaleur\u{a0}?",
            },
            Lesson::Hairpins => LessonNote {
                name: "Épingles",
                shows: "Une pente modérée, avec un virage en épingle après l’autre.",
                believed: "La pente seule décide du rapport et de la vitesse.",
                happens: "Ici, ce sont les virages qui décident. Sans eux, la même pente se descendrait plus vite, à un rapport plus haut. Le ralentisseur seul retient le véhicule dans la pente, mais pour ralentir avant les épingles il faut aussi les freins de service, et ils deviennent plus chauds que sur la même pente sans virages.",
                question: "Le véhicule doit-il être lent avant l’épingle ou seulement dedans\u{a0}? Et à quel rapport le moteur y tourne-t-il encore sans peiner\u{a0}?",
            },
        }
    }
}
