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
### | snub braking, a snub | freinage court |
### | to drag the brakes | freiner en continu |
### | hard stop | freinage énergique jusqu'à l'arrêt; in heads: après freinage énergique |
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

## Words that stand in a file saved for a device.

mark-caution = Calculé à partir des données saisies et d'altitudes enregistrées, qui comportent des erreurs. Ce n'est pas une autorisation de descendre : la signalisation en place, la loi du lieu et les limites du constructeur du véhicule passent en premier.
by-here = { $how ->
    [down] au plus tard ici
   *[up] à partir d’ici
}
crest-number = Sommet { $number }
hold = tenir { $speed }
mark-foot = Pied { $number }
mark-foot-then = Pied { $number }, puis rapport { $gear }

## Times.

less-than-a-minute = moins d’une minute
minutes = { $count } { $count ->
    [one] minute
   *[other] minutes
}
hours-and-minutes = { $hours } h { $count } min

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

by-place = { $how ->
    [down] au plus tard au { $at }
   *[up] à partir du { $at }
}
asks = une pente régulière de { $grade }. La descente demande le plus sur { $length } à partir du { $from }
engage = Engagez ce rapport avant { $at-start ->
    [true] de démarrer
   *[false] le sommet
} et gardez-le jusqu’au pied de la descente, au { $foot }.
engage-first = { $at-start ->
    [true] Engagez le premier de ces rapports avant de démarrer. Rétrogradez avant l’endroit indiqué, ne montez de rapport qu’après.
   *[false] Engagez le premier de ces rapports avant le sommet. Rétrogradez avant l’endroit indiqué, ne montez de rapport qu’après.
}
chosen = { $lowest ->
    [true] Le rapport le plus bas
   *[false] Il
} est choisi comme pour { $asks }.
ruled-out-by = Ce qui l’exclut, c’est { $asks }.
brakes-warmer = freins plus chauds de { $by }
doubted = , incertain : l’erreur des altitudes peut être aussi grande
and-more = et { $count } de plus
brakes-at-places = Les freins de service { $needed ->
    [true] sont nécessaires
   *[false] agissent un peu
} à : { $places }.
in-doubt = Le rapport retient le véhicule en moyenne. De courts passages jusqu’à { $grade } ne sont pas exclus : tenez les freins de service prêts.
between-legs = Entre deux rapports, le véhicule ralentit pour le suivant, ou reprend de la vitesse.
slowest-leg = La partie la plus lente
no-untouched = Aucun rapport ne retient seul le véhicule sur toutes les pentes enregistrées.
deciding = { $count ->
    [one] La descente
   *[other] Descente la plus dure ({ $number } sur { $count })
}
decided = { deciding }, à partir du <strong>{ $crest }</strong> : <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
decided-at-start = { deciding }, à partir du <strong>début de la route</strong> : <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
none-decided = { deciding }, à partir du <strong>{ $crest }</strong> : <strong>aucune vitesse sûre trouvée</strong>. Avec les données saisies, n’engagez pas ce véhicule dans cette descente.
none-decided-at-start = { deciding }, à partir du <strong>début de la route</strong> : <strong>aucune vitesse sûre trouvée</strong>. Avec les données saisies, n’engagez pas ce véhicule dans cette descente.

## Words of the reasons.

