// The answer says what it does not know before what it knows, and nothing where it advises nothing.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
  closeTruck, dropFile, fillEntry, inTruck, openDemo, openTruck, phone, settle, sideways, startBrowser, toView, wide,
} from "./page.mjs";
import { changedSentence, read } from "./read.mjs";
import { hill, roadFile } from "./roads.mjs";

const uphill = roadFile("Way up", [[1000, 0], [6000, 0.06], [1000, 0]]);

/** 5 km of 8 % between gentle pieces, without heights on its descent. */
const holed = {
  name: "holed.gpx",
  bytes: Buffer.from(
    roadFile("Holed hill", [[2000, -0.003], [5000, -0.08], [2000, -0.003]])
      .bytes.toString()
      .split(/(?=<trkpt )/)
      .map((point, index) => (index > 96 && index < 356 ? point.replace(/<ele>.*<\/ele>/, "") : point))
      .join(""),
  ),
};

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

async function openRoad(file, name, options) {
  const visit = await openDemo(browser, options);
  await dropFile(visit, "drop-zone", file);
  await visit.byId("road-name").filter({ hasText: name }).waitFor();
  await settle(visit);
  return visit;
}

/** Whether the first element stands before the second on the page. */
async function stands(visit, first, second) {
  const [above, below] = await Promise.all([first, second].map((id) => visit.byId(id).first().elementHandle()));
  return above.evaluate((it, other) => Boolean(it.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING), below);
}

/** Whether all of it is in the window, and nothing lies over it. */
function inSight(visit, id) {
  return visit.byId(id).first().evaluate((it) => {
    const { left, right, top, bottom } = it.getBoundingClientRect();
    const corners = [[left + 2, top + 2], [right - 2, bottom - 2], [(left + right) / 2, (top + bottom) / 2]];
    const on = corners.map(([x, y]) => document.elementFromPoint(x, y));
    return on.every((hit) => hit !== null && (it.contains(hit) || hit.contains(it)));
  });
}

test("where no safe speed was found nothing is said of how sure, of a lost retarder or of curves", async () => {
  const visit = await openRoad(hill, "Test hill");
  await visit.byId("sure").first().waitFor();
  assert.ok((await visit.byId("lost").count()) > 0);
  const dry = await read(visit, "verdict-sentence");
  await (await inTruck(visit, "surface-ice")).click();
  assert.match(await changedSentence(visit, dry), /no safe speed found/);
  await toView(visit, "descents");
  await visit.page.locator("#ahead").waitFor({ state: "visible" });
  await visit.byId("descent-1").click();
  await visit.byId("in-hand").waitFor();
  await settle(visit);
  for (const id of ["sure", "lost", "curves", "hand-gear", "hand-stage", "hand-speed", "say"]) {
    assert.equal(await visit.byId(id).count(), 0, id);
  }
  const all = await visit.page.locator("#answer").evaluate((it) => it.textContent);
  assert.doesNotMatch(all, /How sure|braking hard|than this speed/i);
  visit.assertClean();
  await visit.close();
});

test("a road recorded uphill says that it climbs, and is turned where that stands", async () => {
  const visit = await openRoad(uphill, "Way up", { viewport: phone });
  assert.match(await read(visit, "verdict-sentence"), /^Driven this way, no hill/);
  assert.match(await read(visit, "climbs"), /climbs from 900 m to 1,260 m .* Coming down it\?/);
  const before = await read(visit, "verdict-sentence");
  await visit.byId("reverse-climb").click();
  assert.match(await changedSentence(visit, before), /^The descent, from km /);
  assert.equal(await visit.byId("climbs").count(), 0);
  visit.assertClean();
  await visit.close();
});

test("what could not be assessed stands in sight before the sentence, with the drop that lies in it", async () => {
  const visit = await openRoad(holed, "Holed hill");
  assert.match(await read(visit, "blank"), /^Heights missing or wrong on 5\.\d km \((39|40|41)\d m of drop\)\. No advice there\./);
  // The hill goes on behind it: what is not known is said of the descent too.
  assert.match(await read(visit, "verdict-sentence"), /^The descent, from km /);
  assert.match(await read(visit, "sheet"), /Not assessed: km /);
  assert.ok(await stands(visit, "blank", "verdict-sentence"));
  assert.ok(await inSight(visit, "blank"));
  assert.ok(await inSight(visit, "in-hand"));
  visit.assertClean();
  await visit.close();
});

