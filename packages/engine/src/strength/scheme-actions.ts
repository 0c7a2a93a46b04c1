import type { Scheme } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import { buildingFrame } from "../loads/building-frame.ts";
import type { BearingLines } from "../loads/imposed-cases.ts";
import type { Support } from "../loads/movement-cases.ts";
import { siteActions, type SiteActions } from "../loads/site-actions.ts";
import { bearingPlan, type BearingPlan } from "../model/bearing-plan.ts";
import { hasStub } from "../model/loads-on-units.ts";
import { storeyLines } from "./lateral/storey-lines.ts";
import { wallsByUnit } from "./lateral/wall-parts.ts";
import type { StrengthBasis } from "./strength-basis.ts";

/** What the site asks of the scheme, with the bearings and pads its analysis found. */
export const schemeActions = (scheme: Scheme, analysis: Analysis, basis: StrengthBasis): SiteActions => {
  const building = buildingFrame(scheme);
  const plan = bearingPlan(analysis);
  const wallsOf = wallsByUnit(analysis.structure, scheme.basis.sheetWalls, basis.allowable);
  return siteActions(
    {
      scheme,
      bearings: bearingLines(analysis),
      supports: [
        ...scheme.pads.map(padSupport),
        ...scheme.posts.flatMap((post) => postSupport(post, plan)),
        ...scheme.seats.flatMap((seat) => seatSupport(seat, plan)),
      ],
      linesOf: building === undefined ? () => [] : storeyLines(building, wallsOf),
    },
    basis.loads,
  );
};

const padSupport = ({ id, levelErrorUm, settlementUm }: Scheme["pads"][number]): Support => ({
  elementId: id,
  kind: "pad",
  levelErrorUm,
  settlementUm,
});

/** A post on a pad is as far off as that may be, unless its own level was measured; one on a container by itself. */
const postSupport = ({ id, levelErrorUm }: Scheme["posts"][number], plan: BearingPlan): Support[] =>
  levelErrorUm === undefined && !hasStub(id, plan) ? [] : [{ elementId: id, kind: "post", levelErrorUm }];

/** A seat on or under a rail; of fittings on beams the level is that of the beam. */
const seatSupport = ({ id, levelErrorUm }: Scheme["seats"][number], plan: BearingPlan): Support[] =>
  hasStub(id, plan) ? [{ elementId: id, kind: "seat", levelErrorUm }] : [];

/** Where each unit bears along its length, mm from its front end. */
const bearingLines = ({ bearings, structure }: Analysis): BearingLines =>
  new Map(
    bearings.map(({ unitId, contacts }) => {
      const half = (structure.building.unitById.get(unitId)?.dimensions.lengthMm ?? 0) / 2;
      return [unitId, contacts.map(({ localXMm }) => localXMm + half)];
    }),
  );
