import { defineConfig } from "vitest/config";

const source = { resolve: { conditions: ["development"] }, ssr: { resolve: { conditions: ["development", "node"] } } };

export default defineConfig({
  test: {
    projects: [
      { ...source, test: { name: "schema", include: ["packages/schema/test/**/*.test.ts"] } },
      { ...source, test: { name: "engine", include: ["packages/engine/test/**/*.test.ts"], testTimeout: 60_000 } },
    ],
  },
});
