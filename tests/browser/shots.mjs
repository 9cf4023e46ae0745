// Pictures of the main view: light and night, wide and phone. `cargo xtask shots` runs this.

import { openPage, phone, settle, startBrowser, takeShot, wide } from "./page.mjs";

const browser = await startBrowser();
try {
  for (const [theme, scheme] of [["light", "light"], ["night", "dark"]]) {
    for (const [size, viewport] of [["wide", wide], ["phone", phone]]) {
      const visit = await openPage(browser, { viewport, scheme });
      await settle(visit);
      await visit.page.getByTestId("lane-gear").waitFor();
      console.log(await takeShot(visit, `${size}-${theme}`));
      console.log(await takeShot(visit, `${size}-${theme}-whole`, { fullPage: true }));
      for (const complaint of visit.complaints) console.log(`  complaint: ${complaint}`);
      await visit.close();
    }
  }
} finally {
  await browser.close();
}
