// How the page comes to a slow phone: an audit by a tool of others, and a visit over a poor connection.

import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { address, phone, startBrowser } from "./page.mjs";

/** Where the tool finds the browser. */
const PORT = 9335;
const ROUNDS = 3;
/** The figures that are told, by the tool's names. */
const FIGURES = ["largest-contentful-paint", "cumulative-layout-shift", "total-blocking-time"];
/** A cell at its edge: 400 kbit/s, 400 ms; and a processor of a sixth of this one's speed. */
const POOR = { offline: false, latency: 400, downloadThroughput: 50_000, uploadThroughput: 50_000 };
const SLOWER = 6;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** The audit of the demo with the tool's own slow phone: medians of its mark (0 to 1) and of the figures. */
export async function audit() {
  const { default: lighthouse } = await import(pathToFileURL(join(process.env.STEADYGRADE_LIGHTHOUSE, "core/index.js")));
  const rounds = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const browser = await startBrowser([`--remote-debugging-port=${PORT}`]);
    try {
      const { lhr } = await lighthouse(address, { port: PORT, onlyCategories: ["performance"], logLevel: "error" });
      if (lhr.runtimeError) throw new Error(lhr.runtimeError.message);
      rounds.push([lhr.categories.performance.score, ...FIGURES.map((name) => lhr.audits[name].numericValue)]);
    } finally {
      await browser.close();
    }
  }
  const [mark, paint, shift, blocked] = rounds[0].map((_, k) => median(rounds.map((round) => round[k])));
  return { mark, paint, shift, blocked };
}

/** Milliseconds over the poor connection until something can be read, and until the demo is answered. */
export async function poorVisit() {
  const browser = await startBrowser();
  try {
    const context = await browser.newContext({ viewport: phone, hasTouch: true });
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send("Network.emulateNetworkConditions", POOR);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    await page.goto(address, { waitUntil: "commit" });
    await page.getByTestId("hand-speed").waitFor({ state: "attached", timeout: 120_000 });
    return await page.evaluate(() => {
      const [painted] = performance.getEntriesByName("first-contentful-paint");
      return { read: painted.startTime, answered: performance.now() };
    });
  } finally {
    await browser.close();
  }
}
