// Two recordings of one road: seen, asked about, made one road, kept, and taken apart again.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  chooseFile, closeRoad, dropFile, dropFiles, fillEntry, inRoad, inView, openDemo, phone, putPlace, settle, sideways,
  startBrowser, takePart, takeShot, toView,
} from "./page.mjs";
import { changedSentence, plain, read } from "./read.mjs";
import { hill, roadFile } from "./roads.mjs";

const pieces = [[2000, 0], [5000, -0.08], [2000, 0]];
// The same hill by another device: its heights are uneven, and count from elsewhere.
const again = roadFile("Hill again", pieces, { start: 930, uneven: 1.5, aside: 4 });
// And one that has a pitch of its own on it.
const pitched = roadFile(
  "Hill with a pitch",
  [[2000, 0], [2000, -0.08], [300, -0.15], [900, -0.0567], [1800, -0.08], [2000, 0]],
  { start: 930, uneven: 0.3, aside: 4 },
);
const homewards = roadFile("Hill again", pieces, { start: 930, uneven: 1.5, aside: 4, homewards: true });
const other = roadFile("Other road", [[1000, 0], [3000, -0.05], [1000, 0]], { from: 40_000 });

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const shows = (visit, name) => visit.byId("road-name").filter({ hasText: name }).waitFor();

async function open(visit, file, name) {
  await dropFile(visit, "drop-zone", file);
  await shows(visit, name);
  await settle(visit);
}

/** Drops both at once and makes one road of them. */
async function combine(visit, files) {
  await dropFiles(visit, "drop-zone", files);
  await visit.byId("combine").click();
  await isCombined(visit);
}

/** Waits until the road shown is one of several recordings. */
async function isCombined(visit, what = { hasText: /recordings/ }) {
  await visit.byId("combined").filter(what).waitFor({ state: "attached" });
  await settle(visit);
}

/** What was found out about the road. */
async function findings(visit) {
  const list = await inRoad(visit, "findings");
  if (!(await list.evaluate((it) => it.open))) await list.locator("summary").click();
  const text = plain(await list.innerText());
  await closeRoad(visit);
  return text;
}

test("files dropped together that lie on each other are asked about, and nothing is combined by itself", async () => {
  const visit = await openDemo(browser);
  await dropFiles(visit, "drop-zone", [hill, again]);
  await visit.byId("alike").waitFor();
  assert.match(await read(visit, "alike"), /2 files lie on each other\. Do they show the same road\?/);
  // All three choices are there, and the road before stands.
  for (const choice of ["rank", "join", "combine"]) assert.ok(await visit.byId(choice).isVisible(), choice);
  assert.match(await read(visit, "road-button"), /demo/);
  await takeShot(visit, "same-asked");
  await visit.byId("combine").click();
  await isCombined(visit);
  assert.match(await read(visit, "combined"), /One road of 2 recordings: Hill again\.gpx \+ Test hill\.gpx/);
  assert.match(await read(visit, "road-name"), /Hill again \+ Test hill/);
  assert.match(await read(visit, "road-ends"), /9\.0 km/);
  assert.equal(await visit.byId("ask-order").count(), 0);
  assert.match(await findings(visit), /2 recordings of this road combined to one; at least two of them know 9\.0 km/);
  visit.assertClean();
  await visit.close();
});

test("where the recordings differ it is told with the place, and the steeper is planned for", async () => {
  const visit = await openDemo(browser);
  await open(visit, hill, "Test hill");
  const alone = await read(visit, "verdict-sentence");
  await combine(visit, [hill, pitched]);
  const text = await findings(visit);
  assert.match(text, /The two recordings differ by up to \d+ m of height over \d+ m; the steeper one is used/);
  const place = (await inRoad(visit, "findings")).locator("li", { hasText: "differ by up to" }).getByTestId("show-place");
  assert.match(await place.first().innerText(), /km\s[345]\.\d/);
  // It leads there.
  await place.first().click();
  await visit.byId("road-panel").waitFor({ state: "hidden" });
  await visit.byId("strip").waitFor();
  const speed = (sentence) => Number(sentence.match(/, (\d+) km\/h/)[1]);
  assert.ok(speed(await read(visit, "verdict-sentence")) <= speed(alone));
  await takeShot(visit, "same-combined");
  visit.assertClean();
  await visit.close();
});

