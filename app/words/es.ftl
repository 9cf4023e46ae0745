### Spanish (not yet read by a practitioner).
###
### Terms, so that later sentences keep to them. The reader is addressed as “usted”. Of two current
### words the one that is understood in most countries stands here. “Retener” is what engine and
### retarder do to the vehicle, “mantener” what the driver does to a speed, “parar” the vehicle's
### standstill; what is switched off is “desconectado”.
###
### | English | Spanish |
### |---|---|
### | road, part of it, stretch | carretera, parte, tramo |
### | track, route (of the file), waypoint | recorrido, ruta, punto de referencia |
### | descent | bajada |
### | grade, downgrade | pendiente |
### | steepest stretch | tramo más empinado |
### | what the hill asks for | lo que exige la bajada |
### | way down; the service brakes touch | forma de bajar; los frenos de servicio actúan un poco |
### | climb, rise | subida |
### | crest, summit | cima, cumbre |
### | foot of the hill | pie de la bajada |
### | easing | tramo en que se suaviza |
### | hairpin; teaching road | curva de herradura; carretera para la enseñanza |
### | heights | altitudes |
### | at a place along the road | en el km 13,5 |
### | truck (coaches too) | camión; in verdicts and reasons: vehículo |
### | combination, rigid, tipper | conjunto, camión rígido, volquete |
### | no trailer, bobtail | sin remolque; in sentences: sin remolque ni semirremolque |
### | load; loaded, empty | carga; cargado, vacío |
### | day (its entries), entries | condiciones, datos |
### | gear; lower, higher | marcha; más baja, más alta |
### | retarder (of any kind) | ralentizador |
### | engine brake; compression release | freno motor; freno motor por descompresión |
### | exhaust brake | freno de escape |
### | stage, full stage, off | posición, posición máxima, ralentizador desconectado |
### | service brakes | frenos de servicio |
### | in reserve | en reserva |
### | to snub, snub braking | frenada corta |
### | to drag the brakes | bajar pisando el freno de forma continua |
### | hard stop | frenada fuerte hasta parar; in heads: tras frenada fuerte |
### | brake heat: cool, warm, hot, over the limit | fríos, templados, calientes, por encima del límite |
### | brake check (a place) | zona de comprobación de frenos |
### | escape ramp | rampa de escape |
### | chain-up area, quiet zone | zona para poner cadenas, zona de silencio |
### | posted signs, posted limit | señales, límite señalizado |
### | to hold a truck, holding force | retener el vehículo, fuerza de retención |
### | verdicts | el ralentizador lo retiene; lo retiene, con poca reserva; necesita los frenos de servicio; no se encontró velocidad segura |
### | to hold a speed, hold speed | mantener, velocidad a mantener |
### | control (of the speed), control speed | control de la velocidad, velocidad de control |
### | overrun, unfuelled engine | motor arrastrado por las ruedas, motor sin inyección |
### | overruns, settles at (in the table) | se embala, se estabiliza a |
### | engine speed, shaft speed | revoluciones del motor, revoluciones del árbol |
### | propeller shaft | árbol de transmisión (cardán) |
### | torque | par |
### | gear ratio, axle ratio | relación de marcha, relación del eje |
### | driven axles, steer axle | ejes motrices, eje direccional |
### | rolling radius | radio de rodadura |
### | gross mass | masa total real |
### | grip, to break away | adherencia, perder la adherencia |
### | superelevation | peralte |
### | rollover threshold | umbral de vuelco |
### | converter, lock-up | convertidor, bloqueo |
### | brake adjustment | ajuste de los frenos |
### | advised, advisory only | aconsejado, solo orientativo |
### | assessed, not assessed | evaluado, sin evaluar |
### | card for the cab, marker | ficha para la cabina, hito |
### | what held today | lo que retuvo hoy |

## Words that stand in a file saved for a device.

mark-caution = Calculado con datos introducidos y altitudes grabadas, que contienen errores. No es un permiso para bajar: tienen prioridad las señales, la ley local y los límites del fabricante del vehículo.
by-here = { $how ->
    [down] a más tardar aquí
   *[up] desde aquí
}
crest-number = Cima { $number }
hold = mantenga { $speed }
mark-foot = Pie de la bajada { $number }
mark-foot-then = Pie de la bajada { $number }, después marcha { $gear }

## Times.

less-than-a-minute = menos de un minuto
minutes = { $count } { $count ->
    [one] minuto
   *[other] minutos
}
hours-and-minutes = { $hours } h { $count } min

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

by-place = { $how ->
    [down] a más tardar en el { $at }
   *[up] desde el { $at }
}
asks = una pendiente constante de { $grade }. La bajada exige más a lo largo de { $length } desde el { $from }
engage = Ponga la marcha antes de { $at-start ->
    [true] arrancar
   *[false] la cima
} y consérvela hasta el pie de la bajada, en el { $foot }.
engage-first = { $at-start ->
    [true] Ponga la primera de estas marchas antes de arrancar. Baje de marcha antes del lugar indicado; suba de marcha solo después.
   *[false] Ponga la primera de estas marchas antes de la cima. Baje de marcha antes del lugar indicado; suba de marcha solo después.
}
chosen = { $lowest ->
    [true] La marcha más baja se
   *[false] Se
} ha elegido como para { $asks }.
ruled-out-by = Lo que impide esta bajada es { $asks }.
brakes-warmer = frenos { $by } más calientes
doubted = , en duda: el error de las altitudes puede ser igual de grande
and-more = y { $count } más
brakes-at-places = { $needed ->
    [true] Los frenos de servicio son necesarios
   *[false] Los frenos de servicio actúan un poco
} en: { $places }.
in-doubt = La marcha retiene el vehículo en promedio. No se pueden descartar tramos cortos de hasta { $grade }: tenga listos los frenos de servicio.
between-legs = Entre una y otra, el vehículo reduce la velocidad para la marcha siguiente o la aumenta.
slowest-leg = La parte más lenta
no-untouched = Ninguna marcha retiene sola el vehículo en todas las pendientes grabadas.
deciding = { $count ->
    [one] La bajada
   *[other] Bajada más difícil ({ $number } de { $count })
}
decided = { deciding }, desde el <strong>{ $crest }</strong>: <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
decided-at-start = { deciding }, desde el <strong>inicio de la carretera</strong>: <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
none-decided = { deciding }, desde el <strong>{ $crest }</strong>: <strong>no se encontró ninguna velocidad segura</strong>. Con los datos introducidos, no baje por ella con este camión.
none-decided-at-start = { deciding }, desde el <strong>inicio de la carretera</strong>: <strong>no se encontró ninguna velocidad segura</strong>. Con los datos introducidos, no baje por ella con este camión.

