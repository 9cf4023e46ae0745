// What follows from the answer: how sure it is, what if, what held, and the evidence.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  dropFile, fillEntry, inTruck, inView, isAnswered, openDemo, openPage, openQuestion, openTruck, phone, settle,
  startBrowser, toView, withoutServiceWorkers,
} from "./page.mjs";
import { hill, roadFile } from "./roads.mjs";
import { changedSentence, read } from "./read.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const sure = (visit) => visit.byId("sure").filter({ hasText: "256 times" });

/** The demo with its study. */
async function openStudied(options) {
  const visit = await openDemo(browser, options);
  await sure(visit).waitFor({ state: "attached" });
  return visit;
}

test("how sure it is, the lost retarder and what lies ahead come by themselves, on a phone as well", async () => {
  for (const viewport of [undefined, phone]) {
    const visit = await openStudied(viewport && { viewport });
    // In a few words at once, in full behind one tap.
    assert.match(await visit.byId("sure").locator(".short").innerText(), /^\d+ of 256$/);
    assert.notEqual(await visit.byId("lost").locator(".short").innerText(), "…");
    await openQuestion(visit, "lost");
    assert.match(await read(visit, "lost"), /Braking hard within two seconds/);
    await toView(visit, "descents");
    assert.match(await visit.byId("slowing").innerText(), /Brake check area/);
    assert.match(await visit.byId("adjustment").innerText(), /Trailer: about \d+/);
    await toView(visit, "road");
    await (viewport ? visit.byId("fill-select").selectOption("heat") : visit.byId("fill-heat").click());
    await settle(visit);
    assert.ok((await visit.page.locator("path.sureness").count()) >= 1, "the band of the temperature");
    visit.assertClean();
    await visit.close();
  }
});

test("another entry is studied anew, and a study at work is given up for it", async () => {
  const visit = await openStudied();
  const before = await read(visit, "verdict-sentence");
  await fillEntry(visit, "gross_mass", "60");
  await changedSentence(visit, before);
  await fillEntry(visit, "gross_mass", "61");
  await settle(visit);
  await sure(visit).waitFor({ state: "attached" });
  visit.assertClean();
  await visit.close();
});

test("a retarder of every kind can be chosen, and its numbers entered", async () => {
  const visit = await openPage(browser);
  await isAnswered(visit);
  const kinds = await (await inTruck(visit, "entry-retarder")).locator("option").evaluateAll((all) => all.map((it) => it.value));
  assert.equal(kinds.length, 5);
  const engineBrakes = ["none", "exhaust-valve", "compression-release"];
  for (const kind of kinds) {
    await (await inTruck(visit, "entry-retarder")).selectOption(kind);
    const isTable = kind.endsWith("table");
    assert.equal(await visit.byId("engine-brake").count(), isTable ? 0 : 1, "a table says it all");
    for (const engineBrake of isTable ? [undefined] : engineBrakes) {
      if (engineBrake) await visit.byId(`engine-brake-${engineBrake}`).click();
      const both = `${kind} and ${engineBrake}`;
      await settle(visit);
      assert.equal(await (await inTruck(visit, "entry-retarder")).inputValue(), kind, both);
      assert.match(await read(visit, "verdict-sentence"), /^(The descent|Descent \d+ of \d+[^,:]*), from km /);
      const has = async (id) => (await visit.byId(`entry-${id}`).count()) === 1;
      assert.equal(await has("sustained_power"), kind.includes("hydrodynamic"), both);
      assert.equal(await has("hot_share"), kind.includes("electromagnetic"), both);
      assert.equal(await has("retarder_table"), isTable, both);
      assert.equal(await has("retarder_peak_power"), !isTable && engineBrake !== "none", both);
      assert.equal(await has("lever"), !isTable && `${kind}${engineBrake}` !== "nonenone", both);
    }
  }
  // A table that cannot be read keeps what was typed and says what is asked for.
  await fillEntry(visit, "retarder_table", "900: 800 400");
  await visit.page.locator("#entry-retarder_table-wrong").filter({ hasText: "2 to 24 rows" }).waitFor();
  const before = await read(visit, "verdict-sentence");
  await fillEntry(visit, "retarder_table", "500: 400 900\n2500: 500 1500");
  await visit.byId("former").waitFor({ state: "detached" });
  assert.notEqual(before, "");
  visit.assertClean();
  await visit.close();
});

test("a converter asks for its lock-up, and the gear is to be held by hand", async () => {
  const visit = await openPage(browser);
  await isAnswered(visit);
  await openTruck(visit);
  assert.equal(await visit.byId("entry-lock_up_gear").count(), 0);
  await (await inTruck(visit, "transmission-converter")).click();
  await (await inTruck(visit, "entry-lock_up_gear")).waitFor();
  await toView(visit, "road");
  await visit.byId("notes").filter({ hasText: "engage the gear by hand" }).waitFor();
  visit.assertClean();
  await visit.close();
});

