import type { Scheme } from "./scheme.ts";

export type SchemeFault = { pointer: string; detail: string };

/**
 * What no single element shows: an id or a label given twice, a part of a unit that is not there. Operations keep a
 * scheme free of these; a file may hold them. Pointers as in RFC 6901, at most one fault an element.
 */
export function schemeFaults(scheme: Scheme): SchemeFault[] {
  const units = new Set(scheme.containers.map(({ id }) => id));
  const ids = new Map<string, string>();
  const labels = new Map<string, string>();
  return partsOf(scheme).flatMap(({ pointer, id, label, unitId }) => {
    const twin = firstHolder(ids, id, pointer);
    if (twin !== undefined) return [{ pointer: `${pointer}/id`, detail: `the id of ${twin} too` }];
    const sameLabel = label === undefined ? undefined : firstHolder(labels, label, pointer);
    if (sameLabel !== undefined) return [{ pointer: `${pointer}/tag`, detail: `the label of ${sameLabel} too` }];
    if (unitId === undefined || units.has(unitId)) return [];
    return [{ pointer: `${pointer}/containerId`, detail: `there is no container ${unitId}` }];
  });
}

type Part = { pointer: string; id: string; label?: string; unitId?: string };

const partsOf = ({ containers, openings, posts, pads, loads }: Scheme): Part[] => [
  ...containers.map(({ id, tag: label }, at) => ({ pointer: `/containers/${at}`, id, label })),
  ...openings.map(({ id, tag: label, containerId: unitId }, at) => ({ pointer: `/openings/${at}`, id, label, unitId })),
  ...posts.map(({ id, tag: label }, at) => ({ pointer: `/posts/${at}`, id, label })),
  ...pads.map(({ id, tag: label }, at) => ({ pointer: `/pads/${at}`, id, label })),
  ...loads.map(({ id, containerId: unitId }, at) => ({ pointer: `/loads/${at}`, id, unitId })),
];

/** Who holds a key already; undefined when it is now the caller's. */
function firstHolder(holders: Map<string, string>, key: string, pointer: string): string | undefined {
  const holder = holders.get(key);
  if (holder === undefined) holders.set(key, pointer);
  return holder;
}
