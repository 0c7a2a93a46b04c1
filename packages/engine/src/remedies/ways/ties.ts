import type { Operation, Tie } from "@cornerway/schema";
import { tiePlace } from "../../bearing/tie-place.ts";
import type { Unit } from "../../geometry/building.ts";
import { toSite } from "../../geometry/place.ts";
import { FreshNames } from "../fresh-names.ts";
import type { Generator, RemedyGround, Trial } from "../trial.ts";

/** To each unit beside it, from fitting to fitting across the gap: at the top alone, then at the bottom as well. */
export const ties: Generator = (ground) => {
  const { building } = ground.analysis.structure;
  const unit = building.unitById.get(ground.mark.elements[0] ?? "");
  if (unit === undefined) return [];
  return building.units
    .filter(({ id }) => id !== unit.id)
    .map((other) =>
      [["top"] as const, ["top", "bottom"] as const].flatMap((heights): Trial[] => {
        const names = new FreshNames(ground.scheme);
        const found = heights.flatMap((height) => tiesAt(ground, names, unit, other, height));
        const operations = found.map((tie): Operation => ({ kind: "tie.set", tie }));
        return operations.length === 0
          ? []
          : [{ change: { kind: "ties", unitIds: [unit.id, other.id], places: operations.length }, operations }];
      }),
    )
    .filter((rungs) => rungs.length > 0);
};

/** In the middle of the gap at every corner of the unit that has the other beside it. */
function tiesAt(
  { analysis, scheme }: RemedyGround,
  names: FreshNames,
  unit: Unit,
  other: Unit,
  height: "top" | "bottom",
): Tie[] {
  const { building } = analysis.structure;
  const { widthMm, holeSpacingLengthwiseMm } = unit.dimensions;
  const zMm = height === "top" ? unit.topZMm - HALF_FITTING_MM : unit.baseZMm + HALF_FITTING_MM;
  const ends = [-1, 1] as const;
  return ends.flatMap((end) =>
    ends.flatMap((side): Tie[] => {
      const at = (awayMm: number): Omit<Tie, "id" | "tag"> => {
        const local = { xMm: (end * holeSpacingLengthwiseMm) / 2, yMm: side * (widthMm / 2 + awayMm), zMm: 0 };
        const { xMm, yMm } = toSite(unit.frame, local);
        const place = { xUm: Math.round(xMm * 1000), yUm: Math.round(yMm * 1000), zUm: Math.round(zMm * 1000) };
        return { aId: unit.id, bId: other.id, ...place, carries: "in plan and upright" };
      };
      const onFace = tiePlace(building, { ...at(0), ...UNNAMED });
      if ("why" in onFace || isTied(scheme.ties, at(onFace.awayMm / 2))) return [];
      return [{ ...names.next("T"), ...at(onFace.awayMm / 2) }];
    }),
  );
}

const UNNAMED = { id: "new", tag: "new" } as const;

/** Half the height of a corner fitting (118 mm, ISO 1161, from memory). */
const HALF_FITTING_MM = 59;

const isTied = (drawn: readonly Tie[], { aId, bId, xUm, yUm, zUm }: Omit<Tie, "id" | "tag">): boolean =>
  drawn.some(
    (tie) =>
      [tie.aId, tie.bId].includes(aId) &&
      [tie.aId, tie.bId].includes(bId) &&
      tie.xUm === xUm &&
      tie.yUm === yUm &&
      tie.zUm === zUm,
  );
