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
### | at a distance along the road | en el punto |
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
### | to snub, snub braking | frenadas cortas e intermitentes |
### | to drag the brakes | bajar pisando el freno de forma continua |
### | hard stop | frenada fuerte hasta parar; in heads: tras parar |
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

## Words of the notice before the page, and of what the pictures say to whoever does not see them.

i-am-parked = Estoy estacionado
road-table = La carretera en una tabla
road-table-heads =
    .span = desde – hasta
    .part = parte
between = sin bajada
power-table = La potencia en una tabla
power-heads =
    .engine-speed = revoluciones del motor, /min
    .pulls = tira
holds = retiene, { $stage }
window-ends =
    .beginning = Principio de la parte mostrada
    .end = Final de la parte mostrada
ends-where-it-began = Termina donde empezó.
leads-away = Termina a { $away } de su inicio en línea recta, hacia el { $towards }.
winds =
    .north = norte
    .north-east = noreste
    .east = este
    .south-east = sureste
    .south = sur
    .south-west = suroeste
    .west = oeste
    .north-west = noroeste
card-profile = Perfil de la carretera. Lo que muestra está en las filas de abajo.

## Words of the road picture.

picture = La carretera
fill-by = Colorear según
reading = { $reading ->
    [gear] marcha
    [stage] posición
    [heat] calor de los frenos
    [speed] velocidad
   *[grade] pendiente
}
grade-step = { $step ->
    [down10] −10 % o más empinada
    [down8] −8 a −10 %
    [down6] −6 a −8 %
    [down4] −4 a −6 %
    [down2] −2 a −4 %
    [level] llano
    [up2] subida de 2 a 5 %
   *[up5] subida de 5 % o más
}
zoom = Ampliación
zoom-in = Ampliar
zoom-out = Reducir
zoom-all = Toda la carretera
lane = { $lane ->
    [height] altitud
    [gear] marcha
    [stage] posición
    [heat] calor de los frenos
    [speed] velocidad
   *[temperature] frenos
}
after-stop = tras parar
bend-caps = en curvas
only-this = Solo esta parte
not-assessed = sin evaluar
limit = límite
before-asked = exige
cursor = Punto de la carretera
cell-head = { $cell ->
    [at] en el punto
    [grade] pendiente
    [height] altitud
    [gear-stage] marcha · posición
    [speed] velocidad · motor
    [carried] parte del ralentizador
    [brakes] frenos
   *[if-stopped] si para aquí
}
engine-carries = parte del motor
grade-over = pendiente a lo largo de { $length }
nothing-said-here = Aquí no se pudo evaluar la carretera: no se dice nada sobre ella.
on-descent = En la bajada { $number }, a { $to-foot } de su pie.
descent-begins = La bajada { $number } empieza dentro de { $ahead }.
no-descent-ahead = No hay ninguna bajada por delante.
bend = { $hairpin ->
    [true] Curva de herradura
   *[false] Curva
} { $side }: como máximo { $speed } (radio de aproximadamente { $radius }, una estimación).
place-here = Aquí: { $name }.
place-ahead = Dentro de { $ahead }: { $name }.
strip = Toda la carretera, y la parte mostrada arriba
plan-shape = La carretera vista desde arriba, con el norte hacia arriba
start = inicio
end = fin
north = N
short-stage-off = 0

## Words of use without a network.

works-offline = Esta página ya funciona sin conexión a la red.
newer = Hay una versión nueva de esta página lista para cargar. Se conservan el camión, las condiciones, la carretera y sus lugares. No se conservan el hito introducido para la ficha, la carretera guardada para comparar ni lo que retuvo hoy.
load-newer = Versión nueva: cargarla
later = Más tarde
forget-all = Borrar todo lo guardado en este equipo
forget-really = ¿Borrar de verdad camiones, datos, carreteras y lugares? Pulse otra vez
save-page = Guardar esta página como un solo archivo (para una memoria USB)

## Words of what is handed on: the link with truck and day, the project with all of it.

make-link = Copiar un enlace con el camión y las condiciones
link-copied = Copiado. El enlace lleva este camión y estas condiciones, ninguna carretera y ningún lugar. Quien lo abra decide si los usa.
link-made = Copie el enlace de aquí. Lleva este camión y estas condiciones, ninguna carretera y ningún lugar. Quien lo abra decide si los usa.
link-label = Enlace con el camión y las condiciones
link-offered = Este enlace trae un camión y unas condiciones. Sus propios datos siguen en uso hasta que usted decida. Quien lo envió puede conducir otro vehículo: compruebe cada dato.
use-link = Usar el camión y las condiciones del enlace
keep-mine = Conservar los míos
link-taken = Ahora se usan el camión y las condiciones del enlace: compruébelos antes de fiarse de las cifras.
back-to-mine = Volver a los míos
link-broken = No se pueden leer el camión y las condiciones de este enlace; puede que falte una parte. Pídalo otra vez. Sus propios datos siguen en uso.
save-project = Guardar todo en un solo archivo
project-sentence = La carretera tal como se dio, con sus lugares y límites, el camión y las condiciones, y lo mismo de la carretera guardada a su lado. Se abre aquí como una carretera, en cualquier equipo.
project-name-ending = .steadygrade
project-opened = Ahora se usan el camión, las condiciones y los lugares del proyecto: compruébelos antes de fiarse de las cifras.
file-stem = carretera

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

## Words of the teaching roads.

lessons-head = Carreteras para la enseñanza
lessons-invented = Estas carreteras son inventadas, para enseñar; ninguna existe.
lessons-said-for = Lo que ocurre se dice del primer camión de la lista en las condiciones habituales. Con otro camión o en otras condiciones cuenta lo que se calcula, no esta nota.
lesson-shows-label = Lo que muestra
lesson-believed-label = Lo que se suele creer
lesson-happens-label = Lo que ocurre
lesson-question-label = Pregunta para la clase
lesson-false-finish =
    .name = Falso final
    .shows = Una pendiente larga se suaviza como si terminara, y después continúa más empinada.
    .believed = Donde la carretera se allana, la bajada ha terminado y se puede cambiar a una marcha más alta.
    .happens = Es una sola bajada. El tramo en que se suaviza es demasiado corto para cambiar a una marcha más alta y volver, y el tramo más empinado está detrás. El conjunto necesita una marcha más baja de la que necesitaría por sí sola la parte anterior.
    .question = ¿Dónde debe estar puesta ya la marcha baja, y qué habría podido avisar de ello antes de la cima?
lesson-three-steps =
    .name = Tres escalones
    .shows = Tres bajadas iguales, separadas por tramos llanos cortos.
    .believed = Si la primera fue bien, la tercera irá igual de bien.
    .happens = Con el ralentizador solo, las tres se bajan de la misma manera y los frenos de servicio siguen fríos. Donde se permiten frenadas cortas e intermitentes, cada bajada empieza con los frenos más calientes que la anterior, y la tercera ya no se puede tomar tan rápido como la primera. Por sí sola se podría.
    .question = ¿Qué calor de los frenos se puede admitir en la tercera cima, si aún debe quedar margen para una frenada fuerte hasta parar?
lesson-short-and-steep =
    .name = Corta y empinada
    .shows = Una bajada corta y empinada, con una ciudad y un semáforo al pie.
    .believed = Es tan corta que los frenos podrán con ella, en cualquier marcha.
    .happens = De todas estas carreteras, la bajada más corta es la que necesita la marcha más baja y la velocidad más baja. Aquí la marcha la decide la pendiente, no la longitud.
    .question = El semáforo del pie se pone en rojo, y la marcha elegida es demasiado alta. ¿Qué le queda al conductor?
lesson-long-and-gentle =
    .name = Larga y suave
    .shows = Una pendiente suave que continúa durante muchos kilómetros.
    .believed = Una pendiente tan suave es inofensiva: la marcha más alta, y los frenos de vez en cuando.
    .happens = Con la reserva pedida, el ralentizador solo retiene el vehículo por debajo de la marcha más alta y por debajo del límite de velocidad habitual. En la marcha más alta y a ese límite, solo con los frenos de servicio, estos se calientan por encima de su límite. En la bajada corta y empinada, lo mismo los calentaría menos, porque el desnivel es mucho menor; también allí sería un error.
    .question = ¿Qué produce más calor: lo empinada que es una bajada o el desnivel que tiene? ¿Y adónde va ese calor?
lesson-hairpins =
    .name = Curvas de herradura
    .shows = Una pendiente moderada con una curva de herradura tras otra.
    .believed = La pendiente por sí sola decide la marcha y la velocidad.
    .happens = Aquí deciden las curvas. Sin ellas, la misma pendiente se bajaría más rápido y en una marcha más alta. El ralentizador solo retiene el vehículo en la pendiente, pero para reducir la velocidad antes de las curvas de herradura hacen falta también los frenos de servicio, y se calientan más que en la misma pendiente sin curvas.
    .question = ¿Debe ir lento el camión antes de la curva de herradura o solo dentro de ella? ¿Y en qué marcha gira todavía bien el motor allí?

## Words of the class view: for an instructor, a projector and a room.

screen = { $screen ->
    [roads] Carreteras
    [forces] Fuerzas
    [run] Recorrido
    [pair] Lado a lado
   *[exercises] Ejercicios
}
idea = { $screen ->
    [roads] Una carretera de la que hablar
    [forces] Donde marcha y pendiente se cortan, el vehículo se estabiliza
    [run] Un vehículo por esta carretera, como se planificó
    [pair] Una carretera, una salida, una sola cosa distinta
   *[exercises] Primero calcular, después mirar
}
notes-roads =
    .first = Elija una carretera y pida a la clase que diga cómo la bajaría antes de mostrar nada.
    .second = También se puede soltar aquí cualquier archivo GPX: la mejor carretera es la que recorren cada semana.
