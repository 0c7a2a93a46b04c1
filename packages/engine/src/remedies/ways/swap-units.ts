import type { Container, Operation, Scheme } from "@cornerway/schema";
import { toSite } from "../../geometry/place.ts";
import type { Unit } from "../../geometry/building.ts";
import { analyse, type Analysis } from "../../load-path/analysis.ts";
import type { Generator, Ladder, RemedyGround } from "../trial.ts";

/**
 * The unit changes places with one of another length, so that both come down on fittings or pads at all corners. Each keeps its
 * openings; middle on middle, or with one end where the other unit had it.
 */
export const swapUnits: Generator = (ground) => {
  const { scheme, analysis, mark } = ground;
  const { unitById } = analysis.structure.building;
  const unit = unitById.get(mark.elements[0] ?? "");
  if (unit === undefined) return [];
  return scheme.containers
    .flatMap(({ id }): Ladder[] => {
      const other = unitById.get(id);
      if (other === undefined || other.dimensions.lengthMm === unit.dimensions.lengthMm) return [];
      if (other.dimensions.heightMm !== unit.dimensions.heightMm) return [];
      const ways = ENDS.flatMap((own) => ENDS.map((its) => swapped(scheme, unit, other, own, its)));
      const operations = ways.find((each) => landsWhole(ground, each));
      return operations === undefined
        ? []
        : [[{ change: { kind: "swap units", unitId: unit.id, withId: other.id }, operations }]];
    })
    .slice(0, MOST);
};

/** Where a unit lies in the place of a longer or shorter one: in its middle, at its front end, at its door end. */
const ENDS = [0, -1, 1] as const;
type End = (typeof ENDS)[number];

/** So many others are looked at. */
const MOST = 3;

/** Each in the other's place, at its height and its turn. */
const swapped = ({ containers }: Scheme, unit: Unit, other: Unit, own: End, its: End): Operation[] => [
  ...placedAs(containers, unit, other, own),
  ...placedAs(containers, other, unit, its),
];

function placedAs(containers: readonly Container[], unit: Unit, there: Unit, end: End): Operation[] {
  const container = containers.find(({ id }) => id === unit.id);
  const place = containers.find(({ id }) => id === there.id);
  if (container === undefined || place === undefined) return [];
  const shorterBy = there.dimensions.lengthMm - unit.dimensions.lengthMm;
  const { xMm, yMm } = toSite(there.frame, { xMm: (end * shorterBy) / 2, yMm: 0, zMm: 0 });
  const at = { xUm: Math.round(xMm * 1000), yUm: Math.round(yMm * 1000), zUm: place.zUm, turnMdeg: place.turnMdeg };
  return [{ kind: "container.change", container: { ...container, ...at } }];
}

/** Both on fittings or pads at every corner, by geometry alone. */
function landsWhole({ scheme }: RemedyGround, operations: readonly Operation[]): boolean {
  const changed = operations.flatMap((operation) =>
    operation.kind === "container.change" ? [operation.container] : [],
  );
  const containers = scheme.containers.map((each) => changed.find(({ id }) => id === each.id) ?? each);
  const after = analyse({ ...scheme, containers });
  return changed.length === 2 && changed.every(({ id }) => isOnCorners(after, id));
}

const isOnCorners = ({ bearings }: Analysis, unitId: string): boolean => {
  const own = bearings.find((bearing) => bearing.unitId === unitId)?.contacts ?? [];
  const corners = own.filter(
    ({ fitting, target }) => fitting !== undefined && (target.on === "fitting" || target.on === "pad"),
  );
  return corners.length >= 4;
};
