/**
 * Forward and back substitution of one front. `panel` is L, n × k, row-major with a unit diagonal; `y` holds `count`
 * right-hand sides on the front's rows, y[row·count + side]. Four rows (columns going back) and two sides at a time: each
 * loaded number serves two or four. Every entry is summed in one order whatever the number of sides, so that a load vector
 * gets the same bits alone and among others.
 */
export function forwardFront(n: number, k: number, panel: Float64Array, y: Float64Array, count: number): void {
  let i = 0;
  for (; i + 3 < k; i += 4) {
    forwardRows(i, i, k, panel, y, count);
    for (let row = i + 1; row < i + 4; row++) forwardRow(row, i, row, k, panel, y, count);
  }
  for (; i < k; i++) forwardRow(i, 0, i, k, panel, y, count);
  for (; i + 3 < n; i += 4) forwardRows(i, k, k, panel, y, count);
  for (; i < n; i++) forwardRow(i, 0, k, k, panel, y, count);
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
  const odd = k - (k % 4);
  for (let p = k - 1; p >= odd; p--) backwardColumn(p + 1, n, p, k, panel, y, count);
  for (let p = odd - 4; p >= 0; p -= 4) {
    backwardColumns(p + 4, n, p, k, panel, y, count);
    for (let column = p + 2; column >= p; column--) backwardColumn(column + 1, p + 4, column, k, panel, y, count);
  }
}

/** Four rows, as far as `columns`. */
function forwardRows(i: number, columns: number, k: number, panel: Float64Array, y: Float64Array, count: number): void {
  let r = 0;
  for (; r + 1 < count; r += 2) forwardTile(i, columns, k, panel, y, r, count);
  if (r < count) forwardStrip(i, columns, k, panel, y, r, count);
}

/** Four columns from `p` on, below row `from`. */
function backwardColumns(
  from: number,
  n: number,
  p: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  count: number,
): void {
  let r = 0;
  for (; r + 1 < count; r += 2) backwardTile(from, n, p, k, panel, y, r, count);
  if (r < count) backwardStrip(from, n, p, k, panel, y, r, count);
}

/** One row, four sides at a time. */
function forwardRow(
  i: number,
  from: number,
  to: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  count: number,
): void {
  let r = 0;
  for (; r + 3 < count; r += 4) {
    const t = i * count + r;
    let s0 = y[t] ?? 0;
    let s1 = y[t + 1] ?? 0;
    let s2 = y[t + 2] ?? 0;
    let s3 = y[t + 3] ?? 0;
    for (let p = from, l = i * k + from, s = from * count + r; p < to; p++, l++, s += count) {
      const value = panel[l] ?? 0;
      s0 -= value * (y[s] ?? 0);
      s1 -= value * (y[s + 1] ?? 0);
      s2 -= value * (y[s + 2] ?? 0);
      s3 -= value * (y[s + 3] ?? 0);
    }
    y[t] = s0;
    y[t + 1] = s1;
    y[t + 2] = s2;
    y[t + 3] = s3;
  }
  for (; r < count; r++) {
    let sum = y[i * count + r] ?? 0;
    for (let p = from; p < to; p++) sum -= (panel[i * k + p] ?? 0) * (y[p * count + r] ?? 0);
    y[i * count + r] = sum;
  }
}

/** Four rows for one side: four sums that need not wait for each other. */
function forwardStrip(
  i: number,
  columns: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  r: number,
  count: number,
): void {
  const a = i * k;
  const b = a + k;
  const c = b + k;
  const d = c + k;
  const t = i * count + r;
  let s0 = y[t] ?? 0;
  let s1 = y[t + count] ?? 0;
  let s2 = y[t + 2 * count] ?? 0;
  let s3 = y[t + 3 * count] ?? 0;
  for (let p = 0, s = r; p < columns; p++, s += count) {
    const value = y[s] ?? 0;
    s0 -= (panel[a + p] ?? 0) * value;
    s1 -= (panel[b + p] ?? 0) * value;
    s2 -= (panel[c + p] ?? 0) * value;
    s3 -= (panel[d + p] ?? 0) * value;
  }
  y[t] = s0;
  y[t + count] = s1;
  y[t + 2 * count] = s2;
  y[t + 3 * count] = s3;
}

function forwardTile(
  i: number,
  columns: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  r: number,
  count: number,
): void {
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
  for (let p = 0, s = r; p < columns; p++, s += count) {
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

/** One column, four sides at a time. */
function backwardColumn(
  from: number,
  to: number,
  p: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  count: number,
): void {
  let r = 0;
  for (; r + 3 < count; r += 4) {
    const t = p * count + r;
    let s0 = y[t] ?? 0;
    let s1 = y[t + 1] ?? 0;
    let s2 = y[t + 2] ?? 0;
    let s3 = y[t + 3] ?? 0;
    for (let i = from, l = from * k + p, s = from * count + r; i < to; i++, l += k, s += count) {
      const value = panel[l] ?? 0;
      s0 -= value * (y[s] ?? 0);
      s1 -= value * (y[s + 1] ?? 0);
      s2 -= value * (y[s + 2] ?? 0);
      s3 -= value * (y[s + 3] ?? 0);
    }
    y[t] = s0;
    y[t + 1] = s1;
    y[t + 2] = s2;
    y[t + 3] = s3;
  }
  for (; r < count; r++) {
    let sum = y[p * count + r] ?? 0;
    for (let i = from; i < to; i++) sum -= (panel[i * k + p] ?? 0) * (y[i * count + r] ?? 0);
    y[p * count + r] = sum;
  }
}

/** Four columns for one side. */
function backwardStrip(
  from: number,
  n: number,
  p: number,
  k: number,
  panel: Float64Array,
  y: Float64Array,
  r: number,
  count: number,
): void {
  const t = p * count + r;
  let s0 = y[t] ?? 0;
  let s1 = y[t + count] ?? 0;
  let s2 = y[t + 2 * count] ?? 0;
  let s3 = y[t + 3 * count] ?? 0;
  for (let i = from, l = from * k + p, s = from * count + r; i < n; i++, l += k, s += count) {
    const value = y[s] ?? 0;
    s0 -= (panel[l] ?? 0) * value;
    s1 -= (panel[l + 1] ?? 0) * value;
    s2 -= (panel[l + 2] ?? 0) * value;
    s3 -= (panel[l + 3] ?? 0) * value;
  }
  y[t] = s0;
  y[t + count] = s1;
  y[t + 2 * count] = s2;
  y[t + 3 * count] = s3;
}

/** Four columns for two sides. */
function backwardTile(
  from: number,
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
  for (let i = from, l = from * k + p, s = from * count + r; i < n; i++, l += k, s += count) {
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
