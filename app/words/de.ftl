### German (not yet read by a practitioner).
###
### Terms, so that later sentences keep to them. The reader is addressed as “Sie”. What English
### calls a retarder, whether at the engine or in the driveline, is a “Dauerbremse”; “Retarder” is
### only the one in the driveline. “Halten” without an object means to stop in traffic: say what
### is held.
###
### | English | German |
### |---|---|
### | road, part of it | Strecke, Abschnitt |
### | descent | Gefällestrecke; in heads and before a number: Gefälle |
### | grade (signed) | Neigung |
### | climb, rise | Steigung |
### | to come down | hinunterfahren, Talfahrt |
### | crest | Kuppe |
### | foot of the hill | Fuß |
### | hairpin; teaching road | Kehre; Lehrstrecke |
### | easing | Stelle, an der das Gefälle nachlässt |
### | what the hill asks for | was das Gefälle verlangt |
### | way down; the service brakes touch | Art der Abfahrt; die Betriebsbremse greift kurz ein |
### | truck (coaches too) | Fahrzeug |
### | combination with semitrailer | Sattelzug |
### | no trailer, bobtail | ohne Anhänger; in sentences: ohne Anhänger oder Auflieger |
### | retarder (of any kind) | Dauerbremse |
### | retarder in the driveline | Retarder |
### | engine brake | Motorbremse |
### | compression release | Dekompressionsbremse |
### | exhaust brake | Auspuffklappenbremse |
### | stage, full stage, off | Stufe, volle Stufe, Dauerbremse aus |
### | service brakes | Betriebsbremse (singular); their heat: Bremsen |
### | to snub, snub braking | kurze Bremsung |
### | to drag the brakes | die Bremse schleifen lassen |
### | hard stop | kräftige Bremsung bis zum Stillstand; short: harter Stopp |
### | brake check (a place) | Bremskontrollplatz |
### | escape ramp | Notfallspur |
### | chain-up area | Kettenanlegeplatz |
### | quiet zone | Lärmschutzzone |
### | posted limit | Tempolimit |
### | posted signs | Verkehrszeichen, Schilder |
### | hold speed | zu haltende Geschwindigkeit; in heads: Tempo |
### | control, holding force | Haltekraft |
### | reserve | Reserve |
### | overrun, unfuelled engine | Motor im Schubbetrieb |
### | to overrun (in the table) | wird schneller |
### | engine speed, shaft speed | Motordrehzahl, Wellendrehzahl |
### | propeller shaft | Kardanwelle |
### | gear ratio, axle ratio | Übersetzung, Achsübersetzung |
### | driven axles, steer axle | Antriebsachsen, Lenkachse |
### | rolling radius | Rollradius |
### | gross mass | tatsächliches Gesamtgewicht |
### | grip | Haftung |
### | superelevation | Querneigung |
### | rollover threshold | Kippgrenze |
### | converter, lock-up | Wandler, Überbrückung |
### | brake adjustment | Bremseneinstellung |
### | advice, advised | Empfehlung, empfohlen |
### | assessed | beurteilt |
### | advisory only | nur ein Anhaltspunkt |
### | day (its entries) | Bedingungen |
### | card for the cab | Merkblatt fürs Fahrerhaus |
### | what held today | was heute gehalten hat |

## Words that stand in a file saved for a device.

mark-caution = Aus Eingaben und aufgezeichneten Höhen berechnet, die Fehler enthalten. Keine Erlaubnis hinunterzufahren: Verkehrszeichen, geltendes Recht und die Grenzwerte des Fahrzeugherstellers gehen vor.
by-here = { $how ->
    [down] spätestens hier
   *[up] erst ab hier
}
crest-number = Kuppe { $number }
hold = { $speed } halten
mark-foot = Fuß { $number }
mark-foot-then = Fuß { $number }, dann Gang { $gear }

## Times.

less-than-a-minute = weniger als eine Minute
minutes = { $count } { $count ->
    [one] Minute
   *[other] Minuten
}
hours-and-minutes = { $hours } h { $count } min

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

by-place = { $how ->
    [down] spätestens bei { $at }
   *[up] erst ab { $at }
}
asks = gleichmäßige { $grade }. Am meisten verlangt das Gefälle auf { $length } ab { $from }
engage = Legen Sie den Gang vor { $at-start ->
    [true] dem Losfahren
   *[false] der Kuppe
} ein, und behalten Sie ihn bis zum Fuß bei { $foot }.
engage-first = { $at-start ->
    [true] Legen Sie den ersten dieser Gänge vor dem Losfahren ein. Schalten Sie vor der genannten Stelle herunter, hinauf erst dahinter.
   *[false] Legen Sie den ersten dieser Gänge vor der Kuppe ein. Schalten Sie vor der genannten Stelle herunter, hinauf erst dahinter.
}
chosen = { $lowest ->
    [true] Der niedrigste Gang
   *[false] Er
} ist gewählt für { $asks }.
ruled-out-by = Was es ausschließt: { $asks }.
brakes-warmer = Bremsen { $by } wärmer
doubted = , unsicher: Um so viel können die Höhen falsch sein
and-more = und { $count } weitere
brakes-at-places = Die Betriebsbremse { $needed ->
    [true] wird gebraucht
   *[false] greift kurz ein
} bei: { $places }.
in-doubt = Der Gang hält im Mittel. Kurze steile Stücke bis { $grade } sind nicht auszuschließen: Halten Sie die Betriebsbremse bereit.
between-legs = Dazwischen wird das Fahrzeug für den nächsten Gang langsamer, oder es nimmt Fahrt auf.
slowest-leg = Das langsamste Stück
no-untouched = Kein Gang hält allein auf jedem aufgezeichneten Stück.
deciding = { $count ->
    [one] Die Gefällestrecke
   *[other] Schwerste Gefällestrecke ({ $number } von { $count })
}
decided = { deciding }, ab <strong>{ $crest }</strong>: <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
decided-at-start = { deciding }, ab dem <strong>Anfang der Strecke</strong>: <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
none-decided = { deciding }, ab <strong>{ $crest }</strong>: <strong>keine sichere Geschwindigkeit gefunden</strong>. Fahren Sie mit diesem Fahrzeug, so wie eingegeben, dort nicht hinunter.
none-decided-at-start = { deciding }, ab dem <strong>Anfang der Strecke</strong>: <strong>keine sichere Geschwindigkeit gefunden</strong>. Fahren Sie mit diesem Fahrzeug, so wie eingegeben, dort nicht hinunter.