## Words of the reasons.

why-label = { $held ->
    [true] Por qué no más rápido
   *[false] Por qué ninguna velocidad es segura
}
untouched-governs = Su elección en «Condiciones». Más rápido, alguna pendiente grabada exigiría los frenos de servicio.
governed-by = { $governs ->
    [speed-limit] El límite de velocidad introducido, { $limit }.
    [posted] Un límite señalizado en el camino. Toda la bajada lo respeta, o una marcha más rápida no retendría allí.
    [engine-speed] Las revoluciones máximas permitidas del motor.
    [control] { $off ->
        [true] { $verdict ->
            [retarder-holds] El control de la velocidad, con el motor solo. Una marcha más rápida no conservaría { $reserve } en reserva, o un tramo empinado exigiría demasiado de los frenos de servicio.
            [little-in-reserve] El control de la velocidad, con el motor solo. Una marcha más rápida no retendría el vehículo en absoluto. Ni siquiera aquí hay { $reserve } en reserva.
            [needs-service-brakes] El control de la velocidad, con el motor solo. Más rápido, haría menos de la mitad de la retención, sea cual sea el calor de los frenos.
           *[no-safe-speed] El control de la velocidad, con el motor solo. Más rápido, haría menos de la mitad de la retención, sea cual sea el calor de los frenos.
        }
       *[false] { $verdict ->
            [retarder-holds] El control de la velocidad. En una marcha más rápida al ralentizador le faltaría la reserva de { $reserve }, o un tramo empinado exigiría demasiado de los frenos de servicio.
            [little-in-reserve] El control de la velocidad. A ninguna velocidad hay { $reserve } en reserva. Más rápido, el ralentizador retendría aún menos.
            [needs-service-brakes] El control de la velocidad. El motor y el ralentizador no retienen solos el vehículo. Más rápido, harían aún menos.
           *[no-safe-speed] El control de la velocidad. El motor y el ralentizador no retienen solos el vehículo. Más rápido, harían aún menos.
        }
    }
    [curve] Las curvas. Entre ellas el vehículo no podría ir más rápido, o la marcha sería demasiado alta en la curva más lenta.
    [grip] La adherencia de los ejes motrices en esta calzada.
   *[heat] El calor de los frenos. Más rápido, una frenada fuerte hasta parar los llevaría a más de { $heat-limit }.
}
no-speed-because = { $because ->
    [speed-limit] Incluso la velocidad más baja probada, { $slowest }, supera el límite de velocidad introducido.
    [posted] Incluso a { $slowest }, la velocidad más baja probada, la marcha no serviría para el límite señalizado más bajo.
    [engine-speed] Incluso a { $slowest }, la velocidad más baja probada, el motor giraría demasiado rápido.
    [control] { $fitted ->
        [true] Incluso a { $slowest }, la velocidad más baja probada, el ralentizador no retiene el vehículo.
       *[false] Sin ralentizador, el motor no retiene el vehículo, ni siquiera a { $slowest }, la velocidad más baja probada.
    }
    [curve] Incluso a { $slowest }, la velocidad más baja probada, todas las marchas son demasiado altas para la curva más lenta.
    [grip] Incluso a { $slowest }, la velocidad más baja probada, a los ejes motrices les falta adherencia para retener el vehículo.
   *[heat] Incluso a { $slowest }, la velocidad más baja probada, una frenada fuerte hasta parar calentaría los frenos a { $reached }. El límite es { $limit }.
}
force-falls-short = La bajada exige { $asks } en las ruedas. El vehículo retiene como máximo { $holds }, a { $speed }.
else-another-road = Si eso no se puede cambiar, tome otra carretera.
note-stages-withheld = { $why ->
    [snow] Con nieve o hielo no se aconseja ninguna posición del ralentizador: los ejes motrices podrían perder la adherencia. Las recomendaciones no coinciden: algunos fabricantes admiten la posición más débil. Aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección. En caso de duda, no empiece a bajar: espere a que la carretera haya sido tratada.
    [ice] Con nieve o hielo no se aconseja ninguna posición del ralentizador: los ejes motrices podrían perder la adherencia. Las recomendaciones no coinciden: algunos fabricantes admiten la posición más débil. Aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección. En caso de duda, no empiece a bajar: espere a que la carretera haya sido tratada.
    [empty-in-the-wet] Con el vehículo vacío y la calzada mojada no se aconseja ninguna posición del ralentizador: los ejes motrices llevan poco peso y podrían perder la adherencia. Las recomendaciones no coinciden: algunas admiten posiciones débiles. Aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección.
   *[no-trailer-in-the-wet] Sin remolque ni semirremolque y con la calzada mojada no se aconseja ninguna posición del ralentizador: los ejes motrices llevan poco peso y el vehículo tractor podría girar sobre sí mismo. Las recomendaciones no coinciden: algunas admiten posiciones débiles. Aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección.
}
note-wet-cap = Calzada mojada: el ralentizador cuenta como máximo con la mitad de la adherencia de los ejes motrices. Si las ruedas motrices patinan, baje una posición. Algunas recomendaciones dicen que se desconecte del todo.
note-hold-by-hand = Esta caja de cambios elegiría las marchas por sí sola. Póngala en modo manual y ponga la marcha a mano antes de cada cima.
note-shifts-up-by-itself = Si el motor gira demasiado rápido, esta caja sube de marcha por sí sola. Entonces el ralentizador se desconecta. Las velocidades indicadas quedan por debajo.
note-starts-in-descent = Esta carretera empieza en la bajada. No se sabe qué han soportado los frenos antes.
note-partly-unassessed = En una parte de la carretera faltan altitudes o son erróneas. Allí no se aconseja nada.
note-poor-heights = Las altitudes de este archivo son malas: las pendientes son solo orientativas. Compárelas con las señales.
note-hot-elsewhere = En el { $place }, fuera de las bajadas, una frenada fuerte hasta parar superaría el límite de los frenos. Vaya más despacio ahí.
note-cannot-climb = Ni siquiera con el acelerador a fondo puede este camión subir una parte de esta carretera, en ninguna marcha.

