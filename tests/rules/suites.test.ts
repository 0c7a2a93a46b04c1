import { expect, it } from "vitest";
import config from "../../vitest.config.ts";
import { SUITES } from "../runner/suites.mjs";

it("npm test runs every project of vitest.config.ts", () => {
  const names = config.test?.projects?.map((project) =>
    typeof project === "object" && "test" in project ? project.test?.name : project,
  );
  expect([...SUITES].sort()).toEqual(names?.sort());
});
