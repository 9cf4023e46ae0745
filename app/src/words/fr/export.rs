//! French words that stand in a file saved for a device.

use super::French;
use crate::words::ExportWords;
use solver::plan::ChangeHow;

impl ExportWords for French {
    fn mark_caution(&self) -> &'static str {
        "Calculé à partir des données saisies et d'altitudes enregistrées, qui comportent des erreurs. Ce n'est pas une autorisation de descendre\u{a0}: la signalisation en place, la loi du lieu et les limites du constructeur du véhicule passent en premier."
    }
    fn crest_number(&self, number: usize) -> String {
        format!("Sommet {number}")
    }
    fn hold(&self, speed: &str) -> String {
        format!("tenir {speed}")
    }
    fn by_here(&self, how: ChangeHow) -> &'static str {
        match how {
            ChangeHow::Down => "au plus tard ici",
            ChangeHow::Up => "à partir d’ici",
        }
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", puis rapport {gear}"));
        format!("Pied {number}{after}")
    }
}
