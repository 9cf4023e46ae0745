// What is shown before the page's module is there: what the page is, the notice that it is not for use while
// driving, and how far loading has come. A script in the page itself, so that nothing else has to arrive first.
//
// Whoever loads the module (start.js, standalone.js) tells the window by events: `page-arrives` with the share
// that is here, `page-mounted`, and `page-failed` with the id of the sentence that says why.

{
  /** Where it is noted that the notice was acknowledged. A window opened anew begins without it. */
  const NAME = "steadygrade.parked";
  /** As long as nothing may arrive before that is said, ms. */
  const PATIENCE = 30_000;

  const part = (name) => document.getElementById(name);
  const first = part("first");
  /** The page, once it is there. */
  let page;
  /** Files that were dropped before. */
  let given = [];
  let acknowledged = false;
  let waiting;

  /** A browser that keeps nothing shows the notice whenever the page is loaded. */
  function wasParked() {
    try {
      return sessionStorage.getItem(NAME) !== null;
    } catch {
      return false;
    }
  }

  function park() {
    try {
      sessionStorage.setItem(NAME, "1");
    } catch {
      // Then it comes again.
    }
    acknowledged = true;
    part("parked-notice").remove();
    end();
  }

  function open() {
    try {
      first.showModal();
    } catch {
      // Where a browser has no such dialogs it stands above the page.
      first.setAttribute("open", "");
    }
  }

  /** Once the page is there and the notice is acknowledged. */
  function end() {
    if (!page || part("parked-notice")) return;
    for (const kind of ["dragover", "drop"]) document.removeEventListener(kind, take);
    first.remove();
    // Where the page begins: the next key leads to its first link, which shows itself only then.
    if (acknowledged) part("begin")?.focus();
  }

  function show(percent) {
    part("first-bar").value = percent;
    part("first-share").textContent = `${percent} %`;
  }

  function arrives(share) {
    // 100 only when it runs.
    show(Math.min(99, Math.floor(100 * share)));
    part("first-failed").hidden = true;
    clearTimeout(waiting);
    waiting = setTimeout(() => fail("first-slow"), PATIENCE);
  }

  function mounted() {
    clearTimeout(waiting);
    page = document.body.lastElementChild;
    first.classList.add("there");
    show(100);
    for (const name of ["first-failed", "first-file"]) part(name).hidden = true;
    hand();
    end();
  }

  function fail(why) {
    clearTimeout(waiting);
    for (const name of ["first-cut", "first-slow", "first-unable"]) part(name).hidden = name !== why;
    // Only what stands still may go on.
    part("first-loading").hidden = why !== "first-slow";
    part("first-failed").hidden = false;
    part("first-failed").scrollIntoView({ block: "nearest" });
  }

  /** Loads the page anew and passes by every cache that may hold what is not whole. */
  async function again() {
    const named = [...document.querySelectorAll("link[href]")].map((link) => link.href);
    const all = [location.href, ...named].map((address) => fetch(address, { cache: "reload" }));
    await Promise.allSettled(all);
    location.reload();
  }

  /** A file that is dropped meanwhile: without this the browser would open it in place of the page. */
  function take(event) {
    if (event.defaultPrevented) return;
    event.preventDefault();
    if (event.type !== "drop") return;
    const files = [...event.dataTransfer.files];
    if (files.length === 0) return;
    given = files;
    if (page) return hand();
    part("first-file").lastElementChild.textContent = files.map((file) => file.name).join(", ");
    part("first-file").hidden = false;
  }

  /** Gives the page what was dropped, as if it had fallen there. */
  function hand() {
    if (given.length === 0) return;
    const dataTransfer = new DataTransfer();
    for (const file of given) dataTransfer.items.add(file);
    given = [];
    page.dispatchEvent(new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer }));
  }

  // Escape, and a phone's way back, are no answer…
  first.addEventListener("cancel", (event) => event.preventDefault());
  // …though some browsers let a second one close it all the same.
  first.addEventListener("close", open);
  for (const kind of ["dragover", "drop"]) document.addEventListener(kind, take);
  part("parked")?.addEventListener("click", park);
  part("first-again").addEventListener("click", again);
  addEventListener("page-arrives", ({ detail }) => arrives(detail));
  addEventListener("page-failed", ({ detail }) => fail(detail));
  addEventListener("page-mounted", mounted);
  // `trunk serve` starts the page by a script of its own.
  addEventListener("TrunkApplicationStarted", mounted);

  if (wasParked()) part("parked-notice")?.remove();
  open();
  if (typeof WebAssembly === "object") arrives(0);
  else fail("first-unable");
}