## Words of the reasons.

why-label = { $held ->
    [true] Warum nicht schneller
   *[false] Warum keine Geschwindigkeit sicher ist
}
untouched-governs = Ihre Wahl unter „Bedingungen“: Schneller würde ein aufgezeichnetes Stück die Betriebsbremse verlangen.
governed-by = { $governs ->
    [speed-limit] Die eingegebene Höchstgeschwindigkeit, { $limit }.
    [posted] Ein Tempolimit unterwegs. Die ganze Gefällestrecke hält es ein, oder ein schnellerer Gang würde dort nicht halten.
    [engine-speed] Die höchste zulässige Motordrehzahl.
    [control] { $off ->
        [true] { $verdict ->
            [retarder-holds] Haltekraft, mit dem Motor allein. Ein schnellerer Gang ließe keine { $reserve } Reserve, oder ein steiles Stück würde der Betriebsbremse zu viel abverlangen.
            [little-in-reserve] Haltekraft, mit dem Motor allein. Ein schnellerer Gang würde gar nicht halten. Schon hier fehlt die Reserve von { $reserve }.
            [needs-service-brakes] Haltekraft, mit dem Motor allein. Schneller würde er weniger als die Hälfte aufbringen, gleich wie heiß die Bremsen sind.
           *[no-safe-speed] Haltekraft, mit dem Motor allein. Schneller würde er weniger als die Hälfte aufbringen, gleich wie heiß die Bremsen sind.
        }
       *[false] { $verdict ->
            [retarder-holds] Haltekraft. In einem schnelleren Gang fehlt der Dauerbremse die Reserve von { $reserve }, oder ein steiles Stück würde der Betriebsbremse zu viel abverlangen.
            [little-in-reserve] Haltekraft. Bei keiner Geschwindigkeit sind { $reserve } Reserve vorhanden. Schneller würde die Dauerbremse noch weniger halten.
            [needs-service-brakes] Haltekraft. Motor und Dauerbremse halten das Fahrzeug nicht allein. Schneller würden sie noch weniger aufbringen.
           *[no-safe-speed] Haltekraft. Motor und Dauerbremse halten das Fahrzeug nicht allein. Schneller würden sie noch weniger aufbringen.
        }
    }
    [curve] Kurven. Zwischen ihnen könnte das Fahrzeug nicht schneller werden, oder sein Gang wäre in der langsamsten Kurve zu hoch.
    [grip] Die Haftung der Antriebsachsen auf dieser Fahrbahn.
   *[heat] Bremsenhitze. Schneller würden die Bremsen nach einer kräftigen Bremsung bis zum Stillstand heißer als { $heat-limit }.
}
no-speed-because = { $because ->
    [speed-limit] Schon die niedrigste geprüfte Geschwindigkeit, { $slowest }, liegt über der eingegebenen Höchstgeschwindigkeit.
    [posted] Selbst bei { $slowest }, der niedrigsten geprüften Geschwindigkeit, würde der Gang nicht zum niedrigsten Tempolimit passen.
    [engine-speed] Selbst bei { $slowest }, der niedrigsten geprüften Geschwindigkeit, würde der Motor zu schnell drehen.
    [control] { $fitted ->
        [true] Selbst bei { $slowest }, der niedrigsten geprüften Geschwindigkeit, hält die Dauerbremse das Fahrzeug nicht.
       *[false] Ohne Dauerbremse hält der Motor das Fahrzeug nicht, selbst bei { $slowest }, der niedrigsten geprüften Geschwindigkeit.
    }
    [curve] Selbst bei { $slowest }, der niedrigsten geprüften Geschwindigkeit, ist jeder Gang für die langsamste Kurve zu hoch.
    [grip] Selbst bei { $slowest }, der niedrigsten geprüften Geschwindigkeit, fehlt den Antriebsachsen die Haftung, um das Fahrzeug zu halten.
   *[heat] Selbst bei { $slowest }, der niedrigsten geprüften Geschwindigkeit, würde eine kräftige Bremsung bis zum Stillstand die Bremsen auf { $reached } erhitzen. Die Grenze ist { $limit }.
}
force-falls-short = Das Gefälle verlangt { $asks } an den Rädern. Das Fahrzeug hält höchstens { $holds }, bei { $speed }.
else-another-road = Wenn sich das nicht ändern lässt, nehmen Sie eine andere Strecke.
note-stages-withheld = { $why ->
    [snow] Auf Schnee oder Eis wird keine Stufe der Dauerbremse (Motorbremse, Retarder) empfohlen: Die Antriebsachsen könnten ausbrechen. Die Anleitungen widersprechen sich: Manche Hersteller erlauben die schwächste Stufe. Hier gilt die vorsichtige Auslegung. Gänge und Geschwindigkeiten rechnen hier nur mit dem Motor im Schubbetrieb, ohne Dauerbremse. Fahren Sie im Zweifel gar nicht erst hinunter: Warten Sie, bis die Straße geräumt und gestreut ist.
    [ice] Auf Schnee oder Eis wird keine Stufe der Dauerbremse (Motorbremse, Retarder) empfohlen: Die Antriebsachsen könnten ausbrechen. Die Anleitungen widersprechen sich: Manche Hersteller erlauben die schwächste Stufe. Hier gilt die vorsichtige Auslegung. Gänge und Geschwindigkeiten rechnen hier nur mit dem Motor im Schubbetrieb, ohne Dauerbremse. Fahren Sie im Zweifel gar nicht erst hinunter: Warten Sie, bis die Straße geräumt und gestreut ist.
    [empty-in-the-wet] Leer auf nasser Straße wird keine Stufe der Dauerbremse (Motorbremse, Retarder) empfohlen: Die Antriebsachsen tragen wenig und könnten ausbrechen. Die Anleitungen widersprechen sich: Manche erlauben schwache Stufen. Hier gilt die vorsichtige Auslegung. Gänge und Geschwindigkeiten rechnen hier nur mit dem Motor im Schubbetrieb, ohne Dauerbremse.
   *[no-trailer-in-the-wet] Ohne Anhänger oder Auflieger auf nasser Straße wird keine Stufe der Dauerbremse (Motorbremse, Retarder) empfohlen: Die Antriebsachsen tragen wenig, und das Zugfahrzeug könnte ins Schleudern geraten. Die Anleitungen widersprechen sich: Manche erlauben schwache Stufen. Hier gilt die vorsichtige Auslegung. Gänge und Geschwindigkeiten rechnen hier nur mit dem Motor im Schubbetrieb, ohne Dauerbremse.
}
note-wet-cap = Nässe: Die Dauerbremse zählt höchstens mit der halben Haftung der Antriebsachsen. Wenn die Antriebsräder rutschen, stellen Sie sie eine Stufe schwächer. Manche Anleitungen sagen: ganz aus.
note-hold-by-hand = Dieses Getriebe würde die Gänge selbst wählen. Stellen Sie es auf Halten, und legen Sie den Gang vor jeder Kuppe von Hand ein.
note-shifts-up-by-itself = Dreht der Motor zu hoch, schaltet dieses Getriebe selbst hoch. Dann fällt die Dauerbremse aus. Die genannten Geschwindigkeiten bleiben darunter.
note-starts-in-descent = Diese Strecke beginnt im Gefälle. Was die Bremsen vorher mitgemacht haben, ist nicht bekannt.
note-partly-unassessed = Auf einem Teil der Strecke fehlen Höhen oder sind falsch. Dort wird nichts empfohlen.
note-poor-heights = Die Höhen dieser Datei sind schlecht: Neigungen sind nur ein Anhaltspunkt. Vergleichen Sie sie mit den Schildern.
note-hot-elsewhere = Bei { $place }, außerhalb der Gefälle, würde eine kräftige Bremsung bis zum Stillstand die Grenze der Bremsen überschreiten. Fahren Sie dort langsamer.
note-cannot-climb = Unter Volllast kommt dieses Fahrzeug einen Teil dieser Strecke in keinem Gang hinauf.