notes-forces =
    .first = Pregunte primero: ¿qué marcha? Después arrastre la pendiente hasta su valor.
    .second = La pendiente exige casi la misma fuerza a cualquier velocidad; una marcha baja da más. En eso consiste la elección de la marcha.
    .third = Arrastre la pendiente hasta que la marca se salga del final de una línea: más allá, el motor giraría demasiado rápido.
    .fourth = Añada una décima parte de la masa y vea cómo se mueve la marca.
notes-run =
    .first = Pare antes de una cima y pregunte qué debería estar puesto ya.
    .second = Pare donde se suaviza: ¿ha terminado?
    .third = La temperatura es un cálculo. Lo que no puede ver, como el ajuste de los frenos, es peor que lo que ve.
notes-pair =
    .first = Deje que la clase apueste antes de empezar: ¿cuántos grados, cuántos minutos?
    .second = Pare donde se separan. Desde el asiento todavía no se nota nada.
    .third = Al final, pregunte qué se ganó con ello.
notes-exercises =
    .first = Imprima la hoja en blanco; la hoja de respuestas tiene el mismo número.
    .second = En los pasos, las cifras están redondeadas tal como se escriben, para poder seguirlas a mano.
screens = Pantallas de la clase
to-road-page = Volver
show-notes = Notas
keys = Avance y retroceso de página: pantalla siguiente y anterior. N: estas notas. Espacio: arrancar y parar. Flechas izquierda y derecha: paso a paso. Arriba y abajo: más rápido y más lento. Inicio: desde el principio.
class-caution = Para enseñar, con datos y altitudes que contienen errores. No es un permiso para bajar: tienen prioridad las señales, la ley y los límites del fabricante.
grade-label = Pendiente
mass-label = Masa
stage-label = Ralentizador
forces-about = Fuerza de retención según la velocidad: una línea por marcha y, cruzándolas, lo que exigen las pendientes. Debajo se dice dónde se estabilizan las marchas.
holding-axis = fuerza
none-settles = Con esta posición, ninguna marcha se estabiliza en esta pendiente.
nothing-in-reserve = En el cruce no queda reserva.
print-screen = Imprimir
profile-about = La carretera de principio a fin, con una marca para cada vehículo
truck-about = El vehículo en su pendiente, con una flecha por fuerza; los indicadores dicen lo mismo en cifras
driving = Se está recorriendo…
no-ride = Esto no se puede recorrer aquí: en esta carretera no hay ninguna bajada con velocidad segura, o no hay nada que perder.
class-start = Arrancar
stop = Parar
class-step = Un paso
anew = Desde el inicio
slower = Más lento
faster = Más rápido
arrow-hill = pendiente
arrow-engine = motor
arrow-retarder = ralentizador
arrow-service = frenos de servicio
arrow-resistance = rodadura, aire
gauge-speed = velocidad
gauge-gear = marcha
gauge-stage = posición
gauge-engine = motor
gauge-power = retención
gauge-brakes = frenos
class-after-stop = tras parar
exercise-back = Ejercicio anterior
exercise-on = Ejercicio siguiente
slips = Qué hace distinto el segundo vehículo
as-planned = como se planificó
gear-high = una marcha más alta
somewhat-heavier = 10 % más pesado
faster-by = { $speed } más rápido
stage-lost = posición perdida
hot-brakes = frenos calientes
they-part = Se separan en el punto { $at }.
nowhere-apart = En esta carretera no supone una diferencia digna de mención.
time-apart = { $time } { $sooner ->
    [true] antes
   *[false] después
}
no-time-apart = sin diferencia de tiempo
compared = { $name }: { $time }; tras una frenada fuerte hasta parar, { $wrong } en lugar de { $right }.
passes-limit = A partir del punto { $from }, una frenada fuerte hasta parar superaría el límite. Aquí los frenos retienen por calientes que estén; en la carretera pierden eficacia.
forgiven = Esta pendiente lo perdona. La siguiente quizá no.
class-reserve-kept = Con { $reserve } de reserva: { $gear }, a { $speed } como máximo.
class-no-gear-keeps = Con { $reserve } de reserva: ninguna marcha.

## Words of exercises with worked answers.

sheet-head = Ejercicios, serie { $seed }
blank-sheet = Hoja para trabajar
answer-sheet = Hoja con las soluciones
another-set = Otra serie
sheet-caution = Estas cifras son para enseñar. No son un consejo para ninguna carretera, ningún camión ni ninguna carga: las masas, las pendientes y las velocidades están variadas y se deja fuera mucho.
no-exercises = Ninguna bajada de esta carretera es bastante larga para plantear ejercicios.
stages-left-out = En estas condiciones no se aconseja ninguna posición del ralentizador. Se omiten los ejercicios sobre marcha y posición.
exercise = Ejercicio { $number }: { $exercise ->
    [control-speed] velocidad de control
    [gear-choice] elección de la marcha
    [braking-work] trabajo de frenado
    [haste] tiempo ganado yendo más rápido
   *[brake-heat] temperatura de los frenos
}
given-label = Datos
room-label = Su cálculo y su respuesta
steps-label = Pasos del cálculo
ask-control-speed = Un camión de { $mass } baja por una pendiente del { $grade } en { $gear }, { $stage }, sin acelerar y sin frenos de servicio. ¿Se estabiliza a una velocidad, y a cuál?
ask-gear = Solo el motor y el ralentizador deben retener un camión de { $mass } en una pendiente del { $grade }, con un { $reserve } en reserva. Abajo figuran marchas a la mayor velocidad a la que cada una se usa para retener, con las revoluciones del motor y la fuerza de retención de la posición más fuerte que permite la adherencia de los ejes motrices. ¿Cuál es la marcha más alta que conserva la reserva, y a qué velocidad?
ask-work = Un camión de { $mass } baja { $drop } en { $length } de carretera a { $speed } constantes. ¿Cuánta energía deben absorber el motor, el ralentizador y los frenos? El motor y el ralentizador absorben el { $share }: ¿cuánto queda para los frenos de servicio?
ask-time = Una bajada mide { $length }. ¿Cuánto tiempo gana un camión que la baja a { $fast } en lugar de { $slow }? ¿Cuánto crece su energía de movimiento?
ask-heat = En una bajada de { $length }, a { $speed } constantes, los frenos de servicio absorben { $power } todo el tiempo; el motor y las resistencias absorben el resto. ¿Qué temperatura tienen los frenos { $axle-place ->
    [steer] { $axles ->
        [one] del eje direccional
       *[other] de los ejes direccionales
    }
    [drive] { $axles ->
        [one] del eje motriz
       *[other] de los ejes motrices
    }
   *[trailer] { $axles ->
        [one] del eje de remolque
       *[other] de los ejes de remolque
    }
} al pie de la bajada?
settles = Se estabiliza a unos { $speed } ({ $engine-speed }): ahí la fuerza de retención es igual a lo que queda por retener.
slows-down = No se estabiliza: a cualquier velocidad de esta marcha retiene más de lo necesario y va cada vez más despacio. Puede bastar una posición más débil o una marcha más alta.
gets-away-above = No se estabiliza: por debajo de unos { $speed } retiene más de lo necesario y por encima se embala. Si llega a ir más rápido, nada lo vuelve a retener. Hace falta una marcha más baja, puesta antes de la cima; si no, deben ayudar los frenos de servicio.
gets-away = No se estabiliza: se embala a cualquier velocidad de esta marcha. Hace falta una marcha más baja, puesta antes de la cima, o una posición más fuerte si la hay; si no, deben ayudar los frenos de servicio.
gear-chosen = { $gear }, { $stage }, a { $speed } como máximo ({ $engine-speed }), con un { $reserve } en reserva. La marcha se pone antes de la cima.
no-gear-keeps = Ninguna: ni siquiera la marcha más baja conserva la reserva. Un camión así no debe bajar por ahí: menos masa u otra carretera.
work-left = Hay que absorber aproximadamente { $left }; de ellos quedan aproximadamente { $service } para los frenos de servicio.
time-saved = Aproximadamente { $time }, y la energía de movimiento es { $times } veces la de antes: eso es lo que aumenta el trabajo de los frenos cada vez que para. Aquí no se pregunta si el motor y el ralentizador retendrían el camión a esa velocidad.
warm-at-foot = Aproximadamente { $foot } al pie de la bajada: { $over ->
    [true] por encima del límite introducido de { $limit }
   *[false] no por encima del límite introducido de { $limit }, pero sin margen para parar
}. No se tienen en cuenta: una frenada hasta parar, el reparto desigual del frenado, el ajuste de los frenos, la radiación ni que el enfriamiento varíe de un camión a otro en un factor de dos o más.
term = { $term ->
    [rolling-coefficient] Coeficiente de resistencia a la rodadura
    [drag-area] Área de resistencia al aire
    [air-density] Densidad del aire
    [air-density-ratio] Densidad del aire, dividida por la del nivel del mar
    [headwind] Viento de frente (el de cola es negativo)
    [holding-table] Fuerza de retención según las revoluciones del motor y la velocidad
    [heat-capacity] Calor que almacenan estos frenos
    [cooling] Calor que ceden a esta velocidad
    [group-share] Su parte del frenado
    [air-temperature] Aire
    [brakes-at-crest] Frenos en la cima
    [sine] Seno del ángulo de la carretera
    [cosine] Coseno del ángulo
    [gravity] Fuerza de la gravedad a lo largo de la carretera
    [rolling] Resistencia a la rodadura
    [against-air] Velocidad respecto al aire
    [air] Resistencia al aire
    [demand] Queda por retener
    [holding-against-demand] Fuerza de retención, frente a lo que queda por retener
    [compared-at] Calculado a
    [length-in-feet] Longitud en pies
    [gravity-work] Trabajo de la gravedad
    [rolling-work] Absorbe la resistencia a la rodadura
    [air-work] Absorbe la resistencia al aire
    [work-left] Queda por absorber
    [carried-work] Motor y ralentizador
    [service-work] Frenos de servicio
    [slow-time] Tiempo a la velocidad menor
    [fast-time] Tiempo a la velocidad mayor
    [time-saved] Tiempo ganado
    [motion-energy] Energía de movimiento, la mayor entre la menor
    [group-power] Potencia en estos frenos
    [time-down] Tiempo de bajada
    [time-constant] Constante de tiempo: calor almacenado entre calor cedido
    [settled] Temperatura que alcanzarían a la larga
    [ahead] Parte de ese aumento que aún falta al pie de la bajada
   *[at-foot] Al pie de la bajada
}
gear-at = { $gear } a { $speed }
enough = { $enough ->
    [true] suficiente
   *[false] insuficiente
}

