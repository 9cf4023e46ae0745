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
### | to snub, snub braking | Intervallbremsung |
### | to drag the brakes | die Bremse schleifen lassen |
### | hard stop | kräftige Bremsung bis zum Stillstand; short: Stopp |
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

## Words of the notice before the page, and of what the pictures say to whoever does not see them.

i-am-parked = Ich parke
road-table = Die Strecke als Tabelle
road-table-heads =
    .span = von – bis
    .part = Abschnitt
between = kein Gefälle
power-table = Die Leistung als Tabelle
power-heads =
    .engine-speed = Motordrehzahl, /min
    .pulls = zieht
holds = hält, { $stage }
window-ends =
    .beginning = Anfang des gezeigten Abschnitts
    .end = Ende des gezeigten Abschnitts
ends-where-it-began = Sie endet, wo sie begonnen hat.
leads-away = Sie endet { $away } Luftlinie von ihrem Anfang entfernt, Richtung { $towards }.
winds =
    .north = Norden
    .north-east = Nordosten
    .east = Osten
    .south-east = Südosten
    .south = Süden
    .south-west = Südwesten
    .west = Westen
    .north-west = Nordwesten
card-profile = Profil der Strecke. Was es zeigt, steht in den Zeilen darunter.

## Words of the road picture.

picture = Die Strecke
fill-by = Einfärben nach
reading = { $reading ->
    [gear] Gang
    [stage] Stufe
    [heat] Bremsenwärme
    [speed] Tempo
   *[grade] Neigung
}
grade-step = { $step ->
    [down10] −10 % und steiler
    [down8] −8 bis −10 %
    [down6] −6 bis −8 %
    [down4] −4 bis −6 %
    [down2] −2 bis −4 %
    [level] eben
    [up2] 2 bis 5 % Steigung
   *[up5] 5 % Steigung und mehr
}
zoom = Zoom
zoom-in = Näher
zoom-out = Weiter weg
zoom-all = Ganze Strecke
lane = { $lane ->
    [height] Höhe
    [gear] Gang
    [stage] Stufe
    [heat] Bremsenwärme
    [speed] Tempo
   *[temperature] Bremsen
}
after-stop = nach Stopp
bend-caps = in Kurven
only-this = Nur dieser Teil
not-assessed = nicht beurteilt
limit = Grenze
before-asked = verlangt
cursor = Stelle auf der Strecke
cell-head = { $cell ->
    [at] bei
    [grade] Neigung
    [height] Höhe
    [gear-stage] Gang · Stufe
    [speed] Tempo · Motor
    [carried] Dauerbremse trägt
    [brakes] Bremsen
   *[if-stopped] nach Stopp hier
}
engine-carries = Motor trägt
grade-over = Neigung über { $length }
nothing-said-here = Die Strecke konnte hier nicht beurteilt werden: Über sie wird nichts gesagt.
on-descent = Auf Gefälle { $number }, noch { $to-foot } bis zum Fuß.
descent-begins = Gefälle { $number } beginnt in { $ahead }.
no-descent-ahead = Kein Gefälle mehr voraus.
bend = { $hairpin ->
    [true] Kehre
   *[false] Kurve
} { $side }: höchstens { $speed } (Radius etwa { $radius }, geschätzt).
place-here = Hier: { $name }.
place-ahead = { $name } in { $ahead }.
strip = Die ganze Strecke, und der Teil, der oben gezeigt wird
plan-shape = Die Strecke von oben, Norden oben
start = Anfang
end = Ende
north = N
short-stage-off = aus

## Words of use without a network.

works-offline = Diese Seite funktioniert jetzt auch ohne Netz.
newer = Eine neue Fassung dieser Seite ist bereit. Fahrzeug, Bedingungen, die Strecke und ihre Orte bleiben erhalten. Nicht erhalten bleiben die für das Merkblatt eingegebene Kilometerangabe, eine zum Vergleich behaltene Strecke und was heute gehalten hat.
load-newer = Neue Fassung laden
later = Später
forget-all = Alles löschen, was auf diesem Gerät gespeichert ist
forget-really = Fahrzeuge, Eingaben, Strecken und Orte wirklich löschen? Noch einmal drücken
save-page = Diese Seite als eine einzige Datei speichern (für einen USB-Stick)

