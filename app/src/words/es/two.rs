//! Spanish words of two roads side by side.

use super::{Spanish, minutes};
use crate::format::Units;
use crate::words::{TwoRow, TwoWords};

impl TwoWords for Spanish {
    fn two_head(&self) -> &'static str {
        "Dos carreteras"
    }
    fn keep_beside(&self) -> &'static str {
        "Guardar esto para compararlo con lo siguiente"
    }
    fn keep_beside_sentence(&self) -> &'static str {
        "Para comparar dos carreteras, dos camiones o dos condiciones: lo que se muestra ahora queda al lado de lo que elija después."
    }
    fn two_next(&self) -> &'static str {
        "Las dos son todavía iguales: elija otro archivo, invierta la carretera o cambie el camión o las condiciones."
    }
    fn end_two(&self) -> &'static str {
        "Terminar la comparación"
    }
    fn swap(&self) -> &'static str {
        "Intercambiar las dos"
    }
    fn swap_sentence(&self) -> &'static str {
        "Al intercambiarlas, cada carretera lleva consigo su camión, sus condiciones y sus lugares."
    }
    fn two_heads(&self) -> [&'static str; 4] {
        ["", "guardada", "mostrada", "diferencia"]
    }
    fn two_row(&self, row: TwoRow) -> &'static str {
        match row {
            TwoRow::Truck => "camión, condiciones",
            TwoRow::Worst => "peor bajada",
            TwoRow::Descents => "bajadas",
            TwoRow::Hold => "velocidad a mantener más baja",
            TwoRow::Hottest => "frenos más calientes tras una frenada fuerte hasta parar",
            TwoRow::Braked => "frenos de servicio usados en bajadas, también por curvas y lugares",
            TwoRow::Service => "trabajo de los frenos de servicio",
            TwoRow::Holding => "trabajo del ralentizador y del motor",
            TwoRow::Down => "tiempo en las bajadas",
            TwoRow::Up => "tiempo en subidas del 2 % o más",
            TwoRow::Crawl => "velocidad más baja en una subida",
            TwoRow::Time => "tiempo total",
            TwoRow::Rise => "desnivel de subida",
            TwoRow::Fall => "desnivel de bajada",
            TwoRow::Length => "longitud",
            TwoRow::Curves => "curvas en las que hay que reducir la velocidad",
            TwoRow::Checks => "zonas de comprobación de frenos introducidas",
            TwoRow::Ramps => "rampas de escape introducidas",
            TwoRow::Parking => "estacionamientos introducidos",
            TwoRow::Blank => "sin evaluar",
            TwoRow::Fuel => "combustible, aproximado",
            TwoRow::Cost => "costo con los precios introducidos",
        }
    }
    fn no_difference(&self) -> &'static str {
        "igual"
    }
    fn two_caution(&self) -> &'static str {
        "Ninguna fila decide por sí sola, y nada de esto es un permiso para bajar. Lo que está sin evaluar no entra en estas cifras. Tienen prioridad las señales, los cierres de carretera y las normas de su empresa."
    }
    fn rate_labels(&self) -> [&'static str; 2] {
        ["Precio del combustible", "Costo del camión y del conductor"]
    }
    fn rate_units(&self, units: Units) -> [&'static str; 2] {
        match units {
            Units::Metric => ["por litro", "por hora"],
            Units::Imperial => ["por galón", "por hora"],
        }
    }
    fn time(&self, seconds: f64) -> String {
        minutes(seconds)
    }
    fn rank(&self, count: usize) -> String {
        format!("Comparar estas {count} carreteras")
    }
    fn ranked_head(&self, done: usize, count: usize) -> String {
        if done < count {
            format!("Carreteras: {done} de {count} calculadas")
        } else {
            format!("{count} carreteras")
        }
    }
    fn ranked_sentence(&self) -> &'static str {
        "Cada una con el camión y las condiciones introducidos, primero la que tiene la peor bajada. Abra una y guarde otra al lado."
    }
    fn ranking(&self) -> &'static str {
        "en cálculo"
    }
    fn open_ranked(&self) -> &'static str {
        "Abrir"
    }
    fn beside_ranked(&self) -> &'static str {
        "Guardar al lado"
    }
    fn ranked_ends(&self) -> &'static str {
        "sentido"
    }
    fn ranked_labels(&self) -> [&'static str; 4] {
        ["longitud", "frenos tras parar", "menor velocidad a mantener", "tiempo"]
    }
    fn rank_again(&self) -> &'static str {
        "El camión o las condiciones han cambiado: calcular otra vez las carreteras"
    }
}