why-label = { $held ->
    [true] Pourquoi pas plus vite
   *[false] Pourquoi aucune vitesse n’est sûre
}
untouched-governs = Votre choix parmi les conditions du jour : plus vite, une pente enregistrée demanderait les freins de service.
governed-by = { $governs ->
    [speed-limit] La limitation de vitesse saisie, { $limit }.
    [posted] Une limitation signalée en chemin. Toute la descente la respecte, ou un rapport plus rapide n’y retiendrait pas le véhicule.
    [engine-speed] Le régime moteur maximal autorisé.
    [control] { $off ->
        [true] { $verdict ->
            [retarder-holds] La retenue, avec le moteur seul. Un rapport plus rapide ne garderait pas { $reserve } de réserve, ou un passage raide demanderait trop aux freins de service.
            [little-in-reserve] La retenue, avec le moteur seul. Un rapport plus rapide ne retiendrait plus du tout le véhicule. Même ici, la réserve de { $reserve } n’est pas atteinte.
            [needs-service-brakes] La retenue, avec le moteur seul. Plus vite, il prendrait moins de la moitié de l’effort, quelle que soit la chaleur des freins.
           *[no-safe-speed] La retenue, avec le moteur seul. Plus vite, il prendrait moins de la moitié de l’effort, quelle que soit la chaleur des freins.
        }
       *[false] { $verdict ->
            [retarder-holds] La retenue. Sur un rapport plus rapide, le ralentisseur n’aurait pas { $reserve } de réserve, ou un passage raide demanderait trop aux freins de service.
            [little-in-reserve] La retenue. À aucune vitesse il n’y a { $reserve } de réserve. Plus vite, le ralentisseur retiendrait encore moins.
            [needs-service-brakes] La retenue. Le moteur et le ralentisseur ne retiennent pas seuls le véhicule. Plus vite, ils en prendraient encore moins.
           *[no-safe-speed] La retenue. Le moteur et le ralentisseur ne retiennent pas seuls le véhicule. Plus vite, ils en prendraient encore moins.
        }
    }
    [curve] Les virages. Entre eux, le véhicule ne pourrait pas aller plus vite, ou son rapport serait trop élevé dans le virage le plus lent.
    [grip] L’adhérence des essieux moteurs sur cette chaussée.
   *[heat] La chaleur des freins. Plus vite, un freinage énergique jusqu’à l’arrêt les porterait au-delà de { $heat-limit }.
}
no-speed-because = { $because ->
    [speed-limit] Même la vitesse la plus basse essayée, { $slowest }, dépasse la limitation de vitesse saisie.
    [posted] Même à { $slowest }, la vitesse la plus basse essayée, le rapport ne conviendrait pas à la limitation signalée la plus basse.
    [engine-speed] Même à { $slowest }, la vitesse la plus basse essayée, le moteur tournerait trop vite.
    [control] { $fitted ->
        [true] Même à { $slowest }, la vitesse la plus basse essayée, le ralentisseur ne retient pas le véhicule.
       *[false] Sans ralentisseur, le moteur ne retient pas le véhicule, même à { $slowest }, la vitesse la plus basse essayée.
    }
    [curve] Même à { $slowest }, la vitesse la plus basse essayée, tous les rapports sont trop élevés pour le virage le plus lent.
    [grip] Même à { $slowest }, la vitesse la plus basse essayée, l’adhérence des essieux moteurs ne suffit pas pour retenir le véhicule.
   *[heat] Même à { $slowest }, la vitesse la plus basse essayée, un freinage énergique jusqu’à l’arrêt chaufferait les freins à { $reached }. La limite est de { $limit }.
}
force-falls-short = La descente demande { $asks } aux roues. Le véhicule retient au plus { $holds }, à { $speed }.
else-another-road = Si cela ne peut pas être changé, prenez une autre route.
note-stages-withheld = { $why ->
    [snow] Aucun cran de ralentisseur n’est conseillé sur la neige ou le verglas : les essieux moteurs pourraient perdre l’adhérence. Les consignes se contredisent : certains constructeurs permettent le cran le plus faible. C’est la lecture prudente qui est suivie. Ici, les rapports et les vitesses ne comptent que sur le moteur entraîné par les roues, sans injection. En cas de doute, n’entamez pas la descente : attendez que la route soit traitée.
    [ice] Aucun cran de ralentisseur n’est conseillé sur la neige ou le verglas : les essieux moteurs pourraient perdre l’adhérence. Les consignes se contredisent : certains constructeurs permettent le cran le plus faible. C’est la lecture prudente qui est suivie. Ici, les rapports et les vitesses ne comptent que sur le moteur entraîné par les roues, sans injection. En cas de doute, n’entamez pas la descente : attendez que la route soit traitée.
    [empty-in-the-wet] Aucun cran de ralentisseur n’est conseillé à vide sur chaussée mouillée : les essieux moteurs sont peu chargés et pourraient perdre l’adhérence. Les consignes se contredisent : certaines permettent des crans faibles. C’est la lecture prudente qui est suivie. Ici, les rapports et les vitesses ne comptent que sur le moteur entraîné par les roues, sans injection.
   *[no-trailer-in-the-wet] Aucun cran de ralentisseur n’est conseillé sans remorque ni semi-remorque sur chaussée mouillée : les essieux moteurs sont peu chargés et le tracteur pourrait partir en tête-à-queue. Les consignes se contredisent : certaines permettent des crans faibles. C’est la lecture prudente qui est suivie. Ici, les rapports et les vitesses ne comptent que sur le moteur entraîné par les roues, sans injection.
}
note-wet-cap = Chaussée mouillée : le ralentisseur compte au plus pour la moitié de l’adhérence des essieux moteurs. Si les roues motrices glissent, réduisez d’un cran. Certaines consignes demandent de le couper entièrement.
note-hold-by-hand = Cette boîte de vitesses choisirait elle-même les rapports. Réglez-la pour qu’elle les garde, et engagez le rapport à la main avant chaque sommet.
note-shifts-up-by-itself = Quand le moteur tourne trop vite, cette boîte monte elle-même un rapport. Alors le ralentisseur lâche. Les vitesses indiquées restent en dessous.
note-starts-in-descent = Cette route commence dans la descente. On ne sait pas ce que les freins ont subi avant.
note-partly-unassessed = Sur une partie de la route, les altitudes manquent ou sont fausses. Aucun conseil à cet endroit.
note-poor-heights = Les altitudes de ce fichier sont mauvaises : les pentes sont données à titre indicatif seulement. Vérifiez-les d’après les panneaux.
note-hot-elsewhere = Au { $place }, hors des descentes, un freinage énergique jusqu’à l’arrêt dépasserait la limite des freins. Roulez-y plus lentement.
note-cannot-climb = Même moteur à pleine charge, ce véhicule ne peut pas monter une partie de cette route, quel que soit le rapport.

## Short answers, of five words at most: one line beside a question.

short-same = pareil
short-no-safe-speed = aucune vitesse sûre
short-verdict = { $verdict ->
    [retarder-holds] retenu
    [little-in-reserve] peu de réserve
    [needs-service-brakes] freins de service
   *[no-safe-speed] aucune vitesse sûre
}
short-gear-range = rapports { $from }–{ $to }
short-out-of-range = masse hors plage
short-governed = { $governs ->
    [speed-limit] limite saisie
    [posted] limite signalée
    [engine-speed] régime moteur
    [control] maîtrise de la vitesse
    [curve] virages
    [grip] adhérence
   *[heat] chaleur des freins
}
short-own-choice = votre choix
short-no-speed = { $because ->
    [speed-limit] limite saisie plus basse
    [posted] limite signalée plus basse
    [engine-speed] moteur trop rapide
    [control] trop peu de retenue
    [curve] rapports trop longs en virage
    [grip] trop peu d’adhérence
   *[heat] freins trop chauds
}
short-brakes-hold = les freins le retiennent
short-stop-at-once = arrêtez-vous aussitôt
short-stop-before = arrêt avant { $place }
short-no-stop = aucun arrêt sûr
short-count-of = { $some } sur { $runs }
short-curve-count = { $all-hairpins ->
    [true] { $count ->
        [one] { $count } épingle
       *[other] { $count } épingles
    }
   *[false] { $count ->
        [one] { $count } virage
       *[other] { $count } virages
    }
}, { $speed }
short-none-found = aucun trouvé
short-no-gear = aucun rapport
short-minutes = { $minutes } min
short-cool = freins sous { $at }
short-mass = { $mass } au plus
short-retarding = { $share } de retenue en plus
short-reserve = { $kept } en réserve
short-no-change = rien à votre portée

