//! Spanish words of the truck's form.

use super::Spanish;
use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use crate::words::FormWords;
use solver::limits::Entry;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

impl FormWords for Spanish {
    fn hint(&self, entry: Entry) -> &'static str {
        match entry {
            Entry::GrossMass => "Camión, remolques y carga juntos. Péselo si puede.",
            Entry::RetarderPeakPower => {
                "En la posición máxima, a las mejores revoluciones del motor para él; 0 si no lo hay."
            }
            Entry::HighestEngineSpeed => {
                "Las que permite el fabricante cuando las ruedas arrastran el motor."
            }
            Entry::Reserve => {
                "Fuerza de retención por encima de la necesaria, guardada para errores de masa y de pendiente."
            }
            Entry::Headwind => "El viento de cola es negativo y empuja.",
            Entry::HeatLimit => "Temperatura máxima de los frenos, incluida una frenada fuerte hasta parar.",
            Entry::SpeedLimit => "El señalizado o el suyo propio.",
            Entry::RollingResistance => {
                "El extremo inferior: con neumáticos que ruedan con facilidad, el camión empuja más cuesta abajo."
            }
            Entry::RolloverThreshold => {
                "En g, según una plataforma inclinable; una carga alta o suelta vuelca con menos. En caso de duda, un valor más bajo."
            }
            Entry::Superelevation => "Cuánto se inclinan las curvas hacia dentro; 0 si no lo sabe.",
            Entry::RetarderDelay => "Vuelve a retener este tiempo después de cerrarse el embrague.",
            Entry::RetardingScale => "100, salvo que se haya medido lo que retuvo hoy.",
            Entry::ShortPower => "Lo que da durante el tiempo corto indicado abajo, partiendo de frío.",
            Entry::SustainedPower => {
                "Lo que el refrigerante del motor evacua de forma continua. Los planes cuentan con esto."
            }
            Entry::SustainedSpeed => "Por debajo, el refrigerante circula más despacio y evacua menos.",
            Entry::HotShare => {
                "Par del ralentizador caliente dividido entre el del frío. Los planes cuentan con el caliente."
            }
            Entry::LockUpGear => {
                "En marchas más bajas, con el convertidor abierto, el motor no retiene nada."
            }
            Entry::ShiftsUpSpeed => {
                "Por encima sube de marcha y el ralentizador se desconecta; suele ser el régimen máximo del motor."
            }
            Entry::BrakeCheckStop => {
                "Tiempo para enfriar en cada zona de comprobación de frenos de la carretera; con 0 se pasa de largo."
            }
            Entry::ShaftTorque => {
                "En la posición máxima, en frío, a las revoluciones del árbol indicadas abajo."
            }
            Entry::ShaftSpeed => {
                "Revoluciones del árbol de transmisión (cardán) a las que se mide el par de arriba."
            }
            Entry::ShortTime => "Lo que dura, partiendo de frío, hasta que el refrigerante la limita.",
            Entry::WarmUpTime => "Tras trabajar este tiempo ha perdido dos tercios de lo que llega a perder.",
            Entry::LockUpSpeed => "Por debajo se abre el convertidor y el motor no retiene nada.",
            Entry::DriveAxleMass => {
                "Lo que descansa sobre los ejes motrices: determina cuánto pueden retener."
            }
            Entry::RollingRadius => {
                "Distancia de una vuelta de la rueda cargada, dividida entre 2π; la lista de medidas lo rellena."
            }
            Entry::WheelInertia => "De todas las ruedas juntas; hace que el camión parezca más pesado.",
            Entry::DragArea => {
                "Coeficiente de resistencia por área frontal; con un valor menor, el camión empuja más cuesta abajo."
            }
            Entry::Displacement => {
                "Volumen de todos los cilindros: el motor sin inyección retiene en proporción a él."
            }
            Entry::LowestEngineSpeed => "Por debajo no se cuenta ni con el motor ni con el ralentizador.",
            Entry::AxleRatio => {
                "Vueltas del árbol por cada vuelta de las ruedas; figura en la placa del eje (diferencial)."
            }
            Entry::AxleEfficiency => {
                "Las pérdidas ayudan a retener: un eje con menos pérdidas retiene menos."
            }
            Entry::RetarderPeakSpeed => "Revoluciones del motor a las que retiene más.",
            Entry::RetarderExponent => {
                "Su potencia baja con las revoluciones del motor elevadas a este exponente: cuanto mayor, más rápido."
            }
            Entry::RetarderCutOut => "Por debajo de estas revoluciones del motor se desconecta solo.",
            Entry::AirTemperature => {
                "El aire frío es más denso; los frenos se enfrían hasta esta temperatura."
            }
            Entry::BrakesAtStart => "Más alta si viene de otra bajada.",
            Entry::RatedPower => {
                "La de la placa del motor o de los papeles; la tracción y el ralentizador supuesto la siguen."
            }
            Entry::GovernedSpeed => {
                "Aquí el regulador corta la inyección, y cerca de aquí la caja sube de marcha por sí sola. Las ruedas pueden hacer girar más el motor: véase arriba."
            }
            Entry::TopGearSpeed => "Leídas en el cuentarrevoluciones en llano. Dan la relación del eje.",
        }
    }
    fn preset_hint(&self) -> &'static str {
        "Tome el camión más parecido al suyo. Sus valores quedan hasta que ponga los suyos."
    }
    fn on_plate(&self) -> &'static str {
        "En las placas y en los papeles"
    }
    fn in_head(&self) -> &'static str {
        "Lo que usted sabe como conductor"
    }
    fn rest_sentence(&self) -> &'static str {
        "Son supuestos hasta que usted los ponga. Junto a cada uno se dice lo que cuesta un valor equivocado en la carretera mostrada, en la bajada que decide."
    }
    fn top_gear_speed(&self, units: Units) -> &'static str {
        match units {
            Units::Metric => "Revoluciones a 80 km/h en la marcha más alta",
            Units::Imperial => "Revoluciones a 50 mph en la marcha más alta",
        }
    }
    fn is_axle_ratio(&self, ratio: &str) -> String {
        format!("Eso da una relación del eje de {ratio}.")
    }
    fn no_axle_ratio(&self, ratio: &str, range: &str) -> String {
        format!(
            "Con estas marchas y neumáticos la relación del eje sería de {ratio}; los ejes tienen de {range}. Revise las revoluciones, la marcha más alta y los neumáticos."
        )
    }
    fn tyre_hint(&self) -> &'static str {
        "Está en el flanco. Un neumático gastado rueda algo más corto."
    }
    fn gear_set_hint(&self) -> &'static str {
        "Cuente las marchas hacia delante. «Sobremarcha»: en la más alta el árbol gira más que el motor."
    }
    fn transmission_hint(&self) -> &'static str {
        "Automatizada: sin pedal de embrague, pero con embrague. Con convertidor: arranca sin embrague."
    }
    fn on_shaft(&self, it: OnShaft) -> &'static str {
        match it {
            OnShaft::Nothing => "ninguno",
            OnShaft::Hydrodynamic => "ralentizador de fluido",
            OnShaft::Electromagnetic => "ralentizador de imanes",
            OnShaft::EngineTable => "tabla propia, en el motor",
            OnShaft::ShaftTable => "tabla propia, en el árbol de transmisión",
        }
    }
    fn on_shaft_hint(&self) -> &'static str {
        "Un aparato en la caja o en el árbol. El de fluido calienta el refrigerante; el de imanes tiene un rotor pesado con aletas."
    }
    fn at_engine_label(&self) -> &'static str {
        "¿Y un freno motor?"
    }
    fn at_engine(&self, it: AtEngine) -> &'static str {
        match it {
            AtEngine::Nothing => "ninguno",
            AtEngine::ExhaustFlap => "mariposa de escape",
            AtEngine::Compression => "por descompresión",
        }
    }
    fn at_engine_hint(&self) -> &'static str {
        "Mariposa de escape: una mariposa en el tubo. Por descompresión: trabajan las válvulas de escape, con ruido. En caso de duda, la mariposa: retiene menos."
    }
    fn lever_label(&self) -> &'static str {
        "Posiciones de la palanca, sin «apagado»"
    }
    fn lever_hint(&self) -> &'static str {
        "Se cuenta el mismo paso para cada una. Las partes se ponen más abajo."
    }
    fn own_lever(&self) -> &'static str {
        "como se escriben abajo"
    }
    fn shape_label(&self) -> &'static str {
        "Potencia del freno motor según las revoluciones"
    }
    fn shape(&self, by_exponent: bool) -> &'static str {
        if by_exponent { "según un exponente" } else { "como la declaran los motores" }
    }
    fn shape_hint(&self) -> &'static str {
        "Como la declaran los motores, si no tiene cifras propias."
    }
    fn axles_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Ejes directrices",
            AxlePlace::Drive => "Ejes motrices y los que van con ellos",
            AxlePlace::Trailer => "Ejes del remolque",
        }
    }
    fn brakes_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Frenos de los ejes directrices",
            AxlePlace::Drive => "Frenos de los ejes motrices",
            AxlePlace::Trailer => "Frenos del remolque",
        }
    }
    fn brake(&self, kind: BrakeKind) -> &'static str {
        match kind {
            BrakeKind::Drum => "tambor",
            BrakeKind::Disc => "disco",
        }
    }
    fn without_trailer(&self) -> &'static str {
        "sin remolque"
    }
    fn axles_hint(&self) -> &'static str {
        "Cuente los ejes con freno. Cómo se reparten el trabajo es un supuesto."
    }
    fn wrong_by(&self, by: &str) -> String {
        format!("{by} de error")
    }
    fn so_many_gears(&self, gears: u8) -> String {
        if gears == 1 { "1\u{a0}marcha".to_owned() } else { format!("{gears}\u{a0}marchas") }
    }
    fn so_many_stages(&self, stages: u8) -> String {
        if stages == 1 { "1\u{a0}posición".to_owned() } else { format!("{stages}\u{a0}posiciones") }
    }
    fn no_other(&self) -> &'static str {
        "no cambian ni la marcha ni la velocidad"
    }
    fn other_verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "el ralentizador lo retendría",
            Verdict::LittleInReserve => "poca reserva",
            Verdict::NeedsServiceBrakes => "necesita los frenos de servicio",
            Verdict::NoSafeSpeed => "ninguna velocidad segura",
        }
    }
    fn worth_waits(&self) -> &'static str {
        "Lo que cuesta un valor equivocado: se dice cuando se muestra un plan."
    }
    fn worth_at_work(&self) -> &'static str {
        "Lo que cuesta un valor equivocado: se está calculando."
    }
    fn worth_no_descent(&self) -> &'static str {
        "Lo que cuesta un valor equivocado: esta carretera no tiene bajada en la que probarlo."
    }
    fn worth_not(&self) -> &'static str {
        "Lo que cuesta un valor equivocado: no se pudo calcular."
    }
}
