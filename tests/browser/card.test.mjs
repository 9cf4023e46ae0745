// The card for the cab: all of the road on as many pages as it needs, and in one column for a phone.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  dropFile, fillEntry, inTruck, inView, isAnswered, openDemo, openPage, phone, settle, sideways, startBrowser, toView,
} from "./page.mjs";
import { readPdf } from "./pdf.mjs";
import { pages, read } from "./read.mjs";
import { easing, manyHills, roadFile } from "./roads.mjs";

/** Height of a page of Letter between margins of 10 mm, pt. */
const ROOM = 792 - 2 * (10 / 25.4) * 72;

/** Opens the road of seventeen descents. */
async function openMany(options) {
  const visit = await openDemo(browser, options);
  await toView(visit, "card");
  await dropFile(visit, "drop-zone", manyHills);
  await visit.byId("sheet").filter({ hasText: "Seventeen hills" }).waitFor();
  await settle(visit);
  return visit;
}

/** What the browser prints with these margins, mm; without them with those of the page. */
async function printed(visit, format, margin) {
  const sheets = `[...document.styleSheets].filter((it) => it.href).at(-1)`;
  if (margin !== undefined) {
    await visit.page.evaluate(`{ const it = ${sheets}; it.insertRule("@page { margin: ${margin}mm !important; }", it.cssRules.length); }`);
  }
  const pdf = await visit.page.pdf({ format });
  if (margin !== undefined) await visit.page.evaluate(`{ const it = ${sheets}; it.deleteRule(it.cssRules.length - 1); }`);
  return pdf;
}

/** Width and height of a PNG, asked of the browser. */
function looksAt(visit, png) {
  return visit.page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (it) => it.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    return [bitmap.width, bitmap.height];
  }, png.toString("base64"));
}

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

test("the card of one descent is one page on A4 and on Letter, and nothing else is printed", async () => {
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
    const colours = await visit.byId("card-page").evaluate((sheet) => {
      const style = getComputedStyle(sheet);
      return [style.backgroundColor, style.color];
    });
    assert.deepEqual(colours, ["rgb(255, 255, 255)", "rgb(0, 0, 0)"]);
    visit.assertClean();
    await visit.close();
  }
});

test("seventeen descents stand on two pages of either paper, whatever the margins, and each is in the PDF", async () => {
  const visit = await openMany();
  for (const format of ["A4", "Letter"]) {
    for (const margin of [undefined, 0, 5, 10]) {
      assert.equal(pages(await printed(visit, format, margin)), 2, `${format}, ${margin} mm`);
    }
  }
  const rows = await visit.byId("card-row").evaluateAll((all) =>
    all.map((row) => ({
      number: row.querySelector(".card-circle").textContent,
      legs: [...row.querySelectorAll(".card-way")].map((leg) => [".card-by b", ".card-gear b", ".card-hold b"].map((it) => leg.querySelector(it).textContent)),
    })),
  );
  assert.deepEqual(rows.map((row) => row.number), Array.from({ length: 17 }, (_, index) => `${index + 1}`));
  assert.equal(rows.flatMap((row) => row.legs).length, 20);
  const read = await readPdf(await printed(visit, "A4"));
  assert.equal(read.length, 2);
  const words = read.map((page) => page.words);
  for (const [index, page] of words.entries()) {
    for (const expected of [`page ${index + 1} of 2`, "Is this your truck?", "One empty: not your card.", "36.3 t or less", "Hardest of all 17", "Seventeen hills"]) {
      assert.ok(page.replace("(80,000 lb) ", "").includes(expected), `${expected}: ${page}`);
    }
    assert.ok(/A planning aid|not permission to descend/.test(page), page);
  }
  // Each leg in its order, with its place, gear and speed.
  let rest = words.join(" ");
  for (const { number, legs } of rows) {
    for (const [index, [by, gear, speed]] of legs.entries()) {
      const leg = new RegExp(`${index === 0 ? `\\b${number} by` : "from|by"} km ${by} mile [\\d.]+ ${gear} \\d ${speed} km/h`);
      const found = rest.match(leg);
      assert.ok(found, `${number}: ${leg}: ${rest}`);
      rest = rest.slice(found.index + found[0].length);
    }
  }
  for (const head of ["Before each crest", "If it gets away: in this order"]) {
    assert.ok(!words[0].includes(head) && words[1].includes(head), head);
  }
  visit.assertClean();
  await visit.close();
});

