// Fetches the page's module, tells first.js how much of it is here, and starts it.
//
// The build writes the names of glue and module, and how many bytes the module has, into the three lines
// below, and all of this into the page (xtask/src/dist/start.rs). The bytes are counted as they leave the
// browser's unpacking, so they are the same from a host that compresses.

const GLUE = "";
const MODULE = "";
const BYTES = 0;

const tell = (what, detail) => dispatchEvent(new CustomEvent(what, { detail }));

/** The module as it arrives. Some hosts do not say what it is; what is no module fails to compile. */
async function arriving() {
  const { ok, status, body } = await fetch(MODULE);
  if (!ok) throw new Error(`${MODULE}: ${status}`);
  let arrived = 0;
  const count = new TransformStream({
    transform(bytes, out) {
      arrived += bytes.length;
      tell("page-arrives", arrived / BYTES);
      out.enqueue(bytes);
    },
  });
  return new Response(body.pipeThrough(count), { headers: { "content-type": "application/wasm" } });
}

/** The page's faces, before it is drawn: a face that comes later moves what is read. */
async function faces() {
  const face = (weight) => document.fonts.load(`${weight} 1em "Atkinson Hyperlegible"`);
  await Promise.allSettled([face(400), face(700)]);
}

if (typeof WebAssembly === "object") {
  try {
    const [{ default: init }, module] = await Promise.all([import(GLUE), arriving(), faces()]);
    await init({ module_or_path: module });
    tell("page-mounted");
  } catch (error) {
    console.error(error);
    tell("page-failed", "first-cut");
  }
}
