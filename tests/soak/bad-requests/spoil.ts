import fc from "fast-check";

const deep = (levels: number, leaf: unknown): unknown => {
  let value = leaf;
  for (let level = 0; level < levels; level += 1) value = level % 2 === 0 ? { a: value } : [value];
  return value;
};

/** What no honest sender sends: each has broken some service or database. */
export const odd: readonly unknown[] = [
  ...[null, "", "\u0000", "a\u0000b", "\ud800", "x\udfff y", "\u202e\u0007", "\ufeff", "%00", "🏗".repeat(50)],
  ...[-0, -1, 1e308, -1e308, 2 ** 31, 2 ** 32, 2 ** 53, 2 ** 63, 1e-320, 0.1, "NaN", "Infinity", "1e9999"],
  ...[true, [], {}, [[]], [null], "[object Object]", "undefined", "__proto__", "constructor"],
  ...[
    "'; drop table person; --",
    '" or 1=1',
    "${7*7}",
    "{{7*7}}",
    "../../../etc/passwd",
    "\\..\\..\\x",
    "<script>x</script>",
  ],
  ...["A".repeat(5_000), "é".repeat(2_001), deep(60, 1), deep(600, "x")],
  ...["00000000-0000-0000-0000-000000000000", "ffffffff-ffff-ffff-ffff-ffffffffffff", "not-a-uuid", "AA", "a", "ZZZ"],
  ...["2026-02-30T00:00:00Z", "9999-12-31T23:59:60Z", "0000-00-00", "http://127.0.0.1:1/", "file:///etc/passwd"],
];

/** A value with one place of it made odd, taken away, doubled, or with a key beside it that is none. */
export const spoiled = (value: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc
    .tuple(value, fc.constantFrom(...odd), fc.nat(1_000), fc.constantFrom("odd", "gone", "key", "proto", "double"))
    .map(([whole, one, at, how]) => spoil(whole, one, at, how));

type How = "odd" | "gone" | "key" | "proto" | "double";

function spoil(value: unknown, one: unknown, at: number, how: How): unknown {
  const isParent = typeof value === "object" && value !== null && Object.keys(value).length > 0;
  if (!isParent) return how === "double" ? [value, value] : one;
  const keys = Object.keys(value);
  const key = keys[at % keys.length] ?? "";
  const copy: Record<string, unknown> | unknown[] = Array.isArray(value) ? [...value] : { ...value };
  const set = (name: string, to: unknown) =>
    Object.defineProperty(copy, name, { value: to, enumerable: true, configurable: true, writable: true });
  const deeper = Math.floor(at / keys.length);
  if (deeper % 3 !== 0) set(key, spoil(Reflect.get(copy, key), one, deeper, how));
  else if (how === "gone") Reflect.deleteProperty(copy, key);
  else if (how === "key") set("unknown", one);
  else if (how === "proto") set(at % 2 === 0 ? "__proto__" : "constructor", { prototype: one, roles: ["owner"] });
  else if (how === "double") set(key, [Reflect.get(copy, key), Reflect.get(copy, key)]);
  else set(key, one);
  return copy;
}
