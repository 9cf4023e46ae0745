### French (not yet read by a practitioner): what only the page says. The terms stand in the folder above.

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
fill-by = Couleur
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
cursor = Endroit sur la route
cell-head = { $cell ->
    [at] endroit
    [grade] pente
    [height] altitude
    [gear] rapport
    [stage] cran
    [speed] vitesse
    [engine] moteur
    [carried] part du ralentisseur
    [brakes] freins
   *[if-stopped] après freinage énergique ici
}
engine-carries = part du moteur
grade-over = pente sur { $length }
nothing-said-here = La route n’a pas pu être évaluée ici : rien n’est dit à son sujet.
on-descent = Dans la descente { $number }, encore { $to-foot } jusqu’à son pied.
descent-begins = La descente { $number } commence dans { $ahead }.
no-descent-ahead = Aucune descente plus loin.
bend = { $hairpin ->
    [true] Virage en épingle
   *[false] Virage
} { $side } : { $speed } au plus (rayon d’environ { $radius }, estimation).
place-here = Ici : { $name }.
place-ahead = Dans { $ahead } : { $name }.
strip = Toute la route, et la partie affichée ci-dessus
plan-shape = La route vue d’en haut, le nord en haut
start = début
end = fin
north = N
short-stage-off = coupé
lane-title = { $lane ->
    [height] altitude
    [gear] rapport
    [stage] cran
    [heat] chaleur
    [speed] vitesse
   *[temperature] freins
}
steepest-word = au plus raide
on-grade = à { $grade }
brake-then = freiner à { $speed }, puis rapport { $gear }
descents-joined = Descentes { $from } à { $to } : les afficher
keys-head = Touches de l’image
keys-close = Fermer
key-caps =
    .along = ← →
    .far = Maj ← →
    .ends = Début Fin
    .crests = Page ↑ ↓
    .descent = 1–9
    .zoom = + −
    .whole = 0
    .enter = Entrée
    .colour = C
    .alone = F
    .put = P
    .escape = Échap
key-does =
    .along = 100 m sur la route
    .far = 1 km sur la route
    .ends = début ou fin de la route
    .crests = sommet d’avant ou d’après
    .descent = choisir cette descente
    .zoom = agrandir, réduire
    .whole = toute la route
    .enter = afficher la descente choisie
    .colour = couleur suivante
    .alone = image seule
    .put = placer un lieu à l’endroit choisi
    .escape = fermer, ou quitter l’image seule

## Words of use without a network.

works-offline = Cette page fonctionne maintenant sans réseau.
newer = Une nouvelle version de cette page est prête. Le véhicule, les conditions du jour, la route et ses lieux restent. La borne saisie pour la fiche, une route gardée à côté et ce qui a tenu aujourd’hui ne restent pas.
load-newer = Nouvelle version : la charger
later = Plus tard
forget-all = Effacer tout ce qui est conservé sur cet appareil
forget-really = Vraiment effacer véhicules, données saisies, routes et lieux ? Appuyez encore une fois
save-page = Enregistrer cette page en un seul fichier (pour une clé USB)

## Words of what is handed on: the link with truck and day, the project with all of it.

make-link = Copier un lien avec le véhicule et les conditions
link-copied = Copié. Le lien contient ce véhicule et ces conditions, aucune route et aucun lieu. Qui l’ouvre décide s’il les utilise.
link-made = Copiez le lien ici. Il contient ce véhicule et ces conditions, aucune route et aucun lieu. Qui l’ouvre décide s’il les utilise.
link-label = Lien avec le véhicule et les conditions
link-offered = Ce lien apporte un véhicule et des conditions. Vos propres données restent utilisées jusqu’à votre décision. La personne qui l’a envoyé conduit peut-être un autre véhicule : vérifiez chaque donnée.
use-link = Utiliser le véhicule et les conditions du lien
keep-mine = Garder les miens
link-taken = Le véhicule et les conditions du lien sont utilisés maintenant : vérifiez-les avant de vous fier aux chiffres.
back-to-mine = Revenir aux miens
link-broken = Le véhicule et les conditions de ce lien ne peuvent pas être lus ; il en manque peut-être une partie. Redemandez-le. Vos propres données restent utilisées.
save-project = Tout enregistrer dans un seul fichier
project-sentence = La route telle qu’elle a été donnée, avec ses lieux et ses limitations, le véhicule et les conditions, et de même pour la route gardée à côté. Il s’ouvre ici comme une route, sur n’importe quel appareil.
project-name-ending = .steadygrade
project-opened = Le véhicule, les conditions et les lieux du projet sont utilisés maintenant : vérifiez-les avant de vous fier aux chiffres.
file-stem = route

## Words of the teaching roads.

lessons-head = Routes d’enseignement
lessons-invented = Ces routes sont inventées pour l’enseignement ; aucune n’existe.
lessons-said-for = Écrit pour le premier véhicule de la liste, dans les conditions habituelles. Avec un autre véhicule ou dans d’autres conditions, c’est ce qui est calculé qui compte, pas cette note.
lesson-shows-label = Ce qu’elle montre
lesson-believed-label = Ce que l’on croit souvent
lesson-happens-label = Ce qui se passe
lesson-question-label = Question à la classe
lesson-false-finish =
    .name = Fausse fin
    .shows = Une longue pente s’adoucit comme si elle était finie, puis continue, plus raide.
    .believed = Là où la route s’aplatit, la descente est finie et l’on peut passer au rapport supérieur.
    .happens = C’est une seule descente. L’endroit où la pente s’adoucit est trop court pour passer au rapport supérieur et revenir, et la partie la plus raide se trouve derrière. L’ensemble demande un rapport plus bas que la partie d’avant ne le demanderait à elle seule.
    .question = Où le rapport bas doit-il être engagé, et qu’est-ce qui aurait pu l’annoncer avant le sommet ?
lesson-three-steps =
    .name = Trois marches
    .shows = Trois descentes semblables, séparées par de courts tronçons plats.
    .believed = Si la première s’est bien passée, la troisième se passera aussi bien.
    .happens = Avec le ralentisseur seul, les trois se descendent de la même façon, et les freins de service restent froids. Là où les freinages courts sont permis, chaque descente commence avec des freins plus chauds que la précédente, et la troisième ne peut plus être prise aussi vite que la première. À elle seule, elle le pourrait.
    .question = Quelle chaleur des freins est encore acceptable au troisième sommet, s’il doit rester de quoi faire un freinage énergique jusqu’à l’arrêt ?
lesson-short-and-steep =
    .name = Courte et raide
    .shows = Une descente courte et raide, avec une ville et des feux à son pied.
    .believed = Elle est si courte que les freins y suffiront, quel que soit le rapport.
    .happens = De toutes ces routes, c’est la descente la plus courte qui demande le rapport le plus bas et la vitesse la plus basse. Ici, c’est la pente qui décide du rapport, pas la longueur.
    .question = Les feux passent au rouge au pied de la descente, et le rapport choisi est trop haut. Que reste-t-il au conducteur ?
lesson-long-and-gentle =
    .name = Longue et douce
    .shows = Une pente douce qui continue très longtemps.
    .believed = Une pente si douce est sans danger : le rapport le plus haut, et les freins de temps en temps.
    .happens = Avec la réserve demandée, le ralentisseur ne retient le véhicule qu’au-dessous du rapport le plus haut et au-dessous de la limitation de vitesse habituelle. Au rapport le plus haut et à cette vitesse, avec les freins de service seuls, ceux-ci deviennent plus chauds que leur limite. Sur la descente courte et raide, la même conduite les chaufferait moins, parce que le dénivelé y est bien plus faible ; elle y serait tout aussi mauvaise.
    .question = Qu’est-ce qui fait le plus de chaleur : la pente ou le dénivelé ? Et où va cette chaleur ?