## Short answers, of five words at most: one line beside a question.

short-same = lo mismo
short-no-safe-speed = ninguna velocidad segura
short-verdict = { $verdict ->
    [retarder-holds] lo retiene
    [little-in-reserve] con poca reserva
    [needs-service-brakes] frenos de servicio
   *[no-safe-speed] ninguna velocidad segura
}
short-gear-range = marchas { $from }–{ $to }
short-out-of-range = masa fuera de límites
short-governed = { $governs ->
    [speed-limit] límite introducido
    [posted] límite señalizado
    [engine-speed] revoluciones del motor
    [control] control de la velocidad
    [curve] curvas
    [grip] adherencia
   *[heat] calor de los frenos
}
short-own-choice = su elección
short-no-speed = { $because ->
    [speed-limit] el límite introducido es menor
    [posted] el límite señalizado es menor
    [engine-speed] motor demasiado rápido
    [control] muy poca retención
    [curve] marchas demasiado altas en curvas
    [grip] muy poca adherencia
   *[heat] frenos demasiado calientes
}
short-brakes-hold = lo retienen los frenos
short-stop-at-once = pare enseguida
short-stop-before = pare antes del { $place }
short-no-stop = ninguna parada segura
short-count-of = { $some } de { $runs }
short-curve-count = { $all-hairpins ->
    [true] { $count ->
        [one] { $count } curva de herradura
       *[other] { $count } curvas de herradura
    }
   *[false] { $count ->
        [one] { $count } curva
       *[other] { $count } curvas
    }
}, { $speed }
short-none-found = no se encontró
short-no-gear = ninguna marcha
short-minutes = { $minutes } min
short-cool = frenos por debajo de { $at }
short-mass = como máximo { $mass }
short-retarding = { $share } más de retención
short-reserve = { $kept } en reserva
short-no-change = nada a su alcance

## What a language says of itself.

colon = :{ " " }
semicolon = ;{ " " }
tag = es
decimal-sign = ,
thousands-sign = { "\u00A0" }
number-to = a
translation-unread = Ningún profesional del transporte ha revisado todavía esta traducción. En caso de duda, vale la página en inglés.

## Words of the plan: verdicts, descents.

verdict = { $verdict ->
    [retarder-holds] el ralentizador lo retiene
    [little-in-reserve] lo retiene, con poca reserva
    [needs-service-brakes] necesita los frenos de servicio
   *[no-safe-speed] no se encontró velocidad segura
}
engine-holds = lo retiene el motor solo
engine-holds-little = lo retiene el motor solo, con poca reserva
holds-on-average = lo retiene en promedio
brakes-touch = lo retiene, los frenos de servicio actúan un poco
heat-step = { $step ->
    [cool] fríos
    [warm] templados
    [hot] calientes
   *[over-limit] por encima del límite
}
stage-number = posición { $number }
retarder-off = ralentizador desconectado
off = desconectado
in-legs = marchas { $from } a { $to }, { $stage } en la más baja, de { $slow } a { $fast }
gear-number = marcha { $number }
no-descent = { $partly-unassessed ->
    [true] En las partes que se pudieron evaluar, ninguna pendiente exige una marcha ni una posición del ralentizador.
   *[false] En este sentido, ninguna pendiente de esta carretera exige una marcha ni una posición del ralentizador.
}
no-safe-speed = no se encontró ninguna velocidad segura
other-mode-label = { $service-brakes ->
    [in-reserve] Con frenadas cortas permitidas
   *[may-snub] Frenos de servicio solo para parar
}
same-choice = La misma marcha, la misma posición y la misma velocidad.
choice-apart = { $choice }; { $time } { $less ->
    [true] menos
   *[false] más
}.
mass-out-of-range = Esa masa está fuera de los límites admitidos.
brakes-at = Aproximadamente { $hottest } en el momento más caliente; { $after-stop } tras una frenada fuerte hasta parar (límite: { $limit }).
snub-between = Frenadas cortas: frene de { $from } a { $to } en unos { $on } s y suelte el freno. Repita después de unos { $off } s donde la bajada exige más; en total, { $count ->
    [one] aproximadamente 1 frenada
   *[other] unas { $count } frenadas
}. No baje pisando el freno de forma continua.
parked = Planifique con el vehículo estacionado. No lo use mientras conduce.
cautions =
    .aid = Una ayuda para planificar y enseñar: no es una instrucción ni la aprobación de una carretera.
    .worked-out = Calculado con sus datos y con altitudes grabadas, que contienen errores.
    .unseen = No puede ver el ajuste de los frenos, los neumáticos, la calzada, el estado del tiempo, el tráfico, los cierres de carretera ni cómo va colocada la carga.
    .first = Tienen prioridad las señales, la ley, las normas de su empresa y los límites del fabricante.
    .means = Los frenos de servicio siguen siendo el medio para parar.
    .doubt = En caso de duda: pare arriba, vaya más despacio o tome otra carretera.

