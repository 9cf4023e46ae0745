// Two roads side by side on one scale, and many in a list that opens any pair.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  closeTruck, dropFile, dropFiles, fillEntry, inView, isAnswered, openDemo, openPage, phone, settle, sideways,
  startBrowser, takeShot, toView,
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
  // Without the mark of the easier one.
  return cells.map((text) => text.replaceAll("\u00a0", " ").replace(/^●\s*easier:\s*/, ""));
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

/** The list of these files, all worked out. */
async function openList(visit, files) {
  await dropFiles(visit, "drop-zone", files);
  await visit.byId("rank").click();
  await visit.byId("ranked-head").filter({ hasText: new RegExp(`^${files.length} roads$`) }).waitFor();
}

/** Cells of a row of the list, without the one that is ticked. */
async function cells(visit, name) {
  const texts = await visit.byId("ranked-row").filter({ hasText: name }).locator("th, td").allInnerTexts();
  return texts.slice(1).map((text) => text.replaceAll("\u00a0", " ").trim());
}

test("two files dropped stand side by side after one tap, with the reason in a sentence", async () => {
  const visit = await openDemo(browser);
  await dropFiles(visit, "drop-zone", [gentle, steep]);
  await visit.byId("rank").click();
  await visit.byId("two-table").waitFor();
  await settle(visit);
  // As recorded, the first of them kept and the second shown.
  assert.match(await visit.byId("two-0").locator("h3").innerText(), /Gentle way/);
  assert.match(await visit.byId("two-1").locator("h3").innerText(), /Steep way/);
  const reason = (await visit.byId("reason").innerText()).replaceAll("\u00a0", " ");
  assert.match(reason, /^Steep way: /);
  // Its figures are those of the table.
  const [heat, time, fuel] = [await row(visit, "Hottest"), await row(visit, "Time"), await row(visit, "Fuel")];
  const told = (difference, more, less) =>
    difference === "the same" ? "" : `${difference.slice(1)} ${difference.startsWith("+") ? more : less}`;
  assert.ok(reason.includes(told(heat[2], "hotter", "cooler").replace(/^(\S+ \S+) (\w*)$/, "brakes $1 $2")), `${reason}: ${heat}`);
  assert.ok(reason.includes(told(time[2], "longer", "shorter")), `${reason}: ${time}`);
  assert.ok(reason.includes(told(fuel[2], "more fuel", "less fuel")), `${reason}: ${fuel}`);
  // The easier one is marked in words as well, and none where both are the same.
  const marked = async (name) => {
    const texts = await visit.byId(`two-${name}`).locator("td").allTextContents();
    return texts.map((text) => text.includes("●"));
  };
  const [kept, shown] = (await row(visit, "Time")).slice(0, 2).map(km);
  assert.deepEqual(await marked("Time"), [kept < shown, kept > shown, false]);
  assert.deepEqual(await marked("Length"), [false, false, false], "no length is easier by itself");
  visit.assertClean();
  await visit.close();
});

