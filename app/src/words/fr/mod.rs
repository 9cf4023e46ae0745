//! French (not yet read by a practitioner).
//!
//! Terms, so that later sentences keep to them. The reader is addressed as “vous”. “Vitesse” is
//! only a speed, never a gear; “pente” is the grade, “côte” or “descente” the hill. “Arrêt” is
//! the truck's; what is switched off is “coupé”. Of two current words the one that is understood
//! in most countries stands here.
//!
//! | English | French |
//! |---|---|
//! | road, part of it | route, partie de la route |
//! | stretch | tronçon |
//! | track, route (of the file), waypoint | trace, itinéraire, point de passage |
//! | descent, downgrade | descente |
//! | grade (signed) | pente |
//! | steepest part | partie la plus raide |
//! | what the hill asks for | ce que demande la descente |
//! | way down; the service brakes touch | façon de descendre; les freins de service agissent un peu |
//! | climb, rise | montée |
//! | crest | sommet |
//! | foot of the hill | pied de la descente |
//! | easing | endroit où la pente s'adoucit |
//! | hairpin; teaching road | virage en épingle; route d'enseignement |
//! | heights | altitudes |
//! | truck (coaches too) | véhicule |
//! | combination, rigid, tipper | ensemble, porteur, camion-benne |
//! | no trailer, bobtail | sans remorque; in sentences: sans remorque ni semi-remorque |
//! | retarder (of any kind) | ralentisseur |
//! | engine brake | ralentisseur moteur; of signs: frein moteur |
//! | compression release | frein moteur à décompression |
//! | exhaust brake | frein sur échappement |
//! | stage, full stage, off | cran, plein cran, ralentisseur coupé |
//! | service brakes | freins de service |
//! | snub braking, a snub | freinage intermittent, freinage |
//! | to drag the brakes | freiner en continu |
//! | hard stop | freinage énergique jusqu'à l'arrêt; in heads: après arrêt |
//! | brake check (a place) | aire de vérification des freins |
//! | escape ramp | voie de détresse |
//! | chain-up area | aire de chaînage |
//! | quiet zone | zone sensible au bruit |
//! | posted signs, posted limit | signalisation (or panneaux), limitation signalée |
//! | to hold a truck | retenir le véhicule |
//! | hold speed, to hold it | vitesse à tenir, tenir; in heads: à tenir |
//! | control, holding force | retenue, force de retenue |
//! | reserve | réserve |
//! | overrun, unfuelled engine | moteur entraîné par les roues, sans injection |
//! | to overrun (in the table) | s'emballe |
//! | engine speed, shaft speed | régime moteur, vitesse de rotation de l'arbre |
//! | propeller shaft | arbre de transmission |
//! | gear; to shift up | rapport; passer au rapport supérieur |
//! | gear ratio, axle ratio | rapport de démultiplication, rapport de pont |
//! | driven axles, steer axle | essieux moteurs, essieu directeur |
//! | rolling radius | rayon de roulement |
//! | gross mass | masse totale réelle |
//! | grip, to break away | adhérence, perdre l'adhérence |
//! | superelevation | dévers |
//! | rollover threshold | seuil de renversement |
//! | converter, lock-up | convertisseur, verrouillage du convertisseur |
//! | brake adjustment | réglage des freins |
//! | advice, advised | conseil, conseillé |
//! | assessed | évalué |
//! | advisory only | à titre indicatif seulement |
//! | entries | données saisies |
//! | day (its entries) | conditions du jour |
//! | card for the cab, marker | fiche pour la cabine, borne |
//! | what held today | ce qui a tenu aujourd'hui |

mod telling;

/// French words of findings and errors.
pub(super) struct French;
