// Trucks of one's own: kept, named anew, removed and brought back; as a file out and in.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { dropFile, fillEntry, inTruck, isAnswered, openPage, settle, startBrowser } from "./page.mjs";
import { changedSentence, read } from "./read.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

async function openTrucks() {
  const visit = await openPage(browser);
  await isAnswered(visit);
  await settle(visit);
  await inTruck(visit, "keep-truck");
  return visit;
}

const kept = (visit) => visit.byId("take-truck").allInnerTexts();

async function keepAs(visit, name) {
  await (await inTruck(visit, "truck-name")).fill(name);
  await (await inTruck(visit, "keep-truck")).click();
  await visit.byId("take-truck").filter({ hasText: name }).waitFor();
}

test("trucks are kept, taken, renamed, removed and brought back, also after a reload", async () => {
  const visit = await openTrucks();
  await (await inTruck(visit, "truck-name")).fill(" ");
  await (await inTruck(visit, "keep-truck")).click();
  await visit.byId("own-trucks").filter({ hasText: "Give it a name first." }).waitFor();
  await keepAs(visit, "Heavy one");
  const heavy = await read(visit, "verdict-sentence");
  await fillEntry(visit, "gross_mass", "16");
  await changedSentence(visit, heavy);
  await keepAs(visit, "Light one");
  assert.deepEqual(await kept(visit), ["Heavy one", "Light one"]);
  const light = await read(visit, "verdict-sentence");
  await visit.byId("take-truck").first().click();
  await changedSentence(visit, light);
  assert.equal(await read(visit, "verdict-sentence"), heavy);
  await (await inTruck(visit, "truck-name")).fill("Old one");
  await (await inTruck(visit, "rename-truck")).click();
  await visit.byId("take-truck").filter({ hasText: "Old one" }).waitFor();
  assert.deepEqual(await kept(visit), ["Light one", "Old one"]);
  await visit.byId("remove-truck").first().click();
  assert.deepEqual(await kept(visit), ["Old one"]);
  await visit.byId("undo-trucks").click();
  assert.deepEqual(await kept(visit), ["Light one", "Old one"]);
  await visit.page.reload();
  await isAnswered(visit);
  await inTruck(visit, "keep-truck");
  assert.deepEqual(await kept(visit), ["Light one", "Old one"]);
  visit.assertClean();
  await visit.close();
});

test("a truck file goes out and in again; a broken one is told with its line", async () => {
  const visit = await openTrucks();
  await (await inTruck(visit, "truck-name")).fill("File truck");
  await fillEntry(visit, "gross_mass", "22");
  await settle(visit);
  const sentence = await read(visit, "verdict-sentence");
  const saving = visit.page.waitForEvent("download");
  await (await inTruck(visit, "save-truck")).click();
  const download = await saving;
  assert.equal(download.suggestedFilename(), "File-truck-truck.json");
  const text = await readFile(await download.path(), "utf8");
  assert.equal(JSON.parse(text).steadygrade_truck, 1);
  assert.equal(JSON.parse(text).truck.gross_mass_kg, 22_000);
  await fillEntry(visit, "gross_mass", "40");
  await changedSentence(visit, sentence);
  await dropFile(visit, "drop-zone", { name: "truck.json", bytes: Buffer.from(text) });
  await visit.page.waitForFunction(() => document.querySelector("#entry-gross_mass")?.value === "22");
  await settle(visit);
  assert.equal(await read(visit, "verdict-sentence"), sentence);
  const broken = text.replace("gross_mass_kg", "gros_mass_kg");
  await visit.byId("truck-file").setInputFiles({ name: "t.json", mimeType: "application/json", buffer: Buffer.from(broken) });
  await visit.byId("truck-error").filter({ hasText: /Line \d+: unknown field `gros_mass_kg`/ }).waitFor();
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "22");
  visit.assertClean();
  await visit.close();
});

test("gears, tyre and retarder are chosen from lists, and the picture of the power follows", async () => {
  const visit = await openTrucks();
  const drawn = async () => (await inTruck(visit, "engine-curves")).locator("svg").innerHTML();
  const first = await drawn();
  await (await inTruck(visit, "entry-retarder")).selectOption("hydrodynamic");
  await settle(visit);
  assert.notEqual(await drawn(), first);
  await (await inTruck(visit, "entry-gear_set")).selectOption({ label: "18 gears, overdrive" });
  await settle(visit);
  assert.match(await (await inTruck(visit, "entry-gears")).inputValue(), /^14\.4 .* 0\.73$/);
  assert.equal((await (await inTruck(visit, "entry-gears")).inputValue()).trim().split(/\s+/).length, 18);
  await (await inTruck(visit, "entry-tyre")).selectOption("315/80R22.5");
  await settle(visit);
  assert.equal(await (await inTruck(visit, "entry-rolling_radius")).inputValue(), "0.5223");
  await fillEntry(visit, "gears", "12 9 6 4 2 1");
  await settle(visit);
  assert.equal(await (await inTruck(visit, "entry-gear_set")).inputValue(), "");
  visit.assertClean();
  await visit.close();
});
