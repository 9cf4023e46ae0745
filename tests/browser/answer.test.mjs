// The answer says what it does not know before what it knows, and nothing where it advises nothing.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { dropFile, openDemo, phone, settle, startBrowser } from "./page.mjs";
import { changedSentence, read } from "./read.mjs";
import { hill, roadFile } from "./roads.mjs";

const uphill = roadFile("Way up", [[1000, 0], [6000, 0.06], [1000, 0]]);

/** 5 km of 8 % between gentle pieces, without heights on its descent. */
const holed = {
  name: "holed.gpx",
  bytes: Buffer.from(
    roadFile("Holed hill", [[2000, -0.01], [5000, -0.08], [2000, -0.01]])
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

test("where no safe speed was found nothing is said of how sure, of a lost retarder or of curves", async () => {
  const visit = await openRoad(hill, "Test hill");
  await visit.byId("sure").first().waitFor();
  assert.ok((await visit.byId("lost").count()) > 0);
  const dry = await read(visit, "verdict-sentence");
  await visit.byId("surface-ice").click();
  assert.match(await changedSentence(visit, dry), /no safe speed was found/);
  await visit.byId("ahead").waitFor({ state: "visible" });
  await visit.byId("descent-1").click();
  await visit.byId("detail-1").waitFor();
  await settle(visit);
  for (const id of ["sure", "lost", "curves", "studying"]) assert.equal(await visit.byId(id).count(), 0, id);
  assert.doesNotMatch(await visit.page.locator("#answer").innerText(), /How sure|braking hard|than this speed/i);
  visit.assertClean();
  await visit.close();
});

test("a road recorded uphill says that it climbs, and is turned where that stands", async () => {
  const visit = await openRoad(uphill, "Way up", { viewport: phone });
  assert.match(await read(visit, "verdict-sentence"), /^Driven this way, no hill/);
  assert.match(await read(visit, "climbs"), /climbs from 900 m to 1,260 m .* Coming down it\?/);
  const before = await read(visit, "verdict-sentence");
  await visit.byId("reverse-climb").click();
  assert.match(await changedSentence(visit, before), /^The descent: /);
  assert.equal(await visit.byId("climbs").count(), 0);
  visit.assertClean();
  await visit.close();
});

test("what could not be assessed comes before the sentence, with the drop that lies in it", async () => {
  const visit = await openRoad(holed, "Holed hill");
  assert.match(await read(visit, "blank"), /^5\.\d km could not be assessed; the road is (39\d|40\d) m lower behind them/);
  assert.match(await read(visit, "verdict-sentence"), /^On the parts that could be assessed/);
  assert.ok(await stands(visit, "blank", "verdict-sentence"));
  visit.assertClean();
  await visit.close();
});

test("what takes trust away stands between the sentence and the verdict", async () => {
  const midway = roadFile("Midway", [[4000, -0.07], [1000, 0]]);
  const visit = await openRoad(midway, "Midway", { viewport: phone });
  assert.match(await read(visit, "doubts"), /starts in the middle of a descent/);
  assert.ok(await stands(visit, "verdict-sentence", "doubts"));
  assert.ok(await stands(visit, "doubts", "verdict"));
  visit.assertClean();
  await visit.close();
});
