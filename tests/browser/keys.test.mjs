// The page by keyboard alone: every control is reached, seen and named, the keyboard is never
// lost, and Escape leaves what it should.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
  closeRoad, dropFile, inRoad, inTruck, inView, openDemo, openTruck, phone, putPlace, settle, startBrowser,
  toView, unfold,
} from "./page.mjs";
import { hill, roadsFile, webPage } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** More stops than any page here has: a walk that is longer goes in a circle. */
const MOST_STOPS = 400;

const press = (visit, ...keys) => keys.reduce((done, key) => done.then(() => visit.page.keyboard.press(key)), Promise.resolve());

/** What has the keyboard: its mark, where it lies, and whether something lies over all of it. */
const stop = (visit) =>
  visit.page.evaluate(() => {
    const element = document.activeElement;
    if (element === document.body) return null;
    // A field that is one px large is seen and pressed by its label.
    const seen = element.matches("input[type=file]") ? element.closest("label") : element;
    const box = seen.getBoundingClientRect();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const at = [[x, y], [box.x + 6, box.y + 6], [box.right - 6, box.bottom - 6]];
    const hits = at.map(([x, y]) => document.elementFromPoint(x, y)).filter(Boolean);
    // What takes the pointer over a slider of a drawing belongs to that drawing.
    const part = element instanceof SVGElement ? seen.closest(".drawing, .strip, .road-view") : seen;
    const free = hits.some((hit) => part.contains(hit) || hit.contains(part));
    // A fold is called as what it opens.
    const named = element.matches("summary") ? element.parentElement : element;
    const mark = named.dataset.testid ?? (element.id || element.textContent.trim().slice(0, 30));
    return { mark, free, x: box.x, y: box.y, width: box.width, height: box.height, same: element === globalThis.last };
  });

/** What a screen reader is told of what has the keyboard. */
async function spoken(visit, session) {
  const { result } = await session.send("Runtime.evaluate", { expression: "document.activeElement" });
  const { nodes } = await session.send("Accessibility.getPartialAXTree", { objectId: result.objectId, fetchRelatives: false });
  return { name: nodes[0].name?.value ?? "", role: nodes[0].role?.value ?? "" };
}

/** Whether the keyboard's place can be seen: the picture about it is another one without it. */
async function isMarked(visit, { x, y, width, height }) {
  const { width: most, height: deep } = visit.page.viewportSize();
  const left = Math.max(0, x - 6);
  const top = Math.max(0, y - 6);
  const clip = { x: left, y: top, width: Math.min(most, x + width + 6) - left, height: Math.min(deep, y + height + 6) - top };
  const withIt = await visit.page.screenshot({ clip });
  await visit.page.evaluate(() => {
    globalThis.last = document.activeElement;
    globalThis.last.blur();
  });
  const without = await visit.page.screenshot({ clip });
  await visit.page.evaluate(() => globalThis.last.focus({ preventScroll: true }));
  return !withIt.equals(without);
}

/** Walks from the beginning of the page by Tab until it ends; the stops on the way. */
async function walk(visit, { look = true, from = "#begin" } = {}) {
  if (from) await visit.page.locator(from).focus();
  const session = await visit.context.newCDPSession(visit.page);
  await session.send("Accessibility.enable");
  const stops = [];
  const faults = [];
  for (let count = 0; count < MOST_STOPS; count += 1) {
    await press(visit, "Tab");
    const now = await stop(visit);
    if (now === null || (stops.length > 0 && now.mark === stops[0])) return { stops, faults };
    const { name, role } = await spoken(visit, session);
    if (!name.trim()) faults.push(`${now.mark}: a ${role} without a name`);
    if (now.width < 1 || now.height < 1 || now.y + now.height < 0 || now.y > visit.page.viewportSize().height) {
      faults.push(`${now.mark}: is not on the screen`);
    } else if (!now.free) {
      faults.push(`${now.mark}: something lies over it`);
    } else if (look && !(await isMarked(visit, now))) {
      faults.push(`${now.mark}: nothing shows that it has the keyboard`);
    }
    stops.push(now.mark);
  }
  throw new Error(`the walk does not come to an end: … ${stops.slice(-12).join(", ")}`);
}

