// The harness of the browser tests: real Chromium, the served release build, and a record of
// everything the page asks for or complains about.
//
// `cargo xtask test` starts the server and passes three variables:
//   STEADYGRADE_ADDRESS   where the page is served
//   STEADYGRADE_CHROMIUM  the browser's binary
//   STEADYGRADE_SHOTS     the folder for pictures
import assert from "node:assert/strict";
import { mkdir, readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { chromium } from "playwright-core";

export const address = fromEnvironment("STEADYGRADE_ADDRESS");

export const wide = { width: 1440, height: 900 };
export const phone = { width: 390, height: 844 };

// The switches keep the browser itself from talking to anybody. No sandbox: as root, as in a
// container, there is none. The resolver rule is a second lock: no name leads anywhere.
const switches = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1",
];

function fromEnvironment(name) {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set; start the tests by \`cargo xtask test\``);
  return value;
}

/** A browser of our own, with a new profile and `more` switches. The caller closes it. */
export function startBrowser(more = []) {
  return chromium.launch({
    executablePath: fromEnvironment("STEADYGRADE_CHROMIUM"),
    args: [...switches, ...more],
  });
}

/** The same browser with a profile in a folder, as a person has one; its only context. */
export async function startBrowserAt(profile) {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: fromEnvironment("STEADYGRADE_CHROMIUM"),
    args: switches,
  });
  await park(context);
  return context;
}

/** Acknowledges the notice before the page in every window to come, as a driver does once. */
export function park(context) {
  return context.addInitScript(() => {
    try {
      sessionStorage.setItem("steadygrade.parked", "1");
    } catch {
      // An empty window has no storage, and no notice.
    }
  });
}

/** One visit: the page, and what it asked for and complained about so far. */
export class Visit {
  constructor(context, page, origin) {
    this.context = context;
    this.page = page;
    this.origin = origin;
    /** Addresses of all requests, the worker's included. */
    this.requests = [];
    /** Errors and warnings of the console, uncaught errors, failed requests. */
    this.complaints = [];
    context.on("request", (request) => this.requests.push(request.url()));
    context.on("requestfailed", (request) => {
      // A worker that is stopped on purpose breaks off what it was loading.
      const reason = request.failure()?.errorText ?? "";
      if (reason !== "net::ERR_ABORTED") this.complaints.push(`${request.url()}: ${reason}`);
    });
    context.on("response", (response) => {
      if (response.status() >= 400) this.complaints.push(`${response.url()}: ${response.status()}`);
    });
    context.on("console", (message) => {
      if (["error", "warning", "assert"].includes(message.type())) {
        this.complaints.push(`console ${message.type()}: ${message.text()}`);
      }
    });
    context.on("weberror", (error) => this.complaints.push(`uncaught: ${error.error()}`));
  }

  /** Requests to anywhere but the page's own origin. */
  foreignRequests() {
    return this.requests.filter((url) => isForeign(url, this.origin));
  }

  /** Fails when anything was asked of a stranger, or the console is not clean. */
  assertClean() {
    assert.deepEqual(this.foreignRequests(), [], "requests that leave the origin");
    assert.deepEqual(this.complaints, [], "complaints of the page");
  }

  /** The element with this data-testid. */
  byId(id) {
    return this.page.getByTestId(id);
  }

  close() {
    return this.context.close();
  }
}

/** Whether a request for `url` leaves the page's origin. data: and blob: stay in the page. */
export function isForeign(url, own) {
  const { protocol, origin: asked } = new URL(url);
  return protocol !== "data:" && protocol !== "blob:" && asked !== own;
}

/**
 * Opens the page.
 * options: at (an address other than that of the tests' server), path ("./?x"), viewport (wide |
 * phone), scheme ("light" | "dark"), `before`, a function that gets the page before it loads, and
 * parked: false leaves the notice before the page to be acknowledged.
 */
export async function openPage(browser, options = {}) {
  const { at = address, path = "./", viewport = wide, scheme = "light", before, parked = true } = options;
  const context = await browser.newContext({
    viewport,
    colorScheme: scheme,
    hasTouch: viewport.width < 600,
    deviceScaleFactor: viewport.width < 600 ? 2 : 1,
    locale: "en-GB",
    timezoneId: "UTC",
    reducedMotion: "reduce",
  });
  if (parked) await park(context);
  const visit = new Visit(context, await newWindow(context), new URL(at).origin);
  if (before) await before(visit.page);
  await visit.page.goto(new URL(path, at).href, { waitUntil: "load" });
  return visit;
}

