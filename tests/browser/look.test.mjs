// What is seen: lanes, readings, cursor, direction, themes, a phone's width.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { dropFile, inView, openDemo, settle, startBrowser } from "./page.mjs";
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
  assert.match(await read(visit, "road-name"), /other way round/);
  await visit.byId("reverse").click();
  await visit.byId("road-ends").filter({ hasText: `${start} → ${end}` }).waitFor();
  visit.assertClean();
  await visit.close();
});

test("a descent opens to its table, with every gear and stage answered", async () => {
  const visit = await openWorked();
  await (await inView(visit, "descents", "descent-1")).click();
  const table = visit.byId("table-1");
  await table.waitFor();
  assert.equal(await table.locator("tbody tr").count(), 10);
  assert.equal(await table.locator("tbody tr").first().locator("td").count(), 4 + 2);
  for (const cell of await table.locator("tbody td").allInnerTexts()) assert.notEqual(cell.trim(), "");
  assert.equal(await table.locator(".advised-stage").count(), 1);
  assert.match(await read(visit, "sign"), /\d+ %[\s\S]*(km|m)/);
  await (await inView(visit, "descents", "descent-1")).click();
  await table.waitFor({ state: "detached" });
  visit.assertClean();
  await visit.close();
});

test("the list stands worst first, or along the road", async () => {
  const visit = await openWorked();
  await dropFile(visit, "drop-zone", twoHills);
  await visit.byId("road-name").filter({ hasText: "Two hills" }).waitFor();
  await settle(visit);
  const first = visit.byId("descent-row").first().locator("h3");
  assert.match(await first.innerText(), /2/);
  await (await inView(visit, "descents", "order-road")).click();
  const numbers = await visit.byId("descent-row").locator("h3").allInnerTexts();
  const sorted = [...numbers].sort((a, b) => a.match(/\d+/) - b.match(/\d+/));
  assert.deepEqual(numbers, sorted);
  assert.ok(numbers.length > 1);
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
    await (await inView(visit, "descents", "descent-1")).click();
    const poor = await visit.page.evaluate(poorContrasts);
    assert.deepEqual(poor, []);
    await visit.close();
  });
}

test("a phone of 360 px has no sideways scroll, the answer first, and targets for fingers", async () => {
  const visit = await openWorked({ viewport: { width: 360, height: 740 } });
  await (await inView(visit, "descents", "descent-1")).click();
  await visit.byId("truck-panel").locator("summary").first().click();
  await visit.byId("day-panel").locator("summary").first().click();
  await visit.byId("more-entries").locator("summary").click();
  const widths = await visit.page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
  assert.equal(widths[0], widths[1]);
  const top = async (id) => (await visit.byId(id).first().boundingBox()).y;
  assert.ok((await top("verdict-sentence")) < (await top("road-view")));
  assert.ok((await top("descent-row")) < (await top("entry-gross_mass")));
  const small = await visit.page.evaluate(() =>
    [...document.querySelectorAll("button, select, summary, .button.file, .entry input")]
      .filter((it) => it.getClientRects().length > 0)
      .map((it) => [it.textContent || it.id, it.getBoundingClientRect().height])
      .filter(([, height]) => height < 44),
  );
  assert.deepEqual(small, []);
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