lesson-hairpins =
    .name = Épingles
    .shows = Une pente modérée, avec un virage en épingle après l’autre.
    .believed = La pente seule décide du rapport et de la vitesse.
    .happens = Ici, ce sont les virages qui décident. Sans eux, la même pente se descendrait plus vite, à un rapport plus haut. Le ralentisseur seul retient le véhicule dans la pente, mais pour ralentir avant les épingles il faut aussi les freins de service, et ils deviennent plus chauds que sur la même pente sans virages.
    .question = Le véhicule doit-il être lent avant l’épingle ou seulement dedans ? Et à quel rapport le moteur y tourne-t-il encore sans peiner ?

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
    [pair] Même route, même départ, une chose différente
   *[exercises] D’abord calculer, ensuite regarder
}
notes-roads =
    .first = Choisissez une route, et faites dire à la classe comment elle la descendrait avant de montrer quoi que ce soit.
    .second = On peut aussi déposer ici n’importe quel fichier GPX : la meilleure route est celle qu’ils font chaque semaine.
notes-forces =
    .first = Demandez d’abord : quel rapport ? Faites ensuite glisser la pente jusqu’à sa valeur.
    .second = La pente demande presque la même force à toutes les vitesses ; un rapport bas en donne davantage. Le choix du rapport tient en cela.
    .third = Faites glisser la pente jusqu’à ce que le repère sorte du bout d’une ligne : au-delà, le moteur tournerait trop vite.
    .fourth = Ajoutez un dixième de la masse et regardez le repère se déplacer.
notes-run =
    .first = Arrêtez avant un sommet et demandez ce qui devrait déjà être engagé.
    .second = Arrêtez sur un replat : est-ce fini ?
    .third = La température est un calcul. Ce qu’il ne voit pas, comme le réglage des freins, est pire que ce qu’il voit.
notes-pair =
    .first = Faites parier la classe avant le départ : combien de degrés, combien de minutes ?
    .second = Arrêtez là où ils diffèrent. Du siège, on ne voit encore rien.
    .third = À la fin, demandez ce qu’on y a gagné.
notes-exercises =
    .first = Imprimez la feuille vierge ; la feuille de réponses porte le même numéro.
    .second = Dans les étapes, les chiffres sont arrondis tels qu’ils sont écrits, pour qu’on puisse les suivre à la main.
screens = Écrans du cours
to-road-page = Page de la route
show-notes = Notes
keys = Page suivante et page précédente : changer d’écran. N : ces notes. Espace : départ et arrêt. Flèches gauche et droite : pas à pas. Haut et bas : plus vite, plus lentement. Début : depuis le départ.
class-caution = Pour enseigner, d’après des données et des altitudes qui comportent des erreurs. Pas une autorisation de descendre : les panneaux, la loi et les limites du constructeur passent d’abord.
grade-label = Pente
mass-label = Masse
stage-label = Ralentisseur
forces-about = Force de retenue selon la vitesse : une ligne par rapport, et en travers ce que demandent les pentes. En dessous est dit où les rapports se stabilisent.
holding-axis = force
none-settles = Avec ce cran, aucun rapport ne se stabilise sur cette pente.
nothing-in-reserve = Au croisement, il n’y a pas de réserve.
print-screen = Imprimer
profile-about = La route du départ à l’arrivée, avec un repère pour chaque véhicule
truck-about = Le véhicule sur sa pente, avec une flèche par force ; les indicateurs disent la même chose en chiffres
driving = Trajet en cours de calcul…
no-ride = Cela ne peut pas être roulé ici : cette route n’a pas de descente avec une vitesse sûre, ou il n’y a rien à perdre.
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
class-after-stop = après freinage énergique
exercise-back = Exercice précédent
exercise-on = Exercice suivant
slips = Ce que le second véhicule fait autrement
as-planned = comme prévu
gear-high = un rapport plus haut
somewhat-heavier = 10 % plus lourd
faster-by = { $speed } de plus
stage-lost = un cran perdu
hot-brakes = freins chauds
they-part = Ils diffèrent à partir du { $at }.
nowhere-apart = Sur cette route, cela ne fait pas de différence notable.
time-apart = { $time } { $sooner ->
    [true] plus tôt
   *[false] plus tard
}
no-time-apart = aucun écart de temps
compared = { $name } : { $time } ; après un freinage énergique jusqu’à l’arrêt, { $wrong } au lieu de { $right }.
passes-limit = À partir du { $from }, un freinage énergique jusqu’à l’arrêt dépasserait la limite. Ici, les freins tiennent quelle que soit leur chaleur ; sur la route, ils s’évanouissent.
forgiven = Cette pente le pardonne. La suivante, peut-être pas.
class-reserve-kept = Avec { $reserve } de réserve : { $gear }, à { $speed } au plus.
class-no-gear-keeps = Avec { $reserve } de réserve : aucun rapport.

## Words of exercises with worked answers.

