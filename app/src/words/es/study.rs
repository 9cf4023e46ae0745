//! Spanish words of what follows from a plan.

use super::Spanish;
use crate::format;
use crate::words::StudyWords;
use solver::study::{Input, NotMeasured};
use solver::truck::AxlePlace;

impl StudyWords for Spanish {
    fn change_label(&self) -> &'static str {
        "Qué lo cambiaría"
    }
    fn light_enough(&self, mass: &str) -> String {
        format!("Con {mass} o menos, el ralentizador retendría el vehículo con la reserva.")
    }
    fn no_lighter_load(&self) -> &'static str {
        "Ninguna carga más ligera cambiaría eso."
    }
    fn more_retarding(&self, share: &str) -> String {
        format!(
            "Con un {share} más de retención de la que tiene este camión, el ralentizador lo retendría con la reserva."
        )
    }
    fn reserve_kept(&self, kept: &str, asked: &str) -> String {
        format!("Tal como está, se puede conservar en reserva un {kept} como máximo, no un {asked}.")
    }
    fn cool_enough(&self, at: &str) -> String {
        format!(
            "Con los frenos a no más de {at} en la cima se respetaría el límite: deje antes que se enfríen."
        )
    }
    fn carried_label(&self) -> &'static str {
        "Hacia la subida siguiente"
    }
    fn meets_rise(&self, at: &str, speed: &str) -> String {
        format!(
            "Retenido así hasta el pie de la bajada, el vehículo entra en la subida en el punto {at} a aproximadamente {speed}. No deje de retenerlo antes de tiempo para entrar más rápido."
        )
    }
    fn sure_label(&self) -> &'static str {
        "Qué fiabilidad tiene"
    }
    fn driven_so(&self, runs: usize) -> String {
        format!(
            "Bajada calculada {runs} veces, con las pendientes, la masa, la resistencia, el viento, el ralentizador y los frenos cada uno algo desviado."
        )
    }
    fn in_none(&self, runs: usize) -> String {
        format!("En ninguna de las {runs} veces")
    }
    fn in_all(&self, runs: usize) -> String {
        format!("En las {runs} veces")
    }
    fn in_some(&self, some: usize, runs: usize) -> String {
        format!("En {some} de las {runs} veces")
    }
    fn speed_held(&self, of: &str) -> String {
        format!("{of} el ralentizador por sí solo retuvo el vehículo a esa velocidad.")
    }
    fn limit_kept(&self, of: &str) -> String {
        format!("{of} los frenos, incluida una frenada fuerte hasta parar, quedaron dentro del límite.")
    }
    fn nine_of_ten(&self, cool: &str, hot: &str) -> String {
        format!(
            "En nueve de cada diez veces los frenos estaban entre {cool} y {hot} tras una frenada fuerte hasta parar."
        )
    }
    fn spread_from(&self, inputs: &str) -> String {
        format!("La mayor parte de esa variación procede {inputs}.")
    }
    fn input(&self, input: Input) -> &'static str {
        match input {
            Input::Grade => "de las pendientes",
            Input::Mass => "de la masa",
            Input::Rolling => "de la resistencia a la rodadura",
            Input::Drag => "de la resistencia al aire",
            Input::Retarder => "de lo que da el ralentizador",
            Input::Wind => "del viento",
            Input::BrakesAtStart => "de la temperatura de los frenos al inicio",
            Input::Cooling => "de cuánto calor almacenan y ceden los frenos",
        }
    }
    fn and_then(&self) -> &'static str {
        " y, después, "
    }
    fn too_long_to_be_sure(&self) -> &'static str {
        "Esta carretera es demasiado larga para calcularla 256 veces: calcule una parte de ella para saber qué fiabilidad tiene su plan."
    }
    fn studying(&self, share: f32) -> String {
        format!("Calculando la fiabilidad: hecho el {}", format::share(f64::from(share)))
    }
    fn not_yet(&self) -> &'static str {
        "…"
    }
    fn lost_label(&self) -> &'static str {
        "Si falla el ralentizador"
    }
    fn stops_anywhere(&self) -> &'static str {
        "Si frena fuerte antes de que pasen dos segundos desde el fallo, el vehículo se para dentro del límite de temperatura de los frenos desde cualquier punto de la bajada."
    }
    fn stops_until(&self, until: &str) -> String {
        format!(
            "Si frena fuerte antes de que pasen dos segundos desde el fallo, el vehículo se para dentro del límite de temperatura de los frenos solo hasta el punto {until}; pasado ese punto, ya no."
        )
    }
    fn stops_nowhere(&self) -> &'static str {
        "Ni siquiera en la cima respetaría una frenada fuerte hasta parar el límite de temperatura de los frenos."
    }
    fn brakes_hold(&self) -> &'static str {
        "Los frenos de servicio también podrían retenerlo a su velocidad hasta el pie de la bajada, dentro del límite."
    }
    fn brakes_hold_from(&self, from: &str) -> String {
        format!(
            "Solo a partir del punto {from} podrían los frenos de servicio retenerlo a su velocidad hasta el pie de la bajada; antes de ese punto, pare."
        )
    }
    fn brakes_hold_nowhere(&self) -> &'static str {
        "Los frenos de servicio no podrían retenerlo hasta el pie de la bajada: pare."
    }
    fn neither_from(&self, from: &str) -> String {
        format!("A partir del punto {from}, ni parar ni retenerlo hasta el pie respetaría el límite.")
    }
    fn ramp_met(&self, at: &str, lost_at: &str, speed: &str, needs: &str) -> String {
        format!(
            "Rampa de escape en el punto {at}: rodando desde el punto {lost_at} sin ningún freno, el vehículo llegaría a ella a aproximadamente {speed}; un lecho horizontal de grava redonda y suelta necesitaría medir aproximadamente {needs}."
        )
    }
    fn no_ramp_entered(&self) -> &'static str {
        "No hay ninguna rampa de escape introducida en esta bajada; eso no significa que no exista ninguna."
    }
    fn adjustment_label(&self) -> &'static str {
        "Frenos desajustados"
    }
    fn long_stroke(&self, at: &str, shorter: &str, short: &str) -> String {
        format!(
            "Si los frenos de tambor de un grupo de ejes tuvieran en frío una carrera de 1¾ pulgadas (44 mm), una cámara de freno del tamaño 30 llegaría a su límite de 2 pulgadas (51 mm) a {at}: por encima no se cuentan aquí, y los demás están más calientes. Con 1⅝ pulgadas (41 mm) son {shorter}; con 1½ pulgadas (38 mm), {short}."
        )
    }
    fn half_braked(&self) -> &'static str {
        "Si los frenos de disco de un grupo de ejes frenaran solo la mitad, los demás estarían más calientes en toda la carretera."
    }
    fn out_of_adjustment(&self, axles: &str, heat: &str, over: &str) -> String {
        format!("{axles}: aproximadamente {heat} tras una frenada fuerte hasta parar{over}.")
    }
    fn axles(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Eje direccional",
            AxlePlace::Drive => "Ejes motrices",
            AxlePlace::Trailer => "Remolque",
        }
    }
    fn slowing_label(&self) -> &'static str {
        "Reducir la velocidad para lo que viene"
    }
    fn slowing_sentence(&self) -> &'static str {
        "Si desde ahí va sin acelerador y en la posición máxima, el ralentizador por sí solo reduce la velocidad de este camión hasta la indicada, y los frenos de servicio siguen fríos. Tienen prioridad las señales y lo que usted vea."
    }
    fn slowing_heads(&self) -> [&'static str; 6] {
        [
            "en el punto",
            "por qué",
            "reducir a",
            "posición máxima desde",
            "marcha",
            "solo con los frenos de servicio",
        ]
    }
    fn full_stage_from(&self, from: &str, speed: &str) -> String {
        format!("{from}, a {speed}")
    }
    fn rest_below(&self, speed: &str) -> String {
        format!("; por debajo de {speed}, los frenos de servicio")
    }
    fn brake_early(&self) -> &'static str {
        "no basta: frene con antelación"
    }
    fn standstill(&self) -> &'static str {
        "parar"
    }
    fn by_brakes_alone(&self, way: &str, after: &str) -> String {
        format!("{way}, después aproximadamente {after}")
    }
    fn curve_of(&self, radius: &str) -> String {
        format!("curva, radio de aproximadamente {radius}")
    }
    fn place_to_stop(&self) -> &'static str {
        "un lugar donde hay que parar"
    }
    fn town(&self) -> &'static str {
        "pueblo o ciudad"
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "Y 1 más que exige menos.".to_owned()
        } else {
            format!("Y {count} más que exigen menos.")
        }
    }
    fn driven_in_short(&self, runs: usize) -> String {
        format!(
            "Calculada {runs} veces con las pendientes, la masa, el viento, el ralentizador y los frenos algo desviados"
        )
    }
    fn held_and_kept(&self) -> &'static str {
        "el ralentizador retuvo el vehículo todas las veces, y los frenos quedaron siempre dentro del límite."
    }
    fn shares_held(&self, held: &str, kept: &str) -> String {
        format!(
            "el ralentizador por sí solo retuvo el vehículo en el {held} de las veces; los frenos quedaron dentro del límite en el {kept}."
        )
    }
    fn evidence_head(&self) -> &'static str {
        "Datos de contraste"
    }
    fn evidence_sentence(&self) -> &'static str {
        "Con qué se contrasta el cálculo: valores de fuera de este proyecto, cada uno con su fuente y cómo se obtuvo, y lo que resulta aquí. Las mismas filas son las pruebas del proyecto."
    }
    fn evidence_count(&self, rows: usize, known: usize) -> String {
        if known == 1 {
            return format!(
                "{rows} valores; 1 de ellos difiere de su fuente en más de su tolerancia, y está marcado."
            );
        }
        format!(
            "{rows} valores; {known} de ellos difieren de su fuente en más de su tolerancia, y están marcados."
        )
    }
    fn evidence_heads(&self) -> [&'static str; 4] {
        ["qué", "valor de la fuente", "aquí", "diferencia"]
    }
    fn evidence_difference(&self) -> &'static str {
        "difiere"
    }
    fn evidence_missing(&self) -> &'static str {
        "No se pudieron cargar las filas. Abra esto otra vez o recargue la página."
    }
    fn measured_head(&self) -> &'static str {
        "Lo que retuvo hoy"
    }
    fn measured_sentence(&self) -> &'static str {
        "¿Mantuvo una velocidad constante en una bajada solo con el ralentizador, sin acelerador y sin frenos de servicio? Introduzca lo que vio, después y con el vehículo estacionado: así se sabe lo que su ralentizador da de verdad con la masa y las condiciones introducidas arriba."
    }
    fn measured_fields(&self) -> [&'static str; 6] {
        [
            "Marcha",
            "Posición",
            "Revoluciones del motor",
            "Velocidad constante",
            "Pendiente, cuesta abajo",
            "o bien: punto de la carretera mostrada",
        ]
    }
    fn measured_place_hint(&self) -> &'static str {
        "Si se indica un punto, se toman en su lugar la pendiente y la altitud de ese punto."
    }
    fn measure(&self) -> &'static str {
        "Calcularlo"
    }
    fn measured_missing(&self) -> &'static str {
        "Introduzca la marcha, la posición, las revoluciones del motor y la velocidad constante, y además una pendiente cuesta abajo o un punto en una bajada de la carretera mostrada, todo en números."
    }
    fn held_with(&self, engine_speed: &str, power: &str, assumed: &str, share: &str) -> String {
        format!(
            "A {engine_speed} retuvo con {power}; los datos del camión dan {assumed}. Eso es el {share} de lo que indican para el ralentizador."
        )
    }
    fn not_measured(&self, why: &NotMeasured) -> String {
        match why {
            NotMeasured::NoSuchStage => "Este camión no tiene esa marcha o esa posición.".to_owned(),
            NotMeasured::Off => {
                "Con el ralentizador desconectado no se sabe nada de él: introduzca una posición.".to_owned()
            }
            NotMeasured::NotPushed => {
                "Esa pendiente no empuja este camión a esa velocidad: introduzca un tramo más empinado."
                    .to_owned()
            }
            NotMeasured::GaugesDiffer(turning) => format!(
                "En esa marcha y a esa velocidad el motor giraría a aproximadamente {}: está mal la marcha, la relación del eje, el neumático o una de las dos cifras.",
                format::engine_speed(turning.0)
            ),
            NotMeasured::OutOfReach(factor) => format!(
                "El ralentizador tendría que dar el {} de lo que indican sus datos. Es más probable que la masa, la pendiente o la posición no sean las introducidas, o que ayudaran los frenos de servicio.",
                format::share(*factor)
            ),
        }
    }
    fn use_measured(&self) -> &'static str {
        "Planificar con este valor"
    }
    fn undo_measured(&self) -> &'static str {
        "Volver a los datos del camión"
    }
    fn scale_in_use(&self, scale: f64) -> String {
        format!("Los planes cuentan con el {} de los datos del ralentizador.", format::share(scale))
    }
}
