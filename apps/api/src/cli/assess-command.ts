import { assess, assessForRecord, catalogRows, hazardRefusalText } from "@cornerway/engine";
import {
  contentDigest,
  digestOf,
  readScheme,
  resultDigest,
  type Assessment,
  type Scheme,
  type StrengthProof,
} from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { assessmentText } from "./assessment-text.ts";

export type AssessOptions = { readonly asText: boolean; readonly loadPathOnly: boolean };

/**
 * Assesses a scheme as the service does: digests, marks, load path and strength with its report and workings as JSON, or
 * as text for people. `loadPathOnly` leaves strength out, which takes most of the time.
 */
export function assessCommand(name: string, value: unknown, { asText, loadPathOnly }: AssessOptions): Answer {
  const read = readScheme(value);
  if (!read.ok) return badInput(name, read.fields);
  const { scheme } = read;
  const assessed: Assessed = loadPathOnly ? { ok: true, assessment: assess(scheme) } : strongly(name, scheme);
  if (!assessed.ok) return assessed.answer;
  const { assessment, proof } = assessed;
  const content = contentDigest(scheme, digestOf(catalogRows));
  const digests = { contentDigest: content, resultDigest: resultDigest(content, assessment, proof) };
  const answer = { ...digests, assessment, ...(proof && { proof }) };
  return { out: asText ? assessmentText(scheme, answer) : `${JSON.stringify(answer, null, 2)}\n`, err: "", code: 0 };
}

type Assessed =
  | { readonly ok: true; readonly assessment: Assessment; readonly proof?: StrengthProof }
  | { readonly ok: false; readonly answer: Answer };

function strongly(name: string, scheme: Scheme): Assessed {
  if (scheme.containers.length === 0)
    return { ok: false, answer: badInput(name, [{ pointer: "/containers", detail: "there is no container" }]) };
  const judged = assessForRecord(scheme);
  if (judged.accepted) return { ok: true, assessment: judged.assessment, proof: judged.proof };
  const places = judged.refusals.map((refusal) => ({
    pointer: `/basis/hazards/${refusal.hazard}`,
    detail: hazardRefusalText(refusal),
  }));
  return { ok: false, answer: badInput(name, places) };
}
