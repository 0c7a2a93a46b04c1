import { assess, catalogRows } from "@cornerway/engine";
import { contentDigest, digestOf, readScheme, resultDigest, type Scheme } from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { assessmentText } from "./assessment-text.ts";

/** Assesses a scheme: digests, marks and load path as JSON, or as text for people. */
export function assessCommand(name: string, value: unknown, asText: boolean): Answer {
  const read = readScheme(value);
  if (!read.ok) return badInput(name, read.fields);
  const { scheme } = read;
  const loose = looseReferences(scheme);
  if (loose.length > 0) return badInput(name, loose);
  const assessment = assess(scheme);
  const content = contentDigest(scheme, digestOf(catalogRows));
  const answer = { contentDigest: content, resultDigest: resultDigest(content, assessment), assessment };
  return { out: asText ? assessmentText(scheme, answer) : `${JSON.stringify(answer, null, 2)}\n`, err: "", code: 0 };
}

/** Openings and loads of containers that are not there. */
function looseReferences({ containers, openings, loads }: Scheme): { pointer: string; detail: string }[] {
  const known = new Set(containers.map(({ id }) => id));
  const loose = (collection: string, parts: readonly { containerId: string }[]) =>
    parts.flatMap(({ containerId }, at) =>
      known.has(containerId)
        ? []
        : [{ pointer: `/${collection}/${at}/containerId`, detail: `there is no container ${containerId}` }],
    );
  return [...loose("openings", openings), ...loose("loads", loads)];
}
