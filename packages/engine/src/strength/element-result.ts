import type { Certainty } from "@cornerway/schema";
import { steels } from "../catalog/materials.ts";
import { governing, type Check } from "../checks/check.ts";
import { coverageOf, type Coverage } from "../checks/coverage.ts";
import type { CheckedElement, LimitState } from "../checks/limit-state.ts";
import type { Refusal } from "../working/resistance.ts";
import type { Working } from "../working/working.ts";
import type { AssumptionId } from "./assumption-sets.ts";
import { governs, type PartWorst } from "./screen.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** A square pad, mm. */
export type PadSize = { readonly sideMm: number; readonly depthMm: number };

/** What governs one part of the building, with its working. */
export type ElementResult = {
  readonly id: string;
  readonly ownerId: string;
  readonly element: CheckedElement;
  readonly place: string;
  readonly limitState: LimitState;
  /** Absent where a strength that acts is refused; then `refused` says why. */
  readonly utilisation?: number;
  readonly refused?: Refusal;
  /** Between two bounds: the utilisation of the upper one. */
  readonly upperBound?: number;
  /** The force that presses or pulls it, where it is one alone, N. */
  readonly forceN?: number;
  /** For a pad that is too small: the least one under which all its checks stand for the forces of this one. */
  readonly wouldDo?: PadSize;
  /** The same at a yield of 343 MPa, where the steel has no record. */
  readonly ifProved?: number;
  readonly governingRun: string;
  readonly assumptions: AssumptionId;
  /** Units and posts that had to be held for any run to stand; empty where one stands as drawn. */
  readonly held: readonly string[];
  /** Greatest utilisation of runs that stand as drawn in each set of assumptions solved; null where refused. */
  readonly envelope: Readonly<Partial<Record<AssumptionId, number | null>>>;
  /** Greatest of runs that stand only if bearings hold what lifts; null where refused, absent where there is none. */
  readonly ifHeldDown?: number | null;
  readonly covered: Coverage;
  /** The part of which it tells what is sure; then it is checked. */
  readonly sureOf?: string;
  readonly coveredWhy?: string;
  readonly certainty?: Certainty;
  readonly working?: Working;
};

/** The full working of what governs a part. */
export const elementResult = (worst: PartWorst): ElementResult => resultUnder(governs(worst).solved, worst);

/** A part and what is known of it over all runs. */
type Screening = {
  readonly part: StrengthPart;
  readonly envelope: Iterable<readonly [AssumptionId, number]>;
  readonly heldDown?: { readonly use: number };
};

/** The full working of a part under the run that governs it: every limit state in that run, and the one that decides. */
export function resultUnder(solved: SolvedRun, { part, envelope, heldDown }: Screening): ElementResult {
  const screened = part.decide(solved);
  const { id, ownerId, element, place, said, sureOf } = part;
  const decides = governing(screened.checks());
  const limitState = decides?.limitState ?? screened.limitState;
  const coverage = coverageOf(limitState, element);
  const proved = decides?.ok === true ? provedUtilisation(screened.checks(steels.weathering), limitState) : undefined;
  return {
    id,
    ownerId,
    element,
    place,
    limitState,
    ...(decides?.ok === true && {
      utilisation: decides.utilisation,
      certainty: decides.working.certainty,
      working: said === undefined ? decides.working : { ...decides.working, notes: [...decides.working.notes, said] },
    }),
    ...(decides?.ok === false && { refused: decides.why }),
    ...(screened.upper !== undefined && Number.isFinite(screened.upper) && { upperBound: screened.upper }),
    ...(screened.forceN !== undefined && { forceN: screened.forceN }),
    ...(proved !== undefined && !added.includes(element) && { ifProved: proved }),
    governingRun: solved.run.id,
    assumptions: solved.set.id,
    held: solved.held,
    envelope: Object.fromEntries([...envelope].map(([set, value]) => [set, finite(value)])),
    ...(heldDown && { ifHeldDown: finite(heldDown.use) }),
    covered: sureOf === undefined ? coverage.coverage : "checked",
    ...(sureOf !== undefined && { sureOf }),
    ...(coverage.why !== undefined && { coveredWhy: coverage.why }),
  };
}

/** Bought steel is what it is; pads are no steel. */
const added: readonly CheckedElement[] = ["added post", "added beam", "jamb", "pad", "corner fitting"];

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

function provedUtilisation(checks: readonly Check[], limitState: LimitState): number | undefined {
  const same = checks.find((check) => check.limitState === limitState);
  return same?.ok === true ? same.utilisation : undefined;
}
