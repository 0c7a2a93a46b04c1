import type { Element } from "../elements/element.ts";
import { product, reduceColumns, type BorderColumn, type ReducedColumn } from "../numerics/border.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import type { Spring } from "./system.ts";

/**
 * A further unknown by which a factorised state is led into another: the force of a spring that is stiffer or softer there,
 * the movement of a freedom that is held no longer, the reaction of one that is held now.
 */
export type BorderUnknown =
  ({ readonly kind: "spring" } & Spring) | { readonly kind: "freed" | "held"; readonly freedom: number };

/** Further unknowns around one factorised state. No load is in their columns: all states and load vectors share them. */
export class BorderUnknowns {
  /** 1 over each pivot. */
  readonly inverse: Float64Array;
  private readonly elements: readonly Element[];
  private readonly equationOf: Int32Array;
  private readonly factor: SparseFactor;
  private readonly numbers = new Map<string, number>();
  private readonly numberOf = new WeakMap<BorderUnknown, number>(); // names are long to make
  private readonly columns: ReducedColumn[] = [];
  private readonly products: number[][] = []; // row by row below the diagonal
  private readonly rows = new Map<number, ReadonlyMap<number, number>>();
  private elementsAt: Map<number, Element[]> | null = null;

  constructor(elements: readonly Element[], equationOf: Int32Array, factor: SparseFactor) {
    this.elements = elements;
    this.equationOf = equationOf;
    this.factor = factor;
    this.inverse = factor.diagonal.map((pivot) => 1 / pivot);
  }

  /** L⁻¹·w of each. */
  reduced(unknowns: readonly BorderUnknown[]): ReducedColumn[] {
    return this.numbered(unknowns).map((n) => this.columns[n] ?? NO_COLUMN);
  }

  /** T − Wᵀ·K⁻¹·W and, as its scale, the sums of the sizes of the two on the diagonal; full, row-major. */
  corner(unknowns: readonly BorderUnknown[]): { corner: Float64Array; scale: Float64Array } {
    const size = unknowns.length;
    const numbers = this.numbered(unknowns);
    const corner = new Float64Array(size * size);
    const scale = new Float64Array(size);
    unknowns.forEach((a, i) => {
      for (let j = 0; j <= i; j++) {
        const own = this.direct(a, unknowns[j] ?? a);
        const through = this.product(numbers[i] ?? 0, numbers[j] ?? 0);
        corner[i * size + j] = own - through;
        corner[j * size + i] = own - through;
        if (i === j) scale[i] = Math.abs(own) + through;
      }
    });
    return { corner, scale };
  }

  /** One number of the corner. */
  between(a: BorderUnknown, b: BorderUnknown): number {
    const [own, other] = [this.numberOf.get(a), this.numberOf.get(b)];
    if (own === undefined || other === undefined) {
      this.numbered([a, b]);
      return this.between(a, b);
    }
    return this.direct(a, b) - this.product(own, other);
  }

  /** Stiffness of everything at a held freedom, N/mm. */
  stiffnessAt(freedom: number): number {
    return this.rowOf(freedom).get(freedom) ?? 0;
  }

  /** Springs between the same freedoms share a number and a column, whatever their change. */
  private numbered(unknowns: readonly BorderUnknown[]): number[] {
    const missing = unknowns.filter((unknown) => !this.numberOf.has(unknown) && !this.numbers.has(nameOf(unknown)));
    if (missing.length > 0) {
      const columns = missing.map((unknown) => this.column(unknown));
      missing.forEach((unknown, n) => this.numbers.set(nameOf(unknown), this.columns.length + n));
      this.columns.push(...reduceColumns(this.factor, columns));
    }
    return unknowns.map((unknown) => this.number(unknown));
  }

  private number(unknown: BorderUnknown): number {
    const known = this.numberOf.get(unknown);
    if (known !== undefined) return known;
    const named = this.numbers.get(nameOf(unknown)) ?? 0;
    this.numberOf.set(unknown, named);
    return named;
  }

  private product(a: number, b: number): number {
    const row = Math.max(a, b);
    const column = Math.min(a, b);
    const known = (this.products[row] ??= []);
    return (known[column] ??= product(this.columns[a] ?? NO_COLUMN, this.columns[b] ?? NO_COLUMN));
  }

  private column(unknown: BorderUnknown): BorderColumn {
    const entries: [number, number][] = [];
    if (unknown.kind === "spring") entries.push([unknown.lower, 1], [unknown.upper, -1]);
    if (unknown.kind === "held") entries.push([unknown.freedom, 1]);
    if (unknown.kind === "freed") entries.push(...this.rowOf(unknown.freedom));
    const onEquations = entries
      .map(([freedom, value]) => [this.equationOf[freedom] ?? -1, value] as const)
      .filter(([equation]) => equation >= 0);
    return { equations: onEquations.map(([equation]) => equation), values: onEquations.map(([, value]) => value) };
  }

  /** What two further unknowns have to do with each other by themselves. */
  private direct(a: BorderUnknown, b: BorderUnknown): number {
    if (a.kind === "spring" && b.kind === "spring") return a === b ? -1 / a.stiffness : 0;
    if (a.kind === "spring" && b.kind === "freed") return partIn(a, b.freedom);
    if (a.kind === "freed" && b.kind === "spring") return partIn(b, a.freedom);
    if (a.kind !== "freed" || b.kind !== "freed") return 0;
    return this.rowOf(a.freedom).get(b.freedom) ?? 0;
  }

  /** Stiffness between a held freedom and every other. */
  private rowOf(freedom: number): ReadonlyMap<number, number> {
    this.elementsAt ??= atHeldFreedoms(this.elements, this.equationOf);
    const known = this.rows.get(freedom) ?? rowIn(this.elementsAt.get(freedom) ?? [], freedom);
    this.rows.set(freedom, known);
    return known;
  }
}

/** Springs between the same freedoms share a name, whatever their stiffness. */
export function nameOf(unknown: BorderUnknown): string {
  return unknown.kind === "spring" ? `${unknown.lower} ${unknown.upper}` : `${unknown.kind} ${unknown.freedom}`;
}

const NO_COLUMN: ReducedColumn = {
  fronts: new Int32Array(0),
  firsts: new Int32Array(0),
  starts: new Int32Array(1),
  values: new Float64Array(0),
  scaled: new Float64Array(0),
};

/** Share of a spring's force that acts on a freedom. */
export function partIn({ lower, upper }: Spring, freedom: number): number {
  return freedom === lower ? 1 : freedom === upper ? -1 : 0;
}

function rowIn(elements: readonly Element[], freedom: number): Map<number, number> {
  const sum = new Map<number, number>();
  for (const { freedoms, matrix } of elements) {
    const from = freedoms.indexOf(freedom) * freedoms.length;
    freedoms.forEach((other, j) => sum.set(other, (sum.get(other) ?? 0) + (matrix[from + j] ?? 0)));
  }
  return sum;
}

/** The elements at each freedom that has no equation. */
function atHeldFreedoms(elements: readonly Element[], equationOf: Int32Array): Map<number, Element[]> {
  const at = new Map<number, Element[]>();
  for (const element of elements) {
    for (const freedom of element.freedoms) {
      if ((equationOf[freedom] ?? -1) >= 0) continue;
      const there = at.get(freedom);
      if (there === undefined) at.set(freedom, [element]);
      else there.push(element);
    }
  }
  return at;
}
