// What stands on the pages of a PDF, as a person would see it: texts with their place and size.

import { getDocumentProxy } from "unpdf";

/** The pages: their size in pt, and their texts, each with its place, its size in pt, and the page's words as one text. */
export async function readPdf(pdf) {
  const document = await getDocumentProxy(new Uint8Array(pdf));
  const all = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [, , width, height] = page.view;
    const { items } = await page.getTextContent();
    const texts = items
      .filter((it) => it.str.trim() !== "")
      .map((it) => ({ text: it.str, x: it.transform[4], y: height - it.transform[5], size: Math.hypot(it.transform[2], it.transform[3]) }));
    all.push({ width, height, texts, words: items.map((it) => it.str + (it.hasEOL ? " " : "")).join(" ").replaceAll(/\s+/g, " ") });
  }
  await document.destroy();
  return all;
}
