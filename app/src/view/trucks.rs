//! Trucks of one's own: kept under a name, taken again, as a file in and out.

use super::part::text_field;
use crate::browser::file;
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;

/// The entries of their row.
pub(super) fn trucks(state: State) -> AnyView {
    let w = words();
    let name = Memo::new(move |_| state.entered.entries.with(|entries| entries.truck.name.clone()));
    // The kept truck that was taken last: what "rename" is about.
    let taken = RwSignal::new(None::<String>);
    let problem = RwSignal::new(None::<&'static str>);
    let keep = move |_| {
        let truck = state.entered.entries.get_untracked().truck;
        if truck.name.trim().is_empty() {
            return problem.set(Some(w.no_name()));
        }
        problem.set(None);
        taken.set(Some(truck.name.clone()));
        let mut fits = true;
        state.change_trucks(|trucks| fits = trucks.keep(truck));
        if !fits {
            problem.set(Some(w.too_many_trucks()));
        }
    };
    let rename = move || {
        let old = taken.get()?;
        let new = name.get();
        let there = state.entered.trucks.with(|trucks| trucks.named(&old).is_some());
        (there && new != old && !new.trim().is_empty()).then(|| {
            let label = w.rename_truck(&old);
            let change = move |_| {
                state.change_trucks(|trucks| trucks.rename(&old, &new));
                taken.set(Some(new.clone()));
            };
            view! {
                <button type="button" class="button small" data-testid="rename-truck" on:click=change>{label}</button>
            }
        })
    };
    let list = move || {
        state
            .entered
            .trucks
            .with(|trucks| trucks.kept.iter().map(|it| item(state, it.name.clone(), taken)).collect_view())
    };
    let undo = move || {
        state.entered.trucks.with(|trucks| trucks.before.is_some()).then(|| {
            let undo = move |_| state.change_trucks(crate::state::Trucks::undo);
            view! { <button type="button" class="button small" data-testid="undo-trucks" on:click=undo>{w.undo()}</button> }
        })
    };
    view! {
            <div class="entry list">
                {text_field("truck-name".to_owned(), w.truck_name(), "text", name.into(), "".into(), Box::new(move |it| state.name_truck(it)))}
            </div>
            <div class="buttons">
                <button type="button" class="button small" data-testid="keep-truck" on:click=keep>{w.keep_truck()}</button>
                {rename}
                {undo}
            </div>
            <p class="problem" role="status">{move || problem.get()}</p>
            <ul class="own-trucks">{list}</ul>
            <div class="buttons">
                <button type="button" class="button small" data-testid="save-truck" on:click=move |_| state.write_truck()>
                    {w.save_truck()}
                </button>
                {open(state)}
            </div>
            {super::link::make(state)}
    }
    .into_any()
}

fn item(state: State, name: String, taken: RwSignal<Option<String>>) -> AnyView {
    let w = words();
    let (take_label, remove_label) = (w.take_truck(&name), w.remove_truck(&name));
    let (shown, to_take, to_remove) = (name.clone(), name.clone(), name);
    let take = move |_| {
        let truck = state.entered.trucks.with_untracked(|trucks| trucks.named(&to_take).cloned());
        if let Some(truck) = truck {
            taken.set(Some(truck.name.clone()));
            state.take_own_truck(truck);
        }
    };
    let remove = move |_| state.change_trucks(|trucks| trucks.remove(&to_remove));
    view! {
        <li>
            <button type="button" class="button small" data-testid="take-truck" aria-label=take_label on:click=take>{shown}</button>
            <button type="button" class="button small plain" data-testid="remove-truck" aria-label=remove_label on:click=remove>
                {w.remove()}
            </button>
        </li>
    }
    .into_any()
}

fn open(state: State) -> impl IntoView {
    let choose = move |event| {
        if let Some(file) = file::chosen(&event).into_iter().next() {
            state.open_truck(file);
        }
    };
    view! {
        <label class="file button small">
            <input type="file" accept=".json,application/json" data-testid="truck-file" on:change=choose />
            {words().open_truck()}
        </label>
    }
}
