import { openPage, phone, settle, startBrowser, takeShot, wide } from "./page.mjs";
const browser = await startBrowser();
for (const [n,vp,sch] of [["w",wide,"light"],["p",phone,"dark"]]) {
const v = await openPage(browser, { viewport: vp, scheme: sch });
await settle(v); await v.page.getByTestId("lane-gear").waitFor();
await v.page.getByTestId("sure").first().waitFor({timeout:20000});
await v.page.waitForFunction(()=>!/Working out/.test(document.querySelector('[data-testid=sure]').textContent),{timeout:20000});
await takeShot(v,"zz-"+n,{fullPage:true});
await v.page.getByTestId("descent-2").click(); await v.page.waitForTimeout(400);
await v.page.getByTestId("detail-2").screenshot({path:"/tmp/s/zz-detail-"+n+".png"});
if(n=="p") { await v.page.getByTestId("truck-panel").locator("summary").first().click(); await v.page.getByTestId("day-panel").locator("summary").first().click();}
await v.page.getByTestId("entry-retarder").selectOption("compression-hydrodynamic");
await v.page.getByTestId("more-entries").locator("summary").click();
await v.page.waitForTimeout(900);
await v.page.getByTestId("truck-panel").screenshot({path:"/tmp/s/zz-truck-"+n+".png"});
await v.page.getByTestId("evidence").locator("summary").click(); await v.page.getByTestId("evidence-count").waitFor();
await v.page.getByTestId("evidence").screenshot({path:"/tmp/s/zz-evi-"+n+".png"});
console.log(v.complaints, v.foreignRequests());
await v.close();
}
await browser.close();
