import { nameOf, partIn, type BorderUnknown } from "./border-unknowns.ts";
import { bearingForce } from "./bearing-state.ts";
import type { Prepared } from "./prepared.ts";
import type { PressureSum, Responses } from "./responses.ts";
import { solveMovements, type LoadVector, type Movement } from "./solve-movement.ts";
import { addTimes, numbersOf } from "./vectors.ts";

interface Response extends Movement {
  readonly pressures: Float64Array;
}

/** The response to each unknown, solved for when first asked for. */
export class KeptResponses implements Responses {
  readonly sideBySide = false;
  private readonly from: Prepared;
  private readonly known = new Map<string, Response>();
  private readonly knownOf = new WeakMap<BorderUnknown, Response>(); // names are long to make

  constructor(from: Prepared) {
    this.from = from;
  }

  addMovement(sum: Float64Array, unknowns: readonly BorderUnknown[], sizes: Float64Array): void {
    this.to(unknowns).forEach(({ movement }, n) => addTimes(sum, movement, sizes[n] ?? 0));
  }

  addPressures(sums: readonly PressureSum[]): null[] {
    return sums.map(({ pressures, unknowns, sizes }) => {
      this.to(unknowns).forEach((response, n) => addTimes(pressures, response.pressures, sizes[n] ?? 0));
      return null;
    });
  }

  /** In the order asked; each has the bits it would have by itself. */
  private to(unknowns: readonly BorderUnknown[]): Response[] {
    const missing = unknowns.filter((unknown) => !this.knownOf.has(unknown) && !this.known.has(nameOf(unknown)));
    const solved = solveMovements(
      this.from,
      missing.map((unknown) => unitLoad(unknown, this.from.equationOf.length)),
    );
    missing.forEach((unknown, n) => this.known.set(nameOf(unknown), this.response(unknown, solved[n] ?? NOTHING)));
    return unknowns.map((unknown) => this.one(unknown));
  }

  private one(unknown: BorderUnknown): Response {
    const found = this.knownOf.get(unknown) ?? this.known.get(nameOf(unknown)) ?? { ...NOTHING, pressures: NONE };
    this.knownOf.set(unknown, found);
    return found;
  }

  private response(unknown: BorderUnknown, moved: Movement): Response {
    const { bearings } = this.from.system;
    const pressures = numbersOf(bearings, (bearing) => {
      const beside = unknown.kind === "spring" && bearing.kind === "support" ? partIn(unknown, bearing.freedom) : 0;
      return bearingForce(bearing, moved, NO_LOAD) + beside;
    });
    return { ...moved, pressures };
  }
}

const NONE = new Float64Array(0);
const NOTHING: Movement = { movement: NONE, answered: NONE };
const NO_LOAD = { forces: NONE, settlement: NONE };

/** What one of the unknown does to the factorised state: a spring's force of 1, a freed freedom's movement by 1. */
function unitLoad(unknown: BorderUnknown, freedoms: number): LoadVector {
  const load = { forces: new Float64Array(freedoms), settlement: new Float64Array(freedoms) };
  if (unknown.kind === "spring") {
    load.forces[unknown.lower] = -1;
    load.forces[unknown.upper] = 1;
  } else if (unknown.kind === "freed") load.settlement[unknown.freedom] = 1;
  else load.forces[unknown.freedom] = -1;
  return load;
}
