//! Spanish words of the answer: verdict, deciding sentence, what governs, cautions.

use super::plan_detail::{self as detail, stage_name};
use super::why;
use super::{Spanish, minutes};
use crate::format::{self, Units};
use crate::words::{Curves, Piece, PlanWords};
use solver::day::{Day, ServiceBrakes};
use solver::motion::{Answer, Unusable};
use solver::plan::{Advice, Choice, Descent, HeatStep, Note, Totals, Verdict};
use solver::truck::Stage;

fn plain(text: impl Into<String>) -> Piece {
    Piece::Plain(text.into())
}

fn strong(text: impl Into<String>) -> Piece {
    Piece::Strong(text.into())
}

impl PlanWords for Spanish {
    fn verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "el ralentizador lo retiene",
            Verdict::LittleInReserve => "lo retiene, con poca reserva",
            Verdict::NeedsServiceBrakes => "necesita los frenos de servicio",
            Verdict::NoSafeSpeed => "no se encontró velocidad segura",
        }
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        match step {
            HeatStep::Cool => "fríos",
            HeatStep::Warm => "templados",
            HeatStep::Hot => "calientes",
            HeatStep::OverLimit => "por encima del límite",
        }
    }
    fn stage(&self, stage: Stage) -> String {
        stage_name(stage)
    }
    fn decides(&self, descent: &Descent, count: usize, units: Units) -> Vec<Piece> {
        let (place, crest) = if descent.from == 0 {
            (" desde el ", "inicio de la carretera".to_owned())
        } else {
            (" desde la cima en el punto ", format::distance(descent.crest.0, units))
        };
        let opening = if count == 1 {
            "La bajada: ".to_owned()
        } else {
            format!("Decide la bajada {} de {count}: ", descent.number)
        };
        match &descent.choice {
            Choice::Held(advice) => vec![
                plain(opening),
                strong(format!("marcha {}", advice.gear.number())),
                plain(", "),
                strong(stage_name(advice.stage)),
                plain(", mantenga "),
                strong(format::hold_speed(advice.speed.0, units)),
                plain(place),
                strong(crest),
                plain("."),
            ],
            Choice::NoSafeSpeed(_) => vec![
                plain(opening),
                strong("no se encontró ninguna velocidad segura"),
                plain(place),
                strong(crest),
                plain(". Con los datos introducidos, no baje por ella con este camión."),
            ],
        }
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "En las partes que se pudieron evaluar, ninguna pendiente exige una marcha ni una posición del ralentizador."
        } else {
            "Ninguna pendiente de esta carretera exige una marcha ni una posición del ralentizador."
        }
    }
    fn chosen_for(&self, descent: &Descent, units: Units) -> String {
        let sustained = descent.sustained;
        let grade = format!(
            "el tramo más empinado: {}, {}, desde el punto {}",
            format::length(sustained.length.0, units),
            format::grade(sustained.grade.0),
            format::distance(sustained.from.0, units)
        );
        match &descent.choice {
            Choice::Held(_) => format!(
                "Ponga la marcha antes de la cima y consérvela hasta el pie de la bajada, en el punto {}. Se ha elegido para {grade}.",
                format::distance(descent.foot.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("Lo que impide esta bajada es {grade}."),
        }
    }
    fn along_label(&self) -> &'static str {
        "Cada bajada tiene su propia marcha, desde su cima en el punto:"
    }
    fn along(&self, descent: &Descent, units: Units) -> String {
        let crest = format::distance(descent.crest.0, units);
        match &descent.choice {
            Choice::Held(advice) => format!(
                "{crest}: marcha {}, {}, {}",
                advice.gear.number(),
                stage_name(advice.stage),
                format::hold_speed(advice.speed.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("{crest}: no se encontró ninguna velocidad segura"),
        }
    }
    fn along_more(&self, count: usize) -> String {
        format!("y {count} más en la lista de abajo")
    }
    fn governs_label(&self) -> &'static str {
        "Por qué no más rápido"
    }
    fn governs(&self, descent: &Descent, day: &Day, units: Units) -> String {
        match &descent.choice {
            Choice::Held(advice) => why::governs(advice, day, units),
            Choice::NoSafeSpeed(none) => why::no_speed(none, day, units),
        }
    }
    fn other_mode_label(&self, day: &Day) -> &'static str {
        match day.service_brakes {
            ServiceBrakes::InReserve => "Si permitiera frenadas cortas e intermitentes",
            ServiceBrakes::MaySnub => "Con los frenos de servicio en reserva",
        }
    }
    fn same_choice(&self) -> &'static str {
        "La misma marcha, la misma posición y la misma velocidad."
    }
    fn choice_apart(&self, choice: &str, more_s: f64) -> String {
        let change = if more_s < 0.0 { "menos" } else { "más" };
        format!("{choice}; diferencia de tiempo: {} {change}.", minutes(more_s.abs()))
    }
    fn heavier_label(&self) -> &'static str {
        "Si pesa un 10 % más"
    }
    fn heavier(&self, heavier: Option<&Choice>, units: Units) -> String {
        match heavier {
            Some(choice) => format!("{}.", self.choice(choice, units)),
            None => "Esa masa está fuera de los límites admitidos.".to_owned(),
        }
    }
    fn heat_label(&self) -> &'static str {
        "Frenos de servicio"
    }
    fn brake_heat(&self, advice: &Advice, day: &Day, units: Units) -> String {
        format!(
            "Aproximadamente {} en el momento más caliente; {} tras una frenada fuerte hasta parar (límite: {}).",
            format::temperature(advice.hottest.0, units),
            format::temperature(advice.hottest_after_stop.0, units),
            format::entered_temperature(day.heat_limit_c, units)
        )
    }
    fn snub(&self, advice: &Advice, units: Units) -> Option<String> {
        advice.snub.map(|snub| {
            format!(
                "Frenadas cortas e intermitentes: al llegar a {}, frene hasta {} en aproximadamente {:.0} s, suelte el freno y repita después de aproximadamente {:.0} s en la parte más empinada; en total, aproximadamente {}. No baje pisando el freno de forma continua.",
                format::hold_speed(snub.from.0, units),
                format::hold_speed(snub.to.0, units),
                snub.on.0,
                snub.off.0,
                if snub.count == 1 { "1 frenada".to_owned() } else { format!("{} frenadas", snub.count) }
            )
        })
    }
    fn choice(&self, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(advice) => format!(
                "Marcha {}, {}, {}: {}",
                advice.gear.number(),
                stage_name(advice.stage),
                format::hold_speed(advice.speed.0, units),
                self.verdict(advice.verdict)
            ),
            Choice::NoSafeSpeed(_) => "No se encontró ninguna velocidad segura".to_owned(),
        }
    }
    fn parked(&self) -> &'static str {
        "Planifique con el vehículo estacionado. No lo use mientras conduce."
    }
    fn cautions(&self) -> &'static [&'static str] {
        &[
            "Una ayuda para planificar y enseñar: no es una instrucción ni la aprobación de una carretera.",
            "Calculado con sus datos y con altitudes grabadas, que contienen errores.",
            "No puede ver el ajuste de los frenos, los neumáticos, la calzada, el estado del tiempo, el tráfico, los cierres de carretera ni cómo va colocada la carga.",
            "Tienen prioridad las señales, la ley, las normas de su empresa y los límites del fabricante.",
            "Los frenos de servicio siguen siendo el medio para parar.",
            "En caso de duda: pare arriba, vaya más despacio o tome otra carretera.",
        ]
    }
    fn note(&self, note: Note) -> &'static str {
        why::note(note)
    }
    fn descents_head(&self, count: usize) -> String {
        match count {
            0 => "Sin bajadas".to_owned(),
            1 => "1 bajada".to_owned(),
            _ => format!("{count} bajadas"),
        }
    }
    fn order(&self) -> &'static str {
        "Orden de la lista"
    }
    fn worst_first(&self) -> &'static str {
        "primero la peor"
    }
    fn road_order(&self) -> &'static str {
        "en el orden de la carretera"
    }
    fn columns(&self) -> [&'static str; 10] {
        [
            "bajada",
            "desde",
            "longitud",
            "desnivel",
            "pend. media",
            "pend. máxima",
            "marcha",
            "posición",
            "mantener",
            "tras parar",
        ]
    }
    fn descent(&self, number: usize) -> String {
        format!("Bajada {number}")
    }
    fn details_of(&self, number: usize) -> String {
        format!("Bajada {number}: detalles")
    }
    fn sign_label(&self) -> &'static str {
        "Como lo indicaría una señal"
    }
    fn sign(&self, grade: &str, length: &str) -> String {
        format!("{grade} en {length}")
    }
    fn advice_label(&self) -> &'static str {
        "Cómo bajar"
    }
    fn advice(&self, descent: &Descent, units: Units) -> String {
        detail::advice(descent, units)
    }
    fn way_label(&self) -> &'static str {
        "Posiciones durante la bajada"
    }
    fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String {
        format!("{}: {}", format::span(from_m, to_m, units), stage_name(stage))
    }
    fn relief_label(&self) -> &'static str {
        "Dónde se suaviza"
    }
    fn relief(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!(
            "{}: llano o en subida a lo largo de {}. No cambie a una marcha más alta: la bajada continúa.",
            format::span(from_m, to_m, units),
            format::length(to_m - from_m, units)
        )
    }
    fn grades_label(&self) -> &'static str {
        "Qué pendiente tiene"
    }
    fn grades(&self, descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
        detail::grades(descent, base_m, units)
    }
    fn curves_label(&self) -> &'static str {
        "Curvas"
    }
    fn curves(&self, curves: &Curves, units: Units) -> Vec<String> {
        detail::curves(curves, units)
    }
    fn climb_label(&self) -> &'static str {
        "Subir la misma pendiente"
    }
    fn climb(&self, descent: &Descent, units: Units) -> String {
        detail::climb(descent, units)
    }
    fn cut_short(&self) -> &'static str {
        "La bajada se corta donde la carretera ya no se puede evaluar. No se sabe cómo continúa."
    }
    fn at_crest(&self, descent: &Descent, units: Units) -> String {
        format!(
            "Los frenos llegan a la cima con aproximadamente {}.",
            format::temperature(descent.brakes_at_crest.0, units)
        )
    }
    fn table_caption(&self, descent: &Descent, units: Units) -> String {
        detail::caption(descent, units)
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["marcha", "velocidades utilizables", "reserva a la más alta"]
    }
    fn table_stage(&self, stage: usize) -> String {
        if stage == 0 { "desconectado".to_owned() } else { format!("posición {stage}") }
    }
    fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>) {
        detail::answer(answer, units)
    }
    fn unusable(&self, why: Unusable) -> &'static str {
        detail::unusable(why)
    }
    fn table_legend(&self) -> &'static [(&'static str, &'static str)] {
        detail::LEGEND
    }
    fn table_chosen(&self) -> &'static str {
        "aconsejada"
    }
    fn totals(&self, totals: &Totals, units: Units) -> String {
        detail::totals(totals, units)
    }
}
