// What the pictures show, as tables: for whoever does not see them, and for everybody.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { dropFile, inTruck, inView, openDemo, phone, settle, sideways, startBrowser, takeShot, toView } from "./page.mjs";
import { flatFile, hill } from "./roads.mjs";

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser?.close());

/** Heads and rows of a folded table, opened. */
async function opened(visit, id, nth = 0) {
  const fold = visit.byId(id).nth(nth);
  if (!(await fold.evaluate((it) => it.open))) await fold.locator("summary").click();
  await fold.locator("table").waitFor();
  return fold.locator("table").evaluate((table) => ({
    caption: table.caption.textContent,
    heads: [...table.tHead.rows[0].cells].map((cell) => [cell.tagName, cell.scope, cell.textContent]),
    rows: [...table.tBodies[0].rows].map((row) => [...row.cells].map((cell) => cell.textContent.replaceAll("\u00a0", " "))),
    first: [...table.tBodies[0].rows].map((row) => [row.cells[0].tagName, row.cells[0].scope].join()),
  }));
}

const ends = (text) => text.match(/[\d.]+/g).map(Number);

test("the road as a table tiles the road, and says what the list of descents says", async () => {
  const visit = await openDemo(browser);
  await toView(visit, "descents");
  assert.equal(await visit.byId("road-table").locator("table").count(), 0, "nothing is made while it is folded");
  const { caption, heads, rows, first } = await opened(visit, "road-table");
  assert.equal(caption, "The road as a table");
  assert.deepEqual(heads.map(([tag, scope]) => `${tag} ${scope}`), Array(7).fill("TH col"));
  assert.ok(first.every((it) => it === "TH,row"));
  const length = Number((await visit.byId("road-ends").innerText()).match(/([\d.]+)\skm/)[1]);
  assert.equal(ends(rows[0][0])[0], 0);
  assert.equal(ends(rows.at(-1)[0])[1], length);
  for (let k = 1; k < rows.length; k += 1) assert.equal(ends(rows[k][0])[0], ends(rows[k - 1][0])[1], rows[k].join());
  // Each descent: it begins at its crest, and its own gear and stage are among its rows.
  const listed = await visit.byId("descent-row").evaluateAll((all) =>
    all.map((row) => {
      const figure = (key) => row.querySelector(`.${key} dd`).textContent.replaceAll("\u00a0", " ");
      const number = row.querySelector("h3").textContent.match(/\d+/)[0];
      return { number, gear: figure("gear"), stage: figure("stage"), from: figure("from"), heat: figure("heat") };
    }),
  );
  assert.ok(listed.length >= 1);
  for (const { number, gear, stage, from } of listed) {
    const own = rows.filter(([, part]) => part === `Descent ${number}`);
    assert.ok(own.some((row) => row[3] === gear && row[4] === stage), `descent ${number}: ${gear} ${stage} in ${own}`);
    assert.equal(ends(own[0][0])[0], ends(from)[0]);
    assert.ok(own.every((row) => /^\d+$/.test(row[3]) && /^(off|\d+)$/.test(row[4])), "one gear and stage in a row");
    assert.ok(own.every(([at]) => ends(at)[0] < ends(at)[1]), "nothing shorter than is told");
    assert.ok(own.every((row) => /km\/h$/.test(row[5]) && /^(cool|warm|hot|over the limit)$/.test(row[6])));
  }
  await (await inView(visit, "more", "units-imperial")).click();
  await toView(visit, "descents");
  await visit.byId("road-table").getByText("mph").first().waitFor();
  assert.match(await visit.byId("road-table").locator("tbody th").first().innerText(), /^mi\s/);
  await visit.byId("road-table").locator("summary").click();
  await visit.byId("road-table").locator("table").waitFor({ state: "detached" });
  visit.assertClean();
  await visit.close();
});

test("the table follows the road, and says nothing where nothing is known", async () => {
  const visit = await openDemo(browser);
  await toView(visit, "descents");
  await visit.byId("road-table").locator("summary").click();
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  const cells = () => visit.byId("road-table").locator("tbody tr").allInnerTexts();
  const rows = await cells();
  assert.ok(rows.length >= 3 && rows.length < 12, rows.join("\n"));
  assert.match(rows[0], /no descent/);
  assert.ok(rows.some((row) => /Descent 1\s+−(7\.9|8\.0)\s%\s+\d+\s+\d/.test(row)), rows.join("\n"));
  await dropFile(visit, "drop-zone", flatFile);
  await visit.byId("file-error").waitFor();
  assert.deepEqual(await cells(), rows, "a file without heights changes nothing");
  visit.assertClean();
  await visit.close();
});

