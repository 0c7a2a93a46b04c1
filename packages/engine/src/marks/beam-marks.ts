import type { Mark } from "@cornerway/schema";
import { beamThroughUnit } from "../bearing/beam-through-unit.ts";
import { unitsNear } from "../geometry/building.ts";
import { alongBeam, onBeam, type PlacedBeam } from "../geometry/placed-beam.ts";
import { beamSeatingMm } from "../geometry/tolerances.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { BeamRun } from "../load-path/run-down.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** What is to be said of one added beam: what holds it, what it holds, what it is drawn through. */
export function beamMarks(analysis: Analysis, beam: PlacedBeam): Mark[] {
  const run = analysis.run.beams.find(({ beamId }) => beamId === beam.id);
  return [
    ...endMarks(analysis, beam),
    ...(run === undefined ? [] : liftMarks(beam, run)),
    ...loadMarks(analysis, beam, run),
    ...throughMarks(analysis, beam),
  ];
}

function endMarks({ beamSupports }: Analysis, beam: PlacedBeam): Mark[] {
  const places = (beamSupports.get(beam.id) ?? []).map(({ uMm }) => uMm);
  const first = places[0] ?? beam.lengthMm;
  const last = places.at(-1) ?? 0;
  if (places.length < 2) {
    const pastMm = Math.max(first, beam.lengthMm - last);
    return [endMark(beam, places.length, pastMm, first >= beam.lengthMm - last ? 0 : beam.lengthMm)];
  }
  const seatingMm = Math.max(beamSeatingMm, beam.depthMm);
  return [
    ...(first > seatingMm ? [endMark(beam, places.length, first, 0)] : []),
    ...(beam.lengthMm - last > seatingMm ? [endMark(beam, places.length, beam.lengthMm - last, beam.lengthMm)] : []),
  ];
}

const endMark = (beam: PlacedBeam, supports: number, pastMm: number, uMm: number): Mark =>
  markOf({
    fact: { kind: "beam-end-without-support", supports, pastMm: rounded(pastMm) },
    verdict: supports < 2 ? "does not work" : "not checked",
    certainty: "derived",
    elements: [beam.id],
    ...(supports < 2 ? {} : { part: uMm === 0 ? "from" : "to" }),
    at: onBeam(beam, uMm),
    basis:
      "Geometry and statics: supports are posts, fittings, rails, pads and beams that lead to the ground, within 25 mm under the beam or where its end is framed into them (common practice, no published source). A beam needs two.",
  });

function liftMarks(beam: PlacedBeam, { upliftKn, tips, supports, reactionsKn }: BeamRun): Mark[] {
  if (upliftKn === 0) return [];
  const off = supports.find((_, at) => reactionsKn[at] === 0) ?? supports[0];
  return [
    markOf({
      fact: { kind: "beam-lifts", upliftKn: rounded(upliftKn), tips },
      verdict: tips ? "does not work" : "not checked",
      certainty: "common practice",
      elements: [beam.id],
      at: onBeam(beam, off?.uMm ?? 0),
      basis:
        "Statics: loads past a support lift the beam off another; supports press and do not pull. Loads as drawn everywhere at once, weight of the beam left out, ± not known.",
    }),
  ];
}

function loadMarks(analysis: Analysis, beam: PlacedBeam, run: BeamRun | undefined): Mark[] {
  const holds = holdsOf(analysis, beam.id);
  const at = onBeam(beam, beam.lengthMm / 2);
  if (holds.length === 0)
    return [
      markOf({
        fact: { kind: "beam-holds-nothing" },
        verdict: "not checked",
        certainty: "derived",
        elements: [beam.id],
        at,
        basis:
          "Geometry: no fitting, rail, post or beam within 25 mm above it, no seat on it, and no top rail that it runs along under.",
      }),
    ];
  if (run === undefined) return [];
  const forceKn = run.loads.reduce((sum, load) => sum + load.forceKn, 0);
  return [
    markOf({
      fact: {
        kind: "beam-carries",
        forceKn: rounded(forceKn),
        spanMm: rounded(run.longestSpanMm),
        momentKnm: rounded(run.momentKnm),
        holds,
      },
      verdict: "not checked",
      certainty: "common practice",
      elements: [beam.id, ...holds],
      named: 1,
      at,
      basis:
        "Statics from tare, finishes and imposed loads, unfactored, each span simply supported, weight of the beam left out, ± not known. Strength, bracing, deflection and connections not judged.",
    }),
  ];
}

/** Units, posts and beams on it, and units whose top rail it runs along under. Those of a beam that leads nowhere stand on nothing. */
function holdsOf({ bearings, footings, beamSupports, railBeams }: Analysis, beamId: string): string[] {
  const units = bearings
    .filter(({ contacts }) => contacts.some(({ target }) => target.on === "beam" && target.elementId === beamId))
    .map(({ unitId }) => unitId);
  const posts = [...footings].filter(([, footing]) => footing.on === "beam" && footing.elementId === beamId);
  const beams = [...beamSupports].filter(([, own]) =>
    own.some(({ target }) => target.on === "beam" && target.elementId === beamId),
  );
  const rails = railBeams.filter(({ beam }) => beam.id === beamId).map(({ unitId }) => unitId);
  return [...new Set([...units, ...rails, ...[...posts, ...beams].map(([id]) => id)])].toSorted();
}

const throughMarks = ({ structure: { building } }: Analysis, beam: PlacedBeam): Mark[] =>
  unitsNear(building, beam.outline).flatMap((unit) => {
    const through = beamThroughUnit(unit, beam);
    if (through === undefined) return [];
    return [
      markOf({
        fact: { kind: "beam-through-unit", through },
        verdict: through === "sheet" ? "not checked" : "does not work",
        certainty: "common practice",
        elements: [beam.id, unit.id],
        at: onBeam(beam, alongBeam(beam, unit.frame).uMm),
        basis:
          "Geometry: the beam is drawn where the container has this part. Member sizes of the generic specification.",
      }),
    ];
  });