## What a language says of itself.

colon =  :{ " " }
semicolon =  ;{ " " }
tag = fr
decimal-sign = ,
thousands-sign = { "\u00A0" }
number-to = à
translation-unread = Cette traduction n’a encore été relue par aucun professionnel du transport. En cas de doute, la page en anglais fait foi.

## Words of the plan: verdicts, descents.

verdict = { $verdict ->
    [retarder-holds] le ralentisseur retient le véhicule
    [little-in-reserve] retient le véhicule, peu de réserve
    [needs-service-brakes] freins de service nécessaires
   *[no-safe-speed] aucune vitesse sûre trouvée
}
engine-holds = le moteur seul retient le véhicule
engine-holds-little = le moteur seul retient le véhicule, peu de réserve
holds-on-average = retient le véhicule en moyenne
brakes-touch = retient le véhicule, les freins de service agissent un peu
heat-step = { $step ->
    [cool] froids
    [warm] tièdes
    [hot] chauds
   *[over-limit] au-dessus de la limite
}
stage-number = cran { $number }
retarder-off = ralentisseur coupé
off = coupé
in-legs = rapports { $from } à { $to }, { $stage } sur le plus bas, de { $slow } à { $fast }
gear-number = rapport { $number }
no-descent = { $partly-unassessed ->
    [true] Sur les parties qui ont pu être évaluées, aucune côte ne demande de rapport ni de cran de ralentisseur particulier.
   *[false] Dans ce sens, aucune côte de cette route ne demande de rapport ni de cran de ralentisseur particulier.
}
no-safe-speed = aucune vitesse sûre trouvée
other-mode-label = { $service-brakes ->
    [in-reserve] Freinages courts permis
   *[may-snub] Freins de service pour s’arrêter seulement
}
same-choice = Même rapport, même cran et même vitesse.
choice-apart = { $choice } ; { $time } { $less ->
    [true] de moins
   *[false] de plus
}.
mass-out-of-range = Cette masse est hors de la plage admise.
brakes-at = Environ { $hottest } au plus chaud ; { $after-stop } après un freinage énergique jusqu’à l’arrêt (limite : { $limit }).
snub-between = Freinages courts : freinez de { $from } à { $to } en { $on } s environ, puis relâchez. Recommencez après { $off } s environ là où la descente demande le plus ; environ { $count ->
    [one] { $count } freinage
   *[other] { $count } freinages
} en tout. Ne freinez pas en continu.
parked = Préparez votre trajet en stationnement. N’utilisez pas cette page en conduisant.
cautions =
    .aid = Une aide pour préparer et pour enseigner : ni une consigne, ni la validation d’une route.
    .worked-out = Calculé à partir de vos données et d’altitudes enregistrées, qui comportent des erreurs.
    .unseen = Le calcul ne voit ni le réglage des freins, ni les pneus, ni l’état de la chaussée, ni la météo, ni la circulation, ni les fermetures de routes, ni la position du chargement.
    .first = La signalisation en place, la loi, les règles de votre employeur et les limites du constructeur passent en premier.
    .means = Les freins de service restent le moyen de s’arrêter.
    .doubt = En cas de doute : arrêtez-vous au sommet, roulez plus lentement, ou prenez une autre route.

## Words of one descent's details, and of its table.

