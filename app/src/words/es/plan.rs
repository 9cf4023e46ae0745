//! Spanish words of the answer: verdict, deciding sentence, what governs, cautions.

use super::{Spanish, minutes};
use crate::format::{self, Units};
use crate::words::say::capital;
use crate::words::{Piece, PlanWords};
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Advice, Choice, Descent, HeatStep, Verdict};
use solver::truck::{Gear, Stage};

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
        if stage == Stage::OFF {
            "ralentizador desconectado".to_owned()
        } else {
            format!("posición {}", stage.number())
        }
    }
    fn gear(&self, gear: Gear) -> String {
        format!("marcha {}", gear.number())
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
                strong(self.gear(advice.gear)),
                plain(", "),
                strong(self.stage(advice.stage)),
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
            Choice::Held(advice) => format!("{crest}: {}", self.in_short(advice, units)),
            Choice::NoSafeSpeed(_) => format!("{crest}: no se encontró ninguna velocidad segura"),
        }
    }
    fn along_more(&self, count: usize) -> String {
        format!("y {count} más en la lista de abajo")
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
            Choice::Held(advice) => {
                let verdict = self.verdict(advice.verdict);
                format!("{}: {verdict}", capital(&self.in_short(advice, units)))
            }
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
}
