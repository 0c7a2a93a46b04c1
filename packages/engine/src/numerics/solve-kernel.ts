/**
 * Forward and back substitution of one front. `panel` is L, n × k, row-major with a unit diagonal; `y` holds `count`
 * right-hand sides on the front's rows, y[row·count + side]. Four rows (columns going back) and two sides at a time: each
 * loaded number serves two or four. Every entry is summed in one order whatever the number of sides, so that a load vector
 * gets the same bits alone and among others.
 */
export function forwardFront(n: number, k: number, panel: Float64Array, y: Float64Array, count: number): void {
  for (let i = 1; i < k; i++) for (let r = 0; r < count; r++) forwardEntry(i, i, k, panel, y, r, count);
  let i = k;
  for (; i + 3 < n; i += 4) {
    let r = 0;
    for (; r + 1 < count; r += 2) forwardTile(i, k, panel, y, r, count);
    if (r < count) for (let row = i; row < i + 4; row++) forwardEntry(row, k, k, panel, y, r, count);
  }
  for (; i < n; i++) for (let r = 0; r < count; r++) forwardEntry(i, k, k, panel, y, r, count);
}

/** Turns the first k rows of `y` into unknowns, the others being known; the pivots stand in `diagonal` from `first` on. */
export function backwardFront(
  n: number,
  k: number,
  panel: Float64Array,
  diagonal: Float64Array,
  first: number,
  y: Float64Array,
  count: number,
): void {
  for (let p = 0; p < k; p++) {
    const pivot = diagonal[first + p] ?? 1;
    for (let r = 0; r < count; r++) y[p * count + r] = (y[p * count + r] ?? 0) / pivot;
  }
  let p = 0;
  for (; p + 3 < k; p += 4) {
    let r = 0;
    for (; r + 1 < count; r += 2) backwardTile(n, p, k, panel, y, r, count);
    if (r < count) for (let column = p; column < p + 4; column++) backwardEntry(k, n, column, k, panel, y, r, count);
  }
  for (; p < k; p++) for (let r = 0; r < count; r++) backwardEntry(k, n, p, k, panel, y, r, count);
  for (p = k - 2; p >= 0; p--) for (let r = 0; r < count; r++) backwardEntry(p + 1, k, p, k, panel, y, r, count);
}

function forwardEntry(
  i: number,
  columns: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  r: number,
  count: number,
): void {
  let sum = y[i * count + r] ?? 0;
  for (let p = 0; p < columns; p++) sum -= (panel[i * k + p] ?? 0) * (y[p * count + r] ?? 0);
  y[i * count + r] = sum;
}

function forwardTile(i: number, k: number, panel: Float64Array, y: Float64Array, r: number, count: number): void {
  const a = i * k;
  const b = a + k;
  const c = b + k;
  const d = c + k;
  const t = i * count + r;
  let a0 = y[t] ?? 0;
  let a1 = y[t + 1] ?? 0;
  let b0 = y[t + count] ?? 0;
  let b1 = y[t + count + 1] ?? 0;
  let c0 = y[t + 2 * count] ?? 0;
  let c1 = y[t + 2 * count + 1] ?? 0;
  let d0 = y[t + 3 * count] ?? 0;
  let d1 = y[t + 3 * count + 1] ?? 0;
  for (let p = 0, s = r; p < k; p++, s += count) {
    const y0 = y[s] ?? 0;
    const y1 = y[s + 1] ?? 0;
    const la = panel[a + p] ?? 0;
    const lb = panel[b + p] ?? 0;
    const lc = panel[c + p] ?? 0;
    const ld = panel[d + p] ?? 0;
    a0 -= la * y0;
    a1 -= la * y1;
    b0 -= lb * y0;
    b1 -= lb * y1;
    c0 -= lc * y0;
    c1 -= lc * y1;
    d0 -= ld * y0;
    d1 -= ld * y1;
  }
  y[t] = a0;
  y[t + 1] = a1;
  y[t + count] = b0;
  y[t + count + 1] = b1;
  y[t + 2 * count] = c0;
  y[t + 2 * count + 1] = c1;
  y[t + 3 * count] = d0;
  y[t + 3 * count + 1] = d1;
}

function backwardEntry(
  from: number,
  to: number,
  p: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  r: number,
  count: number,
): void {
  let sum = y[p * count + r] ?? 0;
  for (let i = from; i < to; i++) sum -= (panel[i * k + p] ?? 0) * (y[i * count + r] ?? 0);
  y[p * count + r] = sum;
}

/** Rows below the pivots in four columns. */
function backwardTile(
  n: number,
  p: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  r: number,
  count: number,
): void {
  const t = p * count + r;
  let a0 = y[t] ?? 0;
  let a1 = y[t + 1] ?? 0;
  let b0 = y[t + count] ?? 0;
  let b1 = y[t + count + 1] ?? 0;
  let c0 = y[t + 2 * count] ?? 0;
  let c1 = y[t + 2 * count + 1] ?? 0;
  let d0 = y[t + 3 * count] ?? 0;
  let d1 = y[t + 3 * count + 1] ?? 0;
  for (let i = k, l = k * k + p, s = k * count + r; i < n; i++, l += k, s += count) {
    const y0 = y[s] ?? 0;
    const y1 = y[s + 1] ?? 0;
    const la = panel[l] ?? 0;
    const lb = panel[l + 1] ?? 0;
    const lc = panel[l + 2] ?? 0;
    const ld = panel[l + 3] ?? 0;
    a0 -= la * y0;
    a1 -= la * y1;
    b0 -= lb * y0;
    b1 -= lb * y1;
    c0 -= lc * y0;
    c1 -= lc * y1;
    d0 -= ld * y0;
    d1 -= ld * y1;
  }
  y[t] = a0;
  y[t + 1] = a1;
  y[t + count] = b0;
  y[t + count + 1] = b1;
  y[t + 2 * count] = c0;
  y[t + 2 * count + 1] = c1;
  y[t + 3 * count] = d0;
  y[t + 3 * count + 1] = d1;
}
