import type { KnownRun, LivePart, RunForces } from "@cornerway/engine";
import type { Assessment, CheckWorking, Scheme, StrengthReport } from "@cornerway/schema";

export type StrengthQuestion =
  | { kind: "judge"; turn: number; scheme: Scheme }
  | { kind: "working"; id: string }
  /** The forces of one run of a scheme: of the first of `runs` that its plan has, or of the first of the plan. */
  | { kind: "forces"; turn: number; scheme: Scheme; runs: readonly string[] };

/** What may be chosen, in the order of the plan, and the forces of one; null where nothing makes it stand. */
export interface ForcesAnswer {
  run: string;
  runs: readonly string[];
  forces: RunForces | null;
}

/** What the strength thread says: a glance, how far it is, then its answer; workings stay with it and are given one by one. */
export type StrengthWord =
  /** What a few vectors say at once, worst first; it waits for the answer. */
  | { kind: "glance"; turn: number; parts: readonly LivePart[]; vectors: number }
  | { kind: "progress"; turn: number; done: number; of: number }
  | { kind: "judged"; turn: number; assessment: Assessment; report: StrengthReport | null }
  /** What was judged, for threads that are asked of the same drawing next. */
  | { kind: "known"; known: KnownRun }
  | { kind: "broke"; turn: number; why: string }
  | { kind: "working"; id: string; working: CheckWorking | null }
  /** `why` where they could not be worked out. */
  | { kind: "forces"; turn: number; answer: ForcesAnswer | { why: string } };
