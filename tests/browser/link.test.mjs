// A link with truck and day: made, opened, decided; never the road, never over what is entered.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { fillEntry, inTruck, isAnswered, openBeside, openPage, settle, startBrowser } from "./page.mjs";
import { changedSentence, read, sameSentence } from "./read.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const ready = async (visit) => {
  await isAnswered(visit);
  await settle(visit);
};

/** Makes a link for a truck of 22 t on a wet day; gives it and the sentence for them. */
async function makeLink() {
  const visit = await openPage(browser);
  await ready(visit);
  const before = await read(visit, "verdict-sentence");
  await fillEntry(visit, "gross_mass", "22");
  await (await inTruck(visit, "surface-wet")).click();
  await changedSentence(visit, before);
  await settle(visit);
  await (await inTruck(visit, "make-link")).click();
  const link = await visit.byId("link").inputValue();
  const sentence = await read(visit, "verdict-sentence");
  visit.assertClean();
  await visit.close();
  return { link, sentence };
}

test("a link brings truck and day, asks first, and gives back what was entered", async () => {
  const { link, sentence } = await makeLink();
  assert.match(link, /^http:\/\/127\.0\.0\.1:\d+\/#with=[\w-]+$/);
  assert.ok(link.length < 6_000, `a link of ${link.length} letters`);
  const carried = Buffer.from(link.split("#with=")[1], "base64url").toString();
  assert.deepEqual(Object.keys(JSON.parse(carried)), ["steadygrade_entries", "truck", "day"], "no road");

  const visit = await openPage(browser);
  await ready(visit);
  await fillEntry(visit, "gross_mass", "30");
  await settle(visit);
  const mine = await read(visit, "verdict-sentence");
  const opened = await openBeside(visit, link);
  await opened.byId("link-offered").waitFor();
  await ready(opened);
  assert.match(await read(opened, "link-brings"), /, 22\.0 t · 22\.0 t · wet/i);
  assert.equal(await read(opened, "verdict-sentence"), mine, "nothing is taken unasked");
  assert.ok(!opened.page.url().includes("with="), "a reload does not ask again");
  await opened.byId("take-link").click();
  await sameSentence(opened, sentence);
  assert.equal(await (await inTruck(opened, "entry-gross_mass")).inputValue(), "22");
  await opened.byId("leave-link").click();
  await sameSentence(opened, mine);
  assert.equal(await (await inTruck(opened, "entry-gross_mass")).inputValue(), "30");
  opened.assertClean();
  await visit.close();
});

test("a link that was cut is told, and the entries stay", async () => {
  const { link } = await makeLink();
  for (const broken of [link.slice(0, -40), `${link.split("=")[0]}=%%%`]) {
    const visit = await openPage(browser, { path: broken });
    await visit.byId("link-broken").waitFor();
    await ready(visit);
    assert.equal(await (await inTruck(visit, "entry-gross_mass")).inputValue(), "36.287");
    await visit.byId("leave-link").click();
    await visit.byId("link-broken").waitFor({ state: "detached" });
    visit.assertClean();
    await visit.close();
  }
});
