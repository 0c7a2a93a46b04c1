import type { Mark } from "@cornerway/schema";
import type { Contact } from "../bearing/contact.ts";
import type { Unit } from "../geometry/building.ts";
import { toSite } from "../geometry/place.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { resultantOf } from "../load-path/resultant.ts";
import type { UnitRun } from "../load-path/run-down.ts";
import { standOf } from "../load-path/unit-statics.ts";
import { rounded } from "../units.ts";
import { compassPoint } from "./compass.ts";
import { markOf } from "./mark-of.ts";
import { openEnds } from "./open-ends.ts";
import { nearTippingMarks } from "./near-tipping-marks.ts";
import type { Standing } from "./standing.ts";

/** How one unit stands as a body: overhangs, tipping, and the ways it is free to move. */
export function standMarks(analysis: Analysis, standing: Standing, unit: Unit, run: UnitRun): Mark[] {
  const above = () => standing.unitsAbove(unit.id);
  switch (run.stand.state) {
    case "falls":
      return [mechanismMark(unit, above(), "falls", "does not work")];
    case "turns":
      return [mechanismMark(unit, above(), "turns", "does not work")];
    case "lifts":
      return [mechanismMark(unit, above(), "lifts", "does not work")];
    case "tips":
      return [tipsMark(analysis, unit, run, above(), run.stand.outsideMm)];
    case "stands":
      return [
        ...tipsEmptyMarks(analysis, unit, above()),
        ...(isHeld(run) ? [...heldMarks(analysis, unit, run), ...keptDownMarks(analysis, unit, run)] : []),
        ...nearTippingMarks(analysis, unit, run, above()),
        ...overhangMarks(analysis, unit, run),
        ...slidingMarks(unit, run),
      ];
  }
}

/** A unit that only its imposed loads, or those of what stands on it, keep from tipping. */
function tipsEmptyMarks(analysis: Analysis, unit: Unit, above: readonly string[]): Mark[] {
  if (analysis.emptyRun === analysis.run) return [];
  const run = analysis.emptyRun.units.find(({ unitId }) => unitId === unit.id);
  if (run?.stand.state !== "tips") return [];
  const { fact, ...mark } = tipsMark(analysis, unit, run, above, run.stand.outsideMm);
  return fact.kind === "tips-over" ? [{ ...mark, fact: { ...fact, whenEmpty: true }, basis: emptyBasis }] : [];
}

const emptyBasis =
  "Statics: without imposed loads, which come and go, the resultant of tare (middle of the type's range), finishes and all from above does not lie within the bearings; nothing that holds down is drawn.";

const mechanismMark = (
  unit: Unit,
  above: readonly string[],
  direction: "falls" | "turns" | "lifts" | "slides",
  verdict: Mark["verdict"],
): Mark =>
  markOf({
    fact: { kind: "mechanism", direction },
    verdict,
    certainty: "derived",
    elements: [unit.id, ...above],
    named: 1,
    at: toSite(unit.frame, { xMm: 0, yMm: 0, zMm: 0 }),
    basis: mechanismBasis[direction],
  });

const mechanismBasis = {
  falls: "Statics: no bearing is drawn under this unit, its load has no way to the ground.",
  turns: "Statics: its bearings lie on one point or one line and leave it free to turn.",
  lifts:
    "Statics: what it holds down pulls up by more than its tare, finishes, imposed loads and all from above, and none of its own bearings is held down enough to balance that.",
  slides: "Statics: it stands on posts alone and nothing drawn holds it sideways. Fixity of posts not judged.",
} as const;

/** Standing on posts alone with nothing to hold it sideways; whether their feet can is a question of strength. */
function slidingMarks(unit: Unit, { contacts }: UnitRun): Mark[] {
  const onPosts = contacts.length > 0 && contacts.every(({ target }) => target.on === "post");
  return onPosts ? [mechanismMark(unit, [], "slides", "not checked")] : [];
}

/** What holds a unit down where it would tip without it, with the pull of each, kN. */
type Pull = { readonly id: string; readonly forceKn: number };

const isHeld = ({ contacts }: UnitRun): boolean => contacts.some(({ heldById }) => heldById !== undefined);

/** The seats and locks of a unit that pull, once each, by id. */
function pullsOf({ contacts, forcesKn }: UnitRun): Pull[] {
  const byHolder = new Map<string, number>();
  contacts.forEach(({ heldById }, at) => {
    const forceKn = rounded(-(forcesKn[at] ?? 0));
    if (heldById !== undefined && forceKn > 0) byHolder.set(heldById, (byHolder.get(heldById) ?? 0) + forceKn);
  });
  return [...byHolder].map(([id, forceKn]) => ({ id, forceKn })).toSorted((a, b) => (a.id < b.id ? -1 : 1));
}

const heldFact = (pulls: readonly Pull[]) =>
  pulls.length === 0
    ? {}
    : { heldDownKn: rounded(pulls.reduce((sum, { forceKn }) => sum + forceKn, 0)), heldBy: pulls.length };

