import type { Assessment, Scheme } from "@cornerway/schema";

export interface AssessQuestion {
  turn: number;
  scheme: Scheme;
}

export type AssessAnswer = { turn: number; assessment: Assessment } | { turn: number; broke: string };