/** Another window of the same visit: what is kept in the browser is shared. */
export async function openBeside(visit, at = visit.page.url()) {
  const other = new Visit(visit.context, await newWindow(visit.context), visit.origin);
  await other.page.goto(at, { waitUntil: "load" });
  return other;
}

async function newWindow(context) {
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  return page;
}

/**
 * Takes service workers away from a browser, as a `before` of a visit: what goes through one
 * cannot be stopped by a test.
 */
export function withoutServiceWorkers(page) {
  return page.addInitScript(() => {
    delete Navigator.prototype.serviceWorker;
  });
}

/** Opens the page and waits until its demo is worked out. */
export async function openDemo(browser, options) {
  const visit = await openPage(browser, options);
  await visit.byId("hand-speed").waitFor();
  await settle(visit);
  return visit;
}

/** Waits until there is an answer, whatever view is in front. */
export function isAnswered(visit) {
  return visit.byId("verdict-sentence").waitFor({ state: "attached" });
}

/** Presses the first of these elements that is seen. */
async function pressSeen(visit, ...ids) {
  for (const id of ids) {
    const element = visit.byId(id);
    if (await element.isVisible()) return element.click();
  }
  throw new Error(`none of these is seen: ${ids.join(", ")}`);
}

/**
 * Brings a view to the front ("road", "descents", "two", "card", "more"), as a person does: by the
 * bar; on a phone by the row at the foot, or from there. Truck and day are closed before.
 */
export async function toView(visit, view) {
  await visit.page.locator(".page[data-view]").waitFor();
  await closeTruck(visit);
  const ids = [`view-${view}`, `tab-${view}`];
  if (!(await Promise.all(ids.map((id) => visit.byId(id).isVisible()))).includes(true)) {
    await pressSeen(visit, "tab-more");
    ids.push(`further-${view}`);
  }
  await pressSeen(visit, ...ids);
  await visit.page.locator(`.page[data-view=${view}]`).waitFor();
}

/** Brings a view to the front and opens the folds about this element in it; gives it. */
export async function inView(visit, view, id) {
  await toView(visit, view);
  return unfold(visit, id);
}

/** Whether truck and day are open. */
export const truckIsOpen = (visit) => visit.byId("drawer").isVisible();

/** Opens truck and day. */
export async function openTruck(visit) {
  if (await truckIsOpen(visit)) return;
  await pressSeen(visit, "to-truck", "tab-truck");
  await visit.byId("entry-gross_mass").waitFor();
}

/** Closes truck and day. */
export async function closeTruck(visit) {
  if (!(await truckIsOpen(visit))) return;
  await visit.byId("close-drawer").click();
  await visit.byId("drawer").waitFor({ state: "hidden" });
}

/** Opens truck and day, and the folds about this element in them; gives it. */
export async function inTruck(visit, id) {
  await openTruck(visit);
  return unfold(visit, id);
}

/** Types into an entry of truck or day. */
export async function fillEntry(visit, key, text) {
  await (await inTruck(visit, `entry-${key}`)).fill(text);
}

/** Puts a place on the road at this distance. */
export async function putPlace(visit, at) {
  await (await inView(visit, "road", "put-at")).fill(at);
  await visit.byId("put").click();
}

/** Opens the folds about an element, from the outermost to its own; gives the element. */
export async function unfold(visit, id) {
  const element = visit.byId(id).first();
  await element.waitFor({ state: "attached" });
  const folded = element.locator("xpath=ancestor-or-self::details[not(@open)]").first();
  while ((await folded.count()) > 0) {
    const fold = await folded.elementHandle();
    await folded.locator("summary").first().click();
    await visit.page.waitForFunction((it) => it.open || !it.isConnected, fold);
  }
  return element;
}

/** Waits until the card says this, whatever view is in front: it is what the browser prints. */
export function sheetSays(visit, what) {
  return visit.byId("sheet").filter(what).waitFor({ state: "attached" });
}

/** Zooms in, draws the left end of the part shown to about a third of the road, the right one to its end, and has that worked out alone. */
export async function takePart(visit) {
  await toView(visit, "road");
  await visit.byId("zoom-in").click();
  await visit.byId("strip").waitFor();
  await visit.byId("window-to").focus();
  await visit.page.keyboard.press("End");
  await settle(visit, 300);
  const strip = await visit.byId("strip").locator(".strip-pad").boundingBox();
  const handle = await visit.byId("window-from").locator(".knob").first().boundingBox();
  await visit.page.mouse.move(handle.x + handle.width / 2, strip.y + strip.height / 2);
  await visit.page.mouse.down();
  await visit.page.mouse.move(strip.x + strip.width / 3, strip.y + strip.height / 2, { steps: 6 });
  await visit.page.mouse.up();
  await visit.byId("only-this").click();
  await visit.byId("notice").getByTestId("part").waitFor();
  await settle(visit);
}

