import { copies, copyName, copyOf, listAddress, listOf, pastAddress } from "./kept-names.js";

/**
 * What a lesson is made of, as the site lists it in its `keep.json`.
 *
 * @typedef {object} KeptFile
 * @property {string} path from the lesson's folder
 * @property {number} bytes
 * @property {string} hash of what it holds, the first sixteen signs of SHA-256; empty for a page that the lesson does without
 *
 * @typedef {object} KeepList
 * @property {string} title of the lesson
 * @property {string} version changes with any file that has a hash
 * @property {KeptFile[]} files
 * @property {KeptFile[]} [extra] large ones that are kept only when they are asked for
 */

/** The copy of one lesson on this device. An older copy is there until the new one is whole. */
export class Kept {
  /** @param {URL} folder of the lesson */
  constructor(folder) {
    this.folder = folder;
  }

  /** The list of the whole copy, or nothing. */
  async list() {
    const kept = await copyOf(this.folder.href);
    return kept && listOf(kept);
  }

  /** Whether the page came from the site, for the copy was known to be an older one. */
  async isPast() {
    const kept = await copyOf(this.folder.href);
    return Boolean(kept && (await kept.copy.match(pastAddress(kept.folder))));
  }

  /**
   * Those files of a list that no copy holds yet.
   * @param {KeepList} list
   */
  async missing(list) {
    const known = await this.list();
    return list.files.filter((file) => !file.hash || !holds(known, file));
  }

  /**
   * Fetches what is missing, and what a broken attempt left out; then the new copy takes over.
   * @param {KeepList} list
   * @param {(bytes: number) => void} came told of bytes as they come
   */
  async keep(list, came) {
    const { pathname } = this.folder;
    const name = copyName(pathname, list.version);
    const copy = await caches.open(name);
    const old = await copyOf(this.folder.href);
    const known = old && (await listOf(old));
    for (const file of list.files) {
      const address = new URL(file.path, this.folder).href;
      if (await copy.match(address)) came(file.bytes);
      else await copy.put(address, (holds(known, file) && (await old?.copy.match(address))) || (await fetched(address, file, came)));
    }
    await copy.put(listAddress(pathname), new Response(JSON.stringify(list)));
    await this.remove(name);
  }

  /** Gives back the room that an attempt took which did not come to its end. */
  async dropUnfinished() {
    const whole = await this.list();
    await this.remove(whole ? copyName(this.folder.pathname, whole.version) : "");
  }

  /**
   * Deletes every copy of the lesson but one.
   * @param {string} [but] name of the one
   */
  async remove(but) {
    for (const [name, folder] of await copies()) if (folder === this.folder.pathname && name !== but) await caches.delete(name);
    await dismissWorker(this.folder);
  }
}

/**
 * Every whole copy of the site, with its list.
 * @param {URL} root of the site
 */
export async function everyKept(root) {
  /** @type {[Kept, KeepList][]} */
  const found = [];
  for (const folder of new Set((await copies()).values())) {
    const kept = new Kept(new URL(folder, root));
    const list = folder.startsWith(root.pathname) && (await kept.list());
    if (list) found.push([kept, list]);
  }
  return found;
}

/**
 * Takes away every copy of the site, whole or not, and the worker with them.
 * @param {URL} root of the site
 */
export async function removeEvery(root) {
  if (!canKeep()) return;
  for (const [name, folder] of await copies()) if (folder.startsWith(root.pathname)) await caches.delete(name);
  await dismissWorker(root);
}

/**
 * Takes the worker away once it has nothing left to answer with.
 * @param {URL} page or folder that it answers for
 */
async function dismissWorker(page) {
  const worker = await navigator.serviceWorker.getRegistration(page.href);
  if (!worker) return;
  const { pathname } = new URL(worker.scope);
  for (const folder of (await copies()).values()) if (folder.startsWith(pathname)) return;
  await worker.unregister();
}

/** Whether lessons can be kept here: from a folder, or over a line that anyone can write into, they cannot. */
export function canKeep() {
  return isSecureContext && location.protocol.startsWith("http") && "serviceWorker" in navigator && "caches" in window;
}

/**
 * A list with what was large and left out among its files, for whoever asks for all of it.
 * @param {KeepList} list
 * @returns {KeepList}
 */
export function wholeList(list) {
  return { ...list, files: [...list.files, ...(list.extra ?? [])], extra: [] };
}

/** @param {KeptFile[]} files */
export function bytesOf(files) {
  return files.reduce((sum, { bytes }) => sum + bytes, 0);
}

/**
 * @param {KeepList | null | undefined} list
 * @param {KeptFile} wanted
 */
function holds(list, wanted) {
  return Boolean(wanted.hash && list?.files.some(({ path, hash }) => path === wanted.path && hash === wanted.hash));
}

/**
 * A file fresh from the site, told of as it comes, if it holds what the list says: what came while
 * the site was published anew belongs to another version. Without the marks of a redirect, which
 * no page may be opened with.
 * @param {string} address
 * @param {KeptFile} file
 * @param {(bytes: number) => void} came
 */
async function fetched(address, { hash }, came) {
  const response = await fetch(address, { cache: "reload" });
  if (!response.ok || !response.body) throw new Error(`${response.status} ${address}`);
  const counting = new TransformStream({
    transform(chunk, out) {
      came(chunk.byteLength);
      out.enqueue(chunk);
    },
  });
  const content = await new Response(response.body.pipeThrough(counting)).arrayBuffer();
  if (hash && (await hashOf(content)) !== hash) throw new Error(`another version of ${address}`);
  const type = response.headers.get("Content-Type") ?? "application/octet-stream";
  return new Response(content, { headers: { "Content-Type": type } });
}

/**
 * What a file holds, as the site's lists say it.
 * @param {ArrayBuffer} content
 */
async function hashOf(content) {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
  return [...bytes.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