sheet-head = Exercices, série { $seed }
blank-sheet = Feuille de travail
answer-sheet = Feuille avec les réponses
another-set = Une autre série
sheet-caution = Ces chiffres servent à enseigner. Ils ne sont un conseil pour aucune route, aucun véhicule ni aucun chargement : les masses, les pentes et les vitesses sont variées, et beaucoup de choses sont laissées de côté.
no-exercises = Aucune descente de cette route n’est assez longue pour des exercices.
stages-left-out = Dans ces conditions du jour, aucun cran du ralentisseur n’est conseillé. Les exercices sur le rapport et le cran sont laissés de côté.
exercise = Exercice { $number } : { $exercise ->
    [control-speed] vitesse stabilisée
    [gear-choice] choix du rapport
    [braking-work] travail de freinage
    [haste] temps gagné en allant plus vite
   *[brake-heat] température des freins
}
given-label = Données
room-label = Votre calcul et votre réponse
steps-label = Étapes du calcul
ask-control-speed = Un véhicule de { $mass } descend une pente de { $grade }, { $gear }, { $stage }, sans accélérer et sans freins de service. Se stabilise-t-il à une vitesse, et à laquelle ?
ask-gear = Le moteur et le ralentisseur seuls doivent retenir un véhicule de { $mass } sur une pente de { $grade }, avec { $reserve } de réserve. Voici des rapports à la plus grande vitesse à laquelle chacun sert à retenir, avec le régime moteur et la force de retenue du cran le plus fort que permet l’adhérence des essieux moteurs. Quel est le rapport le plus haut qui garde la réserve, et à quelle vitesse ?
ask-work = Un véhicule de { $mass } descend de { $drop } sur { $length } de route à une vitesse constante de { $speed }. Quelle énergie le moteur, le ralentisseur et les freins doivent-ils absorber ? Le moteur et le ralentisseur en absorbent { $share } : combien en reste-t-il pour les freins de service ?
ask-time = Une descente est longue de { $length }. Combien de temps gagne un véhicule qui la descend à { $fast } au lieu de { $slow } ? De combien son énergie de mouvement augmente-t-elle ?
ask-heat = Dans une descente de { $length }, à une vitesse constante de { $speed }, les freins de service absorbent { $power } tout du long ; le moteur et les résistances absorbent le reste. À quelle température sont les freins { $axle-place ->
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
} au pied de la descente ?
settles = Il se stabilise à environ { $speed } ({ $engine-speed }) : là, la force de retenue est égale à ce qui reste à retenir.
slows-down = Il ne se stabilise pas : à toutes les vitesses de ce rapport, il est retenu plus que nécessaire et ralentit. Un cran plus faible ou un rapport plus haut peut suffire.
gets-away-above = Il ne se stabilise pas : au-dessous d’environ { $speed }, il est retenu plus que nécessaire ; au-dessus, il s’emballe. Une fois plus rapide, rien ne le rattrape. Il faut un rapport plus bas, engagé avant le sommet ; sinon les freins de service doivent aider.
gets-away = Il ne se stabilise pas : il s’emballe à toutes les vitesses de ce rapport. Il faut un rapport plus bas, engagé avant le sommet, ou un cran plus fort s’il y en a un ; sinon les freins de service doivent aider.
gear-chosen = { $gear }, { $stage }, à { $speed } au plus ({ $engine-speed }), avec { $reserve } de réserve. Le rapport est engagé avant le sommet.
no-gear-keeps = Aucun : même le rapport le plus bas ne garde pas la réserve. Un tel véhicule ne doit pas descendre là : moins de masse ou une autre route.
work-left = Il faut absorber environ { $left } ; il en reste environ { $service } pour les freins de service.
time-saved = Environ { $time }, et l’énergie de mouvement est multipliée par { $times } : les freins ont d’autant plus à absorber à chaque arrêt. La question n’est pas ici de savoir si le moteur et le ralentisseur retiendraient le véhicule à cette vitesse.
warm-at-foot = Environ { $foot } au pied de la descente : { $over ->
    [true] au-dessus de la limite saisie de { $limit }
   *[false] pas au-dessus de la limite saisie de { $limit }, mais sans réserve pour un arrêt
}. Ne sont pas pris en compte : un arrêt, un freinage mal réparti, le réglage des freins, le rayonnement, et le refroidissement qui varie d’un véhicule à l’autre d’un facteur deux ou plus.
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
    [time-constant] Constante de temps : chaleur emmagasinée divisée par chaleur cédée
    [settled] Température qu’ils atteindraient à la longue
    [ahead] Part de cette hausse qui reste à venir au pied de la descente
   *[at-foot] Au pied de la descente
}
gear-at = { $gear } à { $speed }
enough = { $enough ->
    [true] suffisant
   *[false] insuffisant
}

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

not-assessed-on = Non évalué : { $span }. La pente n’y est pas connue.
legs-label = Rapport par rapport
untouched-label = Sans freins de service
one-gear-label = Un seul rapport jusqu’en bas

## Words of the card for the cab.

card-head = Fiche
card-sentence = Pour la cabine, toute la route. Sur un téléphone, enregistrez-la comme image ; sur papier, elle prend autant de pages qu’il faut. Lisez-la avant le sommet, en stationnement.
print-card = Imprimer la fiche
save-picture = L’enregistrer comme image pour le téléphone
picture-name-ending = { $reversed ->
    [true] -sens-inverse-fiche.png
   *[false] -fiche.png
}
save-rows = Enregistrer ses lignes en CSV
marker-label = Borne ou compteur kilométrique au début de la route
counts-down = les bornes vont en décroissant
markers-miss = Les bornes ne couvrent pas toute la route : avec les données saisies, elles iraient de { $start } au début à { $end } à la fin, et il n’y en a pas au-dessous de zéro. Corrigez la borne du début ou le sens de leur décompte. En attendant, la fiche porte des distances depuis le début.
card-orders =
    .label = Ordre des lignes
    .along = dans l’ordre de la route
    .worst = la pire descente d’abord
card-is-old = À ne pas utiliser : cette fiche correspond à des données précédentes
do-not-descend = NE DESCENDEZ PAS avec les données saisies
no-speed-for = Aucune vitesse sûre n’a été trouvée pour { $count ->
    [one] la descente
   *[other] les descentes
} { $numbers }. Prenez une autre route, ou planifiez de nouveau avec moins de chargement ou par un meilleur jour. La signalisation en place et les règles de la conduite professionnelle passent en premier.
facts-of = { $mass } · { $retarder } · chaussée : { $surface } · { $load } · air : { $air } · freins au départ : { $brakes }
card-page = page { $page } sur { $pages }
card-page-has = { $count ->
    [one] descente
   *[other] descentes
} { $numbers }
card-sum = { $length } · { $fall } de descente · { $count ->
    [one] { $count } descente
   *[other] { $count } descentes
}
card-covers = Porte sur { $covered } de { $length }. Inconnu : { $unknown }, { $fall } de dénivelé. Aucun conseil à cet endroit.
card-marker = borne { $at } au départ, { $counts-down ->
    [true] décroissante
   *[false] croissante
}
card-no-marker = depuis le départ
worked-out-for = Calculé pour
your-truck = Est-ce votre camion ?
check-mass = { $mass } au plus
check-gears = { $count } rapports, pont { $ratio }
check-stages = { $count ->
    [one] le cran agit
   *[other] les { $count } crans agissent
}
check-no-retarder = sans ralentisseur
check-surface = chaussée : { $surface }
one-empty = <strong>Une case vide : ce n’est pas votre fiche.</strong> Refaites le calcul.
hardest-of = { $count ->
    [one] La seule descente
   *[other] La plus dure des { $count }
}
hardest-then = puis { $numbers }
card-steepest = le plus raide { $grade }
all-alike = { $count ->
    [one] La descente : { $verdict }.
   *[other] Les { $count } : { $verdict }.
}
card-heads =
    .by = engagé
    .gear = rapport
    .stage = cran
    .hold = tenir
    .know = à savoir : km (miles)
