// Files: dropped, chosen, rotten, several at once, with several tracks; and the file that goes out.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  chooseFile, closeRoad, dropFile, dropFiles, fillEntry, inRoad, inTruck, inView, openDemo, openPage, settle,
  startBrowser, takePart, toView, unfold,
} from "./page.mjs";
import { flatFile, hill, roadsFile, webPage } from "./roads.mjs";
import { changedSentence, plain, read, sameSentence } from "./read.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** The page with its demo worked out. */
const openWorked = (options) => openDemo(browser, options);

const sentence = (visit) => read(visit, "verdict-sentence");

/** Waits until the road with this name is shown. */
const shows = (visit, name) => visit.byId("road-name").filter({ hasText: name }).waitFor();

test("the page opens with the invented demo worked out, and says that it is one", async () => {
  const visit = await openWorked();
  assert.match(await read(visit, "road-button"), /invented demo/);
  assert.match(await (await inRoad(visit, "demo")).innerText(), /not a real pass/);
  await closeRoad(visit);
  assert.match(await sentence(visit), /from km [\d.]+: gear \d+, stage \d+, \d+ km\/h/);
  assert.match(await read(visit, "cautions"), /Signs and law come first/);
  await unfold(visit, "cautions");
  assert.match(await read(visit, "cautions"), /Not for use while driving/);
  visit.assertClean();
  await visit.close();
});

test("a dropped file takes the demo's place", async () => {
  const visit = await openWorked();
  await dropFile(visit, "drop-zone", hill);
  await shows(visit, "Test hill");
  assert.equal(await visit.byId("demo").count(), 0);
  assert.match(await sentence(visit), /from km 2\.0: gear/);
  assert.match(await read(visit, "say"), /Be in gear before the crest, km 2\.0\./);
  await toView(visit, "descents");
  assert.equal(await visit.byId("descent-row").count(), 1);
  visit.assertClean();
  await visit.close();
});

test("a chosen file takes the same way, and the same file can be chosen again", async () => {
  const visit = await openWorked();
  await chooseFile(visit, hill, "file-input");
  await shows(visit, "Test hill");
  await chooseFile(visit, webPage, "file-input");
  await visit.byId("file-error").waitFor();
  await chooseFile(visit, hill, "file-input");
  await visit.byId("file-error").waitFor({ state: "detached" });
  await shows(visit, "Test hill");
  visit.assertClean();
  await visit.close();
});

for (const [file, expected] of [
  [webPage, /web page, not a GPX file/],
  [flatFile, /has a height/],
  [{ name: "empty.gpx", bytes: Buffer.alloc(0) }, /file is empty/],
]) {
  test(`a rotten file (${file.name}, ${file.bytes.length} bytes) is told in a sentence; the former road stays`, async () => {
    const visit = await openWorked();
    const before = await sentence(visit);
    await dropFile(visit, "drop-zone", file);
    const box = visit.byId("file-error");
    await box.waitFor();
    const text = await box.innerText();
    assert.match(text, expected);
    assert.ok(text.includes(file.name), text);
    await settle(visit);
    assert.equal(await sentence(visit), before);
    assert.match(await read(visit, "road-button"), /invented demo/);
    // The former road still answers to an entry.
    await fillEntry(visit, "speed_limit", "15");
    await changedSentence(visit, before);
    await visit.byId("close-trouble").click();
    assert.equal(await box.count(), 0);
    visit.assertClean();
    await visit.close();
  });
}

