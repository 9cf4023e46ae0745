// What is seen: lanes, readings, cursor, direction, themes, a phone's width.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { dropFile, inView, openDemo, openQuestion, openTruck, settle, sideways, startBrowser, toView } from "./page.mjs";
import { hill, twoHills } from "./roads.mjs";
import { read } from "./read.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** The page with its demo worked out. */
const openWorked = (options) => openDemo(browser, options);

test("the lanes are there, and another reading fills the profile", async () => {
  const visit = await openWorked();
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  for (const lane of ["lane-gear", "lane-stage", "lane-heat", "lane-speed", "temperature"]) {
    assert.ok((await visit.byId(lane).count()) > 0, lane);
  }
  const picture = () => visit.byId("road-view").innerHTML();
  const byGear = await picture();
  await visit.byId("fill-heat").click();
  await visit.page.waitForFunction(
    (old) => document.querySelector("[data-testid=road-view]").innerHTML !== old,
    byGear,
  );
  visit.assertClean();
  await visit.close();
});

test("the cursor moves by keys, and the readout follows", async () => {
  const visit = await openWorked();
  const readout = () => read(visit, "readout");
  await visit.byId("cursor").focus();
  await visit.page.keyboard.press("Home");
  await settle(visit);
  const start = await readout();
  for (let i = 0; i < 5; i += 1) await visit.page.keyboard.press("Shift+ArrowRight");
  await settle(visit);
  const further = await readout();
  assert.notEqual(further, start);
  await visit.page.keyboard.press("End");
  await settle(visit);
  assert.notEqual(await readout(), further);
  visit.assertClean();
  await visit.close();
});

test("the road can be driven the other way round, and back", async () => {
  const visit = await openWorked();
  const ends = () => read(visit, "road-ends");
  const there = await ends();
  const [, start, end] = there.match(/([\d,]+ m) → ([\d,]+ m)/);
  await visit.byId("reverse").click();
  await visit.byId("road-ends").filter({ hasText: `${end} → ${start}` }).waitFor();
  assert.match(await read(visit, "road-button"), /reversed/);
  await visit.byId("reverse").click();
  await visit.byId("road-ends").filter({ hasText: `${start} → ${end}` }).waitFor();
  visit.assertClean();
  await visit.close();
});

test("all gears are one tap away, with every gear and stage answered", async () => {
  const visit = await openWorked();
  const table = visit.byId("table-1");
  assert.equal(await table.isVisible(), false);
  await openQuestion(visit, "gears");
  await table.waitFor();
  assert.equal(await table.locator("tbody tr").count(), 10);
  assert.equal(await table.locator("tbody tr").first().locator("td").count(), 4 + 2);
  for (const cell of await table.locator("tbody td").allInnerTexts()) assert.notEqual(cell.trim(), "");
  assert.equal(await table.locator(".advised-stage").count(), 1);
  await openQuestion(visit, "about");
  assert.match(await read(visit, "sign"), /\d+ %[\s\S]*(km|m)/);
  await visit.byId("gears").locator("summary").first().click();
  await table.waitFor({ state: "hidden" });
  visit.assertClean();
  await visit.close();
});

test("the list stands worst first, or along the road, and leads to the road there", async () => {
  const visit = await openWorked();
  await dropFile(visit, "drop-zone", twoHills);
  await visit.byId("road-name").filter({ hasText: "Two hills" }).waitFor();
  await settle(visit);
  // The hardest is in hand; few stand along the road below the picture.
  assert.match(await read(visit, "in-hand"), /^Descent 2\b/);
  assert.deepEqual(await visit.page.locator(".rail .disc").allInnerTexts(), ["1", "2"]);
  await toView(visit, "descents");
  const first = visit.byId("descent-row").first().locator("h3");
  assert.match(await first.innerText(), /2/);
  await (await inView(visit, "descents", "order-road")).click();
  const numbers = await visit.byId("descent-row").locator("h3").allInnerTexts();
  const sorted = [...numbers].sort((a, b) => a.match(/\d+/) - b.match(/\d+/));
  assert.deepEqual(numbers, sorted);
  assert.ok(numbers.length > 1);
  await visit.byId("descent-1").click();
  await visit.byId("road-view").waitFor();
  assert.match(await read(visit, "in-hand"), /^Descent 1\b/);
  assert.equal(await visit.byId("stop-1").getAttribute("aria-pressed"), "true");
  assert.equal(await visit.byId("stop-2").getAttribute("aria-pressed"), "false");
  visit.assertClean();
  await visit.close();
});

