//! French words of use without a network.

use super::French;
use crate::words::OfflineWords;

impl OfflineWords for French {
    fn works_offline(&self) -> &'static str {
        "Cette page fonctionne maintenant sans réseau."
    }
    fn newer(&self) -> &'static str {
        "Une nouvelle version de cette page est prête. Le véhicule, les conditions du jour, la route et ses lieux restent. La borne saisie pour la fiche, une route gardée à côté et ce qui a tenu aujourd’hui ne restent pas."
    }
    fn load_newer(&self) -> &'static str {
        "Nouvelle version\u{a0}: la charger"
    }
    fn later(&self) -> &'static str {
        "Plus tard"
    }
    fn forget_all(&self) -> &'static str {
        "Effacer tout ce qui est conservé sur cet appareil"
    }
    fn forget_really(&self) -> &'static str {
        "Vraiment effacer véhicules, données saisies, routes et lieux\u{a0}? Appuyez encore une fois"
    }
    fn save_page(&self) -> &'static str {
        "Enregistrer cette page en un seul fichier (pour une clé USB)"
    }
}
