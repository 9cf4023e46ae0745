// Keeps one whole version of the page for use without a network.
//
// The build writes version and files into the two lines below (xtask/src/dist/cache.rs).
//
// A version is kept whole or not at all: every file is asked for anew and held against its hash
// before any is kept, so neither a host in the middle of an upload nor a cache on the way can make
// a mixture. A page is answered from this worker's own version. What a page loads later carries
// the hash of its contents in its name, so a page of the version before, still open in another
// window, can only get what is its own.

const VERSION = "";
const FILES = [];

/** The folder of the page: the address of the page itself. */
const FOLDER = new URL("./", self.location).href;
/** Caches belong to the origin; a copy of the page in another folder has its own. */
const OURS = `steadygrade ${FOLDER} `;
const NAME = OURS + VERSION;
/** The language of what belongs to one: its page, its module, and what is said where another is not kept. */
const LANGUAGE = new Map(FILES.map(([name, , tag]) => [new URL(name, FOLDER).href, tag]));

self.addEventListener("install", (event) => event.waitUntil(keepAll()));
self.addEventListener("activate", (event) => event.waitUntil(begin()));
self.addEventListener("message", (event) => {
  if (event.data === "take over") event.waitUntil(self.skipWaiting());
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = request.url.replace(/[?#].*$/, "");
  if (request.method !== "GET" || !address.startsWith(FOLDER)) return;
  const page = pageAt(address);
  if (request.mode !== "navigate") {
    event.respondWith(LANGUAGE.has(address) ? own(address, request) : former(address, request));
  } else if (LANGUAGE.get(page)) {
    event.respondWith(own(page, request).catch((failure) => absent(page, failure)));
    event.waitUntil(tidy(0).then(() => keepLanguage(LANGUAGE.get(page))));
  }
});

/** The page goes by its folder. */
function pageAt(address) {
  const plain = address.replace(/[?#].*$/, "");
  return plain === `${FOLDER}index.html` ? FOLDER : plain;
}

/** What all languages share, and the languages that were opened here. */
async function keepAll() {
  const opened = await languages();
  await keep(([, , tag]) => !tag || opened.has(tag));
}

/** `addAll` keeps nothing when one file fails, and one whose hash is another has failed. */
async function keep(which) {
  const wanted = FILES.filter(which).map(
    ([name, integrity]) => new Request(new URL(name, FOLDER), { integrity, cache: "no-cache" }),
  );
  const cache = await caches.open(NAME);
  await cache.addAll(wanted);
}

/** The languages of the windows that are open, and those that versions before have. */
async function languages() {
  const windows = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const pages = windows.map((window) => pageAt(window.url));
  for (const name of await caches.keys()) {
    if (!name.startsWith(OURS)) continue;
    const kept = await (await caches.open(name)).keys();
    pages.push(...kept.map((request) => pageAt(request.url)));
  }
  return new Set(pages.map((page) => LANGUAGE.get(page)).filter(Boolean));
}

/** A language that was not opened before; where the host has a newer version already, it waits for that. */
async function keepLanguage(tag) {
  const page = [...LANGUAGE].find(([, other]) => other === tag)?.[0];
  if (!page || (await find(NAME, page))) return;
  await keep(([, , other]) => other === tag).catch(() => {});
}

/** One window is the one that asked for this version. */
async function begin() {
  await tidy(1);
  await self.clients.claim();
}

/**
 * Deletes what other versions left: not while more than `most` windows are open, which may be of
 * the version before, nor while a newer version is being made ready.
 */
async function tidy(most) {
  const { installing, waiting } = self.registration;
  const windows = await self.clients.matchAll({ type: "window" });
  if (installing || waiting || windows.length > most) return;
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(OURS) && name !== NAME);
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** From this version; from the network only where a person emptied the browser's store by hand. */
async function own(address, request) {
  return (await find(NAME, address)) ?? fetch(request);
}

/** Without a network, of a page that is not kept: says so in its language, or else in one that is kept. */
async function absent(page, failure) {
  const tag = LANGUAGE.get(page).replace("class-", "");
  const sayings = [...LANGUAGE].filter(([address]) => address.startsWith(`${FOLDER}absent`));
  sayings.sort(([, a], [, b]) => Number(b === tag) - Number(a === tag));
  for (const [address] of sayings) {
    const kept = await find(NAME, address);
    if (kept) return kept;
  }
  throw failure;
}

/** What is not of this version: from the version that has it, else from the network. */
async function former(address, request) {
  for (const name of await caches.keys()) {
    const kept = name.startsWith(OURS) && (await find(name, address));
    if (kept) return kept;
  }
  return fetch(request);
}

async function find(name, address) {
  const cache = await caches.open(name);
  return cache.match(address, { ignoreVary: true });
}
