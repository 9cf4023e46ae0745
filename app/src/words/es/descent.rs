//! Spanish words of one descent's details and of its table.

use super::Spanish;
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::Unusable;
use solver::plan::Advice;

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
    fn no_advice(&self) -> &'static str {
        "No se encontró ninguna velocidad que respete los límites. Con los datos introducidos, no baje por ella con este camión."
    }
    fn falls_short(&self, share: &str) -> String {
        format!(
            "En la posición máxima falta un {share} de la retención que exige la bajada: los frenos de servicio tienen que ayudar."
        )
    }
    fn more_than_asked(&self, share: &str) -> String {
        format!("En la posición máxima hay un {share} más de la retención que exige la bajada.")
    }
    fn advice_in_full(&self, advice: &Advice, [speed, engine_speed, reserve, time]: [&str; 4]) -> String {
        format!(
            "Marcha {}, como máximo {}, {speed} a {engine_speed}. {reserve} {time} desde la cima hasta el pie de la bajada.",
            advice.gear.number(),
            self.stage(advice.stage)
        )
    }
    fn way_label(&self) -> &'static str {
        "Posiciones durante la bajada"
    }
    fn relief_label(&self) -> &'static str {
        "Dónde se suaviza"
    }
    fn eases_over(&self, span: &str, length: &str) -> String {
        format!(
            "{span}: llano o en subida a lo largo de {length}. No cambie a una marcha más alta: la bajada continúa."
        )
    }
    fn grades_label(&self) -> &'static str {
        "Qué pendiente tiene"
    }
    fn mean_grade(&self, grade: &str) -> String {
        format!("Pendiente media: {grade}.")
    }
    fn steepest_over(&self, grade: &str, length: &str, from: &str, doubt: &str) -> String {
        format!("{grade} en el tramo más empinado de {length}, desde el punto {from}{doubt}.")
    }
    fn too_short_for_heights(&self) -> &'static str {
        "; en una distancia tan corta las altitudes no son fiables"
    }
    fn curves_label(&self) -> &'static str {
        "Curvas"
    }
    fn curve_count(&self, curves: &Curves) -> String {
        match (curves.count, curves.hairpins) {
            (1, 0) => "1 curva exige una velocidad menor que esta".to_owned(),
            (1, _) => "1 curva de herradura exige una velocidad menor que esta".to_owned(),
            (all, 0) => format!("{all} curvas exigen una velocidad menor que esta"),
            (all, 1) => format!("{all} curvas exigen una velocidad menor que esta, 1 de ellas de herradura"),
            (all, some) => {
                format!("{all} curvas exigen una velocidad menor que esta, {some} de ellas de herradura")
            }
        }
    }
    fn slowest_curve(&self, speed: &str, at: &str, side: &str, radius: &str) -> String {
        format!(
            "La más lenta: como máximo {speed} en el punto {at}, {side}, radio de aproximadamente {radius}."
        )
    }
    fn curves_estimated(&self) -> &'static str {
        "Los radios son estimaciones a partir del recorrido; no se conocen el peralte, la visibilidad ni el estado de la calzada."
    }
    fn side(&self, left: bool) -> &'static str {
        if left { "a la izquierda" } else { "a la derecha" }
    }
    fn climb_label(&self) -> &'static str {
        "Subir la misma pendiente"
    }
    fn climbs_in(&self, gear: u8, speed: &str) -> String {
        format!(
            "Con el acelerador a fondo la sube en la marcha {gear} a aproximadamente {speed}. La marcha para bajar es a menudo más baja."
        )
    }
    fn climbs_in_none(&self) -> &'static str {
        "Con el acelerador a fondo no la sube en ninguna marcha."
    }
    fn cut_short(&self) -> &'static str {
        "La bajada se corta donde la carretera ya no se puede evaluar. No se sabe cómo continúa."
    }
    fn brakes_arrive(&self, heat: &str) -> String {
        format!("Los frenos llegan a la cima con aproximadamente {heat}.")
    }
    fn table_of(&self, grade: &str, height: &str) -> String {
        format!(
            "Qué hace cada marcha y posición con una pendiente de {grade} a {height} sobre el nivel del mar, sin acelerador y sin los frenos de servicio"
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["marcha", "velocidades utilizables", "reserva a la más alta"]
    }
    fn more_than_needed(&self) -> &'static str {
        "más de lo necesario"
    }
    fn overruns(&self) -> &'static str {
        "se embala"
    }
    fn above_speed(&self, speed: &str) -> String {
        format!("por encima de {speed}")
    }
    fn not_usable(&self) -> &'static str {
        "no utilizable"
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
    fn fall_in_part(&self, all: &str, blank: &str) -> String {
        format!("{all} (de ellos, {blank} sin evaluar)")
    }
    fn no_work_counted(&self, length: &str) -> String {
        format!("En {length} sin evaluar no se cuenta ningún trabajo de frenado.")
    }
    fn whole_way(&self, time: &str, fall: &str, holding: &str, service: &str) -> String {
        format!(
            "Toda la carretera: {time}, {fall} de desnivel en bajada. El ralentizador y el motor absorben {holding}; los frenos de servicio, {service}."
        )
    }
    fn slowest_climb(&self, speed: &str) -> String {
        format!("Velocidad más baja en una subida: aproximadamente {speed}.")
    }
    fn less_than(&self, share: &str) -> String {
        format!("menos del {share}")
    }
    fn share_and_fuel(&self, share: &str, fuel: &str) -> String {
        format!(
            "Parte de los frenos de servicio en el frenado: {share}. Combustible: aproximadamente {fuel}."
        )
    }
}