## Words of one descent's details, and of its table.

no-advice = No se encontró ninguna velocidad que respete los límites. Con los datos introducidos, no baje por ella con este camión.
falls-short = En la posición máxima falta un { $share } de la retención que exige la bajada: los frenos de servicio tienen que ayudar.
more-than-asked = En la posición máxima hay un { $share } más de la retención que exige la bajada.
advice-in-full = Marcha { $gear }, como máximo { $stage }, { $speed } a { $engine-speed }. { $reserve } { $time } desde la cima hasta el pie de la bajada.
eases-over = { $span }: llano o en subida a lo largo de { $length }. No cambie a una marcha más alta: la bajada continúa.
mean-grade = Pendiente media: { $grade }.
steepest-over = { $grade } en el tramo más empinado de { $length }, desde el { $from }{ $doubt }.
too-short-for-heights = ; en una distancia tan corta las altitudes no son fiables
curve-count = { $count ->
    [one] { $hairpins ->
        [0] 1 curva exige una velocidad menor que esta
       *[other] 1 curva de herradura exige una velocidad menor que esta
        [one] 1 curva de herradura exige una velocidad menor que esta
    }
   *[other] { $hairpins ->
        [0] { $count } curvas exigen una velocidad menor que esta
        [one] { $count } curvas exigen una velocidad menor que esta, 1 de ellas de herradura
       *[other] { $count } curvas exigen una velocidad menor que esta, { $hairpins } de ellas de herradura
    }
}
slowest-curve = La más lenta: como máximo { $speed } en el { $at }, { $side }, radio de aproximadamente { $radius }.
curves-estimated = Los radios son estimaciones a partir del recorrido; no se conocen el peralte, la visibilidad ni el estado de la calzada.
side = { $left ->
    [true] a la izquierda
   *[false] a la derecha
}
climbs-in = Con el acelerador a fondo la sube en la marcha { $gear } a aproximadamente { $speed }. La marcha para bajar es a menudo más baja.
climbs-in-none = Con el acelerador a fondo no la sube en ninguna marcha.
brakes-arrive = Los frenos llegan a la cima con aproximadamente { $heat }.
table-of = Qué hace cada marcha y posición con una pendiente de { $grade } a { $height } sobre el nivel del mar, sin acelerador y sin los frenos de servicio
more-than-needed = más de lo necesario
overruns = se embala
above-speed = por encima de { $speed }
not-usable = no utilizable
unusable = { $why ->
    [slippery] demasiado resbaladizo
    [grip] adherencia insuficiente
    [cut-out] se desconecta
   *[unlocked] convertidor abierto
}
fall-in-part = { $all } (de ellos, { $blank } sin evaluar)
no-work-counted = En { $length } sin evaluar no se cuenta ningún trabajo de frenado.
whole-way = Toda la carretera: { $time }, { $fall } de desnivel en bajada. El ralentizador y el motor absorben { $holding }; los frenos de servicio, { $service }.
slowest-climb = Velocidad más baja en una subida: aproximadamente { $speed }.
less-than = menos de { $share }
about = aproximadamente { $quantity }
share-and-fuel = Los frenos de servicio hacen { $share } del frenado. Combustible: { $fuel }.
table-legend =
    .speed = una velocidad
    .speed-means = el vehículo se estabiliza a ella; debajo están las revoluciones del motor
    .more = más de lo necesario
    .more-means = pierde velocidad: bastaría una posición más débil o una marcha más alta
    .overruns = se embala
    .overruns-means = gana velocidad hasta que el motor gira demasiado rápido: use una marcha más baja o los frenos de servicio
    .not-usable = no utilizable
    .not-usable-means = por la razón indicada
    .one-gear = en una misma marcha
    .one-gear-means = cambiando de posición se puede mantener cualquier velocidad entre aquella a la que se estabiliza con la posición más fuerte y la más alta de la marcha

## Words of what follows from a plan: what would change it, how sure it is, what if.

