// The truck's form, filled in by somebody who knows only what stands on plates and in his head.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
  dropFile, fillEntry, inTruck, inView, isAnswered, openDemo, openPage, openTruck, settle, sideways, startBrowser,
  takeShot, wide,
} from "./page.mjs";
import { hill } from "./roads.mjs";
import { plain, read } from "./read.mjs";

const small = { width: 360, height: 740 };

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** What stands below each entry in sight of what a wrong value costs, by the entry's key. */
const worths = (visit) =>
  visit.page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll("[data-testid=drawer] [data-testid^=worth-]")]
        .filter((it) => it.checkVisibility())
        .map((it) => [it.dataset.testid.slice("worth-".length), it.innerText.replaceAll("\u00a0", " ")]),
    ),
  );

/** Waits until nothing is being worked out any more, and gives them. */
async function toldWorths(visit) {
  await visit.page.waitForFunction(
    () => {
      const all = [...document.querySelectorAll("[data-testid=drawer] [data-testid^=worth-]")];
      const seen = all.filter((it) => it.checkVisibility());
      return seen.length > 0 && !seen.some((it) => /worked out|told when/.test(it.innerText));
    },
    null,
    { timeout: 60_000 },
  );
  return worths(visit);
}

/** “5 % wrong: 1 gear, 5 km/h”, or both sides of the highest engine speed. */
const TOLD = /^(\d[\d.]*( %|\/min| s)? wrong|\+\d+\/min): ./;

/** Opens each row of the drawer by its line. */
async function openRows(visit) {
  await openTruck(visit);
  for (const row of ROWS) {
    const fold = visit.byId(row);
    if (!(await fold.evaluate((it) => it.open))) await fold.locator("summary").first().click();
  }
}

/** The rows with all that a driver is not asked first. */
const ROWS = ["expert-gearbox", "expert-engine", "expert-retarder", "expert-rolling", "day-panel", "measured-panel", "own-trucks"];

/** Fields of the drawer in sight: their names, and whether a sentence says what is meant. What was seen on the road has one for all. */
const fields = (visit) =>
  visit.page.evaluate(() =>
    [...document.querySelectorAll("[data-testid=drawer] .entry")]
      .filter((it) => it.checkVisibility() && it.querySelector("input, select, textarea, .choice"))
      .filter((it) => !it.closest("[data-testid=own-trucks]") && !it.querySelector("[id^=seen-]"))
      // Of the day only what is typed: its choices say themselves what they mean.
      .filter((it) => !it.closest("[data-testid=day-panel]") || !it.querySelector(".choice"))
      .map((it) => {
        const name = it.querySelector("label, .label")?.innerText ?? "";
        return { name, help: it.querySelector(".about")?.textContent.trim() ?? "" };
      }),
  );

for (const [size, viewport, scheme] of [["wide", wide, "light"], ["small", small, "dark"]]) {
  test(`whoever knows only the plates and the dials fills it in, and nothing is left unexplained (${size}, ${scheme})`, async () => {
    const visit = await openDemo(browser, { viewport, scheme });
    await openTruck(visit);
    const first = await read(visit, "verdict-sentence");
    // What is asked first tells at once what a slip costs; the rows tell it when they are opened.
    assert.deepEqual(Object.keys(await toldWorths(visit)), ["gross_mass"]);
    await (await inTruck(visit, "preset-five-axle-40t")).click();
    // On plates: mass, axles, tyre, litres, power.
    await fillEntry(visit, "gross_mass", "38");
    await (await inTruck(visit, "axles-1")).selectOption("2");
    await (await inTruck(visit, "axles-2")).selectOption("2");
    await (await inTruck(visit, "brakes-2")).selectOption("drum");
    await (await inTruck(visit, "entry-tyre")).selectOption("295/80R22.5");
    await fillEntry(visit, "displacement", "10.8");
    await fillEntry(visit, "rated_power", "290");
    // In his head: the box, the dial, the lever.
    await (await inTruck(visit, "transmission-automated")).click();
    await (await inTruck(visit, "entry-gear_set")).selectOption({ label: "12 gears, direct on top" });
    await fillEntry(visit, "top_gear_speed", "1180");
    await (await inTruck(visit, "entry-retarder")).selectOption("hydrodynamic");
    await (await inTruck(visit, "engine-brake-exhaust-valve")).click();
    await (await inTruck(visit, "entry-lever")).selectOption("5");
    await fillEntry(visit, "highest_engine_speed", "2200");
    await settle(visit);
    assert.notEqual(await read(visit, "verdict-sentence"), first);
    assert.equal(await visit.byId("former").count(), 0, "all of it was taken");
    // What follows from what was entered.
    assert.match(await read(visit, "told-axle-ratio"), /axle ratio of 2\.\d/);
    await takeShot(visit, `form-${size}-lead`);
    await openRows(visit);
    const all = await toldWorths(visit);
    for (const entry of ["displacement", "governed_speed", "gross_mass", "highest_engine_speed", "rated_power", "top_gear_speed"]) {
      assert.ok(entry in all, entry);
    }
    for (const [entry, text] of Object.entries(all)) assert.match(text, TOLD, entry);
    assert.ok(Object.keys(all).length > 20, `${Object.keys(all)}`);
    // On a pass that asks for gears some entries must matter: else nothing was compared.
    assert.ok(Object.values(all).filter((it) => /\d (gear|km\/h)/.test(it)).length >= 3, JSON.stringify(all, null, 1));
    for (const { name, help } of await fields(visit)) {
      assert.ok(name.length > 0 || help.length > 0, "a field without a name");
      assert.match(help, /\.$/, `${name}: no sentence says what is meant`);
    }
    // The assumed retarder follows litres and power, and says that it is assumed.
    assert.equal(await (await inTruck(visit, "entry-sustained_power")).inputValue(), "261");
    assert.equal(await (await inTruck(visit, "entry-retarder_peak_power")).inputValue(), "130");
    assert.equal((await (await inTruck(visit, "entry-stages")).inputValue()).trim().split(/\s+/).length, 5);
    const marked = visit.page.locator("label[for=entry-sustained_power] .assumed");
    assert.equal(await marked.innerText(), "assumed");
    assert.deepEqual(await sideways(visit), []);
    const cut = await visit.page.evaluate(() =>
      [...document.querySelectorAll("[data-testid=drawer] :is(.choice button, .tile, .worth, label, summary)")]
        .filter((it) => it.checkVisibility() && it.clientWidth > 0 && it.scrollWidth > it.clientWidth + 1)
        .map((it) => it.innerText),
    );
    assert.deepEqual(cut, [], "words that are cut off");
    await takeShot(visit, `form-${size}-rows`);
    visit.assertClean();
    await visit.close();
  });
}

