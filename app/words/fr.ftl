### French (not yet read by a practitioner).
###
### Terms, so that later sentences keep to them. The reader is addressed as “vous”. “Vitesse” is
### only a speed, never a gear; “pente” is the grade, “côte” or “descente” the hill. “Arrêt” is
### the truck's; what is switched off is “coupé”. Of two current words the one that is understood
### in most countries stands here.
###
### | English | French |
### |---|---|
### | road, part of it | route, partie de la route |
### | stretch | tronçon |
### | track, route (of the file), waypoint | trace, itinéraire, point de passage |
### | descent, downgrade | descente |
### | grade (signed) | pente |
### | steepest part | partie la plus raide |
### | what the hill asks for | ce que demande la descente |
### | way down; the service brakes touch | façon de descendre; les freins de service agissent un peu |
### | climb, rise | montée |
### | crest | sommet |
### | foot of the hill | pied de la descente |
### | easing | endroit où la pente s'adoucit |
### | hairpin; teaching road | virage en épingle; route d'enseignement |
### | heights | altitudes |
### | truck (coaches too) | véhicule |
### | combination, rigid, tipper | ensemble, porteur, camion-benne |
### | no trailer, bobtail | sans remorque; in sentences: sans remorque ni semi-remorque |
### | retarder (of any kind) | ralentisseur |
### | engine brake | ralentisseur moteur; of signs: frein moteur |
### | compression release | frein moteur à décompression |
### | exhaust brake | frein sur échappement |
### | stage, full stage, off | cran, plein cran, ralentisseur coupé |
### | service brakes | freins de service |
### | snub braking, a snub | freinage intermittent, freinage |
### | to drag the brakes | freiner en continu |
### | hard stop | freinage énergique jusqu'à l'arrêt; in heads: après arrêt |
### | brake check (a place) | aire de vérification des freins |
### | escape ramp | voie de détresse |
### | chain-up area | aire de chaînage |
### | quiet zone | zone sensible au bruit |
### | posted signs, posted limit | signalisation (or panneaux), limitation signalée |
### | to hold a truck | retenir le véhicule |
### | hold speed, to hold it | vitesse à tenir, tenir; in heads: à tenir |
### | control, holding force | retenue, force de retenue |
### | reserve | réserve |
### | overrun, unfuelled engine | moteur entraîné par les roues, sans injection |
### | to overrun (in the table) | s'emballe |
### | engine speed, shaft speed | régime moteur, vitesse de rotation de l'arbre |
### | propeller shaft | arbre de transmission |
### | gear; to shift up | rapport; passer au rapport supérieur |
### | gear ratio, axle ratio | rapport de démultiplication, rapport de pont |
### | driven axles, steer axle | essieux moteurs, essieu directeur |
### | rolling radius | rayon de roulement |
### | gross mass | masse totale réelle |
### | grip, to break away | adhérence, perdre l'adhérence |
### | superelevation | dévers |
### | rollover threshold | seuil de renversement |
### | converter, lock-up | convertisseur, verrouillage du convertisseur |
### | brake adjustment | réglage des freins |
### | advice, advised | conseil, conseillé |
### | assessed | évalué |
### | advisory only | à titre indicatif seulement |
### | entries | données saisies |
### | day (its entries) | conditions du jour |
### | card for the cab, marker | fiche pour la cabine, borne |
### | what held today | ce qui a tenu aujourd'hui |

## Words of the notice before the page, and of what the pictures say to whoever does not see them.

i-am-parked = Je suis en stationnement
road-table = La route en tableau
road-table-heads =
    .span = de – à
    .part = partie
between = pas de descente
power-table = La puissance en tableau
power-heads =
    .engine-speed = régime moteur, /min
    .pulls = traction
holds = retenue, { $stage }
window-ends =
    .beginning = Début de la partie affichée
    .end = Fin de la partie affichée
ends-where-it-began = Elle finit là où elle a commencé.
leads-away = Elle finit à { $away } de son départ à vol d’oiseau, vers { $towards }.
winds =
    .north = le nord
    .north-east = le nord-est
    .east = l’est
    .south-east = le sud-est
    .south = le sud
    .south-west = le sud-ouest
    .west = l’ouest
    .north-west = le nord-ouest
