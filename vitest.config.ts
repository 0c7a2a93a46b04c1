import { defineConfig } from "vitest/config";

const source = { resolve: { conditions: ["development"] }, ssr: { resolve: { conditions: ["development", "node"] } } };

/**
 * Files of one worker share its modules: their tests keep no state in any, and most of the time went into importing them
 * anew. Two workers, since one of two cores would be left idle.
 */
const shared = { isolate: false, maxWorkers: 2, testTimeout: 60_000, hookTimeout: 60_000 };

/** Starts PostgreSQL for a project's run; tests take a copy of its migrated template with `freshDatabase()`. */
const database = "tests/support/database.ts";

export default defineConfig({
  test: {
    projects: [
      { ...source, test: { ...shared, name: "schema", include: ["packages/schema/test/**/*.test.ts"] } },
      {
        ...source,
        test: {
          ...shared,
          name: "engine",
          include: [
            "packages/engine/test/**/*.test.ts",
            "tests/worked/**/*.test.ts",
            "tests/regressions/**/*.test.ts",
            "tests/verification/**/*.test.ts",
          ],
        },
      },
      {
        ...source,
        test: { ...shared, name: "web", include: ["apps/web/test/**/*.test.{ts,tsx}"], environment: "happy-dom" },
      },
      { ...source, test: { name: "rules", include: ["tests/rules/**/*.test.ts"], testTimeout: 60_000 } },
      {
        ...source,
        test: {
          ...shared,
          name: "api",
          include: ["apps/api/test/**/*.test.ts"],
          globalSetup: [database],
          expect: { poll: { timeout: 30_000 } },
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
      {
        ...source,
        test: {
          name: "lifecycle",
          include: ["tests/lifecycle/**/*.test.ts"],
          maxWorkers: 2,
          testTimeout: 240_000,
          hookTimeout: 60_000,
        },
      },
      {
        ...source,
        test: {
          name: "two-process",
          include: ["tests/two-process/**/*.test.ts"],
          globalSetup: [database],
          isolate: false,
          fileParallelism: false,
          expect: { poll: { timeout: 30_000 } },
          testTimeout: 300_000,
          hookTimeout: 60_000,
        },
      },
      {
        ...source,
        test: {
          name: "journeys",
          include: ["tests/journeys/**/*.test.ts"],
          globalSetup: [database, "tests/journeys/support/pages.ts"],
          isolate: false,
          fileParallelism: false,
          expect: { poll: { timeout: 30_000 } },
          testTimeout: 300_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
