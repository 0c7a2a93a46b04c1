import type { BeamSupport } from "./beam-supports.ts";
import type { Footing } from "./post-footing.ts";

/** Added posts and beams with what each rests on; only what leads to the ground, and never on a way back to itself. */
export type Carrying = {
  /** Posts and beams that lead to the ground, by id. */
  readonly carrying: ReadonlySet<string>;
  /** What holds up each beam that does. */
  readonly supports: ReadonlyMap<string, readonly BeamSupport[]>;
};

type Footings = ReadonlyMap<string, Footing>;
type Supports = ReadonlyMap<string, readonly BeamSupport[]>;

/**
 * Posts lead to the ground on a pad, the ground, a fitting, a top rail, or a post or beam that does; beams by at least
 * one support that does.
 */
export function carryingSteel(footings: Footings, drawn: Supports): Carrying {
  const supports = withoutLoops(footings, drawn);
  const carrying = new Set<string>();
  const leads = (id: string) => carrying.has(id);
  const waiting = new Set([...footings.keys(), ...supports.keys()]);
  for (let found = -1; found !== carrying.size;) {
    found = carrying.size;
    for (const id of waiting)
      if (postLeads(footings.get(id), leads) || (supports.get(id) ?? []).some((one) => holdsUp(one, leads))) {
        carrying.add(id);
        waiting.delete(id);
      }
  }
  const held = [...supports].filter(([id]) => carrying.has(id));
  return { carrying, supports: new Map(held.map(([id, own]) => [id, own.filter((one) => holdsUp(one, leads))])) };
}

function postLeads(footing: Footing | undefined, leads: (id: string) => boolean): boolean {
  if (footing === undefined) return false;
  if (footing.on === "post" || footing.on === "beam") return leads(footing.elementId);
  return footing.on !== "air" && footing.on !== "sheet" && footing.on !== "bottom rail";
}

const holdsUp = ({ target }: BeamSupport, leads: (id: string) => boolean): boolean =>
  isSteel(target) ? leads(target.elementId) : true;

const isSteel = ({ on }: BeamSupport["target"]): boolean => on === "post" || on === "beam";

/** Beams framed into each other hold each other up in a ring: the support that closes one is left out. */
function withoutLoops(footings: Footings, supports: Supports): Supports {
  const below = new Map<string, string[]>();
  for (const [id, footing] of footings)
    if (footing.on === "post" || footing.on === "beam") below.set(id, [footing.elementId]);
  const reaches = (from: string, to: string): boolean =>
    from === to || (below.get(from) ?? []).some((next) => reaches(next, to));
  const kept = [...supports].map(([id, own]): [string, BeamSupport[]] => [
    id,
    own.filter(({ target }) => {
      if (!isSteel(target)) return true;
      if (reaches(target.elementId, id)) return false;
      below.set(id, [...(below.get(id) ?? []), target.elementId]);
      return true;
    }),
  ]);
  return new Map(kept);
}