no-advice = Aucune vitesse qui respecte les limites n’a été trouvée. Avec les données saisies, n’engagez pas ce véhicule dans cette descente.
falls-short = À plein cran, il manque { $share } de ce que demande la descente : les freins de service doivent aider.
more-than-asked = À plein cran, { $share } de plus que ce que demande la descente.
advice-in-full = Rapport { $gear }, { $off ->
    [true] { $stage }
   *[false] jusqu’au { $stage }
}, { $speed } à { $engine-speed }. { $reserve } { $time } du sommet au pied de la descente.
eases-over = { $span } : plat ou montée sur { $length }. Ne passez pas au rapport supérieur : la descente continue.
mean-grade = { $grade } en moyenne.
steepest-over = { $grade } sur les { $length } les plus raides, à partir du { $from }{ $doubt }.
too-short-for-heights =  ; les altitudes ne sont pas fiables sur une distance aussi courte
curve-count = { $count ->
    [one] { $hairpins ->
        [0] { $count } virage demande une vitesse plus basse que celle-ci
       *[other] { $count } virage en épingle demande une vitesse plus basse que celle-ci
    }
   *[other] { $hairpins ->
        [0] { $count } virages demandent une vitesse plus basse que celle-ci
       *[other] { $count } virages, dont { $hairpins } en épingle, demandent une vitesse plus basse que celle-ci
    }
}
slowest-curve = Le plus lent : { $speed } au plus, au { $at }, virage { $side }, rayon d’environ { $radius }.
curves-estimated = Les rayons sont des estimations d’après la trace ; le dévers, la visibilité et l’état de la chaussée ne sont pas connus.
side = { $left ->
    [true] à gauche
   *[false] à droite
}
climbs-in = Moteur à pleine charge, le véhicule la monte sur le rapport { $gear } à environ { $speed }. Le rapport pour descendre est souvent plus bas.
climbs-in-none = Même moteur à pleine charge, aucun rapport ne permet de la monter.
brakes-arrive = Les freins arrivent au sommet à environ { $heat }.
table-of = Ce que donne chaque rapport avec chaque cran sur une pente de { $grade }, à { $height } d’altitude, sans accélérer et sans freins de service
more-than-needed = plus que nécessaire
overruns = s’emballe
above-speed = au-dessus de { $speed }
not-usable = inutilisable
unusable = { $why ->
    [slippery] trop glissant
    [grip] trop peu d’adhérence
    [cut-out] se coupe de lui-même
   *[unlocked] convertisseur ouvert
}
fall-in-part = { $all } (dont { $blank } non évalués)
no-work-counted = Sur { $length } non évalués, aucun travail de freinage n’est compté.
whole-way = Toute la route : { $time }, { $fall } de dénivelé négatif. Le ralentisseur et le moteur absorbent { $holding }, les freins de service { $service }.
slowest-climb = Vitesse la plus basse en montée : environ { $speed }.
less-than = moins de { $share }
about = environ { $quantity }
share-and-fuel = Les freins de service font { $share } du freinage. Carburant : { $fuel }.
table-legend =
    .speed = une vitesse
    .speed-means = le véhicule s’y stabilise, au régime moteur indiqué en dessous
    .more = plus que nécessaire
    .more-means = le véhicule ralentit : un cran plus faible ou un rapport plus élevé suffirait
    .overruns = s’emballe
    .overruns-means = le véhicule accélère jusqu’à ce que le moteur tourne trop vite : utilisez un rapport plus bas ou les freins de service
    .not-usable = inutilisable
    .not-usable-means = pour la raison indiquée
    .one-gear = sur un même rapport
    .one-gear-means = toute vitesse entre celle où le cran le plus fort stabilise le véhicule et la plus haute du rapport peut être tenue, en changeant de cran

## Words of what follows from a plan: what would change it, how sure it is, what if.

light-enough = À { $mass } ou moins, le ralentisseur retiendrait le véhicule avec la réserve.
no-lighter-load = Un chargement plus léger n’y changerait rien.
more-retarding = Le véhicule serait retenu avec la réserve si son ralentissement était plus fort de { $share }.
reserve-kept = En l’état, on peut garder au plus { $kept } de réserve, et non { $asked }.
cool-enough = Avec des freins à { $at } au plus au sommet, la limite serait respectée : laissez-les d’abord refroidir.
meets-rise = Si la vitesse est ainsi tenue jusqu’au pied de la descente, le véhicule aborde la montée, au { $at }, avec une vitesse d’environ { $speed }. Ne relâchez pas plus tôt pour en avoir davantage.
driven-so = Parcours calculé { $runs } fois, avec des pentes, une masse, des résistances, un vent, un ralentisseur et des freins chacun un peu différents de ce qui est admis.
in-none = 0 fois sur { $runs }
in-all = les { $runs } fois
in-some = { $some } fois sur { $runs }
speed-held = Vitesse tenue par le ralentisseur seul : { $of }.
touches-left-out = Les endroits où les freins de service agissent un peu ne sont pas comptés.
limit-kept = Limite respectée par les freins, un freinage énergique jusqu’à l’arrêt compris : { $of }.
nine-of-ten = Neuf fois sur dix, les freins étaient entre { $cool } et { $hot } après un freinage énergique jusqu’à l’arrêt.
spread-from = Cet écart vient surtout { $inputs }.
input = { $input ->
    [grade] des pentes
    [mass] de la masse
    [rolling] de la résistance au roulement
    [drag] de la résistance de l’air
    [retarder] de ce que donne le ralentisseur
    [wind] du vent
    [brakes-at-start] de la température des freins au départ
   *[cooling] de la chaleur que les freins stockent et cèdent
}
and-then = , puis{" "}
stops-anywhere = Un freinage énergique, commencé dans les deux secondes, arrête le véhicule de n’importe où sans dépasser la température limite.
stops-until = Un freinage énergique, commencé dans les deux secondes, arrête le véhicule sans dépasser la température limite jusqu’au { $until }, pas au-delà.
stops-nowhere = Même au sommet, un freinage énergique jusqu’à l’arrêt dépasserait la température limite.
brakes-hold = Les freins de service pourraient aussi tenir la vitesse du véhicule jusqu’au pied de la descente sans dépasser la limite.
brakes-hold-from = Ce n’est qu’à partir du { $from } que les freins de service pourraient tenir la vitesse jusqu’au pied. Avant, arrêtez-vous.
brakes-hold-nowhere = Les freins de service ne pourraient pas retenir le véhicule jusqu’au pied de la descente : arrêtez-vous.
neither-from = À partir du { $from }, ni l’un ni l’autre ne respecterait la limite.
ramp-met = Voie de détresse au { $at }. En roulant sans frein depuis le { $lost-at }, le véhicule l’aborderait à { $speed } environ. Il faudrait environ { $needs } d’un lit horizontal de gravier rond non tassé.
no-ramp-entered = Aucune voie de détresse n’est saisie sur cette descente. Cela ne veut pas dire qu’il n’y en a pas.
long-stroke = On suppose que les freins à tambour d’un groupe d’essieux ont à froid une course de 1¾ pouce (44 mm). Un cylindre de frein de taille 30 atteint alors sa limite de 2 pouces (51 mm) à { $at }. Au-delà, ils ne comptent pas ici, et les autres sont plus chauds. À 1⅝ pouce (41 mm), c’est { $shorter } ; à 1½ pouce (38 mm), { $short }.
half-braked = Si les freins à disque d’un groupe d’essieux ne freinaient qu’à moitié, les autres seraient plus chauds sur toute la route.
out-of-adjustment = { $axles } : environ { $heat } après un freinage énergique jusqu’à l’arrêt{ $over }.
axles = { $axle-place ->
    [steer] Essieu directeur
    [drive] Essieux moteurs
   *[trailer] Remorque
}
full-stage-from = { $from }, à { $speed }
rest-below =  ; en dessous de { $speed }, les freins de service
brake-early = insuffisant : freinez tôt
standstill = arrêt
by-brakes-alone = { $way }, puis environ { $after }
curve-of = virage, rayon d’environ { $radius }
place-to-stop = lieu où il faut s’arrêter
town = village ou ville
driven-in-short = Parcours calculé { $runs } fois avec de petites erreurs
held-and-kept = chaque fois, le ralentisseur a tenu la vitesse et les freins ont respecté la limite.
shares-held = le ralentisseur seul a tenu la vitesse dans { $held } des cas, les freins ont respecté la limite dans { $kept } des cas.
held-with = À { $engine-speed }, le véhicule a été retenu avec { $power } ; ses données donnent { $assumed }. Cela fait { $share } de ce qu’elles indiquent pour le ralentisseur.
not-measured-no-such-stage = Ce véhicule n’a pas ce rapport ou ce cran.
not-measured-off = Le ralentisseur coupé, rien n’est appris à son sujet : saisissez un cran.
not-measured-not-pushed = Cette pente ne pousse pas ce véhicule à cette vitesse : saisissez un tronçon plus raide.
not-measured-gauges-differ = Sur ce rapport et à cette vitesse, le moteur tournerait à environ { $engine-speed } : le rapport engagé, le rapport de pont, les pneus ou l’un des deux chiffres est faux.
not-measured-out-of-reach = Le ralentisseur devrait donner { $share } de ce qu’indiquent ses données. Il est plus probable que la masse, la pente ou le cran ne soient pas ceux saisis, ou que les freins de service aient aidé.

