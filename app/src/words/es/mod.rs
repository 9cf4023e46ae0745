//! Spanish (not yet read by a practitioner).
//!
//! Terms, so that later sentences keep to them. The reader is addressed as “usted”. Of two current
//! words the one that is understood in most countries stands here. “Retener” is what engine and
//! retarder do to the vehicle, “mantener” what the driver does to a speed, “parar” the vehicle's
//! standstill; what is switched off is “desconectado”.
//!
//! | English | Spanish |
//! |---|---|
//! | road, part of it, stretch | carretera, parte, tramo |
//! | track, route (of the file), waypoint | recorrido, ruta, punto de referencia |
//! | descent | bajada |
//! | grade, downgrade | pendiente |
//! | steepest stretch | tramo más empinado |
//! | what the hill asks for | lo que exige la bajada |
//! | way down; the service brakes touch | forma de bajar; los frenos de servicio actúan un poco |
//! | climb, rise | subida |
//! | crest, summit | cima, cumbre |
//! | foot of the hill | pie de la bajada |
//! | easing | tramo en que se suaviza |
//! | hairpin; teaching road | curva de herradura; carretera para la enseñanza |
//! | heights | altitudes |
//! | at a distance along the road | en el punto |
//! | truck (coaches too) | camión; in verdicts and reasons: vehículo |
//! | combination, rigid, tipper | conjunto, camión rígido, volquete |
//! | no trailer, bobtail | sin remolque; in sentences: sin remolque ni semirremolque |
//! | load; loaded, empty | carga; cargado, vacío |
//! | day (its entries), entries | condiciones, datos |
//! | gear; lower, higher | marcha; más baja, más alta |
//! | retarder (of any kind) | ralentizador |
//! | engine brake; compression release | freno motor; freno motor por descompresión |
//! | exhaust brake | freno de escape |
//! | stage, full stage, off | posición, posición máxima, ralentizador desconectado |
//! | service brakes | frenos de servicio |
//! | in reserve | en reserva |
//! | to snub, snub braking | frenadas cortas e intermitentes |
//! | to drag the brakes | bajar pisando el freno de forma continua |
//! | hard stop | frenada fuerte hasta parar; in heads: tras parar |
//! | brake heat: cool, warm, hot, over the limit | fríos, templados, calientes, por encima del límite |
//! | brake check (a place) | zona de comprobación de frenos |
//! | escape ramp | rampa de escape |
//! | chain-up area, quiet zone | zona para poner cadenas, zona de silencio |
//! | posted signs, posted limit | señales, límite señalizado |
//! | to hold a truck, holding force | retener el vehículo, fuerza de retención |
//! | verdicts | el ralentizador lo retiene; lo retiene, con poca reserva; necesita los frenos de servicio; no se encontró velocidad segura |
//! | to hold a speed, hold speed | mantener, velocidad a mantener |
//! | control (of the speed), control speed | control de la velocidad, velocidad de control |
//! | overrun, unfuelled engine | motor arrastrado por las ruedas, motor sin inyección |
//! | overruns, settles at (in the table) | se embala, se estabiliza a |
//! | engine speed, shaft speed | revoluciones del motor, revoluciones del árbol |
//! | propeller shaft | árbol de transmisión (cardán) |
//! | torque | par |
//! | gear ratio, axle ratio | relación de marcha, relación del eje |
//! | driven axles, steer axle | ejes motrices, eje direccional |
//! | rolling radius | radio de rodadura |
//! | gross mass | masa total real |
//! | grip, to break away | adherencia, perder la adherencia |
//! | superelevation | peralte |
//! | rollover threshold | umbral de vuelco |
//! | converter, lock-up | convertidor, bloqueo |
//! | brake adjustment | ajuste de los frenos |
//! | advised, advisory only | aconsejado, solo orientativo |
//! | assessed, not assessed | evaluado, sin evaluar |
//! | card for the cab, marker | ficha para la cabina, hito |
//! | what held today | lo que retuvo hoy |

mod telling;

/// Spanish words of findings and errors.
pub(super) struct Spanish;
