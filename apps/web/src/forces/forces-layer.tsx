import type { RunForces } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import type { ReactNode } from "react";
import type { LayerLabel, LayerPlace, ViewLayer } from "../drawing/contract.ts";
import { CutRounds } from "../drawing/stroke/CutRounds.tsx";
import { Deflected } from "../drawing/stroke/Deflected.tsx";
import { Strands } from "../drawing/stroke/Strands.tsx";
import { UprightStrokes } from "../drawing/stroke/UprightStrokes.tsx";
import { cutFigures } from "./cut-figures.ts";
import { inkedBoxes } from "./inked-boxes.ts";
import { seenForces, type SeenForces } from "./seen-forces.ts";

interface Shown {
  /** The scheme the run is of. */
  of: Scheme | null;
  /** False while another answer is awaited: what is drawn is pencil. */
  stand: boolean;
  deflected: boolean;
}

/**
 * Where the load goes, on every view: strands on elevations, in sections and on the picture; what a plan cuts of them;
 * the deflected shape on elevations where it is asked for. Of an earlier answer they are pencil.
 */
export function forcesLayer(forces: RunForces | null, { of, stand, deflected }: Shown): ViewLayer | undefined {
  if (forces === null || of === null) return undefined;
  const seenOn = once((place: LayerPlace) =>
    seenForces(place.scheme === of ? forces : withinUnmoved(forces, of, place.scheme), place),
  );
  return {
    ink: (place) => (
      <>
        <Inked seen={seenOn(place)} place={place} faint={!stand} />
        {deflected && stand && place.view === "elevation" ? (
          <Deflected scheme={place.scheme} side={place.side} view={place.transform} shape={forces.deflected} />
        ) : null}
      </>
    ),
    covers: (place) => {
      const { strands, uprights, toPx } = seenOn(place);
      return inkedBoxes([
        ...strands.map(({ points }) => points.map(toPx)),
        ...uprights.map(({ from, to }) => [toPx(from), toPx(to)]),
      ]);
    },
    figures: (place, units): LayerLabel[] =>
      place.view === "plan" && stand ? cutFigures(seenOn(place).crossings, place.transform, units) : [],
  };
}

interface InkedProps {
  seen: SeenForces;
  place: LayerPlace;
  faint: boolean;
}

function Inked({ seen: { strands, uprights, crossings, toPx }, place: { transform }, faint }: InkedProps): ReactNode {
  const { pxPerM } = transform;
  return (
    <>
      {strands.length === 0 ? null : <Strands strands={strands} toPx={toPx} pxPerM={pxPerM} faint={faint} />}
      <UprightStrokes uprights={uprights} toPx={toPx} pxPerM={pxPerM} faint={faint} />
      {crossings.length === 0 ? null : <CutRounds crossings={crossings} view={transform} faint={faint} />}
    </>
  );
}

/** Kept by place: ink, boxes and figures of one drawing are of one finding. */
function once<R>(find: (place: LayerPlace) => R): (place: LayerPlace) => R {
  const known = new WeakMap<LayerPlace, { found: R }>();
  return (place) => {
    const kept = known.get(place) ?? { found: find(place) };
    known.set(place, kept);
    return kept.found;
  };
}

/** What an earlier scheme had stays, as pencil, in units that are where they were. */
function withinUnmoved({ strands, path }: RunForces, of: Scheme, scheme: Scheme): Pick<RunForces, "strands" | "path"> {
  const before = new Map(of.containers.map((container) => [container.id, JSON.stringify(container)]));
  const still = new Set(
    scheme.containers.filter((each) => before.get(each.id) === JSON.stringify(each)).map(({ id }) => id),
  );
  return {
    strands: strands.filter(({ unitId }) => still.has(unitId)),
    path: path.filter(({ elementId }) => still.has(elementId)),
  };
}