card-by = { $how ->
    [down] au { $unit }
   *[up] dès { $unit }
}
card-change-down = Ralentissez à { $speed }, puis rapport { $gear }.
card-change-up = Rapport { $gear } seulement d’ici. Ou gardez le { $kept }.
card-unknown = { $spans } inconnu : aucun conseil
mile = mi
know-snub = Freinez de { $from } à { $to }, relâchez, recommencez.
know-in-doubt = Courts passages jusqu’à { $grade } non exclus : tenez les freins de service prêts.
know-easing = Au { $at }, la pente s’adoucit, mais la descente continue : gardez le rapport.
know-begins-unknown = On ne sait pas comment la descente commence : la route qui précède n’a pas été évaluée.
know-slow-curves = <strong>{ $count ->
    [one] { $count } virage
   *[other] { $count } virages
} sous { $under }</strong>, le plus lent { $speed }, { $at }
know-slow-curve = Virage le plus lent : { $speed }, au { $at }.
know-posted = Limitation signalée : { $speed }, { $km }, { $miles }.
know-ramp = Voie de détresse au { $at }.
know-quiet = Zone sensible au bruit, au { $at } : le frein moteur peut y être interdit.
know-at-foot = Au pied : { $name }, au { $at }.
to-stop-at-foot = lieu où il faut pouvoir s’arrêter
know-cut-short = <strong>Connue seulement jusqu’au { $at }.</strong> La suite n’est pas connue : restez en rapport { $gear }.
know-cut-short-bare = <strong>Connue seulement jusqu’au { $at }.</strong> La suite n’est pas connue.
know-size = { $length }, { $fall } de descente
know-steepest = <strong>le plus raide { $grade }</strong>, { $at }
know-foot = <strong>pied { $at }</strong>
know-then-unknown = après { $after } : inconnu jusqu’au { $at }
know-then-crest = { $after } jusqu’au sommet { $number }
know-stay = restez en rapport { $gear }
know-then-gear = puis rapport { $gear }
before-crest-head = Avant chaque sommet
stop-at-check = Arrêtez-vous à l’aire de vérification des freins, au { $at } : réglage, fuites, tambours ou disques, pneus, chargement.
stop-where-allowed = Arrêtez-vous là où c’est permis : réglage des freins, fuites, tambours ou disques, pneus, chargement.
try-retarder = Levez un instant le pied de l’accélérateur : le ralentisseur agit-il, à chaque cran ?
look-ahead = Météo, signalisation, fermetures : est-ce toujours la route planifiée ?
gear-before = Avant le { $at } : rapport { $gear } engagé, { $stage }.
gear-at-start = Avant de démarrer : rapport { $gear } engagé, { $stage }. La route commence dans la descente.
shifting = { $in-legs ->
    [true] Dans la descente, ne changez de rapport que comme l’indiquent les lignes.
   *[false] Ne changez pas de rapport dans la descente.
}
in-trouble-head = Si le véhicule s’emballe : dans cet ordre
brake-now = Freinez énergiquement tout de suite et arrêtez-vous, tant que les freins sont assez froids pour y parvenir.
stay-in-gear = Gardez le rapport engagé. Jamais le point mort, jamais l’embrayage, ne rétrogradez pas à vitesse élevée.
any-way-up = Prenez une voie de détresse ou n’importe quelle voie qui monte. Aucune voie de détresse n’est saisie ici ; il peut y en avoir.
take-ramp = Prenez la voie de détresse au { $ramps }, ou n’importe quelle voie qui monte.
warn-others = Feux et avertisseur sonore : prévenez les autres.
no-places-entered = Aucun lieu n’est saisi. Cela ne veut pas dire qu’il n’y en a pas.
card-cautions = Calculé à partir de vos données et d’altitudes enregistrées, qui comportent des erreurs ; ce n’est pas une autorisation de descendre. Le calcul ne voit ni le réglage des freins, ni les pneus, ni l’état de la chaussée, ni la météo, ni la circulation, ni le chargement. La signalisation en place, la loi, votre employeur et le constructeur du véhicule passent en premier. Les freins de service restent le moyen de s’arrêter. En cas de doute : arrêtez-vous au sommet, roulez plus lentement, prenez une autre route.
rows-name-ending = { $reversed ->
    [true] -sens-inverse-descentes.csv
   *[false] -descentes.csv
}

## Words of the page's frame: names, buttons, files, progress, trouble.

to-class = Cours
targets = Taille des boutons et des champs
usual-targets = mains nues
large-targets = gants
purpose = Comment descendre chaque côte d’une route : rapport, cran du ralentisseur, vitesse, chaleur des freins
road-section = Route
descents-section = Descentes
sections = Sections de cette page
skip-to-answer = Aller à la réponse
units = Unités
metric = km/h · m · t
imperial = mph · ft · lb
theme = Clair ou nuit
light = clair
night = nuit
system = auto
choose-file = Choisir un fichier GPX
or-drop = ou en déposer un n’importe où sur la page
drop-here = Déposez le fichier GPX : il n’est lu que sur cet appareil
stays-here = Rien ne quitte cet appareil.
demo-mark = démo inventée
demo-sentence = Cette route est inventée, ce n’est pas un vrai col. Choisissez votre propre fichier GPX, ou déposez-le n’importe où sur la page ; il reste sur cet appareil.
show-demo = Afficher la démo
reverse = Inverser le sens
reversed-mark = en sens inverse
course = Trace du fichier
which-track = { $file } contient { $count } routes. Laquelle allez-vous prendre ?
course-unusable = sans altitudes, ou longueur insuffisante
leave-it = Annuler
which-order = { $count ->
    [one] 1 fichier : ouvrez-le.
    [2] 2 fichiers : que sont-ils ?
   *[other] { $count } fichiers : dans quel ordre sont-ils parcourus ?
}
which-order-sentence = Pour les joindre, mettez-les dans l’ordre du parcours. Ils sont joints de haut en bas. Là où l’un finit à plus de 2 km du début du suivant, l’ordre ou un sens est faux.
join = { $count ->
    [one] Ouvrir ce fichier
   *[other] Joindre { $count } fichiers
}
leg-up = Parcourir { $name } plus tôt
leg-down = Parcourir { $name } plus tard
turn-leg = En sens inverse
leave-leg = Retirer { $name }
same-question = { $count } fichiers coïncident. Montrent-ils la même route ?
same-sentence = Comme une même route, ils n’en font qu’une, avec les altitudes de tous. Là où elles diffèrent de plus que leur erreur possible, la plus raide est utilisée et l’endroit est indiqué. Le plan n’est jamais plus rapide que le plus rapide de chacun pris seul. Rien n’est combiné sans demande.
combine = Même route : combiner { $count } enregistrements
two-alike = { $first } et { $second } coïncident. Pour les combiner en une route, laissez les autres fichiers de côté.
meets = { $new } coïncide avec { $before }. Montrent-ils la même route ?
compare-both = Comparer : les deux côte à côte
join-both = Joindre : l’un après l’autre
combined = Une route de { $count } enregistrements : { $files }
take-apart = Les séparer de nouveau
part-of = Une partie de la route : { $span } selon l’enregistrement.
whole-road = Prendre toute la route
course-choice = { $unnamed ->
    [true] { $number } · { $route ->
        [true] itinéraire
       *[false] trace
    } sans nom · { $length }
   *[false] { $number } · { $name } ({ $route ->
        [true] itinéraire
       *[false] trace
    }) · { $length }
}
phase = { $phase ->
    [reading] Lecture du fichier
    [surveying] Calcul des altitudes et des pentes
   *[planning] Calcul des rapports, des vitesses et de la chaleur des freins
}
starting = Démarrage
cancel = Annuler
close = Fermer
try-again = Réessayer
part-to-come = Cette partie de la page est en cours de chargement.
part-failed = Cette partie de la page n’est pas arrivée. Vérifiez la connexion, puis réessayez.
trouble-head-file = « { $name } » n’est pas utilisable
trouble-head-many-files = Trop de fichiers à la fois
trouble-head-not-a-file = Ce n’était pas un fichier
trouble-head-built-in-missing = La route inventée n’a pas pu être chargée
trouble-head-cannot-start = Le calcul n’a pas pu démarrer
trouble-head-stopped = Le calcul s’est arrêté sur une erreur interne
trouble-head-cancelled = Annulé
trouble-head-truck = Le calcul est impossible avec ce véhicule
trouble-head-truck-file = Ce fichier de véhicule n’est pas utilisable
trouble-head-project-file = Ce projet n’est pas utilisable
trouble-head-cannot-export = Le fichier n’a pas pu être enregistré
trouble-head-no-picture = La fiche n’a pas pu être enregistrée comme image
trouble-many-files = On peut joindre jusqu’à 20 fichiers en une route et en comparer jusqu’à 200. Choisissez-en moins.
trouble-not-a-file = Déposez un fichier GPX, ou choisissez-en un à l’aide du bouton.
trouble-built-in-missing = La page elle-même fonctionne : choisissez un fichier GPX à vous.
trouble-cannot-start = Le navigateur n’a pas chargé la partie qui calcule. Rechargez la page ; si cela ne suffit pas, utilisez un navigateur de ces dernières années, avec WebAssembly et les workers activés.
trouble-stopped = Il a été relancé, et rien de ce que vous avez saisi n’est perdu. Changez la dernière donnée saisie, ou réessayez. Pour un signalement : { $detail }
trouble-cancelled = Les chiffres ci-dessous correspondent encore aux données précédentes. Changez une donnée, ou réessayez, pour recalculer.
trouble-no-picture = Ce navigateur ne la dessine pas. Imprimez plutôt la fiche : l’impression dans un fichier en fait un PDF.
trouble-cannot-export = La partie qui l’écrit n’a pas pu être chargée, ou le navigateur n’a pas permis l’enregistrement. Rechargez la page, ou essayez un autre navigateur.
reload-for-newer = Rechargez la page pour en obtenir une plus récente.
former-stays = La route affichée ci-dessous est la précédente.
not-current = Les chiffres affichés correspondent aux données ou à la route précédentes.
check-entry = Vérifiez cette donnée :
export = Enregistrer en GPX les sommets et les changements de rapport
export-sentence = Des points de passage à chaque sommet, à chaque pied de descente et à chaque changement de rapport ou de cran, pour un appareil qui les affiche.
export-name-ending = -descentes.gpx
no-road = Pas encore de route
no-road-sentence = Choisissez un fichier GPX avec altitudes, ou déposez-le n’importe où sur cette page. Il est lu sur cet appareil et ne va nulle part ailleurs.
between-ramps = , au{" "}

