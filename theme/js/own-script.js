const site = new URL(location.href).origin;
/** Browsers that know trusted types load a script only where a rule lets its address through; the page's policy names this one. */
const rule = /** @type {any} */ (window).trustedTypes?.createPolicy("plumline", { createScriptURL: refuseOthers });

/**
 * The address of a script, as a browser takes it; of this site alone.
 * @param {string} address
 * @returns {string}
 */
export function ownScript(address) {
  return rule ? rule.createScriptURL(address) : refuseOthers(address);
}

/** @param {string} address */
function refuseOthers(address) {
  if (new URL(address, location.href).origin !== site) throw new TypeError(address);
  return address;
}