## Times.

less-than-a-minute = menos de un minuto
minutes = { $count } { $count ->
    [one] minuto
   *[other] minutos
}
hours-and-minutes = { $hours } h { $count } min

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

by-place = { $how ->
    [down] a más tardar en { $at }
   *[up] desde { $at }
}
asks = una pendiente constante de { $grade }: eso es lo que exige la bajada, y más que en ningún otro sitio a lo largo de { $length } desde el punto { $from }
engage = Ponga la marcha antes de { $at-start ->
    [true] arrancar
   *[false] la cima
} y consérvela hasta el pie de la bajada, en el punto { $foot }.
engage-first = { $at-start ->
    [true] Ponga la primera de estas marchas antes de arrancar. Baje de marcha antes del lugar indicado; suba de marcha solo después.
   *[false] Ponga la primera de estas marchas antes de la cima. Baje de marcha antes del lugar indicado; suba de marcha solo después.
}
chosen = { $lowest ->
    [true] La marcha más baja se
   *[false] Se
} ha elegido para { $asks }.
ruled-out-by = Lo que impide esta bajada es { $asks }.
not-assessed-on = Sin evaluar: { $span }. No se conoce la pendiente en esa parte.
brakes-warmer = frenos { $by } más calientes
doubted = , en duda: el error de las altitudes puede ser igual de grande
and-more = y { $count } más
brakes-at-places = { $needed ->
    [true] Los frenos de servicio son necesarios
   *[false] Los frenos de servicio actúan un poco
} en: { $places }.
in-doubt = La marcha retiene el vehículo en promedio. No se pueden descartar tramos cortos de hasta { $grade }: tenga listos los frenos de servicio.
touches-label = Dónde gana velocidad sin los frenos de servicio
legs-label = Marcha por marcha
between-legs = Entre una y otra, el vehículo reduce la velocidad para la marcha siguiente o la aumenta.
slowest-leg = La parte más lenta
untouched-label = Sin tocar nunca los frenos de servicio
no-untouched = Ninguna marcha retiene sola el vehículo en todas las pendientes grabadas.
one-gear-label = Una sola marcha en toda la bajada
deciding = { $count ->
    [one] La bajada:
   *[other] Decide la bajada { $number } de { $count }:
}
decided = { deciding } <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, mantenga <strong>{ $speed }</strong> desde la cima en el punto <strong>{ $crest }</strong>
decided-at-start = { deciding } <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, mantenga <strong>{ $speed }</strong> desde el <strong>inicio de la carretera</strong>
none-decided = { deciding } <strong>no se encontró ninguna velocidad segura</strong> desde la cima en el punto <strong>{ $crest }</strong>. Con los datos introducidos, no baje por ella con este camión.
none-decided-at-start = { deciding } <strong>no se encontró ninguna velocidad segura</strong> desde el <strong>inicio de la carretera</strong>. Con los datos introducidos, no baje por ella con este camión.

## Words of the reasons.

governs-label = Por qué no más rápido
untouched-governs = Su elección en «Condiciones»: a más velocidad, alguna pendiente grabada exigiría los frenos de servicio.
governed-by = { $governs ->
    [speed-limit] El límite de velocidad introducido, { $limit }.
    [posted] Un límite señalizado en el camino: toda la bajada se hace sin superarlo, o bien la marcha para ir más rápido no retendría el vehículo a ese límite.
    [engine-speed] Las revoluciones máximas permitidas del motor.
    [control] { $off ->
        [true] { $verdict ->
            [retarder-holds] El control de la velocidad: en cualquier marcha más rápida, el vehículo no quedaría retenido con { $reserve } en reserva, o un tramo corto exigiría demasiado de los frenos de servicio.
            [little-in-reserve] El control de la velocidad: en cualquier marcha más rápida, el vehículo no quedaría retenido, ni siquiera sin reserva. Ya aquí no se alcanza la reserva de { $reserve }.
            [needs-service-brakes] El control de la velocidad: a más velocidad, el motor solo haría menos de la mitad de la retención, sea cual sea el calor de los frenos.
           *[no-safe-speed] El control de la velocidad: a más velocidad, el motor solo haría menos de la mitad de la retención, sea cual sea el calor de los frenos.
        }
       *[false] { $verdict ->
            [retarder-holds] El control de la velocidad: en cualquier marcha más rápida, el ralentizador no retendría el vehículo con { $reserve } en reserva, o un tramo corto exigiría demasiado de los frenos de servicio.
            [little-in-reserve] El control de la velocidad: a ninguna velocidad hay { $reserve } en reserva; más rápido, el ralentizador retendría aún menos.
            [needs-service-brakes] El control de la velocidad: aquí el motor y el ralentizador no retienen solos el vehículo; más rápido, harían aún menos.
           *[no-safe-speed] El control de la velocidad: aquí el motor y el ralentizador no retienen solos el vehículo; más rápido, harían aún menos.
        }
    }
    [curve] Las curvas: entre ellas el vehículo no podría alcanzar una velocidad mayor, o la marcha para ella sería demasiado alta en la curva más lenta.
    [grip] La adherencia de los ejes motrices en esta calzada.
   *[heat] El calor de los frenos: a más velocidad, una frenada fuerte hasta parar los llevaría a más de { $heat-limit }.
}
no-speed-because = { $because ->
    [speed-limit] Incluso la velocidad más baja probada, { $slowest }, supera el límite de velocidad introducido.
    [posted] Incluso a { $slowest }, la velocidad más baja probada, la marcha no serviría para el límite señalizado más bajo.
    [engine-speed] Incluso a { $slowest }, la velocidad más baja probada, el motor giraría demasiado rápido.
    [control] Incluso a { $slowest }, la velocidad más baja probada, el ralentizador no retiene el vehículo.
    [curve] Incluso a { $slowest }, la velocidad más baja probada, todas las marchas son demasiado altas para la curva más lenta.
    [grip] Incluso a { $slowest }, la velocidad más baja probada, a los ejes motrices les falta adherencia para retener el vehículo.
   *[heat] Incluso a { $slowest }, la velocidad más baja probada, los frenos alcanzarían aproximadamente { $reached } tras una frenada fuerte hasta parar; el límite es { $limit }.
}
else-another-road = Si eso no se puede cambiar, tome otra carretera.
note-stages-withheld = { $why ->
    [snow] Con nieve o hielo no se aconseja ninguna posición del ralentizador: los ejes motrices podrían perder la adherencia. Las recomendaciones no coinciden (algunos fabricantes admiten la posición más débil), y aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección. En caso de duda, no empiece a bajar: espere a que la carretera haya sido tratada.
    [ice] Con nieve o hielo no se aconseja ninguna posición del ralentizador: los ejes motrices podrían perder la adherencia. Las recomendaciones no coinciden (algunos fabricantes admiten la posición más débil), y aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección. En caso de duda, no empiece a bajar: espere a que la carretera haya sido tratada.
    [empty-in-the-wet] Con el vehículo vacío y la calzada mojada no se aconseja ninguna posición del ralentizador: los ejes motrices llevan poco peso y podrían perder la adherencia. Las recomendaciones no coinciden (algunas admiten posiciones débiles), y aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección.
   *[no-trailer-in-the-wet] Sin remolque ni semirremolque y con la calzada mojada no se aconseja ninguna posición del ralentizador: los ejes motrices llevan poco peso y el vehículo tractor podría girar sobre sí mismo. Las recomendaciones no coinciden (algunas admiten posiciones débiles), y aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección.
}
note-wet-cap = Calzada mojada: del ralentizador se cuenta, como máximo, con una fuerza igual a la mitad de la adherencia de los ejes motrices. Si las ruedas motrices patinan, baje una posición del ralentizador; algunas recomendaciones dicen que se desconecte del todo.
note-hold-by-hand = Esta caja de cambios elegiría las marchas por sí sola: póngala en modo manual para que conserve la marcha, y ponga la marcha a mano antes de cada cima.
note-shifts-up-by-itself = Si el motor gira demasiado rápido, esta caja sube de marcha por sí sola y el ralentizador se desconecta: las velocidades indicadas quedan por debajo.
note-starts-in-descent = La carretera empieza en medio de una bajada. No se sabe qué han soportado los frenos antes: escriba su temperatura en «Condiciones».
note-partly-unassessed = Una parte de la carretera no se pudo evaluar. Se deja en blanco, y en ella no se aconseja nada.
note-poor-heights = Las altitudes de este archivo son malas: las pendientes son solo orientativas. Compárelas con las señales.
note-hot-elsewhere = Fuera de las bajadas hay un lugar donde una frenada fuerte hasta parar superaría el límite de los frenos. Búsquelo en el gráfico y vaya más despacio ahí.
note-cannot-climb = Ni siquiera con el acelerador a fondo puede este camión subir una parte de esta carretera, en ninguna marcha.

## Words of the card for the cab.

