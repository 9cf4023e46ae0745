// Two roads side by side on one scale, and many in a list that opens any pair.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
  closeTruck, dropFile, dropFiles, fillEntry, inView, isAnswered, openDemo, phone, settle, sideways, startBrowser,
  takeShot, toView,
} from "./page.mjs";
import { read } from "./read.mjs";
import { hill, roadFile, webPage } from "./roads.mjs";

const gentle = roadFile("Gentle way", [[2000, 0], [9000, -0.04], [2000, 0]]);
const steep = roadFile("Steep way", [[1000, 0], [3000, -0.11], [1000, 0]]);
// A little up and down: heights that never change are refused.
const level = roadFile("Level way", [[3000, 0.005], [3000, -0.005]]);

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** Kept, shown and difference of a row. */
async function row(visit, name) {
  await toView(visit, "two");
  const cells = await visit.byId(`two-${name}`).locator("td").allInnerTexts();
  assert.equal(cells.length, 3, name);
  return cells.map((text) => text.replaceAll("\u00a0", " "));
}

const km = (text) => Number(text.match(/[\d.]+/)[0]);

async function choose(visit, file, name) {
  await dropFile(visit, "drop-zone", file);
  await visit.byId("road-name").filter({ hasText: name }).waitFor();
  await settle(visit);
}

test("a road kept stands beside the next one: both on one scale, with their differences", async () => {
  const visit = await openDemo(browser);
  await choose(visit, hill, "Test hill");
  await (await inView(visit, "two", "keep-beside")).click();
  await visit.byId("two-next").filter({ hasText: "same still" }).waitFor();
  assert.deepEqual((await row(visit, "Time"))[2], "the same");
  await choose(visit, gentle, "Gentle way");
  await visit.byId("two-next").waitFor({ state: "hidden" });
  const [kept, shown, difference] = await row(visit, "Length");
  assert.deepEqual([km(kept), km(shown), difference], [9, 13, "+4.0 km"]);
  const heads = await visit.byId("two-table").locator("thead th").allInnerTexts();
  assert.match(heads[1], /kept\s+Test hill/);
  assert.match(heads[2], /shown\s+Gentle way/);
  // Differences add up with what stands beside them.
  for (const name of ["Hottest", "Service", "Holding", "Rise", "Fall", "Length", "Fuel"]) {
    const [first, second, apart] = (await row(visit, name)).map((text) => text.replaceAll("−", "-").replaceAll(",", ""));
    if (apart === "the same") continue;
    const [a, b, way] = [first, second, apart].map((text) => Number(text.match(/[+-]?[\d.]+/)[0]));
    assert.ok(Math.abs(b - a - way) < 1e-6, `${name}: ${first}, ${second}, ${apart}`);
  }
  // 5 km of 8 % and 9 km of 4 %: 400 m and 360 m.
  const falls = (await row(visit, "Fall")).map(km);
  assert.ok(Math.abs(falls[0] - 400) <= 2 && Math.abs(falls[1] - 360) <= 2 && Math.abs(falls[2] - 40) <= 2, `${falls}`);
  const hold = (await row(visit, "Hold")).map(km);
  assert.ok(hold[0] < hold[1], "the gentle way is faster");
  const hottest = await row(visit, "Hottest");
  assert.match(hottest[2], /^[+−]\d+ °C$|^the same$/);
  // One scale: the axis of both goes to 13 km, though one road ends at 9.
  for (const index of [0, 1]) {
    const ticks = await visit.byId(`two-${index}`).locator("svg.over text").allTextContents();
    assert.ok(ticks.some((text) => /^1[0-3]/.test(text)), `${ticks}`);
  }
  await takeShot(visit, "two-wide");
  await (await inView(visit, "two", "end-two")).click();
  await visit.byId("two-table").waitFor({ state: "detached" });
  visit.assertClean();
  await visit.close();
});

test("the cursor stands at the same distance on both, and where one road has ended it stays at its end", async () => {
  const visit = await openDemo(browser);
  await choose(visit, hill, "Test hill");
  await (await inView(visit, "two", "keep-beside")).click();
  await choose(visit, gentle, "Gentle way");
  await toView(visit, "two");
  const at = (index) => visit.byId(`two-${index}`).getByTestId("readout-at");
  const pad = (index) => visit.byId(`two-${index}`).locator(".drawing [tabindex='0']");
  await pad(1).focus();
  await visit.page.keyboard.press("Home");
  for (let k = 0; k < 5; k += 1) await visit.page.keyboard.press("PageDown");
  await settle(visit, 300);
  assert.equal(await at(0).innerText(), await at(1).innerText());
  await visit.page.keyboard.press("End");
  await settle(visit, 300);
  assert.match(await at(1).innerText(), /13\.0/);
  assert.match(await at(0).innerText(), /9\.0/);
  visit.assertClean();
  await visit.close();
});

