//! Spanish words of what follows from a plan.

use super::Spanish;
use crate::format::{self, Units};
use crate::words::StudyWords;
use crate::words::say::{enough_percent, name_or, radius};
use solver::plan::{Carried, Change};
use solver::study::{
    Adjustment, DescentSureness, Input, Lost, Measured, NotMeasured, Reach, SlowFor, Slowing,
};
use solver::truck::AxlePlace;

impl StudyWords for Spanish {
    fn change_label(&self) -> &'static str {
        "Qué lo cambiaría"
    }
    fn change(&self, change: &Change, reserve: f64, units: Units) -> Vec<String> {
        let mass = match change.mass {
            Some(mass) => format!(
                "Con {} o menos, el ralentizador retendría el vehículo con la reserva.",
                format::mass_at_most(mass.0, units)
            ),
            None => "Ninguna carga más ligera cambiaría eso.".to_owned(),
        };
        let retarding = change.retarding.map(|factor| {
            format!(
                "Con un {} más de retención de la que tiene este camión, el ralentizador lo retendría con la reserva.",
                enough_percent(factor - 1.0)
            )
        });
        let kept = change.reserve.map(|kept| {
            let (kept, asked) = (format::margin(kept), format::margin(reserve));
            format!("Tal como está, se puede conservar en reserva un {kept} como máximo, no un {asked}.")
        });
        let cool = change.cool_to.map(|at| {
            let at = format::entered_temperature(at.0, units);
            format!(
                "Con los frenos a no más de {at} en la cima se respetaría el límite: deje antes que se enfríen."
            )
        });
        [Some(mass), retarding, kept, cool].into_iter().flatten().collect()
    }
    fn carried_label(&self) -> &'static str {
        "Hacia la subida siguiente"
    }
    fn carried(&self, carried: Carried, units: Units) -> String {
        format!(
            "Retenido así hasta el pie de la bajada, el vehículo entra en la subida en el punto {} a aproximadamente {}. No deje de retenerlo antes de tiempo para entrar más rápido.",
            format::distance(carried.at.0, units),
            format::met_speed(carried.speed.0, units)
        )
    }
    fn sure_label(&self) -> &'static str {
        "Qué fiabilidad tiene"
    }
    fn sure(&self, sure: &DescentSureness, runs: usize, units: Units) -> Vec<String> {
        let held = of_runs(sure.held, runs, "el ralentizador por sí solo retuvo el vehículo a esa velocidad");
        let kept = of_runs(
            sure.kept,
            runs,
            "los frenos, incluida una frenada fuerte hasta parar, quedaron dentro del límite",
        );
        let (cool, hot) = sure.after_stop_c;
        let heat = format!(
            "En nueve de cada diez veces los frenos estaban entre {} y {} tras una frenada fuerte hasta parar.",
            format::temperature(f64::from(cool), units),
            format::temperature(f64::from(hot), units)
        );
        let what = sure.matters.iter().take(2).map(|(input, _)| of_input(*input)).collect::<Vec<_>>();
        let matters = (!what.is_empty())
            .then(|| format!("La mayor parte de esa variación procede {}.", what.join(" y, después, ")));
        let intro = format!(
            "Bajada calculada {runs} veces, con las pendientes, la masa, la resistencia, el viento, el ralentizador y los frenos cada uno algo desviado."
        );
        [Some(intro), Some(held), Some(kept), Some(heat), matters].into_iter().flatten().collect()
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
    fn lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> Vec<String> {
        let stop = match lost.can_stop(foot_m) {
            Reach::AllTheWay => {
                "Si frena fuerte antes de que pasen dos segundos desde el fallo, el vehículo se para dentro del límite de temperatura de los frenos desde cualquier punto de la bajada."
                    .to_owned()
            }
            Reach::Part(until) => format!(
                "Si frena fuerte antes de que pasen dos segundos desde el fallo, el vehículo se para dentro del límite de temperatura de los frenos solo hasta el punto {}; pasado ese punto, ya no.",
                format::distance(until.0, units)
            ),
            Reach::Nowhere => {
                "Ni siquiera en la cima respetaría una frenada fuerte hasta parar el límite de temperatura de los frenos."
                    .to_owned()
            }
        };
        let hold = match lost.can_hold(crest_m) {
            Reach::AllTheWay => {
                "Los frenos de servicio también podrían retenerlo a su velocidad hasta el pie de la bajada, dentro del límite.".to_owned()
            }
            Reach::Part(from) => format!(
                "Solo a partir del punto {} podrían los frenos de servicio retenerlo a su velocidad hasta el pie de la bajada; antes de ese punto, pare.",
                format::distance(from.0, units)
            ),
            Reach::Nowhere => {
                "Los frenos de servicio no podrían retenerlo hasta el pie de la bajada: pare.".to_owned()
            }
        };
        let neither = lost.neither_from.map(|from| {
            format!(
                "A partir del punto {}, ni parar ni retenerlo hasta el pie respetaría el límite.",
                format::distance(from.0, units)
            )
        });
        let ramps = lost.ramps.iter().map(|ramp| {
            format!(
                "Rampa de escape en el punto {}: rodando desde el punto {} sin ningún freno, el vehículo llegaría a ella a aproximadamente {}; un lecho horizontal de grava redonda y suelta necesitaría medir aproximadamente {}.",
                format::distance(ramp.at.0, units),
                format::distance(ramp.lost_at.0, units),
                format::met_speed(ramp.speed.0, units),
                format::height(ramp.needs.0, units)
            )
        });
        let none = lost.ramps.is_empty().then(|| {
            "No hay ninguna rampa de escape introducida en esta bajada; eso no significa que no exista ninguna."
                .to_owned()
        });
        let first = [Some(stop), Some(hold), neither].into_iter().flatten();
        first.chain(ramps).chain(none).collect()
    }
    fn adjustment_label(&self) -> &'static str {
        "Frenos desajustados"
    }
    fn adjustment(&self, all: &[Adjustment], units: Units) -> Vec<String> {
        let one = |it: &Adjustment| {
            let heat = format::temperature(it.hottest_after_stop.0, units);
            let kept = if it.kept { "" } else { ", por encima del límite" };
            format!("{}: aproximadamente {heat} tras una frenada fuerte hasta parar{kept}.", place(it.place))
        };
        let intro = "Si un grupo de ejes frenara solo la mitad, los demás estarían más calientes en toda la carretera.";
        std::iter::once(intro.to_owned()).chain(all.iter().map(one)).collect()
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
    fn slowing(&self, slowing: &Slowing, units: Units) -> [String; 6] {
        let (from, gear) = match slowing.lift_off {
            Some((from, speed)) => (
                format!("{}, a {}", format::distance(from.0, units), format::met_speed(speed.0, units)),
                slowing.gear.number().to_string(),
            ),
            None => ("no basta: frene con antelación".to_owned(), "–".to_owned()),
        };
        let rest = slowing.cut_out.filter(|_| slowing.lift_off.is_some());
        let rest = rest.map_or_else(String::new, |off| {
            format!("; por debajo de {}, los frenos de servicio", format::met_speed(off.0, units))
        });
        let to =
            if slowing.to.0 > 0.0 { format::hold_speed(slowing.to.0, units) } else { "parar".to_owned() };
        [
            format::distance(slowing.at.0, units),
            what_for(&slowing.what, units),
            to,
            from + &rest,
            gear,
            format!(
                "{}, después aproximadamente {}",
                format::height(slowing.brakes_need.0, units),
                format::temperature(slowing.brakes_after.0, units)
            ),
        ]
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "Y 1 más que exige menos.".to_owned()
        } else {
            format!("Y {count} más que exigen menos.")
        }
    }
    fn sure_in_short(&self, sure: &DescentSureness, runs: usize) -> String {
        let how = format!(
            "{runs} veces con las pendientes, la masa, el viento, el ralentizador y los frenos algo desviados"
        );
        if sure.held == runs && sure.kept == runs {
            return format!(
                "Calculada {how}: el ralentizador retuvo el vehículo todas las veces, y los frenos quedaron siempre dentro del límite."
            );
        }
        format!(
            "Calculada {how}: el ralentizador por sí solo retuvo el vehículo en el {} de las veces; los frenos quedaron dentro del límite en el {}.",
            format::share(sure.held as f64 / runs as f64),
            format::share(sure.kept as f64 / runs as f64)
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
    fn measured(&self, measured: &Measured, units: Units) -> String {
        format!(
            "A {} retuvo con {}; los datos del camión dan {}. Eso es el {} de lo que indican para el ralentizador.",
            format::engine_speed(measured.engine_speed.0),
            format::power(measured.power.0, units),
            format::power(measured.assumed.0, units),
            format::share(measured.scale)
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

/// “En las 256 veces …”, “En 12 de las 256 veces …”. The count stands first: behind the verb
/// “ninguna” would ask for a second negation, which reads as its opposite.
fn of_runs(count: usize, runs: usize, what: &str) -> String {
    let of = match count {
        0 => format!("En ninguna de las {runs} veces"),
        all if all == runs => format!("En las {runs} veces"),
        some => format!("En {some} de las {runs} veces"),
    };
    format!("{of} {what}.")
}

fn of_input(input: Input) -> &'static str {
    match input {
        Input::Grade => "de las pendientes",
        Input::Mass => "de la masa",
        Input::Rolling => "de la resistencia a la rodadura",
        Input::Drag => "de la resistencia al aire",
        Input::Retarder => "de lo que da el ralentizador",
        Input::Wind => "del viento",
        Input::BrakesAtStart => "de la temperatura de los frenos al inicio",
        Input::Cooling => "de lo bien o mal que se enfrían los frenos",
    }
}

fn place(place: AxlePlace) -> &'static str {
    match place {
        AxlePlace::Steer => "Eje direccional",
        AxlePlace::Drive => "Ejes motrices",
        AxlePlace::Trailer => "Remolque",
    }
}

fn what_for(what: &SlowFor, units: Units) -> String {
    match what {
        SlowFor::Curve(radius_m) => format!("curva, radio de aproximadamente {}", radius(*radius_m, units)),
        SlowFor::Limit => "límite señalizado".to_owned(),
        SlowFor::Stop(name) => name_or(name, "un lugar donde hay que parar"),
        SlowFor::BrakeCheck(name) => name_or(name, "zona de comprobación de frenos"),
        SlowFor::Town(name) => name_or(name, "pueblo o ciudad"),
    }
}