test("several files are joined once they are in order, and one that does not meet the other is told", async () => {
  const visit = await openWorked();
  const [there, back] = [{ ...hill, name: "a.gpx" }, { ...hill, name: "b.gpx" }];
  await dropFiles(visit, "drop-zone", [back, there]);
  assert.match(await read(visit, "leg-0"), /a\.gpx/);
  await visit.byId("join").click();
  assert.match(await read(visit, "file-error"), /File 2 begins 9\.0 km from where file 1 ends/);
  await visit.byId("close-trouble").click();
  assert.match(await read(visit, "road-button"), /invented demo/);
  // They are in hand still, in their order: one is turned, and they are joined again.
  assert.match(await read(visit, "leg-0"), /a\.gpx/);
  assert.match(await read(visit, "leg-1"), /b\.gpx/);
  await visit.byId("turn-1").click();
  await visit.byId("join").click();
  await shows(visit, "Test hill");
  assert.match(await read(visit, "road-ends"), /18\.0 km/);
  assert.equal(await visit.byId("ask-order").count(), 0);
  visit.assertClean();
  await visit.close();
});

test("more files than can be compared are refused with a remedy", async () => {
  const visit = await openWorked();
  await dropFiles(visit, "drop-zone", Array.from({ length: 201 }, (_, k) => ({ ...flatFile, name: `${k}.gpx` })));
  assert.match(await read(visit, "drop-error"), /Up to 20 files can be joined to one road, and up to 200 compared/);
  assert.equal(await visit.byId("ranked-row").count(), 0);
  visit.assertClean();
  await visit.close();
});

test("of several tracks in a file it is asked which one is meant", async () => {
  const visit = await openWorked();
  const two = roadsFile("two.gpx", [
    ["Long one", [[1000, 0], [6000, -0.06], [1000, 0]]],
    ["Short one", [[1000, 0], [2000, -0.07], [1000, 0]]],
  ]);
  await dropFile(visit, "drop-zone", two);
  assert.match(await read(visit, "ask-track"), /two\.gpx holds 2 roads/);
  // Nothing is guessed: the former road stays until somebody answers.
  assert.match(await read(visit, "road-button"), /invented demo/);
  await visit.byId("drop-choice").click();
  await visit.byId("ask-track").waitFor({ state: "detached" });
  await settle(visit);
  assert.match(await read(visit, "road-button"), /invented demo/);
  await dropFile(visit, "drop-zone", two);
  await visit.byId("track-1").click();
  await shows(visit, "Short one");
  assert.match(await read(visit, "road-ends"), /4\.0 km/);
  await (await inRoad(visit, "course")).selectOption("0");
  await shows(visit, "Long one");
  visit.assertClean();
  await visit.close();
});

test("a part of the road between the two handles is worked out alone, in either direction", async () => {
  const visit = await openWorked();
  await dropFile(visit, "drop-zone", hill);
  await shows(visit, "Test hill");
  await settle(visit);
  assert.equal(await visit.byId("only-this").isVisible(), false, "of the whole road there is no part to be taken");
  await takePart(visit);
  const part = visit.byId("notice").getByTestId("part");
  assert.match(plain(await part.innerText()), /A part of the road: km [23]\.\d to 9\.0 as recorded/);
  assert.match(await read(visit, "road-ends"), /^[56]\.\d km/);
  await visit.byId("reverse").click();
  await settle(visit);
  assert.match(plain(await part.innerText()), /km [23]\.\d to 9\.0 as recorded/);
  await visit.byId("reverse").click();
  await visit.byId("notice").getByTestId("whole-road").click();
  await part.waitFor({ state: "detached" });
  assert.match(await read(visit, "road-ends"), /9\.0 km/);
  visit.assertClean();
  await visit.close();
});

test("the worked road can be saved as GPX with its crests", async () => {
  const visit = await openWorked();
  await dropFile(visit, "drop-zone", hill);
  await shows(visit, "Test hill");
  const download = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "export")).click();
  const file = await download;
  assert.equal(file.suggestedFilename(), "Test-hill-descents.gpx");
  const text = await readFile(await file.path(), "utf8");
  assert.match(text, /<gpx[^>]*version="1\.1"/);
  assert.match(text, /<wpt /);
  visit.assertClean();
  await visit.close();
});

