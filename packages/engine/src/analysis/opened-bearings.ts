import { solveDense } from "../numerics/dense-ldlt.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import type { Prepared } from "./prepared.ts";
import type { PressureSum } from "./responses.ts";
import type { Bearing } from "./system.ts";
import { numbersOf } from "./vectors.ts";

/** What a state does when some of its bearings are held open and nothing else acts. */
export interface Flexibility {
  /** The pressures under these bearings when each is held open by 1 mm in turn; symmetric, full, row-major, N/mm. */
  readonly flexibility: Float64Array;
  /** Stiffness of what each of these bearings itself joins, N/mm: the measure of resistance to opening it. */
  readonly scale: Float64Array;
}

/** One bearing of a state held open by 1 mm. */
interface Opened {
  readonly bearing: number;
  readonly unknown: BorderUnknown;
  /** Size of its unknown: of a link the force that opens it, N, of a support its opening itself, mm. */
  readonly force: number;
  readonly scale: number;
  /** What its unknown has to do with those of the state's update, and how far these go with it. */
  readonly couplings: Float64Array;
  readonly moved: Float64Array;
  /** Pressures under the bearings opened before it and under itself, N/mm. */
  readonly pressures: Float64Array;
}

/** The bearings of a state, or what is given for them, each held open once, when it is first asked for. */
export class OpenedBearings {
  private readonly base: Prepared;
  private readonly bearings: readonly Bearing[];
  private readonly update: readonly BorderUnknown[];
  private readonly opened: Opened[] = [];
  private readonly places = new Map<number, number>();

  constructor(base: Prepared, bearings: readonly Bearing[] = base.system.bearings) {
    this.base = base;
    this.bearings = bearings;
    this.update = base.update?.unknowns ?? [];
  }

  among(members: readonly number[]): Flexibility {
    const size = members.length;
    const places = members.map((b) => this.place(b));
    const flexibility = new Float64Array(size * size);
    const scale = numbersOf(places, (place) => this.opened[place]?.scale ?? 1);
    places.forEach((one, i) => {
      for (let j = 0; j <= i; j++) {
        const other = places[j] ?? 0;
        const value = this.opened[Math.max(one, other)]?.pressures[Math.min(one, other)] ?? 0;
        flexibility[i * size + j] = value;
        flexibility[j * size + i] = value;
      }
    });
    return { flexibility, scale };
  }

  /**
   * What makes the pressures with these open by so much, in mm, of those with all closed (`pressures`, changed); for the
   * responses of the state that the base was updated from, or of the base itself.
   */
  pressuresToAdd(pressures: Float64Array, members: readonly number[], byMm: Float64Array): PressureSum {
    const { bearings } = this;
    const unknowns = [...this.update];
    const count = unknowns.length;
    const sizes = new Float64Array(count + members.length);
    members.forEach((b, m) => {
      const mm = byMm[m] ?? 0;
      const one = this.opened[this.place(b)];
      if (one === undefined || mm === 0) return;
      const size = mm * one.force;
      for (let k = 0; k < count; k++) sizes[k] = (sizes[k] ?? 0) + size * (one.moved[k] ?? 0);
      sizes[unknowns.length] = size;
      unknowns.push(one.unknown);
      if (bearings[b]?.kind === "link") pressures[b] = (pressures[b] ?? 0) + size;
    });
    return { pressures, unknowns, sizes };
  }

  private place(b: number): number {
    const known = this.places.get(b);
    if (known !== undefined) return known;
    this.opened.push(this.open(b));
    this.places.set(b, this.opened.length - 1);
    return this.opened.length - 1;
  }

  /** Block elimination: the unknowns of the update go as far as they must for the bearing to open alone. */
  private open(b: number): Opened {
    const { further, update } = this.base;
    const bearing = this.bearings[b];
    if (bearing === undefined) throw new RangeError(`the system has no bearing ${b}`);
    const isLink = bearing.kind === "link";
    const unknown: BorderUnknown = isLink
      ? { kind: "spring", lower: bearing.lower, upper: bearing.upper, stiffness: -bearing.stiffness }
      : { kind: "freed", freedom: bearing.freedom };
    const force = isLink ? bearing.stiffness : 1;
    const couplings = numbersOf(this.update, (other) => further.between(unknown, other));
    const moved = couplings.map((value) => -value);
    if (update !== null) solveDense(update.border.corner, moved.length, moved, 1);
    const scale = isLink ? bearing.stiffness : further.stiffnessAt(bearing.freedom) || 1;
    const own = { bearing: b, unknown, force, scale, couplings, moved };
    const pressures = new Float64Array(this.opened.length + 1);
    for (let n = 0; n < this.opened.length; n++) pressures[n] = this.pressure(own, this.opened[n] ?? own);
    pressures[this.opened.length] = this.pressure(own, own);
    return { ...own, pressures };
  }

  /** Under one of two bearings with the other open; the same bits whichever was opened first. */
  private pressure(one: Omit<Opened, "pressures">, other: Omit<Opened, "pressures">): number {
    const a = one.bearing < other.bearing ? other : one;
    const b = a === one ? other : one;
    const { further } = this.base;
    return (further.between(a.unknown, b.unknown) + products(a.couplings, b.moved)) * a.force * b.force;
  }
}

function products(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < a.length; n++) sum += (a[n] ?? 0) * (b[n] ?? 0);
  return sum;
}