test("on paper gears, speeds and all else are as large as a driver needs, in every language", async (t) => {
  for (const path of ["./", "./es.html", "./fr.html", "./de.html"]) {
    const visit = await openMany({ path });
    const sizes = (texts) => texts.map((it) => it.size);
    const found = await readPdf(await printed(visit, "A4"));
    const texts = found.flatMap((page) => page.texts);
    assert.ok(Math.min(...sizes(texts)) >= 8 - 0.01, `${Math.min(...sizes(texts))} pt`);
    const legs = await visit.byId("card-row").locator(".card-way").count();
    const large = sizes(texts).filter((it) => it >= 22);
    // Each leg has a gear and a speed, and so has the framed one of each page.
    assert.ok(large.length >= 2 * (legs + found.length), `${large.length}`);
    assert.ok(sizes(texts).filter((it) => it >= 25).length >= legs + found.length);
    const know = texts.filter((it) => /^\d[\d.,]* k?m, \d/.test(it.text));
    assert.ok(know.length >= 17 && know.every((it) => it.size >= 10.99), `${know.length}`);
    // Pages are as high as they are reckoned to be: nothing flows onto a further sheet.
    await visit.page.emulateMedia({ media: "print" });
    await visit.page.setViewportSize({ width: 718, height: 1000 });
    const heights = await visit.byId("card-page").evaluateAll((all) => all.map((it) => it.getBoundingClientRect().height * 0.75));
    assert.ok(heights.every((it) => it <= ROOM), `${heights}`);
    assert.equal(found.length, heights.length);
    t.diagnostic(`${path}: ${heights.map((it) => Math.round(it))} of ${Math.round(ROOM)} pt`);
    visit.assertClean();
    await visit.close();
  }
});

test("on the strip the descents of the page are told apart from the others in grey print", async () => {
  const visit = await openMany();
  const light = (rgb) => rgb.match(/\d+/g).slice(0, 3).map((it) => it / 255).map((it) => (it <= 0.04045 ? it / 12.92 : ((it + 0.055) / 1.055) ** 2.4)).reduce((sum, it, k) => sum + it * [0.2126, 0.7152, 0.0722][k], 0);
  const contrast = (a, b) => (Math.max(light(a), light(b)) + 0.05) / (Math.min(light(a), light(b)) + 0.05);
  const strips = visit.byId("sheet").locator(".card-strip:not(.narrow)");
  assert.equal(await strips.count(), 2);
  const counts = [];
  for (const strip of await strips.all()) {
    const fill = (name) => strip.locator(`.${name}`).first().evaluate((it) => getComputedStyle(it).fill);
    const [here, other, ground] = [await fill("card-here"), await fill("card-other"), await fill("card-ground")];
    assert.ok(contrast(here, other) >= 3 && contrast(other, ground) >= 3, `${here} ${other} ${ground}`);
    assert.equal(await strip.locator(".card-underline").count(), 1);
    counts.push([await strip.locator(".card-here").count(), await strip.locator(".card-other").count()]);
  }
  assert.deepEqual(counts.map(([here, other]) => here + other), [17, 17]);
  assert.equal(counts[0][0], counts[1][1]);
  visit.assertClean();
  await visit.close();
});

test("the picture for a phone has all descents in one column, 1080 px wide and below 2 MB", async (t) => {
  const visit = await openMany();
  const saving = visit.page.waitForEvent("download");
  await visit.byId("save-picture").click();
  const download = await saving;
  assert.match(download.suggestedFilename(), /^Seventeen-hills-Five-axle.*-card\.png$/);
  const png = await readFile(await download.path());
  const [width, height] = await looksAt(visit, png);
  assert.equal(width, 1080);
  assert.ok(png.length < 2e6, `${png.length} bytes`);
  t.diagnostic(`${width} × ${height} px, ${png.length} bytes`);
  await visit.close();
  // A screen as wide as the picture has it as the picture has.
  const narrow = await openMany({ viewport: { ...phone, width: 360 } });
  const sheet = narrow.byId("sheet");
  const high = (await sheet.boundingBox()).height;
  // On the page the column is narrower than the screen, and so a little longer.
  assert.ok(high >= (height / 3) * 0.95, `${high} px on the screen, ${height / 3} in the picture`);
  for (const figure of [".card-gear b", ".card-hold b"]) {
    const sizes = await sheet.locator(figure).evaluateAll((all) => all.map((it) => Number.parseFloat(getComputedStyle(it).fontSize)));
    assert.ok(sizes.length >= 20 && sizes.every((it) => it >= 45), `${sizes}`);
  }
  for (const [what, count] of [[".card-row", 17], [".card-two", 1], [".card-hardest", 1], [".card-strip", 1], [".card-small", 1], [".card-lists", 1]]) {
    const seen = await sheet.locator(what).evaluateAll((all) => all.filter((it) => it.getClientRects().length > 0).length);
    assert.equal(seen, count, what);
  }
  assert.deepEqual(await sideways(narrow), []);
  narrow.assertClean();
  await narrow.close();
});

test("the worst descents come first where that is chosen, and none is left out", async () => {
  const visit = await openMany();
  const numbers = () => visit.byId("card-row").locator("> .card-circle").allInnerTexts();
  const along = await numbers();
  await visit.byId("card-order-worst").click();
  const worst = await numbers();
  assert.notDeepEqual(worst, along);
  assert.deepEqual([...worst].sort((a, b) => a - b), along);
  assert.equal(worst[0], await visit.byId("card-hardest").first().locator(".card-circle").innerText());
  await visit.byId("card-order-along").click();
  assert.deepEqual(await numbers(), along);
  visit.assertClean();
  await visit.close();
});

