import { placeContainer, solidCorners } from "@cornerway/engine";
import type { PlacedContainer } from "@cornerway/engine";
import type { Container, ContainerType, PointMm, Scheme } from "@cornerway/schema";
import type { Side } from "../drawing/contract.ts";
import { project } from "../drawing/view-transform.ts";
import type { Projection } from "../drawing/view-transform.ts";
import { boxOf } from "../tools/footprint.ts";
import { newElementId } from "../tools/new-element-id.ts";
import { nextTag, unitCapital } from "../tools/next-tag.ts";
import { restHeightMm } from "../tools/rest-height.ts";
import { snapUnit } from "../tools/snap-unit.ts";

const lineUpMm = 1500;

/** A new unit not yet set, at the site's origin or beside what stands there. */
export function firstUnit(scheme: Scheme, type: ContainerType): Container {
  const east = Math.max(...scheme.containers.map((unit) => boxOf(placeContainer(unit)).east), -Infinity);
  const bare = { id: newElementId("u"), tag: "G1", type, xUm: 0, yUm: 0, zUm: scheme.site.groundZUm, turnMdeg: 0 };
  if (east === -Infinity) return labelled(scheme, bare);
  const half = placeContainer(bare).dimensions.lengthMm / 2;
  return labelled(scheme, { ...bare, xUm: Math.round((east + half) * 1000) });
}

/** The new unit under the pointer: resting on what lies below, drawn to fittings and sides within reach. */
export function unitAt(
  scheme: Scheme,
  unit: Container,
  projection: Projection,
  at: PointMm,
  reachMm: number,
): Container {
  const seesX = projection !== "east" && projection !== "west";
  const seesY = projection !== "south" && projection !== "north";
  const hint = projection === "plan" ? at.zMm : at.zMm - placeContainer(unit).dimensions.heightMm / 2;
  const inLine = projection === "plan" ? null : frontUnit(scheme, projection, at, hint);
  const moved = {
    ...unit,
    xUm: seesX ? Math.round(at.xMm * 1000) : (inLine?.xUm ?? unit.xUm),
    yUm: seesY ? Math.round(at.yMm * 1000) : (inLine?.yUm ?? unit.yUm),
  };
  const zUm = Math.round(restHeightMm(scheme, moved, hint) * 1000);
  return labelled(scheme, snapUnit(scheme, { ...moved, zUm }, reachMm).unit);
}

/** In an elevation depth is not drawn: the new unit lines up with the nearest unit it would lie on. */
function frontUnit(scheme: Scheme, side: Side, at: PointMm, footMm: number): Container | null {
  const { uMm } = project(side, at);
  const under = scheme.containers.map(placeContainer).filter((placed) => {
    const us = solidCorners(placed).map((corner) => project(side, corner).uMm);
    return uMm >= Math.min(...us) && uMm <= Math.max(...us) && Math.abs(placed.topZMm - footMm) < lineUpMm;
  });
  const depth = (placed: PlacedContainer) =>
    Math.min(...solidCorners(placed).map((corner) => project(side, corner).depthMm));
  const front = under.reduce<PlacedContainer | null>(
    (best, next) => (best === null || depth(next) < depth(best) ? next : best),
    null,
  );
  return front?.container ?? null;
}

/** The unit with the next free label of its storey. */
export const labelled = (scheme: Scheme, unit: Container): Container => ({
  ...unit,
  tag: nextTag(scheme, unitCapital(scheme, unit)),
});