test("a combined road outlives truck, direction, part, reload and project, and is taken apart again", async () => {
  const visit = await openDemo(browser);
  await combine(visit, [hill, homewards]);
  // Driven as the first file was recorded: that one from its foot.
  const climbing = await read(visit, "verdict-sentence");
  await visit.byId("reverse").click();
  const down = await changedSentence(visit, climbing);
  assert.match(await read(visit, "combined"), /2 recordings/);
  await fillEntry(visit, "gross_mass", "20");
  const lighter = await changedSentence(visit, down);
  await settle(visit);
  assert.match(await read(visit, "combined"), /2 recordings/);
  await visit.page.reload();
  await isCombined(visit);
  assert.equal(await read(visit, "verdict-sentence"), lighter);
  assert.match(await findings(visit), /2 recordings of this road combined/);
  // A part of it, and the whole again.
  await takePart(visit);
  assert.match(await read(visit, "combined"), /2 recordings/);
  assert.match(await read(visit, "road-ends"), /^[56]\.\d km/);
  await visit.byId("notice").getByTestId("whole-road").click();
  await visit.byId("notice").getByTestId("part").waitFor({ state: "detached" });
  await settle(visit);
  const saved = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-project")).click();
  const bytes = await readFile(await (await saved).path());
  const header = JSON.parse(bytes.subarray(0, bytes.indexOf(10)).toString());
  assert.deepEqual(header.project.road.also.map((it) => it.from), [1]);
  await open(visit, other, "Other road");
  assert.equal(await visit.byId("combined").count(), 0);
  await chooseFile(visit, { name: "both.steadygrade", bytes }, "file-input");
  await isCombined(visit);
  assert.equal(await read(visit, "verdict-sentence"), lighter);
  // Taken apart: the files are in hand, the road stays until it is decided.
  await (await inRoad(visit, "take-apart")).click();
  await closeRoad(visit);
  await visit.byId("alike").waitFor();
  assert.match(await read(visit, "leg-1"), /Test hill/);
  assert.equal(await read(visit, "verdict-sentence"), lighter);
  await visit.byId("rank").click();
  await visit.byId("two-table").waitFor();
  await visit.byId("to-many").click();
  await visit.byId("ranked-row").filter({ hasText: "Test hill" }).getByTestId("open-ranked").click();
  await shows(visit, /^Test hill/);
  await settle(visit);
  assert.equal(await visit.byId("combined").count(), 0);
  // It was compared: it is not asked again.
  assert.equal(await visit.byId("ask-same").count(), 0);
  visit.assertClean();
  await visit.close();
});

test("a file that lies on the road before is asked about: left, compared, joined or the same road", async () => {
  const visit = await openDemo(browser);
  await open(visit, hill, "Test hill");
  await open(visit, again, "Hill again");
  await visit.byId("ask-same").waitFor();
  assert.match(await read(visit, "ask-same"), /Hill again\.gpx lies on Test hill\.gpx\. Do they show the same road\?/);
  await takeShot(visit, "same-second");
  await visit.byId("leave-same").click();
  await visit.byId("ask-same").waitFor({ state: "detached" });
  assert.match(await read(visit, "road-name"), /^Hill again/);
  await open(visit, hill, "Test hill");
  await visit.byId("compare-both").click();
  await toView(visit, "two");
  await visit.byId("two-table").waitFor();
  assert.match(await visit.byId("two-0").locator("h3").innerText(), /Hill again/);
  // With one kept beside, a third file is asked about, too.
  await open(visit, pitched, "Hill with a pitch");
  await visit.byId("join-both").click();
  assert.match(await read(visit, "leg-0"), /Test hill/);
  assert.match(await read(visit, "leg-1"), /Hill with a pitch/);
  await visit.byId("leave-legs").click();
  await open(visit, hill, "Test hill");
  await visit.byId("ask-same").getByTestId("combine").click();
  await isCombined(visit);
  assert.match(await read(visit, "combined"), /2 recordings: Hill with a pitch\.gpx \+ Test hill\.gpx/);
  await settle(visit);
  // A third recording joins the two.
  await open(visit, again, /^Hill again$/);
  await visit.byId("ask-same").getByTestId("combine").click();
  await isCombined(visit, { hasText: "3 recordings" });
  visit.assertClean();
  await visit.close();
});

test("what was put on either road by hand comes along, and is there after a reload", async () => {
  const visit = await openDemo(browser);
  await open(visit, hill, "Test hill");
  const places = visit.byId("place");
  await putPlace(visit, "3.5");
  await places.first().waitFor();
  const row = places.first();
  await row.locator("select").selectOption("EscapeRamp");
  await row.locator("[data-testid^=name-]").fill("Old quarry");
  await row.locator("[data-testid^=name-]").press("Tab");
  await settle(visit);
  await open(visit, again, "Hill again");
  await visit.byId("ask-same").getByTestId("combine").click();
  await isCombined(visit);
  const kept = async () => {
    assert.equal(await places.count(), 1);
    assert.equal(await row.locator("[data-testid^=name-]").inputValue(), "Old quarry");
    assert.match(await row.locator("[data-testid^=from-]").inputValue(), /^3\.(49|5)/);
  };
  await kept();
  await visit.page.reload();
  await isCombined(visit);
  await kept();
  visit.assertClean();
  await visit.close();
});

test("copies and other roads are not asked about; of three files it is said which two lie on each other", async () => {
  const visit = await openDemo(browser);
  await open(visit, hill, "Test hill");
  for (const file of [{ ...hill, name: "copy.gpx" }, other]) {
    await dropFile(visit, "drop-zone", file);
    await settle(visit, 1500);
    assert.equal(await visit.byId("ask-same").count(), 0, file.name);
  }
  await dropFiles(visit, "drop-zone", [hill, again, other]);
  await visit.byId("two-alike").waitFor();
  assert.match(await read(visit, "two-alike"), /Hill again\.gpx and Test hill\.gpx lie on each other/);
  assert.equal(await visit.byId("combine").count(), 0);
  await visit.byId("leg-1").getByRole("button", { name: /Other road/ }).last().click();
  await visit.byId("combine").waitFor();
  visit.assertClean();
  await visit.close();
});

test("on a phone at night the question fits the width", async () => {
  const visit = await openDemo(browser, { viewport: { ...phone, width: 360 }, scheme: "dark" });
  await dropFiles(visit, "drop-zone", [hill, again]);
  await visit.byId("combine").waitFor();
  assert.deepEqual(await sideways(visit), []);
  await takeShot(visit, "same-phone-asked");
  await visit.byId("combine").tap();
  await isCombined(visit);
  assert.deepEqual(await sideways(visit), []);
  await inRoad(visit, "combined");
  assert.deepEqual(await sideways(visit), []);
  await takeShot(visit, "same-phone");
  visit.assertClean();
  await visit.close();
});
