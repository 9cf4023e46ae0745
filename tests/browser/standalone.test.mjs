// The page as one file, opened from a disk: no server, nothing beside it, nothing asked of anybody.

import assert from "node:assert/strict";
import { copyFile, mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { dropFile, fillEntry, inTruck, inView, openPage, phone, settle, startBrowser, toView } from "./page.mjs";
import { hill } from "./roads.mjs";
import { changedSentence, pages, read } from "./read.mjs";
import { dist } from "./site.mjs";

let browser;
let folder;
let at;
before(async () => {
  browser = await startBrowser();
  folder = await mkdtemp(join(tmpdir(), "steadygrade-stick-"));
  const file = join(folder, "steadygrade.html");
  await copyFile(join(dist, "standalone.html"), file);
  at = pathToFileURL(file).href;
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true });
});

/** The page from the disk, its demo worked out and looked into further. */
async function openFromDisk(t, options) {
  const visit = await openPage(browser, { ...options, at, path: "" });
  t.after(() => visit.close());
  await isSure(visit);
  return visit;
}

const isSure = (visit) => visit.byId("sure").filter({ hasText: "256 times" }).waitFor({ state: "attached" });

/** Fails when anything but the file itself was asked for, or the page complains. */
function assertAlone(visit) {
  const asked = visit.requests.filter((url) => !/^(blob|data):/.test(url));
  assert.deepEqual(asked, [at]);
  assert.deepEqual(visit.complaints, []);
}

test("from a disk the demo is worked out and looked into, wide and on a phone", async (t) => {
  for (const options of [{}, { viewport: phone, scheme: "dark" }]) {
    const visit = await openFromDisk(t, options);
    assert.match(await read(visit, "road-button"), /invented demo/);
    assert.match(await read(visit, "verdict-sentence"), /gear \d+, stage \d+, \d+ km\/h/);
    const faces = await visit.page.evaluate(() => [...document.fonts].map((face) => face.status));
    assert.deepEqual(faces, ["loaded", "loaded"]);
    // It does not offer to save what it is, and has no newer version.
    await toView(visit, "more");
    assert.equal(await visit.byId("save-page").count(), 0);
    assert.equal(await visit.byId("kept").count(), 0);
    assertAlone(visit);
  }
});

test("from a disk a dropped file is worked out, studied, printed and saved", async (t) => {
  const visit = await openFromDisk(t);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  const before = await read(visit, "verdict-sentence");
  await fillEntry(visit, "gross_mass", "20");
  await changedSentence(visit, before);
  await settle(visit);
  await isSure(visit);
  assert.equal(pages(await visit.page.pdf({ format: "A4" })), 1);
  const road = await savedBy(visit, await inView(visit, "card", "export"));
  assert.match(road, /<wpt[\s\S]*<\/gpx>/);
  await (await inTruck(visit, "truck-name")).fill("Stick");
  const truck = JSON.parse(await savedBy(visit, await inTruck(visit, "save-truck")));
  assert.equal(truck.steadygrade_truck, 1);
  assertAlone(visit);
});

async function savedBy(visit, button) {
  const saving = visit.page.waitForEvent("download");
  await button.click();
  return readFile(await (await saving).path(), "utf8");
}

test("from a disk the class view has its teaching roads and drives them", async (t) => {
  const file = join(folder, "class.html");
  await copyFile(join(dist, "standalone-class.html"), file);
  const address = pathToFileURL(file).href;
  const visit = await openPage(browser, { at: address, path: "", viewport: { width: 1280, height: 720 } });
  t.after(() => visit.close());
  await visit.byId("lesson-three-steps").click();
  await visit.byId("lesson").waitFor();
  await visit.byId("run").click();
  await visit.byId("gauge-gear").filter({ hasText: /\d/ }).waitFor();
  const before = await visit.byId("ride-mark").getAttribute("transform");
  await visit.byId("step").click();
  assert.notEqual(await visit.byId("ride-mark").getAttribute("transform"), before);
  assert.equal(await visit.byId("road-page").count(), 0, "no page lies beside it");
  assert.deepEqual(visit.requests.filter((url) => !/^(blob|data):/.test(url)), [address]);
  assert.deepEqual(visit.complaints, []);
});

test("from a disk the evidence is there, and entries are kept", async (t) => {
  const visit = await openFromDisk(t);
  await inView(visit, "more", "evidence");
  await visit.byId("evidence-count").waitFor();
  assert.match(await read(visit, "evidence-count"), /^\d{3} values/);
  await fillEntry(visit, "gross_mass", "20");
  await settle(visit);
  await visit.page.reload();
  await isSure(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "20");
});

test("the file's own policy stops what would leave the machine, and scripts that are not its own", async (t) => {
  const visit = await openFromDisk(t);
  const expected = ["connect-src", "img-src", "script-src-elem", "style-src-elem", "worker-src"];
  await visit.page.evaluate(() => {
    globalThis.stopped = new Set();
    document.addEventListener("securitypolicyviolation", (event) => globalThis.stopped.add(event.effectiveDirective));
    fetch("https://elsewhere.invalid/").catch(() => {});
    new Image().src = "https://elsewhere.invalid/x.png";
    const script = document.createElement("script");
    script.textContent = "globalThis.foreignScriptRan = true";
    const style = document.createElement("style");
    style.textContent = "body { color: red }";
    document.head.append(script, style);
    new Worker("data:text/javascript,");
  });
  await visit.page.waitForFunction((all) => all.every((it) => globalThis.stopped.has(it)), expected);
  assert.equal(await visit.page.evaluate(() => globalThis.foreignScriptRan), undefined);
});
