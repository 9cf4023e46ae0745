// The notice before the page: once in a session of the browser, by one button, in every language.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { dropFile, isAnswered, openBeside, openPage, phone, startBrowser, takeShot } from "./page.mjs";
import { pages, read } from "./read.mjs";
import { hill } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const open = (options) => openPage(browser, { ...options, parked: false });

/** The data-testid or id of what has the keyboard. */
const focused = (visit) =>
  visit.page.evaluate(() => document.activeElement.dataset.testid ?? (document.activeElement.id || document.activeElement.tagName));

test("the notice shows, has the keyboard, is no matter of Escape, and goes by Enter", async () => {
  const visit = await open();
  const notice = visit.byId("parked-notice");
  await notice.waitFor();
  assert.match(await read(visit, "parked-notice"), /Plan while parked\.\s+Not for use while driving\./);
  assert.equal(await focused(visit), "parked");
  // The road is worked out behind it.
  await isAnswered(visit);
  for (let round = 0; round < 3; round += 1) {
    await visit.page.keyboard.press("Escape");
    await visit.page.waitForTimeout(100);
    assert.ok(await notice.isVisible(), `Escape ${round + 1}`);
    assert.equal(await focused(visit), "parked");
  }
  // What lies behind it cannot be reached.
  for (let round = 0; round < 4; round += 1) {
    await visit.page.keyboard.press("Tab");
    assert.match(await focused(visit), /^(parked|BODY)$/);
  }
  await assert.rejects(visit.byId("reverse").click({ timeout: 500 }));
  await visit.byId("parked").focus();
  await visit.page.keyboard.press("Enter");
  await notice.waitFor({ state: "detached" });
  await visit.page.waitForFunction(() => document.activeElement.id === "begin");
  // The link to the answer lies over the title only while it has the keyboard itself: at the next key.
  const link = visit.page.locator("#skip");
  const above = async () => (await link.boundingBox()).y < 0;
  assert.ok(await above(), "it does not show yet");
  await visit.page.keyboard.press("Tab");
  assert.equal(await focused(visit), "skip");
  assert.ok(!(await above()));
  await visit.byId("reverse").click();
  visit.assertClean();
  await visit.close();
});

/** Keeps the page's program back, as a slow network does; gives what lets it through. */
function heldBack() {
  let release;
  const free = new Promise((resolve) => {
    release = resolve;
  });
  const before = (page) =>
    page.route(/app-[0-9a-f]+_bg\.wasm$/, async (route) => {
      await free;
      await route.continue();
    });
  return { before, release };
}

test("it is there before the page's program, is answered without it, and says how far loading has come", async () => {
  const { before, release } = heldBack();
  const visit = await open({ before });
  assert.equal(await focused(visit), "parked");
  assert.match(await read(visit, "first"), /Steadygrade\s+How to come down each hill/);
  assert.match(await read(visit, "first-loading"), /^Loading the page 0 %/);
  await takeShot(visit, "first-wide");
  await visit.page.keyboard.press("Enter");
  await visit.byId("parked-notice").waitFor({ state: "detached" });
  assert.ok(await visit.byId("first-loading").isVisible(), "loading goes on");
  assert.equal(await visit.page.evaluate(() => sessionStorage.getItem("steadygrade.parked")), "1");
  release();
  await visit.byId("first").waitFor({ state: "detached" });
  await visit.page.waitForFunction(() => document.activeElement.id === "begin");
  await visit.byId("hand-speed").waitFor();
  visit.assertClean();
  await visit.close();
});

test("a file dropped on it is opened, before the page's program is there and behind it", async () => {
  const { before, release } = heldBack();
  const visit = await open({ before });
  await dropFile(visit, "first", hill);
  assert.equal(await read(visit, "first-file"), "It opens when the page is there: Test hill.gpx");
  release();
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  assert.ok(await visit.byId("parked-notice").isVisible());
  assert.ok(!(await visit.byId("first-file").isVisible()));
  await dropFile(visit, "first", { ...hill, name: "Again.gpx", bytes: Buffer.from(hill.bytes.toString().replace("Test hill", "Second hill")) });
  await visit.byId("road-name").filter({ hasText: "Second hill" }).waitFor();
  visit.assertClean();
  await visit.close();
});

test("the browser itself opens no file that falls on it", async () => {
  const visit = await open();
  await visit.byId("parked-notice").waitFor();
  const taken = await visit.page.evaluate(() =>
    ["dragover", "drop"].map((kind) => {
      const event = new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer: new DataTransfer() });
      return !document.getElementById("first").dispatchEvent(event);
    }),
  );
  assert.deepEqual(taken, [true, true], "what the browser would do is prevented");
  await visit.close();
});

test("it does not come again in the same session, and comes in a new one", async () => {
  const visit = await open();
  await visit.byId("parked").click();
  await visit.page.reload();
  await isAnswered(visit);
  assert.equal(await visit.byId("parked-notice").count(), 0);
  await visit.page.goto(new URL("./de.html", visit.page.url()).href);
  await isAnswered(visit);
  assert.equal(await visit.byId("parked-notice").count(), 0);
  const other = await openBeside(visit);
  await other.byId("parked-notice").waitFor();
  visit.assertClean();
  await visit.close();
});

for (const [path, say] of [
  ["./", "I am parked"],
  ["./es.html", "Estoy estacionado"],
  ["./fr.html", "Je suis en stationnement"],
  ["./de.html", "Ich parke"],
]) {
  test(`in its own language, one large button on a phone: ${say}`, async () => {
    const visit = await open({ path, viewport: phone });
    const button = visit.byId("parked");
    await button.filter({ hasText: say }).waitFor();
    assert.equal(await visit.byId("parked-notice").getByRole("button").count(), 1);
    const { width, height } = await button.boundingBox();
    assert.ok(width >= 250 && height >= 64, `${width} by ${height}`);
    await button.tap();
    await visit.byId("parked-notice").waitFor({ state: "detached" });
    visit.assertClean();
    await visit.close();
  });
}

test("a browser that keeps nothing shows it each time, and it goes all the same", async () => {
  const refuse = () => {
    Object.defineProperty(globalThis, "sessionStorage", {
      get: () => {
        throw new DOMException("refused", "SecurityError");
      },
    });
  };
  const visit = await open({ before: (page) => page.addInitScript(refuse) });
  for (let round = 0; round < 2; round += 1) {
    await visit.byId("parked").click();
    await visit.byId("parked-notice").waitFor({ state: "detached" });
    await visit.page.reload();
  }
  await visit.byId("parked-notice").waitFor();
  await visit.close();
});

test("it is not printed, and does not keep the card from being", async () => {
  const visit = await open();
  await visit.byId("sheet").waitFor({ state: "attached" });
  assert.equal(pages(await visit.page.pdf({ format: "A4" })), 1);
  await visit.page.emulateMedia({ media: "print" });
  assert.ok(await visit.byId("sheet").isVisible());
  assert.equal(await visit.byId("parked-notice").isVisible(), false);
  await visit.page.emulateMedia({ media: "screen" });
  for (const [viewport, scheme, name] of [
    [{ width: 1440, height: 900 }, "light", "wide"],
    [phone, "dark", "phone"],
  ]) {
    const shown = await open({ viewport, scheme });
    await isAnswered(shown);
    await takeShot(shown, `parked-${name}`);
    const paper = await shown.byId("first").evaluate((dialog) => getComputedStyle(dialog).backgroundColor);
    const [red] = paper.match(/\d+/);
    assert.equal(Number(red) < 128, scheme === "dark", `${scheme}: ${paper}`);
    await shown.close();
  }
  await visit.close();
});