card-head = Ficha
to-card = La ficha para la cabina, para imprimir
card-sentence = Para la cabina, para no necesitar ninguna pantalla en el camino: imprímala y dóblela por la mitad. Léala antes de la cima, con el vehículo estacionado.
print-card = Imprimir la ficha
save-picture = Guardarla como imagen
picture-name-ending = { $reversed ->
    [true] -sentido-contrario-ficha.png
   *[false] -ficha.png
}
save-rows = Guardar sus filas como CSV
marker-label = Hito o cuentakilómetros al inicio de la carretera
counts-down = los hitos van hacia atrás
markers-miss = Los hitos no alcanzan para toda la carretera: con lo introducido irían de { $start } al inicio a { $end } al final, y no hay hitos por debajo de cero. Corrija el hito del inicio o el sentido en que van. Mientras tanto, la ficha lleva distancias desde el inicio.
card-is-old = No la use: esta ficha corresponde a datos anteriores
do-not-descend = NO BAJE con los datos introducidos
no-speed-for = No se encontró velocidad segura para { $count ->
    [one] la bajada
   *[other] las bajadas
} { $numbers }. Tome otra carretera, o planifique de nuevo con menos carga o en un día mejor. Tienen prioridad las señales y las reglas de la conducción profesional.
facts-of = { $mass } · { $retarder } · { $surface }, { $load } · aire a { $air } · frenos a { $brakes } al inicio
card-heads =
    .descent = bajada, de – a
    .grade = pendiente
    .gear = marcha
    .stage = posición
    .hold = mantener
    .know = qué hay que saber
mile = milla
card-asks = exige { $grade }, { $length }
know-snub = Frenada corta de { $from } a { $to }, suelte el freno, repita.
know-in-doubt = En duda tramos cortos de hasta { $grade }: tenga listos los frenos de servicio.
know-easing = Donde se suaviza, en el { $at }, no es el final: siga en la misma marcha.
know-begins-unknown = No se sabe cómo empieza: la carretera anterior no se pudo evaluar.
know-slow-curves = { $count } curvas exigen menos que la velocidad que hay que mantener; la más lenta: { $speed }, { $at }.
know-slow-curve = Curva más lenta: { $speed }, { $at }.
know-posted = Límite señalizado: { $speed }, { $km }, { $miles }.
know-ramp = Rampa de escape en el { $at }.
know-quiet = Zona de silencio en el { $at }: puede estar prohibido el freno motor.
know-at-foot = Al pie de la bajada: { $name }, { $at }.
to-stop-at-foot = un lugar donde hay que parar
know-cut-short = No se sabe cómo continúa.
card-more = { $count ->
    [one] Y 1 bajada más de esta carretera que no está en esta ficha: planifique la carretera por partes.
   *[other] Y { $count } bajadas más de esta carretera que no están en esta ficha: planifique la carretera por partes.
}
before-crest-head = Antes de la cima
stop-at-check = Pare en la zona de comprobación de frenos, { $at }: ajuste de los frenos, fugas, tambores o discos, neumáticos, carga.
stop-where-allowed = Pare donde esté permitido: ajuste de los frenos, fugas, tambores o discos, neumáticos, carga.
try-retarder = Suelte el acelerador un momento: ¿actúa el ralentizador, en cada posición?
look-ahead = Tiempo, señales, cierres: ¿sigue siendo la carretera que se planificó?
gear-before = Ya antes del { $at }: marcha { $gear } puesta, { $stage }.
gear-at-start = Antes de ponerse en marcha: marcha { $gear }, { $stage }. La carretera empieza en la bajada.
shifting = { $in-legs ->
    [true] En la bajada cambie de marcha solo como indican las filas.
   *[false] En la bajada no cambie de marcha.
}
in-trouble-head = Si pierde el control de la velocidad
brake-now = Frene fuerte ahora y pare, mientras los frenos estén lo bastante fríos para lograrlo.
stay-in-gear = Siga con la marcha puesta. Nunca ponga punto muerto (neutro), nunca pise el embrague, no cambie a una marcha más baja a alta velocidad.
any-way-up = Tome una rampa de escape o cualquier camino que suba. Aquí no hay ninguna rampa introducida; puede haberlas.
take-ramp = Tome la rampa de escape en el { $ramps }, o cualquier camino que suba.
between-ramps = {" "}o en el{" "}
warn-others = Luces y bocina: avise a los demás.
no-places-entered = No hay ninguno introducido. Eso no significa que no existan.
card-cautions = Calculado con sus datos y con altitudes grabadas, que contienen errores; no es un permiso para bajar. No puede ver el ajuste de los frenos, los neumáticos, la calzada, el estado del tiempo, el tráfico ni la carga. Tienen prioridad las señales, la ley, su empresa y el fabricante del vehículo. Los frenos de servicio siguen siendo el medio para parar. En caso de duda: pare arriba, vaya más despacio, tome otra carretera.
rows-name-ending = { $reversed ->
    [true] -sentido-contrario-bajadas.csv
   *[false] -bajadas.csv
}

## Words of the page's frame: names, buttons, files, progress, trouble.

made-for = Calculado para: { $facts }.
to-truck = ¿Son su camión y sus condiciones? Introduzca los suyos.
to-class = Clase
targets = Tamaño de botones y campos
usual-targets = sin guantes
large-targets = con guantes
purpose = Cómo bajar cada pendiente de una carretera: marcha, posición del ralentizador, velocidad, calor de los frenos
road-section = Carretera
descents-section = Bajadas
sections = Secciones de esta página
skip-to-answer = Ir a la respuesta
units = Unidades
metric = km/h · m · t
imperial = mph · ft · lb
theme = Claro o nocturno
light = claro
night = nocturno
system = automático
choose-file = Elegir un archivo GPX
or-drop = o suelte uno en cualquier parte de la página
drop-here = Suelte el archivo GPX: se lee solo en este equipo
stays-here = Nada sale de este equipo.
demo-mark = ejemplo inventado
demo-sentence = Esta es una carretera inventada, no un puerto de montaña real. Elija su propio archivo GPX, o suéltelo en cualquier parte de la página; se queda en este equipo.
show-demo = Mostrar el ejemplo
reverse = Invertir el sentido
reversed-mark = en sentido contrario al grabado
course = Recorrido del archivo
which-track = { $file } contiene { $count } carreteras. ¿Por cuál va a conducir?
course-unusable = sin altitudes o demasiado corta
leave-it = Dejarlo como está
which-order = { $count } archivos: ¿en qué orden se recorren?
which-order-sentence = Se unen de arriba abajo. Donde uno termina a más de 2 km del inicio del siguiente, el orden o un sentido es incorrecto.
join = { $count ->
    [one] Abrir este archivo
   *[other] Unir { $count } archivos
}
leg-up = Recorrer { $name } antes
leg-down = Recorrer { $name } después
turn-leg = En sentido contrario
leave-leg = Omitir { $name }
same-question = { $count } archivos coinciden sobre el terreno. ¿Muestran la misma carretera?
same-sentence = Como la misma carretera, se convierten en una: se usan las altitudes de todos; donde difieren más de lo que pueden errar, se usa la más empinada y se indica el lugar. El plan nunca es más rápido que el más rápido de cada uno por separado. Nada se combina por sí solo.
combine = La misma carretera: combinar { $count } grabaciones
two-alike = { $first } y { $second } coinciden sobre el terreno. Para combinarlos en una carretera, deje fuera los demás archivos.
meets = { $new } coincide con { $before }. ¿Muestran la misma carretera?
compare-both = Comparar: ambos lado a lado
join-both = Unir: uno después del otro
combined = Una carretera de { $count } grabaciones: { $files }
take-apart = Volver a separarlas
part-of = Una parte de la carretera: { $span } según lo grabado.
whole-road = Usar toda la carretera
course-choice = { $unnamed ->
    [true] { $number } · { $route ->
        [true] ruta
       *[false] recorrido
    } sin nombre · { $length }
   *[false] { $number } · { $name } ({ $route ->
        [true] ruta
       *[false] recorrido
    }) · { $length }
}
phase = { $phase ->
    [reading] Leyendo el archivo
    [surveying] Calculando altitudes y pendientes
   *[planning] Calculando marchas, velocidades y calor
}
starting = Iniciando
cancel = Cancelar
close = Cerrar
try-again = Intentar otra vez
trouble-head-file = No se puede usar «{ $name }»
trouble-head-many-files = Demasiados archivos a la vez
trouble-head-not-a-file = Eso no era un archivo
trouble-head-built-in-missing = No se pudo cargar la carretera inventada
trouble-head-cannot-start = No se pudo iniciar el cálculo
trouble-head-stopped = El cálculo se detuvo por un error propio
trouble-head-cancelled = Cancelado
trouble-head-truck = No se puede calcular este camión
trouble-head-truck-file = No se puede usar ese archivo de camión
trouble-head-project-file = No se puede usar ese proyecto
trouble-head-cannot-export = No se pudo guardar el archivo
trouble-head-no-picture = No se pudo guardar la ficha como imagen
trouble-many-files = Se pueden unir hasta 20 archivos en una sola carretera. Elija menos.
trouble-not-a-file = Suelte un archivo GPX, o use el botón para elegir uno.
trouble-built-in-missing = La página en sí funciona: elija un archivo GPX propio.
trouble-cannot-start = El navegador no cargó la parte que calcula. Recargue la página; si eso no ayuda, use un navegador de los últimos años con WebAssembly y los procesos en segundo plano (workers) activados.
trouble-stopped = Se ha iniciado de nuevo, y no se ha perdido nada de lo que usted introdujo. Cambie el último dato, o intente otra vez. Para un informe: { $detail }
trouble-cancelled = Las cifras de abajo todavía corresponden a los datos anteriores. Para calcular las nuevas, cambie un dato o intente otra vez.
trouble-no-picture = Este navegador no la dibuja. Imprima la ficha en su lugar: si la imprime en un archivo, obtiene un PDF.
trouble-cannot-export = No se pudo cargar la parte que lo escribe, o el navegador no permitió guardarlo. Recargue la página, o pruebe con otro navegador.
former-stays = La carretera que se muestra abajo es la anterior.
not-current = Las cifras mostradas corresponden a los datos o a la carretera anteriores.
check-entry = Compruebe este dato:
export = Guardar cimas y cambios de marcha como GPX
export-sentence = Puntos de referencia en cada cima, en cada pie de bajada y en cada cambio de marcha o de posición, para un dispositivo que los muestre.
export-name-ending = -bajadas.gpx
no-road = Todavía no hay carretera
no-road-sentence = Elija un archivo GPX con altitudes, o suéltelo en cualquier parte de esta página. Se lee en este equipo y no va a ningún otro lugar.

