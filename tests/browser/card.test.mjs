// The card for the cab: on one page, in both sets of units, with what a driver must know.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  dropFile, fillEntry, inTruck, inView, isAnswered, openDemo, openPage, phone, settle, sideways, startBrowser, toView,
} from "./page.mjs";
import { pages, read } from "./read.mjs";
import { easing, roadFile } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

test("the card is one page on A4 and on Letter, and nothing else is printed", async () => {
  for (const scheme of ["light", "dark"]) {
    const visit = await openDemo(browser, { scheme });
    for (const format of ["A4", "Letter"]) {
      const pdf = await visit.page.pdf({ format, preferCSSPageSize: false });
      assert.equal(pages(pdf), 1, `${format}, ${scheme}`);
    }
    await visit.page.emulateMedia({ media: "print" });
    assert.ok(await visit.byId("sheet").isVisible());
    for (const other of ["road-view", "in-hand", "cautions", "road-button", "view-card", "print-card"]) {
      assert.ok(!(await visit.byId(other).isVisible()), other);
    }
    const colours = await visit.byId("sheet").evaluate((sheet) => {
      const style = getComputedStyle(sheet);
      return [style.backgroundColor, style.color];
    });
    assert.deepEqual(colours, ["rgb(255, 255, 255)", "rgb(0, 0, 0)"]);
    visit.assertClean();
    await visit.close();
  }
});

test("in every language the card is one page on A4 and on Letter", async () => {
  for (const tag of ["es", "fr", "de"]) {
    const visit = await openDemo(browser, { path: `./${tag}.html` });
    for (const format of ["A4", "Letter"]) {
      const pdf = await visit.page.pdf({ format, preferCSSPageSize: false });
      assert.equal(pages(pdf), 1, `${format}, ${tag}`);
    }
    visit.assertClean();
    await visit.close();
  }
});

test("the card has gear, stage and speed of each descent, both units, places, order of actions and cautions", async () => {
  const visit = await openDemo(browser);
  await toView(visit, "descents");
  const descents = await visit.byId("descent-row").count();
  assert.ok(descents > 0);
  await toView(visit, "card");
  const text = await read(visit, "sheet");
  const rows = visit.byId("sheet").locator("tbody tr:not(.leg)");
  assert.equal(await rows.count(), descents);
  for (const expected of [/km 10\.\d – 22\.\d/, /mile 6\.\d – 13\.\d/, /km\/h/, /mph/, /Retarder holds it\./]) assert.match(text, expected);
  for (const expected of [/Brake check area/, /Escape ramp/, /Before the crest/, /If it gets away/, /not permission to descend/]) {
    assert.match(text, expected);
  }
  visit.assertClean();
  await visit.close();
});

test("the card has a row for each change of gear on the hill", async () => {
  const visit = await openDemo(browser);
  await toView(visit, "card");
  await dropFile(visit, "drop-zone", easing);
  await visit.byId("sheet").filter({ hasText: "Steep, then easing" }).waitFor();
  await settle(visit);
  const text = await read(visit, "sheet");
  for (const expected of [/gear 5/i, /From km [56]\.\d \(mile [34]\.\d\) on/]) assert.match(text, expected);
  assert.equal(await visit.byId("sheet").locator("tbody tr.leg").count(), 1);
  visit.assertClean();
  await visit.close();
});

test("markers are those of the road, counting up or down", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "card", "entry-marker")).fill("100");
  await visit.byId("sheet").filter({ hasText: "km 110.5 – 122.0" }).waitFor();
  await (await inView(visit, "card", "counts-down")).check();
  await visit.byId("sheet").filter({ hasText: "km 89.5 – 78.0" }).waitFor();
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-rows")).click();
  const download = await saving;
  assert.match(download.suggestedFilename(), /Kestrel.*\.csv$/);
  const rows = (await readFile(await download.path(), "utf8")).trimEnd().split("\r\n");
  const width = rows[0].split(",").length;
  assert.equal(rows.length, 2);
  assert.ok(rows.every((row) => row.split(",").length === width));
  assert.match(rows[1], /^1,89\.\d\d,78\.\d\d,/);
  visit.assertClean();
  await visit.close();
});

test("with one thumb on a phone of 360 px the card is reached, read and printed", async () => {
  const visit = await openPage(browser, { viewport: { ...phone, width: 360 } });
  await isAnswered(visit);
  await settle(visit);
  await visit.page.evaluate(() => {
    globalThis.printed = 0;
    globalThis.print = () => (globalThis.printed += 1);
  });
  await visit.byId("tab-card").tap();
  await visit.byId("print-card").tap();
  assert.equal(await visit.page.evaluate(() => globalThis.printed), 1);
  const box = await visit.byId("print-card").boundingBox();
  assert.ok(box.height >= 44, `${box.height}`);
  assert.deepEqual(await sideways(visit), []);
  visit.assertClean();
  await visit.close();
});