## Words of places and posted limits along the road.

place-kind = { $kind ->
    [summit] sommet
    [brake-check] aire de vérification des freins
    [escape-ramp] voie de détresse
    [settlement] village ou ville
    [stop] arrêt, feux ou carrefour
    [parking] stationnement ou aire de repos
    [tunnel] tunnel
    [bridge] pont
    [danger] danger
    [chain-up] aire de chaînage
    [quiet-zone] zone sensible au bruit
    [exit] sortie
   *[other] autre lieu
}
posted-limit = limitation signalée

## Words of the entries of truck and day.

preset = { $preset ->
    [five-axle36] { $units ->
        [metric] Ensemble à cinq essieux, 36,3 t
       *[imperial] Ensemble à cinq essieux, 80 000 lb
    }
    [five-axle40] { $units ->
        [metric] Ensemble à cinq essieux, 40 t
       *[imperial] Ensemble à cinq essieux, 88 200 lb
    }
    [five-axle40-both] { $units ->
        [metric] Ensemble à cinq essieux, 40 t, hydrodynamique et frein moteur
       *[imperial] Ensemble à cinq essieux, 88 200 lb, hydrodynamique et frein moteur
    }
    [five-axle-empty] { $units ->
        [metric] Ensemble à cinq essieux, à vide, 14,5 t
       *[imperial] Ensemble à cinq essieux, à vide, 32 000 lb
    }
    [six-axle44] { $units ->
        [metric] Ensemble à six essieux, 44 t
       *[imperial] Ensemble à six essieux, 97 000 lb
    }
    [drawbar40] { $units ->
        [metric] Porteur avec remorque, 40 t
       *[imperial] Porteur avec remorque, 88 200 lb
    }
    [refuse26] { $units ->
        [metric] Benne à ordures, boîte automatique, 26 t
       *[imperial] Benne à ordures, boîte automatique, 57 300 lb
    }
    [rigid18] { $units ->
        [metric] Porteur à deux essieux, 18 t
       *[imperial] Porteur à deux essieux, 39 700 lb
    }
    [tipper26] { $units ->
        [metric] Camion-benne à trois essieux, 26 t
       *[imperial] Camion-benne à trois essieux, 57 300 lb
    }
    [b-double] { $units ->
        [metric] Train double à neuf essieux, 62,5 t
       *[imperial] Train double à neuf essieux, 137 800 lb
    }
    [coach] { $units ->
        [metric] Autocar interurbain, 19 t
       *[imperial] Autocar interurbain, 41 900 lb
    }
   *[coach-converter] { $units ->
        [metric] Autocar interurbain à convertisseur, 19 t
       *[imperial] Autocar interurbain à convertisseur, 41 900 lb
    }
}
retarder = { $kind ->
    [none] aucun ralentisseur
    [compression-release] frein moteur
    [exhaust-valve] frein sur échappement
    [hydrodynamic] ralentisseur hydrodynamique
    [electromagnetic] ralentisseur électrique
    [compression-and-hydrodynamic] frein moteur et ralentisseur hydrodynamique
    [exhaust-and-hydrodynamic] frein sur échappement et ralentisseur hydrodynamique
    [compression-and-electromagnetic] frein moteur et ralentisseur électrique
    [exhaust-and-electromagnetic] frein sur échappement et ralentisseur électrique
    [engine-power-table] mon propre tableau, au moteur
   *[shaft-torque-table] mon propre tableau, à l’arbre
}
transmission = { $transmission ->
    [manual] manuelle
    [automated] automatisée
   *[torque-converter] à convertisseur
}
load = { $load ->
    [laden] chargé
    [empty] à vide
   *[no-trailer] sans remorque
}
axle-group = { $axles } { $axle-place ->
    [steer] { $axles ->
        [one] essieu directeur
       *[other] essieux directeurs
    }
    [drive] { $axles ->
        [one] essieu moteur
       *[other] essieux moteurs
    }
   *[trailer] { $axles ->
        [one] essieu de remorque
       *[other] essieux de remorque
    }
}, { $brake ->
    [drum] freins à tambour
   *[disc] freins à disque
}, { $share } % du freinage
surface = { $surface ->
    [dry] sèche
    [wet] mouillée
    [snow] neige
   *[ice] verglas
}
service-brakes = { $service-brakes ->
    [in-reserve] seulement pour s’arrêter
   *[may-snub] freinages courts permis
}
lead = { $lead ->
    [usual] la plus rapide
    [one-gear] un seul rapport
   *[untouched] sans les freins
}
truck-entry = { $name } : saisissez une valeur de { $range }.
entry = { $entry ->
    [rated-power] Puissance nominale du moteur
    [governed-speed] Régime de coupure du moteur
    [top-gear-speed] Régime moteur sur le rapport le plus haut
    [gross-mass] Masse totale réelle
    [drive-axle-mass] Masse sur les essieux moteurs
    [rolling-radius] Rayon de roulement
    [wheel-inertia] Inertie des roues
    [rolling-resistance] Résistance au roulement
    [drag-area] Surface de traînée
    [displacement] Cylindrée du moteur
    [lowest-engine-speed] Régime moteur utile le plus bas
    [highest-engine-speed] Régime moteur maximal autorisé
    [axle-ratio] Rapport de pont
    [axle-efficiency] Rendement du pont
    [retarder-peak-power] Puissance de ralentissement
    [retarder-peak-speed] Régime moteur de la pleine puissance de ralentissement
    [retarder-exponent] Hausse de la puissance de ralentissement avec le régime moteur
    [retarder-cut-out] Régime moteur de coupure du ralentisseur
    [rollover-threshold] Seuil de renversement
    [air-temperature] Température de l’air
    [brakes-at-start] Température des freins au départ
    [headwind] Vent de face
    [speed-limit] Limitation de vitesse
    [reserve] Réserve de force de retenue
    [heat-limit] Température maximale des freins
    [superelevation] Dévers des virages
    [retarder-delay] Délai du ralentisseur après un changement de rapport
    [retarding-scale] Ralentissement mesuré par rapport à l’hypothèse
    [shaft-torque] Couple du ralentisseur à l’arbre de transmission
    [shaft-speed] Vitesse de rotation de l’arbre pour ce couple
    [short-power] Puissance de courte durée du ralentisseur
    [short-time] Temps de la puissance de courte durée
    [sustained-power] Puissance permanente du ralentisseur
    [sustained-speed] Régime moteur de la puissance permanente
    [hot-share] Couple à chaud par rapport au couple à froid
    [warm-up-time] Temps d’échauffement du ralentisseur
    [lock-up-gear] Rapport le plus bas avec verrouillage
    [lock-up-speed] Régime moteur où le verrouillage s’ouvre
    [brake-check-stop] Temps à chaque aire de vérification des freins
   *[shifts-up-speed] Régime auquel la boîte monte elle-même un rapport
}

