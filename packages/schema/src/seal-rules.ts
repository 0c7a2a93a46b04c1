import type { Assessment } from "./assessment.ts";
import type { SealHindrance } from "./seal.ts";
import type { StrengthReport } from "./strength-report.ts";

/** What an issue for seal depends on. */
export interface SealedOn {
  result: Assessment;
  report: StrengthReport | null;
  /** Numbers of the conditions that nobody has closed. */
  openConditions: readonly number[];
  /** Marks on which the engineer's own disposition stands. */
  disposed: ReadonlySet<string>;
  /** Elements of which survey or site have found something else than the revision draws; none unless said. */
  found?: readonly string[];
  /** Values from memory that enter the answer. */
  memory: readonly string[];
  /** Those a named engineer has held against the published text. */
  confirmed: ReadonlySet<string>;
}

const open: ReadonlySet<string> = new Set(["does not work", "not checked", "needs the engineer"]);
const ofStrength: ReadonlySet<string> = new Set(["overstressed", "strength-open"]);

/**
 * What stands in the way of issuing a revision for seal; nothing where it may be issued. A disposition lets its own mark
 * pass, and the parts of the element whose strength that mark is on; nothing lets an open condition or an unconfirmed value pass.
 */
export function sealHindrances({
  result,
  report,
  openConditions,
  found = [],
  disposed,
  memory,
  confirmed,
}: SealedOn): SealHindrance[] {
  const excused = new Set(
    result.marks
      .filter(({ id, fact }) => disposed.has(id) && ofStrength.has(fact.kind))
      .flatMap((mark) => mark.elements),
  );
  const marks = result.marks.filter(({ id, verdict }) => open.has(verdict) && !disposed.has(id));
  const beyond = (report?.results ?? []).flatMap(({ ownerId, part, utilisation }) =>
    utilisation !== null && utilisation > 1 && !excused.has(ownerId) ? [{ ownerId, part, utilisation }] : [],
  );
  const judged = result.scope === "load path, and strength under all loads";
  return [
    ...(judged ? [] : [{ why: "strength not judged under all loads" } as const]),
    ...marks.map(({ id: markId, verdict }) => ({ why: "mark", markId, verdict }) as const),
    ...beyond.map((part) => ({ why: "beyond its limit", ...part }) as const),
    ...found.map((elementId) => ({ why: "found otherwise", elementId }) as const),
    ...openConditions.map((number) => ({ why: "condition open", number }) as const),
    ...memory.filter((value) => !confirmed.has(value)).map((value) => ({ why: "from memory", value }) as const),
  ];
}
