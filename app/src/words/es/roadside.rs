//! Spanish words of places and posted limits.

use super::Spanish;
use crate::format::{self, Units};
use crate::words::RoadsideWords;
use solver::road::PlaceKind;

impl RoadsideWords for Spanish {
    fn places_head(&self) -> &'static str {
        "Lugares y límites señalizados"
    }
    fn places_nav(&self) -> &'static str {
        "Lugares"
    }
    fn places_sentence(&self, count: usize) -> String {
        let found = match count {
            0 => {
                "Todavía no hay ninguno en esta carretera. Eso no significa que no existan: busque por su cuenta las zonas de comprobación de frenos, las rampas de escape, los semáforos y los límites."
            }
            1 => "Hay uno en esta carretera. Puede haber más.",
            _ => "Puede haber más que estos.",
        };
        format!(
            "{found} Proceden de los puntos de referencia (waypoints) del archivo; añada otros donde está el cursor en la imagen, o por su distancia. Se guardan en este equipo."
        )
    }
    fn put_here(&self) -> &'static str {
        "Añadir un lugar aquí"
    }
    fn put_at(&self) -> &'static str {
        "Añadir un lugar en"
    }
    fn put(&self) -> &'static str {
        "Añadir"
    }
    fn place_kind(&self, kind: PlaceKind) -> &'static str {
        match kind {
            PlaceKind::Summit => "cumbre",
            PlaceKind::BrakeCheck => "zona de comprobación de frenos",
            PlaceKind::EscapeRamp => "rampa de escape",
            PlaceKind::Settlement => "pueblo o ciudad",
            PlaceKind::Stop => "parada obligatoria, semáforo o cruce",
            PlaceKind::Parking => "estacionamiento o área de descanso",
            PlaceKind::Tunnel => "túnel",
            PlaceKind::Bridge => "puente",
            PlaceKind::Danger => "peligro",
            PlaceKind::ChainUp => "zona para poner cadenas",
            PlaceKind::QuietZone => "zona de silencio",
            PlaceKind::Exit => "salida",
            PlaceKind::Other => "otro lugar",
        }
    }
    fn posted_limit(&self) -> &'static str {
        "límite señalizado"
    }
    fn kind_label(&self) -> &'static str {
        "Tipo"
    }
    fn name_label(&self) -> &'static str {
        "Nombre"
    }
    fn at_label(&self) -> [&'static str; 3] {
        ["En", "Desde", "Hasta"]
    }
    fn limit_label(&self) -> &'static str {
        "Límite"
    }
    fn set_the_limit(&self) -> &'static str {
        "La velocidad y el final son supuestos y ya cuentan. Ponga lo que dice la señal."
    }
    fn quiet_zone_caution(&self) -> &'static str {
        "Aquí una señal puede prohibir el freno motor. El plan sigue contando con el ralentizador: donde la señal lo prohíba, baje más despacio, en una marcha más baja, y mantenga fríos los frenos de servicio."
    }
    fn take_off(&self) -> &'static str {
        "Quitar"
    }
    fn not_on_part(&self) -> &'static str {
        "no está en la parte mostrada"
    }
    fn off_road(&self, first: &str, last: &str, units: Units) -> String {
        let unit = units.distance();
        format!("Ese punto no está en esta carretera: la carretera va de {first} a {last} {unit}.")
    }
    fn no_stretch(&self) -> &'static str {
        "Un límite debe terminar más adelante de donde empieza."
    }
    fn too_many_things(&self) -> &'static str {
        "Caben cien como máximo. Quite uno antes."
    }
    fn show_all_places(&self, count: usize) -> String {
        format!("Mostrar los {}", format::whole(count as f64))
    }
}
