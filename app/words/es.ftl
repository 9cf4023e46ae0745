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
