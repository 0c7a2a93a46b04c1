import { z } from "zod";
import { SolvedForces } from "./solved-forces.ts";
import { PadSize } from "./strength-fact.ts";
import { Certainty } from "./verdict.ts";
import { CheckWorking } from "./working.ts";

const Clause = z.strictObject({
  document: z.string(),
  edition: z.string(),
  place: z.string(),
  certainty: Certainty,
});

/** Names a working of the answer: printable, as part of an address it is escaped. */
export const WorkingId = z
  .string()
  .min(1)
  .max(400)
  .refine((id) => id.isWellFormed() && !/\p{Cc}/u.test(id), "holds a character that no name of a working has")
  .meta({ id: "WorkingId" });

/** How far the engine judges a limit state of an element. */
export const coverages = ["checked", "bounded", "not covered", "does not arise"] as const;

/** What governs one part of the building. Its working is kept under the same id. */
export const CheckResult = z
  .strictObject({
    id: WorkingId,
    /** The unit, post or pad it belongs to. */
    ownerId: z.string(),
    part: z.string(),
    place: z.string(),
    check: z.string(),
    /** Null where a strength that acts cannot be stated; then `refused` says why. */
    utilisation: z.number().nullable(),
    refused: z.string().exactOptional(),
    /** The same at 343 MPa, if proved; only where the steel has no record. */
    ifProved: z.number().exactOptional(),
    /** Utilisation of the upper of two bounds. */
    upperBound: z.number().exactOptional(),
    /** The least square pad under which it would stand, mm. */
    wouldDo: PadSize.exactOptional(),
    /** Combination and cases that govern, and the assumptions they were solved under. */
    run: z.string(),
    assumptions: z.string(),
    /** Units and posts that had to be held for any run to stand. */
    held: z.array(z.string()),
    /** Greatest utilisation under each set of assumptions, of runs that stand as drawn; null where refused. */
    envelope: z.array(z.strictObject({ assumptions: z.string(), utilisation: z.number().nullable() })),
    /** Greatest of runs that stand only if bearings hold what lifts; null where refused. */
    ifHeldDown: z.number().nullable().exactOptional(),
    coverage: z.enum(coverages),
    /** Both absent where there is no working. */
    clause: Clause.exactOptional(),
    certainty: Certainty.exactOptional(),
  })
  .meta({ id: "CheckResult" });
export type CheckResult = z.infer<typeof CheckResult>;

/** One limit state of one element: how far it is judged, whether a strength run makes the check, what that does to the verdict. */
export const CoverageRow = z
  .strictObject({
    check: z.string(),
    part: z.string(),
    coverage: z.enum(coverages),
    run: z.boolean(),
    effect: z.string(),
    why: z.string().exactOptional(),
  })
  .meta({ id: "CoverageRow" });
export type CoverageRow = z.infer<typeof CoverageRow>;

export const loadGroups = ["dead", "imposed", "roof", "snow", "wind", "earthquake"] as const;

/** One load as it was worked out; its working is kept under the same id. */
export const LoadDerivation = z
  .strictObject({
    id: WorkingId,
    group: z.enum(loadGroups),
    title: z.string(),
    symbol: z.string(),
    value: z.number(),
    unit: z.string(),
    clause: Clause,
    certainty: Certainty,
  })
  .meta({ id: "LoadDerivation" });
export type LoadDerivation = z.infer<typeof LoadDerivation>;

/**
 * What stands behind the verdicts of strength, worst first: every part with its governing check, what is covered and what
 * is not, the loads of the place, combinations and cases. Forces in kN in site axes, z up.
 */
export const StrengthReport = z
  .strictObject({
    results: z.array(CheckResult),
    coverage: z.array(CoverageRow),
    loads: z.array(LoadDerivation),
    /** The sum of each action case; moved supports have none. */
    cases: z.array(
      z.strictObject({ id: z.string(), symbol: z.string(), xKn: z.number(), yKn: z.number(), zKn: z.number() }),
    ),
    combinations: z.array(
      z.strictObject({ level: z.enum(["strength", "allowable"]), text: z.string(), clause: Clause, runs: z.int() }),
    ),
    /** Limits of the wind procedure, each tried; where one does not hold the enclosing box stands in. */
    windLimits: z.array(
      z.strictObject({
        limit: z.string(),
        holds: z.boolean(),
        value: z.number(),
        most: z.number(),
        unit: z.string(),
        clause: Clause,
      }),
    ),
    /** Actions the codes know that are not worked out. */
    actionsLeftOut: z.array(z.string()),
    /** Runs that do not stand as drawn, told together where the same moves and the same has to be held. */
    withoutEquilibrium: z.array(
      z.strictObject({
        assumptions: z.string(),
        words: z.string(),
        /** What had to be held for it to stand; absent where nothing made it stand. */
        held: z.array(z.string()).exactOptional(),
        first: z.string(),
        runs: z.int(),
      }),
    ),
    /** As the service records them; absent in what a page works out for itself, and in answers recorded before they were kept. */
    forces: SolvedForces.exactOptional(),
  })
  .meta({ id: "StrengthReport" });
export type StrengthReport = z.infer<typeof StrengthReport>;

/** One working of an answer. */
export const KeptWorking = z.strictObject({ id: WorkingId, working: CheckWorking }).meta({ id: "KeptWorking" });
export type KeptWorking = z.infer<typeof KeptWorking>;

/** All that strength says beside the marks: what was found, and the workings it rests on. */
export const StrengthProof = z
  .strictObject({ report: StrengthReport, workings: z.array(KeptWorking) })
  .meta({ id: "StrengthProof" });
export type StrengthProof = z.infer<typeof StrengthProof>;
