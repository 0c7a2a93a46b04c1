import { elementsOf, type Scheme } from "@cornerway/schema";
import { sameDrawn } from "../same-drawn.ts";

/** Ids of the elements `after` adds or changes against `before`, and of those it takes out. */
export type SchemeChanges = { added: ReadonlySet<string>; changed: ReadonlySet<string>; removed: ReadonlySet<string> };

export function schemeChanges(before: Scheme, after: Scheme): SchemeChanges {
  const was = elementsById(before);
  const is = elementsById(after);
  const added = [...is.keys()].filter((id) => !was.has(id));
  const changed = [...is].filter(([id, element]) => was.has(id) && !sameDrawn(was.get(id), element)).map(([id]) => id);
  return {
    added: new Set(added),
    changed: new Set(changed),
    removed: new Set([...was.keys()].filter((id) => !is.has(id))),
  };
}

const elementsById = (scheme: Scheme): Map<string, object> =>
  new Map(elementsOf(scheme).map((element) => [element.id, element]));
