import { hazardRefusalText, strength } from "@cornerway/engine";
import { readScheme, schemeFaults } from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { readSiteRequest } from "./site-request.ts";
import { strengthText } from "./strength-text.ts";

/**
 * Strength of a scheme on its own design basis, or tried at another site, as JSON or as text for people. No verdict of
 * `assess` comes from it.
 */
export function strengthCommand(
  scheme: { readonly name: string; readonly value: unknown },
  site: { readonly name: string; readonly value: unknown } | undefined,
  asText: boolean,
): Answer {
  const read = readScheme(scheme.value);
  if (!read.ok) return badInput(scheme.name, read.fields);
  const faults = schemeFaults(read.scheme);
  if (faults.length > 0) return badInput(scheme.name, faults);
  if (read.scheme.containers.length === 0)
    return badInput(scheme.name, [{ pointer: "/containers", detail: "there is no container" }]);
  const tried = site === undefined ? undefined : readSiteRequest(site.value);
  if (site !== undefined && tried?.ok === false) return badInput(site.name, tried.places);
  const answer = strength({ ...read.scheme, basis: { ...read.scheme.basis, ...(tried?.ok === true && tried.basis) } });
  if (!answer.accepted) {
    const [name, under] = site === undefined ? [scheme.name, "/basis/hazards"] : [site.name, "/hazards"];
    return badInput(
      name,
      answer.refusals.map((refusal) => ({ pointer: `${under}/${refusal.hazard}`, detail: hazardRefusalText(refusal) })),
    );
  }
  return { out: asText ? strengthText(read.scheme, answer) : `${JSON.stringify(answer, null, 2)}\n`, err: "", code: 0 };
}
