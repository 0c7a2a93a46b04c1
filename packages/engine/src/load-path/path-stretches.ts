import type { FittingName, PathStretch, PointMm } from "@cornerway/schema";
import type { BeamSupport } from "../bearing/beam-supports.ts";
import { contactNames } from "../bearing/contact.ts";
import type { Unit } from "../geometry/building.ts";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { onBeam } from "../geometry/placed-beam.ts";
import { rounded } from "../units.ts";
import type { Analysis } from "./analysis.ts";
import type { RailEnd } from "./rail-lever.ts";
import type { BeamRun, RailLoad, UnitRun } from "./run-down.ts";

/** The way down as lengths with the force in each: corner posts, top rails, seats, added posts, pads. */
export function pathStretches(analysis: Analysis): PathStretch[] {
  const { building } = analysis.structure;
  const stretches = [
    ...analysis.run.units.flatMap((run) => {
      const unit = building.unitById.get(run.unitId);
      return unit === undefined ? [] : [...cornerPosts(analysis, unit, run), ...bottomRails(unit, run), ...seats(run)];
    }),
    ...analysis.run.railLoads.flatMap((load, at) => alongRail(analysis, load, at)),
    ...building.posts.flatMap(({ id, xMm, yMm, headZMm, footZMm }) => {
      const forceKn = analysis.run.postsKn.get(id) ?? 0;
      return forceKn === 0
        ? []
        : [
            stretch(
              `post:${id}`,
              id,
              "added post",
              { xMm, yMm, zMm: headZMm },
              { xMm, yMm, zMm: footZMm },
              forceKn,
              forceKn,
            ),
          ];
    }),
    ...analysis.run.beams.flatMap((run) => alongBeams(analysis, run)),
    ...padStretches(analysis),
  ];
  return stretches.toSorted((a, b) => (a.id < b.id ? -1 : 1));
}

function stretch(
  id: string,
  elementId: string,
  via: PathStretch["via"],
  from: PointMm,
  to: PointMm,
  topKn: number,
  footKn: number,
  leavesCorners = false,
): PathStretch {
  return {
    id,
    elementId,
    via,
    from: roundedPoint(from),
    to: roundedPoint(to),
    forceTopKn: rounded(topKn),
    forceFootKn: rounded(footKn),
    leavesCorners,
  };
}

const roundedPoint = ({ xMm, yMm, zMm }: PointMm): PointMm => ({
  xMm: rounded(xMm),
  yMm: rounded(yMm),
  zMm: rounded(zMm),
});

/** A corner post runs from top fitting to bottom fitting: what enters above, and what its bottom fitting gives below. */
function cornerPosts(analysis: Analysis, unit: Unit, run: UnitRun): PathStretch[] {
  const { postsWhole } = analysis.structure.fabric(unit.id);
  const whole: Partial<Record<FittingName, boolean>> = postsWhole;
  return unit.topFittings.flatMap((top, at) => {
    const bottom = unit.bottomFittings[at];
    const contact = run.contacts.findIndex(({ fitting }) => fitting === top.name);
    const topKn = run.cornersKn.get(top.name) ?? 0;
    const footKn = contact === -1 ? topKn : (run.forcesKn[contact] ?? 0);
    if (bottom === undefined || whole[top.name] === false || (topKn === 0 && footKn === 0)) return [];
    const onRail = run.contacts[contact]?.target.on === "rail";
    const leaves = contact === -1 || onRail;
    const made = stretch(
      `corner:${unit.id}:${top.name}`,
      unit.id,
      "corner post",
      top.at,
      bottom.at,
      topKn,
      footKn,
      leaves,
    );
    return [{ ...made, member: "corner post" }];
  });
}

/** What a corner with nothing under it takes from above goes along the bottom rail to the nearest bearing of its side. */
function bottomRails(unit: Unit, run: UnitRun): PathStretch[] {
  return unit.bottomFittings.flatMap(({ name, at, localXMm, localYMm }) => {
    const forceKn = run.cornersKn.get(name) ?? 0;
    const side = localYMm > 0 ? "left" : "right";
    const nearest = run.contacts
      .filter((contact) => contact.side === side)
      .toSorted((a, b) => Math.abs(a.localXMm - localXMm) - Math.abs(b.localXMm - localXMm))[0];
    if (forceKn === 0 || nearest === undefined || run.contacts.some(({ fitting }) => fitting === name)) return [];
    const made = stretch(`bottom:${unit.id}:${name}`, unit.id, "rail", at, nearest.at, forceKn, forceKn, true);
    return [{ ...made, member: "bottom side rail" as const }];
  });
}

