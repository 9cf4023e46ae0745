//! Spanish words of the card for the cab.

use super::Spanish;
use crate::cab::{CardOf, Know};
use crate::format::{self, Units};
use crate::words::say::{capital, file_name, name_or, span};
use crate::words::{CardWords, EntryWords, PlanWords, RoadsideWords};
use solver::road::{Place, PlaceKind};

impl CardWords for Spanish {
    fn card_head(&self) -> &'static str {
        "Ficha"
    }
    fn to_card(&self) -> &'static str {
        "La ficha para la cabina, para imprimir"
    }
    fn card_sentence(&self) -> &'static str {
        "Para la cabina, para no necesitar ninguna pantalla en el camino: imprímala y dóblela por la mitad. Léala antes de la cima, con el vehículo estacionado."
    }
    fn print_card(&self) -> &'static str {
        "Imprimir la ficha"
    }
    fn save_picture(&self) -> &'static str {
        "Guardarla como imagen"
    }
    fn picture_name(&self, road: &str) -> String {
        file_name(road, "carretera", "-ficha.png")
    }
    fn save_rows(&self) -> &'static str {
        "Guardar sus filas como CSV"
    }
    fn marker_label(&self) -> &'static str {
        "Hito o cuentakilómetros al inicio de la carretera"
    }
    fn counts_down(&self) -> &'static str {
        "los hitos van hacia atrás"
    }
    fn card_facts(&self, card: CardOf<'_>) -> String {
        let day = card.day;
        format!(
            "{} · {} · {}, {} · aire a {} · frenos a {} al inicio",
            format::mass(card.truck.gross_mass_kg, card.units),
            self.retarder(card.truck.retarder.kind()),
            self.surface(day.surface),
            self.load(day.load),
            format::entered_temperature(day.air_c, card.units),
            format::entered_temperature(day.brakes_at_start_c, card.units)
        )
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["bajada, de – a", "pendiente", "marcha", "posición", "mantener", "qué hay que saber"]
    }
    fn mile(&self) -> &'static str {
        "milla"
    }
    fn card_worst(&self, grade: &str, length: &str) -> String {
        format!("la peor {grade}, {length}")
    }
    fn card_know(&self, card: CardOf<'_>, know: &Know) -> String {
        let at = |metres: f64| self.at(card, metres);
        match know {
            Know::Verdict(verdict) => capital(self.verdict(*verdict)) + ".",
            Know::Snub(snub) => format!(
                "Frenada corta de {} a {}, suelte el freno, repita.",
                format::hold_number(snub.from.0, card.units),
                format::hold_speed(snub.to.0, card.units)
            ),
            Know::Easing { at_m } => {
                format!("Donde se suaviza, en el {}, no es el final: siga en la misma marcha.", at(*at_m))
            }
            Know::SlowCurve { speed, at_m } => {
                format!("Curva más lenta: {}, {}.", format::hold_speed(*speed, card.units), at(*at_m))
            }
            Know::Posted { speed, from_m, to_m } => {
                let [from, to] = [from_m, to_m].map(|it| card.marker.at(*it));
                format!(
                    "Límite señalizado: {}, {}, {}.",
                    format::hold_speed(*speed, card.units),
                    span("km", from, to, Units::Metric),
                    span(self.mile(), from, to, Units::Imperial)
                )
            }
            Know::Ramp { at_m } => format!("Rampa de escape en el {}.", at(*at_m)),
            Know::Quiet { at_m } => {
                format!("Zona de silencio en el {}: puede estar prohibido el freno motor.", at(*at_m))
            }
            Know::AtFoot { name, at_m } => {
                format!(
                    "Al pie de la bajada: {}, {}.",
                    name_or(name, "un lugar donde hay que parar"),
                    at(*at_m)
                )
            }
            Know::CutShort => "No se sabe cómo continúa.".to_owned(),
        }
    }
    fn card_more(&self, count: usize) -> String {
        if count == 1 {
            return "Y 1 bajada más de esta carretera que no está en esta ficha: planifique la carretera por partes."
                .to_owned();
        }
        format!(
            "Y {count} bajadas más de esta carretera que no están en esta ficha: planifique la carretera por partes."
        )
    }
    fn before_crest(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let stop = match card.places_of(PlaceKind::BrakeCheck).next() {
            Some(check) => format!(
                "Pare en la zona de comprobación de frenos, {}: ajuste de los frenos, fugas, tambores o discos, neumáticos, carga.",
                self.at(card, card.metres(check.index))
            ),
            None => "Pare donde esté permitido: ajuste de los frenos, fugas, tambores o discos, neumáticos, carga."
                .to_owned(),
        };
        let gear = card.first_held().map(|(descent, advice)| {
            format!(
                "Ya antes del {}: marcha {} puesta, {}. En la bajada no cambie de marcha.",
                self.at(card, descent.crest.0),
                advice.gear.number(),
                self.stage(advice.stage)
            )
        });
        let list = [
            Some(stop),
            Some("Suelte el acelerador un momento: ¿actúa el ralentizador, en cada posición?".to_owned()),
            Some("Tiempo, señales, cierres: ¿sigue siendo la carretera que se planificó?".to_owned()),
            gear,
        ];
        ("Antes de la cima", list.into_iter().flatten().collect())
    }
    fn in_trouble(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let ramps = card.places_of(PlaceKind::EscapeRamp);
        let ramps: Vec<String> = ramps.map(|it| self.at(card, card.metres(it.index))).collect();
        let ramp = if ramps.is_empty() {
            "Tome una rampa de escape o cualquier camino que suba. Aquí no hay ninguna rampa introducida; puede haberlas."
                .to_owned()
        } else {
            format!("Tome la rampa de escape en el {}, o cualquier camino que suba.", ramps.join(" o en el "))
        };
        let list = [
            "Frene fuerte ahora y pare, mientras los frenos estén lo bastante fríos para lograrlo.".to_owned(),
            "Siga con la marcha puesta. Nunca ponga punto muerto (neutro), nunca pise el embrague, no cambie a una marcha más baja a alta velocidad."
                .to_owned(),
            ramp,
            "Luces y bocina: avise a los demás.".to_owned(),
        ];
        ("Si pierde el control de la velocidad", list.to_vec())
    }
    fn card_places(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let one = |it: &Place| {
            format!(
                "{}: {}",
                self.at(card, card.metres(it.index)),
                name_or(&it.name, self.place_kind(it.kind))
            )
        };
        let mut list: Vec<String> = card.places.iter().map(one).collect();
        if list.is_empty() {
            list.push("No hay ninguno introducido. Eso no significa que no existan.".to_owned());
        }
        ("Lugares", list)
    }
    fn card_cautions(&self) -> &'static str {
        "Calculado con sus datos y con altitudes grabadas, que contienen errores; no es un permiso para bajar. No puede ver el ajuste de los frenos, los neumáticos, la calzada, el estado del tiempo, el tráfico ni la carga. Tienen prioridad las señales, la ley, su empresa y el fabricante del vehículo. Los frenos de servicio siguen siendo el medio para parar. En caso de duda: pare arriba, vaya más despacio, tome otra carretera."
    }
    fn rows_name(&self, road: &str) -> String {
        file_name(road, "carretera", "-bajadas.csv")
    }
}
