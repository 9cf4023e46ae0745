//! Spanish words of one descent's details and of its table.

use super::{Spanish, minutes};
use crate::format::{self, Units};
use crate::words::say::{capital, radius};
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::{Answer, Unusable};
use solver::plan::{Choice, Descent, Totals};
use solver::road::{Curve, Turn};
use solver::truck::Stage;

impl DescentWords for Spanish {
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
        let Choice::Held(advice) = &descent.choice else {
            return "No se encontró ninguna velocidad que respete los límites. Con los datos introducidos, no baje por ella con este camión."
                .to_owned();
        };
        let reserve = if advice.margin < 0.0 {
            format!(
                "En la posición máxima falta un {} de la retención necesaria en la parte más empinada: los frenos de servicio tienen que ayudar.",
                format::margin(-advice.margin)
            )
        } else {
            format!(
                "En la posición máxima hay un {} más de la retención necesaria en la parte más empinada.",
                format::margin(advice.margin)
            )
        };
        format!(
            "Marcha {}, como máximo {}, {} a {}. {reserve} {} desde la cima hasta el pie de la bajada.",
            advice.gear.number(),
            self.stage(advice.stage),
            format::hold_speed(advice.speed.0, units),
            format::engine_speed(advice.engine_speed.0),
            capital(&minutes(advice.time.0))
        )
    }
    fn way_label(&self) -> &'static str {
        "Posiciones durante la bajada"
    }
    fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String {
        format!("{}: {}", format::span(from_m, to_m, units), self.stage(stage))
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
        let mean = format!("Pendiente media: {}.", format::grade(descent.mean.0));
        let steepest = descent.steepest.iter().rev().map(|it| {
            let doubt = if it.length.0 < base_m {
                "; en una distancia tan corta las altitudes no son fiables"
            } else {
                ""
            };
            format!(
                "{} en el tramo más empinado de {}, desde el punto {}{doubt}.",
                format::grade(it.grade.0),
                format::length(it.length.0, units),
                format::distance(it.from.0, units)
            )
        });
        std::iter::once(mean).chain(steepest).collect()
    }
    fn curves_label(&self) -> &'static str {
        "Curvas"
    }
    fn curves(&self, curves: &Curves, units: Units) -> Vec<String> {
        let count = match (curves.count, curves.hairpins) {
            (1, 0) => "1 curva exige una velocidad menor que esta".to_owned(),
            (1, _) => "1 curva de herradura exige una velocidad menor que esta".to_owned(),
            (all, 0) => format!("{all} curvas exigen una velocidad menor que esta"),
            (all, 1) => format!("{all} curvas exigen una velocidad menor que esta, 1 de ellas de herradura"),
            (all, some) => {
                format!("{all} curvas exigen una velocidad menor que esta, {some} de ellas de herradura")
            }
        };
        let slowest = &curves.slowest;
        vec![
            format!("{count}. La más lenta: {}.", curve(&slowest.curve, slowest.speed.0, curves.at_m, units)),
            "Los radios son estimaciones a partir del recorrido; no se conocen el peralte, la visibilidad ni el estado de la calzada."
                .to_owned(),
        ]
    }
    fn climb_label(&self) -> &'static str {
        "Subir la misma pendiente"
    }
    fn climb(&self, descent: &Descent, units: Units) -> String {
        match descent.climbs_in {
            Some((gear, speed)) => format!(
                "Con el acelerador a fondo la sube en la marcha {} a aproximadamente {}. La marcha para bajar es a menudo más baja.",
                gear.number(),
                format::met_speed(speed.0, units)
            ),
            None => "Con el acelerador a fondo no la sube en ninguna marcha.".to_owned(),
        }
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
        format!(
            "Qué hace cada marcha y posición con una pendiente de {} a {} sobre el nivel del mar, sin acelerador y sin los frenos de servicio",
            format::grade(descent.table.grade.0),
            format::height(descent.table.height.0, units)
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["marcha", "velocidades utilizables", "reserva a la más alta"]
    }
    fn table_stage(&self, stage: usize) -> String {
        if stage == 0 { "desconectado".to_owned() } else { format!("posición {stage}") }
    }
    fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>) {
        match answer {
            Answer::Settles { speed, engine_speed } => {
                (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)))
            }
            Answer::MoreThanNeeded => ("más de lo necesario".to_owned(), None),
            Answer::Overruns { above } => (
                "se embala".to_owned(),
                above.map(|speed| format!("por encima de {}", format::met_speed(speed.0, units))),
            ),
            Answer::NotUsable(why) => ("no utilizable".to_owned(), Some(self.unusable(*why).to_owned())),
        }
    }
    fn unusable(&self, why: Unusable) -> &'static str {
        match why {
            Unusable::Slippery => "demasiado resbaladizo",
            Unusable::Grip => "adherencia insuficiente",
            Unusable::CutOut => "se desconecta",
            Unusable::Unlocked => "convertidor abierto",
        }
    }
    fn table_legend(&self) -> &'static [(&'static str, &'static str)] {
        &[
            ("una velocidad", "el vehículo se estabiliza a ella; debajo están las revoluciones del motor"),
            (
                "más de lo necesario",
                "pierde velocidad: bastaría una posición más débil o una marcha más alta",
            ),
            (
                "se embala",
                "gana velocidad hasta que el motor gira demasiado rápido: use una marcha más baja o los frenos de servicio",
            ),
            ("no utilizable", "por la razón indicada"),
            (
                "en una misma marcha",
                "cambiando de posición se puede mantener cualquier velocidad entre aquella a la que se estabiliza con la posición más fuerte y la más alta de la marcha",
            ),
        ]
    }
    fn table_chosen(&self) -> &'static str {
        "aconsejada"
    }
    fn totals(&self, totals: &Totals, units: Units) -> String {
        let crawl = totals.crawl.map_or_else(String::new, |speed| {
            format!(
                " Velocidad más baja en una subida: aproximadamente {}.",
                format::met_speed(speed.0, units)
            )
        });
        format!(
            "Toda la carretera: {}, {} de desnivel en bajada. El ralentizador y el motor absorben {}; los frenos de servicio, {}.{crawl}",
            minutes(totals.time.0),
            format::height(totals.fall.0, units),
            format::work(totals.holding_work.0),
            format::work(totals.service_work.0)
        ) + &fuel(totals, units)
    }
}

fn curve(curve: &Curve, speed: f64, at_m: f64, units: Units) -> String {
    format!(
        "como máximo {} en el punto {}, {}, radio de aproximadamente {}",
        format::hold_speed(speed, units),
        format::distance(at_m, units),
        side(curve.turn == Turn::Left),
        radius(curve.radius_m, units)
    )
}

pub(super) fn side(left: bool) -> &'static str {
    if left { "a la izquierda" } else { "a la derecha" }
}

/// Fuel, and the share of the braking work that the service brakes take.
fn fuel(totals: &Totals, units: Units) -> String {
    format!(
        " A los frenos de servicio les corresponde así el {} del frenado. Combustible: aproximadamente {}.",
        format::share(totals.service_share()),
        format::fuel(solver::motion::litres_of_fuel(totals.fuel), units)
    )
}
