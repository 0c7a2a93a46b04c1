import type { Assessment, CostBook, Premium, Scheme } from "@cornerway/schema";

export interface ToAssess {
  scheme: Scheme;
  /** Priced by this book; not priced without one. */
  book: CostBook | null;
}
export type AssessQuestion = ToAssess & { turn: number };

export type AssessAnswer =
  { turn: number; assessment: Assessment; premium: Premium | null } | { turn: number; broke: string };
