//! Spanish words of the reasons: what governs, why no speed was found, what holds for all.

use super::Spanish;
use crate::words::WhyWords;
use solver::day::Withheld;
use solver::plan::{Advice, Governs, Note, Verdict};

impl WhyWords for Spanish {
    fn governs_label(&self) -> &'static str {
        "Por qué no más rápido"
    }
    fn governed_by(&self, advice: &Advice, limit: &str, reserve: &str, heat_limit: &str) -> String {
        match advice.governs {
            Governs::SpeedLimit => format!("El límite de velocidad introducido, {limit}."),
            Governs::Posted => {
                "Un límite señalizado en el camino: toda la bajada se hace sin superarlo, o bien la marcha para ir más rápido no retendría el vehículo a ese límite.".to_owned()
            }
            Governs::EngineSpeed => "Las revoluciones máximas permitidas del motor.".to_owned(),
            Governs::Control => control(advice, reserve),
            Governs::Curve => {
                "Las curvas: entre ellas el vehículo no podría alcanzar una velocidad mayor, o la marcha para ella sería demasiado alta en la curva más lenta."
                    .to_owned()
            }
            Governs::Grip => "La adherencia de los ejes motrices en esta calzada.".to_owned(),
            Governs::Heat => format!(
                "El calor de los frenos: a más velocidad, una frenada fuerte hasta parar los llevaría a más de {heat_limit}."
            ),
        }
    }
    fn untouched_governs(&self) -> &'static str {
        "Su elección en «Condiciones»: a más velocidad, alguna pendiente grabada exigiría los frenos de servicio."
    }
    fn no_speed_because(&self, because: Governs, slowest: &str, reached: &str, limit: &str) -> String {
        let reason = match because {
            Governs::SpeedLimit => {
                return format!(
                    "Incluso la velocidad más baja probada, {slowest}, supera el límite de velocidad introducido."
                );
            }
            Governs::Posted => "la marcha no serviría para el límite señalizado más bajo",
            Governs::EngineSpeed => "el motor giraría demasiado rápido",
            Governs::Control => "el ralentizador no retiene el vehículo",
            Governs::Curve => "todas las marchas son demasiado altas para la curva más lenta",
            Governs::Grip => "a los ejes motrices les falta adherencia para retener el vehículo",
            Governs::Heat => &format!(
                "los frenos alcanzarían aproximadamente {reached} tras una frenada fuerte hasta parar; el límite es {limit}"
            ),
        };
        format!("Incluso a {slowest}, la velocidad más baja probada, {reason}.")
    }
    fn else_another_road(&self) -> &'static str {
        "Si eso no se puede cambiar, tome otra carretera."
    }
    fn note(&self, note: Note) -> &'static str {
        match note {
            Note::StagesWithheld(why) => withheld(why),
            Note::WetCap => {
                "Calzada mojada: del ralentizador se cuenta, como máximo, con una fuerza igual a la mitad de la adherencia de los ejes motrices. Si las ruedas motrices patinan, baje una posición del ralentizador; algunas recomendaciones dicen que se desconecte del todo."
            }
            Note::HoldByHand => {
                "Esta caja de cambios elegiría las marchas por sí sola: póngala en modo manual para que conserve la marcha, y ponga la marcha a mano antes de cada cima."
            }
            Note::ShiftsUpByItself => {
                "Si el motor gira demasiado rápido, esta caja sube de marcha por sí sola y el ralentizador se desconecta: las velocidades indicadas quedan por debajo."
            }
            Note::StartsInDescent => {
                "La carretera empieza en medio de una bajada. No se sabe qué han soportado los frenos antes: escriba su temperatura en «Condiciones»."
            }
            Note::PartlyUnassessed => {
                "Una parte de la carretera no se pudo evaluar. Se deja en blanco, y en ella no se aconseja nada."
            }
            Note::PoorHeights => {
                "Las altitudes de este archivo son malas: las pendientes son solo orientativas. Compárelas con las señales."
            }
            Note::HotElsewhere => {
                "Fuera de las bajadas hay un lugar donde una frenada fuerte hasta parar superaría el límite de los frenos. Búsquelo en el gráfico y vaya más despacio ahí."
            }
            Note::CannotClimb => {
                "Ni siquiera con el acelerador a fondo puede este camión subir una parte de esta carretera, en ninguna marcha."
            }
        }
    }
}

fn withheld(why: Withheld) -> &'static str {
    match why {
        Withheld::Snow | Withheld::Ice => {
            "Con nieve o hielo no se aconseja ninguna posición del ralentizador: los ejes motrices podrían perder la adherencia. Las recomendaciones no coinciden (algunos fabricantes admiten la posición más débil), y aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección. En caso de duda, no empiece a bajar: espere a que la carretera haya sido tratada."
        }
        Withheld::EmptyInTheWet => {
            "Con el vehículo vacío y la calzada mojada no se aconseja ninguna posición del ralentizador: los ejes motrices llevan poco peso y podrían perder la adherencia. Las recomendaciones no coinciden (algunas admiten posiciones débiles), y aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección."
        }
        Withheld::NoTrailerInTheWet => {
            "Sin remolque ni semirremolque y con la calzada mojada no se aconseja ninguna posición del ralentizador: los ejes motrices llevan poco peso y el vehículo tractor podría girar sobre sí mismo. Las recomendaciones no coinciden (algunas admiten posiciones débiles), y aquí se sigue la más prudente. Las marchas y velocidades de este plan cuentan solo con la retención del motor sin inyección."
        }
    }
}

/// What faster would mean depends on what there is at this speed.
fn control(advice: &Advice, reserve: &str) -> String {
    if advice.stage.is_off() {
        return engine_alone(advice.verdict, reserve);
    }
    match advice.verdict {
        Verdict::RetarderHolds => {
            format!(
                "El control de la velocidad: en cualquier marcha más rápida, el ralentizador no retendría el vehículo con {reserve} en reserva, o un tramo corto exigiría demasiado de los frenos de servicio."
            )
        }
        Verdict::LittleInReserve => format!(
            "El control de la velocidad: a ninguna velocidad hay {reserve} en reserva; más rápido, el ralentizador retendría aún menos."
        ),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => {
            "El control de la velocidad: aquí el motor y el ralentizador no retienen solos el vehículo; más rápido, harían aún menos."
                .to_owned()
        }
    }
}

/// The same where no stage is called for, or there is no retarder.
fn engine_alone(verdict: Verdict, reserve: &str) -> String {
    match verdict {
        Verdict::RetarderHolds => format!("El control de la velocidad: en cualquier marcha más rápida, el vehículo no quedaría retenido con {reserve} en reserva, o un tramo corto exigiría demasiado de los frenos de servicio."),
        Verdict::LittleInReserve => format!("El control de la velocidad: en cualquier marcha más rápida, el vehículo no quedaría retenido, ni siquiera sin reserva. Ya aquí no se alcanza la reserva de {reserve}."),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => "El control de la velocidad: a más velocidad, el motor solo haría menos de la mitad de la retención, sea cual sea el calor de los frenos.".to_owned(),
    }
}