/** What must be reached in any case: in each view, in the panel of the road, in truck and day. */
const MUST = {
  road: [
    "skip", "road-button", "reverse", "view-road", "view-descents", "view-two", "view-card", "view-more", "class-page", "to-truck",
    "fill-gear", "fill-heat", "zoom-in", "zoom-out", "zoom-all", "only-this", "window-from", "window-to", "bar-1", "cursor",
    "put-here", "stop-1", "to-card", "heavier", "governs", "heat", "lost", "sure", "about", "gears", "roadside",
    "remove-place", "put-at", "put", "cautions",
  ],
  descents: ["descent-1", "road-table"],
  two: ["keep-beside"],
  card: ["save-picture", "print-card", "save-rows", "export", "save-project", "entry-marker", "counts-down", "card-order-worst"],
  more: ["units-metric", "theme-night", "targets-large", "save-page", "forget", "evidence"],
  "the panel of the road": ["close-road", "file-input", "show-demo"],
  "truck and day": [
    "usual-day", "close-drawer", "entry-gross_mass", "surface-wet", "expert-gearbox", "expert-retarder", "day-panel", "own-trucks", "done",
  ],
};

/** How each of them comes to the front. */
const FRONTS = {
  road: async (visit) => {
    await toView(visit, "road");
    await visit.byId("zoom-in").click();
    await unfold(visit, "roadside");
  },
  descents: (visit) => toView(visit, "descents"),
  two: (visit) => toView(visit, "two"),
  card: (visit) => toView(visit, "card"),
  more: (visit) => toView(visit, "more"),
  "the panel of the road": async (visit) => {
    await toView(visit, "road");
    await inRoad(visit, "quality");
  },
  "truck and day": async (visit) => {
    await closeRoad(visit);
    await openTruck(visit);
  },
};

test("by Tab alone every control of every view is reached, named, seen and marked, and the walk ends", async () => {
  const visit = await openDemo(browser);
  for (const [front, bring] of Object.entries(FRONTS)) {
    await bring(visit);
    await settle(visit);
    // Truck and day go where the keyboard comes back to the page that they lie over.
    const { stops, faults } = await walk(visit, { from: front === "truck and day" ? "#truck-head" : "#begin" });
    assert.deepEqual(faults, [], front);
    if (front === "truck and day") {
      assert.deepEqual(MUST[front].filter((mark) => !stops.includes(mark)), [], `${stops}`);
      await visit.page.locator("#begin").focus();
      for (let count = 0; count < 40 && (await visit.byId("drawer").isVisible()); count += 1) await press(visit, "Tab");
      assert.equal(await visit.byId("drawer").isVisible(), false, "it does not lie over what has the keyboard");
      continue;
    }
    assert.deepEqual(MUST[front].filter((mark) => !stops.includes(mark)), [], `${front}: ${stops}`);
    assert.equal(stops[0], "skip");
    if (front !== "road") continue;
    // In the order of the page: bar, picture, descents, answer.
    const order = ["skip", "road-button", "reverse", "view-road", "to-truck", "fill-heat", "cursor", "put-here", "stop-1", "to-card", "heavier", "gears", "put-at", "cautions"];
    const places = order.map((mark) => stops.indexOf(mark));
    assert.deepEqual(places, places.toSorted((a, b) => a - b), `${stops}`);
  }
  visit.assertClean();
  await visit.close();
});

/** On a phone, with all that folds open. */
const MUST_ON_A_PHONE = {
  road: ["road-button", "reverse", "fill-select", "cursor", "put-at", "tab-road", "tab-descents", "tab-truck", "tab-card", "tab-more"],
  descents: ["descent-1"],
  card: ["print-card"],
  more: ["further-two", "class-page", "save-page", "forget"],
  "truck and day": ["entry-rolling_radius", "truck-name", "keep-truck", "make-link", "measure", "done"],
};