card-profile = Profil de la route. Ce qu’il montre figure dans les lignes au-dessous.

## Words of the road picture.

picture = La route
fill-by = Colorer selon
reading = { $reading ->
    [gear] rapport
    [stage] cran
    [heat] chaleur des freins
    [speed] vitesse
   *[grade] pente
}
grade-step = { $step ->
    [down10] −10 % et plus raide
    [down8] −8 à −10 %
    [down6] −6 à −8 %
    [down4] −4 à −6 %
    [down2] −2 à −4 %
    [level] plat
    [up2] montée de 2 à 5 %
   *[up5] montée de 5 % et plus
}
zoom = Zoom
zoom-in = Agrandir
zoom-out = Réduire
zoom-all = Toute la route
lane = { $lane ->
    [height] altitude
    [gear] rapport
    [stage] cran
    [heat] chaleur freins
    [speed] vitesse
   *[temperature] freins
}
after-stop = après arrêt
bend-caps = en virage
only-this = Seulement cette partie
not-assessed = non évalué
limit = limite
before-asked = demande
cursor = Endroit sur la route
cell-head = { $cell ->
    [at] endroit
    [grade] pente
    [height] altitude
    [gear-stage] rapport · cran
    [speed] vitesse · moteur
    [carried] part du ralentisseur
    [brakes] freins
   *[if-stopped] après arrêt ici
}
engine-carries = part du moteur
grade-over = pente sur { $length }
nothing-said-here = La route n’a pas pu être évaluée ici : rien n’est dit à son sujet.
on-descent = Dans la descente { $number }, encore { $to-foot } jusqu’à son pied.
descent-begins = La descente { $number } commence dans { $ahead }.
no-descent-ahead = Aucune descente plus loin.
bend = { $hairpin ->
    [true] Virage en épingle
   *[false] Virage
} { $side } : { $speed } au plus (rayon d’environ { $radius }, estimation).
place-here = Ici : { $name }.
place-ahead = Dans { $ahead } : { $name }.
strip = Toute la route, et la partie affichée ci-dessus
plan-shape = La route vue d’en haut, le nord en haut
start = début
end = fin
north = N
short-stage-off = coupé

## Words of use without a network.

works-offline = Cette page fonctionne maintenant sans réseau.
newer = Une nouvelle version de cette page est prête. Le véhicule, les conditions du jour, la route et ses lieux restent. La borne saisie pour la fiche, une route gardée à côté et ce qui a tenu aujourd’hui ne restent pas.
load-newer = Nouvelle version : la charger
later = Plus tard
forget-all = Effacer tout ce qui est conservé sur cet appareil
forget-really = Vraiment effacer véhicules, données saisies, routes et lieux ? Appuyez encore une fois
save-page = Enregistrer cette page en un seul fichier (pour une clé USB)

## Words of what is handed on: the link with truck and day, the project with all of it.

make-link = Copier un lien avec le véhicule et les conditions
link-copied = Copié. Le lien contient ce véhicule et ces conditions, aucune route et aucun lieu. Qui l’ouvre décide s’il les utilise.
link-made = Copiez le lien ici. Il contient ce véhicule et ces conditions, aucune route et aucun lieu. Qui l’ouvre décide s’il les utilise.
link-label = Lien avec le véhicule et les conditions
link-offered = Ce lien apporte un véhicule et des conditions. Vos propres données restent utilisées jusqu’à votre décision. La personne qui l’a envoyé conduit peut-être un autre véhicule : vérifiez chaque donnée.
use-link = Utiliser le véhicule et les conditions du lien
keep-mine = Garder les miens
link-taken = Le véhicule et les conditions du lien sont utilisés maintenant : vérifiez-les avant de vous fier aux chiffres.
back-to-mine = Revenir aux miens
link-broken = Le véhicule et les conditions de ce lien ne peuvent pas être lus ; il en manque peut-être une partie. Redemandez-le. Vos propres données restent utilisées.
save-project = Tout enregistrer dans un seul fichier
project-sentence = La route telle qu’elle a été donnée, avec ses lieux et ses limitations, le véhicule et les conditions, et de même pour la route gardée à côté. Il s’ouvre ici comme une route, sur n’importe quel appareil.
project-name-ending = .steadygrade
project-opened = Le véhicule, les conditions et les lieux du projet sont utilisés maintenant : vérifiez-les avant de vous fier aux chiffres.
file-stem = route

