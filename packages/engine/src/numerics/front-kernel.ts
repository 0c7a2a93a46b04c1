/**
 * Partial LDLᵀ of one front, row by row. `panel` (n × k, row-major, lower trapezoid) is overwritten by L, `work` (n × k)
 * by L·D; `remainder` ((n−k) × (n−k), row-major, lower half) by what is passed on. `settle` sees every pivot before it is
 * used and returns the value to divide by.
 */
export function eliminateFront(
  n: number,
  k: number,
  panel: Float64Array,
  work: Float64Array,
  remainder: Float64Array,
  diagonal: Float64Array,
  settle: (pivot: number, index: number) => number,
): void {
  factorPivots(k, panel, work, diagonal, settle);
  reducePanel(n, k, panel, work, diagonal);
  updateRemainder(n, k, panel, work, remainder);
}

/** Four rows at a time as below; the corner in which the four meet goes row by row. */
function factorPivots(
  k: number,
  panel: Float64Array,
  work: Float64Array,
  diagonal: Float64Array,
  settle: (pivot: number, index: number) => number,
): void {
  let i = 0;
  for (; i + 3 < k; i += 4) {
    reduceFourRows(i * k, i, k, panel, work, diagonal);
    for (let row = i; row < i + 4; row++) diagonal[row] = settle(finishRow(row, i, k, panel, work, diagonal), row);
  }
  for (; i < k; i++) diagonal[i] = settle(finishRow(i, 0, k, panel, work, diagonal), i);
}

/** Row i from column `from` on; returns its pivot. */
function finishRow(
  i: number,
  from: number,
  k: number,
  panel: Float64Array,
  work: Float64Array,
  diagonal: Float64Array,
): number {
  const row = i * k;
  for (let j = from; j < i; j++) reduceEntry(row, j, k, panel, work, diagonal);
  let pivot = panel[row + i] ?? 0;
  for (let j = 0; j < i; j++) pivot -= (work[row + j] ?? 0) * (panel[row + j] ?? 0);
  return pivot;
}

/** Rows below the pivots, four at a time: each loaded row of L serves four. */
function reducePanel(n: number, k: number, panel: Float64Array, work: Float64Array, diagonal: Float64Array): void {
  let i = k;
  for (; i + 3 < n; i += 4) reduceFourRows(i * k, k, k, panel, work, diagonal);
  for (; i < n; i++) reduceRow(i * k, k, panel, work, diagonal);
}

/** Rows a to a + 3, two columns at a time, as far as `columns`. */
function reduceFourRows(
  a: number,
  columns: number,
  k: number,
  panel: Float64Array,
  work: Float64Array,
  diagonal: Float64Array,
): void {
  const b = a + k;
  const c = b + k;
  const d = c + k;
  let j = 0;
  for (; j + 1 < columns; j += 2) reduceTwoColumns(a, b, c, d, j, k, panel, work, diagonal);
  if (j < columns) for (let row = a; row <= d; row += k) reduceEntry(row, j, k, panel, work, diagonal);
}

function reduceTwoColumns(
  a: number,
  b: number,
  c: number,
  d: number,
  j: number,
  k: number,
  panel: Float64Array,
  work: Float64Array,
  diagonal: Float64Array,
): void {
  const first = j * k;
  const second = first + k;
  let a0 = panel[a + j] ?? 0;
  let a1 = panel[a + j + 1] ?? 0;
  let b0 = panel[b + j] ?? 0;
  let b1 = panel[b + j + 1] ?? 0;
  let c0 = panel[c + j] ?? 0;
  let c1 = panel[c + j + 1] ?? 0;
  let d0 = panel[d + j] ?? 0;
  let d1 = panel[d + j + 1] ?? 0;
  for (let p = 0; p < j; p++) {
    const l0 = panel[first + p] ?? 0;
    const l1 = panel[second + p] ?? 0;
    const wa = work[a + p] ?? 0;
    const wb = work[b + p] ?? 0;
    const wc = work[c + p] ?? 0;
    const wd = work[d + p] ?? 0;
    a0 -= wa * l0;
    a1 -= wa * l1;
    b0 -= wb * l0;
    b1 -= wb * l1;
    c0 -= wc * l0;
    c1 -= wc * l1;
    d0 -= wd * l0;
    d1 -= wd * l1;
  }
  const l = panel[second + j] ?? 0;
  a1 -= a0 * l;
  b1 -= b0 * l;
  c1 -= c0 * l;
  d1 -= d0 * l;
  const inverse = 1 / (diagonal[j] ?? 0);
  const next = 1 / (diagonal[j + 1] ?? 0);
  work[a + j] = a0;
  work[a + j + 1] = a1;
  work[b + j] = b0;
  work[b + j + 1] = b1;
  work[c + j] = c0;
  work[c + j + 1] = c1;
  work[d + j] = d0;
  work[d + j + 1] = d1;
  panel[a + j] = a0 * inverse;
  panel[a + j + 1] = a1 * next;
  panel[b + j] = b0 * inverse;
  panel[b + j + 1] = b1 * next;
  panel[c + j] = c0 * inverse;
  panel[c + j + 1] = c1 * next;
  panel[d + j] = d0 * inverse;
  panel[d + j + 1] = d1 * next;
}