light-enough = Con { $mass } o menos, el ralentizador retendría el vehículo con la reserva.
no-lighter-load = Ninguna carga más ligera cambiaría eso.
more-retarding = Con un { $share } más de retención de la que tiene este camión, el ralentizador lo retendría con la reserva.
reserve-kept = Tal como está, se puede conservar en reserva un { $kept } como máximo, no un { $asked }.
cool-enough = Con los frenos a no más de { $at } en la cima se respetaría el límite: deje antes que se enfríen.
meets-rise = Retenido así hasta el pie de la bajada, el vehículo entra en la subida en el { $at } a aproximadamente { $speed }. No deje de retenerlo antes de tiempo para entrar más rápido.
driven-so = Bajada calculada { $runs } veces, con las pendientes, la masa, la resistencia, el viento, el ralentizador y los frenos cada uno algo desviado.
in-none = En ninguna de las { $runs } veces
in-all = En las { $runs } veces
in-some = En { $some } de las { $runs } veces
speed-held = { $of } el ralentizador por sí solo retuvo el vehículo a esa velocidad.
touches-left-out = No se cuentan los lugares donde los frenos de servicio actúan un poco.
limit-kept = { $of } los frenos, incluida una frenada fuerte hasta parar, quedaron dentro del límite.
nine-of-ten = En nueve de cada diez veces los frenos estaban entre { $cool } y { $hot } tras una frenada fuerte hasta parar.
spread-from = La mayor parte de esa variación procede { $inputs }.
input = { $input ->
    [grade] de las pendientes
    [mass] de la masa
    [rolling] de la resistencia a la rodadura
    [drag] de la resistencia al aire
    [retarder] de lo que da el ralentizador
    [wind] del viento
    [brakes-at-start] de la temperatura de los frenos al inicio
   *[cooling] de cuánto calor almacenan y ceden los frenos
}
and-then = {" "}y, después,{" "}
stops-anywhere = Si frena fuerte antes de dos segundos, el vehículo se para dentro del límite de temperatura desde cualquier punto de la bajada.
stops-until = Si frena fuerte antes de dos segundos, el vehículo se para dentro del límite de temperatura solo hasta el { $until }.
stops-nowhere = Ni siquiera en la cima respetaría una frenada fuerte hasta parar el límite de temperatura de los frenos.
brakes-hold = Los frenos de servicio también podrían retenerlo a su velocidad hasta el pie de la bajada, dentro del límite.
brakes-hold-from = Solo a partir del { $from } podrían los frenos de servicio retenerlo a su velocidad hasta el pie de la bajada. Antes, pare.
brakes-hold-nowhere = Los frenos de servicio no podrían retenerlo hasta el pie de la bajada: pare.
neither-from = A partir del { $from }, ni parar ni retenerlo hasta el pie respetaría el límite.
ramp-met = Rampa de escape en el { $at }. Rodando sin frenos desde el { $lost-at }, el vehículo llegaría a ella a unos { $speed }. Un lecho horizontal de grava redonda y suelta necesitaría medir unos { $needs }.
no-ramp-entered = No hay ninguna rampa de escape introducida en esta bajada. Eso no significa que no exista ninguna.
long-stroke = Se supone que los frenos de tambor de un grupo de ejes tienen en frío una carrera de 1¾ pulgadas (44 mm). Una cámara de freno del tamaño 30 llega entonces a su límite de 2 pulgadas (51 mm) a { $at }. Por encima no se cuentan aquí, y los demás están más calientes. Con 1⅝ pulgadas (41 mm) son { $shorter }; con 1½ pulgadas (38 mm), { $short }.
half-braked = Si los frenos de disco de un grupo de ejes frenaran solo la mitad, los demás estarían más calientes en toda la carretera.
out-of-adjustment = { $axles }: aproximadamente { $heat } tras una frenada fuerte hasta parar{ $over }.
axles = { $axle-place ->
    [steer] Eje direccional
    [drive] Ejes motrices
   *[trailer] Remolque
}
full-stage-from = { $from }, a { $speed }
rest-below = ; por debajo de { $speed }, los frenos de servicio
brake-early = no basta: frene con antelación
standstill = parar
by-brakes-alone = { $way }, después aproximadamente { $after }
curve-of = curva, radio de aproximadamente { $radius }
place-to-stop = un lugar donde hay que parar
town = pueblo o ciudad
driven-in-short = Calculada { $runs } veces con pequeños errores
held-and-kept = el ralentizador retuvo el vehículo todas las veces, y los frenos quedaron siempre dentro del límite.
shares-held = el ralentizador por sí solo retuvo el vehículo en el { $held } de las veces; los frenos quedaron dentro del límite en el { $kept }.
held-with = A { $engine-speed } retuvo con { $power }; los datos del camión dan { $assumed }. Eso es el { $share } de lo que indican para el ralentizador.
not-measured-no-such-stage = Este camión no tiene esa marcha o esa posición.
not-measured-off = Con el ralentizador desconectado no se sabe nada de él: introduzca una posición.
not-measured-not-pushed = Esa pendiente no empuja este camión a esa velocidad: introduzca un tramo más empinado.
not-measured-gauges-differ = En esa marcha y a esa velocidad el motor giraría a aproximadamente { $engine-speed }: está mal la marcha, la relación del eje, el neumático o una de las dos cifras.
not-measured-out-of-reach = El ralentizador tendría que dar el { $share } de lo que indican sus datos. Es más probable que la masa, la pendiente o la posición no sean las introducidas, o que ayudaran los frenos de servicio.

## Words of places and posted limits along the road.

place-kind = { $kind ->
    [summit] cumbre
    [brake-check] zona de comprobación de frenos
    [escape-ramp] rampa de escape
    [settlement] pueblo o ciudad
    [stop] parada obligatoria, semáforo o cruce
    [parking] estacionamiento o área de descanso
    [tunnel] túnel
    [bridge] puente
    [danger] peligro
    [chain-up] zona para poner cadenas
    [quiet-zone] zona de silencio
    [exit] salida
   *[other] otro lugar
}
posted-limit = límite señalizado

## Words of the entries of truck and day.