## Words that stand in a file saved for a device.

mark-caution = Calculé à partir des données saisies et d'altitudes enregistrées, qui comportent des erreurs. Ce n'est pas une autorisation de descendre : la signalisation en place, la loi du lieu et les limites du constructeur du véhicule passent en premier.
by-here = { $how ->
    [down] au plus tard ici
   *[up] à partir d’ici
}
crest-number = Sommet { $number }
hold = tenir { $speed }
mark-foot = Pied { $number }
mark-foot-then = Pied { $number }, puis rapport { $gear }

## Words of the teaching roads.

lessons-head = Routes d’enseignement
lessons-invented = Ces routes sont inventées pour l’enseignement ; aucune n’existe.
lessons-said-for = Ce qui se passe vaut pour le premier véhicule de la liste, dans les conditions habituelles. Avec un autre véhicule ou dans d’autres conditions, c’est ce qui est calculé qui compte, pas cette note.
lesson-shows-label = Ce qu’elle montre
lesson-believed-label = Ce que l’on croit souvent
lesson-happens-label = Ce qui se passe
lesson-question-label = Question à la classe
lesson-false-finish =
    .name = Fausse fin
    .shows = Une longue pente s’adoucit comme si elle était finie, puis continue, plus raide.
    .believed = Là où la route s’aplatit, la descente est finie et l’on peut passer au rapport supérieur.
    .happens = C’est une seule descente. L’endroit où la pente s’adoucit est trop court pour passer au rapport supérieur et revenir, et la partie la plus raide se trouve derrière. L’ensemble demande un rapport plus bas que la partie d’avant ne le demanderait à elle seule.
    .question = Où le rapport bas doit-il être engagé, et qu’est-ce qui aurait pu l’annoncer avant le sommet ?
lesson-three-steps =
    .name = Trois marches
    .shows = Trois descentes semblables, séparées par de courts tronçons plats.
    .believed = Si la première s’est bien passée, la troisième se passera aussi bien.
    .happens = Avec le ralentisseur seul, les trois se descendent de la même façon, et les freins de service restent froids. Là où le freinage intermittent est permis, chaque descente commence avec des freins plus chauds que la précédente, et la troisième ne peut plus être prise aussi vite que la première. À elle seule, elle le pourrait.
    .question = Quelle chaleur des freins est encore acceptable au troisième sommet, s’il doit rester de quoi faire un freinage énergique jusqu’à l’arrêt ?
lesson-short-and-steep =
    .name = Courte et raide
    .shows = Une descente courte et raide, avec une ville et des feux à son pied.
    .believed = Elle est si courte que les freins y suffiront, quel que soit le rapport.
    .happens = De toutes ces routes, c’est la descente la plus courte qui demande le rapport le plus bas et la vitesse la plus basse. Ici, c’est la pente qui décide du rapport, pas la longueur.
    .question = Les feux passent au rouge au pied de la descente, et le rapport choisi est trop haut. Que reste-t-il au conducteur ?
lesson-long-and-gentle =
    .name = Longue et douce
    .shows = Une pente douce qui continue très longtemps.
    .believed = Une pente si douce est sans danger : le rapport le plus haut, et les freins de temps en temps.
    .happens = Avec la réserve demandée, le ralentisseur ne retient le véhicule qu’au-dessous du rapport le plus haut et au-dessous de la limitation de vitesse habituelle. Au rapport le plus haut et à cette vitesse, avec les freins de service seuls, ceux-ci deviennent plus chauds que leur limite. Sur la descente courte et raide, la même conduite les chaufferait moins, parce que le dénivelé y est bien plus faible ; elle y serait tout aussi mauvaise.
    .question = Qu’est-ce qui fait le plus de chaleur : la pente ou le dénivelé ? Et où va cette chaleur ?
