// Places and posted limits: put on the road by hand, moved, named, removed, kept; what they do to
// the answer, to the card and to the file that leaves.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { validateXML } from "xmllint-wasm";
import {
  chooseFile, dropFile, inView, isAnswered, openDemo, openPage, openTruck, phone, putPlace, settle, sheetSays, sideways,
  startBrowser, toView, wide,
} from "./page.mjs";
import { read } from "./read.mjs";
import { hill } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const rows = (visit) => visit.byId("place");

/** The row whose field of this kind ("kind", "name", "from") has this value. */
async function rowWith(visit, field, value) {
  const all = await rows(visit).all();
  for (const row of all) {
    const input = row.locator(`[data-testid^=${field}-]`);
    if ((await input.count()) === 1 && (await input.inputValue()) === value) return row;
  }
  throw new Error(`no row whose ${field} is ${value}`);
}

/** Types into a field of a row and leaves it, as a person does. */
async function fill(row, field, text) {
  const input = row.locator(`[data-testid^=${field}-]`);
  await input.fill(text);
  await input.press("Tab");
}

test("a place put at a distance is on the list, in the picture and on the card, and can be undone", async () => {
  const visit = await openDemo(browser);
  const own = await rows(visit).count();
  assert.equal(own, 3, "the demo's waypoints");
  await putPlace(visit, "12.34");
  await rows(visit).nth(own).waitFor();
  assert.match(await visit.byId("roadside").locator(".short").innerText(), /^4$/);
  const row = await rowWith(visit, "from", "12.34");
  await row.locator("select").selectOption("EscapeRamp");
  await fill(row, "name", "Old quarry");
  await sheetSays(visit, { hasText: "Escape ramp at km 12.3" });
  await sheetSays(visit, { hasText: /km\s12\.3 \(mile\s7\.7\): Old quarry/ });
  assert.ok(await visit.page.locator(".road-view svg text", { hasText: "Old quarry" }).count());
  for (let left = 3; left > 0; left -= 1) await visit.byId("undo-places").click();
  await visit.byId("undo-places").waitFor({ state: "detached" });
  assert.equal(await rows(visit).count(), own);
  await sheetSays(visit, { hasNotText: "Old quarry" });
  visit.assertClean();
  await visit.close();
});

test("a distance that is not on the road is refused with the road's ends, as the marker has them", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "card", "entry-marker")).fill("100");
  await putPlace(visit, "12");
  const refused = visit.page.locator(".put .problem");
  await refused.filter({ hasText: /not on this road: it goes from 100 to 12\d\.\d+ km/ }).waitFor();
  assert.equal(await visit.byId("put-at").inputValue(), "12", "what was typed stays");
  await putPlace(visit, "110");
  const row = await rowWith(visit, "from", "110");
  await fill(row, "from", "99");
  await row.locator(".problem").filter({ hasText: "not on this road" }).waitFor();
  await fill(row, "from", "111.5");
  await sheetSays(visit, { hasText: "km 111.5" });
  visit.assertClean();
  await visit.close();
});

test("places and limits come back after a reload, on their road only", async () => {
  const visit = await openDemo(browser);
  await putPlace(visit, "5");
  await fill(await rowWith(visit, "from", "5"), "name", "Mill bend");
  await sheetSays(visit, { hasText: "Mill bend" });
  await visit.page.reload();
  await sheetSays(visit, { hasText: "Mill bend" });
  await dropFile(visit, "drop-zone", hill);
  await sheetSays(visit, { hasNotText: "Mill bend" });
  visit.assertClean();
  await visit.close();
});

