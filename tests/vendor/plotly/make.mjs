/*
 * Makes theme/vendor/plotly/plotly-bars.min.js from the npm package plotly.js: bars, their names, a
 * legend, and what is told of a bar under the pointer.
 *
 * Left out: components that a chart of bars never asks for, and the descriptions of every property,
 * which only plotly's own reference shows. Writes its licences and its checksum
 * beside it. It stands apart from the theme, which every release carries whole.
 */
import { build } from "esbuild";
import { createHash } from "node:crypto";
import { copyFile, readdir, readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

const FOLDER = new URL("../../../theme/vendor/plotly/", import.meta.url);
const NAME = "plotly-bars.min.js";
const NEVER_ASKED = [
  "annotations3d", "images", "modebar", "rangeselector", "rangeslider", "selections", "shapes", "sliders", "updatemenus",
];
/** What other parts look for in a layout, whether the component is drawn or not. */
const LOOKED_FOR = { modebar: "{ orientation: 'v' }", shapes: "[]" };

/** A component that draws nothing, in place of one that is asked for by other parts but never by a chart. */
const withoutComponents = {
  name: "without-components",
  setup(/** @type {import("esbuild").PluginBuild} */ { onLoad }) {
    const filter = new RegExp(`plotly\\.js/src/components/(${NEVER_ASKED.join("|")})/index\\.js$`);
    onLoad({ filter }, ({ path }) => {
      const name = /** @type {keyof typeof LOOKED_FOR} */ (filter.exec(path)?.[1]);
      const defaults = name in LOOKED_FOR ? `supplyLayoutDefaults: (_, out) => { out.${name} = ${LOOKED_FOR[name]}; },` : "";
      return { contents: `module.exports = { moduleType: "component", name: "${name}", manage: () => {}, ${defaults} };` };
    });
  },
};

const withoutDescriptions = {
  name: "without-descriptions",
  setup(/** @type {import("esbuild").PluginBuild} */ { onLoad }) {
    onLoad({ filter: /plotly\.js\/src\/.*attributes\.js$|plot_config\.js$/ }, async ({ path }) => ({
      contents: (await readFile(path, "utf8"))
        .replace(/description: \[[\s\S]*?\]\.join\([^)]*\)/g, "description: ''")
        .replace(/description:\s*'(?:[^'\\]|\\.)*'(?:\s*\+\s*'(?:[^'\\]|\\.)*')*/g, "description: ''"),
    }));
  },
};

/** One place for `culori`, so that what no chart asks for is left out. */
const fewColours = {
  name: "few-colours",
  setup(/** @type {import("esbuild").PluginBuild} */ { onResolve }) {
    onResolve({ filter: /^culori$/ }, () => ({ path: fileURLToPath(new URL("colours.mjs", import.meta.url)) }));
  },
};

const { version } = JSON.parse(await readFile(new URL("node_modules/plotly.js/package.json", import.meta.url), "utf8"));
const { metafile, outputFiles } = await build({
  banner: { js: `/* plotly.js (bars only) v${version}, MIT licence; what is inside of it: licences.txt */` },
  bundle: true,
  define: { global: "window", "define.amd": "false" },
  entryPoints: [fileURLToPath(new URL("bars.cjs", import.meta.url))],
  format: "iife",
  globalName: "Plotly",
  legalComments: "none", // each with its licence in INSIDE.txt
  loader: { ".css": "empty" },
  logLevel: "warning",
  metafile: true,
  minify: true,
  outfile: fileURLToPath(new URL(NAME, FOLDER)),
  plugins: [withoutComponents, withoutDescriptions, fewColours],
  target: "es2022",
  write: false,
});
const made = outputFiles[0].contents;
const sum = createHash("sha256").update(made).digest("hex");
await writeFile(new URL(NAME, FOLDER), made);

const packages = [...new Set(Object.entries(metafile.outputs).flatMap(([, { inputs }]) => Object.entries(inputs)
  .filter(([path, { bytesInOutput }]) => bytesInOutput > 0 && !path.endsWith(".css"))
  .flatMap(([path]) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1] ?? [])))].sort();
const inside = await Promise.all(packages.filter((name) => name !== "plotly.js").map(licenceOf));
await writeFile(new URL("INSIDE.txt", FOLDER), `What ${NAME} holds of others, by what it was made of,
with the licence each of them carries. Where a package carries no text of it, its own words are
quoted: the text is that of the MIT licence, which stands above.

${inside.join("\n\n")}
`);
await copyFile(new URL("node_modules/plotly.js/LICENSE", import.meta.url), new URL("LICENSE", FOLDER));
await writeFile(new URL("VERSION", FOLDER), `plotly.js ${version}, bars only, made from the npm package by tests/vendor/plotly/make.mjs, MIT licence (see LICENSE)
the release that the Python package plotly writes figures for
sha256 ${sum} ${NAME}
`);
console.log(`${NAME}: ${made.length} bytes, ${packages.length} packages`);

/** @param {string} name of a package */
async function licenceOf(name) {
  const folder = new URL(`node_modules/${name}/`, import.meta.url);
  const told = JSON.parse(await readFile(new URL("package.json", folder), "utf8"));
  const file = (await readdir(folder)).find((each) => /^licen[cs]e/i.test(each));
  const author = String(told.author?.name ?? told.author ?? told.contributors?.[0]).replace(/ <.*/, "");
  const text = file ? await readFile(new URL(file, folder), "utf8") : `${told.license} licence. Copyright (c) ${author}`;
  return `---- ${name} ${told.version}\n\n${text.trim()}`;
}
