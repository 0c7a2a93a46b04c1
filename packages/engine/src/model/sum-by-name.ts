import type { Triple } from "./analytical-model.ts";

/** Sums of forces by the name of what they act on, in the order in which each was first named. */
export class SumByName {
  private readonly places = new Map<string, number>();
  private names: string[] = [];
  private sums: number[] = [];

  add(name: string, [x, y, z]: Triple, factor: number): void {
    let at = this.places.get(name);
    if (at === undefined) {
      at = this.sums.length;
      this.places.set(name, at);
      this.names.push(name);
      this.sums.push(0, 0, 0);
    }
    this.sums[at] = (this.sums[at] ?? 0) + x * factor;
    this.sums[at + 1] = (this.sums[at + 1] ?? 0) + y * factor;
    this.sums[at + 2] = (this.sums[at + 2] ?? 0) + z * factor;
  }

  /** What was added up; the sums begin anew. */
  taken(): [string, Triple][] {
    const { names, sums } = this;
    this.places.clear();
    [this.names, this.sums] = [[], []];
    return names.map((name, n) => [name, [sums[3 * n] ?? 0, sums[3 * n + 1] ?? 0, sums[3 * n + 2] ?? 0]]);
  }
}
