import { readFileSync } from "node:fs";
import { loadAnswers } from "../../../packages/engine/test/codes-loads/support/load-answers.ts";
import type { PublishedCase } from "../../../packages/engine/test/codes-steel/support/published-steel.ts";
import type { VerificationFamily } from "../verification-case.ts";

const file = new URL("../../../shared/published/loads.json", import.meta.url);
const published: readonly PublishedCase[] = JSON.parse(readFileSync(file, "utf8"));

/** Wind, snow, earthquake, imposed loads and ground against printed tables, open examples and hand arithmetic. */
export const loads: VerificationFamily = {
  id: "loads",
  title: "Actions",
  about:
    "Velocity pressures, pressures on a box, snow with drift, seismic coefficients, imposed loads and presumptive ground, each against the printed table or an open worked example.",
  cases: published.map(({ id, case: what, source, certainty, reference, unit, tolerance, departs }) => ({
    ...{ id, what, source, certainty, reference, unit },
    allowed: { relative: tolerance },
    ...(departs !== undefined && { departs }),
    ours: () => loadAnswers[id]?.() ?? Number.NaN,
  })),
};