/** A seat takes the load from the underside of a rail, or of a fitting over a rail, to what is below it. */
function seats({ unitId, contacts, forcesKn }: UnitRun): PathStretch[] {
  const names = contactNames(contacts);
  return contacts.flatMap((contact, at) => {
    const forceKn = forcesKn[at] ?? 0;
    if (contact.joint.joint !== "seat" || forceKn === 0) return [];
    const to = { ...contact.at, zMm: contact.at.zMm - contact.gapMm };
    return [stretch(`seat:${names[at] ?? ""}`, unitId, "seat", contact.at, to, forceKn, forceKn, true)];
  });
}

function alongRail({ structure }: Analysis, load: RailLoad, at: number): PathStretch[] {
  const unit = structure.building.unitById.get(load.unitId);
  if (unit === undefined) return [];
  const face = faceFrame(unit, load.rail);
  const zMm = unit.dimensions.heightMm - unit.dimensions.proudOfRoofMm - unit.dimensions.topRailDepthMm / 2;
  const member = load.rail === "front" ? "top end rail" : load.rail === "door" ? "door header" : "top side rail";
  const from = pointOnFace(face, load.uMm, zMm);
  return load.shares
    .filter(({ forceKn }) => forceKn !== 0)
    .map(({ end, forceKn }) => {
      const to = pointOnFace(face, end.uMm, zMm);
      const id = `rail:${unit.id}:${load.rail}:${load.fromId}:${at}:${endName(end)}`;
      return { ...stretch(id, unit.id, "rail", from, to, forceKn, forceKn, true), member };
    });
}

/** From where a load comes down on a beam to the supports on either side, or to the last one where it hangs past it. */
function alongBeams({ structure }: Analysis, { beamId, loads, supports, reactionsKn }: BeamRun): PathStretch[] {
  const beam = structure.building.beamById.get(beamId);
  if (beam === undefined) return [];
  const standing = supports.filter((_, at) => (reactionsKn[at] ?? 0) !== 0);
  return loads.flatMap(({ uMm, forceKn, fromId }, index) =>
    sharedBetween(standing, uMm, forceKn).map(({ support, shareKn }) => {
      const id = `beam:${beamId}:${fromId}:${index}:${support.target.elementId}`;
      const way = [onBeam(beam, uMm), onBeam(beam, support.uMm)] as const;
      return stretch(id, beamId, "beam", ...way, shareKn, shareKn, true);
    }),
  );
}

type Shared = { readonly support: BeamSupport; readonly shareKn: number };

function sharedBetween(supports: readonly BeamSupport[], uMm: number, forceKn: number): Shared[] {
  const before = supports.findLast((support) => support.uMm <= uMm);
  const after = supports.find((support) => support.uMm > uMm);
  const only = before ?? after;
  if (only === undefined || forceKn === 0) return [];
  if (before === undefined || after === undefined) return [{ support: only, shareKn: forceKn }];
  const share = (uMm - before.uMm) / (after.uMm - before.uMm);
  return [
    { support: before, shareKn: forceKn * (1 - share) },
    { support: after, shareKn: forceKn * share },
  ].filter(({ shareKn }) => shareKn !== 0);
}

const endName = (end: RailEnd): string =>
  end.to === "corner" ? end.fitting : end.to === "post" ? end.postId : end.beamId;

function padStretches({ structure, run }: Analysis): PathStretch[] {
  return run.reactions.flatMap(({ elementId, at, forceKn }, index) => {
    const pad = structure.building.padById.get(elementId);
    if (pad === undefined || forceKn === 0) return [];
    const top = { ...at, zMm: pad.topZMm };
    return [
      stretch(
        `pad:${elementId}:${index}`,
        elementId,
        "pad",
        top,
        { ...top, zMm: pad.topZMm - pad.depthMm },
        forceKn,
        forceKn,
      ),
    ];
  });
}
