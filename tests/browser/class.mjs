// The class view as a test opens it.

import { dropFile, openPage, settle } from "./page.mjs";
import { hill } from "./roads.mjs";

/** What a projector has. */
export const projector = { width: 1280, height: 720 };
/** The screens, in their order. */
export const SCREENS = ["roads", "forces", "run", "pair", "exercises"];

/** The class view with a road on it, the test hill unless another is given. */
export async function openClass(browser, { road = hill, ...options } = {}) {
  const visit = await openPage(browser, { path: "./class.html", viewport: projector, ...options });
  await visit.byId("forces").waitFor();
  await dropFile(visit, "drop-zone", road);
  await settle(visit);
  return visit;
}

/** Shows one of them. */
export async function show(visit, screen) {
  await visit.byId(screen).click();
  await settle(visit, 300);
}
