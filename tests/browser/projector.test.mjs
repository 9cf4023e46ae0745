// The class view on a projector: what stands on its screens stands whole and large, and names its
// road on paper.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { SCREENS, openClass, projector, show } from "./class.mjs";
import { openPage, startBrowser } from "./page.mjs";
import { read } from "./read.mjs";
import { hill } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

test("nothing on a projector is below 28 px, and nothing runs out of the window", async () => {
  for (const tag of ["", "-de", "-fr", "-es"]) {
    const visit = await openClass(browser, { path: `./class${tag}.html` });
    for (const screen of SCREENS) {
      await show(visit, screen);
      const small = await visit.page.evaluate(() => {
        const found = [];
        const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        while (walk.nextNode()) {
          const element = walk.currentNode.parentElement;
          if (!walk.currentNode.textContent.trim() || !element.checkVisibility()) continue;
          const range = document.createRange();
          range.selectNodeContents(walk.currentNode);
          const box = range.getBoundingClientRect();
          if (box.width < 2 || getComputedStyle(element).clipPath !== "none") continue;
          // Text of a drawing is as large as the drawing makes it.
          const svg = element.closest("svg");
          const scale = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
          const size = parseFloat(getComputedStyle(element).fontSize) * scale;
          if (size < 28) found.push(`${walk.currentNode.textContent} ${size}`);
        }
        return found;
      });
      assert.deepEqual(small, [], `${screen}${tag}`);
      const wide = await visit.page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= projector.width, `${screen}${tag}: ${wide}`);
    }
    visit.assertClean();
    await visit.close();
  }
});

/** What of a screen is not in the window: the page itself, its caution, buttons, a picture that is cut. */
const cut = (visit) =>
  visit.page.evaluate(() => {
    const found = [];
    const { scrollHeight } = document.documentElement;
    if (scrollHeight > innerHeight) found.push(`the page is ${scrollHeight} px high`);
    const main = document.querySelector("#screen");
    if (main.scrollHeight > main.clientHeight) found.push(`the screen is ${main.scrollHeight} px of ${main.clientHeight}`);
    for (const element of document.querySelectorAll(".class button, .class a, .class input, [data-testid=caution]")) {
      const { width, top, bottom } = element.getBoundingClientRect();
      const place = `${element.dataset.testid ?? element.textContent} from ${top} to ${bottom}`;
      if (width > 0 && element.checkVisibility() && (top < 0 || bottom > innerHeight)) found.push(place);
    }
    return found;
  });

/** Leafs through what is longer than its room, to its end. */
async function leaf(visit) {
  const left = () => visit.page.evaluate(() => {
    const it = document.querySelector("#leaf");
    return it.scrollHeight - it.clientHeight - it.scrollTop;
  });
  for (let before = await left(); before > 1; before = await left()) {
    await visit.page.keyboard.press("PageDown");
    assert.ok((await left()) < before, "the page key leafs on");
  }
}

test("on a projector every screen stands whole, with notes, with steps, and at the end of a run", async () => {
  for (const tag of ["", "-de", "-fr", "-es"]) {
    const visit = await openClass(browser, { path: `./class${tag}.html` });
    const whole = async (what) => assert.deepEqual(await cut(visit), [], `${what}${tag}`);
    for (const screen of SCREENS) {
      await show(visit, screen);
      await whole(screen);
      await visit.byId("notes").click();
      await whole(`${screen} with notes`);
      const notes = await visit.byId("notes-strip").evaluate((it) => it.scrollHeight - it.clientHeight);
      assert.ok(notes <= 0, `${screen}${tag}: ${notes} px of the notes are cut`);
      await visit.byId("notes").click();
    }
    await show(visit, "pair");
    for (let k = 0; k < 6; k += 1) await visit.byId("faster").click();
    for (let k = 0; k < 12; k += 1) await visit.byId("step").click();
    await whole("the end of two runs");
    await show(visit, "exercises");
    for (let number = 1; ; number += 1) {
      await whole(`exercise ${number}`);
      await visit.byId("steps").click();
      await whole(`the steps of exercise ${number}`);
      await leaf(visit);
      assert.ok(await visit.byId("exercises-screen").isVisible(), "leafing does not leave the screen");
      if (!(await visit.byId("exercise-on").isEnabled())) break;
      await visit.byId("exercise-on").click();
    }
    await show(visit, "roads");
    for (const lesson of ["false-finish", "three-steps", "short-and-steep", "long-and-gentle", "hairpins"]) {
      await visit.byId(`lesson-${lesson}`).click();
      await visit.byId("tell").waitFor();
      await whole(lesson);
      await visit.byId("tell").click();
      await whole(`what happens on ${lesson}`);
      await leaf(visit);
    }
    visit.assertClean();
    await visit.close();
  }
});

test("a file of one's own is chosen on the screen of roads, and it is said that one can be dropped", async () => {
  const visit = await openPage(browser, { path: "./class.html", viewport: projector });
  await visit.byId("road-now").waitFor();
  assert.match(await read(visit, "or-drop"), /drop/);
  await visit.byId("file-input").setInputFiles({ name: hill.name, mimeType: "application/gpx+xml", buffer: hill.bytes });
  await visit.byId("road-now").filter({ hasText: "Test hill" }).waitFor();
  visit.assertClean();
  await visit.close();
});

test("a printed screen names road, truck and day", async () => {
  const visit = await openClass(browser);
  for (const screen of SCREENS) {
    await show(visit, screen);
    assert.ok(!(await visit.byId("made-for").isVisible()), "not on the screen");
    await visit.page.emulateMedia({ media: "print" });
    assert.match(await read(visit, "made-for"), /Test hill.*\d\s*t\b.*°C/);
    assert.ok(await visit.byId("made-for").isVisible(), screen);
    assert.ok(await visit.byId("caution").isVisible(), screen);
    await visit.page.emulateMedia({ media: null });
  }
  visit.assertClean();
  await visit.close();
});
