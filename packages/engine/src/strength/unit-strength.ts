import type { Verdict } from "@cornerway/schema";
import type { ElementResult } from "./element-result.ts";
import type { HoldNeeded } from "./holds-needed.ts";
import type { RefusedRun } from "./solve-runs.ts";
import type { StrengthReason } from "./strength-reason.ts";

/** What strength says of one unit, and why. */
export type UnitStrength = {
  readonly unitId: string;
  readonly verdict: Verdict;
  /** Never empty for `needs the engineer` and `does not work`. */
  readonly reasons: readonly StrengthReason[];
};

/** What is known of a unit when its verdict is drawn. */
export type UnitFindings = {
  readonly unitId: string;
  readonly results: readonly ElementResult[];
  readonly holds: readonly HoldNeeded[];
  readonly refused: readonly RefusedRun[];
  readonly runs: number;
  /** Steel is drawn in it: framed openings, posts. */
  readonly withSteel: boolean;
  /** Reasons that come from the building as a whole, or from how this unit is modelled. */
  readonly given: readonly StrengthReason[];
};

/**
 * The verdict of one unit: `does not work` where what is sure of a part is over 1 under every set of assumptions in a run that
 * stands as drawn, whatever else is open of it, or where nothing drawn resists what pulls or pushes it; otherwise `needs the engineer` where anything is
 * open; never more than what solved runs say.
 */
export function unitStrength(findings: UnitFindings): UnitStrength {
  const { unitId, results, withSteel, given } = findings;
  const reasons = [...results.flatMap(partReasons), ...standing(findings), ...holding(findings), ...given];
  const built = withSteel ? "works with steel" : "works as built";
  const verdict = reasons.some(settlesIt)
    ? "does not work"
    : reasons.length > 0
      ? "needs the engineer"
      : results.length === 0
        ? "not checked"
        : built;
  return { unitId, verdict, reasons };
}

/** A storey without a wall that counts does not stand by what is drawn; a unit without one may lean on its neighbours. */
const settlesIt = (reason: StrengthReason): boolean =>
  reason.kind === "over" ||
  reason.kind === "hold not drawn" ||
  (reason.kind === "no lateral wall" && reason.gap.wholeStorey);

/** What stands against a part as drawn; where nothing does, what does once bearings hold what lifts. */
function partReasons(result: ElementResult): StrengthReason[] {
  const drawn = drawnReason(result);
  return drawn === undefined ? heldDownReason(result) : [drawn];
}

function drawnReason(result: ElementResult): StrengthReason | undefined {
  const { id: partId, utilisation, refused, covered, element, limitState, coveredWhy } = result;
  if (refused !== undefined) return { kind: "strength refused", partId, why: refused };
  if (covered === "not covered" || covered === "does not arise")
    return { kind: "not covered", partId, element, limitState, why: coveredWhy ?? "" };
  if (utilisation === undefined) throw new RangeError(`${partId} is neither used nor refused`);
  if (utilisation <= 1 || result.held.length > 0) return undefined;
  if (covered === "bounded") {
    const upper = result.upperBound === undefined ? {} : { upperBound: result.upperBound };
    return { kind: "beyond its bound", partId, utilisation, ...upper };
  }
  const [least, most] = extremes(result);
  return (result.envelope[least] ?? Infinity) <= 1
    ? { kind: "assumption decides", partId, least, most }
    : { kind: "over", partId, utilisation };
}

/** Runs without equilibrium never make a part fail; they say what would, were the connections there. */
function heldDownReason({ id: partId, ifHeldDown }: ElementResult): StrengthReason[] {
  if (ifHeldDown === undefined || (ifHeldDown !== null && ifHeldDown <= 1)) return [];
  return [{ kind: "over if held down", partId, ...(ifHeldDown !== null && { utilisation: ifHeldDown }) }];
}

type SetId = ElementResult["assumptions"];

/** The set of assumptions with the least and the one with the greatest utilisation. */
function extremes({ envelope, assumptions }: ElementResult): [SetId, SetId] {
  const size = (id: SetId): number => envelope[id] ?? Infinity;
  const ids = Object.keys(envelope).filter((id): id is SetId => id in envelope);
  return ids.reduce<[SetId, SetId]>(
    ([least, most], id) => [size(id) < size(least) ? id : least, size(id) > size(most) ? id : most],
    [assumptions, assumptions],
  );
}

/** Runs that stand once something is held are judged so; those that do not stand at all say nothing of any part. */
function standing({ unitId, refused: all, runs }: UnitFindings): StrengthReason[] {
  const refused = all.filter(({ held }) => held === undefined);
  if (refused.length === 0) return [];
  const own = refused.filter(({ refusal }) => refusal.moves.nodes.some((node) => node.startsWith(`${unitId}:`)));
  const [first] = own;
  if (first === undefined) return [{ kind: "runs without equilibrium", runs: refused.length, of: runs }];
  return [{ kind: "moves", runs: own.length, of: runs, first: first.run.id, words: first.refusal.refused }];
}

const holding = ({ holds }: UnitFindings): StrengthReason[] => holds.map((hold) => ({ kind: "hold not drawn", hold }));