## What a language says of itself.

languages = Autres langues
this-page = Cette page en français
page-title = Steadygrade : comment descendre chaque pente
page-description = Comment descendre chaque pente d’une route avec un véhicule lourd : rapport, cran du ralentisseur, vitesse, chaleur des freins. Calculé sur votre appareil.
needs-script = Cette page calcule la route dans votre navigateur : elle a besoin de JavaScript et de WebAssembly. Rien de ce que vous chargez ne quitte votre appareil.
loading-page = Chargement de la page
opens-then = S’ouvrira dès que la page sera là :
loading-failed = La page n’est pas arrivée entière. Vérifiez la connexion, puis rechargez-la.
loading-stands = Rien n’arrive depuis une demi-minute. Attendez, ou vérifiez la connexion et rechargez la page.
cannot-run = Ce navigateur ne peut pas exécuter la page : WebAssembly manque ou est désactivé. Utilisez un autre navigateur, ou autorisez-le.
load-again = Recharger
not-kept = Cette page n’est pas enregistrée sur cet appareil, et il n’y a pas de réseau. Ouvrez-la une fois avec le réseau : elle restera ensuite enregistrée.

## Words of the plan: verdicts, descents.

heavier-label = 10 % plus lourd
heat-label = Freins
descents-head = { $count ->
    [0] Aucune descente
    [one] 1 descente
   *[other] { $count } descentes
}
order = Ordre de la liste
worst-first = la pire d’abord
road-order = le long de la route
columns =
    .descent = descente
    .from = début
    .length = longueur
    .drop = dénivelé
    .mean = moyenne
    .asks = demande
    .gear = rapport
    .stage = cran
    .hold = à tenir
    .if-stopped = après freinage énergique
descent = Descente { $number }
details-of = Descente { $number } : détails

## Words of one descent's details, and of its table.

sign-label = Comme l’indiquerait un panneau
sign = { $grade } sur { $length }
advice-label = Comment descendre
way-label = Crans au fil de la descente
relief-label = Où la pente s’adoucit
grades-label = Pente
curves-label = Virages
climb-label = La même côte en montée
cut-short = La descente est coupée là où la route ne peut plus être évaluée. On ne sait pas comment elle continue.
table-heads =
    .gear = rapport
    .speeds = vitesses utilisables
    .reserve = réserve à la plus haute vitesse
table-chosen = conseillé

## Words of what follows from a plan: what would change it, how sure it is, what if.

change-label = Pour le retenir
carried-label = Vers la montée suivante
sure-label = Degré de certitude
too-long-to-be-sure = Cette route est trop longue pour que son parcours soit calculé 256 fois : calculez-en une partie pour connaître le degré de certitude de son plan.
studying = Calcul du degré de certitude : { $share }
not-yet = …
change-up = À partir du { $from }, monter : { $gear }
slow-first = À partir du { $from }, ralentir à { $speed } au ralentisseur, puis { $gear }, au plus tard au { $at }
not-worked-out = non calculé
not-worked-out-sentence = Cela n’a pas été calculé : la partie de la page qui poursuit le calcul n’a pas répondu. Cela ne veut pas dire que tout va bien.
study-missing = Non calculé : le degré de certitude, où ralentir, la panne du ralentisseur, les freins mal réglés.
lost-label = Panne du ralentisseur
adjustment-label = Freins mal réglés
slowing-label = Ralentir pour ce qui vient
slowing-sentence = À partir de là, pied levé et plein cran : le ralentisseur seul ramène le véhicule à la vitesse indiquée. Les freins de service restent froids. La signalisation et ce que vous voyez passent en premier.
slowing-heads =
    .place = endroit
    .what = pour quoi
    .speed = vitesse à atteindre
    .where = plein cran à partir de
    .gear = sur le rapport
    .brakes = freins de service seuls
slowing-more = { $count ->
    [one] Et { $count } autre endroit où il faut moins ralentir.
   *[other] Et { $count } autres endroits où il faut moins ralentir.
}
evidence-head = Vérifications
evidence-sentence = Ce à quoi le calcul est confronté : des valeurs extérieures à ce projet, chacune avec sa source et la façon dont nous l’avons obtenue, et le résultat obtenu ici. Les mêmes lignes servent de tests au projet.
evidence-count = { $rows } valeurs ; { $known ->
    [0] aucune ne s’écarte de sa source au-delà de la tolérance
    [one] 1 s’écarte de sa source au-delà de la tolérance, et est marquée comme telle
   *[other] { $known } s’écartent de leur source au-delà de la tolérance, et sont marquées comme telles
}.
evidence-heads =
    .what = objet
    .source = valeur de la source
    .ours = ici
    .difference = écart
evidence-difference = s’écarte
evidence-missing = Les lignes n’ont pas pu être chargées. Ouvrez cette partie encore une fois, ou rechargez la page.
measured-head = Ce qui a tenu aujourd’hui
measured-sentence = Vous avez tenu une vitesse constante dans une descente avec le ralentisseur seul, sans accélérer et sans freins de service ? Saisissez après coup, en stationnement, ce que vous avez relevé : vous saurez ce que votre ralentisseur donne vraiment avec la masse et les conditions du jour saisies plus haut.
measured-fields =
    .gear = Rapport
    .stage = Cran
    .engine-speed = Régime moteur
    .speed = Vitesse constante
    .grade = Pente, en descente
    .place = ou : endroit sur la route affichée
measured-place-hint = Si un endroit est indiqué, ce sont la pente et l’altitude de cet endroit qui sont prises.
measure = Calculer
measured-missing = Saisissez le rapport, le cran, le régime moteur et la vitesse constante, ainsi qu’une pente en descente ou un endroit dans une descente de la route affichée, le tout en nombres.
use-measured = Planifier avec cette valeur
undo-measured = Revenir aux données du véhicule
scale-in-use = Les plans comptent sur { $share } des données du ralentisseur.

## Words of two roads side by side.