test("what a wrong value costs goes with its plan, and is not told of another", async () => {
  const visit = await openPage(browser);
  await isAnswered(visit);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  await openTruck(visit);
  const before = await toldWorths(visit);
  assert.match(before.gross_mass, TOLD);
  // An entry that cannot be taken: the figures would be those of a former truck.
  await fillEntry(visit, "gross_mass", "heavy");
  await visit.byId("worth-gross_mass").filter({ hasText: "told when a plan is shown" }).waitFor();
  await fillEntry(visit, "gross_mass", "18");
  await settle(visit);
  assert.notDeepEqual(await toldWorths(visit), before);
  visit.assertClean();
  await visit.close();
});

test("an engine speed that no axle gives is told with what to look at, and stays as typed", async () => {
  const visit = await openDemo(browser);
  await fillEntry(visit, "top_gear_speed", "440");
  const wrong = visit.page.locator("#entry-top_gear_speed-wrong");
  await wrong.filter({ hasText: /axle ratio of 1\.\d+; axles have 1\.5 to 12\. Look at the engine speed/ }).waitFor();
  assert.equal(await (await inTruck(visit, "entry-top_gear_speed")).inputValue(), "440");
  await visit.byId("former").waitFor();
  await fillEntry(visit, "top_gear_speed", "1300");
  await visit.byId("former").waitFor({ state: "detached" });
  // In step with the ratio in the fold, both ways.
  const ratio = await (await inTruck(visit, "entry-axle_ratio")).inputValue();
  assert.equal((await read(visit, "told-axle-ratio")), `That is an axle ratio of ${ratio}.`);
  await fillEntry(visit, "axle_ratio", "4.1");
  assert.notEqual(await (await inTruck(visit, "entry-top_gear_speed")).inputValue(), "1300");
  const inMetric = Number(await (await inTruck(visit, "entry-top_gear_speed")).inputValue());
  await (await inView(visit, "more", "units-imperial")).click();
  await inTruck(visit, "entry-top_gear_speed");
  await visit.page.locator("label[for=entry-top_gear_speed]").filter({ hasText: "50 mph" }).waitFor();
  const inImperial = Number(await (await inTruck(visit, "entry-top_gear_speed")).inputValue());
  assert.ok(Math.abs(inImperial / inMetric - 1.00584) < 0.001, `${inMetric} ${inImperial}`);
  visit.assertClean();
  await visit.close();
});

test("a trailer is taken off and put on, and the lever's own shares are called so", async () => {
  const visit = await openDemo(browser);
  await (await inTruck(visit, "axles-2")).selectOption("0");
  assert.equal(await visit.byId("brakes-2").count(), 0);
  assert.equal(await visit.byId("axle-groups").locator("li").count(), 2);
  await (await inTruck(visit, "axles-2")).selectOption("3");
  await (await inTruck(visit, "brakes-2")).selectOption("disc");
  const trailer = visit.byId("axle-groups").locator("li").nth(2);
  assert.match(plain(await trailer.innerText()), /3 trailer axles, disc, \d+ % of the braking/);
  await fillEntry(visit, "stages", "20 50 100");
  assert.equal(await (await inTruck(visit, "entry-lever")).inputValue(), "");
  await (await inTruck(visit, "entry-lever")).selectOption("4");
  assert.equal(await (await inTruck(visit, "entry-stages")).inputValue(), "25  50  75  100");
  await (await inTruck(visit, "shape-exponent")).click();
  await visit.byId("entry-retarder_exponent").waitFor();
  await (await inTruck(visit, "shape-declared")).click();
  await visit.byId("entry-retarder_exponent").waitFor({ state: "detached" });
  await settle(visit);
  assert.equal(await visit.byId("former").count(), 0);
  visit.assertClean();
  await visit.close();
});