test("the same at night on a phone with all that folds open, and in gloves", async () => {
  const visit = await openDemo(browser, { viewport: phone, scheme: "dark" });
  for (const [front, must] of Object.entries(MUST_ON_A_PHONE)) {
    await (front === "truck and day" ? openTruck(visit) : toView(visit, front));
    await visit.page.evaluate(() => document.querySelectorAll("details").forEach((it) => (it.open = true)));
    if (front === "more") await visit.byId("evidence-count").waitFor();
    await settle(visit);
    // Over a page that rests there is nothing before the first control.
    const { stops, faults } = await walk(visit, { from: front === "truck and day" ? "#truck-head" : "#begin" });
    assert.deepEqual(faults, [], front);
    assert.deepEqual(must.filter((mark) => !stops.includes(mark)), [], `${front}: ${stops}`);
  }
  visit.assertClean();
  await visit.close();
});

test("the walk can fail: without an outline, a name or a place it is told", async () => {
  const visit = await openDemo(browser);
  await visit.page.evaluate(() => {
    // A style sheet made so is no style element, which the page's policy would stop.
    const sheet = new CSSStyleSheet();
    sheet.replaceSync("[data-testid=reverse]:focus { outline: none }");
    document.adoptedStyleSheets = [sheet];
    document.querySelector("[data-testid=zoom-in]").setAttribute("aria-label", " ");
    document.querySelector("[data-testid=zoom-in]").textContent = "";
    document.querySelector("[data-testid=zoom-in]").title = "";
  });
  const { faults } = await walk(visit);
  assert.ok(faults.some((it) => it.startsWith("reverse: nothing shows")), `${faults}`);
  assert.ok(faults.some((it) => it.startsWith("zoom-in: a button without a name")), `${faults}`);
  await visit.close();
});

/** The mark of what has the keyboard, once the page stands still; fails where nothing has it. */
async function kept(visit, what) {
  await settle(visit, 400);
  const now = await stop(visit);
  assert.ok(now !== null, `after ${what} nothing has the keyboard`);
  assert.ok(now.width > 0, `after ${what} it is on ${now.mark}, which is not there`);
  return now.mark;
}

/** Presses the button of this mark by keyboard; where the keyboard is after that. */
async function enter(visit, mark, nth = 0) {
  await visit.byId(mark).nth(nth).focus();
  await press(visit, "Enter");
  return kept(visit, mark);
}

test("what removes itself hands the keyboard to its neighbour", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "road", "put-at")).fill("5");
  assert.match(await enter(visit, "put"), /^kind-/);
  // A row taken off: to that of the next row; the last one: to the button that puts another.
  const rows = await visit.byId("place").count();
  assert.equal(await enter(visit, "remove-place", 0), "remove-place");
  assert.equal(await enter(visit, "remove-place", rows - 2), "put");
  // Undone to the end.
  for (let left = 3; left > 1; left -= 1) assert.equal(await enter(visit, "undo-places"), "undo-places");
  assert.match(await enter(visit, "undo-places"), /^kind-/);
  assert.equal(await visit.byId("undo-places").count(), 0);
  // The road turned round, and a part of it: the button stays, or what is drawn in its place.
  assert.equal(await enter(visit, "reverse"), "reverse");
  await visit.byId("zoom-in").click();
  await settle(visit);
  // The part is the whole road now, of which no part is shown. The keyboard goes to the picture, or to the
  // way to the descent in hand where the plan is there by then.
  assert.match(await enter(visit, "only-this"), /^(zoom-descent|cursor)$/);
  assert.match(await enter(visit, "whole-road"), /^(zoom-descent|cursor)$/);
  // Two roads.
  await toView(visit, "two");
  // What follows are the pictures of both.
  assert.equal(await enter(visit, "keep-beside"), "cursor");
  assert.equal(await enter(visit, "end-two"), "keep-beside");
  visit.assertClean();
  await visit.close();
});

