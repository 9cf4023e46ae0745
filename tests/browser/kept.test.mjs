// What is kept on the machine: the road last opened, and how all of it is forgotten.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
  dropFile, fillEntry, inTruck, inView, isAnswered, openDemo, openPage, openTruck, putPlace, settle, startBrowser,
  toView,
} from "./page.mjs";
import { read } from "./read.mjs";
import { hill } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

test("the road last opened is back after a reload, turned as it was, with truck and places", async () => {
  const visit = await openDemo(browser);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  await fillEntry(visit, "gross_mass", "30");
  await putPlace(visit, "3");
  await visit.byId("reverse").click();
  await settle(visit);
  const before = await read(visit, "road-ends");
  await visit.page.reload();
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  assert.equal(await read(visit, "road-ends"), before);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "30");
  assert.equal(await visit.byId("place").count(), 1);
  assert.ok(!(await read(visit, "road-button")).includes("demo"));
  visit.assertClean();
  await visit.close();
});

test("a file chosen before the demo has arrived is not replaced by it", async () => {
  let arrive;
  const held = new Promise((resolve) => {
    arrive = resolve;
  });
  let asked = false;
  const visit = await openPage(browser, {
    before: (page) =>
      page.route(/demo[^/]*\.gpx$/, async (route) => {
        asked = true;
        await held;
        await route.continue();
      }),
  });
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  const arrived = visit.page.waitForResponse(/demo[^/]*\.gpx$/);
  assert.ok(asked, "the demo was on its way");
  arrive();
  await arrived;
  await settle(visit);
  assert.match(await read(visit, "road-name"), /Test hill/);
  assert.equal(await visit.byId("demo").count(), 0);
  visit.assertClean();
  await visit.close();
});

/** All that this page keeps on the machine: local storage by name, and the keys of its database. */
function keptHere(visit) {
  return visit.page.evaluate(async () => {
    const named = Object.entries(localStorage).filter(([name]) => name.startsWith("steadygrade."));
    const answer = (request) =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await answer(indexedDB.open("steadygrade"));
    const stores = [...database.objectStoreNames];
    const keys = stores.length > 0 ? await answer(database.transaction("roads").objectStore("roads").getAllKeys()) : [];
    database.close();
    return { storage: Object.fromEntries(named), roads: keys };
  });
}

test("all that is kept is forgotten at the second press, and the page begins anew", async () => {
  // What begins by itself, on a machine that has never been here.
  const fresh = await openDemo(browser);
  const untouched = await keptHere(fresh);
  assert.deepEqual(untouched.roads, []);
  await fresh.close();

  const visit = await openDemo(browser);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  await fillEntry(visit, "gross_mass", "30");
  await putPlace(visit, "3");
  await (await inView(visit, "more", "targets-large")).click();
  await (await inTruck(visit, "truck-name")).fill("Heavy one");
  await (await inTruck(visit, "keep-truck")).click();
  await visit.byId("take-truck").filter({ hasText: "Heavy one" }).waitFor();
  await (await inView(visit, "two", "keep-beside")).click();
  await (await inView(visit, "two", "rate-hour")).fill("60");
  await visit.byId("rate-hour").press("Tab");
  await settle(visit);
  // Kept a moment after the last key.
  await visit.page.waitForFunction(() => Object.keys(localStorage).some((it) => it.startsWith("steadygrade.rates.")));
  const full = await keptHere(visit);
  assert.deepEqual(full.roads.toSorted(), ["beside", "last"]);
  for (const kind of ["kept", "roads", "gloves", "rates"]) {
    const name = Object.keys(full.storage).find((it) => it.startsWith(`steadygrade.${kind}.`));
    assert.ok(name, `${kind} is kept`);
    assert.notEqual(full.storage[name], untouched.storage[name], kind);
  }

  await (await inView(visit, "more", "forget")).click();
  assert.match(await read(visit, "forget"), /once more/);
  await visit.byId("units-metric").focus();
  assert.match(await read(visit, "forget"), /^Forget all/, "leaving it takes it back");
  await visit.byId("forget").click();
  await Promise.all([visit.page.waitForEvent("load"), visit.byId("forget").click()]);
  await visit.byId("demo").waitFor({ state: "attached" });
  await settle(visit);
  assert.deepEqual(await keptHere(visit), untouched, "only what begins by itself, as on a new machine");
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "36.287");
  assert.equal(await (await inView(visit, "more", "targets-large")).getAttribute("aria-pressed"), "false");
  await toView(visit, "two");
  assert.equal(await visit.byId("two-table").count(), 0);
  await openTruck(visit);
  assert.equal(await visit.byId("take-truck").count(), 0);
  await (await inView(visit, "two", "keep-beside")).click();
  assert.equal(await (await inView(visit, "two", "rate-hour")).inputValue(), "");
  visit.assertClean();
  await visit.close();
});

test("what is typed is kept a moment later, not at each key, and at once when the page is left", async () => {
  const visit = await openDemo(browser);
  await visit.page.evaluate(() => {
    window.writes = 0;
    const setItem = Storage.prototype.setItem;
    Storage.prototype.setItem = function (name, value) {
      if (name.startsWith("steadygrade.kept.")) window.writes += 1;
      return setItem.call(this, name, value);
    };
  });
  const writes = () => visit.page.evaluate(() => window.writes);
  // Five keys within one task: however slow the machine, no timer comes between them.
  await (await inTruck(visit, "entry-gross_mass")).evaluate((field) => {
    for (const text of ["3", "30", "30.", "30.2", "30.25"]) {
      field.value = text;
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    }
  });
  await visit.page.waitForFunction(() => window.writes > 0);
  await settle(visit);
  assert.equal(await writes(), 1);
  // Left in the same task as the key: only leaving can have kept it.
  await Promise.all([
    visit.page.waitForEvent("load"),
    visit.byId("entry-gross_mass").evaluate((field) => {
      field.value = "31.5";
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
      location.reload();
    }),
  ]);
  await isAnswered(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "31.5");
  visit.assertClean();
  await visit.close();
});