test("a posted limit slows its stretch, may decide the gear, and is gone when it is removed", async () => {
  const visit = await openDemo(browser);
  const before = await read(visit, "verdict-sentence");
  await putPlace(visit, "10.7");
  const row = await rowWith(visit, "from", "10.7");
  await fill(row, "name", "Old bridge");
  await row.locator("select").selectOption("limit");
  await row.locator(".kind-caution").filter({ hasText: "Set what the sign says" }).waitFor();
  // A slip of the hand does not cost the name.
  await row.locator("select").selectOption("Bridge");
  await row.locator("input[id^=name-]").waitFor();
  assert.equal(await row.locator("input[id^=name-]").inputValue(), "Old bridge");
  await row.locator("select").selectOption("limit");
  await fill(row, "to", "22");
  await fill(row, "limit", "20");
  await row.locator(".kind-caution").filter({ hasText: "sign says" }).waitFor({ state: "detached" });
  await settle(visit);
  await sheetSays(visit, { hasText: "Posted 20 km/h, km 10.7 – 22.0" });
  assert.match(await read(visit, "hand-speed"), /^20 km\/h$/, "the descent is held to the limit posted on it");
  assert.ok((await visit.page.locator(".road-view path.posted").getAttribute("d")).length > 10);
  await fill(row, "to", "9");
  await row.locator(".problem").filter({ hasText: "must end behind" }).waitFor();
  await fill(row, "limit", "2000");
  await row.locator(".problem").filter({ hasText: "10 to 130" }).waitFor();
  await row.getByTestId("remove-place").click();
  await settle(visit);
  assert.equal(await read(visit, "verdict-sentence"), before);
  visit.assertClean();
  await visit.close();
});

test("the other direction mirrors the distances, and zoom and cursor stay when a place is put", async () => {
  const visit = await openDemo(browser);
  await putPlace(visit, "5");
  await visit.byId("zoom-in").click();
  await settle(visit);
  assert.ok(await visit.byId("only-this").isVisible());
  await visit.byId("put-here").click();
  await settle(visit);
  assert.ok(await visit.byId("only-this").isVisible(), "still zoomed in");
  await visit.byId("reverse").click();
  await settle(visit);
  const length = Number((await read(visit, "road-ends")).match(/(\d+\.\d) km/)[1]);
  const all = await visit.page.locator("[data-testid^=from-]").evaluateAll((it) => it.map((one) => Number(one.value)));
  assert.ok(all.some((at) => Math.abs(at - (length - 5)) < 0.06), `${all} of ${length}`);
  visit.assertClean();
  await visit.close();
});

test("the file that leaves fits the GPX 1.1 schema, and its places come back without its advice", async () => {
  const visit = await openDemo(browser);
  await putPlace(visit, "12.34");
  const row = await rowWith(visit, "from", "12.34");
  await row.locator("select").selectOption("ChainUp");
  await fill(row, "name", "Lay-by & more");
  await settle(visit);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "export")).click();
  const bytes = await readFile(await (await saving).path());
  const schema = await readFile(new URL("../data/gpx-1.1.xsd", import.meta.url), "utf8");
  const check = (contents) => validateXML({ xml: [{ fileName: "out.gpx", contents }], schema: [schema] });
  const text = bytes.toString("utf8");
  assert.deepEqual((await check(text)).errors, []);
  // The schema can refuse: name before height is out of order.
  const swapped = text.replace(/(<wpt[^>]*>)\s*(<ele>[^<]*<\/ele>)\s*(<name>[^<]*<\/name>)/, "$1$3$2");
  assert.notEqual(swapped, text);
  assert.ok((await check(swapped)).errors.length > 0);
  await dropFile(visit, "drop-zone", { name: "again.gpx", bytes });
  await settle(visit);
  assert.equal(await rows(visit).count(), 4, "the places, and no crest, stage or foot");
  assert.equal(await (await rowWith(visit, "name", "Lay-by & more")).locator("select").inputValue(), "ChainUp");
  visit.assertClean();
  await visit.close();
});

