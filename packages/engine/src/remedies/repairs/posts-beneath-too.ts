import type { RemedyChange } from "@cornerway/schema";
import type { Analysis } from "../../load-path/analysis.ts";
import { analyse } from "../../load-path/analysis.ts";
import { FreshNames } from "../fresh-names.ts";
import type { UsedPart } from "../known-parts.ts";
import { postsInWall, type WallPlace } from "../set-posts.ts";
import { postSections, usualPad } from "../usual-steel.ts";
import type { Trial } from "../trial.ts";
import type { Repair } from "./repair.ts";

/** Where a rail or the sheet below it is beyond its strength under what comes down: posts in the walls right beneath, to the ground. */
export const postsBeneathToo: Repair = (trial, { tried, parts }) => {
  const pressed = parts.filter(({ element, place }) => pressedThrough.has(element) && place.startsWith("at top rail"));
  if (pressed.length === 0) return undefined;
  const analysis = analyse(tried);
  const places = onceEach(pressed.flatMap((part) => placesOf(part, analysis))).filter(isBare(analysis));
  if (places.length === 0) return undefined;
  const section = sectionOf(trial) ?? postSections[0];
  const set = postsInWall(tried, analysis.structure.building, new FreshNames(tried), places, section, usualPad);
  if (set === undefined) return undefined;
  const { operations, postIds, pads } = set;
  const [{ unitId } = { unitId: "" }] = places;
  const padMm = pads === 0 ? null : usualPad.sideMm;
  const change: RemedyChange = { kind: "posts", unitId, postIds, under: "bearings", section, padMm, header: null };
  return { ...trial, operations: [...trial.operations, ...operations], also: [...(trial.also ?? []), change] };
};

const pressedThrough: ReadonlySet<UsedPart["element"]> = new Set<UsedPart["element"]>(["side sheet", "top side rail"]);

/** All places where the same unit comes down on that rail: its bearings share what a post under one of them takes. */
function placesOf({ ownerId, place }: UsedPart, { run }: Analysis): WallPlace[] {
  const [, rail, fromId] = /^at top rail (left|right) [0-9.]+ m, (\S+) /.exec(place) ?? [];
  if (rail !== "left" && rail !== "right") return [];
  return run.railLoads
    .filter((load) => load.unitId === ownerId && load.rail === rail && load.fromId === fromId)
    .map(({ unitId, uMm }) => ({ unitId, rail, uMm }));
}

/** No post stands there yet. */
const isBare =
  ({ supports }: Analysis) =>
  (place: WallPlace): boolean =>
    !supports.some(
      ({ unitId, rail, uMm }) =>
        unitId === place.unitId && rail === place.rail && Math.abs(uMm - place.uMm) < usualPad.sideMm / 2,
    );

const onceEach = (places: readonly WallPlace[]): WallPlace[] =>
  places.filter(
    ({ unitId, rail, uMm }, at) =>
      places.findIndex((one) => one.unitId === unitId && one.rail === rail && one.uMm === uMm) === at,
  );

const sectionOf = ({ change }: Trial): string | undefined => (change.kind === "posts" ? change.section : undefined);
