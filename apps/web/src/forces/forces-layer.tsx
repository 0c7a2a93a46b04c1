import type { RunForces } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import type { LayerPlace, ViewLayer } from "../drawing/contract.ts";
import { Deflected } from "../drawing/stroke/Deflected.tsx";
import { Strands } from "../drawing/stroke/Strands.tsx";

/** Strands, and the deflected shape where it is asked for, on elevations. Of an earlier answer they are pencil. */
export function forcesLayer(
  forces: RunForces | null,
  { of, stand, deflected }: { of: Scheme | null; stand: boolean; deflected: boolean },
): ViewLayer | undefined {
  if (forces === null || of === null) return undefined;
  return function ForcesOn({ projection, transform, scheme }: LayerPlace) {
    if (projection === "plan") return null;
    const strands = scheme === of ? forces.strands : withinUnmoved(forces.strands, of, scheme);
    const on = { scheme, side: projection, view: transform };
    return (
      <>
        <Strands {...on} strands={strands} faint={!stand} />
        {deflected && stand ? <Deflected {...on} shape={forces.deflected} /> : null}
      </>
    );
  };
}

/** Strands of an earlier scheme stay, as pencil, in units that are where they were. */
function withinUnmoved(strands: RunForces["strands"], of: Scheme, scheme: Scheme): RunForces["strands"] {
  const before = new Map(of.containers.map((container) => [container.id, JSON.stringify(container)]));
  const still = new Set(
    scheme.containers.filter((each) => before.get(each.id) === JSON.stringify(each)).map(({ id }) => id),
  );
  return strands.filter(({ unitId }) => still.has(unitId));
}
