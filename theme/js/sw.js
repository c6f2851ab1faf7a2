/**
 * The worker that opens kept lessons without a network. A page of a kept lesson and all that it
 * asks for come from the lesson's copy, so that its parts fit together; everything else comes from
 * the network, and from a copy only where there is none; a page that is not kept ends there in one that
 * says so. Whenever such a page is opened, the site is
 * asked whether it has a newer version: then the page comes from the site at once, and it renews the
 * copy (`keep-lesson.js`).
 */
import { byteRange } from "./byte-range.js";
import { copies, copyOf, listOf, pastAddress } from "./kept-names.js";
import { notKept } from "./not-kept.js";

const worker = /** @type {any} */ (self); // the types of pages, which this project uses, know no worker

worker.addEventListener("install", () => worker.skipWaiting());
worker.addEventListener("activate", (/** @type {any} */ event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener("fetch", (/** @type {any} */ event) => {
  const { request, clientId } = event;
  const isOurs = request.method === "GET" && new URL(request.url).origin === location.origin;
  if (isOurs && request.cache !== "reload") event.respondWith(answer(request, clientId)); // "reload" is how a page renews a copy
});

/** Milliseconds that a page waits for the site's word: on a weak line the copy is better than nothing. */
const PATIENCE = 3_000;
/** Where a picture is not kept, such as the cover of another lesson on the front page: its room, empty. */
const NO_PICTURE = '<svg xmlns="http://www.w3.org/2000/svg"/>';

/**
 * @param {Request} request
 * @param {string} clientId
 */
async function answer(request, clientId) {
  const isPage = request.mode === "navigate";
  const page = isPage ? request.url : (await worker.clients.get(clientId))?.url;
  const held = page ? await copyOf(page) : null;
  const kept = await held?.copy.match(fileAddress(request.url));
  if (!held || !kept) return fromSite(request, null);
  if (isPage) await compare(held);
  if (!(await held.copy.match(pastAddress(held.folder)))) return part(request, kept);
  return fromSite(request, isPage ? held : null, kept);
}

/**
 * @param {Request} request
 * @param {import("./kept-names.js").KeptCopy | null} held where all the rest of a page has to come from, should the page not come
 * @param {Response} [kept]
 */
async function fromSite(request, held, kept) {
  const fresh = await fetch(request).catch((/** @type {unknown} */ failed) => ({ failed, status: 599 }));
  if (fresh instanceof Response && (fresh.status < 400 || !held)) return fresh;
  const spare = kept ?? (await anyCopy(fileAddress(request.url)));
  if (held) await held.copy.delete(pastAddress(held.folder));
  if (spare) return part(request, spare);
  if (fresh instanceof Response) return fresh;
  if (request.destination === "image") return new Response(NO_PICTURE, { headers: { "Content-Type": "image/svg+xml" } });
  if (request.mode === "navigate") return notKept(request.url, worker.registration.scope);
  throw fresh.failed;
}

/**
 * Marks a copy where the site has another version of its lesson now.
 * @param {import("./kept-names.js").KeptCopy} held
 */
async function compare(held) {
  const [list, newest] = await Promise.all([listOf(held), newestList(held.folder)]);
  if (newest && newest.version !== list?.version) await held.copy.put(pastAddress(held.folder), new Response());
  else await held.copy.delete(pastAddress(held.folder));
}

/**
 * The list as the site has it now; nothing without a network, or where it takes too long.
 * @param {string} folder
 * @returns {Promise<import("./kept.js").KeepList | null>}
 */
async function newestList(folder) {
  try {
    const answered = await fetch(`${folder}keep.json`, { cache: "no-store", signal: AbortSignal.timeout(PATIENCE) });
    return answered.ok ? await answered.json() : null;
  } catch {
    return null;
  }
}

/** @param {string} address */
async function anyCopy(address) {
  for (const name of (await copies()).keys()) {
    const found = await (await caches.open(name)).match(address);
    if (found) return found;
  }
  return null;
}

/**
 * The address a file is kept under: no search, and a folder's page by its name.
 * @param {string} address
 */
function fileAddress(address) {
  const { origin, pathname } = new URL(address);
  return origin + pathname.replace(/\/$/, "/index.html");
}

/**
 * The bytes that are asked for: a video comes in parts, and some browsers take no whole one.
 * @param {Request} request
 * @param {Response} whole
 */
async function part(request, whole) {
  const header = request.headers.get("range");
  if (!header) return whole;
  const content = await whole.blob();
  const range = byteRange(header, content.size);
  if (!range) return new Response(null, { status: 416, headers: { "Content-Range": `bytes */${content.size}` } });
  const [start, end] = range;
  return new Response(content.slice(start, end, content.type), {
    status: 206,
    headers: { "Content-Range": `bytes ${start}-${end - 1}/${content.size}`, "Content-Length": String(end - start), "Content-Type": content.type },
  });
}