## Words of the road: its quality, what was repaired, what was not assessed.

both-ends = parcourue de l’extrémité à { $start } d’altitude jusqu’à l’extrémité à { $end } d’altitude
climbs-between = Cette route monte de { $start } à { $end } dans le sens affiché. Vous la descendez ?
onward-from = à partir du { $place }

## Why a truck or a truck file is not taken, but for entries out of their ranges.

truck-drive-axle-mass = La masse sur les essieux moteurs dépasse la masse totale réelle ; saisissez-en une plus petite.
truck-engine-speeds = Le régime moteur utile le plus bas doit être inférieur au régime moteur maximal autorisé.
truck-gears = Il faut de 1 à { $most } rapports de démultiplication, de { $low } à { $high }, chacun plus petit que le précédent.
truck-full-load = La courbe de pleine charge demande de 2 à { $most } points par régime moteur croissant ({ $low } à { $high }/min), avec un couple de 0 à { $torque } N·m.
truck-stages = Pour les crans du ralentisseur, il faut de 1 à { $most } parts supérieures à 0, croissantes, la dernière égale à 1 (100 %).
truck-table = Le tableau du ralentisseur demande de 2 à { $rows } lignes par vitesse de rotation croissante ({ $low } à { $high }/min), toutes avec le même nombre de valeurs (1 à { $most }), aucune plus petite que la précédente dans sa ligne.
truck-axle-groups = Il faut de 1 à { $most } groupes de 1 à { $axles } essieux, dont les parts du freinage font 1 au total.
truck-file-broken = Erreur à la ligne { $line } (message en anglais : { $what }). Corrigez-la à cet endroit, ou enregistrez le fichier encore une fois.
truck-file-cut-off = Il manque une partie de ce fichier. Copiez-le encore une fois, ou redemandez-le.
truck-file-newer = Ce fichier a la version { $found } ; ici, les versions jusqu’à { $newest } sont lues.

