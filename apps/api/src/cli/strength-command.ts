import { hazardRefusalText, strength } from "@cornerway/engine";
import { readScheme, schemeFaults } from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { readSiteRequest } from "./site-request.ts";
import { strengthText } from "./strength-text.ts";

/** Strength of a scheme at a site as JSON, or as text for people. No verdict of `assess` comes from it. */
export function strengthCommand(
  scheme: { readonly name: string; readonly value: unknown },
  site: { readonly name: string; readonly value: unknown },
  asText: boolean,
): Answer {
  const read = readScheme(scheme.value);
  if (!read.ok) return badInput(scheme.name, read.fields);
  const faults = schemeFaults(read.scheme);
  if (faults.length > 0) return badInput(scheme.name, faults);
  if (read.scheme.containers.length === 0)
    return badInput(scheme.name, [{ pointer: "/containers", detail: "there is no container" }]);
  const request = readSiteRequest(site.value);
  if (!request.ok) return badInput(site.name, request.places);
  const answer = strength(read.scheme, request.request);
  if (!answer.accepted)
    return badInput(
      site.name,
      answer.refusals.map((refusal) => ({ pointer: `/hazards/${refusal.hazard}`, detail: hazardRefusalText(refusal) })),
    );
  return { out: asText ? strengthText(read.scheme, answer) : `${JSON.stringify(answer, null, 2)}\n`, err: "", code: 0 };
}
