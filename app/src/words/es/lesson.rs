//! Spanish words of the teaching roads.

use super::Spanish;
use crate::lesson::Lesson;
use crate::words::{LessonNote, LessonWords};

impl LessonWords for Spanish {
    fn lessons_head(&self) -> &'static str {
        "Carreteras para la enseñanza"
    }
    fn lessons_invented(&self) -> &'static str {
        "Estas carreteras son inventadas, para enseñar; ninguna existe."
    }
    fn lessons_said_for(&self) -> &'static str {
        "Lo que ocurre se dice del primer camión de la lista en las condiciones habituales. Con otro camión o en otras condiciones cuenta lo que se calcula, no esta nota."
    }
    fn lesson_shows_label(&self) -> &'static str {
        "Lo que muestra"
    }
    fn lesson_believed_label(&self) -> &'static str {
        "Lo que se suele creer"
    }
    fn lesson_happens_label(&self) -> &'static str {
        "Lo que ocurre"
    }
    fn lesson_question_label(&self) -> &'static str {
        "Pregunta para la clase"
    }
    fn lesson(&self, lesson: Lesson) -> LessonNote {
        match lesson {
            Lesson::FalseFinish => LessonNote {
                name: "Falso final",
                shows: "Una pendiente larga se suaviza como si terminara, y después continúa más empinada.",
                believed: "Donde la carretera se allana, la bajada ha terminado y se puede cambiar a una marcha más alta.",
                happens: "Es una sola bajada. El tramo en que se suaviza es demasiado corto para cambiar a una marcha más alta y volver, y el tramo más empinado está detrás. El conjunto necesita una marcha más baja de la que necesitaría por sí sola la parte anterior.",
                question: "¿Dónde debe estar puesta ya la marcha baja, y qué habría podido avisar de ello antes de la cima?",
            },
            Lesson::ThreeSteps => LessonNote {
                name: "Tres escalones",
                shows: "Tres bajadas iguales, separadas por tramos llanos cortos.",
                believed: "Si la primera fue bien, la tercera irá igual de bien.",
                happens: "Con el ralentizador solo, las tres se bajan de la misma manera y los frenos de servicio siguen fríos. Donde se permiten frenadas cortas e intermitentes, cada bajada empieza con los frenos más calientes que la anterior, y la tercera ya no se puede tomar tan rápido como la primera. Por sí sola se podría.",
                question: "¿Qué calor de los frenos se puede admitir en la tercera cima, si aún debe quedar margen para una frenada fuerte hasta parar?",
            },
            Lesson::ShortAndSteep => LessonNote {
                name: "Corta y empinada",
                shows: "Una bajada corta y empinada, con una ciudad y un semáforo al pie.",
                believed: "Es tan corta que los frenos podrán con ella, en cualquier marcha.",
                happens: "De todas estas carreteras, la bajada más corta es la que necesita la marcha más baja y la velocidad más baja. Aquí la marcha la decide la pendiente, no la longitud.",
                question: "El semáforo del pie se pone en rojo, y la marcha elegida es demasiado alta. ¿Qué le queda al conductor?",
            },
            Lesson::LongAndGentle => LessonNote {
                name: "Larga y suave",
                shows: "Una pendiente suave que continúa durante muchos kilómetros.",
                believed: "Una pendiente tan suave es inofensiva: la marcha más alta, y los frenos de vez en cuando.",
                happens: "Con la reserva pedida, el ralentizador solo retiene el vehículo por debajo de la marcha más alta y por debajo del límite de velocidad habitual. En la marcha más alta y a ese límite, solo con los frenos de servicio, estos se calientan por encima de su límite. En la bajada corta y empinada, lo mismo los calentaría menos, porque el desnivel es mucho menor; también allí sería un error.",
                question: "¿Qué produce más calor: lo empinada que es una bajada o el desnivel que tiene? ¿Y adónde va ese calor?",
            },
            Lesson::Hairpins => LessonNote {
                name: "Curvas de herradura",
                shows: "Una pendiente moderada con una curva de herradura tras otra.",
                believed: "La pendiente por sí sola decide la marcha y la velocidad.",
                happens: "Aquí deciden las curvas. Sin ellas, la misma pendiente se bajaría más rápido y en una marcha más alta. El ralentizador solo retiene el vehículo en la pendiente, pero para reducir la velocidad antes de las curvas de herradura hacen falta también los frenos de servicio, y se calientan más que en la misma pendiente sin curvas.",
                question: "¿Debe ir lento el camión antes de la curva de herradura o solo dentro de ella? ¿Y en qué marcha gira todavía bien el motor allí?",
            },
        }
    }
}