test("the same road for two trucks, the other way round, and on another day", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "two", "keep-beside")).click();
  await fillEntry(visit, "gross_mass", "18");
  await settle(visit);
  const truck = await row(visit, "Truck");
  assert.match(truck[0], /^36\.3 t/);
  assert.match(truck[1], /^18\.0 t/);
  const service = await row(visit, "Fuel");
  assert.match(service[2], /^−/, "a lighter truck burns less");
  await visit.byId("reverse").click();
  await settle(visit);
  const [rises, falls] = [await row(visit, "Rise"), await row(visit, "Fall")];
  assert.ok(Math.abs(km(rises[0]) - km(falls[1])) <= 3, `${rises} ${falls}`);
  visit.assertClean();
  await visit.close();
});

test("money comes of the rates entered, and is kept", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "two", "keep-beside")).click();
  assert.equal(await visit.byId("two-Cost").count(), 0);
  await (await inView(visit, "two", "rate-hour")).fill("60");
  const minutes = (await row(visit, "Time"))[0].match(/(?:(\d+) h )?(\d+) min/);
  const whole = Number(minutes[1] ?? 0) * 60 + Number(minutes[2]);
  const cost = Number((await row(visit, "Cost"))[0]);
  assert.ok(Math.abs(cost - whole) <= 1, `${cost} for ${whole} min at one a minute`);
  await (await inView(visit, "two", "rate-fuel")).fill("2");
  const litres = km((await row(visit, "Fuel"))[0]);
  assert.ok(Math.abs(Number((await row(visit, "Cost"))[0]) - cost - 2 * litres) <= 2);
  // The road beside is back by itself, and the rates with it.
  await visit.page.reload();
  await isAnswered(visit);
  await toView(visit, "two");
  await visit.byId("two-table").waitFor();
  assert.equal(await (await inView(visit, "two", "rate-fuel")).inputValue(), "2");
  visit.assertClean();
  await visit.close();
});

test("many files become a list, the worst first; any two of them stand side by side", async () => {
  const visit = await openDemo(browser);
  await dropFiles(visit, "drop-zone", [level, gentle, { ...webPage, name: "saved.gpx" }, steep, hill]);
  await visit.byId("rank").click();
  await toView(visit, "two");
  await visit.byId("ranked-head").filter({ hasText: /^5 roads$/ }).waitFor();
  const names = await visit.byId("ranked-row").locator("h3 .file").allInnerTexts();
  assert.equal(names.length, 5);
  assert.equal(names[0], "Steep way.gpx");
  assert.deepEqual(names.slice(3), ["Level way.gpx", "saved.gpx"]);
  assert.match(await visit.byId("ranked-row").last().innerText(), /web page/i);
  const rank = (name) => visit.byId("ranked-row").filter({ hasText: name });
  assert.match(await rank("Steep way").getByTestId("ranked-ends").innerText(), /900\sm → 570\sm/);
  assert.equal(await rank("Steep way").getByTestId("ranked-notes").count(), 0);
  // A road without a descent is held at no speed.
  assert.doesNotMatch(await rank("Level way").innerText(), /\b0\skm\/h/);
  assert.match(await rank("Level way").innerText(), /slowest hold\s+–/);
  await rank("Gentle way").getByTestId("beside-ranked").click();
  await rank("Gentle way").getByTestId("ranked-beside").waitFor();
  await rank("Steep way").getByTestId("open-ranked").click();
  await visit.byId("road-name").filter({ hasText: "Steep way" }).waitFor();
  await settle(visit);
  const box = await visit.page.locator("#answer").boundingBox();
  assert.ok(box.y < visit.page.viewportSize().height && box.y + box.height > 0, "the answer is in sight");
  await toView(visit, "two");
  await rank("Steep way").getByTestId("ranked-shown").waitFor();
  assert.equal(await rank("Steep way").getAttribute("aria-current"), "true");
  assert.equal(await visit.byId("ranked-shown").count(), 1);
  assert.match(await visit.byId("two-0").locator("h3").innerText(), /Gentle way/);
  assert.match(await visit.byId("two-1").locator("h3").innerText(), /Steep way/);
  // Another truck: the list says that it is for the former one, and can be worked out again.
  const before = await rank("Gentle way").innerText();
  await fillEntry(visit, "gross_mass", "20");
  await closeTruck(visit);
  await (await inView(visit, "two", "rank-again")).click();
  await visit.byId("rank-again").waitFor({ state: "detached" });
  await visit.byId("ranked-head").filter({ hasText: /^5 roads$/ }).waitFor();
  assert.notEqual(await rank("Gentle way").innerText(), before);
  await (await inView(visit, "two", "end-ranking")).click();
  await visit.byId("ranked-row").first().waitFor({ state: "detached" });
  assert.ok(await read(visit, "verdict-sentence"));
  visit.assertClean();
  await visit.close();
});

test("on a phone at night the list and the pair fit the width", async () => {
  const visit = await openDemo(browser, { viewport: { ...phone, width: 360 }, scheme: "dark" });
  await dropFiles(visit, "drop-zone", [gentle, steep]);
  await visit.byId("rank").tap();
  await toView(visit, "two");
  await visit.byId("ranked-head").filter({ hasText: /^2 roads$/ }).waitFor();
  await visit.byId("beside-ranked").first().tap();
  await visit.byId("two-table").waitFor();
  await settle(visit);
  assert.deepEqual(await sideways(visit), []);
  await takeShot(visit, "two-phone");
  visit.assertClean();
  await visit.close();
});