test("what takes trust away stands before the answer, and both are in sight at once", async () => {
  const midway = roadFile("Midway", [[4000, -0.07], [1000, 0]]);
  const visit = await openRoad(midway, "Midway", { viewport: phone });
  assert.match(await read(visit, "doubts"), /starts on the hill\. What the brakes went through before is not known/);
  assert.ok(await stands(visit, "doubts", "verdict-sentence"));
  assert.ok(await stands(visit, "doubts", "verdict"));
  for (const id of ["doubts", "hand-gear", "hand-speed"]) assert.ok(await inSight(visit, id), id);
  visit.assertClean();
  await visit.close();
});

test("the choice of load says that the mass stays, and leads to it where it is folded", async () => {
  const visit = await openRoad(hill, "Test hill", { viewport: phone });
  await openTruck(visit);
  assert.equal(await visit.byId("to-mass").count(), 0);
  await (await inTruck(visit, "load-empty")).click();
  assert.match(await read(visit, "mass-stays"), /does not change the mass: 36\.3 t/);
  await (await inTruck(visit, "to-mass")).click();
  await visit.page.waitForFunction(() => document.activeElement.id === "entry-gross_mass");
  await fillEntry(visit, "gross_mass", "15");
  await visit.byId("to-mass").waitFor({ state: "detached" });
  visit.assertClean();
  await visit.close();
});

test("figures of former entries name the entry that is wrong and lead to it", async () => {
  const visit = await openRoad(hill, "Test hill", { viewport: phone });
  await fillEntry(visit, "rolling_radius", "9");
  await closeTruck(visit);
  await visit.byId("to-wrong").click();
  await visit.page.waitForFunction(() => document.activeElement.id === "entry-rolling_radius");
  assert.ok(await visit.byId("entry-rolling_radius").isVisible());
  visit.assertClean();
  await visit.close();
});

test("the readout knows who holds, and that all of nothing is no figure", async () => {
  const visit = await openRoad(roadFile("Over", [[3000, 0.05], [4000, -0.06], [1000, 0]]), "Over");
  await visit.byId("cursor").focus();
  await visit.page.keyboard.press("Home");
  await settle(visit, 200);
  assert.equal(await read(visit, "readout-carried"), "–");
  // The next bracket begins at the crest; well behind it the truck is held.
  await visit.page.keyboard.press("PageDown");
  for (let k = 0; k < 10; k += 1) await visit.page.keyboard.press("Shift+ArrowRight");
  await settle(visit, 200);
  assert.match(await read(visit, "readout-carried"), /^\d+ %$/);
  visit.assertClean();
  await visit.close();
});

test("the readout takes one line, whatever it says, and no page is wider than its window", async () => {
  for (const path of ["./", "./es.html", "./fr.html", "./de.html"]) {
    for (const viewport of [wide, { width: 720, height: 450 }]) {
      const visit = await openDemo(browser, { path, viewport });
      // What does not fit is left out; what is there stands whole.
      await visit.byId("cursor").focus();
      for (const key of ["Home", "PageDown", "End"]) {
        await visit.page.keyboard.press(key);
        const faults = await visit.byId("readout").evaluate((it) => {
          const box = it.getBoundingClientRect();
          const cells = [...it.querySelectorAll("dl > div")].map((cell) => cell.getBoundingClientRect());
          const seen = cells.filter(({ top, bottom, left, right }) => {
            return top < box.bottom - 1 && bottom > box.top + 1 && left < box.right - 1 && right > box.left + 1;
          });
          const cut = seen.filter(({ top, bottom, right }) => top < box.top - 1 || bottom > box.bottom + 1 || right > box.right + 1);
          return { rows: new Set(seen.map(({ top }) => Math.round(top))).size, cut: cut.length, height: box.height };
        });
        assert.deepEqual([faults.rows, faults.cut], [1, 0], `${path} at ${viewport.width}: ${JSON.stringify(faults)}`);
      }
      await toView(visit, "descents");
      // All chips of the list as long as the longest.
      await visit.page.evaluate(() => {
        const chips = [...document.querySelectorAll(".descent .verdict")];
        const longest = chips.map((it) => it.lastChild.textContent).sort((a, b) => b.length - a.length)[0];
        for (const it of chips) it.lastChild.textContent = `${longest} ${longest}`;
      });
      assert.deepEqual(await sideways(visit), [], `${path} at ${viewport.width}`);
      await visit.close();
    }
  }
});