function reduceRow(a: number, k: number, panel: Float64Array, work: Float64Array, diagonal: Float64Array): void {
  for (let j = 0; j < k; j++) reduceEntry(a, j, k, panel, work, diagonal);
}

function reduceEntry(
  row: number,
  j: number,
  k: number,
  panel: Float64Array,
  work: Float64Array,
  diagonal: Float64Array,
): void {
  const other = j * k;
  let sum = panel[row + j] ?? 0;
  for (let p = 0; p < j; p++) sum -= (work[row + p] ?? 0) * (panel[other + p] ?? 0);
  work[row + j] = sum;
  panel[row + j] = sum * (1 / (diagonal[j] ?? 0));
}

/** remainder −= (L·D)·Lᵀ on the lower half, in tiles of two rows by four columns. */
function updateRemainder(n: number, k: number, panel: Float64Array, work: Float64Array, remainder: Float64Array): void {
  const m = n - k;
  for (let i = 0; i < m; i += 2) {
    const pair = i + 1 < m;
    const last = pair ? i + 1 : i; // columns beyond the diagonal fall in the unused upper half
    let j = 0;
    if (pair) for (; j + 3 <= last; j += 4) updateTile(i, j, m, k, panel, work, remainder);
    for (; j <= last; j++) {
      updateEntry(i, j, m, k, panel, work, remainder);
      if (pair) updateEntry(i + 1, j, m, k, panel, work, remainder);
    }
  }
}

function updateTile(
  i: number,
  j: number,
  m: number,
  k: number,
  panel: Float64Array,
  work: Float64Array,
  remainder: Float64Array,
): void {
  const wa = (i + k) * k;
  const wb = wa + k;
  const l0 = (j + k) * k;
  const l1 = l0 + k;
  const l2 = l1 + k;
  const l3 = l2 + k;
  let a0 = 0,
    a1 = 0,
    a2 = 0,
    a3 = 0,
    b0 = 0,
    b1 = 0,
    b2 = 0,
    b3 = 0;
  for (let p = 0; p < k; p++) {
    const a = work[wa + p] ?? 0;
    const b = work[wb + p] ?? 0;
    const x0 = panel[l0 + p] ?? 0;
    const x1 = panel[l1 + p] ?? 0;
    const x2 = panel[l2 + p] ?? 0;
    const x3 = panel[l3 + p] ?? 0;
    a0 += a * x0;
    a1 += a * x1;
    a2 += a * x2;
    a3 += a * x3;
    b0 += b * x0;
    b1 += b * x1;
    b2 += b * x2;
    b3 += b * x3;
  }
  const ra = i * m + j;
  const rb = ra + m;
  remainder[ra] = (remainder[ra] ?? 0) - a0;
  remainder[ra + 1] = (remainder[ra + 1] ?? 0) - a1;
  remainder[ra + 2] = (remainder[ra + 2] ?? 0) - a2;
  remainder[ra + 3] = (remainder[ra + 3] ?? 0) - a3;
  remainder[rb] = (remainder[rb] ?? 0) - b0;
  remainder[rb + 1] = (remainder[rb + 1] ?? 0) - b1;
  remainder[rb + 2] = (remainder[rb + 2] ?? 0) - b2;
  remainder[rb + 3] = (remainder[rb + 3] ?? 0) - b3;
}

function updateEntry(
  i: number,
  j: number,
  m: number,
  k: number,
  panel: Float64Array,
  work: Float64Array,
  remainder: Float64Array,
): void {
  const w = (i + k) * k;
  const l = (j + k) * k;
  let sum = 0;
  for (let p = 0; p < k; p++) sum += (work[w + p] ?? 0) * (panel[l + p] ?? 0);
  remainder[i * m + j] = (remainder[i * m + j] ?? 0) - sum;
}
