import type { KnownRun } from "@cornerway/engine";
import type { CostBook, RemedyList, RemedyStep, Scheme } from "@cornerway/schema";

/**
 * What is asked of the thread that searches remedies, with the full run of the scheme where the page has it. It is ended from
 * outside when nobody waits any more.
 */
export type RemedyQuestion = { turn: number; scheme: Scheme; markId: string; book: CostBook; known?: KnownRun };

export type RemedyWord =
  | { kind: "step"; turn: number; step: RemedyStep }
  | { kind: "listed"; turn: number; list: RemedyList }
  | { kind: "broke"; turn: number; why: string };
