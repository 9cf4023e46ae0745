//! German (not yet read by a practitioner).
//!
//! Terms, so that later sentences keep to them. The reader is addressed as “Sie”. What English
//! calls a retarder, whether at the engine or in the driveline, is a “Dauerbremse”; “Retarder” is
//! only the one in the driveline. “Halten” without an object means to stop in traffic: say what
//! is held.
//!
//! | English | German |
//! |---|---|
//! | road, part of it | Strecke, Abschnitt |
//! | descent | Gefällestrecke; in heads and before a number: Gefälle |
//! | grade (signed) | Neigung |
//! | climb, rise | Steigung |
//! | to come down | hinunterfahren, Talfahrt |
//! | crest | Kuppe |
//! | foot of the hill | Fuß |
//! | hairpin; teaching road | Kehre; Lehrstrecke |
//! | easing | Stelle, an der das Gefälle nachlässt |
//! | what the hill asks for | was das Gefälle verlangt |
//! | way down; the service brakes touch | Art der Abfahrt; die Betriebsbremse greift kurz ein |
//! | truck (coaches too) | Fahrzeug |
//! | combination with semitrailer | Sattelzug |
//! | no trailer, bobtail | ohne Anhänger; in sentences: ohne Anhänger oder Auflieger |
//! | retarder (of any kind) | Dauerbremse |
//! | retarder in the driveline | Retarder |
//! | engine brake | Motorbremse |
//! | compression release | Dekompressionsbremse |
//! | exhaust brake | Auspuffklappenbremse |
//! | stage, full stage, off | Stufe, volle Stufe, Dauerbremse aus |
//! | service brakes | Betriebsbremse (singular); their heat: Bremsen |
//! | to snub, snub braking | Intervallbremsung |
//! | to drag the brakes | die Bremse schleifen lassen |
//! | hard stop | kräftige Bremsung bis zum Stillstand; short: Stopp |
//! | brake check (a place) | Bremskontrollplatz |
//! | escape ramp | Notfallspur |
//! | chain-up area | Kettenanlegeplatz |
//! | quiet zone | Lärmschutzzone |
//! | posted limit | Tempolimit |
//! | posted signs | Verkehrszeichen, Schilder |
//! | hold speed | zu haltende Geschwindigkeit; in heads: Tempo |
//! | control, holding force | Haltekraft |
//! | reserve | Reserve |
//! | overrun, unfuelled engine | Motor im Schubbetrieb |
//! | to overrun (in the table) | wird schneller |
//! | engine speed, shaft speed | Motordrehzahl, Wellendrehzahl |
//! | propeller shaft | Kardanwelle |
//! | gear ratio, axle ratio | Übersetzung, Achsübersetzung |
//! | driven axles, steer axle | Antriebsachsen, Lenkachse |
//! | rolling radius | Rollradius |
//! | gross mass | tatsächliches Gesamtgewicht |
//! | grip | Haftung |
//! | superelevation | Querneigung |
//! | rollover threshold | Kippgrenze |
//! | converter, lock-up | Wandler, Überbrückung |
//! | brake adjustment | Bremseneinstellung |
//! | advice, advised | Empfehlung, empfohlen |
//! | assessed | beurteilt |
//! | advisory only | nur ein Anhaltspunkt |
//! | day (its entries) | Bedingungen |
//! | card for the cab | Merkblatt fürs Fahrerhaus |
//! | what held today | was heute gehalten hat |

mod telling;

/// German words of findings and errors.
pub(super) struct German;
