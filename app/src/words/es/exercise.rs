//! Spanish words of exercises with worked answers.

use super::Spanish;
use crate::exercise::{BrakeHeat, ControlSpeed, Exercise, GearTried};
use crate::words::say::capital;
use crate::words::{ExerciseWords, PlanWords, Term};
use solver::truck::{AxlePlace, Gear};

impl ExerciseWords for Spanish {
    fn exercise_head(&self) -> &'static str {
        "Ejercicios"
    }
    fn exercise_sentence(&self) -> &'static str {
        "Cálculos sobre las bajadas de esta carretera, para el camión y las condiciones introducidos, con masas, pendientes y velocidades variadas. Imprima una hoja para trabajar y otra con las soluciones."
    }
    fn sheet_head(&self, seed: u32) -> String {
        format!("Ejercicios, serie {seed}")
    }
    fn blank_sheet(&self) -> &'static str {
        "Hoja para trabajar"
    }
    fn answer_sheet(&self) -> &'static str {
        "Hoja con las soluciones"
    }
    fn another_set(&self) -> &'static str {
        "Otra serie"
    }
    fn sheet_caution(&self) -> &'static str {
        "Estas cifras son para enseñar. No son un consejo para ninguna carretera, ningún camión ni ninguna carga: las masas, las pendientes y las velocidades están variadas y se deja fuera mucho."
    }
    fn no_exercises(&self) -> &'static str {
        "Ninguna bajada de esta carretera es bastante larga para plantear ejercicios."
    }
    fn stages_left_out(&self) -> &'static str {
        "En estas condiciones no se aconseja ninguna posición del ralentizador. Se omiten los ejercicios sobre marcha y posición."
    }
    fn exercise(&self, number: usize, exercise: &Exercise) -> String {
        let subject = match exercise {
            Exercise::ControlSpeed(_) => "velocidad de control",
            Exercise::GearChoice(_) => "elección de la marcha",
            Exercise::BrakingWork(_) => "trabajo de frenado",
            Exercise::Haste(_) => "tiempo ganado yendo más rápido",
            Exercise::BrakeHeat(_) => "temperatura de los frenos",
        };
        format!("Ejercicio {number}: {subject}")
    }
    fn given_label(&self) -> &'static str {
        "Datos"
    }
    fn room_label(&self) -> &'static str {
        "Su cálculo y su respuesta"
    }
    fn steps_label(&self) -> &'static str {
        "Pasos del cálculo"
    }
    fn solution_label(&self) -> &'static str {
        "Respuesta"
    }
    fn ask_control_speed(&self, it: &ControlSpeed, mass: &str, grade: &str) -> String {
        format!(
            "Un camión de {mass} baja por una pendiente del {grade} en {}, {}, sin acelerar y sin frenos de servicio. ¿Se estabiliza a una velocidad, y a cuál?",
            self.gear(it.gear),
            self.stage(it.stage)
        )
    }
    fn ask_gear(&self, mass: &str, grade: &str, reserve: &str) -> String {
        format!(
            "Solo el motor y el ralentizador deben retener un camión de {mass} en una pendiente del {grade}, con un {reserve} en reserva. Abajo figuran marchas a la mayor velocidad a la que cada una se usa para retener, con las revoluciones del motor y la fuerza de retención de la posición más fuerte que permite la adherencia de los ejes motrices. ¿Cuál es la marcha más alta que conserva la reserva, y a qué velocidad?"
        )
    }
    fn ask_work(&self, mass: &str, drop: &str, length: &str, speed: &str, share: &str) -> String {
        format!(
            "Un camión de {mass} baja {drop} en {length} de carretera a {speed} constantes. ¿Cuánta energía deben absorber el motor, el ralentizador y los frenos? El motor y el ralentizador absorben el {share}: ¿cuánto queda para los frenos de servicio?"
        )
    }
    fn ask_time(&self, length: &str, fast: &str, slow: &str) -> String {
        format!(
            "Una bajada mide {length}. ¿Cuánto tiempo gana un camión que la baja a {fast} en lugar de {slow}? ¿Cuánto crece su energía de movimiento?"
        )
    }
    fn ask_heat(&self, it: &BrakeHeat, length: &str, speed: &str, power: &str) -> String {
        format!(
            "En una bajada de {length}, a {speed} constantes, los frenos de servicio absorben {power} todo el tiempo; el motor y las resistencias absorben el resto. ¿Qué temperatura tienen los frenos {} al pie de la bajada?",
            place(it)
        )
    }
    fn settles(&self, speed: &str, engine_speed: &str) -> String {
        format!(
            "Se estabiliza a unos {speed} ({engine_speed}): ahí la fuerza de retención es igual a lo que queda por retener."
        )
    }
    fn slows_down(&self) -> &'static str {
        "No se estabiliza: a cualquier velocidad de esta marcha retiene más de lo necesario y va cada vez más despacio. Puede bastar una posición más débil o una marcha más alta."
    }
    fn gets_away_above(&self, speed: &str) -> String {
        format!(
            "No se estabiliza: por debajo de unos {speed} retiene más de lo necesario y por encima se embala. Si llega a ir más rápido, nada lo vuelve a retener. Hace falta una marcha más baja, puesta antes de la cima; si no, deben ayudar los frenos de servicio."
        )
    }
    fn gets_away(&self) -> &'static str {
        "No se estabiliza: se embala a cualquier velocidad de esta marcha. Hace falta una marcha más baja, puesta antes de la cima, o una posición más fuerte si la hay; si no, deben ayudar los frenos de servicio."
    }
    fn gear_chosen(&self, tried: &GearTried, speed: &str, engine_speed: &str, reserve: &str) -> String {
        format!(
            "{}, {}, a {speed} como máximo ({engine_speed}), con un {reserve} en reserva. La marcha se pone antes de la cima.",
            capital(&self.gear(tried.gear)),
            self.stage(tried.stage)
        )
    }
    fn no_gear_keeps(&self) -> &'static str {
        "Ninguna: ni siquiera la marcha más baja conserva la reserva. Un camión así no debe bajar por ahí: menos masa u otra carretera."
    }
    fn work_left(&self, left: &str, service: &str) -> String {
        format!(
            "Hay que absorber aproximadamente {left}; de ellos quedan aproximadamente {service} para los frenos de servicio."
        )
    }
    fn time_saved(&self, time: &str, times: &str) -> String {
        format!(
            "Aproximadamente {time}, y la energía de movimiento es {times} veces la de antes: eso es lo que aumenta el trabajo de los frenos cada vez que para. Aquí no se pregunta si el motor y el ralentizador retendrían el camión a esa velocidad."
        )
    }
    fn warm_at_foot(&self, foot: &str, limit: &str, over: bool) -> String {
        let kept = if over {
            format!("por encima del límite introducido de {limit}")
        } else {
            format!("no por encima del límite introducido de {limit}, pero sin margen para parar")
        };
        format!(
            "Aproximadamente {foot} al pie de la bajada: {kept}. No se tienen en cuenta: una frenada hasta parar, el reparto desigual del frenado, el ajuste de los frenos, la radiación ni que el enfriamiento varíe de un camión a otro en un factor de dos o más."
        )
    }
    fn term(&self, term: Term) -> &'static str {
        match term {
            Term::RollingCoefficient => "Coeficiente de resistencia a la rodadura",
            Term::DragArea => "Área de resistencia al aire",
            Term::AirDensity => "Densidad del aire",
            Term::AirDensityRatio => "Densidad del aire, dividida por la del nivel del mar",
            Term::Headwind => "Viento de frente (el de cola es negativo)",
            Term::HoldingTable => "Fuerza de retención según las revoluciones del motor y la velocidad",
            Term::HeatCapacity => "Calor que almacenan estos frenos",
            Term::Cooling => "Calor que ceden a esta velocidad",
            Term::GroupShare => "Su parte del frenado",
            Term::AirTemperature => "Aire",
            Term::BrakesAtCrest => "Frenos en la cima",
            Term::Sine => "Seno del ángulo de la carretera",
            Term::Cosine => "Coseno del ángulo",
            Term::Gravity => "Fuerza de la gravedad a lo largo de la carretera",
            Term::Rolling => "Resistencia a la rodadura",
            Term::AgainstAir => "Velocidad respecto al aire",
            Term::Air => "Resistencia al aire",
            Term::Demand => "Queda por retener",
            Term::HoldingAgainstDemand => "Fuerza de retención, frente a lo que queda por retener",
            Term::ComparedAt => "Calculado a",
            Term::LengthInFeet => "Longitud en pies",
            Term::GravityWork => "Trabajo de la gravedad",
            Term::RollingWork => "Absorbe la resistencia a la rodadura",
            Term::AirWork => "Absorbe la resistencia al aire",
            Term::WorkLeft => "Queda por absorber",
            Term::CarriedWork => "Motor y ralentizador",
            Term::ServiceWork => "Frenos de servicio",
            Term::SlowTime => "Tiempo a la velocidad menor",
            Term::FastTime => "Tiempo a la velocidad mayor",
            Term::TimeSaved => "Tiempo ganado",
            Term::MotionEnergy => "Energía de movimiento, la mayor entre la menor",
            Term::GroupPower => "Potencia en estos frenos",
            Term::TimeDown => "Tiempo de bajada",
            Term::TimeConstant => "Constante de tiempo: calor almacenado entre calor cedido",
            Term::Settled => "Temperatura que alcanzarían a la larga",
            Term::Ahead => "Parte de ese aumento que aún falta al pie de la bajada",
            Term::AtFoot => "Al pie de la bajada",
        }
    }
    fn gear_at(&self, gear: Gear, speed: &str) -> String {
        format!("{} a {speed}", capital(&self.gear(gear)))
    }
    fn enough(&self, enough: bool) -> &'static str {
        if enough { "suficiente" } else { "insuficiente" }
    }
}

fn place(it: &BrakeHeat) -> &'static str {
    match (it.place, it.axles) {
        (AxlePlace::Steer, 1) => "del eje direccional",
        (AxlePlace::Steer, _) => "de los ejes direccionales",
        (AxlePlace::Drive, 1) => "del eje motriz",
        (AxlePlace::Drive, _) => "de los ejes motrices",
        (AxlePlace::Trailer, 1) => "del eje de remolque",
        (AxlePlace::Trailer, _) => "de los ejes de remolque",
    }
}