two-head = Deux routes
keep-beside = Garder pour comparer
keep-beside-sentence = Pour comparer deux routes, deux véhicules ou deux jours : ce qui est affiché maintenant reste à côté de ce que vous choisirez ensuite.
two-next = Les deux sont encore identiques : choisissez un autre fichier, inversez le sens de la route, ou changez le véhicule ou les conditions du jour.
end-two = Fermer
swap = Échanger les deux
swap-sentence = Lors de l’échange, chaque route garde son véhicule, ses conditions et ses lieux.
two-heads =
    .what = {""}
    .kept = gardé
    .shown = affiché
    .difference = différence
two-row = { $row ->
    [truck] véhicule, conditions du jour
    [worst] pire descente
    [descents] descentes
    [hold] vitesse à tenir la plus basse
    [hottest] freins au plus chaud après un freinage énergique jusqu’à l’arrêt
    [braked] freins de service utilisés en descente, aussi pour virages et lieux
    [service] travail des freins de service
    [holding] travail du ralentisseur et du moteur
    [down] temps dans les descentes
    [up] temps dans les montées de 2 % et plus
    [crawl] vitesse la plus basse en montée
    [time] temps total
    [rise] dénivelé positif
    [fall] dénivelé négatif
    [length] longueur
    [curves] virages où il faut ralentir
    [checks] aires de vérification des freins saisies
    [ramps] voies de détresse saisies
    [parking] stationnements saisis
    [blank] non évalué
    [fuel] carburant, environ
   *[cost] coût aux tarifs saisis
}
no-difference = identique
two-caution = Aucune ligne ne décide à elle seule, et rien de tout cela n’autorise à descendre. Ce qui n’est pas évalué n’entre pas dans ces chiffres. La signalisation, les fermetures de routes et les règles de votre employeur passent en premier.
rate-labels =
    .fuel = Prix du carburant
    .time = Coût du véhicule et du conducteur
rate-units-metric =
    .first = par litre
    .second = par heure
rate-units-imperial =
    .first = par gallon US
    .second = par heure
rank = { $count ->
    [one] Cette route dans une liste
    [2] Comparer les 2 routes
   *[other] Comparer ces { $count } routes
}
ranked-sentence = Chacune dans les deux sens, pour le véhicule et les conditions du jour saisis. Cochez-en deux pour les comparer, ou touchez un nom pour ouvrir cette route.
ranking = calcul en cours
rank-again = Le véhicule ou les conditions du jour ont changé : recalculer les routes
ranked-so-far = Routes calculées : { $done } sur { $count }
ranked-roads = { $count } routes
given-up = abandonné
many-columns =
    .road = route
    .length = longueur
    .way = sens
    .profile = profil
    .hardest = la plus dure
    .grade = pente
    .hold = rapport, cran, vitesse
    .verdict = résultat
    .time = temps
    .fuel = carburant
    .braking = freinage
    .heat = freinage énergique
    .heights = altitudes
    .other = autre sens
driven-label = Sens
driven-ways =
    .harder = le plus dur
    .recorded = comme enregistré
    .reversed = inverse
heights-word = { $class ->
    [good] bonnes
    [fair] moyennes
   *[poor] mauvaises
}
show-verdicts = Afficher
short-no-descent = aucune descente
compare-ticked = { $count ->
    [one] Cochez-en 1 de plus pour comparer
    [2] Comparer les 2
   *[other] Cochez-en 2 pour comparer
}
turn-ranked = Inverser { $name }
tick-ranked = Cocher { $name }
stop-ranking = Arrêter
print-list = Imprimer
save-list = Enregistrer comme tableau
to-many = Les { $count } routes
limit-of-list = limite { $limit }
blank-in-list = Point d’interrogation : altitudes absentes ou fausses, aucun conseil à cet endroit
list-ending = -liste.csv
list-stem = routes
compared-ending = -comparaison.csv
easier-mark = la plus facile. Il n’y a pas de total : c’est à vous de peser.
easier = plus facile
reason = { $name } : { $parts }.
reason-none = { $name } : aucune différence de résultat, de temps, de carburant ni de chaleur.
reason-time = { $more ->
    [true] { $figure } de plus
   *[false] { $figure } de moins
}
reason-heat = { $more ->
    [true] freins { $figure } plus chauds après un freinage énergique
   *[false] freins { $figure } plus froids après un freinage énergique
}
reason-fuel = { $more ->
    [true] { $figure } de carburant en plus
   *[false] { $figure } de carburant en moins
}
reason-hold = la plus lente à { $shown } au lieu de { $kept }
reason-verdict = { $shown }, au lieu de : { $kept }
list-heads =
    .file = fichier
    .crest = sommet
    .limit = limite
    .blank = non évalué
    .truck = véhicule, conditions

## Words of places and posted limits along the road.

places-head = Lieux
places-nav = Lieux
places-sentence = { $count ->
    [0] Rien n’est encore placé sur cette route. Cela ne veut pas dire qu’il n’y a rien : repérez vous-même les aires de vérification des freins, les voies de détresse, les feux et les limitations.
    [one] Un seul élément est placé sur cette route. Il peut y en avoir d’autres.
   *[other] Il peut y en avoir d’autres que ceux-ci.
} Les lieux viennent des points de passage du fichier ; placez-en d’autres là où se trouve le curseur dans l’image, ou d’après leur distance. Ils sont conservés sur cet appareil.
put-here = Marquer un lieu ici
put-at = Marquer un lieu à
put = Ajouter
kind-label = Type
name-label = Nom
at-label =
    .at = Distance
    .from = Début
    .to = Fin
limit-label = Limitation
set-the-limit = La vitesse et la fin sont supposées et comptent déjà. Mettez ce que dit le panneau.
quiet-zone-caution = Ici, un panneau peut interdire le frein moteur (ralentisseur moteur). Le plan compte quand même sur le ralentisseur : là où le panneau l’interdit, roulez plus lentement, sur un rapport plus bas, et gardez les freins de service froids.
take-off = Retirer
not-on-part = hors de la partie affichée
off-road = Ce point n’est pas sur cette route : elle va de { $first } à { $last } { $unit }.
no-stretch = Une limitation doit finir après l’endroit où elle commence.
too-many-things = Il n’y a de place que pour cent lieux et limitations. Retirez-en d’abord.
show-all-places = Afficher les { NUMBER($count) }

## Words of the entries of truck and day.