/** A unit that only what is drawn to hold it down keeps from tipping, with its imposed loads or without them. */
function heldMarks(analysis: Analysis, unit: Unit, run: UnitRun): Mark[] {
  const empty = analysis.emptyRun.units.find(({ unitId }) => unitId === unit.id) ?? run;
  const held = [run, empty].find((each) => pullsOf(each).length > 0 && withoutPulls(each).state === "tips");
  if (held === undefined) return [];
  const stand = withoutPulls(held);
  if (stand.state !== "tips") return [];
  const pulls = pullsOf(held);
  const { fact, ...mark } = tipsMark(analysis, unit, held, [], stand.outsideMm);
  if (fact.kind !== "tips-over") return [];
  return [
    {
      ...mark,
      verdict: "not checked",
      elements: [unit.id, ...pulls.map(({ id }) => id)],
      fact: { ...fact, ...(held === run ? {} : { whenEmpty: true }), ...heldFact(pulls) },
      basis: heldBasis,
    },
  ];
}

/** A unit pulled up by more than it weighs that its own hold-downs keep on its bearings, with its imposed loads or without. */
function keptDownMarks(analysis: Analysis, unit: Unit, run: UnitRun): Mark[] {
  const empty = analysis.emptyRun.units.find(({ unitId }) => unitId === unit.id) ?? run;
  const pulled = [run, empty].find((each) => each.stand.state === "stands" && each.resultant.forceKn <= 0);
  if (pulled === undefined) return [];
  const pulls = pullsOf(pulled);
  const { fact, ...mark } = mechanismMark(
    unit,
    pulls.map(({ id }) => id),
    "lifts",
    "not checked",
  );
  return fact.kind === "mechanism" ? [{ ...mark, fact: { ...fact, ...heldFact(pulls) }, basis: heldBasis }] : [];
}

const withoutPulls = ({ contacts, resultant }: UnitRun) =>
  standOf(
    contacts.map(({ localXMm: xMm, localYMm: yMm }) => ({ xMm, yMm })),
    resultant,
  );

const heldBasis =
  "Statics of a rigid unit: without what holds it down, the resultant of tare, finishes, imposed loads and all from above does not lie within its bearings; the pull is what keeps it in balance, loads as drawn everywhere at once, ± not known. Strength of the hold-down, of what it pulls on and patterns of load not judged.";

function tipsMark(analysis: Analysis, unit: Unit, run: UnitRun, above: readonly string[], outsideMm: number): Mark {
  const { resultant, contacts } = run;
  const middle = resultantOf(contacts.map(({ localXMm, localYMm }) => ({ forceKn: 1, xMm: localXMm, yMm: localYMm })));
  const from = toSite(unit.frame, { xMm: middle.xMm, yMm: middle.yMm, zMm: 0 });
  const to = toSite(unit.frame, { xMm: resultant.xMm, yMm: resultant.yMm, zMm: 0 });
  const towards = compassPoint(to.xMm - from.xMm, to.yMm - from.yMm, analysis.structure.building.northMdeg);
  return markOf({
    fact: {
      kind: "tips-over",
      outsideMm: rounded(outsideMm),
      weightKn: rounded(resultant.forceKn),
      momentKnm: rounded((resultant.forceKn * outsideMm) / 1000),
      towards,
    },
    verdict: "does not work",
    certainty: "common practice",
    elements: [unit.id, ...above],
    named: 1,
    at: to,
    basis:
      "Statics: the resultant of tare (middle of the type's range), finishes, imposed loads and all from above does not lie within the bearings; nothing that holds down is drawn. Forces below are those as it begins to turn, all of it on its last bearings.",
  });
}

function overhangMarks(analysis: Analysis, unit: Unit, run: UnitRun): Mark[] {
  const corners = analysis.openCorners(unit.id);
  return openEnds(corners).flatMap((end) => overhangMark(analysis, unit, run, end));
}

function overhangMark(analysis: Analysis, unit: Unit, run: UnitRun, end: "front" | "door"): Mark[] {
  const sign = end === "front" ? -1 : 1;
  const line = (["left", "right"] as const).flatMap((side) => outermost(run, side, sign) ?? []);
  const first = line[0];
  if (first === undefined) return [];
  const bearingKn = line.reduce((sum, { forceKn }) => sum + forceKn, 0);
  const cornerMm = unit.dimensions.holeSpacingLengthwiseMm / 2;
  const reachMm = Math.min(...line.map(({ contact }) => contact.localXMm * sign));
  const { cos, sin } = unit.frame;
  const pulls = pullsOf(run);
  const below = line.flatMap(({ contact: { target } }) => (target.on === "ground" ? [] : [target.elementId]));
  return [
    markOf({
      fact: {
        kind: "overhang",
        lengthMm: rounded(cornerMm - reachMm),
        towards: compassPoint(sign * cos, sign * sin, analysis.structure.building.northMdeg),
        bearingKn: rounded(bearingKn),
        tailReactionKn: rounded(run.resultant.forceKn - bearingKn),
        ...heldFact(pulls),
      },
      verdict: "not checked",
      certainty: "common practice",
      elements: [unit.id, ...[...new Set(below)].toSorted(), ...pulls.map(({ id }) => id)],
      named: 1,
      part: end,
      at: first.contact.at,
      basis:
        "Length from the corner fitting's hole centre to the bearing taken to be packed at the last rail or fitting below. Statics of a rigid unit, loads as drawn everywhere at once, ± not known; strength and patterns of load not judged.",
    }),
  ];
}

function outermost(
  run: UnitRun,
  side: "left" | "right",
  sign: number,
): { contact: Contact; forceKn: number } | undefined {
  return run.contacts
    .map((contact, at) => ({ contact, forceKn: run.forcesKn[at] ?? 0 }))
    .filter(({ contact }) => contact.side === side)
    .toSorted((a, b) => sign * (b.contact.localXMm - a.contact.localXMm))[0];
}