## Short answers, of five words at most: one line beside a question.

short-same = dasselbe
short-no-safe-speed = keine sichere Geschwindigkeit
short-verdict = { $verdict ->
    [retarder-holds] gehalten
    [little-in-reserve] wenig Reserve
    [needs-service-brakes] Betriebsbremse
   *[no-safe-speed] keine sichere Geschwindigkeit
}
short-gear-range = Gänge { $from }–{ $to }
short-out-of-range = Gewicht außerhalb des Bereichs
short-governed = { $governs ->
    [speed-limit] eingegebenes Limit
    [posted] Tempolimit
    [engine-speed] Motordrehzahl
    [control] Haltekraft
    [curve] Kurven
    [grip] Haftung
   *[heat] Bremsenhitze
}
short-own-choice = Ihre Wahl
short-no-speed = { $because ->
    [speed-limit] eingegebenes Limit ist niedriger
    [posted] Tempolimit ist niedriger
    [engine-speed] Motor dreht zu hoch
    [control] zu wenig Haltekraft
    [curve] Gänge für Kurven zu hoch
    [grip] zu wenig Haftung
   *[heat] Bremsen zu heiß
}
short-brakes-hold = Bremsen halten
short-stop-at-once = sofort anhalten
short-stop-before = vor { $place } anhalten
short-no-stop = kein sicheres Anhalten
short-count-of = { $some } von { $runs }
short-curve-count = { $all-hairpins ->
    [true] { $count ->
        [one] { $count } Kehre
       *[other] { $count } Kehren
    }
   *[false] { $count ->
        [one] { $count } Kurve
       *[other] { $count } Kurven
    }
}, { $speed }
short-none-found = keiner gefunden
short-no-gear = kein Gang
short-minutes = { $minutes } min
short-cool = Bremsen unter { $at }
short-mass = höchstens { $mass }
short-retarding = { $share } mehr Dauerbremsleistung
short-reserve = { $kept } Reserve
short-no-change = nichts davon reicht

## What a language says of itself.

colon = :{ " " }
semicolon = ;{ " " }
tag = de
decimal-sign = ,
thousands-sign = { "\u00A0" }
number-to = bis
translation-unread = Diese Übersetzung hat noch niemand aus dem Fahrberuf gelesen. Im Zweifel gilt die englische Seite.

## Words of the plan: verdicts, descents.

verdict = { $verdict ->
    [retarder-holds] Dauerbremse hält das Tempo
    [little-in-reserve] Dauerbremse hält das Tempo, wenig Reserve
    [needs-service-brakes] braucht die Betriebsbremse
   *[no-safe-speed] keine sichere Geschwindigkeit gefunden
}
engine-holds = Motor allein hält das Tempo
engine-holds-little = Motor allein hält das Tempo, wenig Reserve
holds-on-average = hält im Mittel
brakes-touch = hält, Betriebsbremse greift kurz ein
heat-step = { $step ->
    [cool] kühl
    [warm] warm
    [hot] heiß
   *[over-limit] über der Grenze
}
stage-number = Stufe { $number }
retarder-off = Dauerbremse aus
off = aus
in-legs = Gänge { $from } bis { $to }, { $stage } im niedrigsten, { $slow } bis { $fast }
gear-number = Gang { $number }
no-descent = { $partly-unassessed ->
    [true] Auf den Teilen, die beurteilt werden konnten, verlangt kein Gefälle einen bestimmten Gang oder eine Stufe der Dauerbremse.
   *[false] In dieser Richtung verlangt kein Gefälle dieser Strecke einen bestimmten Gang oder eine Stufe der Dauerbremse.
}
no-safe-speed = keine sichere Geschwindigkeit gefunden
other-mode-label = { $service-brakes ->
    [in-reserve] Kurze Bremsungen erlaubt
   *[may-snub] Betriebsbremse nur zum Anhalten
}
same-choice = Derselbe Gang, dieselbe Stufe und dieselbe Geschwindigkeit.
choice-apart = { $choice }; { $time } { $less ->
    [true] kürzer
   *[false] länger
}.
mass-out-of-range = Dieses Gewicht liegt außerhalb des Bereichs.
brakes-at = Etwa { $hottest }, wenn sie am heißesten ist; { $after-stop } nach einer kräftigen Bremsung bis zum Stillstand (Grenze { $limit }).
snub-between = Kurze Bremsungen: von { $from } auf { $to } in etwa { $on } s, dann lösen. Wieder nach etwa { $off } s, wo das Gefälle am meisten verlangt; insgesamt etwa { $count }-mal. Lassen Sie die Bremse nicht schleifen.
parked = Planen Sie nur bei geparktem Fahrzeug. Nicht während der Fahrt benutzen.
cautions =
    .aid = Ein Hilfsmittel für Planung und Unterricht: keine Anweisung und keine Freigabe einer Strecke.
    .worked-out = Berechnet aus Ihren Eingaben und aus aufgezeichneten Höhen, die Fehler enthalten.
    .unseen = Das Programm sieht nicht: Bremseneinstellung, Reifen, Fahrbahn, Wetter, Verkehr, Sperrungen und wie die Ladung sitzt.
    .first = Verkehrszeichen, das Gesetz, die Vorschriften Ihres Arbeitgebers und die Grenzwerte des Herstellers gehen vor.
    .means = Die Betriebsbremse bleibt das Mittel zum Anhalten.
    .doubt = Im Zweifel: oben anhalten, langsamer fahren oder eine andere Strecke nehmen.

