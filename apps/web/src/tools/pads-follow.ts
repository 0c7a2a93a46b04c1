import { placeContainer, toLocal } from "@cornerway/engine";
import type { PlacedContainer } from "@cornerway/engine";
import type { Container, Operation, Pad, PointMm, Scheme } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { nextTags } from "./next-tag.ts";
import { padFrame } from "./pad-frame.ts";

/** Size of a pad set under a corner; common practice, no published source. It is drawn and may be changed. */
const padSizeUm = { lengthUm: 600_000, widthUm: 600_000, depthUm: 400_000 };
const sameHeightMm = 2;

/**
 * What its pads do when a unit is set, moved or turned: those that held it alone go with their corner, corners on the
 * ground without a pad get one, and those it leaves behind are taken away. `before` is null for a new unit.
 */
export function padsFollow(scheme: Scheme, before: Container | null, after: Container): Operation[] {
  const feet = onGround(scheme, after) ? placeContainer(after).bottomFittings.map((fitting) => fitting.at) : [];
  const own = before === null ? [] : padsOfAlone(scheme, before);
  const standing = scheme.pads.filter((pad) => !own.some(({ pad: mine }) => mine.id === pad.id));
  const covered = (foot: PointMm) => standing.some((pad) => carries(pad, foot));
  const moved: Operation[] = [];
  const left: Operation[] = [];
  const kept = new Set<number>();
  for (const { pad, corner } of own) {
    const foot = feet[corner];
    if (foot === undefined || covered(foot) || kept.has(corner)) left.push({ kind: "pad.remove", id: pad.id });
    else {
      kept.add(corner);
      moved.push({ kind: "pad.move", id: pad.id, ...placeUm(foot) });
    }
  }
  const bare = feet.filter((foot, corner) => !kept.has(corner) && !covered(foot));
  return [...left, ...moved.filter((move) => !isStill(scheme, move)), ...setPads(scheme, bare)];
}

/** Pads that stand under a fitting of this unit and of no other, with the corner they hold. */
export function padsOfAlone(scheme: Scheme, unit: Container): { pad: Pad; corner: number }[] {
  const feet = placeContainer(unit).bottomFittings;
  const others = scheme.containers.filter((other) => other.id !== unit.id).map(placeContainer);
  return scheme.pads.flatMap((pad) => {
    const corner = feet.findIndex((foot) => carries(pad, foot.at));
    const shared = others.some((other) => standsOn(other, pad)) || scheme.posts.some((post) => carriesPost(pad, post));
    return corner === -1 || shared ? [] : [{ pad, corner }];
  });
}

/** True when the point lies on top of the pad. */
export function carries(pad: Pad, point: PointMm): boolean {
  const { xMm, yMm, zMm } = toLocal(padFrame(pad), point);
  return Math.abs(xMm) <= pad.lengthUm / 2000 && Math.abs(yMm) <= pad.widthUm / 2000 && Math.abs(zMm) <= sameHeightMm;
}

function setPads(scheme: Scheme, feet: PointMm[]): Operation[] {
  const tags = nextTags(scheme, "B", feet.length);
  return feet.map((foot, at) => ({
    kind: "pad.set",
    pad: { id: newElementId("b"), tag: tags[at] ?? "B1", ...placeUm(foot), ...padSizeUm, turnMdeg: 0 },
  }));
}

const onGround = (scheme: Scheme, unit: Container) => Math.abs(unit.zUm - scheme.site.groundZUm) <= sameHeightMm * 1000;

const standsOn = (unit: PlacedContainer, pad: Pad) => unit.bottomFittings.some((foot) => carries(pad, foot.at));

const carriesPost = (pad: Pad, post: { xUm: number; yUm: number; baseZUm: number }) =>
  carries(pad, { xMm: post.xUm / 1000, yMm: post.yUm / 1000, zMm: post.baseZUm / 1000 });

const placeUm = ({ xMm, yMm, zMm }: PointMm) => ({
  xUm: Math.round(xMm * 1000),
  yUm: Math.round(yMm * 1000),
  topZUm: Math.round(zMm * 1000),
});

function isStill(scheme: Scheme, move: Operation): boolean {
  if (move.kind !== "pad.move") return false;
  const pad = scheme.pads.find((standing) => standing.id === move.id);
  return pad?.xUm === move.xUm && pad.yUm === move.yUm && pad.topZUm === move.topZUm;
}
