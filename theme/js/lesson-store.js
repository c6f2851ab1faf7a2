import { Store } from "./store.js";

/** The shape that stands for the learner on a shared device: a circle until another is picked. */
export function shapeHere() {
  return new Store("device").get("shape") || "circle";
}

/** The store of the lesson on this page, for whoever is here. */
export function lessonStore() {
  const lesson = document.querySelector("lesson-thread")?.getAttribute("data-lesson") ?? location.pathname;
  return new Store(`${shapeHere()}/${lesson}`);
}

/** Whether this device keeps anything at all: where it is forbidden or full, no place is promised. */
export function isKept() {
  const probe = `${lessonStore().key} probe`;
  try {
    localStorage.setItem(probe, "");
    localStorage.removeItem(probe);
    return true;
  } catch {
    return false;
  }
}