## What a language says of itself.

languages = Otros idiomas
colon = :{ " " }
semicolon = ;{ " " }
tag = es
decimal-sign = ,
thousands-sign = { "\u00A0" }
number-to = a
translation-unread = Ningún profesional del transporte ha revisado todavía esta traducción. En caso de duda, vale la página en inglés.
this-page = Esta página en español

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
along-label = Cada bajada tiene su propia marcha, desde su cima en el punto:
no-safe-speed = no se encontró ninguna velocidad segura
along-more = y { $count } más en la lista de abajo
other-mode-label = { $service-brakes ->
    [in-reserve] Si permitiera frenadas cortas e intermitentes
   *[may-snub] Con los frenos de servicio en reserva
}
same-choice = La misma marcha, la misma posición y la misma velocidad.
choice-apart = { $choice }; diferencia de tiempo: { $time } { $less ->
    [true] menos
   *[false] más
}.
heavier-label = Si pesa un 10 % más
mass-out-of-range = Esa masa está fuera de los límites admitidos.
heat-label = Frenos de servicio
brakes-at = Aproximadamente { $hottest } en el momento más caliente; { $after-stop } tras una frenada fuerte hasta parar (límite: { $limit }).
snub-between = Frenadas cortas e intermitentes: al llegar a { $from }, frene hasta { $to } en aproximadamente { $on } s, suelte el freno y repita después de aproximadamente { $off } s donde la bajada exige más; en total, aproximadamente { $count ->
    [one] 1 frenada
   *[other] { $count } frenadas
}. No baje pisando el freno de forma continua.
parked = Planifique con el vehículo estacionado. No lo use mientras conduce.
cautions =
    .aid = Una ayuda para planificar y enseñar: no es una instrucción ni la aprobación de una carretera.
    .worked-out = Calculado con sus datos y con altitudes grabadas, que contienen errores.
    .unseen = No puede ver el ajuste de los frenos, los neumáticos, la calzada, el estado del tiempo, el tráfico, los cierres de carretera ni cómo va colocada la carga.
    .first = Tienen prioridad las señales, la ley, las normas de su empresa y los límites del fabricante.
    .means = Los frenos de servicio siguen siendo el medio para parar.
    .doubt = En caso de duda: pare arriba, vaya más despacio o tome otra carretera.
descents-head = { $count ->
    [0] Sin bajadas
    [one] 1 bajada
   *[other] { $count } bajadas
}
order = Orden de la lista
worst-first = primero la peor
road-order = en el orden de la carretera
columns =
    .descent = bajada
    .from = desde
    .length = longitud
    .drop = desnivel
    .mean = pend. media
    .asks = exige
    .gear = marcha
    .stage = posición
    .hold = mantener
    .if-stopped = tras parar
descent = Bajada { $number }
details-of = Bajada { $number }: detalles

## Words of one descent's details, and of its table.

sign-label = Como lo indicaría una señal
sign = { $grade } en { $length }
advice-label = Cómo bajar
no-advice = No se encontró ninguna velocidad que respete los límites. Con los datos introducidos, no baje por ella con este camión.
falls-short = En la posición máxima falta un { $share } de la retención que exige la bajada: los frenos de servicio tienen que ayudar.
more-than-asked = En la posición máxima hay un { $share } más de la retención que exige la bajada.
advice-in-full = Marcha { $gear }, como máximo { $stage }, { $speed } a { $engine-speed }. { $reserve } { $time } desde la cima hasta el pie de la bajada.
way-label = Posiciones durante la bajada
relief-label = Dónde se suaviza
eases-over = { $span }: llano o en subida a lo largo de { $length }. No cambie a una marcha más alta: la bajada continúa.
grades-label = Qué pendiente tiene
mean-grade = Pendiente media: { $grade }.
steepest-over = { $grade } en el tramo más empinado de { $length }, desde el punto { $from }{ $doubt }.
too-short-for-heights = ; en una distancia tan corta las altitudes no son fiables
curves-label = Curvas
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
slowest-curve = La más lenta: como máximo { $speed } en el punto { $at }, { $side }, radio de aproximadamente { $radius }.
curves-estimated = Los radios son estimaciones a partir del recorrido; no se conocen el peralte, la visibilidad ni el estado de la calzada.
side = { $left ->
    [true] a la izquierda
   *[false] a la derecha
}
climb-label = Subir la misma pendiente
climbs-in = Con el acelerador a fondo la sube en la marcha { $gear } a aproximadamente { $speed }. La marcha para bajar es a menudo más baja.
climbs-in-none = Con el acelerador a fondo no la sube en ninguna marcha.
cut-short = La bajada se corta donde la carretera ya no se puede evaluar. No se sabe cómo continúa.
brakes-arrive = Los frenos llegan a la cima con aproximadamente { $heat }.
table-of = Qué hace cada marcha y posición con una pendiente de { $grade } a { $height } sobre el nivel del mar, sin acelerador y sin los frenos de servicio
table-heads =
    .gear = marcha
    .speeds = velocidades utilizables
    .reserve = reserva a la más alta
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
table-chosen = aconsejada
fall-in-part = { $all } (de ellos, { $blank } sin evaluar)
no-work-counted = En { $length } sin evaluar no se cuenta ningún trabajo de frenado.
whole-way = Toda la carretera: { $time }, { $fall } de desnivel en bajada. El ralentizador y el motor absorben { $holding }; los frenos de servicio, { $service }.
slowest-climb = Velocidad más baja en una subida: aproximadamente { $speed }.
less-than = menos del { $share }
share-and-fuel = Parte de los frenos de servicio en el frenado: { $share }. Combustible: aproximadamente { $fuel }.
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

change-label = Qué lo cambiaría
light-enough = Con { $mass } o menos, el ralentizador retendría el vehículo con la reserva.
no-lighter-load = Ninguna carga más ligera cambiaría eso.
more-retarding = Con un { $share } más de retención de la que tiene este camión, el ralentizador lo retendría con la reserva.
reserve-kept = Tal como está, se puede conservar en reserva un { $kept } como máximo, no un { $asked }.
cool-enough = Con los frenos a no más de { $at } en la cima se respetaría el límite: deje antes que se enfríen.
carried-label = Hacia la subida siguiente
meets-rise = Retenido así hasta el pie de la bajada, el vehículo entra en la subida en el punto { $at } a aproximadamente { $speed }. No deje de retenerlo antes de tiempo para entrar más rápido.
sure-label = Qué fiabilidad tiene
driven-so = Bajada calculada { $runs } veces, con las pendientes, la masa, la resistencia, el viento, el ralentizador y los frenos cada uno algo desviado.
in-none = En ninguna de las { $runs } veces
in-all = En las { $runs } veces
in-some = En { $some } de las { $runs } veces
speed-held = { $of } el ralentizador por sí solo retuvo el vehículo a esa velocidad.
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
too-long-to-be-sure = Esta carretera es demasiado larga para calcularla 256 veces: calcule una parte de ella para saber qué fiabilidad tiene su plan.
studying = Calculando la fiabilidad: hecho el { $share }
not-yet = …
lost-label = Si falla el ralentizador
stops-anywhere = Si frena fuerte antes de que pasen dos segundos desde el fallo, el vehículo se para dentro del límite de temperatura de los frenos desde cualquier punto de la bajada.
stops-until = Si frena fuerte antes de que pasen dos segundos desde el fallo, el vehículo se para dentro del límite de temperatura de los frenos solo hasta el punto { $until }; pasado ese punto, ya no.
stops-nowhere = Ni siquiera en la cima respetaría una frenada fuerte hasta parar el límite de temperatura de los frenos.
brakes-hold = Los frenos de servicio también podrían retenerlo a su velocidad hasta el pie de la bajada, dentro del límite.
brakes-hold-from = Solo a partir del punto { $from } podrían los frenos de servicio retenerlo a su velocidad hasta el pie de la bajada; antes de ese punto, pare.
brakes-hold-nowhere = Los frenos de servicio no podrían retenerlo hasta el pie de la bajada: pare.
neither-from = A partir del punto { $from }, ni parar ni retenerlo hasta el pie respetaría el límite.
ramp-met = Rampa de escape en el punto { $at }: rodando desde el punto { $lost-at } sin ningún freno, el vehículo llegaría a ella a aproximadamente { $speed }; un lecho horizontal de grava redonda y suelta necesitaría medir aproximadamente { $needs }.
no-ramp-entered = No hay ninguna rampa de escape introducida en esta bajada; eso no significa que no exista ninguna.
adjustment-label = Frenos desajustados
long-stroke = Si los frenos de tambor de un grupo de ejes tuvieran en frío una carrera de 1¾ pulgadas (44 mm), una cámara de freno del tamaño 30 llegaría a su límite de 2 pulgadas (51 mm) a { $at }: por encima no se cuentan aquí, y los demás están más calientes. Con 1⅝ pulgadas (41 mm) son { $shorter }; con 1½ pulgadas (38 mm), { $short }.
half-braked = Si los frenos de disco de un grupo de ejes frenaran solo la mitad, los demás estarían más calientes en toda la carretera.
out-of-adjustment = { $axles }: aproximadamente { $heat } tras una frenada fuerte hasta parar{ $over }.
axles = { $axle-place ->
    [steer] Eje direccional
    [drive] Ejes motrices
   *[trailer] Remolque
}
slowing-label = Reducir la velocidad para lo que viene
slowing-sentence = Si desde ahí va sin acelerador y en la posición máxima, el ralentizador por sí solo reduce la velocidad de este camión hasta la indicada, y los frenos de servicio siguen fríos. Tienen prioridad las señales y lo que usted vea.
slowing-heads =
    .place = en el punto
    .what = por qué
    .speed = reducir a
    .where = posición máxima desde
    .gear = marcha
    .brakes = solo con los frenos de servicio