## Words of what is handed on: the link with truck and day, the project with all of it.

make-link = Link mit Fahrzeug und Bedingungen kopieren
link-copied = Kopiert. Der Link enthält dieses Fahrzeug und diese Bedingungen, keine Straße und keinen Ort. Wer ihn öffnet, entscheidet, ob sie gelten.
link-made = Kopieren Sie den Link von hier. Er enthält dieses Fahrzeug und diese Bedingungen, keine Straße und keinen Ort. Wer ihn öffnet, entscheidet, ob sie gelten.
link-label = Link mit Fahrzeug und Bedingungen
link-offered = Dieser Link bringt ein Fahrzeug und Bedingungen mit. Ihre eigenen Eingaben gelten, bis Sie entscheiden. Wer ihn geschickt hat, fährt vielleicht ein anderes Fahrzeug: Prüfen Sie jede Eingabe.
use-link = Fahrzeug und Bedingungen des Links verwenden
keep-mine = Meine behalten
link-taken = Jetzt gelten Fahrzeug und Bedingungen des Links: Prüfen Sie sie, bevor Sie den Zahlen trauen.
back-to-mine = Zurück zu meinen
link-broken = Fahrzeug und Bedingungen in diesem Link sind nicht lesbar; vielleicht fehlt ein Teil. Lassen Sie ihn sich noch einmal schicken. Ihre eigenen Eingaben gelten.
save-project = Alles in einer Datei speichern
project-sentence = Die Strecke, wie sie gegeben wurde, mit Orten und Begrenzungen darauf, Fahrzeug und Bedingungen, und ebenso die zum Vergleich behaltene. Sie wird hier wie eine Strecke geöffnet, auf jedem Gerät.
project-name-ending = .steadygrade
project-opened = Jetzt gelten Fahrzeug, Bedingungen und Orte des Projekts: Prüfen Sie sie, bevor Sie den Zahlen trauen.
file-stem = strecke

## Words that stand in a file saved for a device.

mark-caution = Aus Eingaben und aufgezeichneten Höhen berechnet, die fehlerhaft sind. Keine Erlaubnis hinunterzufahren: Verkehrszeichen, geltendes Recht und die Grenzwerte des Fahrzeugherstellers gehen vor.
by-here = { $how ->
    [down] spätestens hier
   *[up] erst ab hier
}
crest-number = Kuppe { $number }
hold = { $speed } halten
mark-foot = Fuß { $number }
mark-foot-then = Fuß { $number }, dann Gang { $gear }

## Words of the teaching roads.

lessons-head = Lehrstrecken
lessons-invented = Diese Strecken sind für den Unterricht erfunden; keine davon gibt es wirklich.
lessons-said-for = Was geschieht, gilt für das erste Fahrzeug der Liste unter den üblichen Bedingungen. Bei einem anderen Fahrzeug oder unter anderen Bedingungen gilt, was berechnet wird, nicht dieser Text.
lesson-shows-label = Was sie zeigt
lesson-believed-label = Was oft geglaubt wird
lesson-happens-label = Was geschieht
lesson-question-label = Frage an die Klasse
lesson-false-finish =
    .name = Falsches Ende
    .shows = Ein langes Gefälle lässt nach, als wäre es zu Ende, und geht dann steiler weiter.
    .believed = Wo die Straße flacher wird, ist das Gefälle zu Ende, und man kann hochschalten.
    .happens = Es ist eine einzige Gefällestrecke. Die Stelle, an der das Gefälle nachlässt, ist zu kurz, um hoch- und wieder herunterzuschalten, und das steilste Stück liegt dahinter. Das Ganze braucht einen niedrigeren Gang, als ihn der Teil davor für sich allein brauchte.
    .question = Wo muss der niedrige Gang eingelegt sein, und woran hätte man das vor der Kuppe erkennen können?
