import { canonicalJson, elementsOf } from "@cornerway/schema";
import type { Scheme } from "@cornerway/schema";

/** Keys of what stands otherwise in `after` than in each of the schemes before: element ids, `site`, `basis`. */
export function changedKeys(before: readonly Scheme[], after: Scheme): string[] {
  const now = keyed(after);
  const was = before.map(keyed);
  const keys = new Set([now, ...was].flatMap((each) => [...each.keys()]));
  return [...keys].filter((key) => was.every((each) => each.get(key) !== now.get(key)));
}

/** Each part of a scheme as text, under the key operations name it by. */
export const keyed = (scheme: Scheme): Map<string, string> =>
  new Map([
    ...elementsOf(scheme).map((element) => [element.id, canonicalJson(element)] as const),
    ["site", canonicalJson(scheme.site)],
    ["basis", canonicalJson(scheme.basis)],
  ]);
