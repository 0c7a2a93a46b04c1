import type { FactOf, FreeLoad, Mark, Override, PointMm } from "@cornerway/schema";
import { findSection } from "../catalog/sections/find-section.ts";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import type { Building } from "../geometry/building.ts";
import { openingRect } from "../fabric/opening-rect.ts";
import { onBeam } from "../geometry/placed-beam.ts";
import { toSite } from "../geometry/place.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { freeLoadExtent } from "../load-path/free-force.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** What cannot be taken as it is written: sections not in the catalogue, findings that misfit, loads beside their unit. */
export const givenMarks = (building: Building): Mark[] => [
  ...sectionMarks(building),
  ...overrideMarks(building, building.overrides),
  ...loadMarks(building, building.freeLoads),
];

type Part = FactOf<"section-unknown">["part"];
type Named = {
  readonly name: string | undefined;
  readonly part: Part;
  readonly elements: string[];
  readonly at: PointMm;
};

function sectionMarks(building: Building): Mark[] {
  const named: Named[] = [
    ...building.posts.map(({ id, xMm, yMm, headZMm, post }) => ({
      name: post.section,
      part: "post" as const,
      elements: [id],
      at: { xMm, yMm, zMm: headZMm },
    })),
    ...building.beams.map((beam) => ({
      name: beam.beam.section,
      part: "beam" as const,
      elements: [beam.id],
      at: onBeam(beam, beam.lengthMm / 2),
    })),
    ...building.units.flatMap((unit) =>
      unit.openings.flatMap((opening) => {
        const { u0, u1, v0, v1 } = openingRect(opening);
        const at = pointOnFace(faceFrame(unit, opening.face), (u0 + u1) / 2, (v0 + v1) / 2);
        return (["jamb", "header", "sill"] as const).map((part) => ({
          name: opening.framing?.[part],
          part,
          elements: [opening.id, unit.id],
          at,
        }));
      }),
    ),
    ...building.overrides.map(({ id, elementId, section }) => ({
      name: section,
      part: "override" as const,
      elements: [elementId, id],
      at: placeOf(building, elementId),
    })),
  ];
  return named.flatMap(({ name, part, elements, at }) =>
    name === undefined || findSection(name) !== undefined
      ? []
      : [
          markOf({
            fact: { kind: "section-unknown", part, name },
            verdict: "not checked",
            certainty: "derived",
            elements,
            part,
            at,
            basis: "The section catalogue has no row of this name. Sizes for geometry are read from the name.",
          }),
        ],
  );
}

function overrideMarks(building: Building, overrides: readonly Override[]): Mark[] {
  const said = new Set<string>();
  return overrides.flatMap((override) => {
    const { id, elementId, member } = override;
    const place = `${elementId} ${member ?? ""}`;
    const why = misfit(building, override) ?? (said.has(place) ? "said twice" : undefined);
    said.add(place);
    if (why === undefined) return [];
    return [
      markOf({
        fact: { kind: "override-misfits", why, ...(member === undefined ? {} : { member }) },
        verdict: "not checked",
        certainty: "derived",
        elements: [elementId, id],
        at: placeOf(building, elementId),
        basis: "What is found of a container names one of its members; of a post or beam it names none. Each once.",
      }),
    ];
  });
}

function misfit(
  { unitById }: Building,
  { elementId, member }: Override,
): FactOf<"override-misfits">["why"] | undefined {
  if (unitById.has(elementId)) return member === undefined ? "names no part" : undefined;
  return member === undefined ? undefined : "has no such part";
}

function placeOf({ unitById, postById, beamById }: Building, id: string): PointMm {
  const unit = unitById.get(id);
  const post = postById.get(id);
  const beam = beamById.get(id);
  if (unit !== undefined) return toSite(unit.frame, { xMm: 0, yMm: 0, zMm: 0 });
  if (post !== undefined) return { xMm: post.xMm, yMm: post.yMm, zMm: post.headZMm };
  return beam === undefined ? { xMm: 0, yMm: 0, zMm: 0 } : onBeam(beam, beam.lengthMm / 2);
}

const loadMarks = ({ unitById }: Building, loads: readonly FreeLoad[]): Mark[] =>
  loads.flatMap((load) => {
    const unit = unitById.get(load.containerId);
    if (unit === undefined) return [];
    const { u0, u1, v0, v1 } = freeLoadExtent(load);
    const { lengthMm, widthMm, heightMm } = unit.dimensions;
    const pastMm = Math.max(-u0, u1 - lengthMm, -v0, v1 - widthMm);
    if (pastMm <= touchMm) return [];
    const zMm = load.surface === "roof" ? heightMm : 0;
    return [
      markOf({
        fact: { kind: "load-off-unit", surface: load.surface, pastMm: rounded(pastMm) },
        verdict: "does not work",
        certainty: "published",
        elements: [load.id, unit.id],
        named: 1,
        at: toSite(unit.frame, { xMm: (u0 + u1 - lengthMm) / 2, yMm: (v0 + v1 - widthMm) / 2, zMm }),
        basis: "Geometry: the load is drawn beyond the outline of its unit (ISO 668 external dimensions).",
      }),
    ];
  });