## Words of one descent's details, and of its table.

no-advice = Es wurde keine Geschwindigkeit gefunden, die die Grenzen einhält. Fahren Sie mit diesem Fahrzeug, so wie eingegeben, dort nicht hinunter.
falls-short = Bei voller Stufe fehlen { $share } dessen, was das Gefälle verlangt: Die Betriebsbremse muss helfen.
more-than-asked = Bei voller Stufe { $share } mehr, als das Gefälle verlangt.
advice-in-full = Gang { $gear }, bis zu { $stage }, { $speed } bei { $engine-speed }. { $reserve } { $time } von der Kuppe bis zum Fuß.
eases-over = { $span }: eben oder steigend auf { $length }. Nicht hochschalten: Das Gefälle geht weiter.
mean-grade = { $grade } im Mittel.
steepest-over = { $grade } über die steilsten { $length }, ab { $from }{ $doubt }.
too-short-for-heights = ; für ein so kurzes Stück reichen die Höhen nicht aus
curve-count = { $count ->
    [one] { $hairpins ->
        [0] 1 Kurve verlangt weniger als diese Geschwindigkeit
       *[other] 1 Kehre verlangt weniger als diese Geschwindigkeit
        [one] 1 Kehre verlangt weniger als diese Geschwindigkeit
    }
   *[other] { $hairpins ->
        [0] { $count } Kurven verlangen weniger als diese Geschwindigkeit
        [one] { $count } Kurven verlangen weniger als diese Geschwindigkeit, 1 davon ist eine Kehre
       *[other] { $count } Kurven verlangen weniger als diese Geschwindigkeit, { $hairpins } davon sind Kehren
    }
}
slowest-curve = Die langsamste: höchstens { $speed } bei { $at }, { $side }, Radius etwa { $radius }.
curves-estimated = Radien sind aus der Aufzeichnung geschätzt; Querneigung, Sicht und Fahrbahn sind nicht bekannt.
side = { $left ->
    [true] nach links
   *[false] nach rechts
}
climbs-in = Mit Vollgas steigt es dort im Gang { $gear } mit etwa { $speed }. Der Gang für die Talfahrt ist oft niedriger.
climbs-in-none = Mit Vollgas kommt es in keinem Gang hinauf.
brakes-arrive = Die Bremsen kommen an der Kuppe mit etwa { $heat } an.
table-of = Was jeder Gang und jede Stufe auf { $grade } in { $height } Meereshöhe bewirkt, ohne Gas und ohne Betriebsbremse
more-than-needed = mehr als nötig
overruns = wird schneller
above-speed = über { $speed }
not-usable = nicht nutzbar
unusable = { $why ->
    [slippery] zu glatt
    [grip] zu wenig Haftung
    [cut-out] abgeschaltet
   *[unlocked] Wandler offen
}
fall-in-part = { $all } (davon { $blank } nicht beurteilt)
no-work-counted = Auf { $length } ohne Beurteilung ist keine Bremsarbeit mitgezählt.
whole-way = Ganze Strecke: { $time }, { $fall } hinunter. Dauerbremse und Motor nehmen { $holding } auf, die Betriebsbremse { $service }.
slowest-climb = Am langsamsten an einer Steigung: etwa { $speed }.
less-than = unter { $share }
about = etwa { $quantity }
share-and-fuel = Die Betriebsbremse leistet { $share } der Bremsarbeit. Kraftstoff: { $fuel }.
table-legend =
    .speed = eine Geschwindigkeit
    .speed-means = dort pendelt sich das Fahrzeug ein, darunter steht die Motordrehzahl
    .more = mehr als nötig
    .more-means = es wird langsamer: Eine schwächere Stufe oder ein höherer Gang würde genügen
    .overruns = wird schneller
    .overruns-means = es wird schneller, bis der Motor zu schnell dreht: einen niedrigeren Gang oder die Betriebsbremse benutzen
    .not-usable = nicht nutzbar
    .not-usable-means = aus dem genannten Grund
    .one-gear = in einem Gang
    .one-gear-means = lässt sich durch Wechsel der Stufe jede Geschwindigkeit halten, von der, bei der sich die stärkste Stufe einpendelt, bis zum oberen Ende des Gangs

## Words of what follows from a plan: what would change it, how sure it is, what if.