full-stage-from = { $from }, a { $speed }
rest-below = ; por debajo de { $speed }, los frenos de servicio
brake-early = no basta: frene con antelación
standstill = parar
by-brakes-alone = { $way }, después aproximadamente { $after }
curve-of = curva, radio de aproximadamente { $radius }
place-to-stop = un lugar donde hay que parar
town = pueblo o ciudad
slowing-more = { $count ->
    [one] Y 1 más que exige menos.
   *[other] Y { $count } más que exigen menos.
}
driven-in-short = Calculada { $runs } veces con las pendientes, la masa, el viento, el ralentizador y los frenos algo desviados
held-and-kept = el ralentizador retuvo el vehículo todas las veces, y los frenos quedaron siempre dentro del límite.
shares-held = el ralentizador por sí solo retuvo el vehículo en el { $held } de las veces; los frenos quedaron dentro del límite en el { $kept }.
evidence-head = Datos de contraste
evidence-sentence = Con qué se contrasta el cálculo: valores de fuera de este proyecto, cada uno con su fuente y cómo se obtuvo, y lo que resulta aquí. Las mismas filas son las pruebas del proyecto.
evidence-count = { $known ->
    [one] { $rows } valores; 1 de ellos difiere de su fuente en más de su tolerancia, y está marcado.
   *[other] { $rows } valores; { $known } de ellos difieren de su fuente en más de su tolerancia, y están marcados.
}
evidence-heads =
    .what = qué
    .source = valor de la fuente
    .ours = aquí
    .difference = diferencia
evidence-difference = difiere
evidence-missing = No se pudieron cargar las filas. Abra esto otra vez o recargue la página.
measured-head = Lo que retuvo hoy
measured-sentence = ¿Mantuvo una velocidad constante en una bajada solo con el ralentizador, sin acelerador y sin frenos de servicio? Introduzca lo que vio, después y con el vehículo estacionado: así se sabe lo que su ralentizador da de verdad con la masa y las condiciones introducidas arriba.
measured-fields =
    .gear = Marcha
    .stage = Posición
    .engine-speed = Revoluciones del motor
    .speed = Velocidad constante
    .grade = Pendiente, cuesta abajo
    .place = o bien: punto de la carretera mostrada
measured-place-hint = Si se indica un punto, se toman en su lugar la pendiente y la altitud de ese punto.
measure = Calcularlo
measured-missing = Introduzca la marcha, la posición, las revoluciones del motor y la velocidad constante, y además una pendiente cuesta abajo o un punto en una bajada de la carretera mostrada, todo en números.
held-with = A { $engine-speed } retuvo con { $power }; los datos del camión dan { $assumed }. Eso es el { $share } de lo que indican para el ralentizador.
not-measured-no-such-stage = Este camión no tiene esa marcha o esa posición.
not-measured-off = Con el ralentizador desconectado no se sabe nada de él: introduzca una posición.
not-measured-not-pushed = Esa pendiente no empuja este camión a esa velocidad: introduzca un tramo más empinado.
not-measured-gauges-differ = En esa marcha y a esa velocidad el motor giraría a aproximadamente { $engine-speed }: está mal la marcha, la relación del eje, el neumático o una de las dos cifras.
not-measured-out-of-reach = El ralentizador tendría que dar el { $share } de lo que indican sus datos. Es más probable que la masa, la pendiente o la posición no sean las introducidas, o que ayudaran los frenos de servicio.
use-measured = Planificar con este valor
undo-measured = Volver a los datos del camión
scale-in-use = Los planes cuentan con el { $share } de los datos del ralentizador.

## Words of two roads side by side.

two-head = Dos carreteras
keep-beside = Guardar esto para compararlo con lo siguiente
keep-beside-sentence = Para comparar dos carreteras, dos camiones o dos condiciones: lo que se muestra ahora queda al lado de lo que elija después.
two-next = Las dos son todavía iguales: elija otro archivo, invierta la carretera o cambie el camión o las condiciones.
end-two = Terminar la comparación
swap = Intercambiar las dos
swap-sentence = Al intercambiarlas, cada carretera lleva consigo su camión, sus condiciones y sus lugares.
two-heads =
    .what = {""}
    .kept = guardada
    .shown = mostrada
    .difference = diferencia
two-row = { $row ->
    [truck] camión, condiciones
    [worst] peor bajada
    [descents] bajadas
    [hold] velocidad a mantener más baja
    [hottest] frenos más calientes tras una frenada fuerte hasta parar
    [braked] frenos de servicio usados en bajadas, también por curvas y lugares
    [service] trabajo de los frenos de servicio
    [holding] trabajo del ralentizador y del motor
    [down] tiempo en las bajadas
    [up] tiempo en subidas del 2 % o más
    [crawl] velocidad más baja en una subida
    [time] tiempo total
    [rise] desnivel de subida
    [fall] desnivel de bajada
    [length] longitud
    [curves] curvas en las que hay que reducir la velocidad
    [checks] zonas de comprobación de frenos introducidas
    [ramps] rampas de escape introducidas
    [parking] estacionamientos introducidos
    [blank] sin evaluar
    [fuel] combustible, aproximado
   *[cost] costo con los precios introducidos
}
no-difference = igual
two-caution = Ninguna fila decide por sí sola, y nada de esto es un permiso para bajar. Lo que está sin evaluar no entra en estas cifras. Tienen prioridad las señales, los cierres de carretera y las normas de su empresa.
rate-labels =
    .fuel = Precio del combustible
    .time = Costo del camión y del conductor
rate-units-metric =
    .first = por litro
    .second = por hora
rate-units-imperial =
    .first = por galón
    .second = por hora
rank = Comparar estas { $count } carreteras
ranked-sentence = Cada una con el camión y las condiciones introducidos, primero la que tiene la peor bajada. Abra una y guarde otra al lado.
ranking = en cálculo
open-ranked = Abrir
beside-ranked = Guardar al lado
ranked-ends = sentido
ranked-labels =
    .length = longitud
    .brakes = frenos tras parar
    .hold = menor velocidad a mantener
    .time = tiempo
rank-again = El camión o las condiciones han cambiado: calcular otra vez las carreteras

ranked-so-far = Carreteras: { $done } de { $count } calculadas
ranked-roads = { $count } carreteras

## Words of places and posted limits along the road.

places-head = Lugares y límites señalizados
places-nav = Lugares
places-sentence = { $count ->
    [0] Todavía no hay ninguno en esta carretera. Eso no significa que no existan: busque por su cuenta las zonas de comprobación de frenos, las rampas de escape, los semáforos y los límites.
    [one] Hay uno en esta carretera. Puede haber más.
   *[other] Puede haber más que estos.
} Proceden de los puntos de referencia (waypoints) del archivo; añada otros donde está el cursor en la imagen, o por su distancia. Se guardan en este equipo.
put-here = Añadir un lugar aquí
put-at = Añadir un lugar en
put = Añadir
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
kind-label = Tipo
name-label = Nombre
at-label =
    .at = En
    .from = Desde
    .to = Hasta
limit-label = Límite
set-the-limit = La velocidad y el final son supuestos y ya cuentan. Ponga lo que dice la señal.
quiet-zone-caution = Aquí una señal puede prohibir el freno motor. El plan sigue contando con el ralentizador: donde la señal lo prohíba, baje más despacio, en una marcha más baja, y mantenga fríos los frenos de servicio.
take-off = Quitar
not-on-part = no está en la parte mostrada
off-road = Ese punto no está en esta carretera: la carretera va de { $first } a { $last } { $unit }.
no-stretch = Un límite debe terminar más adelante de donde empieza.
too-many-things = Caben cien como máximo. Quite uno antes.
show-all-places = Mostrar los { NUMBER($count) }

## Words of the entries of truck and day.

