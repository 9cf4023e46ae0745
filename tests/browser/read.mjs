// What a person reads.

/** The text of the element with this data-testid, in plain blanks. */
export async function read(visit, id) {
  return plain(await visit.byId(id).first().innerText());
}

/** Waits until the deciding sentence is another one than `old`; gives it. */
export async function changedSentence(visit, old) {
  return waitForSentence(visit, old, false);
}

/** Waits until the deciding sentence is `text` again. */
export async function sameSentence(visit, text) {
  return waitForSentence(visit, text, true);
}

/** Pages of a PDF: its page objects, counted. */
export function pages(pdf) {
  return (pdf.toString("latin1").match(/\/Type\s*\/Page[^s]/g) ?? []).length;
}

/** A text with plain blanks for those that do not break. */
export function plain(text) {
  return text.replaceAll("\u00a0", " ");
}

async function waitForSentence(visit, text, same) {
  await visit.page.waitForFunction(
    ([text, same]) => {
      const shown = document.querySelector("[data-testid=verdict-sentence]");
      return shown !== null && (shown.innerText.replaceAll("\u00a0", " ") === text) === same;
    },
    [text, same],
  );
  return read(visit, "verdict-sentence");
}
