/*
 * What a chart of bars asks of plotly.js, and no more. `plotly.js/lib/core` would bring every
 * component: maps, sliders, drawing by hand, tools.
 */
"use strict";

require("plotly.js/build/plotcss");
const { register } = require("plotly.js/src/registry");
const api = require("plotly.js/src/plot_api/plot_api");

for (const [name, fn] of Object.entries(api)) register({ moduleType: "apiMethod", name, fn });

register([
  require("plotly.js/src/traces/scatter"), // the axes are made for it, whether it is drawn or not
  require("plotly.js/src/traces/bar"),
  require("plotly.js/src/components/annotations"),
  require("plotly.js/src/components/colorscale"),
  require("plotly.js/src/components/errorbars"),
  require("plotly.js/src/components/legend"),
  require("plotly.js/src/components/fx"),
  require("plotly.js/src/components/modebar"), // these two draw nothing here: make.mjs
  require("plotly.js/src/components/shapes"),
  require("plotly.js/src/locale-en"),
  require("plotly.js/src/locale-en-us"),
]);

module.exports = { version: require("plotly.js/src/version").version, react: api.react };
