import type { LivePart } from "@cornerway/engine";
import type { Assessment, CheckWorking, Scheme, StrengthReport } from "@cornerway/schema";

export type StrengthQuestion = { kind: "judge"; turn: number; scheme: Scheme } | { kind: "working"; id: string };

/** What the strength thread says: a glance, how far it is, then its answer; workings stay with it and are given one by one. */
export type StrengthWord =
  /** What a few vectors say at once, worst first; it waits for the answer. */
  | { kind: "glance"; turn: number; parts: readonly LivePart[]; vectors: number }
  | { kind: "progress"; turn: number; done: number; of: number }
  | { kind: "judged"; turn: number; assessment: Assessment; report: StrengthReport | null }
  | { kind: "broke"; turn: number; why: string }
  | { kind: "working"; id: string; working: CheckWorking | null };