test("many files become a table, both ways, the worst first; any two of them stand side by side", async () => {
  const visit = await openDemo(browser);
  await openList(visit, [level, gentle, { ...webPage, name: "saved.gpx" }, steep, hill]);
  const names = await visit.byId("ranked-row").locator("th").allInnerTexts();
  assert.equal(names.length, 5);
  assert.match(names[0], /^Steep way/);
  assert.match(names[3], /^Level way/);
  assert.match(names[4], /^saved\.gpx/);
  assert.match(await visit.byId("ranked-row").last().innerText(), /web page/i);
  const rank = (name) => visit.byId("ranked-row").filter({ hasText: name });
  // A road without a descent is held at no speed.
  assert.doesNotMatch(await rank("Level way").innerText(), /\b0\skm\/h/);
  assert.match(await rank("Level way").innerText(), /no descent/);
  // Driven the other way it climbs, and says so; pressed, its row is turned.
  const down = await cells(visit, "Steep way");
  assert.match(down.at(-1), /^← .*no descent/s);
  await rank("Steep way").getByTestId("turn-ranked").click();
  const up = await cells(visit, "Steep way");
  assert.equal(up[7], "no descent");
  assert.match(up.at(-1), /^→ /);
  await rank("Steep way").getByTestId("turn-ranked").click();
  assert.deepEqual(await cells(visit, "Steep way"), down);
  // By another column, and the other way round; what cannot be worked out stays last.
  await visit.byId("sort-Length").click();
  const lengths = async () => (await visit.byId("ranked-row").locator("td:nth-of-type(2)").allInnerTexts()).slice(0, 4).map(km);
  const falling = await lengths();
  assert.deepEqual(falling, [13, 9, 6, 5]);
  await visit.byId("sort-Length").click();
  assert.deepEqual(await lengths(), falling.toReversed());
  assert.equal(await visit.page.locator("th[aria-sort=ascending]").innerText(), "length ▴");
  // One verdict alone.
  await visit.byId("only-none").click();
  assert.equal(await visit.byId("ranked-row").count(), 1);
  await visit.byId("only-none").click();
  assert.equal(await visit.byId("ranked-row").count(), 5);
  // Two that are ticked.
  await rank("Gentle way").getByTestId("tick-ranked").check();
  assert.ok(await visit.byId("compare-ticked").isDisabled());
  await rank("Steep way").getByTestId("tick-ranked").check();
  await visit.byId("compare-ticked").click();
  await visit.byId("two-table").waitFor();
  await settle(visit);
  assert.match(await visit.byId("two-0").locator("h3").innerText(), /Gentle way/);
  assert.match(await visit.byId("two-1").locator("h3").innerText(), /Steep way/);
  await visit.byId("to-many").click();
  await rank("Steep way").getByTestId("ranked-shown").waitFor();
  await rank("Gentle way").getByTestId("ranked-beside").waitFor();
  assert.equal(await visit.byId("ranked-shown").count(), 1);
  // Opened from the list, driven the way that its row shows.
  await rank("Test hill").getByTestId("turn-ranked").click();
  await rank("Test hill").getByTestId("open-ranked").click();
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  assert.match(await read(visit, "road-button"), /reversed/);
  const box = await visit.page.locator("#answer").boundingBox();
  assert.ok(box.y < visit.page.viewportSize().height && box.y + box.height > 0, "the answer is in sight");
  // Another truck: the list says that it is for the former one, and can be worked out again.
  await toView(visit, "two");
  const before = await cells(visit, "Gentle way");
  await fillEntry(visit, "gross_mass", "20");
  await closeTruck(visit);
  await (await inView(visit, "two", "rank-again")).click();
  await visit.byId("rank-again").waitFor({ state: "detached" });
  await visit.byId("ranked-head").filter({ hasText: /^5 roads$/ }).waitFor();
  assert.notDeepEqual(await cells(visit, "Gentle way"), before);
  await visit.byId("end-ranking").click();
  await visit.byId("ranked-row").first().waitFor({ state: "detached" });
  assert.ok(await read(visit, "verdict-sentence"));
  visit.assertClean();
  await visit.close();
});

