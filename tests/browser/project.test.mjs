// A project: road, places, truck and day in one file, saved here and opened on another machine.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  dropFile, dropFiles, fillEntry, inTruck, inView, isAnswered, openDemo, openPage, putPlace, settle, startBrowser,
  toView,
} from "./page.mjs";
import { read, sameSentence } from "./read.mjs";
import { hill, roadFile } from "./roads.mjs";

const gentle = roadFile("Gentle way", [[2000, 0], [9000, -0.04], [2000, 0]]);
/** From the foot of the test hill 4 km up to another pass, recorded on the way back. Files that are dropped
 * together are put in the order of their names. */
const upAgain = roadFile("Upper side", [[4000, 0.07], [1000, 0]], { start: 500, from: 9000, homewards: true });

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const ready = async (visit) => {
  await isAnswered(visit);
  await settle(visit);
};

const TYPE = "application/octet-stream";
const places = (visit) => visit.byId("place");

/** Two files joined, the second of them turned, and the road of both driven the other way. */
async function joinBoth(visit) {
  await dropFiles(visit, "drop-zone", [hill, upAgain]);
  await visit.byId("turn-1").click();
  await visit.byId("join").click();
  await visit.byId("road-name").filter({ hasText: "Test hill + Upper side" }).waitFor();
  await ready(visit);
  await visit.byId("reverse").click();
  await settle(visit);
}

/** What the card says. */
async function cardText(visit) {
  await toView(visit, "card");
  return read(visit, "sheet");
}

/** Such a road, a place, a marker, 22 t in the wet: saved. */
async function save() {
  const visit = await openPage(browser);
  await ready(visit);
  await joinBoth(visit);
  await fillEntry(visit, "gross_mass", "22");
  await (await inTruck(visit, "surface-wet")).click();
  await settle(visit);
  await putPlace(visit, "4.5");
  await settle(visit);
  await (await inView(visit, "card", "entry-marker")).fill("12.4");
  await settle(visit);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-project")).click();
  const download = await saving;
  const project = {
    name: download.suggestedFilename(),
    bytes: await readFile(await download.path()),
    type: TYPE,
    sentence: await read(visit, "verdict-sentence"),
    things: await places(visit).count(),
    sheet: await cardText(visit),
    ends: await read(visit, "road-ends"),
  };
  assert.match(project.ends, /14\.0 km/);
  visit.assertClean();
  await visit.close();
  return project;
}

test("a project brings back road, places, marker, truck and day, and what was entered is at hand", async () => {
  const project = await save();
  assert.match(project.name, /^Test-hill.*Upper-side\.steadygrade$/);
  const end = project.bytes.indexOf(10);
  const header = JSON.parse(project.bytes.subarray(0, end).toString());
  assert.equal(header.steadygrade_project, 3);
  const { road } = header.project;
  assert.equal(road.reversed, true);
  assert.deepEqual(road.files, [
    { name: hill.name, bytes: hill.bytes.length, backwards: false },
    { name: upAgain.name, bytes: upAgain.bytes.length, backwards: true },
  ]);
  const files = Buffer.concat([hill.bytes, upAgain.bytes]);
  assert.deepEqual(project.bytes.subarray(end + 1), files, "the road's files as they were given");

  const visit = await openPage(browser);
  await ready(visit);
  await fillEntry(visit, "gross_mass", "30");
  await settle(visit);
  await dropFile(visit, "drop-zone", project);
  await visit.byId("project-opened").waitFor();
  await sameSentence(visit, project.sentence);
  await settle(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "22");
  const same = async () => {
    assert.match(await read(visit, "road-name"), /Test hill \+ Upper side/);
    assert.equal(await read(visit, "road-ends"), project.ends, "from the same end");
    assert.equal(await places(visit).count(), project.things);
  };
  await same();
  assert.equal(await cardText(visit), project.sheet, "the same card");
  // A reload keeps it, places too; what was typed for the marker it does not.
  await visit.page.reload();
  await ready(visit);
  await sameSentence(visit, project.sentence);
  await settle(visit);
  await same();
  visit.assertClean();
  await visit.close();
});

/** Texts of the table of two roads: kept, shown, difference of each row. */
async function table(visit) {
  await toView(visit, "two");
  await visit.byId("two-table").waitFor();
  return visit.byId("two-table").locator("tbody tr").allInnerTexts();
}

/** Two roads side by side, each with a truck of its own: the table, and the project of both. */
async function savePair() {
  const visit = await openPage(browser);
  await ready(visit);
  const choose = async (file, name, tonnes) => {
    await dropFile(visit, "drop-zone", file);
    await visit.byId("road-name").filter({ hasText: name }).waitFor();
    await settle(visit);
    await fillEntry(visit, "gross_mass", tonnes);
    await settle(visit);
  };
  await choose(hill, "Test hill", "22");
  await putPlace(visit, "4.5");
  await (await inView(visit, "card", "entry-marker")).fill("7");
  await settle(visit);
  await (await inView(visit, "two", "keep-beside")).click();
  await choose(gentle, "Gentle way", "30");
  await visit.byId("reverse").click();
  await settle(visit);
  const rows = await table(visit);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-project")).click();
  const download = await saving;
  const bytes = await readFile(await download.path());
  return { visit, rows, project: { name: download.suggestedFilename(), bytes, type: TYPE } };
}

