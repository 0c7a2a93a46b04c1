import canonicalize from "canonicalize";

/** Canonical JSON of a value, RFC 8785. Throws on what JSON cannot hold (NaN, lone surrogates, cycles, undefined). */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError("canonicalJson: the value has no JSON form");
  return text;
}