light-enough = Mit { $mass } oder weniger würde die Dauerbremse es mit der Reserve halten.
no-lighter-load = Keine leichtere Ladung würde das ändern.
more-retarding = Mit { $share } mehr Dauerbremsleistung, als dieses Fahrzeug hat, ließe es sich mit der Reserve halten.
reserve-kept = So wie es ist, bleiben höchstens { $kept } Reserve, nicht { $asked }.
cool-enough = Mit Bremsen, die an der Kuppe nicht wärmer als { $at } sind, würde die Grenze eingehalten: Lassen Sie sie erst abkühlen.
meets-rise = So bis zum Fuß gehalten, fährt es bei { $at } mit etwa { $speed } in die Steigung. Für mehr Schwung nicht früher lösen.
driven-so = { $runs } Mal gefahren, Neigungen, Masse, Widerstände, Wind, Dauerbremse und Bremsen jedes Mal etwas anders.
in-none = in keiner von { $runs } Fahrten
in-all = in allen { $runs } Fahrten
in-some = in { $some } von { $runs } Fahrten
speed-held = Die Dauerbremse allein hielt die Geschwindigkeit { $of }.
touches-left-out = Ausgenommen sind die Stellen, an denen die Betriebsbremse kurz eingreift.
limit-kept = Die Bremsen hielten, mit einer kräftigen Bremsung bis zum Stillstand, die Grenze ein { $of }.
nine-of-ten = In neun von zehn Fahrten hatten die Bremsen nach einer kräftigen Bremsung bis zum Stillstand zwischen { $cool } und { $hot }.
spread-from = Diese Spanne bestimmen vor allem: { $inputs }.
input = { $input ->
    [grade] die Neigungen
    [mass] die Masse
    [rolling] der Rollwiderstand
    [drag] der Luftwiderstand
    [retarder] was die Dauerbremse leistet
    [wind] der Wind
    [brakes-at-start] die Bremsen am Anfang
   *[cooling] wie viel Wärme die Bremsen speichern und abgeben
}
and-then = , dann{" "}
stops-anywhere = Bei kräftigem Bremsen innerhalb von zwei Sekunden kommt das Fahrzeug von jeder Stelle aus innerhalb der Wärmegrenze zum Stehen.
stops-until = Bei kräftigem Bremsen innerhalb von zwei Sekunden kommt das Fahrzeug bis { $until } innerhalb der Wärmegrenze zum Stehen, dahinter nicht mehr.
stops-nowhere = Nicht einmal an der Kuppe würde eine kräftige Bremsung bis zum Stillstand die Wärmegrenze einhalten.
brakes-hold = Die Betriebsbremse könnte es auch bis zum Fuß innerhalb der Grenze bei seiner Geschwindigkeit halten.
brakes-hold-from = Erst ab { $from } könnte die Betriebsbremse es bis zum Fuß bei seiner Geschwindigkeit halten. Davor: anhalten.
brakes-hold-nowhere = Die Betriebsbremse könnte es nicht bis zum Fuß halten: anhalten.
neither-from = Ab { $from } würde weder das eine noch das andere die Grenze einhalten.
ramp-met = Notfallspur bei { $at }. Ab { $lost-at } ohne Bremsen rollend, würde das Fahrzeug sie mit etwa { $speed } erreichen. Ein ebenes Bett aus losem Rundkies müsste etwa { $needs } lang sein.
no-ramp-entered = Auf dieser Gefällestrecke ist keine Notfallspur eingetragen. Das heißt nicht, dass es keine gibt.
long-stroke = Angenommen: Die Trommelbremsen einer Achsgruppe haben kalt einen Hub von 1¾ Zoll (44 mm). Ein Bremszylinder der Größe 30 kommt dann bei { $at } an seine Grenze von 2 Zoll (51 mm). Darüber zählen sie hier nicht, und die anderen sind heißer. Bei 1⅝ Zoll (41 mm) sind es { $shorter }, bei 1½ Zoll (38 mm) { $short }.
half-braked = Würden die Scheibenbremsen einer Achsgruppe nur halb so stark bremsen, wären die anderen auf der ganzen Strecke heißer.
out-of-adjustment = { $axles }: etwa { $heat } nach einer kräftigen Bremsung bis zum Stillstand{ $over }.
axles = { $axle-place ->
    [steer] Lenkachse
    [drive] Antriebsachsen
   *[trailer] Anhänger
}
full-stage-from = { $from }, mit { $speed }
rest-below = ; unter { $speed } die Betriebsbremse
brake-early = reicht nicht: früh bremsen
standstill = Halt
by-brakes-alone = { $way }, dann etwa { $after }
curve-of = Kurve, Radius etwa { $radius }
place-to-stop = Halt, Ampel oder Kreuzung
town = Ortschaft
driven-in-short = { $runs } Mal mit kleinen Fehlern gefahren
held-and-kept = Die Dauerbremse hielt es jedes Mal, und die Bremsen hielten die Grenze ein.
shares-held = Die Dauerbremse allein hielt es in { $held } der Fahrten, die Bremsen hielten die Grenze in { $kept } der Fahrten ein.
held-with = Bei { $engine-speed } hielt sie mit { $power }; die Fahrzeugdaten ergeben { $assumed }. Das sind { $share } dessen, was sie für die Dauerbremse angeben.
not-measured-no-such-stage = Dieses Fahrzeug hat keinen solchen Gang oder keine solche Stufe.
not-measured-off = Mit ausgeschalteter Dauerbremse ist über sie nichts zu erfahren: Geben Sie eine Stufe ein.
not-measured-not-pushed = Diese Neigung schiebt dieses Fahrzeug bei dieser Geschwindigkeit nicht: Geben Sie ein steileres Stück ein.
not-measured-gauges-differ = In diesem Gang würde der Motor bei dieser Geschwindigkeit mit etwa { $engine-speed } drehen: Gang, Achsübersetzung, Reifen oder eine der beiden Angaben stimmt nicht.
not-measured-out-of-reach = Die Dauerbremse müsste { $share } dessen leisten, was ihre Daten angeben. Eher sind Masse, Neigung oder Stufe nicht wie eingegeben, oder die Betriebsbremse hat geholfen.

## Words of places and posted limits along the road.

place-kind = { $kind ->
    [summit] Passhöhe
    [brake-check] Bremskontrollplatz
    [escape-ramp] Notfallspur
    [settlement] Ortschaft
    [stop] Halt, Ampel oder Kreuzung
    [parking] Park- oder Rastplatz
    [tunnel] Tunnel
    [bridge] Brücke
    [danger] Gefahrenstelle
    [chain-up] Kettenanlegeplatz
    [quiet-zone] Lärmschutzzone
    [exit] Ausfahrt
   *[other] anderer Ort
}
posted-limit = Tempolimit

## Words of the entries of truck and day.

