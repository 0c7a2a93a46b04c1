import type { Scheme } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import { buildingFrame } from "../loads/building-frame.ts";
import type { BearingLines } from "../loads/imposed-cases.ts";
import { siteActions, type SiteActions } from "../loads/site-actions.ts";
import { storeyLines } from "./lateral/storey-lines.ts";
import { wallsByUnit } from "./lateral/wall-parts.ts";
import type { StrengthBasis } from "./strength-basis.ts";

/** What the site asks of the scheme, with the bearings and pads its analysis found. */
export const schemeActions = (scheme: Scheme, analysis: Analysis, basis: StrengthBasis): SiteActions => {
  const building = buildingFrame(scheme);
  const wallsOf = wallsByUnit(analysis.structure, scheme.basis.sheetWalls, basis.allowable);
  return siteActions(
    {
      scheme,
      bearings: bearingLines(analysis),
      supports: scheme.pads.map(({ id, levelErrorUm, settlementUm }) => ({
        elementId: id,
        kind: "pad",
        levelErrorUm,
        settlementUm,
      })),
      linesOf: building === undefined ? () => [] : storeyLines(building, wallsOf),
    },
    basis.loads,
  );
};

/** Where each unit bears along its length, mm from its front end. */
const bearingLines = ({ bearings, structure }: Analysis): BearingLines =>
  new Map(
    bearings.map(({ unitId, contacts }) => {
      const half = (structure.building.unitById.get(unitId)?.dimensions.lengthMm ?? 0) / 2;
      return [unitId, contacts.map(({ localXMm }) => localXMm + half)];
    }),
  );
