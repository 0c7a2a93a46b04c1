import type { Scheme } from "./scheme.ts";
import { collectionNames, referencesOf, tagOf, type Reference } from "./scheme-collections.ts";

export type SchemeFault = { pointer: string; detail: string };

/**
 * What no single element shows: an id or a label given twice, a part of something that is not there. Operations keep a
 * scheme free of these; a file may hold them. Pointers as in RFC 6901, at most one fault an element.
 */
export function schemeFaults(scheme: Scheme): SchemeFault[] {
  const lists = new Map(collectionNames.map((name) => [name, new Set(scheme[name].map(({ id }) => id))]));
  const ids = new Map<string, string>();
  const labels = new Map<string, string>();
  return partsOf(scheme).flatMap(({ pointer, id, label, references }) => {
    const twin = firstHolder(ids, id, pointer);
    if (twin !== undefined) return [{ pointer: `${pointer}/id`, detail: `the id of ${twin} too` }];
    const sameLabel = label === undefined ? undefined : firstHolder(labels, label, pointer);
    if (sameLabel !== undefined) return [{ pointer: `${pointer}/tag`, detail: `the label of ${sameLabel} too` }];
    const missing = references.find((reference) => !reference.among.some((name) => lists.get(name)?.has(reference.id)));
    return missing === undefined
      ? []
      : [{ pointer: `${pointer}/${missing.field}`, detail: `there is no ${kindsOf(missing)} ${missing.id}` }];
  });
}

type Part = { pointer: string; id: string; label: string | undefined; references: Reference[] };

const partsOf = (scheme: Scheme): Part[] =>
  collectionNames.flatMap((name) =>
    scheme[name].map((element, at) => ({
      pointer: `/${name}/${at}`,
      id: element.id,
      label: tagOf(element),
      references: referencesOf(element),
    })),
  );

const kindsOf = ({ among }: Reference) => among.map((name) => name.slice(0, -1)).join(" or ");

/** Who holds a key already; undefined when it is now the caller's. */
function firstHolder(holders: Map<string, string>, key: string, pointer: string): string | undefined {
  const holder = holders.get(key);
  if (holder === undefined) holders.set(key, pointer);
  return holder;
}
