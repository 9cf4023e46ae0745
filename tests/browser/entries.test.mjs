// Entries: the plan follows them, what cannot be taken is told, and they are remembered.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
  dropFile, fillEntry, inTruck, inView, isAnswered, openPage, openQuestion, settle, startBrowser, toView,
} from "./page.mjs";
import { hill } from "./roads.mjs";
import { changedSentence, read } from "./read.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** The page with the test hill worked out. */
async function openHill(options) {
  const visit = await openPage(browser, options);
  await isAnswered(visit);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  return visit;
}

const sentence = (visit) => read(visit, "verdict-sentence");

/** The speed to hold, in the unit shown. */
async function holdSpeed(visit) {
  const [, speed] = (await sentence(visit)).match(/, (\d+) (?:km\/h|mph)/);
  return Number(speed);
}

test("less mass comes down faster", async () => {
  const visit = await openHill();
  const loaded = await sentence(visit);
  const slow = await holdSpeed(visit);
  await fillEntry(visit, "gross_mass", "16");
  await changedSentence(visit, loaded);
  assert.ok((await holdSpeed(visit)) > slow, `${await sentence(visit)} after ${loaded}`);
  visit.assertClean();
  await visit.close();
});

test("an entry out of range keeps what was typed, says the range, and dims the last good result", async () => {
  const visit = await openHill();
  const good = await sentence(visit);
  await fillEntry(visit, "gross_mass", "36287");
  const wrong = visit.page.locator("#entry-gross_mass-wrong");
  await wrong.filter({ hasText: "3.5 to 200 t" }).waitFor();
  await visit.byId("former").waitFor();
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "36287");
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).getAttribute("aria-invalid"), "true");
  assert.equal(await sentence(visit), good);
  await fillEntry(visit, "gross_mass", "heavy");
  await wrong.filter({ hasText: "“heavy” is not a number" }).waitFor();
  await fillEntry(visit, "gross_mass", "36.287");
  await visit.byId("former").waitFor({ state: "detached" });
  assert.equal(await sentence(visit), good);
  visit.assertClean();
  await visit.close();
});

test("entries that do not fit together are told", async () => {
  const visit = await openHill();
  await fillEntry(visit, "lowest_engine_speed", "2200");
  await visit.byId("truck-problem").filter({ hasText: "lowest useful engine speed must be below" }).waitFor();
  await visit.byId("former").waitFor();
  visit.assertClean();
  await visit.close();
});

test("gears are a list; one that does not fall is refused with a sentence", async () => {
  const visit = await openHill();
  await fillEntry(visit, "gears", "3 4 5");
  await visit.page.locator("#entry-gears-wrong").filter({ hasText: "each smaller than the one before" }).waitFor();
  const old = await sentence(visit);
  await fillEntry(visit, "gears", "12.8 9.25 6.76 4.9 3.58 2.61 1.89 1.38 1");
  await visit.byId("former").waitFor({ state: "detached" });
  await openQuestion(visit, "gears");
  assert.equal(await visit.byId("table-1").locator("tbody tr").count(), 9, old);
  visit.assertClean();
  await visit.close();
});

test("snow and ice take the stage away and say why", async () => {
  const visit = await openHill();
  const dry = await sentence(visit);
  assert.match(dry, /stage \d/);
  await (await inTruck(visit, "surface-snow")).click();
  await changedSentence(visit, dry);
  assert.doesNotMatch(await sentence(visit), /stage \d/);
  await toView(visit, "road");
  assert.equal(await visit.byId("hand-stage").innerText(), "off");
  assert.match(await read(visit, "notes"), /No retarder stage is advised on snow or ice/);
  visit.assertClean();
  await visit.close();
});

test("both ways to use the service brakes are told, and the choice changes the answer", async () => {
  const visit = await openHill();
  const reserve = await sentence(visit);
  for (const key of ["other-mode", "heavier"]) await openQuestion(visit, key);
  assert.match(await read(visit, "other-mode"), /^Short applications allowed/);
  assert.match(await read(visit, "heavier"), /^10 % heavier/);
  await (await inTruck(visit, "service-brakes-snub")).click();
  await visit.byId("other-mode").filter({ hasText: "For stopping only" }).waitFor({ state: "attached" });
  const snubbing = await sentence(visit);
  const said = await read(visit, "other-mode");
  assert.ok(snubbing !== reserve || said.includes("same"), said);
  visit.assertClean();
  await visit.close();
});

test("units change every figure, and no entry", async () => {
  const visit = await openHill();
  const metric = await holdSpeed(visit);
  await (await inView(visit, "more", "units-imperial")).click();
  await toView(visit, "road");
  await visit.byId("verdict-sentence").filter({ hasText: "mph" }).waitFor();
  assert.match(await read(visit, "hand-speed"), /mph$/);
  const imperial = await holdSpeed(visit);
  assert.ok(imperial * 1.609 <= metric + 1 && imperial * 1.609 > metric - 2, `${metric} km/h, ${imperial} mph`);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "80000");
  assert.match(await read(visit, "road-ends"), /mi.*ft/s);
  await settle(visit);
  assert.equal(await visit.byId("former").count(), 0, "the same truck needs no new plan");
  await (await inView(visit, "more", "units-metric")).click();
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "36.287");
  assert.equal(await holdSpeed(visit), metric);
  visit.assertClean();
  await visit.close();
});

test("entries, units and theme are there again at the next visit", async () => {
  const visit = await openHill();
  await (await inTruck(visit, "preset-tipper-26t")).click();
  await fillEntry(visit, "gross_mass", "22.5");
  await fillEntry(visit, "reserve", "20");
  await (await inTruck(visit, "surface-wet")).click();
  await (await inView(visit, "more", "units-imperial")).click();
  await (await inView(visit, "more", "theme-night")).click();
  await visit.page.reload();
  await isAnswered(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "49600");
  assert.equal(await (await inTruck(visit, "entry-reserve")).inputValue(), "20");
  assert.equal(await (await inTruck(visit, "surface-wet")).getAttribute("aria-pressed"), "true");
  assert.equal(await visit.page.locator("html").getAttribute("data-theme"), "night");
  visit.assertClean();
  await visit.close();
});
