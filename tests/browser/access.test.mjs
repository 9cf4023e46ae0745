// The page held against the published rules for access (WCAG 2.2, levels A and AA) by a checker
// of others, in every state and theme; and what that checker does not look at: the contrast of
// drawings in forced colours, and the size of targets.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  chooseFile, closeRoad, closeTruck, dropFile, fillEntry, inRoad, inTruck, inView, openDemo, openPage, openTruck, phone,
  putPlace, settle, sideways, startBrowser, takeShot, toView, truckIsOpen,
} from "./page.mjs";
import { roadFile, roadsFile, webPage } from "./roads.mjs";

const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

let browser;
let checker;
before(async () => {
  checker = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  browser = await startBrowser();
});
after(() => browser?.close());

/** What the checker finds: the rule and where it is broken. Evaluated, as the page's policy allows no script of others. */
async function violations(visit, least = 15) {
  if (!(await visit.page.evaluate(() => Boolean(globalThis.axe)))) await visit.page.evaluate(checker);
  const found = await visit.page.evaluate(
    (values) => globalThis.axe.run(document, { runOnly: { type: "tag", values }, resultTypes: ["violations"] }),
    TAGS,
  );
  assert.ok(found.passes.length > least, `only ${found.passes.length} rules had something to look at`);
  return found.violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(" ")}: ${node.any[0]?.message ?? node.all[0]?.message ?? node.none[0]?.message ?? ""}`));
}

/** Chooses a theme where it is chosen, and comes back to what was in front. */
async function chooseTheme(visit, theme) {
  const truck = await truckIsOpen(visit);
  const road = await visit.byId("road-panel").isVisible();
  await closeRoad(visit);
  const front = await visit.page.locator(".page").getAttribute("data-view");
  await (await inView(visit, "more", theme)).click();
  await toView(visit, front);
  if (truck) await openTruck(visit);
  if (road) await inRoad(visit, "quality");
}

const THEMES = {
  light: async (visit) => {
    await visit.page.emulateMedia({ forcedColors: "none" });
    await chooseTheme(visit, "theme-light");
  },
  night: (visit) => chooseTheme(visit, "theme-night"),
  // On a light ground while the night is chosen, and the other way round: nothing of it may be left.
  "forced, light": (visit) => visit.page.emulateMedia({ forcedColors: "active", colorScheme: "light" }),
  "forced, dark": async (visit) => {
    await chooseTheme(visit, "theme-light");
    await visit.page.emulateMedia({ forcedColors: "active", colorScheme: "dark" });
  },
};

async function inEveryTheme(visit, state, check) {
  const found = [];
  for (const [theme, choose] of Object.entries(THEMES)) {
    await choose(visit);
    await settle(visit, 250);
    for (const fault of await check(visit)) found.push(`${state}, ${theme}: ${fault}`);
  }
  return found;
}

/** Opens all that folds and is seen. */
const openFolds = (visit) =>
  visit.page.evaluate(() => {
    for (const it of document.querySelectorAll("details")) if (it.checkVisibility()) it.open = true;
  });

/** What one sees one after the other: each view, truck and day, the panel of the road; and how it comes to the front. */
const FRONTS = {
  road: (visit) => toView(visit, "road"),
  descents: (visit) => toView(visit, "descents"),
  two: (visit) => toView(visit, "two"),
  card: (visit) => toView(visit, "card"),
  more: async (visit) => {
    await toView(visit, "more");
    await openFolds(visit);
    await visit.byId("evidence-count").waitFor();
  },
  truck: openTruck,
  "the panel of the road": async (visit) => {
    await toView(visit, "road");
    await inRoad(visit, "quality");
  },
};

/** All of them with all folds open, one after the other; the faults found by `check`, with where. */
async function inEveryFront(visit, check) {
  const found = [];
  for (const [front, bring] of Object.entries(FRONTS)) {
    await bring(visit);
    await openFolds(visit);
    await settle(visit);
    for (const fault of await check(visit)) found.push(`${front}: ${fault}`);
    if (front !== "truck") await closeRoad(visit);
  }
  await closeTruck(visit);
  return found;
}

const gentle = roadFile("Gentle way", [[2000, 0], [9000, -0.04], [2000, 0]]);
const wall = roadFile("Wall", [[1000, 0], [4000, -0.15], [1000, 0]]);

/** States of the page that differ in what is on it, and how they come about. */
const STATES = {
  "the answer": async () => {},
  "all questions open": openFolds,
  "descents and what lies ahead": async (visit) => {
    await toView(visit, "descents");
    await openFolds(visit);
  },
  "the card": (visit) => toView(visit, "card"),
  "settings and evidence": FRONTS.more,
  "the panel of the road": async (visit) => {
    await inRoad(visit, "quality");
    await openFolds(visit);
  },
  "truck and day": openTruck,
  "truck and day with all folds open": async (visit) => {
    await openTruck(visit);
    await openFolds(visit);
  },
  "two roads": async (visit) => {
    await (await inView(visit, "two", "keep-beside")).click();
    await chooseFile(visit, gentle);
    await visit.byId("road-name").filter({ hasText: "Gentle way" }).waitFor();
    await visit.byId("two-table").waitFor();
    await openFolds(visit);
  },
  "many roads": async (visit) => {
    await visit.page.locator("input[type=file]").first().setInputFiles(
      [gentle, wall, { ...webPage, name: "saved.gpx" }].map(({ name, bytes }) => ({ name, mimeType: "application/gpx+xml", buffer: bytes })),
    );
    await visit.byId("ask-order").waitFor();
    await visit.byId("rank").click();
    await visit.byId("ranked-head").filter({ hasText: /^3 roads$/ }).waitFor();
  },
  "the order of files asked": async (visit) => {
    await visit.page.locator("input[type=file]").first().setInputFiles(
      [gentle, wall].map(({ name, bytes }) => ({ name, mimeType: "application/gpx+xml", buffer: bytes })),
    );
    await visit.byId("ask-order").waitFor();
  },
  "a track asked": async (visit) => {
    await dropFile(visit, "drop-zone", roadsFile("many.gpx", [["One", [[2000, -0.05]]], ["Two", [[3000, -0.06]]]]));
    await visit.byId("ask-track").waitFor();
  },
  "no safe speed": async (visit) => {
    await fillEntry(visit, "gross_mass", "150");
    await dropFile(visit, "drop-zone", wall);
    await visit.byId("road-name").filter({ hasText: "Wall" }).waitFor();
    await toView(visit, "road");
    await visit.byId("verdict").filter({ hasText: "no safe speed" }).waitFor();
  },
  "a file that cannot be used": async (visit) => {
    await dropFile(visit, "drop-zone", webPage);
    await visit.byId("file-error").waitFor();
  },
  "entries that cannot be": async (visit) => {
    await fillEntry(visit, "gross_mass", "5000");
    await fillEntry(visit, "gears", "3 2 x");
  },
  "a place that cannot be, and an old answer": async (visit) => {
    await fillEntry(visit, "gross_mass", "5000");
    await putPlace(visit, "999");
    await visit.byId("old-answer").waitFor();
  },
  "as printed": async (visit) => {
    await visit.page.emulateMedia({ media: "print" });
  },
};

for (const [state, make] of Object.entries(STATES)) {
  test(`no rule is broken: ${state}, by day, at night and in forced colours`, async () => {
    const visit = await openDemo(browser);
    const check = async (visit) => [...(await violations(visit)), ...(await visit.page.evaluate(paleDrawings))];
    const found = [];
    if (state === "as printed") {
      // Themes are chosen before: what is printed has no buttons.
      for (const theme of ["theme-light", "theme-night"]) {
        await chooseTheme(visit, theme);
        await make(visit);
        await settle(visit, 250);
        for (const fault of await violations(visit)) found.push(`${theme}: ${fault}`);
        await visit.page.emulateMedia({ media: "screen" });
      }
    } else {
      await make(visit);
      await settle(visit);
      found.push(...(await inEveryTheme(visit, state, check)));
    }
    assert.deepEqual(found, []);
    await visit.close();
  });
}

for (const tag of ["es", "fr", "de"]) {
  test(`no rule is broken in the page in ${tag} in any theme, nor on a phone`, async () => {
    for (const viewport of [undefined, phone]) {
      const visit = await openDemo(browser, { path: `./${tag}.html`, viewport });
      assert.deepEqual(await inEveryTheme(visit, tag, (visit) => inEveryFront(visit, violations)), []);
      await visit.close();
    }
  });
}

test("no rule is broken on a phone, by the notice before the page, or without a road", async () => {
  const visit = await openDemo(browser, { viewport: phone, scheme: "dark" });
  assert.deepEqual(await inEveryFront(visit, violations), []);
  await visit.close();
  const notice = await openDemo(browser, { parked: false });
  // All else rests behind it.
  assert.deepEqual(await violations(notice, 8), []);
  await notice.close();
});

test("the checkers can fail", async () => {
  const visit = await openDemo(browser);
  await inTruck(visit, "engine-curves");
  await visit.page.evaluate(() => {
    document.querySelector("[data-testid=entry-gross_mass]").removeAttribute("id");
    document.querySelector("[data-testid=drawer] h2").style.color = "#bbb";
    document.querySelector(".engine text").style.fill = "#ddd";
    document.querySelector("[data-testid=zoom-in]").style.cssText = "min-width: 0; width: 14px; padding: 0; min-height: 14px; height: 14px";
    document.querySelector("[data-testid=zoom-out]").style.cssText = "min-width: 0; width: 14px; padding: 0; margin-right: -6px";
  });
  const found = await violations(visit);
  assert.ok(found.some((it) => it.startsWith("label:")), `${found}`);
  assert.ok(found.some((it) => it.startsWith("color-contrast:")), `${found}`);
  assert.equal((await visit.page.evaluate(paleDrawings)).length, 1);
  const small = await visit.page.evaluate(smallTargets, 24);
  assert.ok(small.some((it) => it.startsWith("zoom-in")), `${small}`);
  await visit.close();
});

test("forced colours: labels and lines of the engine's curves stand out", async () => {
  for (const [colorScheme, theme] of [["light", "theme-night"], ["dark", "theme-light"]]) {
    const visit = await openDemo(browser);
    await chooseTheme(visit, theme);
    await visit.page.emulateMedia({ forcedColors: "active", colorScheme });
    await settle(visit);
    assert.deepEqual(await visit.page.evaluate(paleDrawings), []);
    await (await inTruck(visit, "engine-curves")).scrollIntoViewIfNeeded();
    await settle(visit);
    assert.deepEqual(await visit.page.evaluate(paleDrawings), []);
    await takeShot(visit, `forced-${colorScheme}`);
    await visit.close();
  }
});

/** Runs in the page: texts of drawings under 4.5 : 1, and lines that say something under 3 : 1. */
function paleDrawings() {
  const parse = (text) => (text.match(/[\d.]+/g) ?? []).map(Number);
  const light = ([r, g, b]) => {
    const part = (v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
  };
  const ground = (element) => {
    // The place of the cursor stands on a ground of its own.
    const tab = element.closest(".cursor-tab")?.querySelector("rect");
    if (tab) return parse(getComputedStyle(tab).fill);
    for (let at = element.closest("svg"); at; at = at.parentElement) {
      const colour = parse(getComputedStyle(at).backgroundColor);
      if (colour.length === 3 || colour[3] > 0.99) return colour;
    }
    return [255, 255, 255];
  };
  const pale = [];
  const hold = (element, colour, least) => {
    const [a, b] = [light(parse(colour)), light(ground(element))];
    const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    if (ratio < least) pale.push(`${element.getAttribute("class")} “${element.textContent}”: ${ratio.toFixed(2)} of ${colour}`);
  };
  // Labels on a tone have the tone's own ink, which is held to its contrast where the tones are.
  for (const text of document.querySelectorAll("svg text:not(.on)")) {
    if (text.checkVisibility()) hold(text, getComputedStyle(text).fill, 4.5);
  }
  const lines = ".engine-pull, .engine-hold, .road-line, .speed-line, .brakes, .after-stop, .limit, .bracket, .strip-window, .handle line, .needle";
  for (const line of document.querySelectorAll(lines)) {
    if (line.checkVisibility()) hold(line, getComputedStyle(line).stroke, 3);
  }
  return pale;
}

/**
 * Runs in the page: targets smaller than `least` px. A link within a sentence is let be, and one
 * that is too small while a circle of 24 px about it meets no other target: WCAG 2.5.8.
 */
function smallTargets(least) {
  const all = [];
  for (const it of document.querySelectorAll("a[href], button, select, input, textarea, summary, [role=slider]")) {
    // A box to tick and a file are pressed by their label, a field of a line anywhere in its box.
    const pressed = it.matches("[type=checkbox], [type=file]") ? it.closest("label") : it;
    const box = pressed.getBoundingClientRect();
    if (box.width === 0 || !it.checkVisibility({ visibilityProperty: true }) || it.matches(".skip")) continue;
    const sentence = it.matches("a") && getComputedStyle(it).display === "inline";
    all.push({ name: it.dataset.testid ?? (it.id || it.textContent.trim().slice(0, 30)), box, sentence });
  }
  const near = (one, other) => {
    const [x, y] = [one.box.x + one.box.width / 2, one.box.y + one.box.height / 2];
    const dx = Math.max(other.box.left - x, 0, x - other.box.right);
    const dy = Math.max(other.box.top - y, 0, y - other.box.bottom);
    return Math.hypot(dx, dy) < 12;
  };
  const small = all.filter(({ box, sentence }) => !sentence && (box.width < least - 0.5 || box.height < least - 0.5));
  const faults = least > 24 ? small : small.filter((it) => all.some((other) => other !== it && near(it, other)));
  return faults.map(({ name, box }) => `${name}: ${box.width.toFixed(0)} by ${box.height.toFixed(0)}`);
}

for (const [name, options] of [["wide", {}], ["a phone of 390 px", { viewport: phone }], ["a phone of 360 px", { viewport: { width: 360, height: 740 } }]]) {
  test(`targets are large enough, ${name}: 24 px, for gloves 48 px each way, for fingers 44`, async () => {
    const visit = await openDemo(browser, options);
    await (await inView(visit, "two", "keep-beside")).click();
    await visit.byId("two-table").waitFor();
    const small = (least) => inEveryFront(visit, async (visit) => [...(await visit.page.evaluate(smallTargets, least)), ...(await sideways(visit))]);
    if (name === "wide") {
      assert.deepEqual(await small(24), []);
      await (await inView(visit, "more", "targets-large")).click();
      assert.deepEqual(await small(48), []);
    } else {
      assert.deepEqual(await small(44), []);
    }
    await visit.close();
  });
}

test("the class view breaks no rule on any screen in any language, light, night and in forced colours", async () => {
  for (const [scheme, tag] of [["light", ""], ["dark", ""], ["light", "-es"], ["dark", "-fr"], ["light", "-de"]]) {
    const visit = await openPage(browser, { path: `./class${tag}.html`, viewport: { width: 1280, height: 720 }, scheme });
    await visit.byId("lesson-three-steps").click();
    await visit.byId("lesson").waitFor();
    await settle(visit);
    const found = [];
    for (const screen of ["roads", "forces", "run", "pair", "exercises"]) {
      await visit.byId(screen).click();
      await visit.page.keyboard.press("n");
      await settle(visit, 400);
      for (const forcedColors of ["none", "active"]) {
        await visit.page.emulateMedia({ forcedColors });
        for (const fault of await violations(visit, 8)) found.push(`${screen}${tag}, ${scheme}, forced ${forcedColors}: ${fault}`);
      }
      await visit.page.emulateMedia({ forcedColors: "none" });
      await visit.page.keyboard.press("n");
    }
    assert.deepEqual(found, []);
    visit.assertClean();
    await visit.close();
  }
});
