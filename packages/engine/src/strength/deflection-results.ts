import type { Scheme } from "@cornerway/schema";
import { buildingSolver, type BuildingCombination } from "../building.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Check } from "../checks/check.ts";
import type { CheckedElement } from "../checks/limit-state.ts";
import { gapClosure } from "../checks/deflection.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { SiteActions } from "../loads/site-actions.ts";
import { buildModel, type BuiltModel } from "../model/build-model.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";
import { unitLinesOf } from "../model/unit-lines-of.ts";
import { crossMemberSag } from "./cross-member-sag.ts";
import type { ElementResult } from "./element-result.ts";
import { memberStretches } from "./member-stretches.ts";
import type { StrengthMemory } from "./solve-runs.ts";
import { statedResult } from "./stated-result.ts";
import { unitBeams } from "./unit-beams.ts";

type Accepted = Extract<SiteActions, { accepted: true }>;
const sagging = [
  "bottom side rail",
  "top side rail",
  "added beam",
  "sill",
  "front header",
  "door header",
  "cross member",
] as const satisfies readonly CheckedElement[];
type Sagging = { readonly element: (typeof sagging)[number]; readonly place: string };
type Sag = Sagging & { readonly spanMm: number; readonly deadMm: number; readonly wholeMm: number };

/**
 * Rails, sills, headers, cross members and heads of openings at service level: all loads against 1/240 of the span, imposed load alone (the difference to dead
 * load alone) against 1/360, as for floors; and the rail of a unit on another against the gap between the two. Sag is measured
 * from the line between the ends of the stretch. Nothing is said where the building does not stand so.
 */
export function deflectionResults(
  scheme: Scheme,
  analysis: Analysis,
  { dead, imposed }: Accepted,
  basis: CheckBasis,
  memory: StrengthMemory,
): ElementResult[] {
  const cases = [dead.most, ...imposed.slice(0, 1)];
  const built = buildModel(analysis, cases, {}, usualAssumptions);
  const whole = Object.fromEntries(cases.map(({ id }) => [id, 1]));
  const answers = buildingSolver(built.model, memory.cache)({ [DEAD]: { [dead.most.id]: 1 }, [WHOLE]: whole });
  const [alone, all] = [answers.get(DEAD), answers.get(WHOLE)];
  if (alone === undefined || all === undefined || "refused" in alone || "refused" in all) return [];
  return scheme.containers.flatMap(({ id }) => {
    const sags = worstOfEach([
      ...sagsOf(id, analysis, built, alone, all),
      ...crossMembers(built, id, dead.most.id, Object.keys(whole)),
    ]);
    const onUnit = analysis.bearings.some(
      ({ unitId, contacts }) =>
        unitId === id && contacts.some(({ target }) => target.on === "fitting" || target.on === "rail"),
    );
    return sags.flatMap((sag) =>
      [...sagChecks(sag, basis), ...(onUnit ? gapChecks(sag) : [])].map(([place, check]) =>
        statedResult({ ownerId: id, place: `${sag.place}, ${place}`, run: "D + L, service level" }, check),
      ),
    );
  });
}

const [DEAD, WHOLE] = ["D", "D + L"];
/** Clear between the rail of an upper unit and that of the one below, at its least: 18.5 mm less what the base may stand low. */
const RAIL_GAP_MM = 17;
/** Of sag nobody sees. */
const LEAST_MM = 0.1;

function sagChecks({ element, spanMm, deadMm, wholeMm }: Sag, basis: CheckBasis): [string, Check][] {
  const imposedMm = Math.max(wholeMm - deadMm, 0);
  return [
    ["D + L", basis.deflection({ element, load: "D + L", deflectionMm: wholeMm, spanMm, spanOver: 240 })],
    ["L", basis.deflection({ element, load: "L", deflectionMm: imposedMm, spanMm, spanOver: 360 })],
  ];
}

const gapChecks = ({ element, wholeMm }: Sag): [string, Check][] =>
  element === "bottom side rail" ? [["gap below", gapClosure(element, wholeMm, RAIL_GAP_MM)]] : [];

function sagsOf(
  unitId: string,
  { structure }: Analysis,
  { model, plan }: BuiltModel,
  alone: BuildingCombination,
  all: BuildingCombination,
): Sag[] {
  const unit = structure.building.unitById.get(unitId);
  const placed = model.units.find(({ id }) => id === unitId);
  if (unit === undefined || placed === undefined) throw new RangeError(`container ${unitId} is not in the model`);
  const lines = unitLinesOf(structure, plan, unit, usualAssumptions);
  const stretches = memberStretches(unitId, unitBeams(placed.fragment, lines), lines, () => "");
  const [dead, whole] = [alone.unit(unitId).displacements, all.unit(unitId).displacements];
  return stretches.flatMap(({ member: { element }, place, beams }): Sag[] => {
    if (!isSagging(element) || element === "cross member") return [];
    const chain = nodesAlong(placed, beams);
    const [first, last] = [chain[0], chain.at(-1)];
    if (first === undefined || last === undefined || first.z !== last.z) return [];
    const spanMm = Math.max(Math.abs(last.x - first.x), Math.abs(last.y - first.y));
    const sag = { element, place, spanMm, deadMm: sagAlong(chain, dead), wholeMm: sagAlong(chain, whole) };
    return sag.wholeMm < LEAST_MM ? [] : [sag];
  });
}

const isSagging = (element: CheckedElement): element is Sagging["element"] => sagging.some((one) => one === element);

function crossMembers({ model }: BuiltModel, unitId: string, dead: string, cases: readonly string[]): Sag[] {
  const placed = model.units.find(({ id }) => id === unitId);
  const sag = placed && crossMemberSag(placed, dead, cases);
  return sag === undefined ? [] : [{ element: "cross member", place: "all", ...sag }];
}

type Node = PlacedUnit["fragment"]["nodes"][number];

/** Nodes of a level stretch from one end to the other. */
function nodesAlong({ fragment }: PlacedUnit, beams: readonly { readonly id: string }[]): Node[] {
  const names = new Set(beams.map(({ id }) => id));
  const ends = new Set(fragment.beams.filter(({ id }) => names.has(id)).flatMap(({ i, j }) => [i, j]));
  return fragment.nodes.filter(({ id }) => ends.has(id)).toSorted((a, b) => a.x - b.x || a.y - b.y);
}

/** Greatest distance below the line between the ends, mm. */
function sagAlong(chain: readonly Node[], moved: Readonly<Record<string, readonly number[]>>): number {
  const down = (node: Node | undefined): number => -((node && moved[node.id]?.[2]) ?? 0);
  const [first, last] = [chain[0], chain.at(-1)];
  if (first === undefined || last === undefined) return 0;
  const along = (node: Node): number => Math.abs(node.x - first.x) + Math.abs(node.y - first.y);
  const length = along(last);
  return chain.reduce((most, node) => {
    const line = down(first) + ((down(last) - down(first)) * along(node)) / length;
    return Math.max(most, down(node) - line);
  }, 0);
}

/** Two stretches of one name are told by the one that sags most for its span. */
function worstOfEach(sags: readonly Sag[]): Sag[] {
  const worst = new Map<string, Sag>();
  for (const sag of sags) {
    const key = `${sag.element} ${sag.place}`;
    const known = worst.get(key);
    if (known === undefined || sag.wholeMm / sag.spanMm > known.wholeMm / known.spanMm) worst.set(key, sag);
  }
  return [...worst.values()];
}
