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

/** How the page's program was packed on its way. */
const packings = [];
const program = /app-[0-9a-f]+_bg\.wasm$/;

for (const [what, answer] of [
  ["is missing", { status: 404, body: "There is no such file." }],
  ["is cut", { contentType: "application/wasm", body: Buffer.from("0061736d010000000105", "hex") }],
  ["is a page of the host", { contentType: "text/html", body: "<!doctype html><p>Welcome</p>" }],
]) {
  test(`where the page's program ${what} a sentence says so, and it is loaded again`, async () => {
    let asked = 0;
    const visit = await openPage(browser, {
      before: (page) => page.route(program, (route) => ((asked += 1) <= 2 ? route.fulfill(answer) : route.continue())),
    });
    const failed = visit.byId("first-failed");
    await failed.filter({ hasText: "did not arrive whole" }).waitFor();
    assert.match(await failed.innerText(), /^The page did not arrive whole\. Check the connection, then load it again\.\s+Load again$/);
    assert.ok(!(await visit.byId("first-loading").isVisible()), "nothing is loading any more");
    await visit.byId("first-again").click();
    await visit.byId("hand-speed").waitFor();
    assert.equal(await visit.byId("first").count(), 0);
    await visit.close();
  });
}

test("loading again asks the host, not a cache, for page, program and style", async () => {
  const visit = await openPage(browser, { before: (page) => page.route(program, (route) => route.abort()) });
  await visit.byId("first-again").waitFor();
  const asked = await visit.page.evaluate(async () => {
    const asked = [];
    globalThis.fetch = async (address, { cache }) => {
      asked.push([new URL(address, location.href).pathname, cache]);
      throw new Error("no network");
    };
    document.getElementById("first-again").click();
    return asked;
  });
  assert.ok(asked.every(([, cache]) => cache === "reload"), JSON.stringify(asked));
  for (const name of [/\/$/, program, /app-[0-9a-f]+\.js$/, /main-[0-9a-f]+\.css$/]) {
    assert.ok(asked.some(([path]) => name.test(path)), `${name} in ${JSON.stringify(asked)}`);
  }
  await visit.close();
});

test("a browser without WebAssembly says what it lacks", async () => {
  const visit = await openPage(browser, {
    path: "./de.html",
    before: (page) => page.addInitScript(() => delete globalThis.WebAssembly),
  });
  await visit.byId("first-failed").filter({ hasText: "WebAssembly fehlt oder ist abgeschaltet" }).waitFor();
  visit.assertClean();
  await visit.close();
});

test("how far loading has come grows to its end, also from a host that compresses", async () => {
  const visit = await openPage(browser, {
    parked: false,
    before: async (page) => {
      await page.addInitScript(() => {
        globalThis.shares = [];
        document.addEventListener("DOMContentLoaded", () => {
          const share = document.getElementById("first-share");
          new MutationObserver(() => globalThis.shares.push(Number.parseInt(share.textContent, 10))).observe(share, { childList: true });
        });
      });
      const session = await page.context().newCDPSession(page);
      await session.send("Network.emulateNetworkConditions", { offline: false, latency: 5, downloadThroughput: 400_000, uploadThroughput: 400_000 });
      page.on("response", (response) => {
        if (program.test(response.url())) packings.push(response.headers()["content-encoding"]);
      });
    },
  });
  await visit.byId("hand-speed").waitFor();
  assert.deepEqual(packings, ["br"]);
  const shares = await visit.page.evaluate(() => globalThis.shares);
  assert.ok(shares.length > 5, `${shares}`);
  assert.deepEqual(shares, [...shares].sort((a, b) => a - b));
  assert.equal(shares.at(-1), 100);
  assert.ok(shares.some((share) => share > 20 && share < 80), `${shares}`);
  visit.assertClean();
  await visit.close();
});

test("without scripts the page says in its language what it needs", async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  for (const [path, said] of [["./", "it needs JavaScript"], ["./fr.html", "elle a besoin de JavaScript"]]) {
    await page.goto(new URL(path, address).href);
    assert.ok((await page.locator("body").innerText()).includes(said), path);
  }
  await context.close();
});

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