preset = { $preset ->
    [five-axle36] { $units ->
        [metric] Fünfachsiger Sattelzug, 36,3 t
       *[imperial] Fünfachsiger Sattelzug, 80 000 lb
    }
    [five-axle40] { $units ->
        [metric] Fünfachsiger Sattelzug, 40 t
       *[imperial] Fünfachsiger Sattelzug, 88 200 lb
    }
    [five-axle40-both] { $units ->
        [metric] Fünfachsiger Sattelzug, 40 t, hydrodynamisch und Motorbremse
       *[imperial] Fünfachsiger Sattelzug, 88 200 lb, hydrodynamisch und Motorbremse
    }
    [five-axle-empty] { $units ->
        [metric] Fünfachsiger Sattelzug, leer, 14,5 t
       *[imperial] Fünfachsiger Sattelzug, leer, 32 000 lb
    }
    [six-axle44] { $units ->
        [metric] Sechsachsiger Sattelzug, 44 t
       *[imperial] Sechsachsiger Sattelzug, 97 000 lb
    }
    [drawbar40] { $units ->
        [metric] Gliederzug, 40 t
       *[imperial] Gliederzug, 88 200 lb
    }
    [refuse26] { $units ->
        [metric] Müllwagen mit Wandlerautomatik, 26 t
       *[imperial] Müllwagen mit Wandlerautomatik, 57 300 lb
    }
    [rigid18] { $units ->
        [metric] Zweiachsiger Solo-Lkw, 18 t
       *[imperial] Zweiachsiger Solo-Lkw, 39 700 lb
    }
    [tipper26] { $units ->
        [metric] Dreiachsiger Kipper, 26 t
       *[imperial] Dreiachsiger Kipper, 57 300 lb
    }
    [b-double] { $units ->
        [metric] Neunachsiger Zug mit zwei Aufliegern, 62,5 t
       *[imperial] Neunachsiger Zug mit zwei Aufliegern, 137 800 lb
    }
    [coach] { $units ->
        [metric] Reisebus, 19 t
       *[imperial] Reisebus, 41 900 lb
    }
   *[coach-converter] { $units ->
        [metric] Reisebus mit Wandler, 19 t
       *[imperial] Reisebus mit Wandler, 41 900 lb
    }
}
retarder = { $kind ->
    [none] keine Dauerbremse
    [compression-release] Motorbremse
    [exhaust-valve] Auspuffklappenbremse
    [hydrodynamic] hydrodynamischer Retarder
    [electromagnetic] elektrischer Retarder
    [compression-and-hydrodynamic] Motorbremse und hydrodynamischer Retarder
    [exhaust-and-hydrodynamic] Auspuffklappe und hydrodynamischer Retarder
    [compression-and-electromagnetic] Motorbremse und elektrischer Retarder
    [exhaust-and-electromagnetic] Auspuffklappe und elektrischer Retarder
    [engine-power-table] eigene Tabelle, am Motor
   *[shaft-torque-table] eigene Tabelle, an der Kardanwelle
}
transmission = { $transmission ->
    [manual] von Hand geschaltet
    [automated] automatisiert
   *[torque-converter] Wandler
}
load = { $load ->
    [laden] beladen
    [empty] leer
   *[no-trailer] ohne Anhänger
}
axle-group = { $axles } { $axle-place ->
    [steer] { $axles ->
        [one] Lenkachse
       *[other] Lenkachsen
    }
    [drive] { $axles ->
        [one] Antriebsachse
       *[other] Antriebsachsen
    }
   *[trailer] { $axles ->
        [one] Anhängerachse
       *[other] Anhängerachsen
    }
}, { $brake ->
    [drum] Trommelbremsen
   *[disc] Scheibenbremsen
}, { $share } % der Bremswirkung
surface = { $surface ->
    [dry] trocken
    [wet] nass
    [snow] Schnee
   *[ice] Eis
}
service-brakes = { $service-brakes ->
    [in-reserve] nur zum Anhalten
   *[may-snub] kurze Bremsungen erlaubt
}
lead = { $lead ->
    [usual] die schnellste
    [one-gear] ein Gang
   *[untouched] ohne Betriebsbremse
}
truck-entry = { $name }: Geben Sie einen Wert von { $range } ein.
entry = { $entry ->
    [rated-power] Nennleistung des Motors
    [governed-speed] Abregeldrehzahl des Motors
    [top-gear-speed] Motordrehzahl im höchsten Gang
    [gross-mass] Tatsächliches Gesamtgewicht
    [drive-axle-mass] Gewicht auf den Antriebsachsen
    [rolling-radius] Rollradius
    [wheel-inertia] Trägheitsmoment der Räder
    [rolling-resistance] Rollwiderstandsbeiwert
    [drag-area] Luftwiderstandsfläche
    [displacement] Hubraum des Motors
    [lowest-engine-speed] Niedrigste nutzbare Motordrehzahl
    [highest-engine-speed] Höchste zulässige Motordrehzahl
    [axle-ratio] Achsübersetzung
    [axle-efficiency] Wirkungsgrad der Achse
    [retarder-peak-power] Bremsleistung der Dauerbremse
    [retarder-peak-speed] Motordrehzahl der vollen Bremsleistung
    [retarder-exponent] Anstieg der Bremsleistung mit der Motordrehzahl
    [retarder-cut-out] Motordrehzahl, unter der die Dauerbremse abschaltet
    [rollover-threshold] Kippgrenze
    [air-temperature] Lufttemperatur
    [brakes-at-start] Bremsen{"\u00AD"}temperatur am Anfang
    [headwind] Gegenwind
    [speed-limit] Höchst{"\u00AD"}geschwindigkeit
    [reserve] Reserve an Haltekraft
    [heat-limit] Höchste Bremsen{"\u00AD"}temperatur
    [superelevation] Querneigung der Kurven
    [retarder-delay] Pause der Dauerbremse nach dem Schalten
    [retarding-scale] Gemessene zu angenommener Bremswirkung
    [shaft-torque] Bremsmoment des Retarders an der Kardanwelle
    [shaft-speed] Wellendrehzahl dieses Bremsmoments
    [short-power] Kurzzeitleistung des Retarders
    [short-time] Dauer der Kurzzeitleistung
    [sustained-power] Dauerleistung des Retarders
    [sustained-speed] Motordrehzahl der Dauerleistung
    [hot-share] Bremsmoment heiß zu kalt
    [warm-up-time] Erwärmungszeit des Retarders
    [lock-up-gear] Niedrigster Gang mit Überbrückung
    [lock-up-speed] Motordrehzahl, bei der die Überbrückung öffnet
    [brake-check-stop] Zeit an jedem Bremskontrollplatz
   *[shifts-up-speed] Motordrehzahl, bei der das Getriebe selbst hochschaltet
}

## Words of the road: its quality, what was repaired, what was not assessed.

both-ends = gefahren vom Ende auf { $start } Höhe zum Ende auf { $end } Höhe
climbs-between = Diese Strecke steigt in der angezeigten Richtung von { $start } auf { $end }. Fahren Sie sie bergab?
onward-from = ab { $place }

## Why a truck or a truck file is not taken, but for entries out of their ranges.

