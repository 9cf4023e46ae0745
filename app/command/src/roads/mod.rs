//! `steadygrade roads`: all GPX files of folders, a row a descent or a leg.
//!
//! Files are worked at on all cores and rows are written as they come, in the order of the files:
//! a file waits for its turn to be written, and no more than a fixed number of files are on their
//! way. So memory does not grow with the number of files, but for the names in one folder, which
//! are put in order.

#[cfg(feature = "parquet")]
mod columns;
mod row;
mod table;

use crate::arguments::{RoadsWords, Rows};
use crate::{file, sentences, setup};
use indicatif::{ProgressBar, ProgressStyle};
use rayon::{ThreadPool, ThreadPoolBuilder};
use row::{DescentRow, LegRow, OfFile, Row};
use solver::motion::Trip;
use std::collections::VecDeque;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, sync_channel};
use table::Table;
use walkdir::WalkDir;

/// Files on their way at once for each one that is worked at: a long road does not keep the other cores waiting.
const WAITING: usize = 32;

pub(crate) fn run(words: &RoadsWords) -> Result<(), String> {
    let (truck, day) = (setup::truck(&words.truck)?, setup::day(&words.day)?);
    let trip = Trip { truck: &truck, day: &day };
    match words.rows {
        Rows::Descents => rows::<DescentRow>(words, trip),
        Rows::Legs => rows::<LegRow>(words, trip),
    }
}

/// What is counted on the way.
#[derive(Default)]
struct Tally {
    files: u64,
    refused: u64,
    rows: u64,
}

fn rows<R: Row>(words: &RoadsWords, trip: Trip<'_>) -> Result<(), String> {
    for folder in &words.folders {
        file::check(folder)?;
    }
    let count = files(&words.folders).count();
    if count == 0 {
        return Err(format!(
            "No GPX file is in {}. Files are found by their ending, .gpx.",
            list(&words.folders)
        ));
    }
    // Zero: as many as there are cores to use.
    let jobs = words.jobs.map_or(0, usize::from);
    let pool = ThreadPoolBuilder::new().num_threads(jobs).build();
    let pool =
        pool.map_err(|error| format!("No threads could be started: {error}. Ask for fewer with --jobs."))?;
    let mut table = Table::<R>::create(&words.out, words.overwrite)?;
    let bar = bar(count);
    let mut tally = Tally::default();
    let plan = |file: &Found| row::of_file::<R>(file, trip, words.reverse);
    in_order(&pool, files(&words.folders), &plan, &mut |of_file: OfFile<R>| {
        tally.files += 1;
        tally.refused += u64::from(of_file.refused);
        tally.rows += of_file.rows.len() as u64;
        bar.inc(1);
        table.put(of_file.rows)
    })?;
    table.finish()?;
    bar.finish_and_clear();
    told(&words.out, &tally)
}

/// Does `work` on all items over the cores of the pool, and hands on what comes out in the order
/// of the items. No more than [`WAITING`] items a core are on their way at once.
///
/// # Errors
/// The first that `take` gives; nothing is begun after it.
fn in_order<T: Send, U: Send>(
    pool: &ThreadPool,
    items: impl Iterator<Item = T>,
    work: &(dyn Fn(&T) -> U + Sync),
    take: &mut dyn FnMut(U) -> Result<(), String>,
) -> Result<(), String> {
    let most = WAITING * pool.current_num_threads();
    // A worker that broke down sends nothing; its panic goes on when the scope ends.
    let mut hand_on = |done: Receiver<U>| done.recv().map_or(Ok(()), &mut *take);
    pool.in_place_scope_fifo(|scope| {
        let mut waiting = VecDeque::with_capacity(most);
        for item in items {
            if waiting.len() == most
                && let Some(first) = waiting.pop_front()
            {
                hand_on(first)?;
            }
            let (tell, done) = sync_channel(1);
            scope.spawn_fifo(move |_| {
                // Nobody listens any more after an error.
                let _ = tell.send(work(&item));
            });
            waiting.push_back(done);
        }
        waiting.into_iter().try_for_each(hand_on)
    })
}

/// A file to plan, or why a place cannot be looked into.
type Found = Result<PathBuf, walkdir::Error>;

/// All GPX files, folder after folder as given, by name within each. Links are followed; one that
/// leads round in a circle is told as an error. A file that was named is taken whatever its ending.
fn files(folders: &[PathBuf]) -> impl Iterator<Item = Found> {
    let entries = |folder| WalkDir::new(folder).follow_links(true).sort_by_file_name().into_iter();
    folders.iter().flat_map(entries).filter_map(|entry| match entry {
        Ok(entry) => {
            let is_gpx = entry.path().extension().is_some_and(|end| end.eq_ignore_ascii_case("gpx"));
            let wanted = entry.file_type().is_file() && (is_gpx || entry.depth() == 0);
            wanted.then(|| Ok(entry.into_path()))
        }
        Err(error) => Some(Err(error)),
    })
}

fn list(folders: &[PathBuf]) -> String {
    folders.iter().map(|folder| folder.display().to_string()).collect::<Vec<_>>().join(", ")
}

/// How far it is, on a terminal; nothing where standard error goes elsewhere.
fn bar(count: usize) -> ProgressBar {
    const SHOWN: &str = "{bar:30} {pos} of {len} files, {eta} to go";
    let bar = ProgressBar::new(count as u64);
    // A template that is wrong leaves the bar that the library has by itself.
    if let Ok(style) = ProgressStyle::with_template(SHOWN) {
        bar.set_style(style);
    }
    bar
}

/// What is said at the end.
fn told(out: &Path, tally: &Tally) -> Result<(), String> {
    let Tally { files, refused, rows } = tally;
    if refused == files {
        return Err(format!("None of {files} files could be planned; {} says of each why.", out.display()));
    }
    eprintln!("{files} files, {rows} rows in {}.", out.display());
    if *refused > 0 {
        eprintln!("{refused} of the files could not be planned; the column `error` says why.");
    }
    eprint!("{}", sentences::caution());
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{WAITING, in_order};
    use rayon::ThreadPoolBuilder;
    use std::sync::atomic::{AtomicUsize, Ordering::SeqCst};
    use std::time::Duration;

    fn pool() -> rayon::ThreadPool {
        ThreadPoolBuilder::new().num_threads(3).build().expect("three threads start")
    }

    #[test]
    fn what_comes_out_is_in_order_and_few_are_on_their_way() {
        let (begun, most, mut taken) = (AtomicUsize::new(0), 3 * WAITING, 0);
        let work = |item: &usize| {
            begun.fetch_add(1, SeqCst);
            // Earlier items take longer, so that later ones are done first.
            std::thread::sleep(Duration::from_micros(u64::from(item.is_multiple_of(7)) * 500));
            *item
        };
        let items = (0..2_000).inspect(|item| {
            assert!(item - begun.load(SeqCst).min(*item) <= most, "{item} were handed out too early");
        });
        in_order(&pool(), items, &work, &mut |item| {
            assert_eq!(item, taken);
            taken += 1;
            Ok(())
        })
        .expect("nothing fails");
        assert_eq!(taken, 2_000);
    }

    #[test]
    fn after_an_error_nothing_is_begun() {
        let begun = AtomicUsize::new(0);
        let work = |_: &usize| begun.fetch_add(1, SeqCst);
        let full = in_order(&pool(), 0..100_000, &work, &mut |_| Err(String::from("full")));
        assert_eq!(full, Err(String::from("full")));
        assert!(begun.load(SeqCst) <= 3 * WAITING, "{begun:?}");
    }
}
