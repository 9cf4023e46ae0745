// Without a network: the kept page, its versions, and installing it.

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import {
  closeTruck, dropFile, fillEntry, inTruck, inView, isAnswered, openBeside, openPage, startBrowser, startBrowserAt,
  takeShot, toView,
} from "./page.mjs";
import { hill } from "./roads.mjs";
import { pages, read } from "./read.mjs";
import { changeBuild, changedTitle, dist, startSite } from "./site.mjs";

const FOLDER = "/some/sub/folder/";
const OTHER = "/other/";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** A site below some folders and a visit of the first whose page is kept whole. */
async function openKept(t, ...paths) {
  const site = await startSite(...paths);
  t.after(() => site.clear());
  const visit = await openPage(browser, { at: site.address() });
  t.after(() => visit.close());
  await isKept(visit);
  return { site, visit };
}

/** Waits until the settings say that the page is kept. */
async function isKept(visit) {
  await isAnswered(visit);
  await toView(visit, "more");
  await visit.byId("kept").waitFor();
}

async function reload(visit) {
  await visit.page.reload();
  await isAnswered(visit);
}

const title = (visit) => visit.page.title();

/** How many rows of evidence the page shows. */
async function evidenceRows(visit) {
  await inView(visit, "more", "evidence");
  await visit.byId("evidence-count").waitFor();
  return visit.byId("evidence").locator("tbody tr:not(:has(th))").count();
}

const allRows = async (site) => {
  const page = await readFile(join(site.folder(), "index.html"), "utf8");
  const [name] = page.match(/evidence-[0-9a-f]{16}\.json/);
  return JSON.parse(await readFile(join(site.folder(), name), "utf8")).length;
};

/** Asks for a newer version, as the browser does by itself at a visit; tells what became of it. */
function lookForNewer(visit) {
  return visit.page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    const outcome = new Promise((told) => {
      registration.addEventListener("updatefound", () => {
        const worker = registration.installing;
        worker.addEventListener("statechange", () => {
          if (worker.state !== "installing") told(worker.state);
        });
      });
    });
    await registration.update();
    return outcome;
  });
}

/** Waits until the browser keeps this many versions. */
function keeps(visit, count) {
  return visit.page.evaluate(async (count) => {
    const late = performance.now() + 15_000;
    // Nobody tells when a version is deleted.
    for (let kept = await caches.keys(); kept.length !== count; kept = await caches.keys()) {
      if (performance.now() > late) throw new Error(`${count} versions wanted, kept are: ${kept}`);
      await new Promise((frame) => requestAnimationFrame(frame));
    }
  }, count);
}

test("kept after the first visit, the page works with its host switched off, in any folder", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  await site.stop();
  await assert.rejects(fetch(site.address()), "the host is off");
  await reload(visit);
  await isKept(visit);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await visit.byId("sure").filter({ hasText: "256 times" }).waitFor({ state: "attached" });
  assert.match(await read(visit, "verdict-sentence"), /from km 2\.0: gear \d+, stage \d+, \d+ km\/h/);
  assert.equal(pages(await visit.page.pdf({ format: "A4" })), 1);
  assert.ok((await evidenceRows(visit)) > 200);
  await inTruck(visit, "entry-gross_mass");
  assert.ok(visit.requests.every((url) => url.startsWith("blob:") || url.startsWith(site.address())), "in its folder");
  visit.assertClean();
});

test("a newer version waits, says what loading it costs, and takes over when it is asked to", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  const before = await title(visit);
  const sentence = await read(visit, "verdict-sentence");
  await fillEntry(visit, "gross_mass", "44");
  await changeBuild(site.folder());
  // The browser looks for another version by itself.
  await reload(visit);
  await visit.byId("load-newer").waitFor();
  assert.equal(await title(visit), before);
  assert.equal(await visit.byId("load-newer").innerText(), "New version: load it");
  assert.match(await read(visit, "newer"), /the road and its places stay\..* do not\./);
  // It waits for as long as it takes.
  await reload(visit);
  assert.equal(await title(visit), before);
  await closeTruck(visit);
  await visit.byId("load-newer").click();
  await visit.page.waitForFunction((title) => document.title === title, changedTitle);
  await isAnswered(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "44");
  assert.notEqual(await read(visit, "verdict-sentence"), sentence);
  assert.equal(await evidenceRows(visit), 1);
  await keeps(visit, 1);
  await isKept(visit);
  assert.equal(await visit.byId("load-newer").count(), 0);
  await site.stop();
  await reload(visit);
  assert.equal(await title(visit), changedTitle);
  visit.assertClean();
});

test("put off, the newer version keeps quiet until the next visit", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  await changeBuild(site.folder());
  assert.equal(await lookForNewer(visit), "installed");
  await visit.byId("newer").getByRole("button", { name: "Later" }).click();
  await visit.byId("load-newer").waitFor({ state: "detached" });
  await isKept(visit);
  await reload(visit);
  await visit.byId("load-newer").waitFor();
  visit.assertClean();
});