lesson-hairpins =
    .name = Épingles
    .shows = Une pente modérée, avec un virage en épingle après l’autre.
    .believed = La pente seule décide du rapport et de la vitesse.
    .happens = Ici, ce sont les virages qui décident. Sans eux, la même pente se descendrait plus vite, à un rapport plus haut. Le ralentisseur seul retient le véhicule dans la pente, mais pour ralentir avant les épingles il faut aussi les freins de service, et ils deviennent plus chauds que sur la même pente sans virages.
    .question = Le véhicule doit-il être lent avant l’épingle ou seulement dedans ? Et à quel rapport le moteur y tourne-t-il encore sans peiner ?

## Words of the class view: for an instructor, a projector and a room.

screen = { $screen ->
    [roads] Routes
    [forces] Forces
    [run] Trajet
    [pair] Côte à côte
   *[exercises] Exercices
}
idea = { $screen ->
    [roads] Une route dont on parle
    [forces] Là où un rapport rencontre la pente, le véhicule se stabilise
    [run] Un véhicule sur cette route, comme prévu
    [pair] Une route, un départ, une seule chose faite autrement
   *[exercises] D’abord calculer, ensuite regarder
}
notes-roads =
    .first = Choisissez une route, et faites dire à la classe comment elle la descendrait avant de montrer quoi que ce soit.
    .second = On peut aussi déposer ici n’importe quel fichier GPX : la meilleure route est celle qu’ils font chaque semaine.
notes-forces =
    .first = Demandez d’abord : quel rapport ? Faites ensuite glisser la pente jusqu’à sa valeur.
    .second = La pente demande presque la même force à toutes les vitesses ; un rapport bas en donne davantage. Le choix du rapport tient en cela.
    .third = Faites glisser la pente jusqu’à ce que le repère sorte du bout d’une ligne : au-delà, le moteur tournerait trop vite.
    .fourth = Ajoutez un dixième de la masse et regardez le repère se déplacer.
notes-run =
    .first = Arrêtez avant un sommet et demandez ce qui devrait déjà être engagé.
    .second = Arrêtez sur un replat : est-ce fini ?
    .third = La température est un calcul. Ce qu’il ne voit pas, comme le réglage des freins, est pire que ce qu’il voit.
notes-pair =
    .first = Faites parier la classe avant le départ : combien de degrés, combien de minutes ?
    .second = Arrêtez là où ils se séparent. Du siège, on ne voit encore rien.
    .third = À la fin, demandez ce qu’on y a gagné.
notes-exercises =
    .first = Imprimez la feuille vierge ; la feuille de réponses porte le même numéro.
    .second = Dans les étapes, les chiffres sont arrondis tels qu’ils sont écrits, pour qu’on puisse les suivre à la main.
screens = Écrans du cours
to-road-page = Page de la route
show-notes = Notes
keys = Page suivante et page précédente : changer d’écran. N : ces notes. Espace : départ et arrêt. Flèches gauche et droite : pas à pas. Haut et bas : plus vite, plus lentement. Début : depuis le départ.
class-caution = Pour enseigner, d’après des données et des altitudes qui comportent des erreurs. Pas une autorisation de descendre : les panneaux, la loi et les limites du constructeur passent d’abord.
grade-label = Pente
mass-label = Masse
stage-label = Ralentisseur
forces-about = Force de retenue selon la vitesse : une ligne par rapport, et en travers ce que demandent les pentes. En dessous est dit où les rapports se stabilisent.
holding-axis = force
none-settles = Avec ce cran, aucun rapport ne se stabilise sur cette pente.
nothing-in-reserve = Au croisement, il n’y a pas de réserve.
print-screen = Imprimer
profile-about = La route du départ à l’arrivée, avec un repère pour chaque véhicule
truck-about = Le véhicule sur sa pente, avec une flèche par force ; les indicateurs disent la même chose en chiffres
driving = Trajet en cours de calcul…
no-ride = Cela ne peut pas être roulé ici : cette route n’a pas de descente avec une vitesse sûre, ou il n’y a rien à perdre.
class-start = Départ
stop = Arrêt
class-step = Un pas
anew = Depuis le départ
slower = Plus lentement
faster = Plus vite
arrow-hill = pente
arrow-engine = moteur
arrow-retarder = ralentisseur
arrow-service = freins de service
arrow-resistance = roulement, air
gauge-speed = vitesse
gauge-gear = rapport
gauge-stage = cran
gauge-engine = moteur
gauge-power = retenue
gauge-brakes = freins
class-after-stop = après arrêt
exercise-back = Exercice précédent
exercise-on = Exercice suivant
slips = Ce que le second véhicule fait autrement
as-planned = comme prévu
gear-high = un rapport plus haut
somewhat-heavier = 10 % plus lourd
faster-by = { $speed } de plus
stage-lost = un cran perdu
hot-brakes = freins chauds
they-part = Ils se séparent à { $at }.
nowhere-apart = Sur cette route, cela ne fait pas de différence notable.
time-apart = { $time } { $sooner ->
    [true] plus tôt
   *[false] plus tard
}
no-time-apart = aucun écart de temps
compared = { $name } : { $time } ; après un freinage énergique jusqu’à l’arrêt, { $wrong } au lieu de { $right }.
passes-limit = À partir de { $from }, un freinage énergique jusqu’à l’arrêt dépasserait la limite. Ici, les freins tiennent quelle que soit leur chaleur ; sur la route, ils s’évanouissent.
forgiven = Cette pente le pardonne. La suivante, peut-être pas.
class-reserve-kept = Avec { $reserve } de réserve : { $gear }, à { $speed } au plus.
class-no-gear-keeps = Avec { $reserve } de réserve : aucun rapport.