for (const scheme of ["light", "dark"]) {
  test(`the theme follows the machine (${scheme}) until one is chosen`, async () => {
    const visit = await openWorked({ scheme });
    const theme = () => visit.page.locator("html").getAttribute("data-theme");
    assert.equal(await theme(), scheme === "dark" ? "night" : "light");
    await (await inView(visit, "more", "theme-night")).click();
    assert.equal(await theme(), "night");
    await (await inView(visit, "more", "theme-light")).click();
    assert.equal(await theme(), "light");
    visit.assertClean();
    await visit.close();
  });

  test(`text stands out from its ground (${scheme})`, async () => {
    const visit = await openWorked({ scheme });
    for (const view of ["road", "descents", "two", "card", "more"]) {
      await toView(visit, view);
      await visit.page.evaluate(() => document.querySelectorAll("details").forEach((it) => (it.open = true)));
      await settle(visit);
      assert.deepEqual(await visit.page.evaluate(poorContrasts), [], view);
    }
    await openTruck(visit);
    assert.deepEqual(await visit.page.evaluate(poorContrasts), [], "truck and day");
    await visit.close();
  });
}

test("a phone of 360 px has no sideways scroll, picture and answer at once, and targets for fingers", async () => {
  const visit = await openWorked({ viewport: { width: 360, height: 740 } });
  const small = () =>
    visit.page.evaluate(() =>
      [...document.querySelectorAll("button, select, summary, .button, .tabs a, .entry input")]
        .filter((it) => it.getClientRects().length > 0 && it.checkVisibility())
        .map((it) => [it.textContent || it.id, it.getBoundingClientRect().height])
        .filter(([, height]) => height < 44),
    );
  const box = async (id) => {
    const { y, height } = await visit.byId(id).first().boundingBox();
    return [y, y + height];
  };
  // The picture, then what to do, and both in the window.
  const [picture, hold] = [await box("road-view"), await box("hand-speed")];
  assert.ok(picture[1] <= hold[0] && hold[1] <= 740, `${picture} ${hold}`);
  for (const view of ["road", "descents", "two", "card", "more"]) {
    await toView(visit, view);
    assert.deepEqual([await sideways(visit), await small()], [[], []], view);
  }
  await openTruck(visit);
  await visit.page.evaluate(() => document.querySelectorAll("details").forEach((it) => (it.open = true)));
  assert.deepEqual([await sideways(visit), await small()], [[], []], "truck and day");
  visit.assertClean();
  await visit.close();
});

/** Runs in the page: texts whose contrast with the ground below them is under 4.5 : 1. */
function poorContrasts() {
  const parse = (text) => text.match(/[\d.]+/g).map(Number);
  const light = ([r, g, b]) => {
    const part = (v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
  };
  const ground = (element) => {
    for (let at = element; at; at = at.parentElement) {
      const colour = parse(getComputedStyle(at).backgroundColor);
      if (colour.length === 3 || colour[3] > 0.99) return colour;
    }
    return [255, 255, 255];
  };
  const poor = [];
  for (const element of document.querySelectorAll("body *:not(svg *)")) {
    const own = [...element.childNodes].some((it) => it.nodeType === 3 && it.textContent.trim());
    if (!own || element.getClientRects().length === 0 || element.matches(":disabled, option, .drop-hint")) continue;
    const [a, b] = [light(parse(getComputedStyle(element).color)), light(ground(element))];
    const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    if (ratio < 4.5) poor.push(`${ratio.toFixed(2)} ${element.textContent.trim().slice(0, 40)}`);
  }
  return poor;
}