test("empty on a wet road no stage is advised, and it is said why", async () => {
  const visit = await openPage(browser);
  await isAnswered(visit);
  await (await inTruck(visit, "surface-wet")).click();
  await toView(visit, "road");
  await visit.byId("notes").filter({ hasText: "at most half the grip of the driven axles" }).waitFor();
  const before = await read(visit, "verdict-sentence");
  await (await inTruck(visit, "load-empty")).click();
  await toView(visit, "road");
  await visit.byId("notes").filter({ hasText: "No retarder stage is advised empty on a wet road" }).waitFor();
  await settle(visit);
  const sentence = await changedSentence(visit, before);
  assert.match(await read(visit, "verdict-sentence"), /retarder off|no safe speed/, `${sentence}`);
  visit.assertClean();
  await visit.close();
});

test("what held today scales the retarder, and the way back is there", async () => {
  const visit = await openStudied();
  await (await inTruck(visit, "measure")).click();
  await visit.byId("measured-panel").filter({ hasText: "all as numbers" }).waitFor();
  const seen = { gear: "5", stage: "3", engine: "1900", speed: "27", grade: "8" };
  for (const [field, text] of Object.entries(seen)) await (await inTruck(visit, `seen-${field}`)).fill(text);
  await (await inTruck(visit, "measure")).click();
  await visit.byId("measured").filter({ hasText: "it held with" }).waitFor();
  await (await inTruck(visit, "use-measured")).click();
  await visit.byId("undo-measured").waitFor();
  await settle(visit);
  assert.notEqual(await (await inTruck(visit, "entry-retarding_scale")).inputValue(), "100");
  await (await inTruck(visit, "undo-measured")).click();
  await visit.byId("undo-measured").waitFor({ state: "detached" });
  assert.equal(await (await inTruck(visit, "entry-retarding_scale")).inputValue(), "100");
  await (await inTruck(visit, "seen-engine")).fill("1100");
  await (await inTruck(visit, "measure")).click();
  await visit.byId("not-measured").filter({ hasText: "the engine would turn at about" }).waitFor();
  visit.assertClean();
  await visit.close();
});

test("the file is saved at once, studied or not", async () => {
  const visit = await openPage(browser);
  await isAnswered(visit);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  const saving = visit.page.waitForEvent("download");
  await (await inView(visit, "card", "export")).click();
  const text = await readFile(await (await saving).path(), "utf8");
  assert.match(text, /<wpt[\s\S]*<\/gpx>/);
  assert.match(text, /Test hill/);
  visit.assertClean();
  await visit.close();
});

test("a truck, a project and a link asked for behind a long study come, though a new result ends it", async () => {
  const visit = await openDemo(browser);
  const saved = [];
  visit.page.on("download", (download) => saved.push(download.suggestedFilename()));
  // The study worker of the demo is there; another one is started only where that one was ended.
  let others = 0;
  visit.page.on("worker", (worker) => {
    if (/study/.test(worker.url())) others += 1;
  });
  // Long enough that its study is still at work when the next result comes.
  const pieces = Array.from({ length: 12 }, () => [[1500, 0], [4000, -0.06], [1500, 0.05]]).flat();
  await dropFile(visit, "drop-zone", roadFile("Many hills", pieces, { start: 3000 }));
  await visit.byId("road-name").filter({ hasText: "Many hills" }).waitFor();
  // All of it is at hand: what is asked for now is posted behind its 256 runs.
  await toView(visit, "card");
  await inTruck(visit, "make-link");
  await visit.page.evaluate(
    () =>
      new Promise((resolve) => {
        const byId = (id) => document.querySelector(`[data-testid=${id}]`);
        const act = () => {
          if (!/^[1-9]\d?\s%$/.test(document.querySelector("[data-testid=sure] .short")?.textContent ?? "")) return;
          observer.disconnect();
          for (const id of ["save-truck", "save-project", "make-link"]) byId(id).click();
          const field = byId("entry-gross_mass");
          field.value = "30";
          field.dispatchEvent(new InputEvent("input", { bubbles: true }));
          resolve();
        };
        const observer = new MutationObserver(act);
        observer.observe(document.body, { subtree: true, childList: true, characterData: true });
        act();
      }),
  );
  await visit.byId("made-for").filter({ hasText: /30\.0.t/ }).waitFor({ state: "attached" });
  await visit.byId("link").waitFor({ state: "attached" });
  await sure(visit).waitFor({ state: "attached", timeout: 60_000 });
  assert.equal(others, 1, "the worker was ended");
  assert.equal(saved.filter((name) => name.endsWith("-truck.json")).length, 1, `${saved}`);
  assert.equal(saved.filter((name) => name.endsWith(".steadygrade")).length, 1, `${saved}`);
  visit.assertClean();
  await visit.close();
});

