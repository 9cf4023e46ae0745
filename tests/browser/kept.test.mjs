// What is kept on the machine: the road last opened, and how all of it is forgotten.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { dropFile, openDemo, openPage, settle, startBrowser } from "./page.mjs";
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
  await visit.byId("entry-gross_mass").fill("30");
  await visit.byId("put-at").fill("3");
  await visit.byId("put").click();
  await visit.byId("reverse").click();
  await settle(visit);
  const before = await read(visit, "road-ends");
  await visit.page.reload();
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  assert.equal(await read(visit, "road-ends"), before);
  assert.equal(await visit.byId("entry-gross_mass").inputValue(), "30");
  assert.equal(await visit.byId("place").count(), 1);
  assert.ok(!(await read(visit, "road-name")).includes("demo"));
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

test("all that is kept is forgotten at the second press, and the page begins anew", async () => {
  const visit = await openDemo(browser);
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await visit.byId("entry-gross_mass").fill("30");
  await settle(visit);
  await visit.byId("forget").click();
  assert.match(await read(visit, "forget"), /once more/);
  await visit.byId("entry-gross_mass").focus();
  assert.match(await read(visit, "forget"), /^Forget all/, "leaving it takes it back");
  await visit.byId("forget").click();
  await Promise.all([visit.page.waitForEvent("load"), visit.byId("forget").click()]);
  await visit.byId("demo").waitFor();
  await settle(visit);
  assert.equal(await visit.byId("entry-gross_mass").inputValue(), "36.287");
  const left = await visit.page.evaluate(() => Object.keys(localStorage).filter((name) => name.includes("roads")));
  assert.deepEqual(left, []);
  visit.assertClean();
  await visit.close();
});