test("a window still open in the version before stays in it, whole, until it asks itself", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  const rows = await allRows(site);
  assert.ok(rows > 200);
  const other = await openBeside(visit);
  await isKept(other);
  const before = await title(other);
  await changeBuild(site.folder());
  await lookForNewer(visit);
  await visit.byId("load-newer").click();
  await visit.page.waitForFunction((title) => document.title === title, changedTitle);
  await isAnswered(visit);
  assert.equal(await evidenceRows(visit), 1);
  // The file is gone from the host, and is not in the version that is in charge now.
  assert.equal(await evidenceRows(other), rows);
  assert.equal(await title(other), before);
  await other.byId("load-newer").click();
  await other.page.waitForFunction((title) => document.title === title, changedTitle);
  assert.equal(await evidenceRows(other), 1);
  // The version before is deleted as soon as no window can be of it.
  await keeps(other, 2);
  await other.page.close();
  await visit.page.close();
  const next = await openBeside(visit, site.address());
  await keeps(next, 1);
  next.assertClean();
});

test("of a version that has not arrived whole nothing is taken", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  const before = await title(visit);
  const rows = await allRows(site);
  await changeBuild(site.folder(), { half: true });
  assert.equal(await lookForNewer(visit), "redundant");
  assert.equal(await visit.byId("load-newer").count(), 0);
  await reload(visit);
  assert.equal(await title(visit), before);
  assert.equal(await evidenceRows(visit), rows);
});

test("a copy in another folder of the host keeps its own version", async (t) => {
  const { site, visit } = await openKept(t, FOLDER, OTHER);
  await visit.page.goto(site.address(OTHER));
  await isKept(visit);
  const before = await title(visit);
  await keeps(visit, 2);
  await changeBuild(site.folder(FOLDER));
  await visit.page.goto(site.address(FOLDER));
  await visit.byId("load-newer").click();
  await visit.page.waitForFunction((title) => document.title === title, changedTitle);
  await isKept(visit);
  await keeps(visit, 2);
  await site.stop();
  await visit.page.goto(site.address(OTHER));
  await isAnswered(visit);
  assert.equal(await title(visit), before);
  visit.assertClean();
});

/** Asked for what is not kept, the browser complains that the host is off, and of nothing else. */
function onlyTheHostIsMissed(visit) {
  assert.deepEqual(visit.foreignRequests(), []);
  assert.deepEqual(visit.complaints.filter((it) => !it.endsWith("net::ERR_CONNECTION_REFUSED")), []);
}

test("without a network a page that was never opened is answered in words, and one that was is there", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  const at = (name) => new URL(name, site.address()).href;
  await visit.page.goto(at("class.html"));
  await visit.byId("forces").waitFor();
  // It is kept behind its first visit.
  await visit.page.waitForFunction(async (page) => Boolean(await caches.match(page, { ignoreVary: true })), at("class.html"));
  await site.stop();
  await visit.page.goto(at("class.html"));
  await visit.byId("forces").waitFor();
  for (const [name, language] of [["class-de.html", "en"], ["de.html", "en"]]) {
    await visit.page.goto(at(name));
    assert.match(await read(visit, "not-kept"), /^This page is not kept on this machine, and there is no network\./);
    assert.equal(await visit.page.locator("html").getAttribute("lang"), language);
    await takeShot(visit, "not-kept");
    await visit.byId("to-road").click();
    await isAnswered(visit);
  }
  onlyTheHostIsMissed(visit);
});

test("the class view that was not kept says so in the language of the road page", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  await visit.page.goto(new URL("de.html", site.address()).href);
  await isAnswered(visit);
  await visit.page.waitForFunction(async (page) => Boolean(await caches.match(page, { ignoreVary: true })), new URL("absent-de.html", site.address()).href);
  await site.stop();
  await visit.page.goto(new URL("class-de.html", site.address()).href);
  assert.match(await read(visit, "not-kept"), /^Diese Seite ist auf diesem Gerät nicht gespeichert/);
  await visit.byId("to-road").click();
  await isAnswered(visit);
  assert.match(visit.page.url(), /de\.html$/);
  onlyTheHostIsMissed(visit);
});

test("the page as one file is saved from the foot of the page", async (t) => {
  const { site, visit } = await openKept(t, FOLDER);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "more", "save-page")).click();
  const saved = await saving;
  assert.equal(saved.suggestedFilename(), "steadygrade.html");
  assert.equal(saved.url(), `${site.address()}standalone.html`);
  assert.deepEqual(await readFile(await saved.path()), await readFile(join(dist, "standalone.html")));
  visit.assertClean();
});

test("the browser finds nothing that keeps the page from being installed", async (t) => {
  const profile = await mkdtemp(join(tmpdir(), "steadygrade-profile-"));
  const site = await startSite(FOLDER);
  const context = await startBrowserAt(profile);
  t.after(async () => {
    await context.close();
    await site.clear();
    await rm(profile, { recursive: true });
  });
  const page = await context.newPage();
  await page.goto(site.address());
  const browserSide = await context.newCDPSession(page);
  const manifest = await browserSide.send("Page.getAppManifest");
  assert.equal(manifest.url, `${site.address()}manifest.webmanifest`);
  assert.deepEqual(manifest.errors, []);
  const { installabilityErrors } = await browserSide.send("Page.getInstallabilityErrors");
  assert.deepEqual(installabilityErrors, []);
  // The browser looks into the first only.
  for (const { src } of JSON.parse(manifest.data).icons) {
    const answer = await fetch(new URL(src, site.address()));
    assert.equal(answer.headers.get("content-type"), "image/svg+xml", src);
  }
});
