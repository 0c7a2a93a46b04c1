import type { FactOf, JudgedPart, Mark, PointMm, Verdict } from "@cornerway/schema";
import type { ElementResult } from "../strength/element-result.ts";
import type { HoldNeeded } from "../strength/holds-needed.ts";
import type { Strength } from "../strength/strength-of.ts";
import type { StrengthReason } from "../strength/strength-reason.ts";
import type { UnitStrength } from "../strength/unit-strength.ts";
import { rounded, toKn } from "../units.ts";
import { markOf } from "./mark-of.ts";

type Judged = Extract<Strength, { accepted: true }>;
type Open = FactOf<"strength-open">;

/** Parts told in one mark; the others are counted. */
const TOLD = 5;

/** What strength notes of each unit: beyond its strength, left open, pulled or pushed with nothing to hold it, or within. */
export function strengthMarks(answer: Judged, placeOf: (elementId: string) => PointMm): Mark[] {
  const results = new Map(answer.results.map((result) => [result.id, result]));
  return answer.units.flatMap((unit) => {
    const at = placeOf(unit.unitId);
    const parts = partsByReason(unit, results);
    return [
      ...overstressed(unit, parts.over, at),
      ...open(unit, parts.open, at),
      ...holdsOf(unit).map((hold) => holdMark(hold, unit.unitId, at)),
      ...lateralMarks(unit, at),
      ...adequate(unit, answer, at),
    ];
  });
}

type OpenPart = { readonly why: Open["parts"][number]["why"]; readonly result: ElementResult };

function partsByReason({ reasons }: UnitStrength, results: ReadonlyMap<string, ElementResult>) {
  const over: ElementResult[] = [];
  const open: OpenPart[] = [];
  for (const reason of reasons) {
    if (!("partId" in reason)) continue;
    const result = results.get(reason.partId);
    if (result === undefined) throw new RangeError(`strength says nothing of ${reason.partId}`);
    if (reason.kind === "over") over.push(result);
    else open.push({ why: whys[reason.kind], result });
  }
  return { over, open };
}

const whys = {
  "assumption decides": "an assumption decides",
  "beyond its bound": "beyond its lower bound",
  "strength refused": "no strength stated",
  "not covered": "not covered",
  "over if held down": "over once held",
} as const;

function overstressed({ unitId }: UnitStrength, over: readonly ElementResult[], at: PointMm): Mark[] {
  if (over.length === 0) return [];
  const fact = {
    kind: "overstressed",
    parts: over.slice(0, TOLD).map(judged),
    more: Math.max(0, over.length - TOLD),
  } as const;
  return [strengthMark(unitId, fact, "does not work", at, over)];
}

function open({ unitId, reasons }: UnitStrength, found: readonly OpenPart[], at: PointMm): Mark[] {
  const others = otherCauses(reasons);
  const windLimits = reasons.flatMap((reason) => (reason.kind === "wind outside its limits" ? reason.limits : []));
  if (found.length === 0 && others.length === 0) return [];
  const fact: Open = {
    kind: "strength-open",
    parts: found.slice(0, TOLD).map(({ why, result }) => ({ why, ...judged(result) })),
    more: Math.max(0, found.length - TOLD),
    others,
    ...(windLimits.length > 0 && { windLimits }),
  };
  return [
    strengthMark(
      unitId,
      fact,
      "needs the engineer",
      at,
      found.map(({ result }) => result),
    ),
  ];
}

function otherCauses(reasons: readonly StrengthReason[]): Open["others"] {
  const found = reasons.flatMap((reason): Open["others"] => {
    switch (reason.kind) {
      case "wind outside its limits":
        return ["wind outside its limits"];
      case "seismic system refused":
      case "seismic system not drawn":
      case "simplified path closed":
        return ["no earthquake system"];
      case "irregular":
        return ["irregular against earthquakes"];
      case "no lateral wall":
        return reason.gap.wholeStorey ? [] : ["no wall of its own counts sideways"];
      case "left out of the model":
      case "sheet walls otherwise":
        return ["left out of the model"];
      case "moves":
      case "runs without equilibrium":
        return ["no equilibrium even held"];
      default:
        return [];
    }
  });
  return [...new Set(found)];
}

