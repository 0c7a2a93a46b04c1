import type {
  Assessment,
  CostBook,
  Mark,
  Operation,
  Premium,
  Remedy,
  RemedyList,
  RemedyRefusal,
  RemedyStep,
  Scheme,
} from "@cornerway/schema";
import type { ChartReason } from "../chart/chart.ts";
import { inOrder } from "../geometry/in-order.ts";
import { analyse } from "../load-path/analysis.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import { strengthMarks } from "../marks/strength-marks.ts";
import type { Strength } from "../strength/strength-of.ts";
import { laddersOf } from "./ladders-of.ts";
import { packedAfter } from "./packed.ts";
import { plainStand } from "./plain-stand.ts";
import { bears, moves, proof, type Accepted } from "./proof.ts";
import { quantitiesOf } from "./quantities-of.ts";
import { screened } from "./screen.ts";
import type { Trial } from "./trial.ts";

/** What a search is done with: pure functions of the scheme, handed in so that the search has one memory and one judge. */
export type RemedyTools = {
  /** The scheme with these operations drawn; undefined where it would not take them. */
  readonly draw: (scheme: Scheme, operations: readonly Operation[]) => Scheme | undefined;
  readonly assess: (scheme: Scheme) => Assessment;
  readonly judge: (scheme: Scheme) => Strength;
  readonly premium: (scheme: Scheme, book: CostBook) => Premium;
  readonly book: CostBook;
};

export type RemedyAnswer =
  | { readonly accepted: true; readonly list: RemedyList }
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[] };

/** How many of one kind that pass the load path are kept for strength. */
const MOST_RUNGS = 4;

/** How many changes are run through strength for one mark: each costs a full run of the building. */
const MOST_PROVED = 14;

/**
 * Every known way to settle a mark, proved one by one, the cheapest first. Screened by the load path, then run through strength
 * whole; of each kind the first that works is offered with the one before it that fails. The same list for the same scheme.
 * Throws a RangeError for a mark the scheme does not have.
 */
export function* remediesOf(given: Scheme, markId: string, tools: RemedyTools): Generator<RemedyStep, RemedyAnswer> {
  const scheme = inOrder(given);
  const path = tools.assess(scheme);
  const judged = tools.judge(scheme);
  if (!judged.accepted) return judged;
  const mark = markIn(markId, path, judged);
  const search = new Search(scheme, mark, path, judged, tools);
  while (search.hasNext()) yield* search.proveNext();
  return { accepted: true, list: search.list() };
}

function markIn(markId: string, path: Assessment, judged: Accepted): Mark {
  const found = [...path.marks, ...strengthMarks(judged, () => NOWHERE)].find(({ id }) => id === markId);
  if (found === undefined) throw new RangeError(`no mark ${markId} in this scheme`);
  return found;
}

const NOWHERE = { xMm: 0, yMm: 0, zMm: 0 };

type Rung = {
  /** Its place on the ladder. */
  readonly at: number;
  readonly trial: Trial;
  readonly scheme: Scheme;
  readonly path: Assessment;
  readonly premium: Premium;
};
type Failed = { readonly change: Trial["change"]; readonly why: RemedyRefusal };
/** A ladder on its way up: what is left of it, and what failed, by its place. */
type Climb = { readonly rungs: Rung[]; readonly failed: Map<number, Failed>; apart: Remedy | null; proved: number };

class Search {
  private readonly scheme: Scheme;
  private readonly mark: Mark;
  private readonly unitId: string;
  private readonly judged: Accepted;
  private readonly tools: RemedyTools;
  private readonly before: Premium;
  private readonly climbs: Climb[];
  private readonly failed: Failed[] = [];
  private readonly found: Remedy[] = [];
  private own: Accepted | undefined;
  private looked = 0;
  private proved = 0;

  constructor(scheme: Scheme, mark: Mark, path: Assessment, judged: Accepted, tools: RemedyTools) {
    this.scheme = scheme;
    this.mark = mark;
    this.judged = judged;
    this.tools = tools;
    this.unitId = mark.elements.find((id) => scheme.containers.some((unit) => unit.id === id)) ?? "";
    this.before = tools.premium(scheme, tools.book);
    const ladders = laddersOf({ scheme, analysis: analyse(scheme), mark });
    const drawn = new Set<string>();
    this.climbs = ladders.map((ladder) => this.screen(onceEach(ladder, drawn), path));
  }

  hasNext(): boolean {
    return this.proved < MOST_PROVED && this.climbs.some(({ rungs }) => rungs.length > 0);
  }

  /** Runs the next change: each ladder's first before any one's second, the cheapest of them before the others. */
  *proveNext(): Generator<RemedyStep, void> {
    const climb = this.cheapest();
    const rung = climb?.rungs.shift();
    if (climb === undefined || rung === undefined) return;
    const progress = { done: this.proved, of: Math.min(MOST_PROVED, this.proved + 1 + this.left()) };
    yield { kind: "proving", change: rung.trial.change, ...progress };
    this.proved += 1;
    climb.proved += 1;
    const remedy = this.prove(rung, climb);
    if (remedy !== undefined) yield { kind: "found", remedy, ...progress, done: this.proved };
  }

  list(): RemedyList {
    const offered = this.found.toSorted(cheapestFirst);
    const { failed, looked, proved } = this;
    const apart = this.climbs.flatMap((climb) => climb.apart ?? []);
    return {
      markId: this.mark.id,
      under: this.judged.under,
      offered,
      apart,
      failed,
      looked,
      proved,
      leftOut: this.left(),
    };
  }

  private left(): number {
    return this.climbs.reduce((sum, { rungs }) => sum + rungs.length, 0);
  }

