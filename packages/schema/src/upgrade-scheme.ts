import { emptyScheme, Scheme, schemeVersion } from "./scheme.ts";
import { schemeFaults } from "./scheme-faults.ts";

export type ReadScheme =
  | { ok: true; scheme: Scheme }
  | { ok: false; code: "version-unknown" | "body-invalid"; fields: { pointer: string; detail: string }[] };

/** One step per version: takes a scheme of version n, returns one of n + 1. */
const steps: Record<number, (older: Record<string, unknown>) => Record<string, unknown>> = {
  1: (older) => ({ ...joinsAndBasis, ...older, version: 2 }),
};

/** What version 2 added, as it stands in a scheme that has none of it. */
const { freeLoads, uses, beams, seats, ties, locks, overrides, basis } = emptyScheme;
const joinsAndBasis = { freeLoads, uses, beams, seats, ties, locks, overrides, basis };

/** Reads a scheme of this or an older version; never throws on bad input, says where and what. */
export function readScheme(value: unknown): ReadScheme {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return invalid("", "a scheme is a JSON object");
  let current: Record<string, unknown> = { ...value };
  while (current["version"] !== schemeVersion) {
    const step = typeof current["version"] === "number" ? steps[current["version"]] : undefined;
    if (step === undefined) {
      const detail = `version ${JSON.stringify(current["version"])} is not known here; this reads versions up to ${schemeVersion}`;
      return { ok: false, code: "version-unknown", fields: [{ pointer: "/version", detail }] };
    }
    current = step(current);
  }
  const parsed = Scheme.safeParse(current);
  if (parsed.success) return whole(parsed.data);
  return {
    ok: false,
    code: "body-invalid",
    fields: parsed.error.issues.map((issue) => ({ pointer: pointerTo(issue.path), detail: issue.message })),
  };
}

/** A path as a JSON pointer, RFC 6901. */
export const pointerTo = (path: readonly PropertyKey[]): string =>
  path.map((part) => `/${String(part).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");

function whole(scheme: Scheme): ReadScheme {
  const fields = schemeFaults(scheme);
  return fields.length === 0 ? { ok: true, scheme } : { ok: false, code: "body-invalid", fields };
}

const invalid = (pointer: string, detail: string): ReadScheme => ({
  ok: false,
  code: "body-invalid",
  fields: [{ pointer, detail }],
});
