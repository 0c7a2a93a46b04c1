import type { Unit } from "../geometry/building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { UnitLoad } from "./loads-on-units.ts";
import { actionLoader } from "./action-loads.ts";
import type { ModelCase, Triple } from "./analytical-model.ts";
import type { BearingPlan } from "./bearing-plan.ts";
import type { UnitPoint } from "./unit-point.ts";
import { nodeName, type PlacedUnit } from "./building-model.ts";
import type { ModelAssumptions } from "./model-assumptions.ts";
import { LastMade } from "../numerics/last-made.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import { textKey } from "./text-key.ts";
import type { TiedPoint } from "./tie-plan.ts";
import { turned, turnOf } from "./turn.ts";
import { unitFragment, withSheets, type BuiltUnit } from "./unit-fragment.ts";
import { seatIn, unitLinesOf } from "./unit-lines-of.ts";
import type { UnitLines } from "./unit-lines.ts";

/** Containers with the same lines share one fragment, also from one model to the next. */
function fragmentOf(lines: UnitLines, key: string): BuiltUnit {
  return drawn.take(key, () => {
    let first = false;
    const alike = alikeButForSheets.take(butForSheets(lines), () => {
      first = true;
      return unitFragment(lines, key);
    });
    return first ? alike : withSheets(alike, lines, key);
  });
}

const drawn = new RecentlyMade<BuiltUnit>(128);

/** Sets of assumptions differ in their sheets alone: the lines are drawn for the first of them. */
const alikeButForSheets = new RecentlyMade<BuiltUnit>(128);

/** And those that are loaded alike besides the loads on their lines: an edit changes one container of many. */
const loaded = new RecentlyMade<Loads>(128);

type Loads = Pick<PlacedUnit, "loads" | "loadsKey">;

/** The last of each container, by the lists of its loads. */
const last = new LastMade<Loads>();
const NO_LOADS: readonly UnitLoad[] = [];

/** What their loads hang on. */
const places = new RecentlyMade<string>(128);

/** One container with the names of its bearing points in the building. */
export class ModelledUnit {
  readonly unit: Unit;
  private readonly lines: UnitLines;
  private readonly key: string;
  private readonly built: BuiltUnit;

  constructor(analysis: Analysis, plan: BearingPlan, unit: Unit, assumptions: ModelAssumptions) {
    this.unit = unit;
    this.lines = unitLinesOf(analysis.structure, plan, unit, assumptions);
    this.key = JSON.stringify(this.lines);
    this.built = fragmentOf(this.lines, this.key);
  }

  node(point: UnitPoint): string {
    const seat = seatIn(this.lines, point);
    if (seat !== null) return nodeName(this.unit.id, this.built.bearingPoint(seat));
    if (!("corner" in point)) throw new RangeError(`container ${this.unit.id} has no such bearing point`);
    const { end, side, level } = point.corner;
    return nodeName(this.unit.id, this.built.corners(end, side, level));
  }

  /** The node a tie is made to. */
  tiedNode(point: TiedPoint): string {
    return "tied" in point ? nodeName(this.unit.id, this.built.tiedPoint(point.tied)) : this.node(point);
  }

  /** Place of a bearing point in the site frame. */
  at(point: UnitPoint): Triple {
    const name = this.node(point);
    const node = this.built.fragment.nodes.find(({ id }) => nodeName(this.unit.id, id) === name);
    const { frame } = this.unit;
    const [x, y, z] = turned(turnOf(frame.turnMdeg), [node?.x ?? NaN, node?.y ?? NaN, node?.z ?? NaN]);
    return [x + frame.xMm, y + frame.yMm, z + frame.zMm];
  }

  /** `known`: the same unit under these actions, or more, with its loads worked out. */
  placed(
    actions: readonly (readonly [string, ReadonlyMap<string, readonly UnitLoad[]>])[],
    known?: PlacedUnit,
  ): PlacedUnit {
    const { id, frame, dimensions } = this.unit;
    const place = { id, fragment: this.built.fragment, turnMdeg: frame.turnMdeg, at: placeOf(this.unit) };
    if (known?.loadsKey !== undefined)
      return {
        ...place,
        ...takenFrom(
          known,
          known.loadsKey,
          actions.map(([name]) => name),
        ),
      };
    const own = actions.map(([name, byElement]) => [name, byElement.get(id) ?? NO_LOADS] as const);
    const by = [this.built, ...own.flat()];
    return { ...place, ...last.take(this.unit, by, () => this.loaded(own, dimensions)) };
  }

  private loaded(own: readonly (readonly [string, readonly UnitLoad[]])[], dimensions: Unit["dimensions"]): Loads {
    const hasPoints = own.some(([, loads]) => loads.some(({ kind }) => kind === "point"));
    const text = JSON.stringify([
      hasPoints ? this.unit.frame : null,
      places.take(this.key, () => placesLoaded(this.lines)),
      own.map(([name, loads]) => [name, withoutIds(loads)]),
    ]);
    return loaded.take(`${text} ${JSON.stringify(dimensions)} ${this.built.fragment.key}`, () => {
      const loadsOf = actionLoader(this.unit, this.built);
      const loads = own.map(([name, ofUnit]): [string, ModelCase] => [name, loadsOf(ofUnit)]);
      // short, since the loads are long and the key is asked for again and again
      return { loads: Object.fromEntries(loads), loadsKey: textKey(text) };
    });
  }
}

const placeOf = ({ frame }: Unit): Triple => [frame.xMm, frame.yMm, frame.zMm];

/** Which sheets there are belongs to the lines, how stiff they are does not. */
const butForSheets = (lines: UnitLines): string =>
  JSON.stringify(lines, (key, value: unknown) => (SHEETS.has(key) ? value !== null : value));

/** What the names and the sizes of loads on a container hang on: its lines, whatever their stiffness. */
const placesLoaded = (lines: UnitLines): string =>
  JSON.stringify(lines, (key, value: unknown) => (SHEETS.has(key) || STEEL.has(key) ? undefined : value));

const SHEETS: ReadonlySet<string> = new Set([
  "sideSheet",
  "frontSheet",
  "doors",
  "floorShear",
  "roofShear",
  "roofAcross",
]);
const STEEL: ReadonlySet<string> = new Set(["sections", "section", "measured"]);

/** Some of the loads of a unit that is known, in their own order. */
function takenFrom({ loads }: PlacedUnit, key: string, names: readonly string[]): Loads {
  const taken = names.map((name): [string, ModelCase] => [name, loads[name] ?? {}]);
  const all = names.length === Object.keys(loads).length;
  return { loads: Object.fromEntries(taken), loadsKey: all ? key : `${key} ${names.join("; ")}` };
}

/** Pressures in face coordinates say nothing of the container they act on; points do, and keep their place. */
function withoutIds(loads: readonly UnitLoad[]): unknown[] {
  return loads.map((load) => ("containerId" in load ? { ...load, containerId: "" } : load));
}
