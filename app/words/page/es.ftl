### Spanish (not yet read by a practitioner): what only the page says. The terms stand in the folder above.

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
fill-by = Color
reading = { $reading ->
    [gear] marcha
    [stage] posición
    [heat] calor de los frenos
    [speed] velocidad
   *[grade] pendiente
}
grade-step = { $step ->
    [down10] −10 % o más empinada
    [down8] −8 a −10 %
    [down6] −6 a −8 %
    [down4] −4 a −6 %
    [down2] −2 a −4 %
    [level] llano
    [up2] subida de 2 a 5 %
   *[up5] subida de 5 % o más
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
cursor = Punto de la carretera
cell-head = { $cell ->
    [at] en el punto
    [grade] pendiente
    [height] altitud
    [gear] marcha
    [stage] posición
    [speed] velocidad
    [engine] motor
    [carried] parte del ralentizador
    [brakes] frenos
   *[if-stopped] tras frenada fuerte aquí
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
lane-title = { $lane ->
    [height] altitud
    [gear] marcha
    [stage] posición
    [heat] calor
    [speed] velocidad
   *[temperature] frenos
}
steepest-word = máxima
on-grade = al { $grade }
brake-then = frenar a { $speed }, luego marcha { $gear }
descents-joined = Bajadas { $from } a { $to }: mostrarlas
keys-head = Teclas de la imagen
keys-close = Cerrar
key-caps =
    .along = ← →
    .far = Mayús ← →
    .ends = Inicio Fin
    .crests = RePág AvPág
    .descent = 1–9
    .zoom = + −
    .whole = 0
    .enter = Intro
    .colour = C
    .alone = F
    .put = P
    .escape = Esc
key-does =
    .along = 100 m por la carretera
    .far = 1 km por la carretera
    .ends = inicio o fin de la carretera
    .crests = cima anterior o siguiente
    .descent = elegir esta bajada
    .zoom = ampliar, reducir
    .whole = toda la carretera
    .enter = mostrar la bajada elegida
    .colour = siguiente color
    .alone = solo la imagen
    .put = poner un lugar en el punto elegido
    .escape = cerrar, o terminar solo la imagen

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

## Words of the teaching roads.

lessons-head = Carreteras para la enseñanza
lessons-invented = Estas carreteras son inventadas, para enseñar; ninguna existe.
lessons-said-for = Escrito para el primer camión de la lista en condiciones habituales. Con otro camión o en otras condiciones cuenta lo que se calcula, no esta nota.
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
    .happens = Con el ralentizador solo, las tres se bajan de la misma manera y los frenos de servicio siguen fríos. Donde se permiten frenadas cortas, cada bajada empieza con los frenos más calientes que la anterior, y la tercera ya no se puede tomar tan rápido como la primera. Por sí sola se podría.
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
    [pair] Misma carretera, misma salida, una cosa distinta
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
    .second = Pare donde difieren. Desde el asiento todavía no se nota nada.
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
class-after-stop = tras frenada fuerte
exercise-back = Ejercicio anterior
exercise-on = Ejercicio siguiente
slips = Qué hace distinto el segundo vehículo
as-planned = como se planificó
gear-high = una marcha más alta
somewhat-heavier = 10 % más pesado
faster-by = { $speed } más rápido
stage-lost = posición perdida
hot-brakes = frenos calientes
they-part = Difieren desde el { $at }.
nowhere-apart = En esta carretera no supone una diferencia digna de mención.
time-apart = { $time } { $sooner ->
    [true] antes
   *[false] después
}
no-time-apart = sin diferencia de tiempo
compared = { $name }: { $time }; tras una frenada fuerte hasta parar, { $wrong } en lugar de { $right }.
passes-limit = A partir del { $from }, una frenada fuerte hasta parar superaría el límite. Aquí los frenos retienen por calientes que estén; en la carretera pierden eficacia.
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

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

not-assessed-on = Sin evaluar: { $span }. No se conoce la pendiente en esa parte.
legs-label = Marcha por marcha
untouched-label = Sin frenos de servicio
one-gear-label = Una sola marcha en toda la bajada

## Words of the card for the cab.

card-head = Ficha
card-sentence = Para la cabina, toda la carretera. En un teléfono guárdela como imagen; en papel ocupa las páginas que necesite. Léala antes de la cima, con el vehículo estacionado.
print-card = Imprimir la ficha
save-picture = Guardarla como imagen para el teléfono
picture-name-ending = { $reversed ->
    [true] -sentido-contrario-ficha.png
   *[false] -ficha.png
}
save-rows = Guardar sus filas como CSV
marker-label = Hito o cuentakilómetros al inicio de la carretera
counts-down = los hitos van hacia atrás
markers-miss = Los hitos no alcanzan para toda la carretera: con lo introducido irían de { $start } al inicio a { $end } al final, y no hay hitos por debajo de cero. Corrija el hito del inicio o el sentido en que van. Mientras tanto, la ficha lleva distancias desde el inicio.
card-orders =
    .label = Orden de las filas
    .along = como se conduce
    .worst = primero la peor bajada
card-is-old = No la use: esta ficha corresponde a datos anteriores
do-not-descend = NO BAJE con los datos introducidos
no-speed-for = No se encontró velocidad segura para { $count ->
    [one] la bajada
   *[other] las bajadas
} { $numbers }. Tome otra carretera, o planifique de nuevo con menos carga o en un día mejor. Tienen prioridad las señales y las reglas de la conducción profesional.
facts-of = { $mass } · { $retarder } · { $surface }, { $load } · aire a { $air } · frenos a { $brakes } al inicio
card-page = página { $page } de { $pages }
card-page-has = { $count ->
    [one] bajada
   *[other] bajadas
} { $numbers }
card-sum = { $length } · { $fall } de bajada · { $count ->
    [one] { $count } bajada
   *[other] { $count } bajadas
}
card-covers = Vale para { $covered } de { $length }. No se conoce: { $unknown }, { $fall } de desnivel. Allí no hay consejo.
card-marker = hito { $at } al inicio, { $counts-down ->
    [true] descendente
   *[false] ascendente
}
card-no-marker = desde el inicio
worked-out-for = Calculada para
your-truck = ¿Es este su camión?
check-mass = { $mass } como máximo
check-gears = { $count } marchas, eje { $ratio }
check-stages = { $count ->
    [one] la posición actúa
   *[other] las { $count } posiciones actúan
}
check-no-retarder = sin ralentizador
check-surface = calzada: { $surface }
one-empty = <strong>Una casilla vacía: no es su ficha.</strong> Calcúlela de nuevo.
hardest-of = { $count ->
    [one] La única bajada
   *[other] La más dura de { $count }
}
hardest-then = luego { $numbers }
card-steepest = lo más empinado { $grade }
all-alike = { $count ->
    [one] La bajada: { $verdict }.
   *[other] Las { $count }: { $verdict }.
}
card-heads =
    .by = puesta
    .gear = marcha
    .stage = pos.
    .hold = mantener
    .know = qué saber: km (millas)
card-by = { $how ->
    [down] en { $unit }
   *[up] desde { $unit }
}
card-change-down = Frene a { $speed }, luego marcha { $gear }.
card-change-up = Marcha { $gear } solo desde aquí. O siga en la { $kept }.
card-unknown = { $spans } no se conoce: sin consejo
mile = milla
know-snub = Frene de { $from } a { $to }, suelte el freno, repita.
know-in-doubt = En duda tramos cortos de hasta { $grade }: tenga listos los frenos de servicio.
know-easing = Donde se suaviza, en el { $at }, no es el final: siga en la misma marcha.
know-begins-unknown = No se sabe cómo empieza: la carretera anterior no se pudo evaluar.
know-slow-curves = <strong>{ $count ->
    [one] { $count } curva
   *[other] { $count } curvas
} bajo { $under }</strong>, la más lenta { $speed }, { $at }
know-slow-curve = Curva más lenta: { $speed }, { $at }.
know-posted = Límite señalizado: { $speed }, { $km }, { $miles }.
know-ramp = Rampa de escape en el { $at }.
know-quiet = Zona de silencio en el { $at }: puede estar prohibido el freno motor.
know-at-foot = Al pie de la bajada: { $name }, { $at }.
to-stop-at-foot = un lugar donde hay que parar
know-cut-short = <strong>Conocida solo hasta { $at }.</strong> No se sabe cómo continúa: siga en la marcha { $gear }.
know-cut-short-bare = <strong>Conocida solo hasta { $at }.</strong> No se sabe cómo continúa.
know-size = { $length }, { $fall } de bajada
know-steepest = <strong>lo más empinado { $grade }</strong>, { $at }
know-foot = <strong>pie { $at }</strong>
know-then-unknown = a { $after }: no se conoce hasta { $at }
know-then-crest = { $after } hasta la cima { $number }
know-stay = siga en la marcha { $gear }
know-then-gear = luego marcha { $gear }
before-crest-head = Antes de cada cima
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
in-trouble-head = Si pierde el control de la velocidad: en este orden
brake-now = Frene fuerte ahora y pare, mientras los frenos estén lo bastante fríos para lograrlo.
stay-in-gear = Siga con la marcha puesta. Nunca ponga punto muerto (neutro), nunca pise el embrague, no cambie a una marcha más baja a alta velocidad.
any-way-up = Tome una rampa de escape o cualquier camino que suba. Aquí no hay ninguna rampa introducida; puede haberlas.
take-ramp = Tome la rampa de escape en el { $ramps }, o cualquier camino que suba.
warn-others = Luces y bocina: avise a los demás.
no-places-entered = No hay ninguno introducido. Eso no significa que no existan.
card-cautions = Calculado con sus datos y con altitudes grabadas, que contienen errores; no es un permiso para bajar. No puede ver el ajuste de los frenos, los neumáticos, la calzada, el estado del tiempo, el tráfico ni la carga. Tienen prioridad las señales, la ley, su empresa y el fabricante del vehículo. Los frenos de servicio siguen siendo el medio para parar. En caso de duda: pare arriba, vaya más despacio, tome otra carretera.
rows-name-ending = { $reversed ->
    [true] -sentido-contrario-bajadas.csv
   *[false] -bajadas.csv
}

## Words of the page's frame: names, buttons, files, progress, trouble.

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
reversed-mark = inverso
course = Recorrido del archivo
which-track = { $file } contiene { $count } carreteras. ¿Por cuál va a conducir?
course-unusable = sin altitudes o demasiado corta
leave-it = Cancelar
which-order = { $count ->
    [one] 1 archivo: ábralo.
    [2] 2 archivos: ¿qué son?
   *[other] { $count } archivos: ¿en qué orden se recorren?
}
which-order-sentence = Para unirlos, póngalos en el orden del recorrido. Se unen de arriba abajo. Donde uno termina a más de 2 km del inicio del siguiente, el orden o un sentido es incorrecto.
join = { $count ->
    [one] Abrir este archivo
   *[other] Unir { $count } archivos
}
leg-up = Recorrer { $name } antes
leg-down = Recorrer { $name } después
turn-leg = En sentido contrario
leave-leg = Omitir { $name }
same-question = { $count } archivos coinciden sobre el terreno. ¿Muestran la misma carretera?
same-sentence = Como la misma carretera, se convierten en una, con las altitudes de todos. Donde difieren más de lo que pueden errar, se usa la más empinada y se indica el lugar. El plan nunca es más rápido que el más rápido de ellos por separado. Nada se combina sin preguntar.
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
part-to-come = Esta parte de la página se está cargando.
part-failed = Esta parte de la página no ha llegado. Compruebe la conexión e inténtelo otra vez.
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
trouble-many-files = Se pueden unir hasta 20 archivos en una sola carretera y comparar hasta 200. Elija menos.
trouble-not-a-file = Suelte un archivo GPX, o use el botón para elegir uno.
trouble-built-in-missing = La página en sí funciona: elija un archivo GPX propio.
trouble-cannot-start = El navegador no cargó la parte que calcula. Recargue la página; si eso no ayuda, use un navegador de los últimos años con WebAssembly y los procesos en segundo plano (workers) activados.
trouble-stopped = Se ha iniciado de nuevo, y no se ha perdido nada de lo que usted introdujo. Cambie el último dato, o intente otra vez. Para un informe: { $detail }
trouble-cancelled = Las cifras de abajo todavía corresponden a los datos anteriores. Para calcular las nuevas, cambie un dato o intente otra vez.
trouble-no-picture = Este navegador no la dibuja. Imprima la ficha en su lugar: si la imprime en un archivo, obtiene un PDF.
trouble-cannot-export = No se pudo cargar la parte que lo escribe, o el navegador no permitió guardarlo. Recargue la página, o pruebe con otro navegador.
reload-for-newer = Recargue la página para obtener una más nueva.
former-stays = La carretera que se muestra abajo es la anterior.
not-current = Las cifras mostradas corresponden a los datos o a la carretera anteriores.
check-entry = Compruebe este dato:
export = Guardar cimas y cambios de marcha como GPX
export-sentence = Puntos de referencia en cada cima, en cada pie de bajada y en cada cambio de marcha o de posición, para un dispositivo que los muestre.
export-name-ending = -bajadas.gpx
no-road = Todavía no hay carretera
no-road-sentence = Elija un archivo GPX con altitudes, o suéltelo en cualquier parte de esta página. Se lee en este equipo y no va a ningún otro lugar.
between-ramps = {" "}o en el{" "}

## What a language says of itself.

languages = Otros idiomas
this-page = Esta página en español
page-title = Steadygrade: cómo bajar cada pendiente
page-description = Cómo bajar cada pendiente de una carretera con un vehículo pesado: marcha, posición del ralentizador, velocidad, calor de los frenos. Se calcula en su equipo.
needs-script = Esta página calcula la carretera en su navegador, por lo que necesita JavaScript y WebAssembly. Nada de lo que cargue sale de su equipo.
loading-page = Cargando la página
opens-then = Se abrirá cuando la página esté lista:
loading-failed = La página no ha llegado completa. Compruebe la conexión y vuelva a cargarla.
loading-stands = Hace medio minuto que no llega nada. Espere, o compruebe la conexión y vuelva a cargar la página.
cannot-run = Este navegador no puede ejecutar la página: WebAssembly falta o está desactivado. Use otro navegador o permítalo.
load-again = Volver a cargar
not-kept = Esta página no está guardada en este equipo y no hay red. Ábrala una vez con red: desde entonces queda guardada.

## Words of the plan: verdicts, descents.

heavier-label = 10 % más pesado
heat-label = Frenos
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
    .if-stopped = tras frenada fuerte
descent = Bajada { $number }
details-of = Bajada { $number }: detalles

## Words of one descent's details, and of its table.

sign-label = Como lo indicaría una señal
sign = { $grade } en { $length }
advice-label = Cómo bajar
way-label = Posiciones durante la bajada
relief-label = Dónde se suaviza
grades-label = Qué pendiente tiene
curves-label = Curvas
climb-label = Subir la misma pendiente
cut-short = La bajada se corta donde la carretera ya no se puede evaluar. No se sabe cómo continúa.
table-heads =
    .gear = marcha
    .speeds = velocidades utilizables
    .reserve = reserva a la más alta
table-chosen = aconsejada

## Words of what follows from a plan: what would change it, how sure it is, what if.

change-label = Para retenerlo
carried-label = Hacia la subida siguiente
sure-label = Qué fiabilidad tiene
too-long-to-be-sure = Esta carretera es demasiado larga para calcularla 256 veces: calcule una parte de ella para saber qué fiabilidad tiene su plan.
studying = Calculando la fiabilidad: hecho el { $share }
not-yet = …
change-up = Desde el { $from } cambiar a { $gear }
slow-first = Desde el { $from } reducir a { $speed } con el ralentizador, luego { $gear }, a más tardar en el { $at }
not-worked-out = sin calcular
not-worked-out-sentence = Esto no se ha calculado: la parte de la página que sigue calculando no ha respondido. No significa que todo esté bien.
study-missing = Sin calcular: la fiabilidad, dónde reducir la velocidad, el fallo del ralentizador y los frenos desajustados.
lost-label = Falla el ralentizador
adjustment-label = Frenos desajustados
slowing-label = Reducir la velocidad para lo que viene
slowing-sentence = Desde ahí, sin acelerador y en la posición máxima: el ralentizador solo reduce la velocidad hasta la indicada. Los frenos de servicio siguen fríos. Tienen prioridad las señales y lo que usted vea.
slowing-heads =
    .place = en el punto
    .what = por qué
    .speed = reducir a
    .where = posición máxima desde
    .gear = marcha
    .brakes = solo con los frenos de servicio
slowing-more = { $count ->
    [one] Y 1 más que exige menos.
   *[other] Y { $count } más que exigen menos.
}
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
use-measured = Planificar con este valor
undo-measured = Volver a los datos del camión
scale-in-use = Los planes cuentan con el { $share } de los datos del ralentizador.

## Words of two roads side by side.

two-head = Dos carreteras
keep-beside = Guardar para comparar
keep-beside-sentence = Para comparar dos carreteras, dos camiones o dos condiciones: lo que se muestra ahora queda al lado de lo que elija después.
two-next = Las dos son todavía iguales: elija otro archivo, invierta la carretera o cambie el camión o las condiciones.
end-two = Cerrar
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
    [up] tiempo en subidas del 2 % o más
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
rank = { $count ->
    [one] Esta carretera en una lista
    [2] Comparar las 2 carreteras
   *[other] Comparar estas { $count } carreteras
}
ranked-sentence = Cada una en los dos sentidos, con el camión y las condiciones introducidos. Marque dos para compararlas, o pulse un nombre para abrir esa carretera.
ranking = en cálculo
rank-again = El camión o las condiciones han cambiado: calcular otra vez las carreteras
ranked-so-far = Carreteras: { $done } de { $count } calculadas
ranked-roads = { $count } carreteras
given-up = abandonada
many-columns =
    .road = carretera
    .length = longitud
    .way = sentido
    .profile = perfil
    .hardest = la más dura
    .grade = pendiente
    .hold = marcha, posición, velocidad
    .verdict = resultado
    .time = tiempo
    .fuel = combustible
    .braking = frenado
    .heat = frenada fuerte
    .heights = alturas
    .other = otro sentido
driven-label = Sentido
driven-ways =
    .harder = el más duro
    .recorded = como se grabó
    .reversed = inverso
heights-word = { $class ->
    [good] buenas
    [fair] regulares
   *[poor] malas
}
show-verdicts = Mostrar
short-no-descent = sin bajada
compare-ticked = { $count ->
    [one] Marque 1 más para comparar
    [2] Comparar 2
   *[other] Marque 2 para comparar
}
turn-ranked = Invertir { $name }
tick-ranked = Marcar { $name }
stop-ranking = Detener
print-list = Imprimir
save-list = Guardar como tabla
to-many = Las { $count } carreteras
limit-of-list = límite { $limit }
blank-in-list = ? faltan alturas o son incorrectas: ahí no hay consejo
list-ending = -lista.csv
list-stem = carreteras
compared-ending = -comparadas.csv
easier-mark = la más fácil. No hay total: lo sopesa usted.
easier = más fácil
reason = { $name }: { $parts }.
reason-none = { $name }: sin diferencia en resultado, tiempo, combustible ni calor.
reason-time = { $more ->
    [true] { $figure } más
   *[false] { $figure } menos
}
reason-heat = { $more ->
    [true] frenos { $figure } más calientes tras una frenada fuerte
   *[false] frenos { $figure } más fríos tras una frenada fuerte
}
reason-fuel = { $more ->
    [true] { $figure } más de combustible
   *[false] { $figure } menos de combustible
}
reason-hold = la más lenta a { $shown } en lugar de { $kept }
reason-verdict = { $shown }, en lugar de: { $kept }
list-heads =
    .file = archivo
    .crest = cima
    .limit = límite
    .blank = sin evaluar
    .truck = camión, condiciones

## Words of places and posted limits along the road.

places-head = Lugares
places-nav = Lugares
places-sentence = { $count ->
    [0] Todavía no hay ninguno en esta carretera. Eso no significa que no existan: busque por su cuenta las zonas de comprobación de frenos, las rampas de escape, los semáforos y los límites.
    [one] Hay uno en esta carretera. Puede haber más.
   *[other] Puede haber más que estos.
} Proceden de los puntos de referencia (waypoints) del archivo; añada otros donde está el cursor en la imagen, o por su distancia. Se guardan en este equipo.
put-here = Marcar un lugar aquí
put-at = Marcar un lugar en
put = Añadir
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
transmission-label = Caja de cambios
load-label = Carga
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
service-brakes-label = Frenos de servicio
lead-label = Forma de bajar
lead-hint = { $lead ->
    [usual] En una bajada larga la marcha puede cambiar en lugares indicados, si eso ahorra minutos.
    [one-gear] Una sola marcha desde la cima hasta el pie, con su velocidad.
   *[untouched] Una marcha en la que el ralentizador retiene solo en todas las pendientes grabadas, también donde las altitudes están en duda.
}
usual-day = Condiciones habituales
kept-here = Los datos se guardan solo en este navegador.

## Words of the road: its quality, what was repaired, what was not assessed.

grade-holds = { $class ->
    [good] Las altitudes son buenas: una pendiente es válida a lo largo de { $base } o más.
    [fair] Las altitudes son aceptables: una pendiente es válida a lo largo de { $base } o más; los cambios más cortos no se ven.
   *[poor] Las altitudes son malas: una pendiente es válida a lo largo de { $base } o más, y es solo orientativa. Compárela con las señales.
}
roughness = Nueve de cada diez tramos vecinos de 100 m difieren en no más de { $before } puntos porcentuales tal como están grabados, y en no más de { $after } después de suavizarlos.
findings-head = { $count ->
    [one] 1 cosa observada o corregida en el archivo
   *[other] { $count } cosas observadas o corregidas en el archivo
}
no-findings = No hubo que corregir nada.
unassessed-head = { $count ->
    [one] 1 tramo sin consejo: faltan altitudes o son erróneas
   *[other] { $count } tramos sin consejo: faltan altitudes o son erróneas
}
show-place = Mostrar en la carretera: { $place }
left-blank = Faltan altitudes o son erróneas en { $length }. Allí no se aconseja nada.
left-blank-lower = Faltan altitudes o son erróneas en { $length } ({ $lower } de desnivel). Allí no se aconseja nada.

## Words of the form that do not name an entry.

top-gear-speed = { $units ->
    [metric] Revoluciones a 80 km/h en la marcha más alta
   *[imperial] Revoluciones a 50 mph en la marcha más alta
}
is-axle-ratio = Eso da una relación del eje de { $ratio }.
no-axle-ratio = Con estas marchas y neumáticos la relación del eje sería de { $ratio }; los ejes tienen de { $range }. Revise las revoluciones, la marcha más alta y los neumáticos.
tyre-hint = Está en el flanco. Un neumático gastado rueda algo más corto.
gear-set-hint = Cuente las marchas hacia delante. «Sobremarcha»: en la más alta el árbol gira más que el motor.
transmission-hint = Automatizada: sin pedal de embrague, pero con embrague. Con convertidor: arranca sin embrague.
on-shaft = { $on-shaft ->
    [nothing] ninguno
    [hydrodynamic] ralentizador hidrodinámico
    [electromagnetic] ralentizador electromagnético
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

## Palabras del marco de la página.

view-names =
    .road = Carretera
    .descents = Bajadas
    .two = Dos carreteras
    .card = Ficha
    .more = Más
truck-tab = Camión
road-button = Carretera: { $name }. Elegir otra
truck-button = Camión y día: { $facts }. Cambiar
road-panel = Carretera
teaching-roads = Carreteras para la enseñanza
cab-card = Ficha para la cabina
caution-line = <strong>Una ayuda para planificar.</strong> Mandan las señales y la ley. No ve sus frenos.
all-cautions = Todas las advertencias
of-count = de { $number }
hardest = la más dura
descent-before = La bajada anterior
descent-after = La bajada siguiente
hand-figures =
    .gear = Marcha
    .stage = Posición
    .hold = Mantener
    .from = desde
    .long = larga
    .down = baja
    .grade = pendiente
    .steepest = máxima
be-in-gear = Meta la marcha <strong>antes de la cima, { $place }</strong>.
be-in-gear-at-start = Meta la marcha <strong>antes de arrancar</strong>.
stay-to = Siga en ella hasta { $place }.
old-answer = respuesta anterior
all-gears = Todas las marchas
about-descent = Esta bajada
way-curve = { $hairpin ->
    [true] curva de herradura
   *[false] curva
}
settings-head = Ajustes
change-truck = Cambiar
show-blank = Mostrarlos
finding-descents = Buscando las bajadas

## Words of the drawer of truck and day.

drawer-head = Su camión, su día
which-truck = ¿Qué camión?
how-heavy = ¿Cuánto pesa?
which-retarder = ¿Qué ralentizador?
what-surface = ¿Qué calzada?
truck-type = { $preset ->
    [five-axle36] Cinco ejes, tambores
    [five-axle40] Cinco ejes, discos
    [five-axle40-both] Cinco ejes, dos ralentizadores
    [five-axle-empty] Cinco ejes, vacío
    [six-axle44] Seis ejes
    [drawbar40] Rígido con remolque
    [rigid18] Dos ejes
    [tipper26] Volquete
    [refuse26] Camión de basuras
    [b-double] Conjunto doble
    [coach] Autobús
   *[coach-converter] Autobús, convertidor
}
my-trucks = Mis camiones
lighter-by = { $by } menos
heavier-by = { $by } más
retarder-answers =
    .engine = freno motor
    .exhaust = freno de escape
    .hydrodynamic = ralentizador hidrodinámico
    .electric = ralentizador eléctrico
    .both = dos juntos
    .none = sin ralentizador
retarder-change = cambiarlo
experts = Para expertos
experts-about = * supuesto: ponga el suyo. Cada dato dice lo que cuesta un valor equivocado en la bajada más difícil.
expert-rows =
    .gearbox = Caja de cambios
    .engine = Motor
    .retarder = Potencia del ralentizador
    .rolling = Neumáticos, ejes y frenos
    .tune = Ajustar
gears-now = { $gears } marchas · eje { $ratio }
axles-now = { $count ->
    [one] { $count } eje
   *[other] { $count } ejes
}
day-now = aire { $air } · frenos { $brakes } al inicio
trucks-now = guardar, abrir, entregar
done = Listo
example-truck = Camión de ejemplo. ¿No es el suyo?
enter-yours = Ponga el suyo
enter-brake-heat = Introduzca su temperatura en «Condiciones».
this-is-mine = Este es mi camión
example-export = Camión de ejemplo, quizá no el suyo. No conduzca según esto: ponga primero el suyo.