test("the evidence lists every row that the tests read, and marks what differs", async () => {
  const visit = await openDemo(browser);
  await inView(visit, "more", "evidence");
  await visit.byId("evidence-count").waitFor();
  const rows = JSON.parse(await readFile(new URL("../../public/evidence.json", import.meta.url), "utf8"));
  const known = rows.filter((row) => row.known_difference).length;
  assert.ok(rows.length > 200 && known > 0);
  assert.match(await visit.byId("evidence-count").innerText(), new RegExp(`^${rows.length} values; ${known} `));
  assert.equal(await visit.byId("evidence").locator("tbody tr:not(:has(th))").count(), rows.length);
  assert.equal(await visit.byId("evidence").locator("tr.differs").count(), known);
  // What no answer calls is told beside its source.
  const unused = new Set(rows.filter((row) => /not used by any answer/.test(row.status)).map((row) => row.source));
  const told = visit.byId("evidence").locator("th small").filter({ hasText: "not used by any answer" });
  assert.ok(unused.size > 0);
  assert.equal(await told.count(), unused.size);
  visit.assertClean();
  await visit.close();
});

test("without the study worker the answer stands, and saving tells that it cannot be done", async () => {
  const before = async (page) => {
    await withoutServiceWorkers(page);
    await page.route(/study[^/]*\.js$/, (route) => route.abort());
  };
  const visit = await openDemo(browser, { before });
  await (await inView(visit, "card", "export")).click();
  await visit.byId("export-error").waitFor();
  assert.match(await read(visit, "verdict-sentence"), /^(The descent|Descent \d+ of \d+[^,:]*), from km /);
  for (const key of ["lost", "sure"]) {
    assert.equal(await visit.byId(key).locator(".short").textContent(), "not worked out", "what is not known says so");
    assert.match(await visit.byId(key).locator(".told").textContent(), /does not mean that all is well/);
  }
  // What is missing stands in sight, on the road and where it would be told, until it is asked for again.
  assert.match(await read(visit, "study-missing"), /^Not worked out: .*retarder that fails/);
  await toView(visit, "descents");
  assert.match(await visit.page.locator("#ahead").innerText(), /^Not worked out/);
  await toView(visit, "road");
  await visit.byId("close-trouble").click();
  await (await inView(visit, "card", "save-project")).click();
  await visit.byId("export-error").waitFor();
  await visit.byId("close-trouble").click();
  await (await inTruck(visit, "make-link")).click();
  await visit.byId("start-error").waitFor();
  await visit.byId("close-trouble").click();
  await toView(visit, "road");
  await visit.page.unroute(/study[^/]*\.js$/);
  await visit.byId("study-again").first().click();
  await visit.byId("study-missing").waitFor({ state: "detached" });
  await visit.page.waitForFunction(() => {
    const short = (key) => document.querySelector(`[data-testid=${key}] .short`)?.textContent ?? "";
    return /of 256/.test(short("sure")) && !/not worked out|…/.test(short("lost"));
  });
  await visit.close();
});

test("a study worker that dies, at whatever stage, leaves words behind, and answers when it is asked again", async () => {
  // Workers are kept at hand, so that each can be ended as the browser ends one that ran out of memory.
  const before = (page) =>
    page.addInitScript(() => {
      window.started = [];
      window.Worker = class extends Worker {
        constructor(...given) {
          super(...given);
          window.started.push(this);
        }
      };
      // The first worker answers alone; the next are those of the study. One dies while it is loaded, one
      // between its runs.
      const deaths = [[2, /^0/], [3, /^[1-9]/]];
      setInterval(() => {
        const said = document.querySelector("[data-testid=sure] .short")?.textContent ?? "";
        if (window.started.length !== deaths[0]?.[0] || !deaths[0][1].test(said)) return;
        deaths.shift();
        window.started.at(-1).terminate();
        window.started.at(-1).dispatchEvent(new ErrorEvent("error", { message: "died" }));
      }, 5);
    });
  const visit = await openDemo(browser, { before });
  const short = (key) => visit.byId(key).locator(".short").textContent();
  for (const lost of [/^not worked out$/, /./]) {
    await visit.byId("study-missing").first().waitFor();
    assert.equal(await short("sure"), "not worked out");
    // What came before the worker died stays.
    assert.match(await short("lost"), lost);
    await visit.byId("study-again").first().click();
  }
  await visit.page.waitForFunction(() => /of 256/.test(document.querySelector("[data-testid=sure] .short").textContent));
  assert.equal(await visit.byId("study-missing").count(), 0);
  await visit.close();
});