truck-head = Véhicule
day-head = Conditions du jour
assumed = hypothèse
assumed-sentence = Les valeurs marquées « hypothèse » n’ont pas de source imprimée pour ce véhicule : saisissez les vôtres.
hint = { $entry ->
    [rated-power] Celle de la plaque du moteur ou des papiers ; la traction et le ralentisseur supposé la suivent.
    [governed-speed] Le régulateur y coupe l’injection, et une boîte y monte à peu près d’elle-même un rapport. Les roues peuvent faire tourner le moteur plus vite : voir plus haut.
    [top-gear-speed] Lu au compte-tours sur route plate. Il donne le rapport de pont.
    [gross-mass] Véhicule, remorques et chargement ensemble. Pesez-les si possible.
    [retarder-peak-power] Tous les crans engagés, au régime moteur le plus favorable ; 0 s’il n’y en a pas.
    [highest-engine-speed] Celui que le constructeur autorise, moteur entraîné par les roues.
    [reserve] Force de retenue en plus du nécessaire, gardée pour les erreurs de masse et de pente.
    [headwind] Un vent arrière est négatif et pousse.
    [heat-limit] Température la plus haute des freins, un freinage énergique jusqu’à l’arrêt compris.
    [brakes-at-start] Plus haute si vous venez d’une autre descente.
    [speed-limit] Celle des panneaux, ou la vôtre.
    [rolling-resistance] La valeur basse : avec des pneus qui roulent facilement, le véhicule pousse davantage en descente.
    [rollover-threshold] En g, sur table basculante ; un chargement haut ou mobile fait verser plus tôt. En cas de doute, plus bas.
    [superelevation] Pente des virages vers l’intérieur ; 0 si elle n’est pas connue.
    [retarder-delay] Il ne revient qu’après ce délai, compté de la fermeture de l’embrayage.
    [retarding-scale] 100, sauf si ce qui a tenu aujourd’hui a été mesuré.
    [short-power] Ce qu’il donne pendant le temps court ci-dessous, en partant froid.
    [sustained-power] Ce que le liquide de refroidissement du moteur évacue durablement. Les plans comptent sur cette valeur.
    [sustained-speed] En dessous, le liquide de refroidissement circule plus lentement et évacue moins.
    [hot-share] Couple du ralentisseur chaud divisé par celui du ralentisseur froid. Les plans comptent sur le ralentisseur chaud.
    [lock-up-gear] Sur les rapports plus bas, le convertisseur est ouvert et le moteur ne retient rien.
    [shifts-up-speed] Au-dessus, elle monte un rapport et le ralentisseur lâche ; c’est souvent le régime maximal du moteur.
    [brake-check-stop] Temps de refroidissement à chaque aire de vérification des freins de la route ; avec 0, on passe sans s’arrêter.
    [shaft-torque] Tous les crans engagés, à froid, à la vitesse de rotation de l’arbre ci-dessous.
    [shaft-speed] Vitesse de rotation de l’arbre de transmission à laquelle le couple ci-dessus est mesuré.
    [short-time] Il tient ce temps, en partant froid, avant que le liquide de refroidissement le limite.
    [warm-up-time] Après ce temps de travail, il a perdu les deux tiers de ce qu’il perd au total.
    [lock-up-speed] En dessous, le convertisseur s’ouvre et le moteur ne retient rien.
    [drive-axle-mass] Ce qui repose sur les essieux moteurs : cela décide combien ils peuvent retenir.
    [rolling-radius] Chemin parcouru en un tour de roue chargée, divisé par 2π ; la liste des pneus le remplit.
    [wheel-inertia] De toutes les roues ; elle fait paraître le véhicule plus lourd.
    [drag-area] Coefficient de traînée multiplié par la surface frontale ; plus la valeur est petite, plus le véhicule pousse en descente.
    [displacement] Volume balayé par tous les cylindres : sans injection, le moteur retient en proportion.
    [lowest-engine-speed] En dessous, on ne compte ni sur le moteur ni sur le ralentisseur.
    [axle-ratio] Tours de l’arbre par tour de roue ; inscrit sur la plaque du pont.
    [axle-efficiency] Les pertes aident à retenir : un pont qui en a moins retient moins.
    [retarder-peak-speed] Régime moteur auquel il retient le plus.
    [retarder-exponent] Sa puissance suit le régime moteur élevé à cet exposant : plus il est grand, plus elle chute vite quand le régime baisse.
    [retarder-cut-out] En dessous de ce régime moteur, il se coupe de lui-même.
   *[air-temperature] L’air froid est plus dense ; les freins refroidissent jusqu’à cette température.
}
not-a-number = « { $typed } » n’est pas un nombre.
out-of-range = { $typed } est hors de la plage admise.
enter-from = Saisissez une valeur de { $range }.
gears = Rapports de démultiplication
gears-hint = Le premier rapport d’abord, avec des espaces entre eux.
stages = Crans du ralentisseur
stages-hint = Part du ralentissement complet à chaque cran, en pour cent, le plus faible d’abord, le dernier à 100.
retarder-table = Ralentisseur par vitesse de rotation et par cran
shaft-table-hint = Une ligne par vitesse de rotation : celle de l’arbre, deux-points, puis le couple de chaque cran en N·m, le plus faible d’abord. Hors du tableau, il compte comme coupé.
engine-table-hint = Une ligne par régime : régime moteur, deux-points, puis la puissance de chaque cran en kW, la plus faible d’abord. Hors du tableau, il compte comme coupé.
retarder-label = Ralentisseur
transmission-label = Boîte de vitesses
load-label = Chargement
mass-stays = Cela ne change pas la masse : { $mass } reste la valeur saisie. Saisissez ce que le véhicule pèse maintenant.
gear-set-label = Nombre de rapports
gear-set = { $gears } rapports, { $overdrive ->
    [true] le dernier surmultiplié
   *[false] le dernier en prise directe
}
own-gears = tels que saisis ci-dessous
tyre-label = Pneus des essieux moteurs
own-tyre = rayon de roulement tel que saisi
curves-name = Puissance selon le régime moteur
curves-about = Puissance en { $unit } selon le régime moteur : en trait épais, la traction ; en tirets, la retenue du moteur et du ralentisseur, cran par cran. Ce qu’un ralentisseur sur l’arbre donne durablement est tracé pour la prise directe.
own-trucks = Vos véhicules
truck-name = Nom de ce véhicule
keep-truck = Le garder sous ce nom
rename-truck = Donner ce nom à « { $name } »
take-truck = Planifier avec « { $name } »
remove-truck = Retirer « { $name } »
undo = Annuler la modification
remove = Retirer
no-name = Donnez-lui d’abord un nom.
too-many-trucks = Il n’y a plus de place pour un autre véhicule : retirez-en un d’abord.
save-truck = Enregistrer dans un fichier
open-truck = Ouvrir un fichier de véhicule
truck-file-stem = perso
truck-file-name-ending = -vehicule.json
axle-groups = Essieux freinés
service-brakes-label = Freins de service
lead-label = Façon de descendre
lead-hint = { $lead ->
    [usual] Dans une longue descente, le rapport peut changer à des endroits indiqués, si cela gagne des minutes.
    [one-gear] Un seul rapport du sommet au pied, avec sa vitesse.
   *[untouched] Un rapport sur lequel le ralentisseur retient seul sur toutes les pentes enregistrées, même là où les altitudes sont incertaines.
}
usual-day = Conditions habituelles
kept-here = Les données saisies ne sont conservées que dans ce navigateur.

## Words of the road: its quality, what was repaired, what was not assessed.

grade-holds = { $class ->
    [good] Les altitudes sont bonnes : une pente n’est valable que sur { $base } ou plus.
    [fair] Les altitudes sont moyennes : une pente n’est valable que sur { $base } ou plus ; les ressauts plus courts ne se voient pas.
   *[poor] Les altitudes sont mauvaises : une pente n’est valable que sur { $base } ou plus, et à titre indicatif seulement. Vérifiez-la d’après les panneaux.
}
roughness = Neuf fois sur dix, les pentes de deux tronçons voisins de 100 m diffèrent de { $before } points de pourcentage au plus dans l’enregistrement, de { $after } au plus après lissage.
findings-head = { $count ->
    [one] { $count } élément relevé ou réparé dans le fichier
   *[other] { $count } éléments relevés ou réparés dans le fichier
}
no-findings = Il n’y avait rien à réparer.
unassessed-head = { $count ->
    [one] { $count } tronçon sans conseil : altitudes manquantes ou fausses
   *[other] { $count } tronçons sans conseil : altitudes manquantes ou fausses
}
show-place = Montrer sur la route : { $place }
left-blank = Altitudes manquantes ou fausses sur { $length }. Aucun conseil à cet endroit.
left-blank-lower = Altitudes manquantes ou fausses sur { $length } ({ $lower } de dénivelé). Aucun conseil à cet endroit.