const holdsOf = ({ reasons }: UnitStrength): HoldNeeded[] =>
  reasons.flatMap((reason) => (reason.kind === "hold not drawn" ? [reason.hold] : []));

function holdMark(hold: HoldNeeded, unitId: string, at: PointMm): Mark {
  const common = { places: [...hold.places], forceKn: rounded(toKn(hold.forceN)), run: hold.run };
  const fact: FactOf<"uplift"> | FactOf<"slides"> =
    hold.kind === "uplift"
      ? { kind: "uplift", ...common }
      : { kind: "slides", ...common, frictionKn: rounded(toKn(hold.frictionN)) };
  const elements = hold.ownerId === unitId ? [unitId] : [unitId, hold.ownerId];
  return markOf({ fact, verdict: "does not work", certainty: "common practice", elements, at, basis: EQUILIBRIUM });
}

function lateralMarks({ unitId, reasons }: UnitStrength, at: PointMm): Mark[] {
  return reasons.flatMap((reason): Mark[] => {
    if (reason.kind !== "no lateral wall" || !reason.gap.wholeStorey) return [];
    const { way, walls } = reason.gap;
    const fact: FactOf<"no-lateral-wall"> = {
      kind: "no-lateral-wall",
      way,
      walls: walls.map(({ face, fails }) => ({ face, fails: [...fails] })),
    };
    return [
      markOf({
        fact,
        verdict: "does not work",
        certainty: "memory",
        elements: [unitId],
        part: way,
        at,
        basis: CONDITIONS,
      }),
    ];
  });
}

const CONDITIONS =
  "Conditions of the building code's table of container walls; a storey needs a wall or a frame each way.";

const EQUILIBRIUM = "Equilibrium of the whole building, bearings in contact; strength level.";

/** Under gravity alone nothing is settled: wind and earthquakes may ask for more. */
function adequate(unit: UnitStrength, { results, under }: Judged, at: PointMm): Mark[] {
  if (unit.verdict !== "works as built" && unit.verdict !== "works with steel") return [];
  const own = results.filter(({ ownerId }) => ownerId === unit.unitId);
  const [worst] = own;
  if (worst === undefined) return [];
  const fact = { kind: "strength-adequate", under, governing: judged(worst), parts: own.length } as const;
  return [strengthMark(unit.unitId, fact, under === "all loads" ? unit.verdict : "not checked", at, [worst])];
}

function strengthMark(
  unitId: string,
  fact: Mark["fact"],
  verdict: Verdict,
  at: PointMm,
  [worst]: readonly ElementResult[],
): Mark {
  const clause = worst?.working?.clause;
  const basis = clause === undefined ? EQUILIBRIUM : `${clause.document} ${clause.edition}, ${clause.place}.`;
  return markOf({ fact, verdict, certainty: worst?.certainty ?? "common practice", elements: [unitId], at, basis });
}

/** A part as marks tell it. */
export function judged(result: ElementResult): JudgedPart {
  const { id, element, place, limitState, utilisation, ifProved, upperBound, wouldDo, governingRun } = result;
  return {
    partId: id,
    part: element,
    place,
    check: limitState,
    utilisation: utilisation === undefined ? null : rounded(utilisation),
    ...(ifProved !== undefined && { ifProved: rounded(ifProved) }),
    ...(upperBound !== undefined && { upperBound: rounded(upperBound) }),
    ...(wouldDo && { wouldDo }),
    run: governingRun,
    ...spanOf(result),
  };
}

/** Only of runs that stand as drawn; a set in which a strength is refused is the worst. */
function spanOf({ envelope }: ElementResult): Pick<JudgedPart, "envelope"> {
  const sets = Object.entries(envelope).toSorted(([, a], [, b]) => (a ?? Infinity) - (b ?? Infinity));
  const [first, last] = [sets[0], sets.at(-1)];
  if (first === undefined || last === undefined || typeof first[1] !== "number") return {};
  const most = typeof last[1] === "number" ? rounded(last[1]) : null;
  return { envelope: { least: rounded(first[1]), leastIn: first[0], most, mostIn: last[0] } };
}
