//! German words of the link and of the project.

use super::German;
use crate::words::LinkWords;
use crate::words::say::file_name;

impl LinkWords for German {
    fn make_link(&self) -> &'static str {
        "Link mit Fahrzeug und Bedingungen kopieren"
    }
    fn link_copied(&self) -> &'static str {
        "Kopiert. Der Link enthält dieses Fahrzeug und diese Bedingungen, keine Straße und keinen Ort. Wer ihn öffnet, entscheidet, ob sie gelten."
    }
    fn link_made(&self) -> &'static str {
        "Kopieren Sie den Link von hier. Er enthält dieses Fahrzeug und diese Bedingungen, keine Straße und keinen Ort. Wer ihn öffnet, entscheidet, ob sie gelten."
    }
    fn link_label(&self) -> &'static str {
        "Link mit Fahrzeug und Bedingungen"
    }
    fn link_offered(&self) -> &'static str {
        "Dieser Link bringt ein Fahrzeug und Bedingungen mit. Ihre eigenen Eingaben gelten, bis Sie entscheiden. Wer ihn geschickt hat, fährt vielleicht ein anderes Fahrzeug: Prüfen Sie jede Eingabe."
    }
    fn use_link(&self) -> &'static str {
        "Fahrzeug und Bedingungen des Links verwenden"
    }
    fn keep_mine(&self) -> &'static str {
        "Meine behalten"
    }
    fn link_taken(&self) -> &'static str {
        "Jetzt gelten Fahrzeug und Bedingungen des Links: Prüfen Sie sie, bevor Sie den Zahlen trauen."
    }
    fn back_to_mine(&self) -> &'static str {
        "Zurück zu meinen"
    }
    fn link_broken(&self) -> &'static str {
        "Fahrzeug und Bedingungen in diesem Link sind nicht lesbar; vielleicht fehlt ein Teil. Lassen Sie ihn sich noch einmal schicken. Ihre eigenen Eingaben gelten."
    }
    fn save_project(&self) -> &'static str {
        "Alles in einer Datei speichern"
    }
    fn project_sentence(&self) -> &'static str {
        "Die Strecke, wie sie gegeben wurde, mit Orten und Begrenzungen darauf, Fahrzeug und Bedingungen, und ebenso die zum Vergleich behaltene. Sie wird hier wie eine Strecke geöffnet, auf jedem Gerät."
    }
    fn project_name(&self, road: &str) -> String {
        file_name(road, "strecke", ".steadygrade")
    }
    fn project_opened(&self) -> &'static str {
        "Jetzt gelten Fahrzeug, Bedingungen und Orte des Projekts: Prüfen Sie sie, bevor Sie den Zahlen trauen."
    }
}
