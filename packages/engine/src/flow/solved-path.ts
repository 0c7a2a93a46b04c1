import type { PathStretch, PointMm } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { bearingForce, modelledBearings, type ModelledBearing } from "../strength/modelled-bearings.ts";
import type { SolvedRun } from "../strength/solve-runs.ts";
import { rounded, toKn } from "../units.ts";
import { inSite, placesOf } from "./site-places.ts";
import { alongUpright, type UnitPath } from "./unit-path.ts";

/** A length of the path with the solved force in it, and how that changes on the way, from head to foot. */
export type SolvedStretch = PathStretch & {
  readonly alongKn: readonly { readonly zMm: number; readonly forceKn: number }[];
};

/** What the ground, or what stands for it, gives to one bearing: up, east and north positive, kN. */
export type Reaction = {
  readonly elementId: string;
  readonly ownerId: string;
  readonly place: string;
  readonly at: PointMm;
  readonly upKn: number;
  readonly eastKn: number;
  readonly northKn: number;
};

/** Posts, seats and pads with what the solution has in them. */
export function solvedPath(
  analysis: Analysis,
  built: BuiltModel,
  solved: SolvedRun,
  units: readonly UnitPath[],
): SolvedStretch[] {
  const bearings = modelledBearings(built, analysis.structure.building);
  return [
    ...units.flatMap((path) => cornerPosts(analysis, bearings, path)),
    ...units.flatMap((path) => postsInWalls(analysis, built, path)),
    ...freePosts(analysis, built, solved),
    ...seats(built, bearings, solved),
    ...pads(analysis, reactionsFrom(analysis, built, solved)),
  ];
}

/** Every bearing on the ground with its solved force. */
export function reactionsFrom(analysis: Analysis, built: BuiltModel, solved: Pick<SolvedRun, "bearing">): Reaction[] {
  const place = placesOf(built.model);
  return modelledBearings(built, analysis.structure.building).flatMap((bearing) => {
    const { below } = bearing.planned;
    if (!("ground" in below)) return [];
    const [x, y, z] = bearingForce(bearing, solved);
    return [
      {
        elementId: below.ground,
        ownerId: bearing.ownerId,
        place: bearing.place,
        at: place(upperNode(built, bearing)),
        ...{ upKn: kn(z), eastKn: kn(x), northKn: kn(y) },
      },
    ];
  });
}

function cornerPosts({ structure }: Analysis, bearings: readonly ModelledBearing[], path: UnitPath): SolvedStretch[] {
  const { unit, flow } = path;
  const { postsWhole } = structure.fabric(unit.id);
  const whole: Partial<Record<string, boolean>> = postsWhole;
  const top = structure.building.unitById.get(unit.id)?.topFittings ?? [];
  const { halfLengthMm: l, halfWidthMm: w } = flow.lines;
  return ([-l, l] as const).flatMap((x) =>
    ([w, -w] as const).flatMap((y) => {
      const [end, side] = [x < 0 ? "front" : "door", y > 0 ? "left" : "right"];
      const fitting = top.find(
        ({ name, localXMm, localYMm }) => isCorner(name) && localXMm * x > 0 && localYMm * y > 0,
      );
      if (fitting === undefined || whole[fitting.name] === false) return [];
      const foot = bearings.find(({ ownerId, place }) => ownerId === unit.id && place === `${end} ${side}`);
      const leaves = foot === undefined || ("point" in foot.planned.below && "seat" in foot.planned.below.point);
      const made = upright(path, { x, y }, `corner:${unit.id}:${fitting.name}`, unit.id, "corner post", leaves);
      return made === null ? [] : [{ ...made, member: "corner post" as const }];
    }),
  );
}

const isCorner = (fitting: string): boolean => !fitting.endsWith("-inner");

/** Added posts that stand in a side wall. */
function postsInWalls({ carrying }: Analysis, { plan }: BuiltModel, path: UnitPath): SolvedStretch[] {
  const { halfLengthMm: l, halfWidthMm: w } = path.flow.lines;
  return (plan.inWalls.get(path.unit.id) ?? []).flatMap(({ postId, side, u }) => {
    if (!carrying.has(postId)) return [];
    return (
      upright(path, { x: u - l, y: side === "left" ? w : -w }, `post:${postId}`, postId, "added post", false) ?? []
    );
  });
}

