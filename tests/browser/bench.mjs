// `cargo xtask bench --page`: a 20 MB file of 200,000 points, dropped on the page.
//
// Baseline, in the same browser and the same run: the browser's own XML parser with a general
// library from GPX to GeoJSON, which only read it. Said besides: how long the page's main
// thread was held at the longest (a long task is one of 50 ms and more), and how the page comes to
// a slow phone (audit.mjs).

import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { audit, poorVisit } from "./audit.mjs";
import { dropFile, openDemo, openPage, settle, startBrowser } from "./page.mjs";

const POINTS = 200_000;
const SPACING_M = 2.5;
const ROUNDS = 5;

/** An invented recording: whole numbers and sines, so that it is the same everywhere. */
function recording(count) {
  const points = [];
  for (let k = 0; k < count; k += 1) {
    const s = k * SPACING_M;
    const lat = -45 + (s / 111_132) * 0.8;
    const lon = -20 + 0.02 * Math.sin(s / 3000);
    const height = 1000 + 600 * Math.sin(s / 9000) + 60 * Math.sin(s / 1300) + ((k * 7919) % 100) / 400;
    const two = (n) => String(n).padStart(2, "0");
    const time = `2024-05-${two(1 + Math.floor(k / 86400))}T${two(Math.floor(k / 3600) % 24)}:${two(Math.floor(k / 60) % 60)}:${two(k % 60)}Z`;
    points.push(`<trkpt lat="${lat.toFixed(7)}" lon="${lon.toFixed(7)}"><ele>${height.toFixed(2)}</ele><time>${time}</time></trkpt>\n`);
  }
  return `<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="bench" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Long</name><trkseg>\n${points.join("")}</trkseg></trk></gpx>\n`;
}

/** Milliseconds from drop to the coloured road, and the long tasks on the way. */
async function drop(browser, text) {
  const visit = await openDemo(browser);
  const result = await visit.page.evaluate(async (text) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], "long.gpx"));
    const zone = document.querySelector("[data-testid=drop-zone]");
    const held = [];
    const observer = new PerformanceObserver((list) => held.push(...list.getEntries()));
    observer.observe({ type: "longtask" });
    await new Promise((rest) => setTimeout(rest, 1000));
    const start = performance.now();
    for (const type of ["dragenter", "dragover", "drop"]) {
      zone.dispatchEvent(new DragEvent(type, { dataTransfer: transfer, bubbles: true, cancelable: true }));
    }
    const shown = () =>
      document.querySelector("[data-testid=road-name]")?.innerText.includes("Long") &&
      !document.querySelector("[data-testid=progress]");
    while (!shown() && performance.now() - start < 60_000) {
      await new Promise((frame) => requestAnimationFrame(frame));
    }
    const took = performance.now() - start;
    await new Promise((rest) => setTimeout(rest, 500));
    observer.disconnect();
    return { took, held: held.filter((task) => task.startTime >= start).map((task) => Math.round(task.duration)) };
  }, text);
  await visit.close();
  return result;
}

/** Milliseconds from the answer of a road of 100 km until it is known how sure it is. */
async function runs(browser, text) {
  const visit = await openDemo(browser);
  await visit.page.getByTestId("file-input").setInputFiles({ name: "hundred.gpx", mimeType: "application/gpx+xml", buffer: Buffer.from(text) });
  const took = await visit.page.evaluate(async () => {
    const frame = () => new Promise((next) => requestAnimationFrame(next));
    const sure = () => document.querySelector("[data-testid=sure]")?.textContent ?? "";
    const until = async (holds) => {
      const start = performance.now();
      while (!holds() && performance.now() - start < 60_000) await frame();
      return performance.now();
    };
    await until(() => document.querySelector("[data-testid=road-name]")?.innerText.includes("Long"));
    // Until it is known, the share of the work stands in its place.
    const short = () => document.querySelector("[data-testid=sure] .short")?.textContent ?? "";
    const begun = await until(() => /%$/.test(short()));
    return (await until(() => sure().includes("256 times"))) - begun;
  });
  await visit.close();
  return took;
}