truck-drive-axle-mass = Das Gewicht auf den Antriebsachsen ist größer als das tatsächliche Gesamtgewicht; geben Sie ein kleineres ein.
truck-engine-speeds = Die niedrigste nutzbare Motordrehzahl muss unter der höchsten zulässigen Motordrehzahl liegen.
truck-gears = Die Gänge müssen 1 bis { $most } Übersetzungen von { $low } bis { $high } sein, jede kleiner als die davor.
truck-full-load = Die Volllastkurve braucht 2 bis { $most } Punkte mit steigender Motordrehzahl ({ $low } bis { $high }/min), Drehmoment 0 bis { $torque } N·m.
truck-stages = Die Stufen der Dauerbremse müssen 1 bis { $most } Anteile über 0 sein, ansteigend, der letzte 1 (100 %).
truck-table = Die Tabelle der Dauerbremse braucht 2 bis { $rows } Zeilen mit steigender Drehzahl ({ $low } bis { $high }/min), alle mit gleich vielen Werten (1 bis { $most }), keiner kleiner als der davor in seiner Zeile.
truck-axle-groups = Nötig sind 1 bis { $most } Achsgruppen mit je 1 bis { $axles } Achsen, deren Anteile an der Bremswirkung zusammen 1 ergeben.
truck-file-broken = Fehler in Zeile { $line } (Meldung auf Englisch: { $what }). Berichtigen Sie das dort, oder speichern Sie die Datei noch einmal.
truck-file-cut-off = Ein Teil dieser Datei fehlt. Kopieren Sie sie noch einmal, oder lassen Sie sie sich noch einmal schicken.
truck-file-newer = Diese Datei hat die Version { $found }; hier werden Versionen bis { $newest } gelesen.

## Why a file gives no road, and what to do.

-ask-gpx = Exportieren Sie den Track als GPX, und wählen Sie diese Datei.
-ask-heights = Zeichnen Sie die Strecke mit einem Gerät auf, das Höhen speichert, oder ergänzen Sie die Höhen des Tracks mit einem Routenplaner, und exportieren Sie ihn noch einmal.
file-empty = Die Datei ist leer. { -ask-gpx }
file-foreign = { $foreign ->
    [html] Das ist eine Webseite, keine GPX-Datei. Melden Sie sich dort an, wo der Track gespeichert ist, und laden Sie den Track selbst als GPX herunter.
    [kml] Das ist eine KML-Datei; sie enthält selten brauchbare Höhen. { -ask-gpx }
    [gzip] Das ist ein gzip-Archiv. Entpacken Sie es, und wählen Sie die GPX-Datei darin.
    [zip] Das ist ein zip-Archiv. Entpacken Sie es, und wählen Sie die GPX-Datei darin.
    [fit] Das ist eine binäre FIT-Aufzeichnung, keine GPX-Datei. { -ask-gpx }
    [json] Das ist eine JSON-Datei, keine GPX-Datei. { -ask-gpx }
    [pdf] Das ist ein PDF-Dokument, keine GPX-Datei. { -ask-gpx }
    [picture] Das ist ein Bild, keine GPX-Datei. { -ask-gpx }
    [other-xml] Das ist eine XML-Datei anderer Art: Ihr äußerstes Element heißt „{ $name }“, nicht „gpx“. { -ask-gpx }
   *[unknown] Das ist keine GPX-Datei. { -ask-gpx }
}
file-nothing-inside = In der GPX-Datei ließ sich kein Track und keine Route lesen. Wenn die Datei beim Kopieren abgeschnitten wurde, kopieren Sie sie noch einmal; sonst exportieren Sie den Track selbst, nicht nur seine Zusammenfassung.
file-waypoints-only = Die Datei enthält nur Wegpunkte ({ $count }): Orte, aber keine Strecke dazwischen. Exportieren Sie den Track oder die Route.
file-heights-unreadable = Keiner der { $points } Punkte hat eine Höhe in einfachen Metern. Höhen, die nicht lesbar sind oder eine Einheit tragen, die nicht geraten wird: { $unreadable }. Exportieren Sie die Höhen in Metern, als einfache Zahlen.
file-heights-constant = Alle Höhen in der Datei sind dieselbe Zahl, sie kennt also die Steigungen und Gefälle nicht ({ $points } Punkte). { -ask-heights }
file-no-heights = Keiner der { $points } Punkte hat eine Höhe, deshalb kann die Strecke nicht beurteilt werden. { -ask-heights }
file-too-coarse = Die Punkte liegen zu weit auseinander: etwa { $found } m; höchstens { $most } m sind zulässig, um die Neigungen zu erkennen. Exportieren Sie einen Track mit allen Punkten, nicht eine Route mit wenigen Abbiegepunkten.
file-bad-points = { $bad } von { $points } Punkten { $bad ->
    [one] hat
   *[other] haben
} keine brauchbare geografische Breite und Länge, zuerst in Zeile { $line }. { $swapped ->
    [true] Anscheinend sind Breite und Länge vertauscht; berichtigen Sie das dort, wo die Datei erstellt wird, und exportieren Sie sie noch einmal.
   *[false] Exportieren Sie den Track noch einmal.
}
file-too-short = Die Strecke ist nur { $found } m lang; mindestens { $least } m sind nötig. Wählen Sie einen längeren Track.
file-nothing-left = Auf keinem der { $length } km sind die Höhen verlässlich, deshalb kann keine Neigung angegeben werden. { -ask-heights }
file-too-many-bytes = Die Datei hat { $found } MB; höchstens { $most } MB können gelesen werden. Exportieren Sie einen kürzeren Teil des Tracks oder weniger Punkte.
file-too-many-points = Die Datei hat mehr als { $most } Millionen Punkte. Exportieren Sie einen kürzeren Teil des Tracks oder weniger Punkte.
file-too-many-courses = Die Datei hat mehr als { $most } Tracks oder weit auseinander liegende Stücke. Exportieren Sie nur die Strecke, die Sie brauchen.
file-too-long = Die Strecke ist { $found } km lang; höchstens { $most } km können berechnet werden. Exportieren Sie einen kürzeren Teil davon.
file-refused = Die Datei wird in Zeile { $line } abgelehnt: { $refusal ->
    [entities] Sie deklariert eigene Entitäten
    [nesting] Elemente sind mehr als { $most } Ebenen tief verschachtelt
   *[long-tag] Ein XML-Tag ist länger als { $most } kB
}. Das braucht kein Track. Exportieren Sie den Track dort, wo er erstellt wurde, noch einmal.
file-bad-heights = Höhe Nummer { $number } ist nicht verwendbar: Nötig sind mindestens zwei endliche Höhen im Abstand von mehr als 0 m und höchstens 50 m.
file-no-such-course = Verlangt wurde Track Nummer { $number }, die Datei hat aber nur { $count }. Wählen Sie einen davon.
file-legs-apart = Datei { $number } beginnt { $gap } km entfernt von der Stelle, an der Datei { $previous } endet; deshalb führt keine Strecke von der einen zur anderen. Ändern Sie die Reihenfolge, oder drehen Sie eine der beiden um.
file-not-one-road = Aufzeichnung { $number } zeigt nicht dieselbe Strecke. Zu wenig von ihr liegt auf den vorigen, ihre Höhen weichen zu stark ab, oder sie ist eine Kopie. Vergleichen Sie die Dateien, oder verbinden Sie sie.
file-cancelled = Wie gewünscht abgebrochen; wählen Sie eine Datei, um neu zu beginnen.