preset = { $preset ->
    [five-axle36] { $units ->
        [metric] Conjunto de cinco ejes, 36,3 t
       *[imperial] Conjunto de cinco ejes, 80 000 lb
    }
    [five-axle40] { $units ->
        [metric] Conjunto de cinco ejes, 40 t
       *[imperial] Conjunto de cinco ejes, 88 200 lb
    }
    [five-axle40-both] { $units ->
        [metric] Conjunto de cinco ejes, 40 t, hidrodinámico y freno motor
       *[imperial] Conjunto de cinco ejes, 88 200 lb, hidrodinámico y freno motor
    }
    [five-axle-empty] { $units ->
        [metric] Conjunto de cinco ejes, vacío, 14,5 t
       *[imperial] Conjunto de cinco ejes, vacío, 32 000 lb
    }
    [six-axle44] { $units ->
        [metric] Conjunto de seis ejes, 44 t
       *[imperial] Conjunto de seis ejes, 97 000 lb
    }
    [drawbar40] { $units ->
        [metric] Camión rígido con remolque, 40 t
       *[imperial] Camión rígido con remolque, 88 200 lb
    }
    [refuse26] { $units ->
        [metric] Camión de basuras, automático, 26 t
       *[imperial] Camión de basuras, automático, 57 300 lb
    }
    [rigid18] { $units ->
        [metric] Camión rígido de dos ejes, 18 t
       *[imperial] Camión rígido de dos ejes, 39 700 lb
    }
    [tipper26] { $units ->
        [metric] Volquete de tres ejes, 26 t
       *[imperial] Volquete de tres ejes, 57 300 lb
    }
    [b-double] { $units ->
        [metric] Conjunto doble de nueve ejes, 62,5 t
       *[imperial] Conjunto doble de nueve ejes, 137 800 lb
    }
    [coach] { $units ->
        [metric] Autobús interurbano, 19 t
       *[imperial] Autobús interurbano, 41 900 lb
    }
   *[coach-converter] { $units ->
        [metric] Autobús interurbano, convertidor, 19 t
       *[imperial] Autobús interurbano, convertidor, 41 900 lb
    }
}
retarder = { $kind ->
    [none] sin ralentizador
    [compression-release] freno motor
    [exhaust-valve] freno de escape
    [hydrodynamic] ralentizador hidrodinámico
    [electromagnetic] ralentizador eléctrico
    [compression-and-hydrodynamic] freno motor y ralentizador hidrodinámico
    [exhaust-and-hydrodynamic] freno de escape y ralentizador hidrodinámico
    [compression-and-electromagnetic] freno motor y ralentizador eléctrico
    [exhaust-and-electromagnetic] freno de escape y ralentizador eléctrico
    [engine-power-table] tabla propia, en el motor
   *[shaft-torque-table] tabla propia, en el árbol de transmisión
}
transmission = { $transmission ->
    [manual] manual
    [automated] automatizada
   *[torque-converter] con convertidor
}
load = { $load ->
    [laden] cargado
    [empty] vacío
   *[no-trailer] sin remolque
}
axle-group = { $axles } { $axle-place ->
    [steer] { $axles ->
        [one] eje direccional
       *[other] ejes direccionales
    }
    [drive] { $axles ->
        [one] eje motriz
       *[other] ejes motrices
    }
   *[trailer] { $axles ->
        [one] eje de remolque
       *[other] ejes de remolque
    }
}, { $brake ->
    [drum] tambor
   *[disc] disco
}, { $share } % del frenado
surface = { $surface ->
    [dry] seca
    [wet] mojada
    [snow] nieve
   *[ice] hielo
}
service-brakes = { $service-brakes ->
    [in-reserve] solo para parar
   *[may-snub] frenadas cortas permitidas
}
lead = { $lead ->
    [usual] la más rápida
    [one-gear] una sola marcha
   *[untouched] sin tocar los frenos
}
truck-entry = { $name }: escriba un valor de { $range }.
entry = { $entry ->
    [rated-power] Potencia nominal del motor
    [governed-speed] Régimen de corte del motor
    [top-gear-speed] Revoluciones en la marcha más alta
    [gross-mass] Masa total real
    [drive-axle-mass] Masa sobre los ejes motrices
    [rolling-radius] Radio de rodadura
    [wheel-inertia] Inercia de las ruedas
    [rolling-resistance] Resistencia a la rodadura
    [drag-area] Área de resistencia al aire
    [displacement] Cilindrada del motor
    [lowest-engine-speed] Revoluciones mínimas útiles del motor
    [highest-engine-speed] Revoluciones máximas permitidas del motor
    [axle-ratio] Relación del eje
    [axle-efficiency] Rendimiento del eje
    [retarder-peak-power] Potencia de frenado del ralentizador
    [retarder-peak-speed] Revoluciones del motor con la potencia de frenado máxima
    [retarder-exponent] Aumento de la potencia de frenado con las revoluciones
    [retarder-cut-out] Revoluciones del motor a las que se desconecta
    [rollover-threshold] Umbral de vuelco
    [air-temperature] Temperatura del aire
    [brakes-at-start] Temperatura de los frenos al inicio
    [headwind] Viento de frente
    [speed-limit] Límite de velocidad
    [reserve] Reserva de fuerza de retención
    [heat-limit] Temperatura máxima de los frenos
    [superelevation] Peralte de las curvas
    [retarder-delay] Demora del ralentizador tras cambiar de marcha
    [retarding-scale] Potencia de frenado medida respecto a la supuesta
    [shaft-torque] Par del ralentizador en el árbol de transmisión
    [shaft-speed] Revoluciones del árbol para ese par
    [short-power] Potencia de corta duración del ralentizador
    [short-time] Tiempo de la potencia de corta duración
    [sustained-power] Potencia continua del ralentizador
    [sustained-speed] Revoluciones del motor para la potencia continua
    [hot-share] Par en caliente respecto al par en frío
    [warm-up-time] Tiempo de calentamiento del ralentizador
    [lock-up-gear] Marcha más baja con bloqueo del convertidor
    [lock-up-speed] Revoluciones del motor a las que se abre el bloqueo
    [brake-check-stop] Tiempo en cada zona de comprobación de frenos
   *[shifts-up-speed] Revoluciones a las que la caja sube de marcha por sí sola
}

## Words of the road: its quality, what was repaired, what was not assessed.

both-ends = recorrida desde el extremo situado a { $start } de altitud hasta el extremo situado a { $end } de altitud
climbs-between = Esta carretera sube de { $start } a { $end } en el sentido mostrado. ¿Va a bajarla?
onward-from = desde el { $place }

## Why a truck or a truck file is not taken, but for entries out of their ranges.

