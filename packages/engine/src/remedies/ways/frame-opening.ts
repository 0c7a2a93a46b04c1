import type { Framing, Opening } from "@cornerway/schema";
import { openingFrame } from "../../catalog/sections/frame-tubes.ts";
import { findSection } from "../../catalog/sections/find-section.ts";
import { frameRungs, headerRungs } from "../usual-steel.ts";
import { kgPerMOf } from "../section-mass.ts";
import type { Generator, Trial } from "../trial.ts";
import { openingOfMark, type OpeningOnFace } from "./face-of-opening.ts";

/** Jambs, header and sill round the opening: the stated tube where it has none, then heavier ones. */
export const frameOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined) return [];
  const { opening } = place;
  const stated: Trial[] = opening.framed ? [] : [framedAs(place, undefined)];
  const now = opening.framed ? kgPerMOf(openingFrame(opening).header.name) : 0;
  const heavier = frameRungs.filter(({ header }) => kgPerMOf(header) > now).map((rung) => framedAs(place, rung));
  const trials = [...stated, ...heavier];
  return trials.length === 0 ? [] : [trials];
};

/** A header alone, ever deeper: shown where it is out of proportion too, so that posts explain themselves. */
export const headerAlone: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined || place.opening.face === "roof" || place.opening.face === "floor") return [];
  const { opening, rect } = place;
  const frame = openingFrame(opening);
  const rungs = headerRungs.filter((name) => kgPerMOf(name) > kgPerMOf(frame.header.name));
  const trials = rungs.map((section): Trial => {
    const framing: Framing = { jamb: named(frame.jamb.name, "HSS4x4x1/4"), header: section };
    const depthMm = depthOf(section);
    return {
      change: {
        kind: "header",
        openingId: opening.id,
        section,
        depthMm,
        massKg: Math.round((kgPerMOf(section) * (rect.u1 - rect.u0)) / 1000),
        outOfProportion: depthMm > (rect.v1 - rect.v0) * DEEPEST_SHARE,
      },
      operations: [
        { kind: "opening.change", opening: { ...opening, framed: true, framing: withSill(place, framing) } },
      ],
    };
  });
  return trials.length === 0 ? [] : [trials];
};

/** A header deeper than this part of the opening's height is out of proportion: judged, no published source. */
const DEEPEST_SHARE = 0.1;

function framedAs(place: OpeningOnFace, rung: (typeof frameRungs)[number] | undefined): Trial {
  const { opening } = place;
  const { framing: _before, ...bare } = opening;
  const framing = rung && withSill(place, { jamb: rung.jamb, header: rung.header, sill: rung.sill });
  const after: Opening = { ...bare, framed: true, ...(framing && { framing }) };
  const frame = openingFrame(after);
  return {
    change: {
      kind: "frame opening",
      openingIds: [opening.id],
      jamb: frame.jamb.name,
      header: frame.header.name,
      sill: rung === undefined || framing?.sill === undefined ? null : framing.sill,
    },
    operations: [{ kind: "opening.change", opening: after }],
  };
}

/** No sill where the opening runs down to the bottom rail. */
function withSill({ rect, sheet, opening }: OpeningOnFace, { sill, ...framing }: Framing): Framing {
  const toRail = rect.v0 <= sheet.v0 + 1 && opening.face !== "roof" && opening.face !== "floor";
  return toRail || sill === undefined ? framing : { ...framing, sill };
}

/** The catalogue's own tubes have no name a scheme may use. */
const named = (name: string, otherwise: string): string => (findSection(name) === undefined ? otherwise : name);

function depthOf(name: string): number {
  const section = findSection(name);
  return section !== undefined && "depthMm" in section ? Math.round(section.depthMm) : 0;
}