  private cheapest(): Climb | undefined {
    const price = ({ rungs }: Climb) => rungs[0]?.premium.total ?? Infinity;
    const open = this.climbs.filter(({ rungs }) => rungs.length > 0);
    return open.toSorted((a, b) => a.proved - b.proved || price(a) - price(b))[0];
  }

  /** Draws every rung and holds it against the load path; what fails before the first that passes is kept as the less that fails. */
  private screen(ladder: readonly Trial[], before: Assessment): Climb {
    const climb: Climb = { rungs: [], failed: new Map(), apart: null, proved: 0 };
    for (const [at, drawn] of ladder.entries()) {
      this.looked += 1;
      const trial = this.madeGood(drawn);
      const scheme = this.tools.draw(this.scheme, trial.operations);
      const path = scheme && this.tools.assess(scheme);
      const why: RemedyRefusal | undefined =
        path === undefined ? { kind: "cannot be drawn" } : screened(before, path, this.mark);
      if (scheme !== undefined && path !== undefined && why === undefined && climb.rungs.length < MOST_RUNGS)
        climb.rungs.push({ at, trial, scheme, path, premium: this.tools.premium(scheme, this.tools.book) });
      else if (why !== undefined) this.fail(climb, at, { change: trial.change, why });
    }
    return climb;
  }

  /** The change with the packing it makes necessary. */
  private madeGood(trial: Trial): Trial {
    const scheme = this.tools.draw(this.scheme, trial.operations);
    const packing = scheme === undefined ? [] : packedAfter(scheme, this.unitId);
    return packing.length === 0 ? trial : { ...trial, operations: [...trial.operations, ...packing] };
  }

  private fail(climb: Climb, at: number, failed: Failed): void {
    this.failed.push(failed);
    climb.failed.set(at, failed);
  }

  private prove({ at, trial, scheme, path, premium }: Rung, climb: Climb): Remedy | undefined {
    const after = this.tools.judge(scheme);
    if (!after.accepted) throw new Error("a change does not change the hazards");
    const added = newElements(trial.operations);
    const { mark, unitId } = this;
    const withSteel = added.size > 0 || scheme.openings.some((one) => one.containerId === unitId && one.framed);
    const ground = { mark, unitId, withSteel, asIs: this.judged, own: this.ownRun() };
    const proved = proof(ground, path, after, added);
    if (!proved.ok) {
      this.fail(climb, at, { change: trial.change, why: proved.why });
      return undefined;
    }
    const { verdict, why, governing, stillOpen, heavier } = proved;
    const settled = verdict !== "needs the engineer";
    const remedy: Remedy = {
      id: nameOf(trial),
      change: trial.change,
      operations: trial.operations,
      verdict,
      under: after.under,
      governing,
      ...(why && { why }),
      quantities: quantitiesOf(trial.change, trial.operations, this.scheme, this.before, premium),
      premium: settled ? this.priced(premium) : null,
      stillOpen,
      heavier,
      less: climb.failed.get(at - 1) ?? null,
    };
    if (settled) climb.apart = null; // what works of its kind stands for it
    if (settled || isOfNoSize(why)) climb.rungs.length = 0;
    if (why !== undefined) climb.failed.set(at, { change: trial.change, why: { kind: "strength", why } });
    if (settled) this.found.push(remedy);
    else if (climb.apart === null) climb.apart = remedy;
    return settled || climb.apart === remedy ? remedy : undefined;
  }

  private priced({ total, currency, forShow }: Premium): Remedy["premium"] {
    return { currency, money: total - this.before.total, forShow };
  }

  /** What the unit's own parts are held against, solved once. */
  private ownRun(): Accepted {
    if (this.own === undefined) {
      const scheme = this.ownScheme();
      const run = scheme && this.tools.judge(scheme);
      this.own = run?.accepted === true ? run : this.judged;
    }
    return this.own;
  }

  /** Openings are held against the wall without them, a unit that stands otherwise against one that stands plainly. */
  private ownScheme(): Scheme | undefined {
    const { scheme, mark } = this;
    const openingId = mark.elements.find((id) => scheme.openings.some((opening) => opening.id === id));
    if (openingId !== undefined) return this.tools.draw(scheme, [{ kind: "opening.close", id: openingId }]);
    const { kind } = mark.fact;
    return moves.has(kind) || bears.has(kind) ? plainStand(scheme, this.unitId) : undefined;
  }
}

/** Two ways to the same drawing are one. */
const onceEach = (ladder: readonly Trial[], drawn: Set<string>): Trial[] =>
  ladder.filter(({ operations }) => {
    const key = JSON.stringify(operations);
    if (drawn.has(key)) return false;
    drawn.add(key);
    return true;
  });

/** More of the same does not help where no strength can be stated. */
const isOfNoSize = (why: ChartReason | undefined): boolean =>
  why?.kind === "part" && (why.because === "refused" || why.because === "not covered");

/** Ids of what a change sets anew. */
function newElements(operations: readonly Operation[]): ReadonlySet<string> {
  return new Set(
    operations.flatMap((operation) => {
      switch (operation.kind) {
        case "post.set":
          return [operation.post.id];
        case "pad.set":
        case "pad.change":
          return [operation.pad.id];
        case "seat.set":
        case "seat.change":
          return [operation.seat.id];
        case "lock.set":
          return [operation.lock.id];
        case "tie.set":
          return [operation.tie.id];
        case "beam.set":
          return [operation.beam.id];
        case "opening.change":
          return [operation.opening.id];
        default:
          return [];
      }
    }),
  );
}

const nameOf = ({ change, operations }: Trial): string => JSON.stringify([change, operations]);

const cheapestFirst = (a: Remedy, b: Remedy): number =>
  (a.premium?.money ?? 0) - (b.premium?.money ?? 0) || (a.id < b.id ? -1 : 1);
