// A project: road, places, truck and day in one file, saved here and opened on another machine.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { dropFile, openPage, settle, startBrowser } from "./page.mjs";
import { read, sameSentence } from "./read.mjs";
import { hill, roadFile } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const ready = async (visit) => {
  await visit.byId("descent-row").first().waitFor();
  await settle(visit);
};

const TYPE = "application/octet-stream";
const rows = (visit) => visit.page.locator("[data-testid=place]");

/** Two files joined, the road turned around, a place, a marker, 22 t in the wet: saved. */
async function save() {
  const visit = await openPage(browser);
  await ready(visit);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await ready(visit);
  await visit.byId("reverse").click();
  await settle(visit);
  await visit.byId("reverse").click();
  await settle(visit);
  await visit.byId("entry-gross_mass").fill("22");
  await visit.byId("surface-wet").click();
  await settle(visit);
  await visit.byId("put-at").fill("4.5");
  await visit.byId("put").click();
  await settle(visit);
  await visit.byId("entry-marker").fill("12.4");
  await settle(visit);
  const saving = visit.page.waitForEvent("download");
  await visit.byId("save-project").click();
  const download = await saving;
  const project = {
    name: download.suggestedFilename(),
    bytes: await readFile(await download.path()),
    type: TYPE,
    sentence: await read(visit, "verdict-sentence"),
    things: await rows(visit).count(),
    sheet: await read(visit, "sheet"),
  };
  visit.assertClean();
  await visit.close();
  return project;
}

test("a project brings back road, places, marker, truck and day, and what was entered is at hand", async () => {
  const project = await save();
  assert.equal(project.name, "Test-hill.steadygrade");
  const line = project.bytes.subarray(0, project.bytes.indexOf(10)).toString();
  assert.equal(JSON.parse(line).steadygrade_project, 1);
  assert.deepEqual(project.bytes.subarray(line.length + 1), hill.bytes, "the road's file as it was given");

  const visit = await openPage(browser);
  await ready(visit);
  await visit.byId("entry-gross_mass").fill("30");
  await settle(visit);
  await dropFile(visit, "drop-zone", project);
  await visit.byId("project-opened").waitFor();
  await sameSentence(visit, project.sentence);
  await settle(visit);
  assert.equal(await visit.byId("entry-gross_mass").inputValue(), "22");
  assert.equal(await rows(visit).count(), project.things);
  assert.equal(await read(visit, "sheet"), project.sheet, "the same card");
  // A reload keeps it, places too.
  await visit.page.reload();
  await ready(visit);
  await sameSentence(visit, project.sentence);
  assert.equal(await rows(visit).count(), project.things);
  visit.assertClean();
  await visit.close();
});

test("back to mine gives truck and day back; undo gives back the places put there before", async () => {
  const project = await save();
  const visit = await openPage(browser);
  await ready(visit);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await ready(visit);
  for (const at of ["1.0", "2.0", "3.0"]) {
    await visit.byId("put-at").fill(at);
    await visit.byId("put").click();
  }
  await settle(visit);
  await dropFile(visit, "drop-zone", project);
  await visit.byId("project-opened").waitFor();
  await sameSentence(visit, project.sentence);
  await settle(visit);
  assert.equal(await rows(visit).count(), 1);
  await visit.byId("leave-link").click();
  await settle(visit);
  assert.equal(await visit.byId("entry-gross_mass").inputValue(), "36.287");
  await visit.byId("undo-places").click();
  await settle(visit);
  assert.equal(await rows(visit).count(), 3);
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
