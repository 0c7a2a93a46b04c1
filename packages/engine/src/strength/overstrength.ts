import type { Analysis } from "../load-path/analysis.ts";
import type { SiteActions } from "../loads/site-actions.ts";

/** How far earthquakes are enlarged for what carries walls that do not run down, and what that is. */
export type Overstrength = { readonly omega0: number; readonly owners: ReadonlySet<string> };

type Accepted = Extract<SiteActions, { accepted: true }>;
type Carried = Pick<Analysis, "bearings" | "footings" | "beamSupports">;

/**
 * Every unit, post and beam that stands under a unit whose wall does not run down (ASCE 7 12.3.3.3, from memory): its members and
 * joints take the earthquake with Ω₀, of both axes the larger; pads are ground, which the clause leaves out. Undefined in
 * category A and where all walls run down.
 */
export function overstrengthBelow({ site }: Accepted, carried: Carried): Overstrength | undefined {
  if (site === undefined || site.seismic.design.category === "A") return undefined;
  const { irregularities, axes } = site.seismic;
  const stopped = irregularities.flatMap(({ consequence, lineId }) =>
    consequence === "overstrength below" && lineId !== undefined ? [unitOfLine(lineId)] : [],
  );
  if (stopped.length === 0) return undefined;
  const rows = [axes.x.permit.row.omega0, axes.y.permit.row.omega0];
  return { omega0: Math.max(...rows), owners: below(stopped, carried) };
}

/** A line goes by its unit and its face. */
const unitOfLine = (lineId: string): string => lineId.slice(0, lineId.lastIndexOf(" "));

function below(unitIds: readonly string[], carried: Carried): Set<string> {
  const found = new Set<string>();
  const waiting = [...unitIds];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop())
    for (const next of under(id, carried)) {
      if (found.has(next)) continue;
      found.add(next);
      waiting.push(next);
    }
  return found;
}

function under(id: string, { bearings, footings, beamSupports }: Carried): string[] {
  const targets = bearings
    .filter(({ unitId }) => unitId === id)
    .flatMap(({ contacts }) => contacts.map(({ target }) => target));
  const footing = footings.get(id);
  const supports = (beamSupports.get(id) ?? []).map(({ target }) => target);
  return [...targets, ...supports, ...(footing === undefined ? [] : [footing])].flatMap((one) =>
    "elementId" in one && one.on !== "pad" ? [one.elementId] : [],
  );
}
