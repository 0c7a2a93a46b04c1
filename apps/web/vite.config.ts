import react from "@vitejs/plugin-react";
import { readFileSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants } from "node:zlib";
import { defineConfig, type Plugin } from "vite";

const service = process.env["SERVICE_URL"] ?? "http://127.0.0.1:3000";

const packed = promisify(brotliCompress);

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

/** Less is not worth a file beside it, bytes. */
const leastPacked = 1024;
/** Of 11: what the last two steps gain is a hundredth, for ten times the work. */
const packing = { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } };

/** Lays a packed copy (RFC 7932) beside every script and style, so that the service packs none while someone waits. */
const withPacked: Plugin = {
  name: "with-packed",
  apply: "build",
  async writeBundle({ dir }, bundle) {
    if (dir === undefined) return;
    const names = Object.keys(bundle).filter((name) => /\.(js|css)$/.test(name));
    await Promise.all(
      names.map(async (name) => {
        const file = path.join(dir, name);
        const bare = await readFile(file);
        if (bare.length >= leastPacked) await writeFile(`${file}.br`, await packed(bare, packing));
      }),
    );
  },
};

/** What the sheets with a drawing on them share; everything in it is asked for by at least so many parts. */
const ofDrawings =
  /apps\/web\/src\/(drawing|paper|sheet|notes|look|keys)\/|packages\/engine\/(?!(dist|src)\/(geometry\/(building|plan-rect|plan-grid|placed-beam)|catalog\/joint-tolerances|drawing\/section-model))/;
const leastParts = 6;

export default defineConfig({
  plugins: [react(), withoutJsonSchema, withPacked],
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
