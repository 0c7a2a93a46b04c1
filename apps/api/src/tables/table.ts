import {
  worstVerdict,
  type Assessment,
  type RecordEntry,
  type Scheme,
  type StrengthProof,
  type SurveyNow,
  type Verdict,
} from "@cornerway/schema";
import type { Cell } from "../description/csv.ts";

/** What every table is made from: one revision with its recorded answer, and the containers offered for it. */
export interface TableSource {
  letter: string;
  contentDigest: string;
  scheme: Scheme;
  assessment: Assessment;
  /** Null where strength was not judged. */
  proof: StrengthProof | null;
  survey: SurveyNow;
  /** The record as whoever asks may see it. */
  entries: readonly RecordEntry[];
}

/** Names carry their units; mm, kg, N and kN. */
export interface Table {
  head: readonly string[];
  rows: readonly (readonly Cell[])[];
}

/** A length as it is stored, in mm. */
export const mm = (um: number): number => um / 1000;

/** To so many digits after the point. */
export const to = (value: number, digits: number): number => Math.round(value * 10 ** digits) / 10 ** digits;

/** The worst verdict of the marks on an element; without any it works as built. */
export const verdictOn = ({ marks }: Assessment, elementId: string): Verdict =>
  worstVerdict([
    "works as built",
    ...marks.filter(({ elements }) => elements.includes(elementId)).map(({ verdict }) => verdict),
  ]);
