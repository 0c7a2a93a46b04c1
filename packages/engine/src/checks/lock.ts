import type { Certainty } from "@cornerway/schema";
import { openWorking } from "../working/open-working.ts";
import type { Clause, Working } from "../working/working.ts";
import { checkOf, type Check } from "./check.ts";

export type LockForce = "tension" | "shear";
export type LockKind = "twistlock" | "bridge fitting";

/** A tested value in place of the ratings, N, and its source: a breaking force, or a resistance that needs no factor. */
export type TestedLock = { readonly source: string } & (
  { readonly breakingN: number } | { readonly resistanceN: number }
);

/** Breaking forces of stock devices, N; the lowest of each range. Class society cargo-securing rules, from memory. */
const breakingN: Readonly<Record<LockKind, Readonly<Record<LockForce, number | undefined>>>> = {
  twistlock: { tension: 400_000, shear: 420_000 },
  "bridge fitting": { tension: 100_000, shear: undefined },
};

const ratings = { source: "class society cargo-securing rules; ISO 3874", certainty: "memory" } as const;

/** Factor between breaking and allowable: that of the transport ratings' users (29 CFR 1917.71, from memory). */
const factorOnBreaking = 5;

/** Never shown without this. */
export const lockSentence =
  "A stock lock is a transport fitting and no code-listed connector: its rating is a factor on breaking, and its permanent use needs a test or the engineer's own check.";

/** Allowable force of a stock lock, N, allowable-stress level; undefined where the device has no rating for it. */
export function allowableLockForce(kind: LockKind, force: LockForce, tested?: TestedLock): Working | undefined {
  if (tested !== undefined && "resistanceN" in tested) return testedForce(kind, force, tested);
  const breaking = tested?.breakingN ?? breakingN[kind][force];
  if (breaking === undefined) return undefined;
  const certainty: Certainty = tested === undefined ? ratings.certainty : "published";
  const clause: Clause = {
    document: "transport ratings",
    edition: "none",
    place: "breaking force over five",
    certainty: "common practice",
  };
  const working = openWorking(`Allowable ${force} of a ${kind}`, clause);
  working.let("F_b", breaking, "N", "breaking force", certainty, tested?.source ?? ratings.source);
  working.let("n", factorOnBreaking, "1", "factor on breaking", "common practice");
  working.compute("F_a", "F_b/n", "N");
  working.note(lockSentence);
  return working.giving("F_a");
}

function testedForce(
  kind: LockKind,
  force: LockForce,
  { resistanceN, source }: { readonly resistanceN: number; readonly source: string },
): Working {
  const clause: Clause = {
    document: "test report",
    edition: "as entered",
    place: source,
    certainty: "common practice",
  };
  const working = openWorking(`Allowable ${force} of a ${kind}`, clause);
  working.let("F_t", resistanceN, "N", "tested resistance, as entered", "common practice", source);
  working.compute("F_a", "F_t", "N");
  working.note(lockSentence);
  return working.giving("F_a");
}

/** Pull and shear of a stock lock together, as a plain sum of shares: no source gives an interaction. */
export function lockTogether(
  kind: LockKind,
  demand: { readonly tensionN: number; readonly shearN: number },
  tested: Readonly<Partial<Record<LockForce, TestedLock>>> = {},
): readonly Check[] {
  const pull = lock(kind, "tension", demand.tensionN, tested.tension);
  const slide = lock(kind, "shear", demand.shearN, tested.shear);
  if (!pull.ok || !slide.ok) return [pull, slide];
  const working = openWorking("Lock, pull and shear together", pull.working.clause);
  working.let("u_T", pull.utilisation, "1", "share of the pull", "derived");
  working.let("u_V", slide.utilisation, "1", "share of the shear", "derived");
  working.compute("ratio", "u_T + u_V", "1");
  working.let("limit", 1, "1", "limit", "common practice");
  working.note(lockSentence);
  const together = checkOf({ element: "lock", limitState: "lock tension" }, working.against("ratio", "limit"));
  return [pull, slide, together];
}

/** A lock's force at allowable-stress level, N. A device without a rating for it is refused. */
export function lock(kind: LockKind, force: LockForce, demandN: number, tested?: TestedLock): Check {
  const subject = { element: "lock", limitState: `lock ${force}` } as const;
  const allowable = allowableLockForce(kind, force, tested);
  if (allowable === undefined) return { ok: false, ...subject, why: "shape not covered by this check" };
  const working = openWorking(`${allowable.title}: demand`, allowable.clause);
  working.let("F", Math.abs(demandN), "N", "force at allowable-stress level", "derived", "analysis");
  working.take("F_a", allowable);
  working.note(lockSentence);
  return checkOf(subject, working.against("F", "F_a"));
}