truck-head = Camión
day-head = Condiciones
preset-label = Empezar con un camión parecido
preset = { $preset ->
    [five-axle36] { $units ->
        [metric] Conjunto de cinco ejes, 36,3 t
       *[imperial] Conjunto de cinco ejes, 80 000 lb
    }
    [five-axle40] { $units ->
        [metric] Conjunto de cinco ejes, 40 t
       *[imperial] Conjunto de cinco ejes, 88 200 lb
    }
    [five-axle40-both] { $units ->
        [metric] Conjunto de cinco ejes, 40 t, hidrodinámico y freno motor
       *[imperial] Conjunto de cinco ejes, 88 200 lb, hidrodinámico y freno motor
    }
    [five-axle-empty] { $units ->
        [metric] Conjunto de cinco ejes, vacío, 14,5 t
       *[imperial] Conjunto de cinco ejes, vacío, 32 000 lb
    }
    [six-axle44] { $units ->
        [metric] Conjunto de seis ejes, 44 t
       *[imperial] Conjunto de seis ejes, 97 000 lb
    }
    [drawbar40] { $units ->
        [metric] Camión rígido con remolque, 40 t
       *[imperial] Camión rígido con remolque, 88 200 lb
    }
    [refuse26] { $units ->
        [metric] Camión de basuras, automático, 26 t
       *[imperial] Camión de basuras, automático, 57 300 lb
    }
    [rigid18] { $units ->
        [metric] Camión rígido de dos ejes, 18 t
       *[imperial] Camión rígido de dos ejes, 39 700 lb
    }
    [tipper26] { $units ->
        [metric] Volquete de tres ejes, 26 t
       *[imperial] Volquete de tres ejes, 57 300 lb
    }
    [b-double] { $units ->
        [metric] Conjunto doble de nueve ejes, 62,5 t
       *[imperial] Conjunto doble de nueve ejes, 137 800 lb
    }
    [coach] { $units ->
        [metric] Autobús interurbano, 19 t
       *[imperial] Autobús interurbano, 41 900 lb
    }
   *[coach-converter] { $units ->
        [metric] Autobús interurbano, convertidor, 19 t
       *[imperial] Autobús interurbano, convertidor, 41 900 lb
    }
}
own-truck = Sus propios datos
more-entries = Supuesto para este camión
assumed = supuesto
assumed-sentence = Los valores marcados «supuesto» no tienen fuente impresa para este camión: ponga los suyos.
hint = { $entry ->
    [rated-power] La de la placa del motor o de los papeles; la tracción y el ralentizador supuesto la siguen.
    [governed-speed] Aquí el regulador corta la inyección, y cerca de aquí la caja sube de marcha por sí sola. Las ruedas pueden hacer girar más el motor: véase arriba.
    [top-gear-speed] Leídas en el cuentarrevoluciones en llano. Dan la relación del eje.
    [gross-mass] Camión, remolques y carga juntos. Péselo si puede.
    [retarder-peak-power] En la posición máxima, a las mejores revoluciones del motor para él; 0 si no lo hay.
    [highest-engine-speed] Las que permite el fabricante cuando las ruedas arrastran el motor.
    [reserve] Fuerza de retención por encima de la necesaria, guardada para errores de masa y de pendiente.
    [headwind] El viento de cola es negativo y empuja.
    [heat-limit] Temperatura máxima de los frenos, incluida una frenada fuerte hasta parar.
    [speed-limit] El señalizado o el suyo propio.
    [rolling-resistance] El extremo inferior: con neumáticos que ruedan con facilidad, el camión empuja más cuesta abajo.
    [rollover-threshold] En g, según una plataforma inclinable; una carga alta o suelta vuelca con menos. En caso de duda, un valor más bajo.
    [superelevation] Cuánto se inclinan las curvas hacia dentro; 0 si no lo sabe.
    [retarder-delay] Vuelve a retener este tiempo después de cerrarse el embrague.
    [retarding-scale] 100, salvo que se haya medido lo que retuvo hoy.
    [short-power] Lo que da durante el tiempo corto indicado abajo, partiendo de frío.
    [sustained-power] Lo que el refrigerante del motor evacua de forma continua. Los planes cuentan con esto.
    [sustained-speed] Por debajo, el refrigerante circula más despacio y evacua menos.
    [hot-share] Par del ralentizador caliente dividido entre el del frío. Los planes cuentan con el caliente.
    [lock-up-gear] En marchas más bajas, con el convertidor abierto, el motor no retiene nada.
    [shifts-up-speed] Por encima sube de marcha y el ralentizador se desconecta; suele ser el régimen máximo del motor.
    [brake-check-stop] Tiempo para enfriar en cada zona de comprobación de frenos de la carretera; con 0 se pasa de largo.
    [shaft-torque] En la posición máxima, en frío, a las revoluciones del árbol indicadas abajo.
    [shaft-speed] Revoluciones del árbol de transmisión (cardán) a las que se mide el par de arriba.
    [short-time] Lo que dura, partiendo de frío, hasta que el refrigerante la limita.
    [warm-up-time] Tras trabajar este tiempo ha perdido dos tercios de lo que llega a perder.
    [lock-up-speed] Por debajo se abre el convertidor y el motor no retiene nada.
    [drive-axle-mass] Lo que descansa sobre los ejes motrices: determina cuánto pueden retener.
    [rolling-radius] Distancia de una vuelta de la rueda cargada, dividida entre 2π; la lista de medidas lo rellena.
    [wheel-inertia] De todas las ruedas juntas; hace que el camión parezca más pesado.
    [drag-area] Coeficiente de resistencia por área frontal; con un valor menor, el camión empuja más cuesta abajo.
    [displacement] Volumen de todos los cilindros: el motor sin inyección retiene en proporción a él.
    [lowest-engine-speed] Por debajo no se cuenta ni con el motor ni con el ralentizador.
    [axle-ratio] Vueltas del árbol por cada vuelta de las ruedas; figura en la placa del eje (diferencial).
    [axle-efficiency] Las pérdidas ayudan a retener: un eje con menos pérdidas retiene menos.
    [retarder-peak-speed] Revoluciones del motor a las que retiene más.
    [retarder-exponent] Su potencia baja con las revoluciones del motor elevadas a este exponente: cuanto mayor, más rápido.
    [retarder-cut-out] Por debajo de estas revoluciones del motor se desconecta solo.
    [air-temperature] El aire frío es más denso; los frenos se enfrían hasta esta temperatura.
   *[brakes-at-start] Más alta si viene de otra bajada.
}
not-a-number = «{ $typed }» no es un número.
out-of-range = { $typed } está fuera de los límites admitidos.
enter-from = Escriba un valor de { $range }.
gears = Relaciones de las marchas
gears-hint = Empiece por la primera marcha y deje espacios entre las relaciones.
stages = Posiciones del ralentizador
stages-hint = Parte del frenado máximo en cada posición, en por ciento, primero la más débil, la última 100.
retarder-table = Ralentizador por revoluciones y posición
shaft-table-hint = Una línea por régimen: revoluciones del árbol, dos puntos (:) y después el par de cada posición en N·m, primero la más débil. Fuera de la tabla se cuenta como desconectado.
engine-table-hint = Una línea por régimen: revoluciones del motor, dos puntos (:) y después la potencia de cada posición en kW, primero la más débil. Fuera de la tabla se cuenta como desconectado.
retarder-label = Ralentizador
retarder = { $kind ->
    [none] ninguno
    [compression-release] freno motor por descompresión
    [exhaust-valve] freno de escape
    [hydrodynamic] en la transmisión, hidrodinámico
    [electromagnetic] en la transmisión, electromagnético
    [compression-and-hydrodynamic] por descompresión e hidrodinámico
    [exhaust-and-hydrodynamic] freno de escape e hidrodinámico
    [compression-and-electromagnetic] por descompresión y electromagnético
    [exhaust-and-electromagnetic] freno de escape y electromagnético
    [engine-power-table] tabla propia, en el motor
   *[shaft-torque-table] tabla propia, en el árbol de transmisión
}
transmission-label = Caja de cambios
transmission = { $transmission ->
    [manual] manual
    [automated] automatizada
   *[torque-converter] con convertidor
}
load-label = Carga
load = { $load ->
    [laden] cargado
    [empty] vacío
   *[no-trailer] sin remolque
}
mass-stays = Esto no cambia la masa: sigue introducida la de { $mass }. Introduzca lo que pesa ahora el vehículo.
gear-set-label = Número de marchas
gear-set = { $gears } marchas, { $overdrive ->
    [true] con sobremarcha
   *[false] la más alta directa
}
own-gears = como se escriben abajo
tyre-label = Neumáticos de los ejes motrices
own-tyre = radio de rodadura como se escribe
curves-name = Potencia según las revoluciones del motor
curves-about = Potencia en { $unit } según las revoluciones del motor: en trazo grueso, con la que tira; en trazo discontinuo, con la que retienen el motor y el ralentizador, posición por posición. Lo que un ralentizador en el árbol da de forma continua se dibuja para la marcha directa.
own-trucks = Sus propios camiones
truck-name = Nombre de este camión
keep-truck = Guardarlo con este nombre
rename-truck = Cambiar el nombre «{ $name }» por este
take-truck = Planificar con «{ $name }»
remove-truck = Quitar «{ $name }»
undo = Deshacer
remove = Quitar
no-name = Antes póngale un nombre.
too-many-trucks = No cabe otro camión: quite uno antes.
save-truck = Guardar como archivo
open-truck = Abrir un archivo de camión
truck-file-stem = propio
truck-file-name-ending = -camion.json
axle-groups = Ejes con freno
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
}, { $share } % del frenado
surface-label = Calzada
surface = { $surface ->
    [dry] seca
    [wet] mojada
    [snow] nieve
   *[ice] hielo
}
service-brakes-label = Frenos de servicio
service-brakes = { $service-brakes ->
    [in-reserve] en reserva
   *[may-snub] frenadas cortas e intermitentes permitidas
}
lead-label = Forma de bajar
lead = { $lead ->
    [usual] la más rápida
    [one-gear] una sola marcha
   *[untouched] sin tocar los frenos
}
lead-hint = { $lead ->
    [usual] En una bajada larga la marcha puede cambiar en lugares indicados, si eso ahorra minutos.
    [one-gear] Una sola marcha desde la cima hasta el pie, con su velocidad.
   *[untouched] Una marcha en la que el ralentizador retiene solo en todas las pendientes grabadas, también donde las altitudes están en duda.
}
usual-day = Volver a las condiciones habituales
kept-here = Los datos se guardan solo en este navegador.
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

road-head = Esta carretera tal como está grabada
both-ends = recorrida desde el extremo situado a { $start } de altitud hasta el extremo situado a { $end } de altitud
climbs-between = Esta carretera sube de { $start } a { $end } en el sentido mostrado. ¿Va a bajarla?
grade-holds = { $class ->
    [good] Las altitudes son buenas: una pendiente es válida a lo largo de { $base } o más.
    [fair] Las altitudes son aceptables: una pendiente es válida a lo largo de { $base } o más; los cambios más cortos no se ven.
   *[poor] Las altitudes son malas: una pendiente es válida a lo largo de { $base } o más, y es solo orientativa. Compárela con las señales.
}
roughness = Nueve de cada diez tramos vecinos de 100 m difieren en no más de { $before } puntos porcentuales tal como están grabados, y en no más de { $after } después de suavizarlos.
findings-head = { $count ->
    [one] 1 cosa observada o corregida en el archivo
   *[other] { $count } cosas observadas o corregidas en el archivo
}
no-findings = No hubo que corregir nada.
unassessed-head = { $count ->
    [one] 1 tramo sin evaluar: en él no se aconseja nada
   *[other] { $count } tramos sin evaluar: en ellos no se aconseja nada
}
onward-from = desde { $place }
show-place = Mostrar en la carretera: { $place }
left-blank = No se pudieron evaluar { $length }. Allí no se aconseja nada.
left-blank-lower = No se pudieron evaluar { $length }; detrás, la carretera queda { $lower } más abajo. Allí no se aconseja nada.

