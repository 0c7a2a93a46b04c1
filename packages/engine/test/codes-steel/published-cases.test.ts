import { describe, expect, it } from "vitest";
import { publishedSteel } from "./support/published-steel.ts";
import { steelAnswers } from "./support/steel-answers.ts";

const ours = steelAnswers;

describe("published and hand-worked cases", () => {
  it.each(
    publishedSteel
      .filter(({ id }) => id in ours)
      .map((row) => [row.case, row.reference, row.unit, row.source, row.certainty, row] as const),
  )("%s is %d %s [%s; %s]", (_case, reference, _unit, _source, _certainty, row) => {
    const answer = ours[row.id]?.() ?? Number.NaN;
    expect(Math.abs(answer / reference - 1), `ours ${answer}, reference ${reference}`).toBeLessThanOrEqual(
      row.tolerance,
    );
  });
});