test("two roads beside each other have a table each", async () => {
  const visit = await openDemo(browser);
  await (await inView(visit, "two", "keep-beside")).click();
  await dropFile(visit, "drop-zone", hill);
  await visit.byId("road-name").filter({ hasText: "Test hill" }).waitFor();
  await settle(visit);
  await toView(visit, "two");
  const table = async (index) => {
    const fold = visit.page.locator(".pair-tables").getByTestId("road-table").nth(index);
    await fold.locator("summary").click();
    await fold.locator("tbody tr").first().waitFor();
    return fold.locator("tbody tr").count();
  };
  const [kept, shown] = [await table(0), await table(1)];
  assert.ok(kept > shown && shown >= 3, `${kept} ${shown}`);
  visit.assertClean();
  await visit.close();
});

test("the engine's curves as a table: what pulls, and what each stage holds", async () => {
  const visit = await openDemo(browser);
  await inTruck(visit, "power-table");
  const { caption, heads, rows } = await opened(visit, "power-table");
  assert.equal(caption, "Power as a table, kW");
  const names = heads.map(([, , text]) => text);
  assert.deepEqual(names.slice(0, 3), ["engine speed, /min", "pulls", "holds, off"]);
  assert.ok(rows.length >= 5);
  const numbers = rows.map((row) => row.map((text) => Number(text.replaceAll(",", ""))));
  assert.ok(numbers.flat().every(Number.isFinite), rows.join("\n"));
  for (const [, , ...holding] of numbers) assert.deepEqual(holding, holding.toSorted((a, b) => a - b));
  assert.ok(Math.max(...numbers.map((row) => row.at(-1))) > 100, "kilowatts, not watts and not megawatts");
  // It stays open while the truck is changed.
  await (await inTruck(visit, "engine-brake-none")).click();
  await settle(visit);
  assert.equal(await (await inTruck(visit, "power-table")).getAttribute("open"), "");
  assert.notDeepEqual(await (await inTruck(visit, "power-table")).locator("thead th").allInnerTexts(), names);
  visit.assertClean();
  await visit.close();
});

test("what has no table says in its name what it shows, in each language", async () => {
  for (const [path, name, card] of [
    ["./", /north up\. It ends [\d.]+ km from its start as the crow flies, to the (north|south|east|west)/, /rows below/],
    ["./es.html", /Termina a [\d,]+ km de su inicio en línea recta, hacia el /, /filas de abajo/],
    ["./fr.html", /Elle finit à [\d,]+ km de son départ à vol d’oiseau, vers l/, /lignes au-dessous/],
    ["./de.html", /Sie endet [\d,]+ km Luftlinie von ihrem Anfang entfernt, Richtung /, /Zeilen darunter/],
  ]) {
    const visit = await openDemo(browser, { path });
    const said = (await visit.byId("plan-shape").first().locator(".unseen").textContent()).replaceAll("\u00a0", " ");
    assert.match(said, name);
    // One strip for paper and one for a narrow screen; either may be shown.
    const strips = await visit.page.locator(".card-strip").evaluateAll((all) => all.map((it) => it.getAttribute("aria-label")));
    assert.ok(strips.length >= 2 && strips.every((it) => card.test(it)), `${strips}`);
    await visit.close();
  }
});

test("the tables fit a phone at night and a wide page by day", async () => {
  for (const [name, options] of [["wide", {}], ["phone", { viewport: phone, scheme: "dark" }]]) {
    const visit = await openDemo(browser, options);
    for (const [id, bring] of [["road-table", () => toView(visit, "descents")], ["power-table", () => inTruck(visit, "power-table")]]) {
      await bring();
      await opened(visit, id);
      assert.deepEqual(await sideways(visit), [], id);
      await visit.byId(id).evaluate((it) => it.scrollIntoView());
      await takeShot(visit, `${id}-${name}`);
    }
    visit.assertClean();
    await visit.close();
  }
});
