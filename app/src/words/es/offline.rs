//! Spanish words of use without a network.

use super::Spanish;
use crate::words::OfflineWords;

impl OfflineWords for Spanish {
    fn works_offline(&self) -> &'static str {
        "Esta página ya funciona sin conexión a la red."
    }
    fn newer(&self) -> &'static str {
        "Hay una versión nueva de esta página lista para cargar. Se conservan el camión, las condiciones, la carretera y sus lugares. No se conservan el hito introducido para la ficha, la carretera guardada para comparar ni lo que retuvo hoy."
    }
    fn load_newer(&self) -> &'static str {
        "Versión nueva: cargarla"
    }
    fn later(&self) -> &'static str {
        "Más tarde"
    }
    fn forget_all(&self) -> &'static str {
        "Borrar todo lo guardado en este equipo"
    }
    fn forget_really(&self) -> &'static str {
        "¿Borrar de verdad camiones, datos, carreteras y lugares? Pulse otra vez"
    }
    fn save_page(&self) -> &'static str {
        "Guardar esta página como un solo archivo (para una memoria USB)"
    }
}
