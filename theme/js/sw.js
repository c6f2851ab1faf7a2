/**
 * The worker that opens kept lessons without a network. A page of a kept lesson and all that it
 * asks for come from the lesson's copy, so that its parts fit together; everything else comes from
 * the network, and from a copy only where there is none.
 */
import { byteRange } from "./byte-range.js";
import { copies, copyOf } from "./kept-names.js";

const worker = /** @type {any} */ (self); // the types of pages, which this project uses, know no worker

worker.addEventListener("install", () => worker.skipWaiting());
worker.addEventListener("activate", (/** @type {any} */ event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener("fetch", (/** @type {any} */ event) => {
  const { request, clientId } = event;
  const isOurs = request.method === "GET" && new URL(request.url).origin === location.origin;
  if (isOurs && request.cache !== "reload") event.respondWith(answer(request, clientId)); // "reload" is how a page renews a copy
});

/**
 * @param {Request} request
 * @param {string} clientId
 */
async function answer(request, clientId) {
  const page = request.mode === "navigate" ? request.url : (await worker.clients.get(clientId))?.url;
  const copy = page && (await copyOf(page));
  const kept = copy && (await copy.match(fileAddress(request.url)));
  if (kept) return part(request, kept);
  return fetch(request).catch(async (failed) => {
    const spare = await anyCopy(fileAddress(request.url));
    if (spare) return part(request, spare);
    throw failed;
  });
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
