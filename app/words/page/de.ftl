### German (not yet read by a practitioner): what only the page says. The terms stand in the folder above.

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
fill-by = Farbe
reading = { $reading ->
    [gear] Gang
    [stage] Stufe
    [heat] Bremsenwärme
    [speed] Tempo
   *[grade] Neigung
}
grade-step = { $step ->
    [down10] −10 % und steiler
    [down8] −8 bis −10 %
    [down6] −6 bis −8 %
    [down4] −4 bis −6 %
    [down2] −2 bis −4 %
    [level] eben
    [up2] 2 bis 5 % Steigung
   *[up5] 5 % Steigung und mehr
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
cursor = Stelle auf der Strecke
cell-head = { $cell ->
    [at] bei
    [grade] Neigung
    [height] Höhe
    [gear] Gang
    [stage] Stufe
    [speed] Tempo
    [engine] Motor
    [carried] Dauerbremse trägt
    [brakes] Bremsen
   *[if-stopped] nach hartem Stopp hier
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
lane-title = { $lane ->
    [height] Höhe
    [gear] Gang
    [stage] Stufe
    [heat] Wärme
    [speed] Tempo
   *[temperature] Bremsen
}
steepest-word = am steilsten
on-grade = bei { $grade }
brake-then = auf { $speed } bremsen, dann Gang { $gear }
descents-joined = Gefälle { $from } bis { $to }: zeigen
keys-head = Tasten des Bildes
keys-close = Schließen
key-caps =
    .along = ← →
    .far = Umschalt ← →
    .ends = Pos1 Ende
    .crests = Bild ↑ ↓
    .descent = 1–9
    .zoom = + −
    .whole = 0
    .enter = Eingabe
    .colour = C
    .alone = F
    .put = P
    .escape = Esc
key-does =
    .along = 100 m auf der Strecke
    .far = 1 km auf der Strecke
    .ends = Anfang oder Ende der Strecke
    .crests = Kuppe davor oder danach
    .descent = dieses Gefälle wählen
    .zoom = näher, weiter weg
    .whole = ganze Strecke
    .enter = gewähltes Gefälle zeigen
    .colour = nächste Farbe
    .alone = Bild allein
    .put = Ort an der gewählten Stelle eintragen
    .escape = schließen, oder Bild allein beenden

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

## Words of the teaching roads.

lessons-head = Lehrstrecken
lessons-invented = Diese Strecken sind für den Unterricht erfunden; keine davon gibt es wirklich.
lessons-said-for = Geschrieben für das erste Fahrzeug der Liste unter üblichen Bedingungen. Bei einem anderen Fahrzeug oder unter anderen Bedingungen gilt, was berechnet wird, nicht dieser Text.
lesson-shows-label = Was sie zeigt
lesson-believed-label = Was oft geglaubt wird
lesson-happens-label = Was geschieht
lesson-question-label = Frage an die Klasse
lesson-false-finish =
    .name = Scheinbares Ende
    .shows = Ein langes Gefälle lässt nach, als wäre es zu Ende, und geht dann steiler weiter.
    .believed = Wo die Straße flacher wird, ist das Gefälle zu Ende, und man kann hochschalten.
    .happens = Es ist eine einzige Gefällestrecke. Die Stelle, an der das Gefälle nachlässt, ist zu kurz, um hoch- und wieder herunterzuschalten, und das steilste Stück liegt dahinter. Das Ganze braucht einen niedrigeren Gang, als ihn der Teil davor für sich allein brauchte.
    .question = Wo muss der niedrige Gang eingelegt sein, und woran hätte man das vor der Kuppe erkennen können?
lesson-three-steps =
    .name = Drei Stufen im Gelände
    .shows = Drei gleiche Gefällestrecken mit kurzen ebenen Stücken dazwischen.
    .believed = Ging das erste Gefälle gut, so geht das dritte ebenso gut.
    .happens = Mit der Dauerbremse allein lassen sich alle drei auf gleiche Weise hinunterfahren, und die Betriebsbremse bleibt kühl. Wo kurze Bremsungen erlaubt sind, beginnt jedes Gefälle mit wärmeren Bremsen als das davor, und das dritte kann nicht mehr so schnell gefahren werden wie das erste. Für sich allein könnte es das.
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
    [pair] Gleiche Strecke, gleicher Start, eines anders
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
    .second = Halten Sie an, wo sie sich unterscheiden. Vom Fahrersitz aus ist noch nichts zu sehen.
    .third = Fragen Sie am Ende, was damit gewonnen war.
notes-exercises =
    .first = Drucken Sie das leere Blatt; das Lösungsblatt hat dieselbe Nummer.
    .second = Die Zahlen sind in den Schritten so gerundet, wie sie dastehen, damit man von Hand folgen kann.
screens = Bilder des Unterrichts
to-road-page = Zurück
show-notes = Notizen
keys = Bild ab und Bild auf: nächstes und voriges Bild. N: diese Notizen. Leertaste: Fahrt los und Halt. Pfeile links und rechts: schrittweise. Auf und ab: schneller und langsamer. Pos 1: von vorn.
class-caution = Zum Lehren, aus Eingaben und aufgezeichneten Höhen, die Fehler enthalten. Keine Erlaubnis zur Talfahrt: Schilder, Gesetz und Grenzen des Herstellers gehen vor.
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
class-after-stop = nach hartem Stopp
exercise-back = Vorige Aufgabe
exercise-on = Nächste Aufgabe
slips = Was das zweite Fahrzeug anders macht
as-planned = wie geplant
gear-high = ein Gang höher
somewhat-heavier = 10 % schwerer
faster-by = { $speed } schneller
stage-lost = Stufe fällt aus
hot-brakes = heiße Bremsen
they-part = Sie unterscheiden sich ab { $at }.
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

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

not-assessed-on = Nicht beurteilt: { $span }. Die Neigung dort ist nicht bekannt.
legs-label = Gang für Gang
untouched-label = Ohne Betriebsbremse
one-gear-label = Ein Gang bis zum Fuß

## Words of the card for the cab.

card-head = Merkblatt
card-sentence = Fürs Fahrerhaus, die ganze Strecke. Auf dem Handy als Bild speichern; auf Papier nimmt es so viele Seiten, wie nötig sind. Vor der Kuppe lesen, im Stand.
print-card = Merkblatt drucken
save-picture = Als Bild fürs Handy speichern
picture-name-ending = { $reversed ->
    [true] -gegenrichtung-merkblatt.png
   *[false] -merkblatt.png
}
save-rows = Zeilen als CSV speichern
marker-label = Kilometertafel oder Kilometerzähler am Anfang der Strecke
counts-down = Tafeln zählen rückwärts
markers-miss = Die Kilometertafeln reichen nicht über diese Strecke: So wie eingegeben gingen sie von { $start } am Anfang bis { $end } am Ende, und unter null gibt es keine. Berichtigen Sie die Tafel am Anfang oder die Zählrichtung. Bis dahin stehen auf dem Merkblatt Entfernungen vom Anfang.
card-orders =
    .label = Reihenfolge der Zeilen
    .along = wie gefahren
    .worst = schlimmstes Gefälle zuerst
card-is-old = Nicht verwenden: Dieses Merkblatt gehört zu früheren Eingaben
do-not-descend = NICHT HINUNTERFAHREN, so wie eingegeben
no-speed-for = Für { $count ->
    [one] Gefällestrecke
   *[other] die Gefällestrecken
} { $numbers } wurde keine sichere Geschwindigkeit gefunden. Nehmen Sie eine andere Strecke, oder planen Sie neu mit weniger Ladung oder für einen besseren Tag. Verkehrszeichen und die Regeln des Berufs gehen vor.
facts-of = { $mass } · { $retarder } · { $surface }, { $load } · Luft { $air } · Bremsen { $brakes } am Anfang
card-page = Seite { $page } von { $pages }
card-page-has = Gefälle { $count ->
    [one] Nr. { $numbers }
   *[other] { $numbers }
}
card-sum = { $length } · { $fall } abwärts · { $count ->
    [one] 1 Gefälle
   *[other] { $count } Gefälle
}
card-covers = Gilt für { $covered } von { $length }. Nicht bekannt: { $unknown }, { $fall } Fall. Dort kein Rat.
card-marker = Tafel { $at } am Anfang, { $counts-down ->
    [true] fallend
   *[false] steigend
}
card-no-marker = vom Anfang
worked-out-for = Berechnet für
your-truck = Ist das Ihr Lkw?
check-mass = höchstens { $mass }
check-gears = { $count } Gänge, Achse { $ratio }
check-stages = { $count ->
    [one] die Stufe wirkt
   *[other] alle { $count } Stufen wirken
}
check-no-retarder = ohne Dauerbremse
check-surface = Fahrbahn: { $surface }
one-empty = <strong>Eins leer: nicht Ihr Merkblatt.</strong> Neu berechnen.
hardest-of = { $count ->
    [one] Das einzige Gefälle
   *[other] Schwerstes von { $count }
}
hardest-then = dann { $numbers }
card-steepest = steilstes Stück { $grade }
all-alike = { $count ->
    [one] Das Gefälle: { $verdict }.
   *[other] Alle { $count }: { $verdict }.
}
card-heads =
    .by = eingelegt
    .gear = Gang
    .stage = Stufe
    .hold = halten
    .know = zu wissen: km (Meilen)
card-by = { $how ->
    [down] bis { $unit }
   *[up] ab { $unit }
}
card-change-down = Auf { $speed } bremsen, dann Gang { $gear }.
card-change-up = Gang { $gear } erst ab hier. Oder Gang { $kept } behalten.
card-unknown = { $spans } nicht bekannt: kein Rat
mile = Meile
know-snub = Von { $from } auf { $to } bremsen, lösen, wiederholen.
know-in-doubt = Kurze steile Stücke bis { $grade } nicht auszuschließen: Betriebsbremse bereithalten.
know-easing = Wo es bei { $at } nachlässt, ist nicht das Ende: im Gang bleiben.
know-begins-unknown = Wie es beginnt, ist nicht bekannt: Die Strecke davor wurde nicht beurteilt.
know-slow-curves = <strong>{ $count ->
    [one] 1 Kurve
   *[other] { $count } Kurven
} unter { $under }</strong>, langsamste { $speed }, { $at }
know-slow-curve = Langsamste Kurve { $speed }, { $at }.
know-posted = Tempolimit { $speed }, { $km }, { $miles }.
know-ramp = Notfallspur bei { $at }.
know-quiet = Lärmschutzzone bei { $at }: eine Motorbremse kann verboten sein.
know-at-foot = Am Fuß: { $name }, { $at }.
to-stop-at-foot = Halt oder Ortschaft
know-cut-short = <strong>Bekannt nur bis { $at }.</strong> Wie es weitergeht, ist nicht bekannt: in Gang { $gear } bleiben.
know-cut-short-bare = <strong>Bekannt nur bis { $at }.</strong> Wie es weitergeht, ist nicht bekannt.
know-size = { $length }, { $fall } abwärts
know-steepest = <strong>steilste Stelle { $grade }</strong>, { $at }
know-foot = <strong>Fuß { $at }</strong>
know-then-unknown = nach { $after }: nicht bekannt bis { $at }
know-then-crest = { $after } bis Kuppe { $number }
know-stay = in Gang { $gear } bleiben
know-then-gear = dann Gang { $gear }
before-crest-head = Vor jeder Kuppe
stop-at-check = Am Bremskontrollplatz anhalten, { $at }: Bremseneinstellung, Undichtigkeiten, Trommeln oder Scheiben, Reifen, Ladung.
stop-where-allowed = Anhalten, wo es erlaubt ist: Bremseneinstellung, Undichtigkeiten, Trommeln oder Scheiben, Reifen, Ladung.
try-retarder = Kurz vom Gas gehen: Greift die Dauerbremse, in jeder Stufe?
look-ahead = Wetter, Schilder, Sperrungen: Ist es noch die geplante Strecke?
gear-before = Schon vor { $at }: Gang { $gear } einlegen, { $stage }.
gear-at-start = Vor dem Losfahren: Gang { $gear } einlegen, { $stage }. Die Strecke beginnt im Gefälle.
shifting = { $in-legs ->
    [true] Am Berg nur so schalten, wie es in den Zeilen steht.
   *[false] Am Berg nicht schalten.
}
in-trouble-head = Wenn es davonläuft: in dieser Reihenfolge
brake-now = Jetzt kräftig bremsen und anhalten, solange die Bremsen noch kühl genug sind.
stay-in-gear = Im Gang bleiben. Nie in den Leerlauf, nie auskuppeln, bei hohem Tempo nicht herunterschalten.
any-way-up = Eine Notfallspur nehmen oder irgendeinen Weg, der ansteigt. Hier ist keine eingetragen; es kann welche geben.
take-ramp = Die Notfallspur bei { $ramps } nehmen oder irgendeinen Weg, der ansteigt.
warn-others = Licht und Hupe: die anderen warnen.
no-places-entered = Keine eingetragen. Das heißt nicht, dass es keine gibt.
card-cautions = Aus Ihren Eingaben und aufgezeichneten Höhen berechnet, die Fehler enthalten; keine Erlaubnis hinunterzufahren. Bremseneinstellung, Reifen, Fahrbahn, Wetter, Verkehr und Ladung sind nicht zu sehen. Verkehrszeichen, Recht, Arbeitgeber und Fahrzeughersteller gehen vor. Die Betriebsbremse bleibt das Mittel zum Anhalten. Im Zweifel: oben anhalten, langsamer fahren, eine andere Strecke nehmen.
rows-name-ending = { $reversed ->
    [true] -gegenrichtung-gefaelle.csv
   *[false] -gefaelle.csv
}

## Words of the page's frame: names, buttons, files, progress, trouble.

to-class = Unterricht
targets = Größe von Tasten und Feldern
usual-targets = bloße Hände
large-targets = Handschuhe
purpose = Wie Sie jedes Gefälle einer Strecke hinunterfahren: Gang, Stufe der Dauerbremse, Geschwindigkeit, Bremsenhitze
road-section = Strecke
descents-section = Gefälle
sections = Abschnitte dieser Seite
skip-to-answer = Direkt zur Antwort
units = Einheiten
metric = km/h · m · t
imperial = mph · ft · lb
theme = Hell oder Nacht
light = hell
night = Nacht
system = auto
choose-file = GPX-Datei wählen
or-drop = oder irgendwo auf der Seite ablegen
drop-here = GPX-Datei hier ablegen: Sie wird nur auf diesem Gerät gelesen
stays-here = Nichts verlässt dieses Gerät.
demo-mark = erfundenes Beispiel
demo-sentence = Das ist eine erfundene Strecke, kein wirklicher Pass. Wählen Sie Ihre eigene GPX-Datei, oder legen Sie sie irgendwo auf der Seite ab; sie bleibt auf diesem Gerät.
show-demo = Beispiel zeigen
reverse = Gegenrichtung
reversed-mark = umgekehrt
course = Track in der Datei
which-track = { $file } enthält { $count } Strecken. Welche davon werden Sie fahren?
course-unusable = ohne Höhen oder zu kurz
leave-it = Abbrechen
which-order = { $count ->
    [one] 1 Datei: öffnen Sie sie.
    [2] 2 Dateien: Was sind sie?
   *[other] { $count } Dateien: In welcher Reihenfolge werden sie gefahren?
}
which-order-sentence = Zum Verbinden bringen Sie sie in die Reihenfolge der Fahrt. Sie werden von oben nach unten verbunden. Wo eine mehr als 2 km vom Anfang der nächsten endet, stimmt die Reihenfolge oder eine Richtung nicht.
join = { $count ->
    [one] Diese Datei öffnen
   *[other] { $count } Dateien verbinden
}
leg-up = { $name } früher fahren
leg-down = { $name } später fahren
turn-leg = Gegenrichtung
leave-leg = { $name } weglassen
same-question = { $count } Dateien liegen aufeinander. Zeigen sie dieselbe Strecke?
same-sentence = Als dieselbe Strecke werden sie zu einer, mit den Höhen aller. Wo diese sich um mehr unterscheiden, als sie falsch sein dürften, wird die steilere verwendet und die Stelle genannt. Der Plan ist nie schneller als der schnellere von jeder allein. Nichts wird ungefragt zusammengeführt.
combine = Dieselbe Strecke: { $count } Aufzeichnungen zusammenführen
two-alike = { $first } und { $second } liegen aufeinander. Um sie zu einer Strecke zusammenzuführen, lassen Sie die anderen Dateien weg.
meets = { $new } liegt auf { $before }. Zeigen sie dieselbe Strecke?
compare-both = Vergleichen: beide nebeneinander
join-both = Verbinden: eine nach der anderen
combined = Eine Strecke aus { $count } Aufzeichnungen: { $files }
take-apart = Wieder trennen
part-of = Ein Teil der Strecke: { $span } der Aufzeichnung.
whole-road = Ganze Strecke nehmen
course-choice = { $unnamed ->
    [true] { $route ->
        [true] { $number } · Route ohne Namen · { $length }
       *[false] { $number } · Track ohne Namen · { $length }
    }
   *[false] { $route ->
        [true] { $number } · { $name } (Route) · { $length }
       *[false] { $number } · { $name } (Track) · { $length }
    }
}
phase = { $phase ->
    [reading] Datei wird gelesen
    [surveying] Höhen und Neigungen werden berechnet
   *[planning] Gänge, Geschwindigkeiten und Bremsenhitze werden berechnet
}
starting = Wird gestartet
cancel = Abbrechen
close = Schließen
try-again = Noch einmal versuchen
part-to-come = Dieser Teil der Seite wird geladen.
part-failed = Dieser Teil der Seite ist nicht angekommen. Prüfen Sie die Verbindung und versuchen Sie es noch einmal.
trouble-head-file = „{ $name }“ kann nicht verwendet werden
trouble-head-many-files = Zu viele Dateien auf einmal
trouble-head-not-a-file = Das war keine Datei
trouble-head-built-in-missing = Die erfundene Strecke konnte nicht geladen werden
trouble-head-cannot-start = Die Berechnung konnte nicht gestartet werden
trouble-head-stopped = Die Berechnung ist wegen eines eigenen Fehlers stehen geblieben
trouble-head-cancelled = Abgebrochen
trouble-head-truck = Dieses Fahrzeug kann nicht berechnet werden
trouble-head-truck-file = Diese Fahrzeugdatei kann nicht verwendet werden
trouble-head-project-file = Dieses Projekt kann nicht verwendet werden
trouble-head-cannot-export = Die Datei konnte nicht gespeichert werden
trouble-head-no-picture = Das Merkblatt konnte nicht als Bild gespeichert werden
trouble-many-files = Bis zu 20 Dateien können zu einer Strecke verbunden und bis zu 200 verglichen werden. Wählen Sie weniger.
trouble-not-a-file = Legen Sie eine GPX-Datei ab, oder wählen Sie eine mit der Taste.
trouble-built-in-missing = Die Seite selbst funktioniert: Wählen Sie eine eigene GPX-Datei.
trouble-cannot-start = Der Browser hat den Teil, der rechnet, nicht geladen. Laden Sie die Seite neu; wenn das nicht hilft, nehmen Sie einen Browser der letzten Jahre, in dem WebAssembly und Worker eingeschaltet sind.
trouble-stopped = Sie wurde neu gestartet, und von Ihren Eingaben ist nichts verloren. Ändern Sie die letzte Eingabe, oder versuchen Sie es noch einmal. Für eine Meldung: { $detail }
trouble-cancelled = Die Zahlen unten gehören noch zu den früheren Eingaben. Ändern Sie eine Eingabe, oder versuchen Sie es noch einmal, um sie neu zu berechnen.
trouble-no-picture = Dieser Browser zeichnet es nicht. Drucken Sie das Merkblatt stattdessen: Beim Drucken in eine Datei entsteht ein PDF.
trouble-cannot-export = Der Teil, der sie schreibt, konnte nicht geladen werden, oder der Browser hat das Speichern nicht erlaubt. Laden Sie die Seite neu, oder nehmen Sie einen anderen Browser.
reload-for-newer = Laden Sie die Seite neu, um eine neuere zu bekommen.
former-stays = Unten ist noch die frühere Strecke zu sehen.
not-current = Die angezeigten Zahlen gehören zu den früheren Eingaben oder zur früheren Strecke.
check-entry = Prüfen Sie diese Eingabe:
export = Kuppen und Gangwechsel als GPX speichern
export-sentence = Wegpunkte an jeder Kuppe, jedem Fuß und jedem Wechsel von Gang oder Stufe, für ein Gerät, das sie anzeigt.
export-name-ending = -gefaelle.gpx
no-road = Noch keine Strecke
no-road-sentence = Wählen Sie eine GPX-Datei mit Höhen, oder legen Sie sie irgendwo auf dieser Seite ab. Sie wird auf diesem Gerät gelesen und geht nirgendwo anders hin.
between-ramps = ,{ " " }

## What a language says of itself.

languages = Andere Sprachen
this-page = Diese Seite auf Deutsch
page-title = Steadygrade: wie man jedes Gefälle hinunterfährt
page-description = Wie man jedes Gefälle einer Straße mit einem schweren Fahrzeug hinunterfährt: Gang, Stufe der Dauerbremse, Geschwindigkeit, Bremsenwärme. Auf Ihrem Gerät gerechnet.
needs-script = Diese Seite rechnet die Strecke in Ihrem Browser durch und braucht dafür JavaScript und WebAssembly. Nichts, was Sie laden, verlässt Ihr Gerät.
loading-page = Die Seite wird geladen
opens-then = Wird geöffnet, sobald die Seite da ist:
loading-failed = Die Seite ist nicht vollständig angekommen. Prüfen Sie die Verbindung und laden Sie noch einmal.
loading-stands = Seit einer halben Minute kommt nichts an. Warten Sie, oder prüfen Sie die Verbindung und laden Sie noch einmal.
cannot-run = Dieser Browser kann die Seite nicht ausführen: WebAssembly fehlt oder ist abgeschaltet. Nehmen Sie einen anderen Browser, oder lassen Sie es zu.
load-again = Noch einmal laden
not-kept = Diese Seite ist auf diesem Gerät nicht gespeichert, und es gibt kein Netz. Öffnen Sie sie einmal mit Netz: Von da an ist sie gespeichert.

## Words of the plan: verdicts, descents.

heavier-label = 10 % schwerer
heat-label = Bremsen
descents-head = { $count ->
    [0] Keine Gefällestrecken
    [one] 1 Gefällestrecke
   *[other] { $count } Gefällestrecken
}
order = Reihenfolge der Liste
worst-first = schlimmste zuerst
road-order = entlang der Strecke
columns =
    .descent = Gefälle
    .from = ab
    .length = Länge
    .drop = fällt um
    .mean = im Mittel
    .asks = verlangt
    .gear = Gang
    .stage = Stufe
    .hold = Tempo
    .if-stopped = nach hartem Stopp
descent = Gefälle { $number }
details-of = Gefälle { $number }: Einzelheiten

## Words of one descent's details, and of its table.

sign-label = Wie es auf einem Verkehrszeichen stünde
sign = { $grade } auf { $length }
advice-label = Wie Sie hinunterfahren
way-label = Stufen auf dem Weg hinunter
relief-label = Wo das Gefälle nachlässt
grades-label = Wie steil
curves-label = Kurven
climb-label = Denselben Berg hinauf
cut-short = Die Gefällestrecke ist dort abgeschnitten, wo die Strecke nicht mehr beurteilt werden kann. Wie es weitergeht, ist nicht bekannt.
table-heads =
    .gear = Gang
    .speeds = nutzbare Geschwindigkeiten
    .reserve = Reserve bei der höchsten
table-chosen = empfohlen

## Words of what follows from a plan: what would change it, how sure it is, what if.

change-label = Damit es hält
carried-label = In die nächste Steigung
sure-label = Wie sicher
too-long-to-be-sure = Diese Strecke ist zu lang, um sie 256 Mal zu fahren: Berechnen Sie einen Teil davon, um zu sehen, wie sicher der Plan ist.
studying = Berechnet, wie sicher das ist: { $share }
not-yet = …
change-up = Ab { $from } hochschalten: { $gear }
slow-first = Ab { $from } mit der Dauerbremse auf { $speed } verlangsamen, dann { $gear }, spätestens bei { $at }
not-worked-out = nicht berechnet
not-worked-out-sentence = Das wurde nicht berechnet: Der Teil der Seite, der weiter rechnet, hat nicht geantwortet. Es heißt nicht, dass alles in Ordnung ist.
study-missing = Nicht berechnet: wie sicher das ist, wo langsamer zu fahren ist, was bei Ausfall der Dauerbremse bleibt, verstellte Bremsen.
lost-label = Dauerbremse fällt aus
adjustment-label = Verstellte Bremsen
slowing-label = Langsamer werden für das, was kommt
slowing-sentence = Ab dort vom Gas und auf voller Stufe: Die Dauerbremse allein bringt das Fahrzeug auf die Geschwindigkeit. Die Betriebsbremse bleibt kühl. Schilder und was Sie sehen, gehen vor.
slowing-heads =
    .place = bei
    .what = wofür
    .speed = auf
    .where = volle Stufe ab
    .gear = im Gang
    .brakes = Betriebsbremse allein
slowing-more = { $count ->
    [one] Und 1 weitere Stelle, die weniger verlangt.
   *[other] Und { $count } weitere Stellen, die weniger verlangen.
}
evidence-head = Belege
evidence-sentence = Woran die Rechnung gemessen wird: Werte von außerhalb dieses Projekts, jeder mit seiner Quelle und wie wir an ihn kamen, und was hier herauskommt. Dieselben Zeilen sind die Tests des Projekts. Sie stehen auf Englisch.
evidence-count = { $rows } Werte; { $known } davon weichen von ihrer Quelle um mehr als deren Toleranz ab und sind so gekennzeichnet.
evidence-heads =
    .what = was
    .source = die Quelle hat
    .ours = hier
    .difference = Unterschied
evidence-difference = weicht ab
evidence-missing = Die Zeilen konnten nicht geladen werden. Öffnen Sie dies noch einmal, oder laden Sie die Seite neu.
measured-head = Was heute gehalten hat
measured-sentence = Haben Sie an einem Berg mit der Dauerbremse allein ein gleichmäßiges Tempo gehalten, ohne Gas und ohne Betriebsbremse? Geben Sie danach, im Stand, ein, was Sie gesehen haben. Daraus folgt, was Ihre Dauerbremse bei der Masse und den Bedingungen oben wirklich leistet.
measured-fields =
    .gear = Gang
    .stage = Stufe
    .engine-speed = Motordrehzahl
    .speed = Gleichmäßige Geschwindigkeit
    .grade = Neigung, bergab
    .place = oder: Stelle auf der gezeigten Strecke
measured-place-hint = Wo eine Stelle angegeben ist, gelten Neigung und Höhe dort.
measure = Berechnen
measured-missing = Geben Sie Gang, Stufe, Motordrehzahl und gleichmäßige Geschwindigkeit ein, dazu eine Neigung bergab oder eine Stelle auf einer Gefällestrecke der gezeigten Strecke, alles als Zahlen.
use-measured = Damit planen
undo-measured = Zurück zu den Fahrzeugdaten
scale-in-use = Pläne rechnen mit { $share } der Daten der Dauerbremse.

## Words of two roads side by side.

two-head = Zwei Strecken
keep-beside = Zum Vergleich behalten
keep-beside-sentence = Um zwei Strecken, zwei Fahrzeuge oder zwei Bedingungen abzuwägen: Was jetzt angezeigt wird, bleibt neben dem stehen, was Sie als Nächstes wählen.
two-next = Noch sind beide gleich: Wählen Sie eine andere Datei, drehen Sie die Strecke um, oder ändern Sie Fahrzeug oder Bedingungen.
end-two = Schließen
swap = Beide tauschen
swap-sentence = Beim Tauschen nimmt jede Strecke ihr Fahrzeug, ihre Bedingungen und ihre Orte mit.
two-heads =
    .what = {""}
    .kept = behalten
    .shown = angezeigt
    .difference = Unterschied
two-row = { $row ->
    [truck] Fahrzeug, Bedingungen
    [worst] schlimmste Gefällestrecke
    [descents] Gefällestrecken
    [hold] niedrigste zu haltende Geschwindigkeit
    [hottest] heißeste Bremsen nach kräftiger Bremsung bis zum Stillstand
    [braked] Betriebsbremse bergab benutzt, auch vor Kurven und Orten
    [service] Arbeit der Betriebsbremse
    [holding] Arbeit von Dauerbremse und Motor
    [down] Zeit auf den Gefällestrecken
    [up] Zeit auf Steigungen von 2 % und mehr
    [crawl] langsamste Fahrt an einer Steigung
    [time] Zeit insgesamt
    [rise] steigt um
    [fall] fällt um
    [length] Länge
    [curves] Kurven, die langsamere Fahrt verlangen
    [checks] eingetragene Bremskontrollplätze
    [ramps] eingetragene Notfallspuren
    [parking] eingetragene Park- und Rastplätze
    [blank] nicht beurteilt
    [fuel] Kraftstoff, etwa
   *[cost] Kosten zu den eingegebenen Sätzen
}
no-difference = gleich
two-caution = Keine Zeile entscheidet allein, und nichts davon ist eine Erlaubnis, hinunterzufahren. Was nicht beurteilt ist, ist in diesen Zahlen nicht enthalten. Verkehrszeichen, Sperrungen und die Vorschriften Ihres Arbeitgebers gehen vor.
rate-labels =
    .fuel = Kraftstoffpreis
    .time = Kosten für Fahrzeug und Fahrer
rate-units-metric =
    .first = je Liter
    .second = je Stunde
rate-units-imperial =
    .first = je Gallone
    .second = je Stunde
rank = { $count ->
    [one] Diese Strecke in eine Liste
    [2] Die 2 Strecken vergleichen
   *[other] Diese { $count } Strecken vergleichen
}
ranked-sentence = Jede in beiden Richtungen, für das eingegebene Fahrzeug und die eingegebenen Bedingungen. Haken Sie zwei zum Vergleichen an, oder öffnen Sie eine über ihren Namen.
ranking = wird berechnet
rank-again = Fahrzeug oder Bedingungen haben sich geändert: Strecken neu berechnen
ranked-so-far = Strecken: { $done } von { $count } berechnet
ranked-roads = { $count } Strecken
given-up = abgebrochen
many-columns =
    .road = Strecke
    .length = Länge
    .way = Richtung
    .profile = Profil
    .hardest = schwerste
    .grade = Gefälle
    .hold = Gang, Stufe, Tempo
    .verdict = Ergebnis
    .time = Zeit
    .fuel = Kraftstoff
    .braking = Bremsarbeit
    .heat = harter Stopp
    .heights = Höhen
    .other = andere Richtung
driven-label = Richtung
driven-ways =
    .harder = schwerere
    .recorded = wie aufgezeichnet
    .reversed = umgekehrt
heights-word = { $class ->
    [good] gut
    [fair] mittel
   *[poor] schlecht
}
show-verdicts = Zeigen
short-no-descent = kein Gefälle
compare-ticked = { $count ->
    [one] Noch 1 zum Vergleichen anhaken
    [2] 2 vergleichen
   *[other] 2 zum Vergleichen anhaken
}
turn-ranked = { $name } umkehren
tick-ranked = { $name } anhaken
stop-ranking = Anhalten
print-list = Drucken
save-list = Als Tabelle speichern
to-many = Alle { $count } Strecken
limit-of-list = Grenze { $limit }
blank-in-list = ? Höhen fehlen oder sind falsch: dort kein Rat
list-ending = -Liste.csv
list-stem = Strecken
compared-ending = -Vergleich.csv
easier-mark = die leichtere. Es gibt keine Summe: Sie wägen ab.
easier = leichter
reason = { $name }: { $parts }.
reason-none = { $name }: kein Unterschied in Ergebnis, Zeit, Kraftstoff und Hitze.
reason-time = { $more ->
    [true] { $figure } länger
   *[false] { $figure } kürzer
}
reason-heat = { $more ->
    [true] Bremsen nach hartem Stopp { $figure } heißer
   *[false] Bremsen nach hartem Stopp { $figure } kühler
}
reason-fuel = { $more ->
    [true] { $figure } mehr Kraftstoff
   *[false] { $figure } weniger Kraftstoff
}
reason-hold = langsamste { $shown } statt { $kept }
reason-verdict = { $shown }, statt: { $kept }
list-heads =
    .file = Datei
    .crest = Kuppe
    .limit = Grenze
    .blank = nicht beurteilt
    .truck = Fahrzeug, Bedingungen

## Words of places and posted limits along the road.

places-head = Orte
places-nav = Orte
places-sentence = { $count ->
    [0] Auf dieser Strecke ist noch nichts eingetragen. Das heißt nicht, dass es nichts gibt: Achten Sie selbst auf Bremskontrollplätze, Notfallspuren, Ampeln und Tempolimits.
    [one] Auf dieser Strecke ist ein Eintrag. Es kann mehr geben.
   *[other] Es kann mehr geben, als hier eingetragen ist.
} Die Einträge stammen aus den Wegpunkten der Datei; weitere tragen Sie dort ein, wo im Bild der Zeiger steht, oder nach ihrer Entfernung. Sie werden auf diesem Gerät gespeichert.
put-here = Hier einen Ort markieren
put-at = Einen Ort markieren bei
put = Hinzufügen
kind-label = Art
name-label = Name
at-label =
    .at = Bei
    .from = Von
    .to = Bis
limit-label = Tempolimit
set-the-limit = Tempo und Ende sind angenommen und zählen schon. Setzen Sie ein, was auf dem Schild steht.
quiet-zone-caution = Ein Schild kann hier Motorbremsen verbieten. Der Plan rechnet trotzdem mit der Dauerbremse: Wo das Schild sie verbietet, fahren Sie langsamer in einem niedrigeren Gang, und halten Sie die Betriebsbremse kühl.
take-off = Entfernen
not-on-part = nicht auf dem angezeigten Teil
off-road = Das liegt nicht auf dieser Strecke: Sie reicht von { $first } bis { $last } { $unit }.
no-stretch = Ein Tempolimit muss hinter seinem Anfang enden.
too-many-things = Mehr als hundert Einträge sind nicht möglich. Entfernen Sie zuerst einen.
show-all-places = Alle { NUMBER($count) } anzeigen

## Words of the entries of truck and day.

truck-head = Fahrzeug
day-head = Bedingungen
assumed = angenommen
assumed-sentence = Werte mit dem Vermerk „angenommen“ haben für dieses Fahrzeug keine gedruckte Quelle: Geben Sie Ihre eigenen ein.
hint = { $entry ->
    [rated-power] Wie auf dem Typenschild des Motors oder in den Papieren; Zugkraft und angenommene Dauerbremse folgen ihr.
    [governed-speed] Hier nimmt der Regler den Kraftstoff weg, und etwa hier schaltet ein Getriebe selbst hoch. Die Räder dürfen den Motor schneller drehen: siehe oben.
    [top-gear-speed] Auf ebener Strecke vom Drehzahlmesser abgelesen. Daraus folgt die Achsübersetzung.
    [gross-mass] Fahrzeug, Anhänger und Ladung zusammen. Lassen Sie es wiegen, wenn möglich.
    [retarder-peak-power] Alle Stufen ein, bei der günstigsten Motordrehzahl; 0 für keine.
    [highest-engine-speed] Wie vom Hersteller erlaubt, wenn die Räder den Motor antreiben.
    [reserve] Mehr Haltekraft als nötig, vorgehalten für Fehler bei Gewicht und Neigung.
    [headwind] Rückenwind ist negativ und schiebt.
    [heat-limit] Höchste Bremsentemperatur, eine kräftige Bremsung bis zum Stillstand eingeschlossen.
    [brakes-at-start] Höher, wenn Sie von einem anderen Gefälle kommen.
    [speed-limit] Laut Schild oder Ihre eigene.
    [rolling-resistance] Das untere Ende: Mit leicht rollenden Reifen schiebt das Fahrzeug bergab stärker.
    [rollover-threshold] In g, vom Kipptisch; mit hoher oder loser Ladung kippt es schon bei weniger. Im Zweifel niedriger.
    [superelevation] Wie weit Kurven nach innen geneigt sind; 0, wenn Sie es nicht wissen.
    [retarder-delay] So lange nach dem Schließen der Kupplung setzt sie wieder ein.
    [retarding-scale] 100, solange nicht gemessen wurde, was heute gehalten hat.
    [short-power] Was er für die kurze Zeit unten leistet, wenn er kalt beginnt.
    [sustained-power] Was das Kühlwasser des Motors auf Dauer abführt. Damit rechnen die Pläne.
    [sustained-speed] Darunter wird das Kühlwasser langsamer gepumpt und führt weniger ab.
    [hot-share] Bremsmoment des heißen Retarders im Verhältnis zum kalten. Die Pläne rechnen mit dem heißen.
    [lock-up-gear] In niedrigeren Gängen ist der Wandler offen, und der Motor hält nichts.
    [shifts-up-speed] Darüber schaltet es hoch, und der Retarder fällt aus; meist die Abregeldrehzahl.
    [brake-check-stop] Zeit zum Abkühlen an jedem Bremskontrollplatz der Strecke; bei 0 wird vorbeigefahren.
    [shaft-torque] Alle Stufen ein, kalt, bei der Wellendrehzahl unten.
    [shaft-speed] Drehzahl der Kardanwelle, bei der das Bremsmoment oben gemessen ist.
    [short-time] So lange reicht sie aus dem kalten Zustand, bis das Kühlwasser sie begrenzt.
    [warm-up-time] Nach so langem Einsatz hat er zwei Drittel dessen verloren, was er insgesamt verliert.
    [lock-up-speed] Darunter öffnet der Wandler, und der Motor hält nichts.
    [drive-axle-mass] Was auf den Antriebsachsen lastet: Davon hängt ab, wie viel sie halten können.
    [rolling-radius] Weg einer Umdrehung des belasteten Rades, geteilt durch 2π; die Liste der Reifengrößen trägt ihn ein.
    [wheel-inertia] Aller Räder zusammen; es lässt das Fahrzeug schwerer wirken.
    [drag-area] Luftwiderstandsbeiwert mal Stirnfläche; ist sie kleiner, schiebt das Fahrzeug bergab stärker.
    [displacement] Von allen Zylindern zusammen: In diesem Verhältnis hält der Motor im Schubbetrieb.
    [lowest-engine-speed] Darunter wird mit Motor und Dauerbremse nicht gerechnet.
    [axle-ratio] Umdrehungen der Kardanwelle für eine der Räder; sie steht auf dem Typenschild der Achse.
    [axle-efficiency] Verluste helfen beim Halten: Eine Achse mit weniger Verlusten hält weniger.
    [retarder-peak-speed] Motordrehzahl, bei der sie am meisten hält.
    [retarder-exponent] Ihre Leistung fällt mit dieser Potenz der Motordrehzahl: je größer, desto schneller.
    [retarder-cut-out] Unter dieser Motordrehzahl schaltet sie sich selbst ab.
   *[air-temperature] Kalte Luft ist dichter; die Bremsen kühlen bis auf diese Temperatur ab.
}
not-a-number = „{ $typed }“ ist keine Zahl.
out-of-range = { $typed } liegt außerhalb des Bereichs.
enter-from = Geben Sie einen Wert von { $range } ein.
gears = Übersetzungen der Gänge
gears-hint = Der erste Gang zuerst, mit Leerzeichen dazwischen.
stages = Stufen der Dauerbremse
stages-hint = Anteil jeder Stufe an der vollen Bremswirkung in Prozent, die schwächste zuerst, die letzte 100.
retarder-table = Dauerbremse nach Drehzahl und Stufe
shaft-table-hint = Eine Zeile je Drehzahl: Wellendrehzahl, ein Doppelpunkt, dann das Bremsmoment jeder Stufe in N·m, die schwächste zuerst. Außerhalb der Tabelle gilt sie als aus.
engine-table-hint = Eine Zeile je Drehzahl: Motordrehzahl, ein Doppelpunkt, dann die Bremsleistung jeder Stufe in kW, die schwächste zuerst. Außerhalb der Tabelle gilt sie als aus.
retarder-label = Dauerbremse
transmission-label = Getriebe
load-label = Beladung
mass-stays = Das ändert das Gewicht nicht: Eingegeben ist weiter { $mass }. Geben Sie ein, was das Fahrzeug jetzt wiegt.
gear-set-label = Zahl der Gänge
gear-set = { $gears } Gänge, { $overdrive ->
    [true] Schnellgang
   *[false] höchster Gang direkt
}
own-gears = wie unten eingegeben
tyre-label = Reifen der Antriebsachsen
own-tyre = Rollradius wie eingegeben
curves-name = Leistung über der Motordrehzahl
curves-about = Leistung in { $unit } über der Motordrehzahl: dick, womit der Motor zieht, gestrichelt, womit Motor und Dauerbremse halten, Stufe für Stufe. Was ein Retarder an der Kardanwelle auf Dauer leistet, ist für den direkten Gang gezeichnet.
own-trucks = Ihre eigenen Fahrzeuge
truck-name = Name dieses Fahrzeugs
keep-truck = Unter diesem Namen speichern
rename-truck = „{ $name }“ so umbenennen
take-truck = Mit „{ $name }“ planen
remove-truck = „{ $name }“ entfernen
undo = Rückgängig
remove = Entfernen
no-name = Geben Sie ihm zuerst einen Namen.
too-many-trucks = Kein Platz für ein weiteres Fahrzeug: Entfernen Sie zuerst eines.
save-truck = Als Datei speichern
open-truck = Fahrzeugdatei öffnen
truck-file-stem = eigenes
truck-file-name-ending = -fahrzeug.json
axle-groups = Gebremste Achsen
service-brakes-label = Betriebsbremse
lead-label = Art der Abfahrt
lead-hint = { $lead ->
    [usual] An einem langen Gefälle kann der Gang an genannten Stellen wechseln, wo das Minuten spart.
    [one-gear] Ein Gang von der Kuppe bis zum Fuß, mit seiner Geschwindigkeit.
   *[untouched] Ein Gang, in dem die Dauerbremse allein auf jedem aufgezeichneten Stück hält, auch wo die Höhen unsicher sind.
}
usual-day = Übliche Bedingungen
kept-here = Eingaben werden nur in diesem Browser gespeichert.

## Words of the road: its quality, what was repaired, what was not assessed.

grade-holds = { $class ->
    [good] Die Höhen sind gut: Eine Neigung gilt ab { $base } Länge.
    [fair] Die Höhen sind mäßig: Eine Neigung gilt ab { $base } Länge; kürzere Steilstücke werden nicht erkannt.
   *[poor] Die Höhen sind schlecht: Eine Neigung gilt erst ab { $base } Länge und ist nur ein Anhaltspunkt. Vergleichen Sie sie mit den Schildern.
}
roughness = Neun von zehn benachbarten 100-m-Abschnitten unterscheiden sich um höchstens { $before } Prozentpunkte, wie aufgezeichnet, und um höchstens { $after } nach der Glättung.
findings-head = { $count ->
    [one] 1 Auffälligkeit oder Korrektur in der Datei
   *[other] { $count } Auffälligkeiten oder Korrekturen in der Datei
}
no-findings = Es musste nichts korrigiert werden.
unassessed-head = { $count ->
    [one] 1 Abschnitt ohne Empfehlung: Höhen fehlen oder sind falsch
   *[other] { $count } Abschnitte ohne Empfehlung: Höhen fehlen oder sind falsch
}
show-place = Auf der Strecke zeigen: { $place }
left-blank = Höhen fehlen oder sind falsch auf { $length }. Dort wird nichts empfohlen.
left-blank-lower = Höhen fehlen oder sind falsch auf { $length } ({ $lower } Höhenverlust). Dort wird nichts empfohlen.

## Words of the form that do not name an entry.

top-gear-speed = { $units ->
    [metric] Motordrehzahl bei 80 km/h im höchsten Gang
   *[imperial] Motordrehzahl bei 50 mph im höchsten Gang
}
is-axle-ratio = Das ist eine Achsübersetzung von { $ratio }.
no-axle-ratio = Mit diesen Gängen und Reifen wäre das eine Achsübersetzung von { $ratio }; Achsen haben { $range }. Prüfen Sie Motordrehzahl, höchsten Gang und Reifen.
tyre-hint = Sie steht auf der Reifenflanke. Abgefahrene Reifen rollen etwas kürzer.
gear-set-hint = Zählen Sie die Vorwärtsgänge. „Schnellgang“: Im höchsten Gang dreht die Kardanwelle schneller als der Motor.
transmission-hint = Automatisiert: kein Kupplungspedal, aber eine Kupplung. Wandler: fährt ohne Kupplung an.
on-shaft = { $on-shaft ->
    [nothing] keiner
    [hydrodynamic] hydrodynamischer Retarder
    [electromagnetic] elektromagnetischer Retarder
    [engine-table] eigene Tabelle, am Motor
   *[shaft-table] eigene Tabelle, an der Kardanwelle
}
on-shaft-hint = Ein Gerät am Getriebe oder an der Kardanwelle. Das mit Flüssigkeit erwärmt das Kühlwasser; das mit Magneten hat einen schweren Rotor mit Rippen.
at-engine-label = Dazu eine Motorbremse?
at-engine = { $at-engine ->
    [nothing] keine
    [exhaust-flap] Auspuffklappe
   *[compression] Dekompressionsbremse
}
at-engine-hint = Auspuffklappe: eine Klappe im Auspuffrohr. Dekompressionsbremse: Die Auslassventile arbeiten, hörbar laut. Im Zweifel die Klappe: Sie hält weniger.
lever-label = Stufen am Hebel, ohne „aus“
lever-hint = Jede Stufe gilt als gleich groß. Die Anteile lassen sich unten eingeben.
own-lever = wie unten eingegeben
shape-label = Leistung der Motorbremse über der Motordrehzahl
shape = { $by-exponent ->
    [true] nach einem Exponenten
   *[false] wie Motoren sie angeben
}
shape-hint = Wie Motoren sie angeben, solange Sie keine eigenen Zahlen haben.
axles-of = { $axle-place ->
    [steer] Gelenkte Achsen
    [drive] Antriebsachsen und was bei ihnen sitzt
   *[trailer] Achsen des Anhängers
}
brakes-of = { $axle-place ->
    [steer] Bremsen der gelenkten Achsen
    [drive] Bremsen der Antriebsachsen
   *[trailer] Bremsen des Anhängers
}
brake = { $brake ->
    [drum] Trommel
   *[disc] Scheibe
}
without-trailer = ohne Anhänger
axles-hint = Zählen Sie die gebremsten Achsen. Wie sie sich die Arbeit teilen, ist angenommen.
wrong-by = { $by } falsch
so-many-gears = { $gears ->
    [one] { $gears } Gang
   *[other] { $gears } Gänge
}
so-many-stages = { $stages ->
    [one] { $stages } Stufe
   *[other] { $stages } Stufen
}
no-other = weder Gang noch Geschwindigkeit ändern sich
other-verdict = { $verdict ->
    [retarder-holds] die Dauerbremse würde es halten
    [little-in-reserve] wenig Reserve
    [needs-service-brakes] braucht die Betriebsbremsen
   *[no-safe-speed] keine sichere Geschwindigkeit
}
worth-waits = Was ein falscher Wert kostet, steht hier, sobald ein Plan gezeigt wird.
worth-at-work = Was ein falscher Wert kostet, wird berechnet.
worth-no-descent = Was ein falscher Wert kostet: Diese Strecke hat kein Gefälle, an dem es sich zeigt.
worth-not = Was ein falscher Wert kostet, ließ sich nicht berechnen.

## Wörter des Rahmens der Seite.

view-names =
    .road = Strecke
    .descents = Gefälle
    .two = Zwei Strecken
    .card = Merkblatt
    .more = Mehr
truck-tab = Fahrzeug
road-button = Strecke: { $name }. Andere wählen
truck-button = Fahrzeug und Tag: { $facts }. Ändern
road-panel = Strecke
teaching-roads = Lehrstrecken
cab-card = Merkblatt
caution-line = <strong>Eine Planungshilfe.</strong> Schilder und Gesetz gehen vor. Ihre Bremsen sieht sie nicht.
all-cautions = Alle Warnungen
of-count = von { $number }
hardest = am schwersten
descent-before = Das Gefälle davor
descent-after = Das nächste Gefälle
hand-figures =
    .gear = Gang
    .stage = Stufe
    .hold = Halten
    .from = ab
    .long = lang
    .down = hinab
    .grade = Neigung
    .steepest = steilste
be-in-gear = Gang einlegen <strong>vor der Kuppe, { $place }</strong>.
be-in-gear-at-start = Gang einlegen <strong>vor dem Anfahren</strong>.
stay-to = Darin bleiben bis { $place }.
old-answer = alte Antwort
all-gears = Alle Gänge
about-descent = Dieses Gefälle
way-curve = { $hairpin ->
    [true] Kehre
   *[false] Kurve
}
settings-head = Einstellungen
change-truck = Ändern
show-blank = Zeigen
finding-descents = Gefälle werden gesucht

## Words of the drawer of truck and day.

drawer-head = Ihr Lkw, Ihr Tag
which-truck = Welcher Lkw?
how-heavy = Wie schwer?
which-retarder = Welche Dauerbremse?
what-surface = Welche Fahrbahn?
truck-type = { $preset ->
    [five-axle36] Fünf Achsen, Trommeln
    [five-axle40] Fünf Achsen, Scheiben
    [five-axle40-both] Fünf Achsen, zwei Dauerbremsen
    [five-axle-empty] Fünf Achsen, leer
    [six-axle44] Sechs Achsen
    [drawbar40] Gliederzug
    [rigid18] Zwei Achsen
    [tipper26] Kipper
    [refuse26] Müllwagen
    [b-double] Zwei Auflieger
    [coach] Reisebus
   *[coach-converter] Reisebus, Wandler
}
my-trucks = Meine Lkw
lighter-by = { $by } leichter
heavier-by = { $by } schwerer
retarder-answers =
    .engine = Motorbremse
    .exhaust = Auspuffklappe
    .hydrodynamic = hydrodynamischer Retarder
    .electric = elektrischer Retarder
    .both = zwei zusammen
    .none = keine Dauerbremse
retarder-change = ändern
experts = Für Fachleute
experts-about = * angenommen: Tragen Sie Ihren Wert ein. Bei jedem steht, was ein falscher am schwersten Gefälle kostet.
expert-rows =
    .gearbox = Getriebe
    .engine = Motor
    .retarder = Dauerbremsleistung
    .rolling = Reifen, Achsen und Bremsen
    .tune = Abgleichen
gears-now = { $gears } Gänge · Achse { $ratio }
axles-now = { $count ->
    [one] { $count } Achse
   *[other] { $count } Achsen
}
day-now = Luft { $air } · Bremsen { $brakes } am Anfang
trucks-now = speichern, öffnen, weitergeben
done = Fertig
example-truck = Beispiel-Lkw. Nicht Ihrer?
enter-yours = Ihren eingeben
enter-brake-heat = Geben Sie ihre Temperatur unter „Bedingungen“ ein.
this-is-mine = Das ist mein Lkw
example-export = Beispiel-Lkw, vielleicht nicht Ihrer. Fahren Sie nicht danach: Geben Sie zuerst Ihren ein.