/** Opens a question about the descent in hand; gives it. */
export async function openQuestion(visit, key) {
  await toView(visit, "road");
  return unfold(visit, key);
}

/** Opens the panel of the road; gives the element with this data-testid in it. */
export async function inRoad(visit, id) {
  const panel = visit.byId("road-panel");
  if (!(await panel.isVisible())) {
    await closeTruck(visit);
    await visit.byId("road-button").click();
    await panel.waitFor();
  }
  return panel.getByTestId(id);
}

/** Closes it. */
export async function closeRoad(visit) {
  if (!(await visit.byId("road-panel").isVisible())) return;
  await visit.byId("close-road").click();
  await visit.byId("road-panel").waitFor({ state: "hidden" });
}

/** A file to give to the page: { name, bytes }. */
export async function fileFrom(path) {
  return { name: basename(path), bytes: await readFile(path) };
}

/** Lets a file fall on the element with this data-testid, as a hand with a mouse does. */
export function dropFile(visit, id, file) {
  return dropFiles(visit, id, [file]);
}

/** The same with several files at once. */
export async function dropFiles(visit, id, files) {
  const given = files.map(({ name, bytes, type = "application/gpx+xml" }) => {
    return { name, type, base64: Buffer.from(bytes).toString("base64") };
  });
  const dataTransfer = await visit.page.evaluateHandle((given) => {
    const transfer = new DataTransfer();
    for (const { name, type, base64 } of given) {
      const text = atob(base64);
      const array = new Uint8Array(text.length);
      for (let i = 0; i < text.length; i += 1) array[i] = text.charCodeAt(i);
      transfer.items.add(new File([array], name, { type }));
    }
    return transfer;
  }, given);
  const zone = visit.byId(id);
  await zone.waitFor();
  for (const event of ["dragenter", "dragover", "drop"]) {
    await zone.dispatchEvent(event, { dataTransfer });
  }
  await dataTransfer.dispose();
}

/** Gives a file through the page's first file field, or the first one with this data-testid. */
export function chooseFile(visit, { name, bytes, type = "application/gpx+xml" }, id) {
  const field = id ? visit.byId(id).first() : visit.page.locator("input[type=file]").first();
  return field.setInputFiles({ name, mimeType: type, buffer: Buffer.from(bytes) });
}

/**
 * What is wider than its room: the page, or a part of it that scrolls up and down. Tables and the row
 * of descents, which are meant to scroll sideways, are let be.
 */
export function sideways(visit) {
  return visit.page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const found = scrollWidth > clientWidth ? [`the page: ${scrollWidth} px in ${clientWidth}`] : [];
    for (const it of document.querySelectorAll("body *")) {
      if (!it.checkVisibility() || it.clientWidth === 0 || it.scrollWidth <= it.clientWidth + 1) continue;
      const meant = it.closest(".wide-table, .rail-cards, .chips, textarea, .unseen");
      if (meant || !/auto|scroll/.test(getComputedStyle(it).overflowX)) continue;
      found.push(`${it.dataset.testid ?? (it.id || it.className)}: ${it.scrollWidth} px in ${it.clientWidth}`);
    }
    return found;
  });
}

/** A picture of the page into the folder for pictures; gives its path. */
export async function takeShot(visit, name) {
  const folder = fromEnvironment("STEADYGRADE_SHOTS");
  await mkdir(folder, { recursive: true });
  const path = join(folder, `${name}.png`);
  await visit.page.screenshot({ path });
  return path;
}

/** Waits until the page has stood still for `quietMs`: no change in it. At most `limitMs`. */
export function settle(visit, quietMs = 600, limitMs = 20_000) {
  return visit.page.evaluate(
    ([quietMs, limitMs]) =>
      new Promise((resolve, reject) => {
        const late = setTimeout(() => reject(new Error("the page does not come to rest")), limitMs);
        // How sure the answer is comes last; until then its share of the work stands there.
        const studied = () => !/^\d+\s%$|^…$/.test(document.querySelector("[data-testid=sure] .short")?.textContent ?? "");
        const done = () => {
          if (!studied()) {
            quiet = setTimeout(done, quietMs);
            return;
          }
          observer.disconnect();
          clearTimeout(late);
          resolve();
        };
        let quiet = setTimeout(done, quietMs);
        const observer = new MutationObserver(() => {
          clearTimeout(quiet);
          quiet = setTimeout(done, quietMs);
        });
        const everything = { subtree: true, childList: true, attributes: true, characterData: true };
        observer.observe(document, everything);
      }),
    [quietMs, limitMs],
  );
}