test("a long calculation shows its progress and can be cancelled; nothing entered is lost", async () => {
  const visit = await openWorked();
  const before = await sentence(visit);
  // 1,200 km of hills keep the worker busy for a while.
  const pieces = Array.from({ length: 600 }, (_, i) => [2000, i % 2 ? 0.06 : -0.06]);
  const long = roadsFile("long.gpx", [["Long road", pieces]]);
  await fillEntry(visit, "gross_mass", "44");
  await changedSentence(visit, before);
  await settle(visit);
  const heavier = await sentence(visit);
  await dropFile(visit, "drop-zone", long);
  await visit.byId("cancel").click();
  await visit.byId("cancelled").waitFor();
  assert.equal(await sentence(visit), heavier);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "44");
  assert.match(await read(visit, "road-button"), /invented demo/);
  // The new worker holds no file: the next question takes the kept one along.
  await fillEntry(visit, "gross_mass", "36.287");
  await sameSentence(visit, before);
  visit.assertClean();
  await visit.close();
});

test("a calculation that stops on an error is told, another one started, and nothing entered is lost", async () => {
  // The page's workers are kept within reach, so that one can be made to report an error.
  const before = (page) =>
    page.addInitScript(() => {
      const Native = globalThis.Worker;
      globalThis.workers = [];
      globalThis.Worker = class extends Native {
        constructor(...rest) {
          super(...rest);
          // Not the one that only looks further.
          if (String(rest[0]).includes("worker")) globalThis.workers.push(this);
        }
      };
    });
  const visit = await openWorked({ before });
  await fillEntry(visit, "gross_mass", "30");
  await settle(visit);
  const lighter = await sentence(visit);
  await visit.page.evaluate(() => globalThis.workers.at(-1).dispatchEvent(new ErrorEvent("error", { cancelable: true })));
  await visit.byId("worker-error").waitFor();
  assert.match(await read(visit, "worker-error"), /nothing that you entered is lost/);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "30");
  assert.equal(await sentence(visit), lighter);
  await fillEntry(visit, "gross_mass", "60");
  await changedSentence(visit, lighter);
  assert.equal(await visit.page.evaluate(() => globalThis.workers.length), 2);
  visit.assertClean();
  await visit.close();
});

test("a file on which the calculation stops is asked for once, and once more when the person says so", async () => {
  // Whatever is asked of a worker that reads a file named so stops it.
  const before = (page) =>
    page.addInitScript(() => {
      const Native = globalThis.Worker;
      globalThis.asked = 0;
      globalThis.Worker = class extends Native {
        postMessage(message, ...rest) {
          const fatal = Array.isArray(message) && message.some((part) => part instanceof File && part.name === "fatal.gpx");
          if (!fatal) return super.postMessage(message, ...rest);
          globalThis.asked += 1;
          setTimeout(() => this.dispatchEvent(new ErrorEvent("error", { cancelable: true })));
        }
      };
    });
  const visit = await openWorked({ before });
  const told = await sentence(visit);
  await dropFile(visit, "drop-zone", { ...hill, name: "fatal.gpx" });
  await visit.byId("worker-error").waitFor();
  await settle(visit);
  assert.equal(await visit.page.evaluate(() => globalThis.asked), 1);
  assert.equal(await sentence(visit), told, "what was shown stands");
  assert.match(await read(visit, "road-button"), /demo/);
  await visit.byId("try-again").click();
  await visit.byId("worker-error").waitFor();
  await settle(visit);
  assert.equal(await visit.page.evaluate(() => globalThis.asked), 2);
  // The page works on.
  await fillEntry(visit, "gross_mass", "44");
  await changedSentence(visit, told);
  visit.assertClean();
  await visit.close();
});

test("a calculation that cannot be loaded is told with a remedy", async () => {
  const before = (page) => page.route(/worker[^/]*\.js$/, (route) => route.abort());
  const visit = await openPage(browser, { before });
  await visit.byId("start-error").waitFor();
  assert.match(await read(visit, "start-error"), /Reload the page/);
  await visit.close();
});
