import type { RecordedRun } from "@cornerway/schema";
import { cleanup, render, screen, within } from "@testing-library/react";
import { afterEach, expect, it } from "vitest";
import { RunList } from "../../src/screens/record/RunsSection.tsx";

afterEach(cleanup);

const all = "load path, and strength under all loads" as const;
const [older, newer] = ["a".repeat(64), "b".repeat(64)];
const runs: RecordedRun[] = [
  {
    ...{ attempt: 1, engineVersion: "0.1.0", doneAt: "2027-03-10T09:00:00.000Z", verdict: "works as built" },
    ...{ resultDigest: older, difference: null },
  },
  {
    attempt: 2,
    engineVersion: "0.1.5",
    doneAt: "2027-03-10T10:00:00.000Z",
    verdict: "works as built",
    resultDigest: null,
    difference: null,
  },
  {
    ...{ attempt: 3, engineVersion: "0.2.0", doneAt: "2027-03-11T09:00:00.000Z", verdict: "does not work" },
    resultDigest: newer,
    difference: {
      before: { engineVersion: "0.1.0", resultDigest: older },
      after: { engineVersion: "0.2.0", resultDigest: newer },
      ...{
        same: false,
        scope: { before: all, after: all },
        whole: { before: "works as built", after: "does not work" },
      },
      units: [{ unitId: "g1", before: "works as built", after: "does not work" }],
      ...{ appeared: [], gone: [], turned: [], heavier: [] },
    },
  },
];

it("every run is told in its order by its engine, one that cannot be read as such, and what one finds otherwise below it", () => {
  render(<RunList runs={runs} nameOf={(id) => id.toUpperCase()} />);
  const [first, second, third] = screen.getAllByRole("list")[0]?.children ?? [];
  expect(first?.textContent).toMatch(/^Engine 0\.1\.0, .*: Works as built$/);
  expect(second?.textContent).toMatch(/^Engine 0\.1\.5, .*: cannot be read here$/);
  if (!(third instanceof HTMLElement)) throw new Error("a third run is listed");
  expect(third.textContent).toMatch(/^Engine 0\.2\.0, .*: Does not work/);
  const lines = within(third)
    .getAllByRole("listitem")
    .map(({ textContent }) => textContent);
  expect(lines).toContain("G1: Works as built before, Does not work now.");
});
