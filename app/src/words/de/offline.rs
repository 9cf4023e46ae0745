//! German words of use without a network.

use super::German;
use crate::words::OfflineWords;

impl OfflineWords for German {
    fn works_offline(&self) -> &'static str {
        "Diese Seite funktioniert jetzt auch ohne Netz."
    }
    fn newer(&self) -> &'static str {
        "Eine neue Fassung dieser Seite ist bereit. Fahrzeug, Bedingungen, die Strecke und ihre Orte bleiben erhalten. Nicht erhalten bleiben die für das Merkblatt eingegebene Kilometerangabe, eine zum Vergleich behaltene Strecke und was heute gehalten hat."
    }
    fn load_newer(&self) -> &'static str {
        "Neue Fassung laden"
    }
    fn later(&self) -> &'static str {
        "Später"
    }
    fn forget_all(&self) -> &'static str {
        "Alles löschen, was auf diesem Gerät gespeichert ist"
    }
    fn forget_really(&self) -> &'static str {
        "Fahrzeuge, Eingaben, Strecken und Orte wirklich löschen? Noch einmal drücken"
    }
    fn save_page(&self) -> &'static str {
        "Diese Seite als eine einzige Datei speichern (für einen USB-Stick)"
    }
}
