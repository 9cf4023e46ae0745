//! Spanish words of the truck's form.

use super::Spanish;
use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use crate::words::FormWords;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

impl FormWords for Spanish {
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
