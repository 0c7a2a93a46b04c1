import { expect, it } from "vitest";
import { standingWords } from "../../src/screens/compare/standing-words.ts";

it("counts what stands as it stood, and is nothing where nothing does", () => {
  expect(standingWords({ containers: 9, openings: 23 })).toBe("9 containers and 23 openings stand");
  expect(standingWords({ containers: 1, openings: 0 })).toBe("1 container stands");
  expect(standingWords({ containers: 0, openings: 1 })).toBe("1 opening stands");
  expect(standingWords({ containers: 0, openings: 0 })).toBeNull();
});
