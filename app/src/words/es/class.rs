//! Spanish words of the class view.

use super::{Spanish, minutes};
use crate::class::Screen;
use crate::format::{self, Units};
use crate::words::ClassWords;

impl ClassWords for Spanish {
    fn screen(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "Carreteras",
            Screen::Forces => "Fuerzas",
            Screen::Run => "Recorrido",
            Screen::Pair => "Lado a lado",
            Screen::Exercises => "Ejercicios",
        }
    }
    fn idea(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "Una carretera de la que hablar",
            Screen::Forces => "Donde marcha y pendiente se cortan, el vehículo se estabiliza",
            Screen::Run => "Un vehículo por esta carretera, como se planificó",
            Screen::Pair => "Una carretera, una salida, una sola cosa distinta",
            Screen::Exercises => "Primero calcular, después mirar",
        }
    }
    fn notes(&self, screen: Screen) -> &'static [&'static str] {
        match screen {
            Screen::Roads => &[
                "Elija una carretera y pida a la clase que diga cómo la bajaría antes de mostrar nada.",
                "También se puede soltar aquí cualquier archivo GPX: la mejor carretera es la que recorren cada semana.",
            ],
            Screen::Forces => &[
                "Pregunte primero: ¿qué marcha? Después arrastre la pendiente hasta su valor.",
                "La pendiente exige casi la misma fuerza a cualquier velocidad; una marcha baja da más. En eso consiste la elección de la marcha.",
                "Arrastre la pendiente hasta que la marca se salga del final de una línea: más allá, el motor giraría demasiado rápido.",
                "Añada una décima parte de la masa y vea cómo se mueve la marca.",
            ],
            Screen::Run => &[
                "Pare antes de una cima y pregunte qué debería estar puesto ya.",
                "Pare donde se suaviza: ¿ha terminado?",
                "La temperatura es un cálculo. Lo que no puede ver, como el ajuste de los frenos, es peor que lo que ve.",
            ],
            Screen::Pair => &[
                "Deje que la clase apueste antes de empezar: ¿cuántos grados, cuántos minutos?",
                "Pare donde se separan. Desde el asiento todavía no se nota nada.",
                "Al final, pregunte qué se ganó con ello.",
            ],
            Screen::Exercises => &[
                "Imprima la hoja en blanco; la hoja de respuestas tiene el mismo número.",
                "En los pasos, las cifras están redondeadas tal como se escriben, para poder seguirlas a mano.",
            ],
        }
    }
    fn screens(&self) -> &'static str {
        "Pantallas de la clase"
    }
    fn to_road_page(&self) -> &'static str {
        "Volver"
    }
    fn show_notes(&self) -> &'static str {
        "Notas"
    }
    fn keys(&self) -> &'static str {
        "Avance y retroceso de página: pantalla siguiente y anterior. N: estas notas. Espacio: arrancar y parar. Flechas izquierda y derecha: paso a paso. Arriba y abajo: más rápido y más lento. Inicio: desde el principio."
    }
    fn class_caution(&self) -> &'static str {
        "Para enseñar, con datos y altitudes que contienen errores. No es un permiso para bajar: tienen prioridad las señales, la ley y los límites del fabricante."
    }
    fn grade_label(&self) -> &'static str {
        "Pendiente"
    }
    fn mass_label(&self) -> &'static str {
        "Masa"
    }
    fn stage_label(&self) -> &'static str {
        "Ralentizador"
    }
    fn forces_about(&self) -> &'static str {
        "Fuerza de retención según la velocidad: una línea por marcha y, cruzándolas, lo que exigen las pendientes. Debajo se dice dónde se estabilizan las marchas."
    }
    fn holding_axis(&self) -> &'static str {
        "fuerza"
    }
    fn none_settles(&self) -> &'static str {
        "Con esta posición, ninguna marcha se estabiliza en esta pendiente."
    }
    fn nothing_in_reserve(&self) -> &'static str {
        "En el cruce no queda reserva."
    }
    fn reserve_kept(&self, reserve: &str, kept: Option<(String, String)>) -> String {
        match kept {
            Some((gear, speed)) => format!("Con {reserve} de reserva: {gear}, a {speed} como máximo."),
            None => format!("Con {reserve} de reserva: ninguna marcha."),
        }
    }
    fn print_screen(&self) -> &'static str {
        "Imprimir"
    }
    fn profile_about(&self) -> &'static str {
        "La carretera de principio a fin, con una marca para cada vehículo"
    }
    fn truck_about(&self) -> &'static str {
        "El vehículo en su pendiente, con una flecha por fuerza; los indicadores dicen lo mismo en cifras"
    }
    fn driving(&self) -> &'static str {
        "Se está recorriendo…"
    }
    fn no_ride(&self) -> &'static str {
        "Esto no se puede recorrer aquí: en esta carretera no hay ninguna bajada con velocidad segura, o no hay nada que perder."
    }
    fn start(&self) -> &'static str {
        "Arrancar"
    }
    fn stop(&self) -> &'static str {
        "Parar"
    }
    fn step(&self) -> &'static str {
        "Un paso"
    }
    fn anew(&self) -> &'static str {
        "Desde el inicio"
    }
    fn slower(&self) -> &'static str {
        "Más lento"
    }
    fn faster(&self) -> &'static str {
        "Más rápido"
    }
    fn arrow_hill(&self) -> &'static str {
        "pendiente"
    }
    fn arrow_engine(&self) -> &'static str {
        "motor"
    }
    fn arrow_retarder(&self) -> &'static str {
        "ralentizador"
    }
    fn arrow_service(&self) -> &'static str {
        "frenos de servicio"
    }
    fn arrow_resistance(&self) -> &'static str {
        "rodadura, aire"
    }
    fn gauge_speed(&self) -> &'static str {
        "velocidad"
    }
    fn gauge_gear(&self) -> &'static str {
        "marcha"
    }
    fn gauge_stage(&self) -> &'static str {
        "posición"
    }
    fn gauge_engine(&self) -> &'static str {
        "motor"
    }
    fn gauge_power(&self) -> &'static str {
        "retención"
    }
    fn gauge_brakes(&self) -> &'static str {
        "frenos"
    }
    fn after_stop(&self) -> &'static str {
        "tras parar"
    }
    fn exercise_back(&self) -> &'static str {
        "Ejercicio anterior"
    }
    fn exercise_on(&self) -> &'static str {
        "Ejercicio siguiente"
    }
    fn slips(&self) -> &'static str {
        "Qué hace distinto el segundo vehículo"
    }
    fn as_planned(&self) -> &'static str {
        "como se planificó"
    }
    fn gear_high(&self) -> &'static str {
        "una marcha más alta"
    }
    fn somewhat_heavier(&self) -> &'static str {
        "10 % más pesado"
    }
    fn faster_by(&self, speed: &str) -> String {
        format!("{speed} más rápido")
    }
    fn stage_lost(&self) -> &'static str {
        "posición perdida"
    }
    fn hot_brakes(&self) -> &'static str {
        "frenos calientes"
    }
    fn they_part(&self, at_m: f64, units: Units) -> String {
        format!("Se separan en el punto {}.", format::distance(at_m, units))
    }
    fn nowhere_apart(&self) -> &'static str {
        "En esta carretera no supone una diferencia digna de mención."
    }
    fn time_apart(&self, sooner_s: f64) -> String {
        format!("{} {}", minutes(sooner_s.abs()), if sooner_s > 0.0 { "antes" } else { "después" })
    }
    fn no_time_apart(&self) -> &'static str {
        "sin diferencia de tiempo"
    }
    fn compared(&self, name: &str, time: &str, wrong: &str, right: &str) -> String {
        format!("{name}: {time}; tras una frenada fuerte hasta parar, {wrong} en lugar de {right}.")
    }
    fn passes_limit(&self, from: &str) -> String {
        format!(
            "A partir del punto {from}, una frenada fuerte hasta parar superaría el límite. Aquí los frenos retienen por calientes que estén; en la carretera pierden eficacia."
        )
    }
    fn forgiven(&self) -> &'static str {
        "Esta pendiente lo perdona. La siguiente quizá no."
    }
}
