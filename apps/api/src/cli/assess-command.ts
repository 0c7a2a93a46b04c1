import { assess, catalogRows } from "@cornerway/engine";
import { contentDigest, digestOf, readScheme, resultDigest } from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { assessmentText } from "./assessment-text.ts";

/** Assesses a scheme: digests, marks and load path as JSON, or as text for people. */
export function assessCommand(name: string, value: unknown, asText: boolean): Answer {
  const read = readScheme(value);
  if (!read.ok) return badInput(name, read.fields);
  const { scheme } = read;
  const assessment = assess(scheme);
  const content = contentDigest(scheme, digestOf(catalogRows));
  const answer = { contentDigest: content, resultDigest: resultDigest(content, assessment), assessment };
  return { out: asText ? assessmentText(scheme, answer) : `${JSON.stringify(answer, null, 2)}\n`, err: "", code: 0 };
}
