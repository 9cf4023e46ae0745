//! What goes wrong, in a clear box; and what goes on, with a way to stop it.

use super::entry;
use crate::state::State;
use crate::trouble::WorkTrouble;
use crate::words::words;
use leptos::prelude::*;

/// The box for what went wrong last.
pub(super) fn trouble(state: State) -> AnyView {
    let shown = move || state.talk.trouble.get().map(|trouble| notice(state, &trouble));
    view! { <div class="troubles" role="alert">{shown}</div> }.into_any()
}

fn notice(state: State, trouble: &WorkTrouble) -> AnyView {
    let w = words();
    let units = state.units.get_untracked();
    let has_result = state.shown.worked.with_untracked(Option::is_some);
    let (testid, again, former) = match trouble {
        WorkTrouble::File { .. } => ("file-error", false, has_result),
        WorkTrouble::ManyFiles | WorkTrouble::NotAFile => ("drop-error", false, false),
        WorkTrouble::BuiltInMissing => ("demo-error", false, has_result),
        WorkTrouble::CannotStart => ("start-error", false, false),
        WorkTrouble::Stopped { .. } => ("worker-error", true, false),
        WorkTrouble::Cancelled => ("cancelled", true, false),
        WorkTrouble::Truck { .. } | WorkTrouble::TruckFile { .. } => ("truck-error", false, false),
        WorkTrouble::ProjectFile { .. } => ("project-error", false, has_result),
        WorkTrouble::CannotExport => ("export-error", false, false),
        WorkTrouble::NoPicture => ("picture-error", false, false),
    };
    view! {
        <section class="trouble card" data-testid=testid>
            <h2>{w.trouble_head(trouble)}</h2>
            <p>{w.trouble(trouble, units)}</p>
            {former.then(|| view! { <p>{w.former_stays()}</p> })}
            <div class="buttons">
                {again.then(|| view! {
                    <button type="button" class="button" data-testid="try-again" on:click=move |_| state.try_again()>{w.try_again()}</button>
                })}
                <button type="button" class="button" data-testid="close-trouble" on:click=move |_| state.talk.trouble.set(None)>
                    {w.close()}
                </button>
            </div>
        </section>
    }
    .into_any()
}

/// Progress with its Cancel button; and the mark of a result that is out of date.
pub(super) fn progress(state: State) -> AnyView {
    let w = words();
    // Only whether work goes on makes the bar anew; its length moves in place.
    let working = Memo::new(move |_| state.talk.progress.with(Option::is_some));
    let text = move || {
        let phase = state.talk.progress.get().and_then(|progress| progress.phase);
        phase.map_or(w.starting(), |phase| w.phase(phase))
    };
    let share = move || state.talk.progress.get().map_or(0.0, |progress| progress.share.clamp(0.0, 1.0));
    let bar = move || {
        working.get().then(|| {
            view! {
                <div class="progress" data-testid="progress">
                    <span class="phase" role="status">{text}</span>
                    <progress max="1" value=move || share().to_string()></progress>
                    <button type="button" class="button" data-testid="cancel" on:click=move |_| state.cancel()>
                        {w.cancel()}
                    </button>
                </div>
            }
        })
    };
    let former = move || {
        let waits = state.shown.stale.get() && state.shown.worked.with(Option::is_some) && !working.get();
        waits.then(|| {
            view! { <p class="former" data-testid="former" role="status">{w.not_current()}" "{wrong(state)}</p> }
        })
    };
    view! { <div class="at-work">{bar}{former}</div> }.into_any()
}

/// The way to the first entry that keeps the answer from coming; nothing where none does.
fn wrong(state: State) -> AnyView {
    let w = words();
    (move || {
        let (id, name) = match state.first_wrong() {
            Some(field) => (format!("entry-{}", field.key()), entry::label_in(field, state.units.get())),
            None => {
                state.entered.entries.with(|entries| entries.problem())?;
                ("truck-problem".to_owned(), w.truck_head())
            }
        };
        let go = move |_| state.open_drawer(Some(id.clone()));
        Some(view! {
            {w.check_entry()}" "
            <button type="button" class="link" data-testid="to-wrong" on:click=go>{name}</button>
        })
    })
    .into_any()
}
