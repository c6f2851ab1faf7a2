/**
 * What stands in the place of the worker on a site that no longer offers to keep lessons: a browser
 * that comes back asks for the worker's file, finds this one, and everything goes away.
 */
import { copies } from "./kept-names.js";

const leaving = /** @type {any} */ (self); // the types of pages, which this project uses, know no worker

leaving.addEventListener("install", () => leaving.skipWaiting());
leaving.addEventListener("activate", (/** @type {any} */ event) => event.waitUntil(leave()));

async function leave() {
  const { active, scope } = leaving.registration;
  for (const [name, folder] of await copies()) if (folder.startsWith(new URL(scope).pathname)) await caches.delete(name);
  // only once it has begun: a page that opens meanwhile waits for its beginning, and would wait for ever
  active.addEventListener("statechange", () => active.state === "activated" && leaving.registration.unregister());
}
