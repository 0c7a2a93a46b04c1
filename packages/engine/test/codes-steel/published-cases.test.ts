import { describe, expect, it } from "vitest";
import { publishedSteel } from "./support/published-steel.ts";
import { catalogAnswers } from "./support/catalog-answers.ts";
import { sheetAnswers } from "./support/sheet-answers.ts";
import { steelAnswers } from "./support/steel-answers.ts";

const ours: Readonly<Record<string, () => number>> = { ...catalogAnswers, ...steelAnswers, ...sheetAnswers };

describe("published and hand-worked cases", () => {
  it.each(publishedSteel.map((row) => [row.case, row.reference, row.unit, row.source, row.certainty, row] as const))(
    "%s is %d %s [%s; %s]",
    (_case, reference, _unit, _source, _certainty, row) => {
      const answer = ours[row.id]?.() ?? Number.NaN;
      expect(Math.abs(answer / reference - 1), `ours ${answer}, reference ${reference}`).toBeLessThanOrEqual(
        row.tolerance,
      );
    },
  );

  it("no two cases share a name, and every case has an answer", () => {
    const ids = publishedSteel.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(Object.keys(ours)).toContain(id);
  });
});