test("messages and questions hand it to what follows, and kept trucks to each other", async () => {
  const visit = await openDemo(browser);
  await dropFile(visit, "drop-zone", webPage);
  await visit.byId("file-error").waitFor();
  // What follows is the picture.
  assert.equal(await enter(visit, "close-trouble"), "fill-gear");
  await dropFile(visit, "drop-zone", roadsFile("many.gpx", [["One", [[2000, -0.05]]], ["Two", [[3000, -0.06]]]]));
  await visit.byId("ask-track").waitFor();
  assert.equal(await enter(visit, "drop-choice"), "fill-gear");
  for (const name of ["First", "Second"]) {
    await (await inTruck(visit, "truck-name")).fill(name);
    await (await inTruck(visit, "keep-truck")).click();
  }
  await (await inTruck(visit, "truck-name")).fill("Third");
  assert.equal(await enter(visit, "rename-truck"), "undo-trucks");
  assert.equal(await enter(visit, "remove-truck", 0), "remove-truck");
  assert.equal(await enter(visit, "remove-truck", 0), "save-truck");
  assert.notEqual(await enter(visit, "undo-trucks"), "BODY");
  visit.assertClean();
  await visit.close();
});

test("the keyboard is not taken from who left it, and a field is not given it unasked", async () => {
  const visit = await openDemo(browser);
  await putPlace(visit, "5");
  await settle(visit);
  await visit.page.mouse.click(3, 500);
  assert.equal(await stop(visit), null);
  await visit.byId("undo-places").evaluate((it) => it.click());
  await settle(visit);
  assert.equal(await stop(visit), null, "who is nowhere stays there");
  visit.assertClean();
  await visit.close();
});

test("Escape closes a message, leaves a question, hides a hint, and takes nothing away", async () => {
  const visit = await openDemo(browser);
  // Files that are being put in order are the person's.
  await visit.page.locator("input[type=file]").first().setInputFiles(
    ["a.gpx", "b.gpx"].map((name) => ({ name, mimeType: "application/gpx+xml", buffer: hill.bytes })),
  );
  await visit.byId("ask-order").waitFor();
  await press(visit, "Escape");
  await settle(visit, 200);
  assert.ok(await visit.byId("ask-order").isVisible());
  await visit.byId("leave-legs").click();
  await visit.byId("ask-order").waitFor({ state: "detached" });
  await dropFile(visit, "drop-zone", webPage);
  await visit.byId("file-error").waitFor();
  await press(visit, "Escape");
  await visit.byId("file-error").waitFor({ state: "detached" });
  await dropFile(visit, "drop-zone", roadsFile("many.gpx", [["One", [[2000, -0.05]]], ["Two", [[3000, -0.06]]]]));
  await visit.byId("ask-track").waitFor();
  await visit.byId("track-0").focus();
  await press(visit, "Escape");
  await visit.byId("ask-track").waitFor({ state: "detached" });
  assert.match(await visit.byId("road-button").innerText(), /invented demo/);
  // It closes what lies over the page.
  await inRoad(visit, "quality");
  await press(visit, "Escape");
  await visit.byId("road-panel").waitFor({ state: "hidden" });
  await openTruck(visit);
  await visit.byId("entry-gross_mass").focus();
  await press(visit, "Escape");
  await visit.byId("drawer").waitFor({ state: "hidden" });
  assert.equal((await stop(visit)).mark, "to-truck", "the keyboard is back where it came from");
  // The hint of a field goes with what it lies over, and is there again when the keyboard comes back.
  await (await inTruck(visit, "entry-top_gear_speed")).focus();
  const hint = visit.page.locator(".entry:focus-within .about");
  assert.ok(await hint.isVisible());
  await press(visit, "Escape");
  await hint.waitFor({ state: "hidden" });
  await openTruck(visit);
  await visit.byId("entry-top_gear_speed").focus();
  assert.ok(await hint.isVisible(), "it is there when the keyboard comes back");
  visit.assertClean();
  await visit.close();
});
