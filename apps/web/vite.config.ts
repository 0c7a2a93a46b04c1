import react from "@vitejs/plugin-react";
import { readFileSync } from "node:fs";
import { defineConfig, type Plugin } from "vite";

const service = process.env["SERVICE_URL"] ?? "http://127.0.0.1:3000";

/**
 * Every schema of zod can write itself as JSON Schema, which no page asks for: it is left out of the page, and whoever asks
 * for it there is told so.
 */
const withoutJsonSchema: Plugin = {
  name: "without-json-schema",
  enforce: "pre",
  apply: "build",
  load(id) {
    if (!/\/zod\/v4\/core\/(to-json-schema|json-schema-processors)\.js$/.test(id)) return null;
    const names = [...readFileSync(id, "utf8").matchAll(/^export (?:const|function) (\w+)/gm)].map(([, name]) => name);
    const left = 'const left = () => () => { throw new Error("the page holds no writer of JSON Schema"); };';
    return [left, ...names.map((name) => `export const ${name} = left;`)].join("\n");
  },
};

/** What the sheets with a drawing on them share; everything in it is asked for by at least so many parts. */
const ofDrawings = /apps\/web\/src\/(drawing|paper|sheet|notes|hand|tools|look|keys)\/|packages\/engine\//;
const leastParts = 6;

export default defineConfig({
  plugins: [react(), withoutJsonSchema],
  build: {
    // The content-security policy admits no data: or inline source, so every asset is a file of its own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: "es2023",
    sourcemap: true,
    // What every screen needs is one file, and what drawings share another: a hundred small ones weigh a tenth more and
    // are asked for in turns. It also has what keeps zod from making code from text run before any schema is made.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: "office", tags: ["$initial"], priority: 1 },
            { name: "drawing", test: ofDrawings, minShareCount: leastParts },
          ],
        },
      },
    },
  },
  worker: { format: "es" },
  server: { proxy: { "/api": { target: service, ws: true } } },
});