preset-hint = Tome el camión más parecido al suyo. Sus valores quedan hasta que ponga los suyos.
on-plate = En las placas y en los papeles
in-head = Lo que usted sabe como conductor
rest-sentence = Son supuestos hasta que usted los ponga. Junto a cada uno se dice lo que cuesta un valor equivocado en la carretera mostrada, en la bajada que decide.
top-gear-speed = { $units ->
    [metric] Revoluciones a 80 km/h en la marcha más alta
   *[imperial] Revoluciones a 50 mph en la marcha más alta
}
is-axle-ratio = Eso da una relación del eje de { $ratio }.
no-axle-ratio = Con estas marchas y neumáticos la relación del eje sería de { $ratio }; los ejes tienen de { $range }. Revise las revoluciones, la marcha más alta y los neumáticos.
tyre-hint = Está en el flanco. Un neumático gastado rueda algo más corto.
gear-set-hint = Cuente las marchas hacia delante. «Sobremarcha»: en la más alta el árbol gira más que el motor.
transmission-hint = Automatizada: sin pedal de embrague, pero con embrague. Con convertidor: arranca sin embrague.
on-shaft = { $on-shaft ->
    [nothing] ninguno
    [hydrodynamic] ralentizador de fluido
    [electromagnetic] ralentizador de imanes
    [engine-table] tabla propia, en el motor
   *[shaft-table] tabla propia, en el árbol de transmisión
}
on-shaft-hint = Un aparato en la caja o en el árbol. El de fluido calienta el refrigerante; el de imanes tiene un rotor pesado con aletas.
at-engine-label = ¿Y un freno motor?
at-engine = { $at-engine ->
    [nothing] ninguno
    [exhaust-flap] mariposa de escape
   *[compression] por descompresión
}
at-engine-hint = Mariposa de escape: una mariposa en el tubo. Por descompresión: trabajan las válvulas de escape, con ruido. En caso de duda, la mariposa: retiene menos.
lever-label = Posiciones de la palanca, sin «apagado»
lever-hint = Se cuenta el mismo paso para cada una. Las partes se ponen más abajo.
own-lever = como se escriben abajo
shape-label = Potencia del freno motor según las revoluciones
shape = { $by-exponent ->
    [true] según un exponente
   *[false] como la declaran los motores
}
shape-hint = Como la declaran los motores, si no tiene cifras propias.
axles-of = { $axle-place ->
    [steer] Ejes directrices
    [drive] Ejes motrices y los que van con ellos
   *[trailer] Ejes del remolque
}
brakes-of = { $axle-place ->
    [steer] Frenos de los ejes directrices
    [drive] Frenos de los ejes motrices
   *[trailer] Frenos del remolque
}
brake = { $brake ->
    [drum] tambor
   *[disc] disco
}
without-trailer = sin remolque
axles-hint = Cuente los ejes con freno. Cómo se reparten el trabajo es un supuesto.
wrong-by = { $by } de error
so-many-gears = { $gears ->
    [one] { $gears } marcha
   *[other] { $gears } marchas
}
so-many-stages = { $stages ->
    [one] { $stages } posición
   *[other] { $stages } posiciones
}
no-other = no cambian ni la marcha ni la velocidad
other-verdict = { $verdict ->
    [retarder-holds] el ralentizador lo retendría
    [little-in-reserve] poca reserva
    [needs-service-brakes] necesita los frenos de servicio
   *[no-safe-speed] ninguna velocidad segura
}
worth-waits = Lo que cuesta un valor equivocado: se dice cuando se muestra un plan.
worth-at-work = Lo que cuesta un valor equivocado: se está calculando.
worth-no-descent = Lo que cuesta un valor equivocado: esta carretera no tiene bajada en la que probarlo.
worth-not = Lo que cuesta un valor equivocado: no se pudo calcular.

truck-drive-axle-mass = La masa sobre los ejes motrices es mayor que la masa total real; escriba una menor.
truck-engine-speeds = Las revoluciones mínimas útiles del motor deben estar por debajo de las máximas permitidas.
truck-gears = Las marchas deben ser de 1 a { $most } relaciones, de { $low } a { $high }, cada una menor que la anterior.
truck-full-load = La curva de plena carga necesita de 2 a { $most } puntos con revoluciones del motor en aumento ({ $low } a { $high }/min) y un par de 0 a { $torque } N·m.
truck-stages = Las posiciones del ralentizador deben ser de 1 a { $most } fracciones mayores que 0, en aumento, la última 1 (100 %).
truck-table = La tabla del ralentizador necesita de 2 a { $rows } filas con revoluciones en aumento ({ $low } a { $high }/min), todas con el mismo número de valores (de 1 a { $most }), ninguno menor que el anterior de su fila.
truck-axle-groups = Debe haber de 1 a { $most } grupos de ejes, de 1 a { $axles } ejes cada uno, cuyas partes del frenado sumen 1.
truck-file-broken = Error en la línea { $line } (mensaje en inglés: { $what }). Corríjalo ahí, o guarde el archivo otra vez.
truck-file-cut-off = Falta una parte de este archivo. Cópielo otra vez, o pídalo de nuevo.
truck-file-newer = Este archivo tiene la versión { $found }; aquí se leen versiones hasta la { $newest }. Recargue la página para obtener una más nueva.

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
file-too-coarse = Los puntos están demasiado separados: unos { $found } m; para ver las pendientes hacen falta { $most } m como máximo. Expórtelo como recorrido con todos los puntos, no como ruta de unos pocos giros.
file-bad-points = { $bad } de { $points } puntos { $bad ->
    [one] no tiene
   *[other] no tienen
} una latitud y una longitud utilizables, por primera vez en la línea { $line }. { $swapped ->
    [true] Parece que la latitud y la longitud están intercambiadas; corríjalo donde se hace el archivo y expórtelo otra vez.
   *[false] Exporte otra vez el recorrido.
}
file-too-short = La carretera mide solo { $found } m; hacen falta al menos { $least } m. Elija un recorrido más largo.
file-nothing-left = En ninguno de los { $length } km las altitudes son fiables, así que no se puede dar ninguna pendiente. { -ask-heights }
file-too-many-bytes = El archivo tiene { $found } MB; se pueden leer { $most } MB como máximo. Exporte una parte más corta del recorrido, o menos puntos.
file-too-many-points = El archivo tiene más de { $most } millones de puntos. Exporte una parte más corta del recorrido, o menos puntos.
file-too-many-courses = El archivo tiene más de { $most } recorridos, o trozos de recorrido alejados entre sí. Exporte solo la carretera que quiere.
file-too-long = La carretera mide { $found } km; se pueden calcular { $most } km como máximo. Exporte una parte más corta.
file-refused = El archivo se rechaza en la línea { $line }: { $refusal ->
    [entities] el archivo declara entidades propias
    [nesting] hay elementos anidados a más de { $most } niveles de profundidad
   *[long-tag] una etiqueta mide más de { $most } kB
}. Ningún recorrido necesita eso. Exporte otra vez el recorrido desde donde se hizo.
file-bad-heights = La altitud número { $number } no se puede usar: hacen falta al menos dos altitudes finitas, a una distancia mayor que 0 m y de 50 m como máximo.
file-no-such-course = Se pidió el recorrido número { $number }, pero el archivo tiene { $count }. Elija uno de esos.
file-legs-apart = El archivo { $number } empieza a { $gap } km de donde termina el archivo { $previous }, así que ninguna carretera lleva de uno a otro. Cambie el orden o invierta uno de los dos.
file-not-one-road = La grabación { $number } no es otra grabación de la misma carretera: muy poco de ella coincide con las anteriores, sus altitudes son muy distintas, o es una de ellas repetida. Compare los archivos o únalos.
file-cancelled = Detenido a petición suya; elija un archivo para empezar otra vez.

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
} del recorrido; se unen, y la mayor separación es de { $widest } m.
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
    [one] { $count } altitud que sobresale hasta { $largest } m; se trata como dato ausente
   *[other] { $count } altitudes que sobresalen hasta { $largest } m; se tratan como datos ausentes
}.
found-heights-filled = Altitudes ausentes, completadas con líneas rectas en { $count ->
    [one] { $count } lugar
   *[other] { $count } lugares
}, la más larga de { $longest } m.
unassessed-because = { $unassessed ->
    [gap] el archivo no tiene puntos ahí
    [no-heights] el archivo no tiene altitudes ahí
    [step] las altitudes dan ahí un salto y no vuelven
   *[sliver] el tramo entre otros dos sin evaluar es demasiado corto
}.
found-not-assessed = Ninguna pendiente y ningún consejo en este tramo: { unassessed-because }
found-tunnel = Las altitudes suben { $rise } m y vuelven a bajar, como encima de un túnel; se usa una línea recta.
found-viaduct = Las altitudes bajan { $drop } m y vuelven a subir, como debajo de un puente; se usa una línea recta.
found-very-steep = Más empinado que la mayoría de las carreteras para camiones en { $count ->
    [one] { $count } lugar
   *[other] { $count } lugares
}, hasta { $grade } % en 200 m; compárelo con las señales.
found-combined = { $count } grabaciones de esta carretera combinadas en una; al menos dos de ellas conocen { $common } km.
found-disagree = Las dos grabaciones difieren hasta { $apart } m de altitud en { $length } m; se usa la más empinada.
found-rough = { $from-terrain ->
    [true] Las altitudes parecen proceder de un modelo del terreno, no de la carretera
   *[false] Las altitudes son irregulares
} ({ $points } puntos porcentuales entre tramos vecinos de 100 m); una pendiente es válida a lo largo de { $base } m o más{ $poor ->
    [true] , y es solo orientativa
   *[false] { "" }
}.
