// Has the browser keep the page for use without a network (sw.js), and tells the page how that
// stands: `<html data-offline="kept">` once a whole version is kept, `"newer"` once another one
// waits; each change with the event `offline-told`. The page answers with two events:
// `offline-keep` once its first answer stands, so that keeping takes nothing from it, and
// `offline-load` when the person asks for the newer version. (app/src/browser/offline.rs)
//
// A script rather than Rust: it is a fifth of the size. Where a browser has no service workers,
// or refuses one, nothing is told.

const container = navigator.serviceWorker;
const root = document.documentElement;

/** Whether a version was in charge before: who takes over then is a newer one. */
let inCharge = Boolean(container?.controller);
/** Whether the newer version was asked for here. */
let asked = false;
let registration;

function tell(standing) {
  // A newer version does not become an older one.
  if (root.dataset.offline === "newer" || root.dataset.offline === standing) return;
  root.dataset.offline = standing;
  document.dispatchEvent(new Event("offline-told"));
}

function look() {
  if (registration.active && registration.waiting) tell("newer");
  else if (container.controller) tell("kept");
}

function follow() {
  registration.installing?.addEventListener("statechange", look);
  look();
}

async function keep() {
  registration = await container.register("./sw.js");
  registration.addEventListener("updatefound", follow);
  follow();
}

function load() {
  asked = true;
  const waiting = registration?.waiting;
  // Nobody waits where another window asked before.
  if (waiting) waiting.postMessage("take over");
  else location.reload();
}

if (container) {
  container.addEventListener("controllerchange", () => {
    if (asked) location.reload();
    else tell(inCharge ? "newer" : "kept");
    inCharge = true;
  });
  document.addEventListener("offline-keep", () => keep().catch(() => {}), { once: true });
  document.addEventListener("offline-load", load);
}