lesson-three-steps =
    .name = Drei Stufen im Gelände
    .shows = Drei gleiche Gefällestrecken mit kurzen ebenen Stücken dazwischen.
    .believed = Ging das erste Gefälle gut, so geht das dritte ebenso gut.
    .happens = Mit der Dauerbremse allein lassen sich alle drei auf gleiche Weise hinunterfahren, und die Betriebsbremse bleibt kühl. Wo Intervallbremsungen erlaubt sind, beginnt jedes Gefälle mit wärmeren Bremsen als das davor, und das dritte kann nicht mehr so schnell gefahren werden wie das erste. Für sich allein könnte es das.
    .question = Wie warm dürfen die Bremsen an der dritten Kuppe sein, wenn noch eine kräftige Bremsung bis zum Stillstand möglich sein muss?
lesson-short-and-steep =
    .name = Kurz und steil
    .shows = Ein kurzes, steiles Gefälle mit einer Stadt und einer Ampel am Fuß.
    .believed = Es ist so kurz, dass die Bremsen damit fertig werden, gleich in welchem Gang.
    .happens = Von allen diesen Strecken braucht das kürzeste Gefälle den niedrigsten Gang und die niedrigste Geschwindigkeit. Hier entscheidet die Steilheit über den Gang, nicht die Länge.
    .question = Die Ampel am Fuß wird rot, und der Gang ist zu hoch gewählt. Was bleibt dann noch?
lesson-long-and-gentle =
    .name = Lang und sanft
    .shows = Ein sanftes Gefälle, das sehr lange nicht aufhört.
    .believed = Ein so sanftes Gefälle ist harmlos: höchster Gang, und ab und zu die Bremse.
    .happens = Mit der verlangten Reserve hält die Dauerbremse das Fahrzeug nur unterhalb des höchsten Gangs und unter der üblichen Höchstgeschwindigkeit. Im höchsten Gang bei dieser Geschwindigkeit, mit der Betriebsbremse allein, werden die Bremsen heißer als zulässig. Auf dem kurzen steilen Gefälle würden sie auf dieselbe Weise weniger heiß, weil es dort viel weniger Höhe verliert; falsch wäre es auch dort.
    .question = Was macht mehr Hitze: wie steil ein Gefälle ist oder wie viel Höhe es verliert? Und wohin geht diese Hitze?
lesson-hairpins =
    .name = Kehren
    .shows = Ein mäßiges Gefälle mit einer Kehre nach der anderen.
    .believed = Allein die Neigung entscheidet über Gang und Geschwindigkeit.
    .happens = Hier entscheiden die Kurven. Ohne sie ließe sich dasselbe Gefälle schneller und in einem höheren Gang hinunterfahren. Die Dauerbremse allein hält das Fahrzeug im Gefälle, aber zum Abbremsen vor den Kehren braucht es auch die Betriebsbremse, und die Bremsen werden wärmer als auf demselben Gefälle ohne Kurven.
    .question = Muss das Fahrzeug schon vor der Kehre langsam sein oder erst darin? Und in welchem Gang dreht der Motor dort noch rund?

## Words of the class view: for an instructor, a projector and a room.

screen = { $screen ->
    [roads] Strecken
    [forces] Kräfte
    [run] Fahrt
    [pair] Nebeneinander
   *[exercises] Aufgaben
}
idea = { $screen ->
    [roads] Eine Strecke, über die man redet
    [forces] Wo ein Gang das Gefälle trifft, pendelt sich das Fahrzeug ein
    [run] Ein Fahrzeug auf dieser Strecke, wie geplant
    [pair] Eine Strecke, ein Start, eines wird anders gemacht
   *[exercises] Erst rechnen, dann nachsehen
}
notes-roads =
    .first = Wählen Sie eine Strecke, und lassen Sie die Klasse sagen, wie sie dort hinunterfahren würde, bevor etwas gezeigt wird.
    .second = Auch jede GPX-Datei lässt sich hier ablegen: Am besten ist die Strecke, die sie jede Woche fahren.
notes-forces =
    .first = Fragen Sie zuerst: Welcher Gang? Ziehen Sie dann das Gefälle auf seine Steilheit.
    .second = Das Gefälle verlangt bei jeder Geschwindigkeit fast dieselbe Kraft; ein niedriger Gang gibt mehr davon. Mehr steckt nicht hinter der Wahl des Gangs.
    .third = Ziehen Sie das Gefälle, bis die Marke über das Ende einer Linie hinausfällt: Dahinter würde der Motor zu schnell drehen.
    .fourth = Geben Sie ein Zehntel der Masse dazu, und sehen Sie, wie die Marke wandert.
