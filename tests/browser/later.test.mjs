// The parts of the page's program that come after the first answer: when they are asked for, what stands in their
// place when they do not arrive, and that nothing more is needed of a network once they are here.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
  address, closeTruck, inTruck, inView, isAnswered, openPage, openQuestion, startBrowser, toView, withoutServiceWorkers,
} from "./page.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

const parts = /app-(truck|views|shared)-[0-9a-f]+\.wasm$/;
const views = /app-views-[0-9a-f]+\.wasm$/;
const truck = /app-truck-[0-9a-f]+\.wasm$/;
const sentence = "This part of the page did not arrive. Check the connection, then try again.";

/** The page without service workers, through which a test could not stop a file. */
function open(more = () => {}) {
  return openPage(browser, {
    before: async (page) => {
      await withoutServiceWorkers(page);
      await more(page);
    },
  });
}

/** Waits until all parts have been asked for and come. */
async function allHere(visit) {
  await visit.page.waitForFunction(
    (names) => {
      const here = performance.getEntriesByType("resource").filter((it) => it.responseEnd > 0).map((it) => it.name);
      return names.every((name) => here.some((it) => it.includes(name)));
    },
    ["app-truck-", "app-views-", "app-shared-"],
  );
}

test("the parts are asked for once the answer stands, and each once", async () => {
  const visit = await open((page) =>
    page.addInitScript(() => {
      globalThis.asked = [];
      const own = globalThis.fetch;
      globalThis.fetch = (file, ...more) => {
        if (String(file).endsWith(".wasm")) {
          const answered = document.querySelector("[data-testid=hand-speed]") !== null;
          globalThis.asked.push([String(file), answered]);
        }
        return own(file, ...more);
      };
    }),
  );
  await visit.byId("hand-speed").waitFor();
  await allHere(visit);
  const asked = (await visit.page.evaluate(() => globalThis.asked)).filter(([file]) => parts.test(file));
  assert.equal(asked.length, 3, JSON.stringify(asked));
  assert.equal(new Set(asked.map(([file]) => file)).size, 3, JSON.stringify(asked));
  assert.ok(asked.every(([, answered]) => answered), JSON.stringify(asked));
  visit.assertClean();
  await visit.close();
});

/** What a host or a line may give in place of a part. */
const wrongs = [
  ["is missing", (route) => route.fulfill({ status: 404, body: "There is no such file." })],
  ["is cut off", (route) => route.abort("connectionreset")],
  [
    "is cut",
    async (route) => {
      const whole = await (await route.fetch()).body();
      await route.fulfill({ contentType: "application/wasm", body: whole.subarray(0, whole.length / 2) });
    },
  ],
  [
    "is another module",
    (route) => route.fulfill({ contentType: "application/wasm", body: Buffer.from("0061736d01000000", "hex") }),
  ],
];

for (const [what, wrong] of wrongs) {
  test(`where a part ${what} a sentence stands in its place, and trying again brings it`, async () => {
    let asked = 0;
    let whole = false;
    const visit = await open((page) =>
      page.route(views, (route) => {
        asked += 1;
        return whole ? route.continue() : wrong(route);
      }),
    );
    await isAnswered(visit);
    await toView(visit, "card");
    const failed = visit.page.locator(".of-card").getByTestId("part-failed");
    await failed.getByText(sentence).waitFor();
    const before = asked;
    await failed.getByTestId("part-again").click();
    await failed.getByText(sentence).waitFor();
    assert.ok(asked > before, "trying again asks the host again");
    whole = true;
    await failed.getByTestId("part-again").click();
    await visit.byId("sheet").waitFor();
    assert.equal(await failed.count(), 0);
    // All that the part holds is there, also where it was not looked for before.
    await openQuestion(visit, "about");
    await visit.byId("sign").waitFor();
    await inView(visit, "more", "evidence");
    await visit.close();
  });
}

test("truck and day say so as well, in the drawer, and the answer beside it stays", async () => {
  let whole = false;
  const visit = await open((page) => page.route(truck, (route) => (whole ? route.continue() : route.abort())));
  await visit.byId("hand-speed").waitFor();
  await visit.byId("to-truck").click();
  const failed = visit.byId("drawer").getByTestId("part-failed");
  await failed.getByText(sentence).waitFor();
  assert.ok(await visit.byId("hand-speed").isVisible());
  // Who has not seen the truck does not say that it is theirs.
  await visit.byId("done").click();
  await visit.byId("drawer").waitFor({ state: "hidden" });
  assert.ok(await visit.byId("not-yours").first().isVisible());
  await visit.byId("to-truck").click();
  await failed.getByText(sentence).waitFor();
  whole = true;
  await failed.getByTestId("part-again").click();
  await visit.byId("entry-gross_mass").waitFor();
  await closeTruck(visit);
  await visit.close();
});

test("a part that failed unseen is asked for again when its view comes to the front", async () => {
  let whole = false;
  const visit = await open((page) => page.route(views, (route) => (whole ? route.continue() : route.abort())));
  const failed = visit.page.locator(".of-card").getByTestId("part-failed");
  await failed.waitFor({ state: "attached" });
  assert.ok(!(await failed.isVisible()));
  // Who prints now gets no blank sheet.
  await visit.page.emulateMedia({ media: "print" });
  assert.ok(await failed.getByText(sentence).isVisible());
  await visit.page.emulateMedia({ media: "screen" });
  whole = true;
  await toView(visit, "card");
  await visit.byId("sheet").waitFor();
  await visit.close();
});

test("once the first answer stands and the parts are here, no network is needed in this visit", async () => {
  const visit = await open();
  await visit.byId("hand-speed").waitFor();
  await allHere(visit);
  await visit.context.setOffline(true);
  const mass = await inTruck(visit, "entry-gross_mass");
  await mass.fill("30");
  await closeTruck(visit);
  await toView(visit, "card");
  await visit.byId("sheet").waitFor();
  await toView(visit, "descents");
  await visit.byId("road-table").waitFor();
  await inView(visit, "two", "keep-beside");
  await inView(visit, "more", "units-imperial");
  await openQuestion(visit, "about");
    await visit.byId("sign").waitFor();
  await inView(visit, "road", "put-at");
  await visit.close();
});

test("each language has parts of its own", async () => {
  const visit = await openPage(browser, { path: "./fr.html", before: withoutServiceWorkers });
  await isAnswered(visit);
  await toView(visit, "card");
  await visit.byId("sheet").waitFor();
  await inTruck(visit, "entry-gross_mass");
  const loaded = visit.requests.filter((url) => /-(truck|views|shared)-[0-9a-f]+\.wasm$/.test(url));
  assert.equal(loaded.length, 3, loaded.join(" "));
  assert.ok(loaded.every((url) => url.startsWith(new URL("./fr-", address).href)), loaded.join(" "));
  visit.assertClean();
  await visit.close();
});