test("turned around, each place keeps its marker, and the card says which way", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "card", "entry-marker")).fill("100");
  assert.match(await read(visit, "card-way"), /^[\d,]+ m → [\d,]+ m$/);
  await visit.byId("sheet").filter({ hasText: "km 110.5 – 122.0" }).waitFor();
  const place = (await read(visit, "sheet")).match(/km [\d.]+ \(mile [\d.]+\): Brake check area/)[0];
  await visit.byId("reverse").click();
  await visit.byId("card-way").filter({ hasText: "other way round than recorded" }).waitFor();
  await settle(visit);
  assert.ok(await (await inView(visit, "card", "counts-down")).isChecked());
  assert.ok((await read(visit, "sheet")).includes(place), place);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-rows")).click();
  const download = await saving;
  assert.match(download.suggestedFilename(), /Kestrel.*-reversed-descents\.csv$/);
  assert.match(await readFile(await download.path(), "utf8"), /,against recording,[^,]*\r\n/);
  await visit.byId("reverse").click();
  await visit.byId("sheet").filter({ hasText: "km 110.5 – 122.0" }).waitFor();
  assert.equal(await (await inView(visit, "card", "entry-marker")).inputValue(), "100");
  assert.ok(!(await (await inView(visit, "card", "counts-down")).isChecked()));
  visit.assertClean();
  await visit.close();
});

test("markers that would go below zero are not printed, and it is said where they are entered", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "card", "entry-marker")).fill("10");
  await (await inView(visit, "card", "counts-down")).check();
  await visit.byId("markers-miss").filter({ hasText: "none are below zero" }).waitFor();
  const text = await read(visit, "sheet");
  assert.match(text, /km 10\.5 – 22\.0/);
  assert.ok(!text.includes("km −"), text);
  await (await inView(visit, "card", "entry-marker")).fill("90");
  await visit.byId("sheet").filter({ hasText: "km 79.5 – 68.0" }).waitFor();
  assert.equal(await read(visit, "markers-miss"), "");
  visit.assertClean();
  await visit.close();
});

test("while entries are invalid the card is locked, and paper says that it is old", async () => {
  const visit = await openDemo(browser);
  const buttons = ["print-card", "save-picture", "save-rows"];
  await toView(visit, "card");
  for (const id of buttons) assert.ok(await visit.byId(id).isEnabled(), id);
  assert.ok(!(await visit.byId("card-old").isVisible()));
  await fillEntry(visit, "gross_mass", "500");
  await toView(visit, "card");
  await visit.byId("card-old").waitFor();
  for (const id of buttons) assert.ok(await visit.byId(id).isDisabled(), id);
  await visit.page.emulateMedia({ media: "print" });
  assert.ok(await visit.byId("card-old").isVisible());
  await visit.page.emulateMedia({ media: null });
  await fillEntry(visit, "gross_mass", "36");
  await toView(visit, "card");
  await visit.byId("card-old").waitFor({ state: "hidden" });
  await settle(visit);
  for (const id of buttons) assert.ok(await visit.byId(id).isEnabled(), id);
  visit.assertClean();
  await visit.close();
});

test("on ice the card says first not to go down, has the notes, and does not ask to try the retarder", async () => {
  for (const path of ["./", "./es.html", "./fr.html", "./de.html"]) {
    const visit = await openDemo(browser, { path });
    await (await inTruck(visit, "surface-ice")).click();
    await toView(visit, "card");
    await visit.byId("card-stop").waitFor();
    await settle(visit);
    assert.ok((await visit.byId("card-notes").locator("li").count()) >= 1);
    const text = await read(visit, "sheet");
    if (path === "./") assert.ok(text.includes("DO NOT GO DOWN") && !text.includes("Lift off briefly"), text);
    for (const format of ["A4", "Letter"]) {
      assert.equal(pages(await visit.page.pdf({ format, preferCSSPageSize: false })), 1, `${format}, ${path}`);
    }
    visit.assertClean();
    await visit.close();
  }
});

test("of a road without a descent there is no card, but all of it can be saved", async () => {
  const visit = await openDemo(browser);
  await dropFile(visit, "drop-zone", roadFile("Way up", [[1000, 0], [6000, 0.06], [1000, 0]]));
  await visit.byId("road-name").filter({ hasText: "Way up" }).waitFor();
  await settle(visit);
  await toView(visit, "card");
  assert.match(await read(visit, "no-card"), /no hill on this road asks for/);
  assert.equal(await visit.byId("print-card").isVisible(), false);
  assert.equal(await visit.byId("sheet").count(), 0);
  for (const button of ["save-project", "export"]) {
    const saving = visit.page.waitForEvent("download");
    await visit.byId(button).click();
    await saving;
  }
  visit.assertClean();
  await visit.close();
});
