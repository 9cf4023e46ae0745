// Loads the parts of the page's program that the first screen does not need. All this stands before the glue of
// the page's module, whose exports (`wasm`) the parts use.
//
// The build writes the files of each part into the line below, each by its name and hash
// (xtask/src/dist/parts.rs). A file that is cut or another one never runs. The module hears whether its part is
// here and says so to the person, who can ask again.

const PARTS = {};

/** As long as a file may take, ms. On the slowest of lines the largest arrives within it. */
const PATIENCE = 120_000;
/** Files that are here or on their way, by name. */
const files = new Map();
/** Files that failed before: what a cache has of them may be what was wrong. */
const failed = new Set();
/** The bytes of files that the page itself contains (standalone.js). */
const contained = new Map();

async function fetchFile(name, integrity) {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(new Error(`${name}: nothing more arrives`)), PATIENCE);
  try {
    const cache = failed.has(name) ? "reload" : "default";
    const response = await fetch(`./${name}`, { integrity, cache, signal: stop.signal });
    if (!response.ok) throw new Error(`${name}: ${response.status}`);
    return await response.arrayBuffer();
  } finally {
    clearTimeout(timer);
  }
}

async function loadFile(name, integrity) {
  try {
    const bytes = contained.get(name) ?? (await fetchFile(name, integrity));
    // One that is refused halfway has changed nothing of the module.
    await WebAssembly.instantiate(bytes, { __wasm_split: wasm });
  } catch (error) {
    files.delete(name);
    failed.add(name);
    throw error;
  }
}

/** Each file runs once, whoever asks for it. */
function file([name, integrity]) {
  if (!files.has(name)) files.set(name, loadFile(name, integrity));
  return files.get(name);
}

/** What the module calls to have a part, with the function of its own that is to hear how that went. */
const part = (name) => async (told, to) => {
  let whole = true;
  try {
    await Promise.all(PARTS[name].map(file));
  } catch (error) {
    console.error(error);
    whole = false;
  }
  wasm.__indirect_function_table.get(told)(to, whole);
};
