//! Spanish words of the entries.

use super::{Spanish, telling};
use crate::format::Units;
use crate::words::EntryWords;
use crate::words::say::file_name;
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::Entry;
use solver::report::truck_file::TruckFileError;
use solver::truck::{AxleGroup, AxlePlace, BrakeKind, Preset, RetarderKind, Transmission, TruckError};

impl EntryWords for Spanish {
    fn truck_head(&self) -> &'static str {
        "Camión"
    }
    fn day_head(&self) -> &'static str {
        "Condiciones"
    }
    fn preset_label(&self) -> &'static str {
        "Empezar con un camión parecido"
    }
    fn preset(&self, preset: Preset, units: Units) -> &'static str {
        match (preset, units) {
            (Preset::FiveAxle36, Units::Metric) => "Conjunto de cinco ejes, 36,3 t",
            (Preset::FiveAxle36, Units::Imperial) => "Conjunto de cinco ejes, 80\u{a0}000 lb",
            (Preset::FiveAxle40, Units::Metric) => "Conjunto de cinco ejes, 40 t",
            (Preset::FiveAxle40, Units::Imperial) => "Conjunto de cinco ejes, 88\u{a0}200 lb",
            (Preset::FiveAxle40Both, Units::Metric) => {
                "Conjunto de cinco ejes, 40 t, hidrodinámico y freno motor"
            }
            (Preset::FiveAxle40Both, Units::Imperial) => {
                "Conjunto de cinco ejes, 88\u{a0}200 lb, hidrodinámico y freno motor"
            }
            (Preset::FiveAxleEmpty, Units::Metric) => "Conjunto de cinco ejes, vacío, 14,5 t",
            (Preset::FiveAxleEmpty, Units::Imperial) => "Conjunto de cinco ejes, vacío, 32\u{a0}000 lb",
            (Preset::SixAxle44, Units::Metric) => "Conjunto de seis ejes, 44 t",
            (Preset::SixAxle44, Units::Imperial) => "Conjunto de seis ejes, 97\u{a0}000 lb",
            (Preset::Drawbar40, Units::Metric) => "Camión rígido con remolque, 40 t",
            (Preset::Drawbar40, Units::Imperial) => "Camión rígido con remolque, 88\u{a0}200 lb",
            (Preset::Refuse26, Units::Metric) => "Camión de basuras, automático, 26 t",
            (Preset::Refuse26, Units::Imperial) => "Camión de basuras, automático, 57\u{a0}300 lb",
            (Preset::Rigid18, Units::Metric) => "Camión rígido de dos ejes, 18 t",
            (Preset::Rigid18, Units::Imperial) => "Camión rígido de dos ejes, 39\u{a0}700 lb",
            (Preset::Tipper26, Units::Metric) => "Volquete de tres ejes, 26 t",
            (Preset::Tipper26, Units::Imperial) => "Volquete de tres ejes, 57\u{a0}300 lb",
            (Preset::BDouble, Units::Metric) => "Conjunto doble de nueve ejes, 62,5 t",
            (Preset::BDouble, Units::Imperial) => "Conjunto doble de nueve ejes, 137\u{a0}800 lb",
            (Preset::Coach, Units::Metric) => "Autobús interurbano, 19 t",
            (Preset::Coach, Units::Imperial) => "Autobús interurbano, 41\u{a0}900 lb",
            (Preset::CoachConverter, Units::Metric) => "Autobús interurbano, convertidor, 19 t",
            (Preset::CoachConverter, Units::Imperial) => "Autobús interurbano, convertidor, 41\u{a0}900 lb",
        }
    }
    fn own_truck(&self) -> &'static str {
        "Sus propios datos"
    }
    fn more_entries(&self) -> &'static str {
        "Supuesto para este camión"
    }
    fn assumed(&self) -> &'static str {
        "supuesto"
    }
    fn assumed_sentence(&self) -> &'static str {
        "Los valores marcados «supuesto» no tienen fuente impresa para este camión: ponga los suyos."
    }
    fn entry(&self, entry: Entry) -> &'static str {
        match entry {
            Entry::GrossMass => "Masa total real",
            Entry::DriveAxleMass => "Masa sobre los ejes motrices",
            Entry::RollingRadius => "Radio de rodadura",
            Entry::WheelInertia => "Inercia de las ruedas",
            Entry::RollingResistance => "Resistencia a la rodadura",
            Entry::DragArea => "Área de resistencia al aire",
            Entry::Displacement => "Cilindrada del motor",
            Entry::LowestEngineSpeed => "Revoluciones mínimas útiles del motor",
            Entry::HighestEngineSpeed => "Revoluciones máximas permitidas del motor",
            Entry::AxleRatio => "Relación del eje",
            Entry::AxleEfficiency => "Rendimiento del eje",
            Entry::RetarderPeakPower => "Potencia de frenado del ralentizador",
            Entry::RetarderPeakSpeed => "Revoluciones del motor con la potencia de frenado máxima",
            Entry::RetarderExponent => "Aumento de la potencia de frenado con las revoluciones",
            Entry::RetarderCutOut => "Revoluciones del motor a las que se desconecta",
            Entry::RolloverThreshold => "Umbral de vuelco",
            Entry::AirTemperature => "Temperatura del aire",
            Entry::BrakesAtStart => "Temperatura de los frenos al inicio",
            Entry::Headwind => "Viento de frente",
            Entry::SpeedLimit => "Límite de velocidad",
            Entry::Reserve => "Reserva de fuerza de retención",
            Entry::HeatLimit => "Temperatura máxima de los frenos",
            Entry::Superelevation => "Peralte de las curvas",
            Entry::RetarderDelay => "Demora del ralentizador tras cambiar de marcha",
            Entry::RetardingScale => "Potencia de frenado medida respecto a la supuesta",
            Entry::ShaftTorque => "Par del ralentizador en el árbol de transmisión",
            Entry::ShaftSpeed => "Revoluciones del árbol para ese par",
            Entry::ShortPower => "Potencia de corta duración del ralentizador",
            Entry::ShortTime => "Tiempo de la potencia de corta duración",
            Entry::SustainedPower => "Potencia continua del ralentizador",
            Entry::SustainedSpeed => "Revoluciones del motor para la potencia continua",
            Entry::HotShare => "Par en caliente respecto al par en frío",
            Entry::WarmUpTime => "Tiempo de calentamiento del ralentizador",
            Entry::LockUpGear => "Marcha más baja con bloqueo del convertidor",
            Entry::LockUpSpeed => "Revoluciones del motor a las que se abre el bloqueo",
            Entry::BrakeCheckStop => "Tiempo en cada zona de comprobación de frenos",
            Entry::ShiftsUpSpeed => "Revoluciones a las que la caja sube de marcha por sí sola",
            Entry::RatedPower => "Potencia nominal del motor",
            Entry::GovernedSpeed => "Régimen de corte del motor",
            Entry::TopGearSpeed => "Revoluciones en la marcha más alta",
        }
    }
    fn not_a_number(&self, typed: &str) -> String {
        format!("«{typed}» no es un número.")
    }
    fn out_of_range(&self, typed: &str) -> String {
        format!("{typed} está fuera de los límites admitidos.")
    }
    fn enter_from(&self, range: &str) -> String {
        format!("Escriba un valor de {range}.")
    }
    fn truck_error(&self, error: &TruckError, units: Units) -> String {
        telling::truck_error(error, units)
    }
    fn truck_file_error(&self, error: &TruckFileError, units: Units) -> String {
        telling::truck_file_error(error, units)
    }
    fn gears(&self) -> &'static str {
        "Relaciones de las marchas"
    }
    fn gears_hint(&self) -> &'static str {
        "Empiece por la primera marcha y deje espacios entre las relaciones."
    }
    fn stages(&self) -> &'static str {
        "Posiciones del ralentizador"
    }
    fn stages_hint(&self) -> &'static str {
        "Parte del frenado máximo en cada posición, en por ciento, primero la más débil, la última 100."
    }
    fn retarder_table(&self) -> &'static str {
        "Ralentizador por revoluciones y posición"
    }
    fn shaft_table_hint(&self) -> &'static str {
        "Una línea por régimen: revoluciones del árbol, dos puntos (:) y después el par de cada posición en N·m, primero la más débil. Fuera de la tabla se cuenta como desconectado."
    }
    fn engine_table_hint(&self) -> &'static str {
        "Una línea por régimen: revoluciones del motor, dos puntos (:) y después la potencia de cada posición en kW, primero la más débil. Fuera de la tabla se cuenta como desconectado."
    }
    fn retarder_label(&self) -> &'static str {
        "Ralentizador"
    }
    fn retarder(&self, kind: RetarderKind) -> &'static str {
        match kind {
            RetarderKind::None => "ninguno",
            RetarderKind::CompressionRelease => "freno motor por descompresión",
            RetarderKind::ExhaustValve => "freno de escape",
            RetarderKind::Hydrodynamic => "en la transmisión, hidrodinámico",
            RetarderKind::Electromagnetic => "en la transmisión, electromagnético",
            RetarderKind::CompressionAndHydrodynamic => "por descompresión e hidrodinámico",
            RetarderKind::ExhaustAndHydrodynamic => "freno de escape e hidrodinámico",
            RetarderKind::CompressionAndElectromagnetic => "por descompresión y electromagnético",
            RetarderKind::ExhaustAndElectromagnetic => "freno de escape y electromagnético",
            RetarderKind::EnginePowerTable => "tabla propia, en el motor",
            RetarderKind::ShaftTorqueTable => "tabla propia, en el árbol de transmisión",
        }
    }
    fn transmission_label(&self) -> &'static str {
        "Caja de cambios"
    }
    fn transmission(&self, transmission: Transmission) -> &'static str {
        match transmission {
            Transmission::Manual => "manual",
            Transmission::Automated => "automatizada",
            Transmission::TorqueConverter { .. } => "con convertidor",
        }
    }
    fn load_label(&self) -> &'static str {
        "Carga"
    }
    fn load(&self, load: Load) -> &'static str {
        match load {
            Load::Laden => "cargado",
            Load::Empty => "vacío",
            Load::NoTrailer => "sin remolque",
        }
    }
    fn mass_stays(&self, mass: &str) -> String {
        format!(
            "Esto no cambia la masa: sigue introducida la de {mass}. Introduzca lo que pesa ahora el vehículo."
        )
    }
    fn gear_set_label(&self) -> &'static str {
        "Número de marchas"
    }
    fn gear_set(&self, gears: usize, overdrive: bool) -> String {
        let top = if overdrive { "con sobremarcha" } else { "la más alta directa" };
        format!("{gears} marchas, {top}")
    }
    fn own_gears(&self) -> &'static str {
        "como se escriben abajo"
    }
    fn tyre_label(&self) -> &'static str {
        "Neumáticos de los ejes motrices"
    }
    fn own_tyre(&self) -> &'static str {
        "radio de rodadura como se escribe"
    }
    fn curves_name(&self) -> &'static str {
        "Potencia según las revoluciones del motor"
    }
    fn curves_about(&self, unit: &str) -> String {
        format!(
            "Potencia en {unit} según las revoluciones del motor: en trazo grueso, con la que tira; en trazo discontinuo, con la que retienen el motor y el ralentizador, posición por posición. Lo que un ralentizador en el árbol da de forma continua se dibuja para la marcha directa."
        )
    }
    fn own_trucks(&self) -> &'static str {
        "Sus propios camiones"
    }
    fn truck_name(&self) -> &'static str {
        "Nombre de este camión"
    }
    fn keep_truck(&self) -> &'static str {
        "Guardarlo con este nombre"
    }
    fn rename_truck(&self, name: &str) -> String {
        format!("Cambiar el nombre «{name}» por este")
    }
    fn take_truck(&self, name: &str) -> String {
        format!("Planificar con «{name}»")
    }
    fn remove_truck(&self, name: &str) -> String {
        format!("Quitar «{name}»")
    }
    fn undo(&self) -> &'static str {
        "Deshacer"
    }
    fn remove(&self) -> &'static str {
        "Quitar"
    }
    fn no_name(&self) -> &'static str {
        "Antes póngale un nombre."
    }
    fn too_many_trucks(&self) -> &'static str {
        "No cabe otro camión: quite uno antes."
    }
    fn save_truck(&self) -> &'static str {
        "Guardar como archivo"
    }
    fn open_truck(&self) -> &'static str {
        "Abrir un archivo de camión"
    }
    fn truck_file_name(&self, name: &str) -> String {
        file_name(name, "propio", "-camion.json")
    }
    fn axle_groups(&self) -> &'static str {
        "Ejes con freno"
    }
    fn axle_group(&self, group: &AxleGroup) -> String {
        let axles = match (group.place, group.axles == 1) {
            (AxlePlace::Steer, true) => "eje direccional",
            (AxlePlace::Steer, false) => "ejes direccionales",
            (AxlePlace::Drive, true) => "eje motriz",
            (AxlePlace::Drive, false) => "ejes motrices",
            (AxlePlace::Trailer, true) => "eje de remolque",
            (AxlePlace::Trailer, false) => "ejes de remolque",
        };
        let brake = match group.brake {
            BrakeKind::Drum => "tambor",
            BrakeKind::Disc => "disco",
        };
        let share = crate::format::whole((group.effort_share * 100.0).round());
        format!("{} {axles}, {brake}, {share} % del frenado", group.axles)
    }
    fn surface_label(&self) -> &'static str {
        "Calzada"
    }
    fn surface(&self, surface: Surface) -> &'static str {
        match surface {
            Surface::Dry => "seca",
            Surface::Wet => "mojada",
            Surface::Snow => "nieve",
            Surface::Ice => "hielo",
        }
    }
    fn service_brakes_label(&self) -> &'static str {
        "Frenos de servicio"
    }
    fn service_brakes(&self, service_brakes: ServiceBrakes) -> &'static str {
        match service_brakes {
            ServiceBrakes::InReserve => "en reserva",
            ServiceBrakes::MaySnub => "frenadas cortas e intermitentes permitidas",
        }
    }
    fn lead_label(&self) -> &'static str {
        "Forma de bajar"
    }
    fn lead(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => "la más rápida",
            Lead::OneGear => "una sola marcha",
            Lead::Untouched => "sin tocar los frenos",
        }
    }
    fn lead_hint(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => {
                "En una bajada larga la marcha puede cambiar en lugares indicados, si eso ahorra minutos."
            }
            Lead::OneGear => "Una sola marcha desde la cima hasta el pie, con su velocidad.",
            Lead::Untouched => {
                "Una marcha en la que el ralentizador retiene solo en todas las pendientes grabadas, también donde las altitudes están en duda."
            }
        }
    }
    fn usual_day(&self) -> &'static str {
        "Volver a las condiciones habituales"
    }
    fn kept_here(&self) -> &'static str {
        "Los datos se guardan solo en este navegador."
    }
}