## Words of exercises with worked answers.

sheet-head = Exercices, série { $seed }
blank-sheet = Feuille de travail
answer-sheet = Feuille avec les réponses
another-set = Une autre série
sheet-caution = Ces chiffres servent à enseigner. Ils ne sont un conseil pour aucune route, aucun véhicule ni aucun chargement : les masses, les pentes et les vitesses sont variées, et beaucoup de choses sont laissées de côté.
no-exercises = Aucune descente de cette route n’est assez longue pour des exercices.
stages-left-out = Dans ces conditions du jour, aucun cran du ralentisseur n’est conseillé. Les exercices sur le rapport et le cran sont laissés de côté.
exercise = Exercice { $number } : { $exercise ->
    [control-speed] vitesse stabilisée
    [gear-choice] choix du rapport
    [braking-work] travail de freinage
    [haste] temps gagné en allant plus vite
   *[brake-heat] température des freins
}
given-label = Données
room-label = Votre calcul et votre réponse
steps-label = Étapes du calcul
ask-control-speed = Un véhicule de { $mass } descend une pente de { $grade }, { $gear }, { $stage }, sans accélérer et sans freins de service. Se stabilise-t-il à une vitesse, et à laquelle ?
ask-gear = Le moteur et le ralentisseur seuls doivent retenir un véhicule de { $mass } sur une pente de { $grade }, avec { $reserve } de réserve. Voici des rapports à la plus grande vitesse à laquelle chacun sert à retenir, avec le régime moteur et la force de retenue du cran le plus fort que permet l’adhérence des essieux moteurs. Quel est le rapport le plus haut qui garde la réserve, et à quelle vitesse ?
ask-work = Un véhicule de { $mass } descend de { $drop } sur { $length } de route à une vitesse constante de { $speed }. Quelle énergie le moteur, le ralentisseur et les freins doivent-ils absorber ? Le moteur et le ralentisseur en absorbent { $share } : combien en reste-t-il pour les freins de service ?
ask-time = Une descente est longue de { $length }. Combien de temps gagne un véhicule qui la descend à { $fast } au lieu de { $slow } ? De combien son énergie de mouvement augmente-t-elle ?
ask-heat = Dans une descente de { $length }, à une vitesse constante de { $speed }, les freins de service absorbent { $power } tout du long ; le moteur et les résistances absorbent le reste. À quelle température sont les freins { $axle-place ->
    [steer] { $axles ->
        [one] de l’essieu directeur
       *[other] des essieux directeurs
    }
    [drive] { $axles ->
        [one] de l’essieu moteur
       *[other] des essieux moteurs
    }
   *[trailer] { $axles ->
        [one] de l’essieu de remorque
       *[other] des essieux de remorque
    }
} au pied de la descente ?
settles = Il se stabilise à environ { $speed } ({ $engine-speed }) : là, la force de retenue est égale à ce qui reste à retenir.
slows-down = Il ne se stabilise pas : à toutes les vitesses de ce rapport, il est retenu plus que nécessaire et ralentit. Un cran plus faible ou un rapport plus haut peut suffire.
gets-away-above = Il ne se stabilise pas : au-dessous d’environ { $speed }, il est retenu plus que nécessaire ; au-dessus, il s’emballe. Une fois plus rapide, rien ne le rattrape. Il faut un rapport plus bas, engagé avant le sommet ; sinon les freins de service doivent aider.
gets-away = Il ne se stabilise pas : il s’emballe à toutes les vitesses de ce rapport. Il faut un rapport plus bas, engagé avant le sommet, ou un cran plus fort s’il y en a un ; sinon les freins de service doivent aider.
gear-chosen = { $gear }, { $stage }, à { $speed } au plus ({ $engine-speed }), avec { $reserve } de réserve. Le rapport est engagé avant le sommet.
no-gear-keeps = Aucun : même le rapport le plus bas ne garde pas la réserve. Un tel véhicule ne doit pas descendre là : moins de masse ou une autre route.
work-left = Il faut absorber environ { $left } ; il en reste environ { $service } pour les freins de service.
time-saved = Environ { $time }, et l’énergie de mouvement est multipliée par { $times } : les freins ont d’autant plus à absorber à chaque arrêt. La question n’est pas ici de savoir si le moteur et le ralentisseur retiendraient le véhicule à cette vitesse.
warm-at-foot = Environ { $foot } au pied de la descente : { $over ->
    [true] au-dessus de la limite saisie de { $limit }
   *[false] pas au-dessus de la limite saisie de { $limit }, mais sans réserve pour un arrêt
}. Ne sont pas pris en compte : un arrêt, un freinage mal réparti, le réglage des freins, le rayonnement, et le refroidissement qui varie d’un véhicule à l’autre d’un facteur deux ou plus.
term = { $term ->
    [rolling-coefficient] Coefficient de résistance au roulement
    [drag-area] Surface de traînée
    [air-density] Masse volumique de l’air
    [air-density-ratio] Masse volumique de l’air, divisée par celle au niveau de la mer
    [headwind] Vent de face (un vent arrière est négatif)
    [holding-table] Force de retenue selon le régime moteur et la vitesse
    [heat-capacity] Chaleur que ces freins emmagasinent
    [cooling] Chaleur qu’ils cèdent à cette vitesse
    [group-share] Leur part du freinage
    [air-temperature] Air
    [brakes-at-crest] Freins au sommet
    [sine] Sinus de l’angle de la route
    [cosine] Cosinus de l’angle
    [gravity] Pesanteur le long de la route
    [rolling] Résistance au roulement
    [against-air] Vitesse par rapport à l’air
    [air] Résistance de l’air
    [demand] Reste à retenir
    [holding-against-demand] Force de retenue, comparée à ce qui reste à retenir
    [compared-at] Calculé à
    [length-in-feet] Longueur en pieds
    [gravity-work] Travail de la pesanteur
    [rolling-work] Absorbé par la résistance au roulement
    [air-work] Absorbé par la résistance de l’air
    [work-left] Reste à absorber
    [carried-work] Moteur et ralentisseur
    [service-work] Freins de service
    [slow-time] Temps à la vitesse la plus basse
    [fast-time] Temps à la vitesse la plus haute
    [time-saved] Temps gagné
    [motion-energy] Énergie de mouvement, la plus grande divisée par la plus petite
    [group-power] Puissance à ces freins
    [time-down] Durée de la descente
    [time-constant] Constante de temps : chaleur emmagasinée divisée par chaleur cédée
    [settled] Température qu’ils atteindraient à la longue
    [ahead] Part de cette hausse qui reste à venir au pied de la descente
   *[at-foot] Au pied de la descente
}
gear-at = { $gear } à { $speed }
enough = { $enough ->
    [true] suffisant
   *[false] insuffisant
}

## Times.

less-than-a-minute = moins d’une minute
minutes = { $count } { $count ->
    [one] minute
   *[other] minutes
}
hours-and-minutes = { $hours } h { $count } min