function upright(
  { unit, flow }: UnitPath,
  at: { readonly x: number; readonly y: number },
  id: string,
  elementId: string,
  via: PathStretch["via"],
  leavesCorners: boolean,
): SolvedStretch | null {
  const lengths = alongUpright(flow, at);
  const [first, last] = [lengths[0], lengths.at(-1)];
  if (first === undefined || last === undefined) return null;
  const place = inSite(unit);
  const [from, to] = [place({ ...at, z: first.topMm }), place({ ...at, z: last.footMm })];
  const [forceTopKn, forceFootKn] = [kn(first.forceN), kn(last.forceN)];
  if (forceTopKn === 0 && forceFootKn === 0) return null;
  const along = lengths.map(({ topMm, footMm, forceN }) => ({
    zMm: rounded((topMm + footMm) / 2 + unit.at[2]),
    forceKn: kn(forceN),
  }));
  const alongKn = [{ zMm: from.zMm, forceKn: forceTopKn }, ...along, { zMm: to.zMm, forceKn: forceFootKn }];
  return { id, elementId, via, from, to, forceTopKn, forceFootKn, leavesCorners, alongKn };
}

/** Posts that stand by themselves are pressed from end to end. */
function freePosts({ structure }: Analysis, { plan }: BuiltModel, { frame }: SolvedRun): SolvedStretch[] {
  return plan.freePosts.flatMap((id) => {
    const post = structure.building.postById.get(id);
    const pressed = frame.memberEndForces[`${id}:post`]?.[0];
    if (post === undefined || pressed === undefined) return [];
    const at = { xMm: post.xMm, yMm: post.yMm };
    return even(
      `post:${id}`,
      id,
      "added post",
      { ...at, zMm: post.headZMm },
      { ...at, zMm: post.footZMm },
      kn(pressed),
    );
  });
}

/** Where a container bears on another away from the corners of either. */
function seats(built: BuiltModel, bearings: readonly ModelledBearing[], solved: SolvedRun): SolvedStretch[] {
  const place = placesOf(built.model);
  const links = new Map(built.model.links.map((link) => [link.id, link]));
  return bearings.flatMap((bearing) => {
    const { above, below } = bearing.planned;
    const link = links.get(bearing.name);
    const off = "point" in below && ("seat" in below.point || "seat" in above);
    if (link === undefined || !off || !("unitId" in above)) return [];
    const [, , upN] = bearingForce(bearing, solved);
    return even(`seat:${bearing.name}`, above.unitId, "seat", place(link.j), place(link.i), kn(upN), true);
  });
}

function pads({ structure }: Analysis, reactions: readonly Reaction[]): SolvedStretch[] {
  return reactions.flatMap(({ elementId, at, upKn }, index) => {
    const pad = structure.building.padById.get(elementId);
    if (pad === undefined) return [];
    const [from, to] = [pad.topZMm, pad.topZMm - pad.depthMm].map((zMm) => ({ ...at, zMm: rounded(zMm) }));
    return from === undefined || to === undefined
      ? []
      : even(`pad:${elementId}:${index}`, elementId, "pad", from, to, upKn);
  });
}

function even(
  id: string,
  elementId: string,
  via: PathStretch["via"],
  from: PointMm,
  to: PointMm,
  forceKn: number,
  leavesCorners = false,
): SolvedStretch[] {
  if (forceKn === 0) return [];
  const alongKn = [from, to].map(({ zMm }) => ({ zMm, forceKn }));
  return [{ id, elementId, via, from, to, forceTopKn: forceKn, forceFootKn: forceKn, leavesCorners, alongKn }];
}

function upperNode({ model }: BuiltModel, { name, on }: ModelledBearing): string {
  if (on === "support") return name;
  const link = model.links.find(({ id }) => id === name);
  if (link === undefined) throw new RangeError(`the building has no bearing ${name}`);
  return link.j;
}

const kn = (forceN: number): number => rounded(toKn(forceN));
