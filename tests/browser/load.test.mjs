// The page loads, keeps to itself and does not complain; and the harness would see it if not.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { address, isForeign, openPage, phone, settle, startBrowser } from "./page.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

for (const [name, options] of [
  ["wide", {}],
  ["phone at night", { viewport: phone, scheme: "dark" }],
]) {
  test(`the page loads, ${name}`, async () => {
    const visit = await openPage(browser, options);
    await settle(visit);
    assert.match(await visit.page.title(), /Steadygrade/);
    const loaded = visit.requests.map((url) => new URL(url).pathname);
    assert.ok(loaded.some((path) => /app-[0-9a-f]+_bg\.wasm$/.test(path)), "the page's module");
    visit.assertClean();
    await visit.close();
  });
}

test("the worker's files are asked for by the names that carry their hash", async () => {
  const visit = await openPage(browser);
  const script = await visit.page.locator('meta[name="worker-script"]').getAttribute("content");
  assert.match(script, /^\.\/worker-[0-9a-f]{16}\.js$/);
  const answer = await fetch(new URL(script, address));
  assert.equal(answer.headers.get("content-type"), "text/javascript; charset=utf-8");
  const [, module] = (await answer.text()).match(/module_or_path: "\.\/(worker-[0-9a-f]{16}\.wasm)"/);
  const bytes = await fetch(new URL(module, address));
  assert.equal(bytes.headers.get("content-type"), "application/wasm");
  await visit.close();
});

test("the worker starts under the page's policy, and its requests are recorded", async () => {
  const visit = await openPage(browser);
  const module = visit.page.context().waitForEvent("request", {
    predicate: (request) => /worker-[0-9a-f]{16}\.wasm$/.test(request.url()),
    timeout: 15_000,
  });
  // A second worker beside the page's own: the test does not depend on when that one starts.
  await visit.page.evaluate(() => {
    const script = document.querySelector('meta[name="worker-script"]').content;
    globalThis.testWorker = new Worker(script);
  });
  await module;
  await settle(visit);
  visit.assertClean();
  await visit.close();
});

test("the page itself stops whatever would leave the machine", async () => {
  const visit = await openPage(browser);
  const outcome = await visit.page.evaluate(async () => {
    const stopped = new Set();
    const expected = ["connect-src", "img-src", "script-src-elem"];
    // The page's answer to what never comes is a sentence with what did.
    const allStopped = new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`stopped only: ${[...stopped].join()}`)), 10_000);
      document.addEventListener("securitypolicyviolation", (event) => {
        stopped.add(event.effectiveDirective);
        if (!expected.every((directive) => stopped.has(directive))) return;
        clearTimeout(late);
        resolve();
      });
    });
    const sent = await fetch("https://elsewhere.invalid/").then(
      () => true,
      () => false,
    );
    navigator.sendBeacon("https://elsewhere.invalid/", "x");
    new Image().src = "https://elsewhere.invalid/x.png";
    const script = document.createElement("script");
    script.textContent = "globalThis.foreignScriptRan = true";
    document.head.append(script);
    await allStopped;
    return { sent, ran: globalThis.foreignScriptRan === true };
  });
  assert.equal(outcome.sent, false);
  assert.equal(outcome.ran, false);
  // The harness hears of it too: a page that tried would not pass as clean.
  assert.throws(() => visit.assertClean());
  await visit.close();
});

test("the harness tells a foreign request from an own one", () => {
  const own = new URL(address).origin;
  assert.equal(isForeign(`${own}/x`, own), false);
  assert.equal(isForeign("data:text/plain,x", own), false);
  assert.equal(isForeign(`blob:${own}/1`, own), false);
  assert.equal(isForeign("https://elsewhere.invalid/", own), true);
  assert.equal(isForeign("http://127.0.0.1:1/", own), true);
});

test("the harness hears an uncaught error, a console error and a missing file", async () => {
  const visit = await openPage(browser);
  await visit.page.evaluate(async () => {
    console.error("on purpose");
    setTimeout(() => {
      throw new Error("thrown on purpose");
    });
    await fetch("./not-there.txt");
  });
  await settle(visit);
  const heard = visit.complaints.join("\n");
  assert.match(heard, /console error: on purpose/);
  assert.match(heard, /uncaught: .*thrown on purpose/);
  assert.match(heard, /not-there\.txt: 404/);
  await visit.close();
});
