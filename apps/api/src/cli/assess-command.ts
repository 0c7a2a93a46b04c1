import { assess, assessStrength, catalogRows, hazardRefusalText } from "@cornerway/engine";
import { contentDigest, digestOf, readScheme, resultDigest, type Assessment, type Scheme } from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { assessmentText } from "./assessment-text.ts";

export type AssessOptions = { readonly asText: boolean; readonly withStrength: boolean };

/** Assesses a scheme: digests, marks and load path as JSON, or as text for people; with strength where that is asked for. */
export function assessCommand(name: string, value: unknown, { asText, withStrength }: AssessOptions): Answer {
  const read = readScheme(value);
  if (!read.ok) return badInput(name, read.fields);
  const { scheme } = read;
  const assessed = withStrength ? strongly(name, scheme) : { ok: true as const, assessment: assess(scheme) };
  if (!assessed.ok) return assessed.answer;
  const { assessment } = assessed;
  const content = contentDigest(scheme, digestOf(catalogRows));
  const answer = { contentDigest: content, resultDigest: resultDigest(content, assessment), assessment };
  return { out: asText ? assessmentText(scheme, answer) : `${JSON.stringify(answer, null, 2)}\n`, err: "", code: 0 };
}

type Assessed =
  { readonly ok: true; readonly assessment: Assessment } | { readonly ok: false; readonly answer: Answer };

function strongly(name: string, scheme: Scheme): Assessed {
  if (scheme.containers.length === 0)
    return { ok: false, answer: badInput(name, [{ pointer: "/containers", detail: "there is no container" }]) };
  const judged = assessStrength(scheme);
  if (judged.accepted) return { ok: true, assessment: judged.assessment };
  const places = judged.refusals.map((refusal) => ({
    pointer: `/basis/hazards/${refusal.hazard}`,
    detail: hazardRefusalText(refusal),
  }));
  return { ok: false, answer: badInput(name, places) };
}
