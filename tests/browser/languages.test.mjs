// The page in its other languages: whole, with their numbers, kept without a network.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { after, before, test } from "node:test";
import {
  fillEntry, inTruck, inView, isAnswered, openPage, openTruck, park, settle, startBrowser, toView, unfold,
} from "./page.mjs";
import { read } from "./read.mjs";
import { dist, startSite } from "./site.mjs";

/** Tag, and a word of the deciding sentence in that language. */
const LANGUAGES = [
  ["es", /marcha \d+/],
  ["fr", /rapport \d+|\d+e/],
  ["de", /Gang/],
];

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const ready = async (visit) => {
  await isAnswered(visit);
  await settle(visit);
};

/** All views, made one after the other, with truck and day. */
async function makeAll(visit) {
  for (const view of ["descents", "two", "card", "more"]) await toView(visit, view);
  await (await inView(visit, "two", "keep-beside")).click();
  await visit.byId("two-table").waitFor();
  await openTruck(visit);
  await toView(visit, "road");
  await settle(visit);
}

/** All texts that a person or a screen reader is given on the page. */
const texts = (visit) =>
  visit.page.evaluate(() => {
    const found = new Set();
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const inEnglish = walk.currentNode.parentElement.closest("[lang=en], script, style");
      if (!inEnglish) found.add(walk.currentNode.textContent.trim());
    }
    for (const element of document.querySelectorAll("[aria-label], [title], [placeholder]")) {
      for (const name of ["aria-label", "title", "placeholder"]) found.add(element.getAttribute(name));
    }
    return [...found].filter((text) => text && text.length > 12 && /[a-z]{3}/.test(text));
  });

test("each language says everything itself, and the figures are the same", async () => {
  const english = await openPage(browser);
  await ready(english);
  await makeAll(english);
  const said = new Set(await texts(english));
  const figures = async (visit) => (await read(visit, "verdict-sentence")).match(/\d+/g);
  const numbers = await figures(english);
  await english.close();
  for (const [tag, word] of LANGUAGES) {
    const visit = await openPage(browser, { path: `./${tag}.html` });
    await ready(visit);
    await makeAll(visit);
    assert.equal(await visit.page.evaluate(() => document.documentElement.lang), tag);
    assert.match(await read(visit, "verdict-sentence"), word);
    assert.deepEqual((await figures(visit)).sort(), [...numbers].sort(), `${tag}: the same numbers`);
    await unfold(visit, "cautions");
    await visit.byId("unread").first().waitFor();
    // Names from the demo's file are not translated.
    const names = await readFile(join(dist, (await readdirDemo())), "utf8");
    const same = (await texts(visit)).filter((text) => said.has(text) && !names.includes(text));
    const allowed = same.filter((text) => !/^[\d\s.,·–−→%/km()hN·]+$/.test(text) && text !== "Steadygrade");
    assert.deepEqual(allowed, [], `${tag} still says in English`);
    visit.assertClean();
    await visit.close();
  }
});

async function readdirDemo() {
  const page = await readFile(join(dist, "index.html"), "utf8");
  return page.match(/demo-[0-9a-f]{16}\.gpx/)[0];
}

test("numbers are typed and shown with the language's comma, and entries go along", async () => {
  const visit = await openPage(browser, { path: "./de.html" });
  await ready(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "36,287");
  await fillEntry(visit, "gross_mass", "22,5");
  await settle(visit);
  await visit.page.goto(new URL("./", visit.page.url()).href);
  await ready(visit);
  assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "22.5");
  visit.assertClean();
  await visit.close();
});

test("the settings lead to the other languages, and who is set to one is offered it at the top", async () => {
  const context = await browser.newContext({ locale: "fr-FR" });
  await park(context);
  const page = await context.newPage();
  const visit = await openPage(browser);
  await page.goto(visit.page.url());
  await page.locator(".notices .languages a").click();
  await page.waitForURL(/fr\.html$/);
  await page.locator("[data-testid=hand-speed]").waitFor();
  assert.equal(await page.locator(".notices .languages a").count(), 0);
  await page.locator("[data-testid=view-more]").click();
  await page.locator("footer .languages a").first().waitFor();
  const foot = await page.locator("footer .languages a").evaluateAll((links) => links.map((it) => it.lang));
  assert.deepEqual(foot, ["en", "es", "de"]);
  await context.close();
  await visit.close();
});

test("a language that was opened works without a network, and only it is kept", async (t) => {
  const site = await startSite("/");
  t.after(() => site.clear());
  const visit = await openPage(browser, { at: site.address(), path: "./de.html" });
  t.after(() => visit.close());
  await toView(visit, "more");
  await visit.byId("kept").waitFor();
  const kept = () =>
    visit.page.evaluate(async () => {
      const [name] = await caches.keys();
      const requests = await (await caches.open(name)).keys();
      return requests.map(({ url }) => new URL(url).pathname).filter((path) => /\.html$|^\/$/.test(path));
    });
  assert.deepEqual(await kept(), ["/absent-de.html", "/de.html"]);
  // Another language joins when it is opened.
  await visit.page.goto(new URL("./fr.html", site.address()).href);
  await ready(visit);
  await visit.page.waitForFunction(async () => {
    const [name] = await caches.keys();
    return Boolean(await (await caches.open(name)).match("./fr.html"));
  });
  await site.stop();
  for (const tag of ["fr", "de"]) {
    await visit.page.goto(new URL(`./${tag}.html`, site.address()).href);
    await isAnswered(visit);
    assert.equal(await visit.page.evaluate(() => document.documentElement.lang), tag);
  }
});
