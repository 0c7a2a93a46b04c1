import type { Scheme } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import type { BearingLines } from "../loads/imposed-cases.ts";
import { siteActions, type SiteActions } from "../loads/site-actions.ts";
import type { StrengthBasis } from "./strength-basis.ts";

/** What the site asks of the scheme, with the bearings and pads its analysis found. */
export const schemeActions = (scheme: Scheme, analysis: Analysis, basis: StrengthBasis): SiteActions =>
  siteActions(
    {
      scheme,
      bearings: bearingLines(analysis),
      supports: scheme.pads.map(({ id, levelErrorUm, settlementUm }) => ({
        elementId: id,
        kind: "pad",
        levelErrorUm,
        settlementUm,
      })),
      linesOf: () => [],
    },
    basis.loads,
  );

/** Where each unit bears along its length, mm from its front end. */
const bearingLines = ({ bearings, structure }: Analysis): BearingLines =>
  new Map(
    bearings.map(({ unitId, contacts }) => {
      const half = (structure.building.unitById.get(unitId)?.dimensions.lengthMm ?? 0) / 2;
      return [unitId, contacts.map(({ localXMm }) => localXMm + half)];
    }),
  );
