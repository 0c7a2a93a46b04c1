import type { CoverageRow } from "@cornerway/schema";
import { coverageTable, effectOnVerdict } from "../checks/coverage.ts";

/** The coverage table as it is printed: what is judged, what no strength run makes, and what that does to the verdict. */
export const coverageReport = (): CoverageRow[] =>
  coverageTable()
    .filter(({ coverage }) => coverage !== "does not arise")
    .map(({ limitState, element, coverage, run, why }) => ({
      ...{ check: limitState, part: element, coverage, run },
      effect: run || coverage === "not covered" ? effectOnVerdict[coverage] : NO_ANSWER,
      ...(why !== undefined && { why }),
    }));

const NO_ANSWER = "no strength run makes this check: no verdict answers for it";
