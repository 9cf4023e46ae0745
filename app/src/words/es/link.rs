//! Spanish words of the link and of the project.

use super::Spanish;
use crate::words::LinkWords;
use crate::words::say::file_name;

impl LinkWords for Spanish {
    fn make_link(&self) -> &'static str {
        "Copiar un enlace con el camión y las condiciones"
    }
    fn link_copied(&self) -> &'static str {
        "Copiado. El enlace lleva este camión y estas condiciones, ninguna carretera y ningún lugar. Quien lo abra decide si los usa."
    }
    fn link_made(&self) -> &'static str {
        "Copie el enlace de aquí. Lleva este camión y estas condiciones, ninguna carretera y ningún lugar. Quien lo abra decide si los usa."
    }
    fn link_label(&self) -> &'static str {
        "Enlace con el camión y las condiciones"
    }
    fn link_offered(&self) -> &'static str {
        "Este enlace trae un camión y unas condiciones. Sus propios datos siguen en uso hasta que usted decida. Quien lo envió puede conducir otro vehículo: compruebe cada dato."
    }
    fn use_link(&self) -> &'static str {
        "Usar el camión y las condiciones del enlace"
    }
    fn keep_mine(&self) -> &'static str {
        "Conservar los míos"
    }
    fn link_taken(&self) -> &'static str {
        "Ahora se usan el camión y las condiciones del enlace: compruébelos antes de fiarse de las cifras."
    }
    fn back_to_mine(&self) -> &'static str {
        "Volver a los míos"
    }
    fn link_broken(&self) -> &'static str {
        "No se pueden leer el camión y las condiciones de este enlace; puede que falte una parte. Pídalo otra vez. Sus propios datos siguen en uso."
    }
    fn save_project(&self) -> &'static str {
        "Guardar todo en un solo archivo"
    }
    fn project_sentence(&self) -> &'static str {
        "La carretera tal como se dio, con sus lugares y límites, el camión y las condiciones, y lo mismo de la carretera guardada a su lado. Se abre aquí como una carretera, en cualquier equipo."
    }
    fn project_name(&self, road: &str) -> String {
        file_name(road, "carretera", ".steadygrade")
    }
    fn project_opened(&self) -> &'static str {
        "Ahora se usan el camión, las condiciones y los lugares del proyecto: compruébelos antes de fiarse de las cifras."
    }
}
