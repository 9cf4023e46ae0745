//! Spanish words of the notice before the page, and of what the pictures say in words.

use super::Spanish;
use crate::words::AccessWords;

impl AccessWords for Spanish {
    fn i_am_parked(&self) -> &'static str {
        "Estoy estacionado"
    }
    fn road_table(&self) -> &'static str {
        "La carretera en una tabla"
    }
    fn road_table_heads(&self) -> [&'static str; 2] {
        ["desde – hasta", "parte"]
    }
    fn between(&self) -> &'static str {
        "sin bajada"
    }
    fn power_table(&self) -> &'static str {
        "La potencia en una tabla"
    }
    fn power_heads(&self) -> [&'static str; 2] {
        ["revoluciones del motor, /min", "tira"]
    }
    fn holds(&self, stage: &str) -> String {
        format!("retiene, {stage}")
    }
    fn window_ends(&self) -> [&'static str; 2] {
        ["Principio de la parte mostrada", "Final de la parte mostrada"]
    }
    fn ends_where_it_began(&self) -> &'static str {
        "Termina donde empezó."
    }
    fn leads_away(&self, away: &str, towards: &str) -> String {
        format!("Termina a {away} de su inicio en línea recta, hacia el {towards}.")
    }
    fn winds(&self) -> [&'static str; 8] {
        ["norte", "noreste", "este", "sureste", "sur", "suroeste", "oeste", "noroeste"]
    }
    fn card_profile(&self) -> &'static str {
        "Perfil de la carretera. Lo que muestra está en las filas de abajo."
    }
}