test("list and comparison leave as tables that a spreadsheet of the language reads, and print alone", async () => {
  for (const [page, separator, decimal] of [["index.html", ",", "."], ["de.html", ";", ","]]) {
    const visit = await openPage(browser, { path: page });
    await isAnswered(visit);
    await dropFiles(visit, "drop-zone", [gentle, steep, hill]);
    await visit.byId("rank").click();
    await visit.page.waitForFunction(() => document.querySelectorAll("[data-testid=turn-ranked]").length === 3);
    const saved = async (button) => {
      const [download] = await Promise.all([visit.page.waitForEvent("download"), visit.byId(button).click()]);
      const text = await readFile(await download.path(), "utf8");
      assert.ok(text.startsWith("\ufeff"), "with the mark of its encoding");
      return [download.suggestedFilename(), text.slice(1).trimEnd().split("\r\n").map((line) => cellsOf(line, separator))];
    };
    const [name, rows] = await saved("save-list");
    assert.match(name, /^(roads-list|Strecken-Liste)\.csv$/);
    assert.equal(rows.length, 4);
    assert.ok(rows.every((row) => row.length === rows[0].length), "as many cells in each row");
    // 13 km of the generated road, as a number of the language.
    const gentleRow = rows.find((row) => row[0] === "Gentle way");
    assert.match(gentleRow[3], new RegExp(`^1[23]\\${decimal}\\d\\d$`));
    assert.match(gentleRow.at(-1), /36[.,]3\s?t/, "for which truck");
    // Those that are ticked alone.
    await visit.byId("tick-ranked").nth(0).check();
    await visit.byId("tick-ranked").nth(1).check();
    assert.equal((await saved("save-list"))[1].length, 3);
    await visit.byId("compare-ticked").click();
    await visit.byId("two-table").waitFor();
    await settle(visit);
    const [, compared] = await saved("save-two");
    assert.ok(compared.length > 20 && compared[0].length === 4, `${compared[0]}`);
    // What is printed is asked for by its button; without one the card is printed.
    await visit.page.evaluate(() => { window.print = () => {}; });
    await visit.page.emulateMedia({ media: "print" });
    const printed = () => visit.page.evaluate(() => ["#sheet", ".two-table", ".many"].map((it) => Boolean(document.querySelector(it)?.checkVisibility())));
    assert.deepEqual(await printed(), [true, false, false]);
    await visit.byId("print-two").evaluate((it) => it.click());
    assert.deepEqual(await printed(), [false, true, false]);
    await visit.page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    assert.deepEqual(await printed(), [true, false, false]);
    await visit.byId("to-many").evaluate((it) => it.click());
    await visit.byId("print-list").evaluate((it) => it.click());
    assert.deepEqual(await printed(), [false, false, true]);
    visit.assertClean();
    await visit.close();
  }
});

/** Cells of a line of a table as text (RFC 4180). */
function cellsOf(line, separator) {
  const cells = [""];
  let quoted = false;
  for (const sign of line) {
    if (sign === '"') quoted = !quoted;
    else if (sign === separator && !quoted) cells.push("");
    else cells[cells.length - 1] += sign;
  }
  return cells;
}

test("more files than can be joined are listed at once, and what is not done can be stopped", async () => {
  const visit = await openDemo(browser);
  const many = Array.from({ length: 60 }, (_, index) => ({ ...gentle, name: `Road ${index}.gpx` }));
  await dropFiles(visit, "drop-zone", many);
  await visit.byId("stop-ranking").click();
  await visit.byId("ranked-head").filter({ hasText: /^60 roads$/ }).waitFor();
  assert.ok(await visit.byId("stop-ranking").isHidden());
  const texts = await visit.byId("ranked-row").allInnerTexts();
  assert.ok(texts.some((text) => text.includes("given up")), "what was not worked out says so");
  visit.assertClean();
  await visit.close();
});

test("on a phone at night the list and the pair fit the width", async () => {
  const visit = await openDemo(browser, { viewport: { ...phone, width: 360 }, scheme: "dark" });
  await dropFiles(visit, "drop-zone", [gentle, steep]);
  await visit.byId("rank").tap();
  await visit.byId("two-table").waitFor();
  await settle(visit);
  assert.deepEqual(await sideways(visit), []);
  await visit.byId("to-many").tap();
  await visit.byId("ranked-row").first().waitFor();
  assert.deepEqual(await sideways(visit), []);
  await takeShot(visit, "two-phone");
  visit.assertClean();
  await visit.close();
});
