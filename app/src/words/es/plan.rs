//! Spanish words of the answer: verdicts, the list, cautions.

use super::{Spanish, minutes};
use crate::words::PlanWords;
use solver::day::{Day, ServiceBrakes};
use solver::plan::{HeatStep, Verdict};

impl PlanWords for Spanish {
    fn verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "el ralentizador lo retiene",
            Verdict::LittleInReserve => "lo retiene, con poca reserva",
            Verdict::NeedsServiceBrakes => "necesita los frenos de servicio",
            Verdict::NoSafeSpeed => "no se encontró velocidad segura",
        }
    }
    fn engine_holds(&self) -> &'static str {
        "lo retiene el motor solo"
    }
    fn engine_holds_little(&self) -> &'static str {
        "lo retiene el motor solo, con poca reserva"
    }
    fn holds_on_average(&self) -> &'static str {
        "lo retiene en promedio"
    }
    fn brakes_touch(&self) -> &'static str {
        "lo retiene, los frenos de servicio actúan un poco"
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        match step {
            HeatStep::Cool => "fríos",
            HeatStep::Warm => "templados",
            HeatStep::Hot => "calientes",
            HeatStep::OverLimit => "por encima del límite",
        }
    }
    fn stage_number(&self, number: usize) -> String {
        format!("posición {number}")
    }
    fn retarder_off(&self) -> &'static str {
        "ralentizador desconectado"
    }
    fn off(&self) -> &'static str {
        "desconectado"
    }
    fn in_legs(&self, [from, to]: [u8; 2], stage: &str, [slow, fast]: [&str; 2]) -> String {
        format!("marchas {from} a {to}, {stage} en la más baja, de {slow} a {fast}")
    }
    fn gear_number(&self, number: u8) -> String {
        format!("marcha {number}")
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "En las partes que se pudieron evaluar, ninguna pendiente exige una marcha ni una posición del ralentizador."
        } else {
            "En este sentido, ninguna pendiente de esta carretera exige una marcha ni una posición del ralentizador."
        }
    }
    fn along_label(&self) -> &'static str {
        "Cada bajada tiene su propia marcha, desde su cima en el punto:"
    }
    fn no_safe_speed(&self) -> &'static str {
        "no se encontró ninguna velocidad segura"
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
    fn mass_out_of_range(&self) -> &'static str {
        "Esa masa está fuera de los límites admitidos."
    }
    fn heat_label(&self) -> &'static str {
        "Frenos de servicio"
    }
    fn brakes_at(&self, hottest: &str, after_stop: &str, limit: &str) -> String {
        format!(
            "Aproximadamente {hottest} en el momento más caliente; {after_stop} tras una frenada fuerte hasta parar (límite: {limit})."
        )
    }
    fn snub_between(&self, from: &str, to: &str, on: &str, off: &str, count: u32) -> String {
        format!(
            "Frenadas cortas e intermitentes: al llegar a {from}, frene hasta {to} en aproximadamente {on} s, suelte el freno y repita después de aproximadamente {off} s donde la bajada exige más; en total, aproximadamente {}. No baje pisando el freno de forma continua.",
            if count == 1 { "1 frenada".to_owned() } else { format!("{} frenadas", count) }
        )
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
            "exige",
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