notes-run =
    .first = Halten Sie vor einer Kuppe an, und fragen Sie, was jetzt schon eingelegt sein sollte.
    .second = Halten Sie an, wo es flacher wird: Ist es vorbei?
    .third = Die Temperatur ist gerechnet. Was die Rechnung nicht sieht, etwa die Einstellung der Bremsen, ist schlimmer als das, was sie sieht.
notes-pair =
    .first = Lassen Sie die Klasse vor dem Start wetten: wie viele Grad, wie viele Minuten?
    .second = Halten Sie an, wo sie sich trennen. Vom Fahrersitz aus ist noch nichts zu sehen.
    .third = Fragen Sie am Ende, was damit gewonnen war.
notes-exercises =
    .first = Drucken Sie das leere Blatt; das Lösungsblatt hat dieselbe Nummer.
    .second = Die Zahlen sind in den Schritten so gerundet, wie sie dastehen, damit man von Hand folgen kann.
screens = Bilder des Unterrichts
to-road-page = Zurück
show-notes = Notizen
keys = Bild ab und Bild auf: nächstes und voriges Bild. N: diese Notizen. Leertaste: Fahrt los und Halt. Pfeile links und rechts: schrittweise. Auf und ab: schneller und langsamer. Pos 1: von vorn.
class-caution = Zum Lehren, aus Eingaben und aufgezeichneten Höhen, die irren. Keine Erlaubnis zur Talfahrt: Schilder, Gesetz und Grenzen des Herstellers gehen vor.
grade-label = Gefälle
mass-label = Masse
stage-label = Dauerbremse
forces-about = Haltekraft über der Geschwindigkeit: eine Linie für jeden Gang, quer dazu, was Gefälle verlangen. Darunter steht, wo sich die Gänge einpendeln.
holding-axis = Kraft
none-settles = Mit dieser Stufe pendelt sich auf diesem Gefälle kein Gang ein.
nothing-in-reserve = Am Schnittpunkt bleibt keine Reserve.
print-screen = Drucken
profile-about = Die Strecke vom Start bis zum Ende, mit einer Marke für jedes Fahrzeug
truck-about = Das Fahrzeug an seinem Hang, mit einem Pfeil für jede Kraft; die Anzeigen sagen dasselbe in Zahlen
driving = Wird gefahren …
no-ride = Das lässt sich hier nicht fahren: Auf dieser Strecke gibt es kein Gefälle mit sicherer Geschwindigkeit, oder nichts zu verlieren.
class-start = Los
stop = Halt
class-step = Schritt
anew = Von vorn
slower = Langsamer
faster = Schneller
arrow-hill = Hang
arrow-engine = Motor
arrow-retarder = Dauerbremse
arrow-service = Betriebsbremse
arrow-resistance = Rollen, Luft
gauge-speed = Tempo
gauge-gear = Gang
gauge-stage = Stufe
gauge-engine = Motor
gauge-power = Bremsleistung
gauge-brakes = Bremsen
class-after-stop = nach Stopp
exercise-back = Vorige Aufgabe
exercise-on = Nächste Aufgabe
slips = Was das zweite Fahrzeug anders macht
as-planned = wie geplant
gear-high = ein Gang höher
somewhat-heavier = 10 % schwerer
faster-by = { $speed } schneller
stage-lost = Stufe fällt aus
hot-brakes = heiße Bremsen
they-part = Sie trennen sich bei { $at }.
nowhere-apart = Auf dieser Strecke macht es keinen nennenswerten Unterschied.
time-apart = { $time } { $sooner ->
    [true] früher da
   *[false] später da
}
no-time-apart = zeitlich gleich
compared = { $name }: { $time }; nach einer kräftigen Bremsung bis zum Stillstand { $wrong } statt { $right }.
passes-limit = Ab { $from } würde eine kräftige Bremsung bis zum Stillstand die Grenze überschreiten. Hier halten die Bremsen, so heiß sie auch sind; auf der Straße lassen sie nach.
forgiven = Dieses Gefälle verzeiht es. Das nächste vielleicht nicht.
class-reserve-kept = Mit { $reserve } Reserve: { $gear }, höchstens { $speed }.
class-no-gear-keeps = Mit { $reserve } Reserve: kein Gang.

