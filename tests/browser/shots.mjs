// Pictures of all views: light and night, wide and phone. `cargo xtask shots` runs this.

import { openPage, openTruck, phone, settle, startBrowser, takeShot, toView, wide } from "./page.mjs";

const browser = await startBrowser();
try {
  for (const [theme, scheme] of [["light", "light"], ["night", "dark"]]) {
    for (const [size, viewport] of [["wide", wide], ["phone", phone]]) {
      const visit = await openPage(browser, { viewport, scheme });
      await settle(visit);
      await visit.page.getByTestId("lane-gear").waitFor();
      console.log(await takeShot(visit, `${size}-${theme}`));
      for (const view of ["descents", "two", "card", "more"]) {
        await toView(visit, view);
        await settle(visit);
        console.log(await takeShot(visit, `${size}-${theme}-${view}`));
      }
      await toView(visit, "road");
      await openTruck(visit);
      console.log(await takeShot(visit, `${size}-${theme}-truck`));
      for (const complaint of visit.complaints) console.log(`  complaint: ${complaint}`);
      await visit.close();
    }
  }
} finally {
  await browser.close();
}
