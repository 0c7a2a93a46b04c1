import { buildingSystem } from "../src/analysis/building-system.ts";
import { prepare } from "../src/analysis/prepare.ts";
import { allClosed } from "../src/analysis/system.ts";
import { condensationCache } from "../src/building.ts";
import { factorise } from "../src/numerics/sparse-ldlt.ts";
import type { SparseElement } from "../src/numerics/sparse-factor.ts";
import { numberFreedoms } from "../src/analysis/prepare.ts";
import { heldFreedoms } from "../src/analysis/system.ts";
import { frontTree } from "../src/numerics/front-tree.ts";
import { COMBINATIONS, stackedModel, stackedScheme } from "./support/stacked-building.ts";

/**
 * Three forms of one factorisation on the interfaces of real buildings: fronts (ours), a skyline ordered by breadth
 * (reverse Cuthill–McKee), and the whole matrix full. Entries of L and multiplications are counted; times are medians of five
 * of this process, factorisation alone.
 */
const SIZES = (process.argv[2] ?? process.env.SIZES ?? "1,9,64,256").split(",").map(Number);

for (const count of SIZES) {
  const model = stackedModel(stackedScheme(count), COMBINATIONS);
  const cache = condensationCache(2e9);
  const assembly = buildingSystem(model, cache);
  if (!assembly.stable) throw new Error("a container of the bench is a mechanism");
  const { system } = assembly.building.frame;
  const closed = prepare(system, allClosed(system));
  if (!closed.stable) throw new Error("the bench building is a mechanism");
  const { tree, sparse } = numberFreedoms(
    system,
    closed.prepared.elements,
    heldFreedoms(system, allClosed(system)),
    null,
    frontTree,
  );
  const fronts = tree.fronts.reduce(
    (sum, { pivots, rows }) => {
      for (let k = 0; k < pivots; k++) {
        const below = rows.length - k - 1;
        sum.entries += below + 1;
        sum.products += (below * (below + 1)) / 2;
      }
      return sum;
    },
    { entries: 0, products: 0 },
  );
  const sky = skyline(tree.equations, sparse);
  const told = (name: string, entries: number, products: number, ms?: number) =>
    console.log(
      `| ${count} | ${tree.equations} | ${name} | ${(entries / 1e3).toFixed(1)} | ${(products / 1e6).toFixed(2)} | ${ms?.toFixed(1) ?? "not run"} |`,
    );
  told(
    "fronts by degree",
    fronts.entries,
    fronts.products,
    median(() => factorise(tree, sparse)),
  );
  told(
    "skyline by breadth",
    sky.entries,
    sky.products,
    median(() => sky.factorise()),
  );
  const n = tree.equations;
  told("full", (n * (n + 1)) / 2, (n * n * n) / 6);
}

function median(work: () => unknown): number {
  const all = Array.from({ length: 5 }, () => {
    const start = process.cpuUsage().user;
    work();
    return (process.cpuUsage().user - start) / 1000;
  });
  return all.toSorted((a, b) => a - b)[2] ?? Number.NaN;
}

/** Active columns (Bathe, Finite Element Procedures 8.2.3, from memory) after reverse Cuthill–McKee. */
function skyline(count: number, elements: readonly SparseElement[]) {
  const place = byBreadth(count, elements);
  const first = Int32Array.from({ length: count }, (_, n) => n);
  for (const { equations } of elements) {
    const own = [...equations].filter((e) => e >= 0).map((e) => place[e] ?? 0);
    const low = Math.min(...own);
    for (const e of own) first[e] = Math.min(first[e] ?? e, low);
  }
  const start = new Float64Array(count + 1);
  let products = 0;
  for (let j = 0; j < count; j++) {
    const height = j - (first[j] ?? j);
    start[j + 1] = (start[j] ?? 0) + height + 1;
    products += (height * (height + 1)) / 2;
  }
  const at = (i: number, j: number) => (start[j] ?? 0) + i - (first[j] ?? 0);
  const fill = () => {
    const a = new Float64Array(start[count] ?? 0);
    for (const { equations, matrix } of elements)
      equations.forEach((e, r) => {
        equations.forEach((f, c) => {
          const [i, j] = [place[e] ?? -1, place[f] ?? -1];
          if (e >= 0 && f >= 0 && i <= j) a[at(i, j)] = (a[at(i, j)] ?? 0) + (matrix[r * equations.length + c] ?? 0);
        });
      });
    return a;
  };
  const factorise = () => {
    const a = fill();
    for (let j = 0; j < count; j++) {
      const from = first[j] ?? 0;
      for (let i = from + 1; i < j; i++) {
        const low = Math.max(from, first[i] ?? 0);
        let sum = a[at(i, j)] ?? 0;
        for (let k = low, p = at(low, i), q = at(low, j); k < i; k++, p++, q++) sum -= (a[p] ?? 0) * (a[q] ?? 0);
        a[at(i, j)] = sum;
      }
      let pivot = a[at(j, j)] ?? 0;
      for (let i = from; i < j; i++) {
        const held = a[at(i, j)] ?? 0;
        const left = held / (a[at(i, i)] ?? 1);
        pivot -= held * left;
        a[at(i, j)] = left;
      }
      a[at(j, j)] = pivot;
    }
    return a;
  };
  return { entries: start[count] ?? 0, products, factorise };
}

/** New place of each unknown: breadth first from one of least degree, far ends first, turned about. */
function byBreadth(count: number, elements: readonly SparseElement[]): Int32Array {
  const near = Array.from({ length: count }, () => new Set<number>());
  for (const { equations } of elements) {
    const own = [...equations].filter((e) => e >= 0);
    for (const e of own) for (const f of own) near[e]?.add(f);
  }
  const degree = (n: number) => near[n]?.size ?? 0;
  const sweep = (root: number, seen: Uint8Array): number[] => {
    const order = [root];
    seen[root] = 1;
    for (let n = 0; n < order.length; n++)
      for (const next of [...(near[order[n] ?? 0] ?? [])].toSorted((a, b) => degree(a) - degree(b)))
        if (!seen[next]) {
          seen[next] = 1;
          order.push(next);
        }
    return order;
  };
  const done = new Uint8Array(count);
  const order: number[] = [];
  for (let root = 0; root < count; root++) {
    if (done[root]) continue;
    let end = root;
    for (let turn = 0; turn < 3; turn++) end = sweep(end, done.slice()).at(-1) ?? end;
    order.push(...sweep(end, done));
  }
  const place = new Int32Array(count);
  order.toReversed().forEach((n, at) => (place[n] = at));
  return place;
}