## Why a file gives no road, and what to do.

-ask-gpx = Exportez la trace en GPX et choisissez ce fichier.
-ask-heights = Enregistrez la route avec un appareil qui mémorise les altitudes, ou ajoutez les altitudes à la trace avec un planificateur d’itinéraires, puis exportez-la de nouveau.
file-empty = Le fichier est vide. { -ask-gpx }
file-foreign = { $foreign ->
    [html] C’est une page web, pas un fichier GPX. Connectez-vous là où la trace est conservée et téléchargez la trace elle-même en GPX.
    [kml] C’est un fichier KML, qui contient rarement des altitudes utilisables. { -ask-gpx }
    [gzip] C’est une archive gzip. Décompressez-la et choisissez le fichier GPX qu’elle contient.
    [zip] C’est une archive zip. Décompressez-la et choisissez le fichier GPX qu’elle contient.
    [fit] C’est un enregistrement binaire FIT, pas un fichier GPX. { -ask-gpx }
    [json] C’est un fichier JSON, pas un fichier GPX. { -ask-gpx }
    [pdf] C’est un document PDF, pas un fichier GPX. { -ask-gpx }
    [picture] C’est une image, pas un fichier GPX. { -ask-gpx }
    [other-xml] C’est un fichier XML d’un autre genre : son élément racine est « { $name } », et non « gpx ». { -ask-gpx }
   *[unknown] Ce n’est pas un fichier GPX. { -ask-gpx }
}
file-nothing-inside = Aucune trace ni aucun itinéraire n’ont pu être lus dans le fichier GPX. Si le fichier a été coupé lors de la copie, copiez-le à nouveau ; sinon, exportez la trace elle-même, pas seulement son résumé.
file-waypoints-only = Le fichier ne contient que des points de passage ({ $count }) : des lieux, mais pas de route entre eux. Exportez la trace ou l’itinéraire.
file-heights-unreadable = Aucun point ({ $points } en tout) n’a d’altitude en simples mètres. Altitudes illisibles, ou dans une unité qui n’est pas devinée : { $unreadable }. Exportez les altitudes en mètres, comme simples nombres.
file-heights-constant = Toutes les altitudes du fichier sont le même nombre : il ne connaît donc pas les côtes ({ $points } points). { -ask-heights }
file-no-heights = Aucun point ({ $points } en tout) n’a d’altitude : la route ne peut donc pas être évaluée. { -ask-heights }
file-too-coarse = Les points sont trop éloignés les uns des autres : environ { $found } m, alors qu’il faut { $most } m au plus pour voir les pentes. Exportez une trace avec tous ses points, et non un itinéraire réduit à quelques bifurcations.
file-bad-points = Sur { $points } points, { $bad } { $bad ->
    [one] n’a pas
   *[other] n’ont pas
} de latitude et de longitude utilisables, le premier à la ligne { $line }. { $swapped ->
    [true] La latitude et la longitude semblent interverties ; corrigez cela là où le fichier est créé et exportez-le de nouveau.
   *[false] Exportez de nouveau la trace.
}
file-too-short = La route ne fait que { $found } m ; il en faut au moins { $least }. Choisissez une trace plus longue.
file-nothing-left = Les altitudes ne sont fiables sur aucun des { $length } km : aucune pente ne peut donc être indiquée. { -ask-heights }
file-too-many-bytes = Le fichier fait { $found } Mo ; { $most } Mo au plus peuvent être lus. Exportez une partie plus courte de la trace, ou moins de points.
file-too-many-points = Le fichier a plus de { $most } millions de points. Exportez une partie plus courte de la trace, ou moins de points.
file-too-many-courses = Le fichier contient plus de { $most } traces, ou morceaux de trace éloignés les uns des autres. Exportez seulement la route voulue.
file-too-long = La route fait { $found } km ; { $most } km au plus peuvent être calculés. Exportez-en une partie plus courte.
file-refused = Le fichier est refusé à la ligne { $line } : { $refusal ->
    [entities] il déclare ses propres entités
    [nesting] des éléments y sont imbriqués sur plus de { $most } niveaux
   *[long-tag] une balise y dépasse { $most } ko
}, ce dont aucune trace n’a besoin. Exportez de nouveau la trace là où elle a été créée.
file-bad-heights = L’altitude numéro { $number } n’est pas utilisable : il faut au moins deux altitudes finies, avec un pas supérieur à 0 m et de 50 m au plus.
file-no-such-course = La trace numéro { $number } a été demandée, mais le fichier n’en a que { $count }. Choisissez-en une.
file-legs-apart = Le fichier { $number } commence à { $gap } km de la fin du fichier { $previous } : aucune route ne mène donc de l’un à l’autre. Changez l’ordre, ou inversez le sens de l’un d’eux.
file-not-one-road = L’enregistrement { $number } ne montre pas la même route. Trop peu de son tracé coïncide avec les précédents, ses altitudes diffèrent trop, ou c’est une copie. Comparez les fichiers, ou joignez-les.
file-cancelled = Interrompu à votre demande ; choisissez un fichier pour recommencer.

## Findings: what was noticed or repaired in a file. Places along the road stand beside them.