test("a project brings back both roads, each with its truck; so does a reload; they can be swapped", async () => {
  const { visit: first, rows, project } = await savePair();
  const files = project.bytes.subarray(project.bytes.indexOf(10) + 1);
  assert.deepEqual(files, Buffer.concat([gentle.bytes, hill.bytes]), "the files of both as they were given");
  first.assertClean();
  await first.close();

  const visit = await openPage(browser);
  await ready(visit);
  const same = async () => {
    await visit.byId("road-name").filter({ hasText: "Gentle way" }).waitFor();
    await toView(visit, "two");
    await visit.byId("two-0").locator("h3").filter({ hasText: "Test hill" }).waitFor();
    await settle(visit);
    assert.deepEqual(await table(visit), rows);
  };
  await dropFile(visit, "drop-zone", project);
  await same();
  await visit.page.reload();
  await same();

  await (await inView(visit, "two", "swap-two")).click();
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await visit.byId("two-0").locator("h3").filter({ hasText: "Gentle way" }).waitFor();
  await settle(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "22");
  assert.equal(await (await inView(visit, "card", "entry-marker")).inputValue(), "7");
  assert.equal(await places(visit).count(), 1);
  const values = (rows) => rows.map((row) => row.split("\t").slice(1, 3));
  assert.deepEqual(values(await table(visit)), values(rows).map(([kept, shown]) => [shown, kept]));
  await (await inView(visit, "two", "swap-two")).click();
  await same();

  // Put away it stays away.
  await (await inView(visit, "two", "end-two")).click();
  await visit.byId("two-table").waitFor({ state: "detached" });
  await settle(visit);
  await visit.page.reload();
  await visit.byId("road-name").filter({ hasText: "Gentle way" }).waitFor();
  await settle(visit);
  await toView(visit, "two");
  assert.equal(await visit.byId("two-table").count(), 0);
  visit.assertClean();
  await visit.close();
});

test("a road kept here stays beside the road of a project that brings none", async () => {
  const project = await save();
  const visit = await openPage(browser);
  await ready(visit);
  await dropFile(visit, "drop-zone", gentle);
  await visit.byId("road-name").filter({ hasText: "Gentle way" }).waitFor();
  await settle(visit);
  await (await inView(visit, "two", "keep-beside")).click();
  await dropFile(visit, "drop-zone", project);
  await sameSentence(visit, project.sentence);
  await settle(visit);
  await toView(visit, "two");
  assert.match(await visit.byId("two-0").locator("h3").innerText(), /Gentle way/);
  assert.match(await visit.byId("two-1").locator("h3").innerText(), /Test hill/);
  visit.assertClean();
  await visit.close();
});

test("an invented road stays one in a project, alone and beside another", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "two", "keep-beside")).click();
  await settle(visit);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "save-project")).click();
  const project = { name: "both.steadygrade", bytes: await readFile(await (await saving).path()), type: TYPE };
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  await toView(visit, "two");
  assert.match(await visit.byId("two-0").locator("h3").innerText(), /invented/);
  await dropFile(visit, "drop-zone", project);
  await visit.byId("demo").waitFor({ state: "attached" });
  await toView(visit, "two");
  await settle(visit);
  for (const index of [0, 1]) {
    assert.match(await visit.byId(`two-${index}`).locator("h3").innerText(), /invented/);
  }
  visit.assertClean();
  await visit.close();
});

test("back to mine gives truck and day back; undo gives back the places put there before", async () => {
  const project = await save();
  const visit = await openPage(browser);
  await ready(visit);
  await joinBoth(visit);
  for (const at of ["1.0", "2.0", "3.0"]) {
    await putPlace(visit, at);
  }
  await settle(visit);
  await dropFile(visit, "drop-zone", project);
  await visit.byId("project-opened").waitFor();
  await sameSentence(visit, project.sentence);
  await settle(visit);
  assert.equal(await places(visit).count(), 1);
  await visit.byId("leave-link").click();
  await settle(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "36.287");
  await (await inView(visit, "road", "undo-places")).click();
  await settle(visit);
  assert.equal(await places(visit).count(), 3);
  visit.assertClean();
  await visit.close();
});

test("a project that was cut, or is none, is told; road and entries stay", async () => {
  const project = await save();
  const visit = await openPage(browser);
  await ready(visit);
  const sentence = await read(visit, "verdict-sentence");
  const line = project.bytes.indexOf(10);
  for (const bytes of [
    project.bytes.subarray(0, -100),
    project.bytes.subarray(0, line - 10),
    Buffer.concat([Buffer.from("{}\n"), hill.bytes]),
    roadFile("No project", [[2000, -0.05]]).bytes,
    Buffer.alloc(0),
  ]) {
    await dropFile(visit, "drop-zone", { ...project, bytes });
    await visit.byId("project-error").waitFor();
    assert.match(await read(visit, "project-error"), /project cannot be used/);
    await visit.byId("close-trouble").click();
    await visit.byId("project-error").waitFor({ state: "detached" });
  }
  assert.equal(await read(visit, "verdict-sentence"), sentence);
  visit.assertClean();
  await visit.close();
});