truck-drive-axle-mass = La masa sobre los ejes motrices es mayor que la masa total real; escriba una menor.
truck-engine-speeds = Las revoluciones mínimas útiles del motor deben estar por debajo de las máximas permitidas.
truck-gears = Las marchas deben ser de 1 a { $most } relaciones, de { $low } a { $high }, cada una menor que la anterior.
truck-full-load = La curva de plena carga necesita de 2 a { $most } puntos con revoluciones del motor en aumento ({ $low } a { $high }/min) y un par de 0 a { $torque } N·m.
truck-stages = Las posiciones del ralentizador deben ser de 1 a { $most } fracciones mayores que 0, en aumento, la última 1 (100 %).
truck-table = La tabla del ralentizador necesita de 2 a { $rows } filas con revoluciones en aumento ({ $low } a { $high }/min), todas con el mismo número de valores (de 1 a { $most }), ninguno menor que el anterior de su fila.
truck-axle-groups = Debe haber de 1 a { $most } grupos de ejes, de 1 a { $axles } ejes cada uno, cuyas partes del frenado sumen 1.
truck-file-broken = Error en la línea { $line } (mensaje en inglés: { $what }). Corríjalo ahí, o guarde el archivo otra vez.
truck-file-cut-off = Falta una parte de este archivo. Cópielo otra vez, o pídalo de nuevo.
truck-file-newer = Este archivo tiene la versión { $found }; aquí se leen versiones hasta la { $newest }.

## Why a file gives no road, and what to do.

-ask-gpx = Exporte el recorrido como GPX y elija ese archivo.
-ask-heights = Grabe la carretera con un dispositivo que guarde altitudes, o añada altitudes al recorrido con un planificador de rutas, y expórtelo otra vez.
file-empty = El archivo está vacío. { -ask-gpx }
file-foreign = { $foreign ->
    [html] Esto es una página web, no un archivo GPX. Inicie sesión donde está guardado el recorrido y descargue el recorrido mismo como GPX.
    [kml] Esto es un archivo KML, que rara vez lleva altitudes utilizables. { -ask-gpx }
    [gzip] Esto es un archivo comprimido gzip. Descomprímalo y elija el archivo GPX que contiene.
    [zip] Esto es un archivo comprimido zip. Descomprímalo y elija el archivo GPX que contiene.
    [fit] Esto es una grabación binaria FIT, no un archivo GPX. { -ask-gpx }
    [json] Esto es un archivo JSON, no un archivo GPX. { -ask-gpx }
    [pdf] Esto es un documento PDF, no un archivo GPX. { -ask-gpx }
    [picture] Esto es una imagen, no un archivo GPX. { -ask-gpx }
    [other-xml] Esto es un archivo XML de otro tipo: su elemento exterior es «{ $name }», no «gpx». { -ask-gpx }
   *[unknown] Esto no es un archivo GPX. { -ask-gpx }
}
file-nothing-inside = En el archivo GPX no se pudo leer ningún recorrido ni ninguna ruta. Si el archivo quedó cortado al copiarlo, cópielo otra vez; si no, exporte el recorrido mismo, no solo su resumen.
file-waypoints-only = El archivo solo contiene puntos de referencia ({ $count }): lugares, pero ninguna carretera entre ellos. Exporte el recorrido o la ruta.
file-heights-unreadable = Ninguno de los { $points } puntos tiene una altitud en metros, sin más. Altitudes que no se pudieron leer o que llevan una unidad que no se adivina: { $unreadable }. Exporte las altitudes en metros, como simples números.
file-heights-constant = Todas las altitudes del archivo son el mismo número, así que no conoce las cuestas ({ $points } puntos). { -ask-heights }
file-no-heights = Ninguno de los { $points } puntos tiene altitud, así que la carretera no se puede evaluar. { -ask-heights }
file-too-coarse = Los puntos están demasiado separados: unos { $found } m; para ver las pendientes hacen falta { $most } m como máximo. Expórtelo como recorrido con todos los puntos, no como ruta de unos pocos giros.
file-bad-points = { $bad } de { $points } puntos { $bad ->
    [one] no tiene
   *[other] no tienen
} una latitud y una longitud utilizables, por primera vez en la línea { $line }. { $swapped ->
    [true] Parece que la latitud y la longitud están intercambiadas; corríjalo donde se hace el archivo y expórtelo otra vez.
   *[false] Exporte otra vez el recorrido.
}
file-too-short = La carretera mide solo { $found } m; hacen falta al menos { $least } m. Elija un recorrido más largo.
file-nothing-left = En ninguno de los { $length } km las altitudes son fiables, así que no se puede dar ninguna pendiente. { -ask-heights }
file-too-many-bytes = El archivo tiene { $found } MB; se pueden leer { $most } MB como máximo. Exporte una parte más corta del recorrido, o menos puntos.
file-too-many-points = El archivo tiene más de { $most } millones de puntos. Exporte una parte más corta del recorrido, o menos puntos.
file-too-many-courses = El archivo tiene más de { $most } recorridos, o trozos de recorrido alejados entre sí. Exporte solo la carretera que quiere.
file-too-long = La carretera mide { $found } km; se pueden calcular { $most } km como máximo. Exporte una parte más corta.
file-refused = El archivo se rechaza en la línea { $line }: { $refusal ->
    [entities] el archivo declara entidades propias
    [nesting] hay elementos anidados a más de { $most } niveles de profundidad
   *[long-tag] una etiqueta mide más de { $most } kB
}. Ningún recorrido necesita eso. Exporte otra vez el recorrido desde donde se hizo.
file-bad-heights = La altitud número { $number } no se puede usar: hacen falta al menos dos altitudes finitas, a una distancia mayor que 0 m y de 50 m como máximo.
file-no-such-course = Se pidió el recorrido número { $number }, pero el archivo tiene { $count }. Elija uno de esos.
file-legs-apart = El archivo { $number } empieza a { $gap } km de donde termina el archivo { $previous }, así que ninguna carretera lleva de uno a otro. Cambie el orden o invierta uno de los dos.
file-not-one-road = La grabación { $number } no muestra la misma carretera. Muy poco de ella coincide con las anteriores, sus altitudes difieren demasiado, o es una copia. Compare los archivos o únalos.
file-cancelled = Detenido a petición suya; elija un archivo para empezar otra vez.