found-encoding = Le fichier annonce un texte en { $declared }, mais il a été lu en { $read-as }.
found-no-encoding = Le fichier n’indique pas son codage ; il a été lu en { $read-as }.
found-junk-before = { $count ->
    [one] { $count } octet ignoré
   *[other] { $count } octets ignorés
} avant le début du fichier.
found-cut-off = Le fichier s’interrompt à la ligne { $line } ; tout ce qui précède est utilisé.
found-undeclared-prefix = Le préfixe « { $prefix } » est utilisé sans être déclaré, d’abord à la ligne { $line } ; lu quand même.
found-bad-reference = { $count ->
    [one] { $count } texte avec un « & » isolé, d’abord à la ligne { $line } ; laissé tel quel
   *[other] { $count } textes avec un « & » isolé, d’abord à la ligne { $line } ; laissés tels quels
}.
found-tags-repaired = { $count ->
    [one] { $count } balise mal placée, d’abord à la ligne { $line } ; lue
   *[other] { $count } balises mal placées, d’abord à la ligne { $line } ; lues
} selon le sens voulu.
found-document-type = Un type de document à la ligne { $line } est ignoré ; rien n’a été téléchargé.
found-decimal-comma = { $count ->
    [one] { $count } nombre
   *[other] { $count } nombres
} avec une virgule, d’abord à la ligne { $line } ; la virgule est lue comme signe décimal.
found-padding = { $count ->
    [one] { $count } nombre entouré
   *[other] { $count } nombres entourés
} d’espaces, d’abord à la ligne { $line } ; il n’en est pas tenu compte.
found-metres-written = { $count ->
    [one] { $count } altitude écrite avec « m », d’abord à la ligne { $line } ; lue
   *[other] { $count } altitudes écrites avec « m », d’abord à la ligne { $line } ; lues
} en mètres.
found-foreign-unit = { $count ->
    [one] { $count } altitude dans une autre unité que le mètre, d’abord à la ligne { $line } ; considérée comme manquante
   *[other] { $count } altitudes dans une autre unité que le mètre, d’abord à la ligne { $line } ; considérées comme manquantes
}, car une unité n’est jamais devinée.
found-height-unreadable = { $count ->
    [one] { $count } altitude inutilisable comme nombre de mètres, d’abord à la ligne { $line } ; considérée comme manquante
   *[other] { $count } altitudes inutilisables comme nombre de mètres, d’abord à la ligne { $line } ; considérées comme manquantes
}.
found-points-dropped = { $count ->
    [one] { $count } point sans latitude et longitude utilisables, d’abord à la ligne { $line } ; écarté
   *[other] { $count } points sans latitude et longitude utilisables, d’abord à la ligne { $line } ; écartés
}.
found-waypoints-left-out = { $count ->
    [one] { $count } point de passage écarté
   *[other] { $count } points de passage écartés
} ; les { $kept } premiers sont gardés.
found-route-shape = { $count ->
    [one] { $count } point entre les bifurcations de l’itinéraire utilisé
   *[other] { $count } points entre les bifurcations de l’itinéraire utilisés
} pour sa forme.
found-segments-joined = { $count } segments de la trace joints ; le plus grand vide est de { $widest } m.
found-stops-merged = { $count ->
    [one] { $count } point au même endroit que le précédent ; fusionné
   *[other] { $count } points au même endroit que le précédent ; fusionnés
}.
found-jumps = { $count ->
    [one] { $count } point très à l’écart de la trace ; écarté
   *[other] { $count } points très à l’écart de la trace ; écartés
}.
found-zero-heights = { $count ->
    [one] { $count } altitude nulle ou sans aucune variation ; considérée comme manquante
   *[other] { $count } altitudes nulles ou sans aucune variation ; considérées comme manquantes
}.
found-spikes = { $count ->
    [one] { $count } altitude aberrante, avec un écart allant jusqu’à { $largest } m ; considérée comme manquante
   *[other] { $count } altitudes aberrantes, avec un écart allant jusqu’à { $largest } m ; considérées comme manquantes
}.
found-heights-filled = Altitudes manquantes complétées par des lignes droites à { $count ->
    [one] { $count } endroit
   *[other] { $count } endroits
}, la plus longue sur { $longest } m.
unassessed-because = { $unassessed ->
    [gap] le fichier n’y a pas de points
    [no-heights] le fichier n’y a pas d’altitudes
    [step] les altitudes y font un saut et ne reviennent pas
   *[sliver] le tronçon entre deux autres non évalués est trop court
}.
found-not-assessed = Ni valeur de pente ni conseil sur ce tronçon : { unassessed-because }
found-tunnel = Les altitudes montent de { $rise } m puis redescendent, comme au-dessus d’un tunnel ; une ligne droite est utilisée.
found-viaduct = Les altitudes descendent de { $drop } m puis remontent, comme sous un pont ; une ligne droite est utilisée.
found-very-steep = Plus raide que la plupart des routes pour poids lourds à { $count ->
    [one] { $count } endroit
   *[other] { $count } endroits
}, jusqu’à { $grade } % sur 200 m ; vérifiez d’après les panneaux.
found-combined = { $count } enregistrements de cette route combinés en un seul ; deux au moins en connaissent { $common } km.
found-disagree = Les deux enregistrements diffèrent jusqu’à { $apart } m d’altitude sur { $length } m ; le plus raide est utilisé.
found-rough = { $from-terrain ->
    [true] Les altitudes semblent venir d’un modèle de terrain, et non de la route
   *[false] Les altitudes sont irrégulières
} (écart de { $points } points de pourcentage entre tronçons voisins de 100 m) ; une pente n’est valable que sur { $base } m ou plus{ $poor ->
    [true] , et à titre indicatif seulement
   *[false] { "" }
}.
