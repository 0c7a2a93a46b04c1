/** Folders of the engine in the order of the method: each may import its own rank and those before it, never those after. */
const ENGINE_ORDER = [
  ["numerics"],
  ["catalog"],
  ["working"],
  ["geometry"],
  ["fabric"],
  ["bearing"],
  ["alignment"],
  ["load-path"],
  ["loads"],
  ["model", "elements"],
  ["analysis"],
  ["codes"],
  ["checks"],
  ["strength"],
  ["flow"],
  ["marks"],
  ["chart"],
  ["impact"],
  ["remedies"],
  ["cost"],
  ["survey", "site"],
  ["drawing"],
  ["calc-sheet"],
];

const forbid = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });

const inEngine = (ranks) => `^packages/engine/src/(${ranks.flat().join("|")})/`;

const engineOrder = ENGINE_ORDER.slice(0, -1).map((rank, place) =>
  forbid(
    `engine-order-${rank.join("-")}`,
    "This folder of the engine comes before what it imports here.",
    { path: inEngine([rank]) },
    { path: inEngine(ENGINE_ORDER.slice(place + 1)) },
  ),
);

module.exports = {
  forbidden: [
    forbid("no-cycles", "Two files that need each other are one idea or three.", {}, { circular: true }),
    forbid(
      "resolvable",
      "Every import leads somewhere.",
      { pathNot: "generated/" },
      { couldNotResolve: true, pathNot: "generated/" },
    ),
    forbid(
      "engine-alone",
      "The engine is pure: nothing from outside but types of the schema.",
      { path: "^packages/engine/src" },
      { pathNot: "^packages/(engine|schema)/src" },
    ),
    forbid(
      "engine-schema-types-only",
      "The engine takes only types from the schema.",
      { path: "^packages/engine/src" },
      { path: "^packages/schema", dependencyTypesNot: ["type-only"] },
    ),
    forbid(
      "engine-folder-in-order",
      "Give a new folder of the engine its place in the order of the method.",
      { path: `^packages/engine/src/(?!(${ENGINE_ORDER.flat().join("|")})/)[^/]+/` },
      {},
    ),
    ...engineOrder,
    forbid(
      "editions-apart",
      "Which edition is in force is chosen in codes/loads and handed in as a basis; no step of the method looks it up.",
      { path: "^packages/engine/src/[^/]+/", pathNot: "^packages/engine/src/codes/" },
      { path: "^packages/engine/src/codes/loads/" },
    ),
    forbid(
      "schema-zod-only",
      "The schema imports zod and the two standards it states as code, RFC 8785 and SHA-256.",
      { path: "^packages/schema/src" },
      { pathNot: "^packages/schema/src|node_modules/(zod|@noble/hashes|canonicalize)/" },
    ),
    forbid(
      "web-without-api",
      "The web knows the service by its schema alone.",
      { path: "^apps/web" },
      { path: "^apps/api" },
    ),
    forbid(
      "api-without-web",
      "The service knows nothing of the screens.",
      { path: "^apps/api" },
      { path: "^apps/web" },
    ),
    forbid(
      "prisma-in-store-only",
      "Only the store speaks to the database client.",
      { path: "^apps/api/src", pathNot: "^apps/api/src/(store|generated)/" },
      { path: "^apps/api/src/generated/|^node_modules/@prisma/" },
    ),
    forbid(
      "screens-apart",
      "A screen never imports another screen.",
      { path: "^apps/web/src/screens/([^/]+)/" },
      { path: "^apps/web/src/screens/([^/]+)/", pathNot: "^apps/web/src/screens/$1/" },
    ),
    forbid(
      "start-without-packages",
      "The start runs before anything is installed.",
      { path: "^apps/api/start", pathNot: "^apps/api/start/dev\\.mjs$" },
      { path: "node_modules" },
    ),
    forbid(
      "sources-without-tests",
      "What is shipped never needs tests or test tools.",
      { path: "^(packages|apps)/[^/]+/(src|start)" },
      { path: "^tests/|/test/|^node_modules/(vitest|fast-check|supertest|playwright-core|happy-dom|ml-matrix)/" },
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules|/generated/" },
    // Built chunks and the generated client hold cycles of their own.
    exclude: { path: "(^|/)(dist|dist-types|coverage)/" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["development", "import", "node", "default"],
      extensions: [".ts", ".tsx", ".mjs", ".js", ".json"],
    },
  },
};