## Words of the form that do not name an entry.

top-gear-speed = { $units ->
    [metric] Régime moteur à 80 km/h sur le rapport le plus haut
   *[imperial] Régime moteur à 50 mph sur le rapport le plus haut
}
is-axle-ratio = Cela donne un rapport de pont de { $ratio }.
no-axle-ratio = Avec ces rapports et ces pneus, le rapport de pont serait de { $ratio } ; les ponts ont de { $range }. Vérifiez le régime, le rapport le plus haut et les pneus.
tyre-hint = Elle est inscrite sur le flanc. Un pneu usé roule un peu plus court.
gear-set-hint = Comptez les rapports de marche avant. « Surmultiplié » : sur le rapport le plus haut, l’arbre tourne plus vite que le moteur.
transmission-hint = Automatisée : sans pédale d’embrayage, mais avec embrayage. À convertisseur : elle démarre sans embrayage.
on-shaft = { $on-shaft ->
    [nothing] aucun
    [hydrodynamic] ralentisseur hydrodynamique
    [electromagnetic] ralentisseur électromagnétique
    [engine-table] mon propre tableau, au moteur
   *[shaft-table] mon propre tableau, à l’arbre
}
on-shaft-hint = Un appareil sur la boîte ou sur l’arbre. Celui à fluide chauffe le liquide de refroidissement ; celui à aimants a un lourd rotor à ailettes.
at-engine-label = Et un ralentisseur moteur ?
at-engine = { $at-engine ->
    [nothing] aucun
    [exhaust-flap] volet d’échappement
   *[compression] à décompression
}
at-engine-hint = Volet d’échappement : un volet dans le tuyau. À décompression : les soupapes d’échappement travaillent, avec bruit. En cas de doute, le volet : il retient moins.
lever-label = Crans du levier, sans « coupé »
lever-hint = Tous les crans comptent pour autant. Les parts se saisissent plus bas.
own-lever = comme saisi plus bas
shape-label = Puissance du ralentisseur moteur selon le régime
shape = { $by-exponent ->
    [true] selon un exposant
   *[false] comme les moteurs la déclarent
}
shape-hint = Comme les moteurs la déclarent, sauf si vous avez vos propres chiffres.
axles-of = { $axle-place ->
    [steer] Essieux directeurs
    [drive] Essieux moteurs et ceux qui les accompagnent
   *[trailer] Essieux de la remorque
}
brakes-of = { $axle-place ->
    [steer] Freins des essieux directeurs
    [drive] Freins des essieux moteurs
   *[trailer] Freins de la remorque
}
brake = { $brake ->
    [drum] tambour
   *[disc] disque
}
without-trailer = sans remorque
axles-hint = Comptez les essieux freinés. Leur part du travail est une hypothèse.
wrong-by = { $by } d’erreur
so-many-gears = { $gears ->
    [one] { $gears } rapport
   *[other] { $gears } rapports
}
so-many-stages = { $stages ->
    [one] { $stages } cran
   *[other] { $stages } crans
}
no-other = ni le rapport ni la vitesse ne changent
other-verdict = { $verdict ->
    [retarder-holds] le ralentisseur tiendrait
    [little-in-reserve] peu de réserve
    [needs-service-brakes] demande les freins de service
   *[no-safe-speed] aucune vitesse sûre
}
worth-waits = Ce que coûte une valeur fausse : indiqué dès qu’un plan est affiché.
worth-at-work = Ce que coûte une valeur fausse : calcul en cours.
worth-no-descent = Ce que coûte une valeur fausse : cette route n’a pas de descente pour l’essayer.
worth-not = Ce que coûte une valeur fausse : le calcul n’a pas pu se faire.

## Les mots du cadre de la page.

view-names =
    .road = Route
    .descents = Descentes
    .two = Deux routes
    .card = Fiche
    .more = Plus
truck-tab = Véhicule
road-button = Route : { $name }. En choisir une autre
truck-button = Véhicule et jour : { $facts }. Changer
road-panel = Route
teaching-roads = Routes d'enseignement
cab-card = Fiche pour la cabine
caution-line = <strong>Une aide à la préparation.</strong> Panneaux et loi d’abord. Elle ne voit pas vos freins.
all-cautions = Toutes les mises en garde
of-count = sur { $number }
hardest = la plus dure
descent-before = La descente précédente
descent-after = La descente suivante
hand-figures =
    .gear = Rapport
    .stage = Cran
    .hold = Tenir
    .from = de
    .long = longueur
    .down = chute
    .grade = pente
    .steepest = maximum
be-in-gear = Rapport engagé <strong>avant le sommet, { $place }</strong>.
be-in-gear-at-start = Rapport engagé <strong>avant de partir</strong>.
stay-to = Gardez-le jusqu’au { $place }.
old-answer = réponse ancienne
all-gears = Tous les rapports
about-descent = Cette descente
way-curve = { $hairpin ->
    [true] virage en épingle
   *[false] virage
}
settings-head = Réglages
change-truck = Changer
show-blank = Les montrer
finding-descents = Recherche des descentes

## Words of the drawer of truck and day.

drawer-head = Votre véhicule, votre jour
which-truck = Quel véhicule ?
how-heavy = Quelle masse ?
which-retarder = Quel ralentisseur ?
what-surface = Quelle chaussée ?
truck-type = { $preset ->
    [five-axle36] Cinq essieux, tambours
    [five-axle40] Cinq essieux, disques
    [five-axle40-both] Cinq essieux, deux ralentisseurs
    [five-axle-empty] Cinq essieux, à vide
    [six-axle44] Six essieux
    [drawbar40] Porteur et remorque
    [rigid18] Deux essieux
    [tipper26] Camion-benne
    [refuse26] Benne à ordures
    [b-double] Train double
    [coach] Autocar
   *[coach-converter] Autocar, convertisseur
}
my-trucks = Mes véhicules
lighter-by = { $by } de moins
heavier-by = { $by } de plus
retarder-answers =
    .engine = frein moteur
    .exhaust = frein sur échappement
    .hydrodynamic = ralentisseur hydrodynamique
    .electric = ralentisseur électrique
    .both = deux ensemble
    .none = aucun ralentisseur
retarder-change = modifier
experts = Pour spécialistes
experts-about = * hypothèse : entrez la vôtre. Chaque donnée dit ce que coûte une valeur fausse dans la descente la plus difficile.
expert-rows =
    .gearbox = Boîte de vitesses
    .engine = Moteur
    .retarder = Puissance du ralentisseur
    .rolling = Pneus, essieux et freins
    .tune = Ajuster
gears-now = { $gears } rapports · pont { $ratio }
axles-now = { $count ->
    [one] { $count } essieu
   *[other] { $count } essieux
}
day-now = air { $air } · freins { $brakes } au départ
trucks-now = garder, ouvrir, transmettre
done = Terminé
example-truck = Véhicule d’exemple. Ce n’est pas le vôtre ?
enter-yours = Entrez le vôtre
enter-brake-heat = Saisissez leur température sous « Conditions du jour ».
this-is-mine = C’est mon véhicule
example-export = Véhicule d’exemple, peut-être pas le vôtre. Ne roulez pas avec ceci : entrez d’abord le vôtre.