test("with one thumb at 360 px: a file chosen, the road tapped, a place put, the card printed and kept", async () => {
  const visit = await openPage(browser, {
    viewport: { ...phone, width: 360 },
    scheme: "dark",
    before: (page) => page.addInitScript(() => (globalThis.print = () => (globalThis.printed = true))),
  });
  await isAnswered(visit);
  await chooseFile(visit, hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  // The picture, and what decides below it: both whole in the window.
  const boxes = [];
  for (const id of ["road-view", "hand-gear", "hand-speed"]) boxes.push(await visit.byId(id).boundingBox());
  for (const box of boxes) assert.ok(box.y >= 0 && box.y + box.height <= phone.height, JSON.stringify(box));
  assert.ok(boxes[0].y + boxes[0].height <= boxes[1].y);
  await visit.page.touchscreen.tap(boxes[0].x + boxes[0].width * 0.6, boxes[0].y + boxes[0].height * 0.3);
  const before = await rows(visit).count();
  await (await inView(visit, "road", "put-at-cursor")).tap();
  await rows(visit).nth(before).waitFor();
  const row = rows(visit).nth(before);
  await row.locator("select").selectOption("BrakeCheck");
  await sheetSays(visit, { hasText: "brake check" });
  await (await inView(visit, "card", "print-card")).tap();
  assert.ok(await visit.page.evaluate(() => globalThis.printed));
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-picture")).tap();
  assert.match((await saving).suggestedFilename(), /^Test-hill-Five-axle.*-card\.png$/);
  for (const view of ["card", "road"]) {
    await toView(visit, view);
    assert.deepEqual([await sideways(visit), await smallTargets(visit)], [[], []], view);
  }
  visit.assertClean();
  await visit.close();
});

/** What can be pressed and is seen, but lower than 48 px; links within sentences are let be. */
function smallTargets(visit) {
  return visit.page.evaluate(() => {
    const found = [];
    for (const it of document.querySelectorAll("button, select, input:not([type=file]), textarea, summary, label.file, nav a, a.button, a.boxed")) {
      const box = it.getBoundingClientRect();
      if (box.width === 0 || !it.checkVisibility()) continue;
      // A box to tick is pressed by its label too.
      const target = it.type === "checkbox" ? it.closest("label").getBoundingClientRect() : box;
      if (target.height < 47.5) found.push(`${it.dataset.testid ?? it.textContent} ${target.height}`);
    }
    return found;
  });
}

test("gloves make every target 48 px high, and are kept", async () => {
  const visit = await openDemo(browser, { viewport: wide });
  assert.notDeepEqual(await smallTargets(visit), []);
  await (await inView(visit, "more", "targets-large")).click();
  for (const view of ["more", "card", "two", "descents", "road"]) {
    await toView(visit, view);
    await visit.page.evaluate(() => document.querySelectorAll("details").forEach((it) => (it.open = true)));
    assert.deepEqual(await smallTargets(visit), [], view);
  }
  await openTruck(visit);
  await visit.page.evaluate(() => document.querySelectorAll("details").forEach((it) => (it.open = true)));
  assert.deepEqual(await smallTargets(visit), [], "truck and day");
  await visit.page.reload();
  await isAnswered(visit);
  assert.equal(await (await inView(visit, "more", "targets-large")).getAttribute("aria-pressed"), "true");
  visit.assertClean();
  await visit.close();
});

test("the card is saved as a picture for a phone, black on white at night too, down to its last line", async () => {
  const visit = await openDemo(browser, { scheme: "dark", viewport: { ...phone, width: 360 } });
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-picture")).click();
  const file = await saving;
  assert.match(file.suggestedFilename(), /Kestrel.*-card\.png$/);
  const bytes = await readFile(await file.path());
  assert.equal(bytes.toString("latin1", 1, 4), "PNG");
  assert.equal(bytes.readUInt32BE(16), 1080);
  assert.ok(bytes.readUInt32BE(20) > 2 * 1080, `${bytes.readUInt32BE(20)} px`);
  visit.assertClean();
  // What is on it, seen by another page that may load it.
  const other = await visit.context.newPage();
  const seen = await other.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [image.width, image.height];
    const context = canvas.getContext("2d");
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    let dark = 0;
    let white = 0;
    let lowest = 0;
    for (let at = 0; at < data.length; at += 4) {
      if (data[at] < 64) {
        dark += 1;
        lowest = at / 4 / image.width;
      }
      if (data[at] > 250) white += 1;
    }
    const all = data.length / 4;
    return { dark: dark / all, white: white / all, lowest: lowest / image.height };
  }, bytes.toString("base64"));
  assert.ok(seen.dark > 0.02 && seen.dark < 0.2, JSON.stringify(seen));
  assert.ok(seen.white > 0.7, JSON.stringify(seen));
  assert.ok(seen.lowest > 0.97 && seen.lowest < 0.999, JSON.stringify(seen));
  await visit.close();
});