test("what is not known of the road is a row in its order, and the head says how much it is", async () => {
  const visit = await openDemo(browser);
  await toView(visit, "card");
  const { bytes } = roadFile("Holed road", [[3000, 0], [3000, -0.07], [3000, 0], [2000, 0.03], [3000, -0.06], [1000, 0]]);
  const points = bytes.toString().split("<trkpt");
  // Heights are missing on 2 km of the level between the two hills.
  const holed = points.map((it, index) => (index > 320 && index < 420 ? it.replace(/<ele>.*?<\/ele>/, "") : it)).join("<trkpt");
  await dropFile(visit, "drop-zone", { name: "holed.gpx", bytes: Buffer.from(holed) });
  await visit.byId("sheet").filter({ hasText: "Holed road" }).waitFor();
  await settle(visit);
  assert.match(await read(visit, "card-covers"), /^Speaks of 1[23]\.\d km of 15\.0 km\. Not known: 2\.\d km/);
  assert.match(await read(visit, "card-unknown"), /^km 6\.\d to 8\.\d not known: no advice$/);
  const rows = await visit.byId("sheet").locator(".card-row").evaluateAll((all) => all.map((it) => it.dataset.testid));
  assert.deepEqual(rows, ["card-row", "card-unknown", "card-row"]);
  visit.assertClean();
  await visit.close();
});

test("in every language the card of the demo is one page on A4 and on Letter", async () => {
  for (const tag of ["es", "fr", "de"]) {
    const visit = await openDemo(browser, { path: `./${tag}.html` });
    for (const format of ["A4", "Letter"]) {
      assert.equal(pages(await visit.page.pdf({ format, preferCSSPageSize: false })), 1, `${format}, ${tag}`);
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
  assert.equal(await visit.byId("card-row").count(), descents);
  for (const expected of [/by km 10\.\d/, /mile 6\.\d/, /foot km 22\.\d \(13\.\d\)/, /steepest −/, /km\/h/, /mph/, /retarder holds it/i]) assert.match(text, expected);
  for (const expected of [/Brake check area/, /Escape ramp/, /Before each crest/, /If it gets away/, /not permission to descend/]) {
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
  for (const expected of [/Gear \d only from here\. Or keep gear 5\./, /from km [56]\.\d/]) assert.match(text, expected);
  assert.equal(await visit.byId("card-leg").count(), 2);
  visit.assertClean();
  await visit.close();
});

test("markers are those of the road, counting up or down", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "card", "entry-marker")).fill("100");
  await visit.byId("sheet").filter({ hasText: /by km\s*110\.5.*foot km\s122\.0/s }).waitFor();
  await (await inView(visit, "card", "counts-down")).check();
  await visit.byId("sheet").filter({ hasText: /by km\s*89\.5.*foot km\s78\.0/s }).waitFor();
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
  assert.match(await read(visit, "card-about"), / · [\d,]+ m → [\d,]+ m · marker km 100\.0 at the start, rising$/);
  await visit.byId("sheet").filter({ hasText: /by km\s*110\.5.*foot km\s122\.0/s }).waitFor();
  const place = (await read(visit, "sheet")).match(/km [\d.]+ \(mile [\d.]+\): Brake check area/)[0];
  await visit.byId("reverse").click();
  await visit.byId("card-about").filter({ hasText: "reversed" }).waitFor();
  await settle(visit);
  assert.ok(await (await inView(visit, "card", "counts-down")).isChecked());
  assert.ok((await read(visit, "sheet")).includes(place), place);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-rows")).click();
  const download = await saving;
  assert.match(download.suggestedFilename(), /Kestrel.*-reversed-descents\.csv$/);
  assert.match(await readFile(await download.path(), "utf8"), /,against recording,[^,]*\r\n/);
  await visit.byId("reverse").click();
  await visit.byId("sheet").filter({ hasText: /by km\s*110\.5.*foot km\s122\.0/s }).waitFor();
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
  assert.match(text, /by km\s+10\.5[\s\S]*foot km 22\.0/);
  assert.ok(!text.includes("km −"), text);
  await (await inView(visit, "card", "entry-marker")).fill("90");
  await visit.byId("sheet").filter({ hasText: /by km\s*79\.5.*foot km\s68\.0/s }).waitFor();
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
    await visit.byId("card-stop").first().waitFor();
    await settle(visit);
    assert.ok((await visit.byId("card-notes").locator("li").count()) >= 1);
    const text = await read(visit, "sheet");
    if (path === "./") assert.ok(text.includes("DO NOT GO DOWN") && !text.includes("Lift off briefly"), text);
    for (const format of ["A4", "Letter"]) {
      const count = pages(await visit.page.pdf({ format, preferCSSPageSize: false }));
      // What is said above the rows takes half a page; it is on each.
      assert.ok(count <= 2, `${format}, ${path}: ${count}`);
      assert.equal(await visit.byId("card-stop").count(), count);
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
