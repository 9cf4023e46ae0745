// The picture by hand: its keys, and the handles of the part shown.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { dropFile, inView, openDemo, phone, settle, startBrowser, toView, wide } from "./page.mjs";
import { twoHills } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const press = (visit, ...keys) => keys.reduce((done, key) => done.then(() => visit.page.keyboard.press(key)), Promise.resolve());

test("the ends of the part shown move by keys", async () => {
  const visit = await openDemo(browser);
  // Where is a handle, in km; the whole road has none.
  const at = async (mark) => Number(await visit.byId(mark).getAttribute("aria-valuenow"));
  const said = (mark) => visit.byId(mark).getAttribute("aria-valuetext");
  assert.equal(await visit.byId("strip").count(), 0, "of the whole road no part is shown");
  await visit.byId("zoom-in").click();
  await visit.byId("strip").waitFor();
  await settle(visit, 400);
  const length = Number(await visit.byId("window-from").getAttribute("aria-valuemax"));
  const [from, to] = [await at("window-from"), await at("window-to")];
  assert.ok(0 <= from && from < to && to <= length && to - from < length, `${from} to ${to} of ${length}`);
  await visit.byId("window-from").focus();
  await press(visit, "Home");
  await settle(visit, 200);
  assert.equal(await at("window-from"), 0);
  await press(visit, "ArrowRight", "ArrowRight");
  await settle(visit, 200);
  const small = await at("window-from");
  assert.ok(small > 0 && small < 0.05 * length, `${small} of ${length}`);
  await press(visit, "Shift+ArrowRight");
  await settle(visit, 200);
  assert.ok((await at("window-from")) > 2 * small);
  assert.match(await said("window-from"), /^[\d.]+\skm$/);
  assert.equal(await at("window-to"), to, "the other end stays");
  // To the crest of a descent, as the list of descents says it.
  await press(visit, "Home", "PageDown");
  await settle(visit, 200);
  const beginning = await said("window-from");
  await toView(visit, "descents");
  assert.equal(beginning, await visit.byId("descent-row").first().locator(".from dd").innerText());
  await toView(visit, "road");
  await visit.byId("window-to").focus();
  await press(visit, "ArrowLeft");
  await settle(visit, 200);
  assert.ok((await at("window-to")) < to);
  await press(visit, "Home");
  await settle(visit, 200);
  assert.ok((await at("window-to")) > (await at("window-from")), "the ends do not pass each other");
  await press(visit, "End");
  await settle(visit, 200);
  assert.equal(await at("window-to"), length);
  visit.assertClean();
  await visit.close();
});

/** What the picture shows by its keys, and what it answers. */
test("keys of the picture: descents by their number, closer and back, the next colour, the picture alone, their list", async () => {
  const visit = await openDemo(browser);
  await dropFile(visit, "drop-zone", twoHills);
  await visit.byId("road-name").filter({ hasText: "Two hills" }).waitFor();
  await settle(visit);
  await visit.byId("cursor").focus();
  const km = async () => Number(await visit.byId("cursor").getAttribute("aria-valuenow"));
  await press(visit, "Home", "ArrowRight");
  await settle(visit, 200);
  assert.ok(Math.abs((await km()) - 0.1) < 0.03, `100 m: ${await km()}`);
  await press(visit, "Shift+ArrowRight");
  await settle(visit, 200);
  assert.ok(Math.abs((await km()) - 1.1) < 0.05, `1 km more: ${await km()}`);
  await press(visit, "1");
  assert.match(await visit.byId("in-hand").innerText(), /^Descent 1\b/);
  await settle(visit, 200);
  assert.equal(await visit.byId("bar-1").getAttribute("aria-pressed"), "true");
  await press(visit, "2");
  assert.match(await visit.byId("in-hand").innerText(), /^Descent 2\b/);
  await press(visit, "Enter");
  await visit.byId("strip").waitFor();
  await press(visit, "0");
  await visit.byId("strip").waitFor({ state: "detached" });
  await press(visit, "+");
  await visit.byId("strip").waitFor();
  await press(visit, "-");
  await visit.byId("strip").waitFor({ state: "detached" });
  assert.equal(await visit.byId("fill-gear").getAttribute("aria-pressed"), "true");
  await press(visit, "c");
  assert.equal(await visit.byId("fill-stage").getAttribute("aria-pressed"), "true");
  await press(visit, "f");
  await visit.byId("in-hand").waitFor({ state: "hidden" });
  assert.ok(await visit.byId("cursor").isVisible());
  await press(visit, "Escape");
  await visit.byId("in-hand").waitFor();
  await press(visit, "?");
  await visit.byId("keys").waitFor();
  await press(visit, "Escape");
  await visit.byId("keys").waitFor({ state: "hidden" });
  const before = await visit.byId("place").count();
  await press(visit, "p");
  await visit.byId("place").nth(before).waitFor();
  assert.match(await visit.page.evaluate(() => document.activeElement.id), /^kind-/);
  visit.assertClean();
  await visit.close();
});

test("a handle is caught by a finger's width, by a glove's with gloves, at the edge of the drawing too", async () => {
  for (const [viewport, gloves, high] of [[wide, false, 36], [wide, true, 48], [phone, false, 44]]) {
    const visit = await openDemo(browser, { viewport });
    if (gloves) await (await inView(visit, "more", "targets-large")).click();
    await toView(visit, "road");
    const at = async (mark) => Number(await visit.byId(mark).getAttribute("aria-valuenow"));
    for (const [mark, other, side, way] of [["window-from", "window-to", 0.06, 1], ["window-to", "window-from", 0.94, -1]]) {
      // A part that begins or ends where the road does, so that the handle lies at the edge.
      await visit.byId("cursor").focus();
      await press(visit, "0", "+");
      await visit.byId("strip").waitFor();
      await visit.byId(mark).focus();
      await press(visit, mark === "window-from" ? "Home" : "End");
      await settle(visit, 200);
      const [before, rest] = [await at(mark), await at(other)];
      const box = await visit.byId(mark).boundingBox();
      assert.ok(box.width >= 48 && box.height >= high, `${mark} at ${viewport.width}: ${box.width} by ${box.height}`);
      const x = box.x + side * box.width;
      const y = box.y + box.height / 2;
      await visit.page.mouse.move(x, y);
      await visit.page.mouse.down();
      await visit.page.mouse.move(x + way * 80, y, { steps: 4 });
      await visit.page.mouse.up();
      await settle(visit, 200);
      assert.ok(way * ((await at(mark)) - before) > 0, `${mark}: ${before} to ${await at(mark)}`);
      assert.equal(await at(other), rest, "the other end stays");
    }
    visit.assertClean();
    await visit.close();
  }
});