## Findings: what was noticed or repaired in a file. Places along the road stand beside them.

found-encoding = El archivo dice que su texto está en { $declared }, pero se leyó como { $read-as }.
found-no-encoding = El archivo no indica su codificación; se leyó como { $read-as }.
found-junk-before = { $count ->
    [one] { $count } byte antes del inicio del archivo; se omite
   *[other] { $count } bytes antes del inicio del archivo; se omiten
}.
found-cut-off = El archivo se interrumpe en la línea { $line }; se usa todo lo anterior.
found-undeclared-prefix = El prefijo «{ $prefix }» se usa sin estar declarado, por primera vez en la línea { $line }; se leyó de todos modos.
found-bad-reference = { $count ->
    [one] { $count } texto
   *[other] { $count } textos
} con un «&» suelto, por primera vez en la línea { $line }; se conserva lo escrito.
found-tags-repaired = { $count ->
    [one] { $count } etiqueta fuera de lugar, por primera vez en la línea { $line }; se leyó
   *[other] { $count } etiquetas fuera de lugar, por primera vez en la línea { $line }; se leyeron
} según lo que se quería decir.
found-document-type = No se tiene en cuenta un tipo de documento en la línea { $line }; no se fue a buscar nada fuera.
found-decimal-comma = { $count ->
    [one] { $count } número con coma decimal, por primera vez en la línea { $line }; se leyó como decimal
   *[other] { $count } números con coma decimal, por primera vez en la línea { $line }; se leyeron como decimales
}.
found-padding = { $count ->
    [one] { $count } número
   *[other] { $count } números
} con espacios alrededor, por primera vez en la línea { $line }; no se tienen en cuenta los espacios.
found-metres-written = { $count ->
    [one] { $count } altitud con una «m» detrás, por primera vez en la línea { $line }; se leyó
   *[other] { $count } altitudes con una «m» detrás, por primera vez en la línea { $line }; se leyeron
} en metros.
found-foreign-unit = { $count ->
    [one] { $count } altitud con una unidad distinta del metro, por primera vez en la línea { $line }; se trata como dato ausente
   *[other] { $count } altitudes con una unidad distinta del metro, por primera vez en la línea { $line }; se tratan como datos ausentes
}, pues una unidad nunca se adivina.
found-height-unreadable = { $count ->
    [one] { $count } altitud que no sirve como número de metros, por primera vez en la línea { $line }; se trata como dato ausente
   *[other] { $count } altitudes que no sirven como número de metros, por primera vez en la línea { $line }; se tratan como datos ausentes
}.
found-points-dropped = { $count ->
    [one] { $count } punto sin latitud y longitud utilizables, por primera vez en la línea { $line }; se omite
   *[other] { $count } puntos sin latitud y longitud utilizables, por primera vez en la línea { $line }; se omiten
}.
found-waypoints-left-out = { $count ->
    [one] { $count } punto de referencia de más; se omite
   *[other] { $count } puntos de referencia de más; se omiten
} y se conservan los { $kept } primeros.
found-route-shape = { $count ->
    [one] { $count } punto entre los giros de la ruta; se usa
   *[other] { $count } puntos entre los giros de la ruta; se usan
} para su trazado.
found-segments-joined = { $count ->
    [one] { $count } segmento
   *[other] { $count } segmentos
} del recorrido; se unen, y la mayor separación es de { $widest } m.
found-stops-merged = { $count ->
    [one] { $count } punto en el mismo lugar que el anterior; se une
   *[other] { $count } puntos en el mismo lugar que el anterior; se unen
} con él.
found-jumps = { $count ->
    [one] { $count } punto muy lejos del recorrido; se omite
   *[other] { $count } puntos muy lejos del recorrido; se omiten
}.
found-zero-heights = { $count ->
    [one] { $count } altitud de valor cero o sin ningún cambio; se trata como dato ausente
   *[other] { $count } altitudes de valor cero o sin ningún cambio; se tratan como datos ausentes
}.
found-spikes = { $count ->
    [one] { $count } altitud que sobresale hasta { $largest } m; se trata como dato ausente
   *[other] { $count } altitudes que sobresalen hasta { $largest } m; se tratan como datos ausentes
}.
found-heights-filled = Altitudes ausentes, completadas con líneas rectas en { $count ->
    [one] { $count } lugar
   *[other] { $count } lugares
}, la más larga de { $longest } m.
unassessed-because = { $unassessed ->
    [gap] el archivo no tiene puntos ahí
    [no-heights] el archivo no tiene altitudes ahí
    [step] las altitudes dan ahí un salto y no vuelven
   *[sliver] el tramo entre otros dos sin evaluar es demasiado corto
}.
found-not-assessed = Ninguna pendiente y ningún consejo en este tramo: { unassessed-because }
found-tunnel = Las altitudes suben { $rise } m y vuelven a bajar, como encima de un túnel; se usa una línea recta.
found-viaduct = Las altitudes bajan { $drop } m y vuelven a subir, como debajo de un puente; se usa una línea recta.
found-very-steep = Más empinado que la mayoría de las carreteras para camiones en { $count ->
    [one] { $count } lugar
   *[other] { $count } lugares
}, hasta { $grade } % en 200 m; compárelo con las señales.
found-combined = { $count } grabaciones de esta carretera combinadas en una; al menos dos de ellas conocen { $common } km.
found-disagree = Las dos grabaciones difieren hasta { $apart } m de altitud en { $length } m; se usa la más empinada.
found-rough = { $from-terrain ->
    [true] Las altitudes parecen proceder de un modelo del terreno, no de la carretera
   *[false] Las altitudes son irregulares
} ({ $points } puntos porcentuales entre tramos vecinos de 100 m); una pendiente es válida a lo largo de { $base } m o más{ $poor ->
    [true] , y es solo orientativa
   *[false] { "" }
}.
