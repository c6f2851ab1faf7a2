import { formerNames } from "./former-names.js";
import { leadOn } from "./lead-on.js";
import { leadStopsOn } from "./lead-stops-on.js";
import { Store } from "./store.js";
import { KEPT_AS, namesOf, thingOf } from "./things.js";

/** The thing that stands for the learner on a shared device: a boat until another is picked. */
export function thingHere() {
  return thingOf(new Store("device").get(KEPT_AS));
}

/** The store of the lesson on this page, for whoever is here. */
export function lessonStore() {
  const lesson = document.querySelector("lesson-thread")?.getAttribute("data-lesson") ?? location.pathname;
  const thing = thingHere();
  for (const folder of [lesson, ...formerNames()]) {
    for (const name of namesOf(thing)) if (name !== thing || folder !== lesson) leadOn(`${name}/${folder}`, `${thing}/${lesson}`);
  }
  const store = new Store(`${thing}/${lesson}`);
  leadStopsOn(store.key);
  return store;
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