## Words of exercises with worked answers.

sheet-head = Übungsaufgaben, Satz { $seed }
blank-sheet = Blatt zum Bearbeiten
answer-sheet = Blatt mit Lösungen
another-set = Anderer Satz
sheet-caution = Diese Zahlen dienen dem Unterricht. Sie sind keine Empfehlung für eine Strecke, ein Fahrzeug oder eine Ladung: Massen, Neigungen und Geschwindigkeiten sind verändert, und vieles ist weggelassen.
no-exercises = Keine Gefällestrecke hier ist lang genug für Übungsaufgaben.
stages-left-out = Unter diesen Bedingungen wird keine Stufe der Dauerbremse empfohlen. Aufgaben zu Gang und Stufe sind weggelassen.
exercise = Aufgabe { $number }: { $exercise ->
    [control-speed] Wo sich das Fahrzeug einpendelt
    [gear-choice] Wahl des Gangs
    [braking-work] Bremsarbeit
    [haste] Zeitgewinn durch schnelleres Fahren
   *[brake-heat] Wärme der Bremsen
}
given-label = Gegeben
room-label = Ihr Rechenweg und Ihre Antwort
steps-label = Rechenweg
ask-control-speed = Ein Fahrzeug mit { $mass } fährt auf einem Gefälle von { $grade }: { $gear }, { $stage }, ohne Gas und ohne Betriebsbremse. Pendelt es sich bei einer Geschwindigkeit ein, und bei welcher?
ask-gear = Motor und Dauerbremse allein sollen ein Fahrzeug mit { $mass } auf einem Gefälle von { $grade } mit { $reserve } Reserve halten. Unten stehen Gänge bei der höchsten Geschwindigkeit, bei der jeder zum Halten benutzt wird, mit Motordrehzahl und Haltekraft der stärksten Stufe, die die Haftung der Antriebsachsen zulässt. Welches ist der höchste Gang, der die Reserve einhält, und bei welcher Geschwindigkeit?
ask-work = Ein Fahrzeug mit { $mass } fährt auf { $length } Strecke { $drop } hinunter, gleichmäßig mit { $speed }. Wie viel Energie müssen Motor, Dauerbremse und Betriebsbremse aufnehmen? Motor und Dauerbremse übernehmen davon { $share }: Wie viel bleibt für die Betriebsbremse?
ask-time = Eine Gefällestrecke ist { $length } lang. Wie viel Zeit gewinnt ein Fahrzeug, das sie mit { $fast } statt mit { $slow } hinunterfährt? Um wie viel wächst seine Bewegungsenergie?
ask-heat = Auf einer Gefällestrecke von { $length }, gleichmäßig mit { $speed }, nimmt die Betriebsbremse die ganze Zeit { $power } auf; den Rest übernehmen Motor und Fahrwiderstände. Wie warm sind die Bremsen { $axle-place ->
    [steer] { $axles ->
        [one] der Lenkachse
       *[other] der Lenkachsen
    }
    [drive] { $axles ->
        [one] der Antriebsachse
       *[other] der Antriebsachsen
    }
   *[trailer] { $axles ->
        [one] der Anhängerachse
       *[other] der Anhängerachsen
    }
} am Fuß?
settles = Es pendelt sich bei etwa { $speed } ein ({ $engine-speed }): Dort ist die Haltekraft so groß wie das, was zu halten bleibt.
slows-down = Es pendelt sich nicht ein: Die Haltekraft ist bei jeder Geschwindigkeit dieses Gangs größer als nötig, und es wird langsamer. Eine schwächere Stufe oder ein höherer Gang kann genügen.
gets-away-above = Es pendelt sich nicht ein: Unter etwa { $speed } ist die Haltekraft größer als nötig, darüber wird es schneller. Ist es erst schneller, fängt nichts es wieder ein. Nötig ist ein niedrigerer Gang, eingelegt vor der Kuppe; sonst muss die Betriebsbremse helfen.
gets-away = Es pendelt sich nicht ein: Es wird bei jeder Geschwindigkeit dieses Gangs schneller. Nötig ist ein niedrigerer Gang, eingelegt vor der Kuppe, oder, wenn es sie gibt, eine stärkere Stufe; sonst muss die Betriebsbremse helfen.
gear-chosen = { $gear }, { $stage }, bei höchstens { $speed } ({ $engine-speed }), mit { $reserve } Reserve. Der Gang wird vor der Kuppe eingelegt.
no-gear-keeps = Keiner: Auch der niedrigste Gang hält die Reserve nicht ein. Ein solches Fahrzeug darf dort nicht hinunterfahren: weniger Masse oder eine andere Strecke.
work-left = Etwa { $left } sind aufzunehmen; davon bleiben etwa { $service } für die Betriebsbremse.
time-saved = Etwa { $time }, und die Bewegungsenergie ist das { $times }-Fache: So viel mehr nehmen die Bremsen bei jedem Stopp auf. Ob Motor und Dauerbremse das Fahrzeug bei dieser Geschwindigkeit halten würden, ist hier nicht gefragt.
warm-at-foot = Etwa { $foot } am Fuß: { $over ->
    [true] über der eingegebenen Grenze von { $limit }
   *[false] nicht über der eingegebenen Grenze von { $limit }, aber ohne Vorrat für einen Stopp
}. Weggelassen sind: ein Stopp, ungleich verteilte Bremsung, die Bremseneinstellung, Strahlung und dass die Kühlung von Fahrzeug zu Fahrzeug um den Faktor zwei und mehr abweicht.
term = { $term ->
    [rolling-coefficient] Rollwiderstandsbeiwert
    [drag-area] Luftwiderstandsfläche
    [air-density] Dichte der Luft
    [air-density-ratio] Dichte der Luft, geteilt durch die auf Meereshöhe
    [headwind] Gegenwind (Rückenwind ist negativ)
    [holding-table] Haltekraft nach Motordrehzahl und Geschwindigkeit
    [heat-capacity] Wärme, die diese Bremsen speichern
    [cooling] Wärme, die sie bei dieser Geschwindigkeit abgeben
    [group-share] Ihr Anteil an der Bremsung
    [air-temperature] Luft
    [brakes-at-crest] Bremsen an der Kuppe
    [sine] Sinus des Neigungswinkels
    [cosine] Kosinus des Winkels
    [gravity] Hangabtriebskraft
    [rolling] Rollwiderstand
    [against-air] Geschwindigkeit gegen die Luft
    [air] Luftwiderstand
    [demand] Bleibt zu halten
    [holding-against-demand] Haltekraft im Vergleich mit dem, was zu halten bleibt
    [compared-at] Gerechnet bei
    [length-in-feet] Länge in Fuß
    [gravity-work] Arbeit der Schwerkraft
    [rolling-work] Davon nimmt der Rollwiderstand
    [air-work] Davon nimmt der Luftwiderstand
    [work-left] Bleibt aufzunehmen
    [carried-work] Motor und Dauerbremse
    [service-work] Betriebsbremse
    [slow-time] Zeit bei der niedrigeren Geschwindigkeit
    [fast-time] Zeit bei der höheren Geschwindigkeit
    [time-saved] Zeitgewinn
    [motion-energy] Bewegungsenergie, höhere durch niedrigere Geschwindigkeit
    [group-power] Leistung an diesen Bremsen
    [time-down] Dauer der Talfahrt
    [time-constant] Zeitkonstante: gespeicherte durch abgegebene Wärme
    [settled] Temperatur, die sie auf Dauer erreichen würden
    [ahead] Anteil dieses Anstiegs, der am Fuß noch aussteht
   *[at-foot] Am Fuß
}
gear-at = { $gear } bei { $speed }
enough = { $enough ->
    [true] genug
   *[false] zu wenig
}

## Times.

less-than-a-minute = weniger als eine Minute
minutes = { $count } { $count ->
    [one] Minute
   *[other] Minuten
}
hours-and-minutes = { $hours } h { $count } min
