//! Spanish words of one descent's details and of its table.

use super::minutes;
use crate::format::{self, Units};
use crate::words::Curves;
use crate::words::say::{capital, radius};
use solver::motion::{Answer, Unusable};
use solver::plan::{Choice, Descent, Totals};
use solver::road::{Curve, Turn};
use solver::truck::Stage;

pub(super) fn stage_name(stage: Stage) -> String {
    if stage == Stage::OFF {
        "ralentizador desconectado".to_owned()
    } else {
        format!("posición {}", stage.number())
    }
}

pub(super) fn advice(descent: &Descent, units: Units) -> String {
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
        stage_name(advice.stage),
        format::hold_speed(advice.speed.0, units),
        format::engine_speed(advice.engine_speed.0),
        capital(&minutes(advice.time.0))
    )
}

pub(super) fn grades(descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
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

pub(super) fn curves(curves: &Curves, units: Units) -> Vec<String> {
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

pub(super) fn climb(descent: &Descent, units: Units) -> String {
    match descent.climbs_in {
        Some((gear, speed)) => format!(
            "Con el acelerador a fondo la sube en la marcha {} a aproximadamente {}. La marcha para bajar es a menudo más baja.",
            gear.number(),
            format::met_speed(speed.0, units)
        ),
        None => "Con el acelerador a fondo no la sube en ninguna marcha.".to_owned(),
    }
}

pub(super) fn caption(descent: &Descent, units: Units) -> String {
    format!(
        "Qué hace cada marcha y posición con una pendiente de {} a {} sobre el nivel del mar, sin acelerador y sin los frenos de servicio",
        format::grade(descent.table.grade.0),
        format::height(descent.table.height.0, units)
    )
}

pub(super) fn answer(answer: &Answer, units: Units) -> (String, Option<String>) {
    match answer {
        Answer::Settles { speed, engine_speed } => {
            (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)))
        }
        Answer::MoreThanNeeded => ("más de lo necesario".to_owned(), None),
        Answer::Overruns { above } => (
            "se embala".to_owned(),
            above.map(|speed| format!("por encima de {}", format::met_speed(speed.0, units))),
        ),
        Answer::NotUsable(why) => ("no utilizable".to_owned(), Some(unusable(*why).to_owned())),
    }
}

pub(super) fn unusable(why: Unusable) -> &'static str {
    match why {
        Unusable::Slippery => "demasiado resbaladizo",
        Unusable::Grip => "adherencia insuficiente",
        Unusable::CutOut => "se desconecta",
        Unusable::Unlocked => "convertidor abierto",
    }
}

pub(super) const LEGEND: &[(&str, &str)] = &[
    ("una velocidad", "el vehículo se estabiliza a ella; debajo están las revoluciones del motor"),
    ("más de lo necesario", "pierde velocidad: bastaría una posición más débil o una marcha más alta"),
    (
        "se embala",
        "gana velocidad hasta que el motor gira demasiado rápido: use una marcha más baja o los frenos de servicio",
    ),
    ("no utilizable", "por la razón indicada"),
    (
        "en una misma marcha",
        "cambiando de posición se puede mantener cualquier velocidad entre aquella a la que se estabiliza con la posición más fuerte y la más alta de la marcha",
    ),
];

pub(super) fn totals(totals: &Totals, units: Units) -> String {
    let crawl = totals.crawl.map_or_else(String::new, |speed| {
        format!(" Velocidad más baja en una subida: aproximadamente {}.", format::met_speed(speed.0, units))
    });
    format!(
        "Toda la carretera: {}, {} de desnivel en bajada. El ralentizador y el motor absorben {}; los frenos de servicio, {}.{crawl}",
        minutes(totals.time.0),
        format::height(totals.fall.0, units),
        format::work(totals.holding_work.0),
        format::work(totals.service_work.0)
    ) + &fuel(totals, units)
}

/// Fuel, and the share of the braking work that the service brakes take.
fn fuel(totals: &Totals, units: Units) -> String {
    format!(
        " A los frenos de servicio les corresponde así el {} del frenado. Combustible: aproximadamente {}.",
        format::share(totals.service_share()),
        format::fuel(solver::motion::litres_of_fuel(totals.fuel), units)
    )
}
