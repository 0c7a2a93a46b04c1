import type { Impact } from "@cornerway/engine";
import type { Given, Scheme } from "@cornerway/schema";

/** What edits are held against: the drawing before them, the newest revision, and what people gave on it. */
export interface ImpactGround {
  before: Scheme;
  /** Null while nothing was sent: then there is nothing that could go stale. */
  newest: { letter: string; scheme: Scheme } | null;
  given: Given;
}

/** The ground is told once; every edit after it is held against it. */
export type ImpactQuestion = { kind: "ground"; ground: ImpactGround } | { kind: "edit"; turn: number; after: Scheme };

export type ImpactAnswer = { turn: number; impact: Impact } | { turn: number; broke: string };
