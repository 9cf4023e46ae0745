//! Spanish words of the page's frame.

use super::Spanish;
use crate::format::{self, Units};
use crate::message::Phase;
use crate::trouble::WorkTrouble;
use crate::words::say::file_name;
use crate::words::{EntryWords, PageWords, RoadWords};

impl PageWords for Spanish {
    fn made_for(&self, facts: &str) -> String {
        format!("Calculado para: {facts}.")
    }
    fn to_truck(&self) -> &'static str {
        "¿Son su camión y sus condiciones? Introduzca los suyos."
    }
    fn to_class(&self) -> &'static str {
        "Clase"
    }
    fn targets(&self) -> &'static str {
        "Tamaño de botones y campos"
    }
    fn usual_targets(&self) -> &'static str {
        "sin guantes"
    }
    fn large_targets(&self) -> &'static str {
        "con guantes"
    }
    fn purpose(&self) -> &'static str {
        "Cómo bajar cada pendiente de una carretera: marcha, posición del ralentizador, velocidad, calor de los frenos"
    }
    fn road_section(&self) -> &'static str {
        "Carretera"
    }
    fn descents_section(&self) -> &'static str {
        "Bajadas"
    }
    fn sections(&self) -> &'static str {
        "Secciones de esta página"
    }
    fn skip_to_answer(&self) -> &'static str {
        "Ir a la respuesta"
    }
    fn units(&self) -> &'static str {
        "Unidades"
    }
    fn metric(&self) -> &'static str {
        "km/h · m · t"
    }
    fn imperial(&self) -> &'static str {
        "mph · ft · lb"
    }
    fn theme(&self) -> &'static str {
        "Claro o nocturno"
    }
    fn light(&self) -> &'static str {
        "claro"
    }
    fn night(&self) -> &'static str {
        "nocturno"
    }
    fn system(&self) -> &'static str {
        "automático"
    }
    fn choose_file(&self) -> &'static str {
        "Elegir un archivo GPX"
    }
    fn or_drop(&self) -> &'static str {
        "o suelte uno en cualquier parte de la página"
    }
    fn drop_here(&self) -> &'static str {
        "Suelte el archivo GPX: se lee solo en este equipo"
    }
    fn stays_here(&self) -> &'static str {
        "Nada sale de este equipo."
    }
    fn demo_mark(&self) -> &'static str {
        "ejemplo inventado"
    }
    fn demo_sentence(&self) -> &'static str {
        "Esta es una carretera inventada, no un puerto de montaña real. Elija su propio archivo GPX, o suéltelo en cualquier parte de la página; se queda en este equipo."
    }
    fn show_demo(&self) -> &'static str {
        "Mostrar el ejemplo"
    }
    fn reverse(&self) -> &'static str {
        "Invertir el sentido"
    }
    fn reversed_mark(&self) -> &'static str {
        "en sentido contrario al grabado"
    }
    fn course(&self) -> &'static str {
        "Recorrido del archivo"
    }
    fn which_track(&self, file: &str, count: usize) -> String {
        format!("{file} contiene {count} carreteras. ¿Por cuál va a conducir?")
    }
    fn course_unusable(&self) -> &'static str {
        "sin altitudes o demasiado corta"
    }
    fn leave_it(&self) -> &'static str {
        "Dejarlo como está"
    }
    fn which_order(&self, count: usize) -> String {
        format!("{count} archivos: ¿en qué orden se recorren?")
    }
    fn which_order_sentence(&self) -> &'static str {
        "Se unen de arriba abajo. Donde uno termina a más de 2 km del inicio del siguiente, el orden o un sentido es incorrecto."
    }
    fn join(&self, count: usize) -> String {
        if count == 1 { "Abrir este archivo".to_owned() } else { format!("Unir {count} archivos") }
    }
    fn leg_up(&self, name: &str) -> String {
        format!("Recorrer {name} antes")
    }
    fn leg_down(&self, name: &str) -> String {
        format!("Recorrer {name} después")
    }
    fn turn_leg(&self) -> &'static str {
        "En sentido contrario"
    }
    fn leave_leg(&self, name: &str) -> String {
        format!("Omitir {name}")
    }
    fn same_question(&self, count: usize) -> String {
        format!("{count} archivos coinciden sobre el terreno. ¿Muestran la misma carretera?")
    }
    fn same_sentence(&self) -> &'static str {
        "Como la misma carretera, se convierten en una: se usan las altitudes de todos; donde difieren más de lo que pueden errar, se usa la más empinada y se indica el lugar. El plan nunca es más rápido que el más rápido de cada uno por separado. Nada se combina por sí solo."
    }
    fn combine(&self, count: usize) -> String {
        format!("La misma carretera: combinar {count} grabaciones")
    }
    fn two_alike(&self, first: &str, second: &str) -> String {
        format!(
            "{first} y {second} coinciden sobre el terreno. Para combinarlos en una carretera, deje fuera los demás archivos."
        )
    }
    fn meets(&self, new: &str, before: &str) -> String {
        format!("{new} coincide con {before}. ¿Muestran la misma carretera?")
    }
    fn compare_both(&self) -> &'static str {
        "Comparar: ambos lado a lado"
    }
    fn join_both(&self) -> &'static str {
        "Unir: uno después del otro"
    }
    fn combined(&self, count: usize, files: &str) -> String {
        format!("Una carretera de {count} grabaciones: {files}")
    }
    fn take_apart(&self) -> &'static str {
        "Volver a separarlas"
    }
    fn part_of(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!("Una parte de la carretera: {} según lo grabado.", format::span(from_m, to_m, units))
    }
    fn whole_road(&self) -> &'static str {
        "Usar toda la carretera"
    }
    fn course_choice(&self, number: usize, name: &str, route: bool, length: &str) -> String {
        let kind = if route { "ruta" } else { "recorrido" };
        if name.is_empty() {
            format!("{number} · {kind} sin nombre · {length}")
        } else {
            format!("{number} · {name} ({kind}) · {length}")
        }
    }
    fn phase(&self, phase: Phase) -> &'static str {
        match phase {
            Phase::Reading => "Leyendo el archivo",
            Phase::Surveying => "Calculando altitudes y pendientes",
            Phase::Planning => "Calculando marchas, velocidades y calor",
        }
    }
    fn starting(&self) -> &'static str {
        "Iniciando"
    }
    fn cancel(&self) -> &'static str {
        "Cancelar"
    }
    fn close(&self) -> &'static str {
        "Cerrar"
    }
    fn try_again(&self) -> &'static str {
        "Intentar otra vez"
    }
    fn trouble_head(&self, trouble: &WorkTrouble) -> String {
        match trouble {
            WorkTrouble::File { name, .. } => format!("No se puede usar «{name}»"),
            WorkTrouble::ManyFiles => "Demasiados archivos a la vez".to_owned(),
            WorkTrouble::NotAFile => "Eso no era un archivo".to_owned(),
            WorkTrouble::BuiltInMissing => "No se pudo cargar la carretera inventada".to_owned(),
            WorkTrouble::CannotStart => "No se pudo iniciar el cálculo".to_owned(),
            WorkTrouble::Stopped { .. } => "El cálculo se detuvo por un error propio".to_owned(),
            WorkTrouble::Cancelled => "Cancelado".to_owned(),
            WorkTrouble::Truck { .. } => "No se puede calcular este camión".to_owned(),
            WorkTrouble::TruckFile { .. } => "No se puede usar ese archivo de camión".to_owned(),
            WorkTrouble::ProjectFile { .. } => "No se puede usar ese proyecto".to_owned(),
            WorkTrouble::CannotExport => "No se pudo guardar el archivo".to_owned(),
            WorkTrouble::NoPicture => "No se pudo guardar la ficha como imagen".to_owned(),
        }
    }
    fn trouble(&self, trouble: &WorkTrouble, units: Units) -> String {
        match trouble {
            WorkTrouble::File { error, .. } => self.file_error(error),
            WorkTrouble::ManyFiles => {
                "Se pueden unir hasta 20 archivos en una sola carretera. Elija menos.".to_owned()
            }
            WorkTrouble::NotAFile => "Suelte un archivo GPX, o use el botón para elegir uno.".to_owned(),
            WorkTrouble::BuiltInMissing => {
                "La página en sí funciona: elija un archivo GPX propio.".to_owned()
            }
            WorkTrouble::CannotStart => {
                "El navegador no cargó la parte que calcula. Recargue la página; si eso no ayuda, use un navegador de los últimos años con WebAssembly y los procesos en segundo plano (workers) activados.".to_owned()
            }
            WorkTrouble::Stopped { detail } => format!(
                "Se ha iniciado de nuevo, y no se ha perdido nada de lo que usted introdujo. Cambie el último dato, o intente otra vez. Para un informe: {detail}"
            ),
            WorkTrouble::Cancelled => {
                "Las cifras de abajo todavía corresponden a los datos anteriores. Para calcular las nuevas, cambie un dato o intente otra vez.".to_owned()
            }
            WorkTrouble::Truck { error } => self.truck_error(error, units),
            WorkTrouble::TruckFile { error } | WorkTrouble::ProjectFile { error } => self.truck_file_error(error, units),
            WorkTrouble::NoPicture => {
                "Este navegador no la dibuja. Imprima la ficha en su lugar: si la imprime en un archivo, obtiene un PDF.".to_owned()
            }
            WorkTrouble::CannotExport => {
                "No se pudo cargar la parte que lo escribe, o el navegador no permitió guardarlo. Recargue la página, o pruebe con otro navegador.".to_owned()
            }
        }
    }
    fn former_stays(&self) -> &'static str {
        "La carretera que se muestra abajo es la anterior."
    }
    fn not_current(&self) -> &'static str {
        "Las cifras mostradas corresponden a los datos o a la carretera anteriores."
    }
    fn check_entry(&self) -> &'static str {
        "Compruebe este dato:"
    }
    fn export(&self) -> &'static str {
        "Guardar cimas y cambios de marcha como GPX"
    }
    fn export_sentence(&self) -> &'static str {
        "Puntos de referencia en cada cima, en cada pie de bajada y en cada cambio de marcha o de posición, para un dispositivo que los muestre."
    }
    fn export_name(&self, road: &str) -> String {
        file_name(road, "carretera", "-bajadas.gpx")
    }
    fn no_road(&self) -> &'static str {
        "Todavía no hay carretera"
    }
    fn no_road_sentence(&self) -> &'static str {
        "Elija un archivo GPX con altitudes, o suéltelo en cualquier parte de esta página. Se lee en este equipo y no va a ningún otro lugar."
    }
}
