//! Spanish words of the card for the cab.

use super::Spanish;
use crate::words::say::file_name;
use crate::words::{CardWords, PlanWords};
use solver::truck::{Gear, Stage};

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
    fn picture_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "carretera", if reversed { "-sentido-contrario-ficha.png" } else { "-ficha.png" })
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
    fn markers_miss(&self, start: &str, end: &str) -> String {
        format!(
            "Los hitos no alcanzan para toda la carretera: con lo introducido irían de {start} al inicio a {end} al final, y no hay hitos por debajo de cero. Corrija el hito del inicio o el sentido en que van. Mientras tanto, la ficha lleva distancias desde el inicio."
        )
    }
    fn card_is_old(&self) -> &'static str {
        "No la use: esta ficha corresponde a datos anteriores"
    }
    fn do_not_descend(&self) -> &'static str {
        "NO BAJE con los datos introducidos"
    }
    fn no_speed_for(&self, numbers: &str, count: usize) -> String {
        let descents = if count == 1 { "la bajada" } else { "las bajadas" };
        format!(
            "No se encontró velocidad segura para {descents} {numbers}. Tome otra carretera, o planifique de nuevo con menos carga o en un día mejor. Tienen prioridad las señales y las reglas de la conducción profesional."
        )
    }
    fn facts_of(&self, [mass, retarder, surface, load, air, brakes]: [&str; 6]) -> String {
        format!("{mass} · {retarder} · {surface}, {load} · aire a {air} · frenos a {brakes} al inicio")
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["bajada, de – a", "pendiente", "marcha", "posición", "mantener", "qué hay que saber"]
    }
    fn mile(&self) -> &'static str {
        "milla"
    }
    fn card_asks(&self, grade: &str, length: &str) -> String {
        format!("exige {grade}, {length}")
    }
    fn know_snub(&self, from: &str, to: &str) -> String {
        format!("Frenada corta de {from} a {to}, suelte el freno, repita.")
    }
    fn know_in_doubt(&self, grade: &str) -> String {
        format!("En duda tramos cortos de hasta {grade}: tenga listos los frenos de servicio.")
    }
    fn know_easing(&self, at: &str) -> String {
        format!("Donde se suaviza, en el {at}, no es el final: siga en la misma marcha.")
    }
    fn know_begins_unknown(&self) -> &'static str {
        "No se sabe cómo empieza: la carretera anterior no se pudo evaluar."
    }
    fn know_slow_curves(&self, count: usize, speed: &str, at: &str) -> String {
        format!(
            "{count} curvas exigen menos que la velocidad que hay que mantener; la más lenta: {speed}, {at}."
        )
    }
    fn know_slow_curve(&self, speed: &str, at: &str) -> String {
        format!("Curva más lenta: {speed}, {at}.")
    }
    fn know_posted(&self, speed: &str, km: &str, miles: &str) -> String {
        format!("Límite señalizado: {speed}, {km}, {miles}.")
    }
    fn know_ramp(&self, at: &str) -> String {
        format!("Rampa de escape en el {at}.")
    }
    fn know_quiet(&self, at: &str) -> String {
        format!("Zona de silencio en el {at}: puede estar prohibido el freno motor.")
    }
    fn know_at_foot(&self, name: &str, at: &str) -> String {
        format!("Al pie de la bajada: {name}, {at}.")
    }
    fn to_stop_at_foot(&self) -> &'static str {
        "un lugar donde hay que parar"
    }
    fn know_cut_short(&self) -> &'static str {
        "No se sabe cómo continúa."
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
    fn before_crest_head(&self) -> &'static str {
        "Antes de la cima"
    }
    fn stop_at_check(&self, at: &str) -> String {
        format!(
            "Pare en la zona de comprobación de frenos, {at}: ajuste de los frenos, fugas, tambores o discos, neumáticos, carga."
        )
    }
    fn stop_where_allowed(&self) -> &'static str {
        "Pare donde esté permitido: ajuste de los frenos, fugas, tambores o discos, neumáticos, carga."
    }
    fn try_retarder(&self) -> &'static str {
        "Suelte el acelerador un momento: ¿actúa el ralentizador, en cada posición?"
    }
    fn look_ahead(&self) -> &'static str {
        "Tiempo, señales, cierres: ¿sigue siendo la carretera que se planificó?"
    }
    fn gear_before(&self, gear: Gear, stage: Stage, at: &str) -> String {
        format!("Ya antes del {at}: marcha {} puesta, {}.", gear.number(), self.stage(stage))
    }
    fn gear_at_start(&self, gear: Gear, stage: Stage) -> String {
        let gear = gear.number();
        format!(
            "Antes de ponerse en marcha: marcha {gear}, {}. La carretera empieza en la bajada.",
            self.stage(stage)
        )
    }
    fn shifting(&self, in_legs: bool) -> &'static str {
        if in_legs {
            "En la bajada cambie de marcha solo como indican las filas."
        } else {
            "En la bajada no cambie de marcha."
        }
    }
    fn in_trouble_head(&self) -> &'static str {
        "Si pierde el control de la velocidad"
    }
    fn brake_now(&self) -> &'static str {
        "Frene fuerte ahora y pare, mientras los frenos estén lo bastante fríos para lograrlo."
    }
    fn stay_in_gear(&self) -> &'static str {
        "Siga con la marcha puesta. Nunca ponga punto muerto (neutro), nunca pise el embrague, no cambie a una marcha más baja a alta velocidad."
    }
    fn any_way_up(&self) -> &'static str {
        "Tome una rampa de escape o cualquier camino que suba. Aquí no hay ninguna rampa introducida; puede haberlas."
    }
    fn take_ramp(&self, ramps: &str) -> String {
        format!("Tome la rampa de escape en el {ramps}, o cualquier camino que suba.")
    }
    fn between_ramps(&self) -> &'static str {
        " o en el "
    }
    fn warn_others(&self) -> &'static str {
        "Luces y bocina: avise a los demás."
    }
    fn no_places_entered(&self) -> &'static str {
        "No hay ninguno introducido. Eso no significa que no existan."
    }
    fn card_cautions(&self) -> &'static str {
        "Calculado con sus datos y con altitudes grabadas, que contienen errores; no es un permiso para bajar. No puede ver el ajuste de los frenos, los neumáticos, la calzada, el estado del tiempo, el tráfico ni la carga. Tienen prioridad las señales, la ley, su empresa y el fabricante del vehículo. Los frenos de servicio siguen siendo el medio para parar. En caso de duda: pare arriba, vaya más despacio, tome otra carretera."
    }
    fn rows_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "carretera", if reversed { "-sentido-contrario-bajadas.csv" } else { "-bajadas.csv" })
    }
}
