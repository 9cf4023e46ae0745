// A static host of the tests' own: a copy of the built page that can be changed and switched off.

import { createHash } from "node:crypto";
import { once } from "node:events";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The built page. */
export const dist = fileURLToPath(new URL("../../dist/", import.meta.url));

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".wasm": "application/wasm",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};

/** Serves copies of the built page, one below each of `paths` ("/some/folder/"). */
export async function startSite(...paths) {
  const root = await mkdtemp(join(tmpdir(), "steadygrade-site-"));
  for (const path of paths) await cp(dist, join(root, path), { recursive: true });
  const server = createServer(async (request, response) => {
    const path = new URL(request.url, "http://host").pathname;
    const file = path.endsWith("/") ? `${path}index.html` : path;
    try {
      const bytes = await readFile(join(root, file));
      const headers = {
        "content-type": types[extname(file)] ?? "application/octet-stream",
        // Of the page a copy may be used for a while without asking, as many hosts say. The rest is
        // not to be had from the browser's ordinary cache, so that nothing hides what is missing.
        "cache-control": file.endsWith(".html") ? "max-age=600" : "no-store",
      };
      response.writeHead(200, headers).end(bytes);
    } catch {
      response.writeHead(404).end("There is no such file.");
    }
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const origin = `http://127.0.0.1:${server.address().port}`;
  const site = {
    address: (path = paths[0]) => origin + path,
    folder: (path = paths[0]) => join(root, path),
    async stop() {
      server.closeAllConnections();
      if (server.listening) await new Promise((closed) => server.close(closed));
    },
    async clear() {
      await site.stop();
      await rm(root, { recursive: true });
    },
  };
  return site;
}

/** The title of the build that `changeBuild` makes. */
export const changedTitle = "Another build of Steadygrade";

/**
 * Makes another build of the page in a folder: another title, and evidence of one row, whose file
 * takes the place of the old one. With `half`, the new page itself has not arrived yet.
 */
export async function changeBuild(folder, { half = false } = {}) {
  const path = (name) => join(folder, name);
  const [page, worker] = await Promise.all(["index.html", "sw.js"].map((name) => readFile(path(name), "utf8")));
  const [oldName] = page.match(/evidence-[0-9a-f]{16}\.json/);
  const evidence = JSON.stringify(JSON.parse(await readFile(path(oldName), "utf8")).slice(0, 1));
  const newName = `evidence-${sha(evidence, "hex").slice(0, 16)}.json`;
  const newPage = page.replace(/<title>.*?<\/title>/, `<title>${changedTitle}</title>`).replace(oldName, newName);
  const newWorker = worker
    .replace(/const VERSION = "\w+"/, `const VERSION = "${sha(newPage, "hex").slice(0, 16)}"`)
    .replace(entry("./", page), entry("./", newPage))
    .replace(new RegExp(`\\["./${oldName}", "[^"]+"`), entry(`./${newName}`, evidence));
  if (!half) await writeFile(path("index.html"), newPage);
  await rm(path(oldName));
  await writeFile(path(newName), evidence);
  await writeFile(path("sw.js"), newWorker);
}

/** The beginning of a line of the service worker's list. */
function entry(name, contents) {
  return `["${name}", "sha256-${sha(contents, "base64")}"`;
}

function sha(contents, encoding) {
  return createHash("sha256").update(contents).digest(encoding);
}
