import { placeContainer, solidCorners, storeysOf, type PlanModel, type PlanUnit } from "@cornerway/engine";
import type { Container, Scheme } from "@cornerway/schema";
import { project, type ViewPoint } from "../view-transform.ts";
import { seenOnPlan } from "./seen-on-plan.ts";

/** What a plan shows, mm on paper. */
export type PlanWindow = { uLow: number; uHigh: number; vLow: number; vHigh: number };

/**
 * How far a unit overhead or below is followed past the units of the storey before it is broken off, mm: the place of a
 * plan is wide and low, so that what runs out at the top or the foot makes all the rest small.
 */
const followedMm = { across: 4500, up: 1500 } as const;

/**
 * The units cut, and those overhead and below as far as a little past these; a unit askew is shown whole, as a break along
 * the paper would lie across it aslant. Null where nothing is drawn.
 */
export function planWindow(scheme: Scheme, storey: number): PlanWindow | null {
  const { containers } = seenOnPlan(scheme, storey);
  const seen = boundsOf(containers);
  const cutIds = storeysOf(scheme).find(({ index }) => index === storey)?.containerIds ?? [];
  const whole = boundsOf(containers.filter((unit) => cutIds.includes(unit.id) || !isSquare(unit)));
  if (seen === null || whole === null) return seen;
  return {
    uLow: Math.max(seen.uLow, whole.uLow - followedMm.across),
    uHigh: Math.min(seen.uHigh, whole.uHigh + followedMm.across),
    vLow: Math.max(seen.vLow, whole.vLow - followedMm.up),
    vHigh: Math.min(seen.vHigh, whole.vHigh + followedMm.up),
  };
}

const isSquare = ({ turnMdeg }: Container): boolean => turnMdeg % 90_000 === 0;

function boundsOf(containers: readonly Container[]): PlanWindow | null {
  if (containers.length === 0) return null;
  const corners = containers.flatMap((unit) => solidCorners(placeContainer(unit))).map((at) => project("plan", at));
  const [us, vs] = [corners.map(({ uMm }) => uMm), corners.map(({ vMm }) => vMm)];
  return { uLow: Math.min(...us), uHigh: Math.max(...us), vLow: Math.min(...vs), vHigh: Math.max(...vs) };
}

/** The plan with what lies overhead and below no longer than its window shows. */
export const withinWindow = (model: PlanModel, window: PlanWindow | null): PlanModel =>
  window === null
    ? model
    : { ...model, overhead: brokenOff(model.overhead, window), below: brokenOff(model.below, window) };

const brokenOff = (units: readonly PlanUnit[], window: PlanWindow): PlanUnit[] =>
  units
    .map((unit) => ({ ...unit, outline: clamped(unit.outline, window) }))
    .filter(({ outline }) => areaMm2(outline) > 0);

/** A unit along the axes of the paper stays a rectangle; one askew lies within. */
const clamped = (outline: readonly ViewPoint[], { uLow, uHigh, vLow, vHigh }: PlanWindow): ViewPoint[] =>
  outline.map((point) => ({
    ...point,
    uMm: Math.min(Math.max(point.uMm, uLow), uHigh),
    vMm: Math.min(Math.max(point.vMm, vLow), vHigh),
  }));

/** An edge of an outline, and whether the unit goes on beyond it. */
export type OutlineEdge = { from: ViewPoint; to: ViewPoint; broken: boolean };

/** The edges of a unit's outline as a window shows it; those that lie off the unit's own edges are where it is broken off. */
export function outlineEdges(unit: PlanUnit): OutlineEdge[] {
  const whole = solidCorners(unit.placed)
    .slice(0, 4)
    .map((corner) => project("plan", corner));
  const { outline } = unit;
  return outline.map((from, at) => {
    const next = (at + 1) % outline.length;
    const to = outline[next] ?? from;
    return { from, to, broken: isMoved(from, whole[at]) && isMoved(to, whole[next]) };
  });
}

const isMoved = (point: ViewPoint, own: ViewPoint | undefined): boolean =>
  own !== undefined && (point.uMm !== own.uMm || point.vMm !== own.vMm);

/** Twice the area of an outline, mm². */
const areaMm2 = (outline: readonly ViewPoint[]): number =>
  Math.abs(
    outline.reduce((sum, { uMm, vMm }, at) => {
      const next = outline[(at + 1) % outline.length] ?? outline[0];
      return next === undefined ? sum : sum + uMm * next.vMm - next.uMm * vMm;
    }, 0),
  );