## Findings: what was noticed or repaired in a file. Places along the road stand beside them.

found-encoding = Die Datei nennt als Kodierung ihres Textes { $declared }, sie wurde aber als { $read-as } gelesen.
found-no-encoding = Die Datei nennt ihre Kodierung nicht; sie wurde als { $read-as } gelesen.
found-junk-before = { $count ->
    [one] { $count } Byte
   *[other] { $count } Bytes
} vor dem Anfang der Datei übersprungen.
found-cut-off = Die Datei bricht in Zeile { $line } ab; alles davor wird verwendet.
found-undeclared-prefix = Das Präfix „{ $prefix }“ wird verwendet, ist aber nicht deklariert, zuerst in Zeile { $line }; trotzdem gelesen.
found-bad-reference = { $count ->
    [one] { $count } Text
   *[other] { $count } Texte
} mit einem losen „&“, zuerst in Zeile { $line }; so gelassen, wie geschrieben.
found-tags-repaired = { $count ->
    [one] { $count } XML-Tag
   *[other] { $count } XML-Tags
} an falscher Stelle, zuerst in Zeile { $line }; gelesen, wie gemeint.
found-document-type = Eine Dokumenttyp-Angabe in Zeile { $line } wird nicht beachtet; nichts wurde abgerufen.
found-decimal-comma = { $count ->
    [one] { $count } Zahl
   *[other] { $count } Zahlen
} mit Komma statt Punkt, zuerst in Zeile { $line }; als Dezimalkomma gelesen.
found-padding = { $count ->
    [one] { $count } Zahl
   *[other] { $count } Zahlen
} mit Leerzeichen davor oder dahinter, zuerst in Zeile { $line }; Leerzeichen nicht beachtet.
found-metres-written = { $count ->
    [one] { $count } Höhe
   *[other] { $count } Höhen
} mit „m“ geschrieben, zuerst in Zeile { $line }; als Meter gelesen.
found-foreign-unit = { $count ->
    [one] { $count } Höhe
   *[other] { $count } Höhen
} mit einer anderen Einheit als Meter, zuerst in Zeile { $line }; als fehlend behandelt, denn eine Einheit wird nie geraten.
found-height-unreadable = { $count ->
    [one] { $count } Höhe
   *[other] { $count } Höhen
} nicht als Zahl in Metern brauchbar, zuerst in Zeile { $line }; als fehlend behandelt.
found-points-dropped = { $count ->
    [one] { $count } Punkt
   *[other] { $count } Punkte
} ohne brauchbare geografische Breite und Länge, zuerst in Zeile { $line }; weggelassen.
found-waypoints-left-out = { $count ->
    [one] { $count } Wegpunkt
   *[other] { $count } Wegpunkte
} weggelassen; die ersten { $kept } bleiben erhalten.
found-route-shape = { $count ->
    [one] { $count } Punkt
   *[other] { $count } Punkte
} zwischen den Abbiegepunkten der Route für ihren Verlauf verwendet.
found-segments-joined = { $count ->
    [one] { $count } Teilstück
   *[other] { $count } Teilstücke
} des Tracks verbunden; die größte Lücke ist { $widest } m.
found-stops-merged = { $count ->
    [one] { $count } Punkt
   *[other] { $count } Punkte
} an derselben Stelle wie der davor; zusammengefasst.
found-jumps = { $count ->
    [one] { $count } Punkt
   *[other] { $count } Punkte
} weit neben dem Track; weggelassen.
found-zero-heights = { $count ->
    [one] { $count } Höhe
   *[other] { $count } Höhen
} gleich null oder ohne jede Änderung; als fehlend behandelt.
found-spikes = { $count ->
    [one] { $count } Höhe
   *[other] { $count } Höhen
} als Ausreißer erkannt, um bis zu { $largest } m; als fehlend behandelt.
found-heights-filled = Fehlende Höhen an { $count ->
    [one] { $count } Stelle
   *[other] { $count } Stellen
} durch gerade Linien ergänzt, die längste über { $longest } m.
unassessed-because = { $unassessed ->
    [gap] Die Datei hat dort keine Punkte
    [no-heights] Die Datei hat dort keine Höhen
    [step] Die Höhen springen dort und kehren nicht zurück
   *[sliver] Der Abschnitt zwischen zwei anderen ohne Beurteilung ist zu kurz
}.
found-not-assessed = Keine Neigung und keine Empfehlung auf diesem Abschnitt: { unassessed-because }
found-tunnel = Die Höhen steigen um { $rise } m und fallen wieder, wie über einem Tunnel; verwendet wird eine gerade Linie.
found-viaduct = Die Höhen fallen um { $drop } m und steigen wieder, wie unter einer Brücke; verwendet wird eine gerade Linie.
found-very-steep = An { $count ->
    [one] { $count } Stelle
   *[other] { $count } Stellen
} steiler als die meisten Straßen für schwere Fahrzeuge, mit bis zu { $grade } % auf 200 m; vergleichen Sie das mit den Schildern.
found-combined = { $count } Aufzeichnungen dieser Strecke zu einer zusammengeführt; mindestens zwei von ihnen kennen { $common } km davon.
found-disagree = Die beiden Aufzeichnungen unterscheiden sich um bis zu { $apart } m Höhe auf { $length } m; verwendet wird die steilere.
found-rough = { $from-terrain ->
    [true] Die Höhen stammen anscheinend aus einem Geländemodell, nicht von der Straße
   *[false] Die Höhen sind unruhig
} ({ $points } Prozentpunkte zwischen benachbarten 100 m); eine Neigung gilt erst ab { $base } m Länge{ $poor ->
    [true] { "" } und ist nur ein Anhaltspunkt
   *[false] { "" }
}.