/** Milliseconds between frames while a truck runs along 100 km, and the same while nothing moves. */
async function frames(browser, text) {
  const visit = await openPage(browser, { path: "./class.html", viewport: { width: 1280, height: 720 } });
  await visit.page.emulateMedia({ reducedMotion: "no-preference" });
  await visit.byId("forces").waitFor();
  await dropFile(visit, "drop-zone", { name: "hundred.gpx", bytes: Buffer.from(text) });
  await visit.byId("road-now").filter({ hasText: "Long" }).waitFor();
  await settle(visit, 1_000, 60_000);
  await visit.byId("run").click();
  await visit.page.waitForFunction(() => document.querySelector("[data-testid=gauge-gear]")?.textContent !== "–", null, { timeout: 60_000 });
  await visit.byId("faster").click();
  const gaps = () =>
    visit.page.evaluate(async () => {
      const found = [];
      const frame = () => new Promise(requestAnimationFrame);
      let last = await frame();
      for (let k = 0; k < 300; k += 1) {
        const now = await frame();
        found.push(now - last);
        last = now;
      }
      return found;
    });
  const still = await gaps();
  await visit.byId("play").click();
  const moving = await gaps();
  await visit.close();
  return { still, moving };
}

/** Milliseconds that the general way needs to read the file. */
async function general(browser, text, library) {
  const page = await browser.newPage();
  await page.addScriptTag({ content: library });
  const took = await page.evaluate((text) => {
    const start = performance.now();
    const features = toGeoJSON.gpx(new DOMParser().parseFromString(text, "text/xml"));
    if (features.features[0].geometry.coordinates.length !== 200_000) throw new Error("not read");
    return performance.now() - start;
  }, text);
  await page.close();
  return took;
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

const library = await readFile(createRequire(import.meta.url).resolve("@tmcw/togeojson").replace(/[^/]*$/, "togeojson.umd.js"), "utf8");
const text = recording(POINTS);
const hundred = recording(40_000);
const browser = await startBrowser();
try {
  const [ours, theirs, held] = [[], [], []];
  for (let round = 0; round < ROUNDS; round += 1) {
    theirs.push(await general(browser, text, library));
    const result = await drop(browser, text);
    ours.push(result.took);
    held.push(...result.held);
  }
  const row = (name, values) =>
    console.log(`  ${name.padEnd(52)} ${median(values).toFixed(0).padStart(6)} ms  ratio ${(median(values) / median(theirs)).toFixed(3)}`);
  console.log(`${POINTS} points, ${(text.length / 1e6).toFixed(1)} MB; median of ${ROUNDS} rounds`);
  row("XML parser and general library, reading only", theirs);
  row("the page, from drop to the coloured road", ours);
  const further = [];
  for (let round = 0; round < ROUNDS; round += 1) further.push(await runs(browser, hundred));
  console.log(`  ${"256 runs over 100 km, from their first to their last".padEnd(52)} ${median(further).toFixed(0).padStart(6)} ms`);
  const { still, moving } = await frames(browser, hundred);
  const slowest = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length * 0.99)];
  const told = (values) => `${median(values).toFixed(1)} ms, ${slowest(values).toFixed(1)} ms in the slowest of a hundred`;
  console.log(`  frames while a truck runs along 100 km: ${told(moving)}; while it stands: ${told(still)}`);
  console.log(`  main thread held for 50 ms or more: ${held.length === 0 ? "never" : held.map((ms) => `${ms} ms`).join(", ")}`);
} finally {
  await browser.close();
}
const { mark, paint, shift, blocked } = await audit();
console.log(
  `  audit as a slow phone: performance ${mark.toFixed(2)}, layout shift ${shift.toFixed(3)}, largest paint ${(paint / 1000).toFixed(1)} s; blocked for ${blocked.toFixed(0)} ms`,
);
const { read, answered } = await poorVisit();
console.log(
  `  over 400 kbit/s with 400 ms, a sixth of the processor: readable after ${(read / 1000).toFixed(1)} s, the demo answered after ${(answered / 1000).toFixed(1)} s`,
);
