/** No line or sheet hangs on more freedoms than a sheet on its four corners. */
const MOST_FREEDOMS = 24;
const starts = new Int32Array(MOST_FREEDOMS);
const shares = new Float64Array(MOST_FREEDOMS);

/**
 * Forces number `n` of `count` of an element under several movements at once, x[equation·sides + side], written from `to` on.
 * `byFreedom` holds its shares freedom by freedom. Four sides at a time, so that each share serves four; every sum goes through
 * the freedoms in their order, so that a movement has the same bits alone and among others.
 */
export function writeForces(
  forces: Float64Array,
  to: number,
  { equations, byFreedom, count }: { equations: Int32Array; byFreedom: Float64Array; count: number },
  n: number,
  x: Float64Array,
  sides: number,
): void {
  let used = 0;
  for (let f = 0; f < equations.length; f++) {
    const share = byFreedom[f * count + n] ?? 0;
    const equation = equations[f] ?? -1;
    if (equation < 0 || share === 0) continue;
    starts[used] = equation * sides;
    shares[used++] = share;
  }
  let s = 0;
  for (; s + 3 < sides; s += 4) writeFour(forces, to + s, used, x, s);
  for (; s < sides; s++) writeOne(forces, to + s, used, x, s);
}

function writeFour(forces: Float64Array, to: number, used: number, x: Float64Array, side: number): void {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let u = 0; u < used; u++) {
    const share = shares[u] ?? 0;
    const at = (starts[u] ?? 0) + side;
    a += share * (x[at] ?? 0);
    b += share * (x[at + 1] ?? 0);
    c += share * (x[at + 2] ?? 0);
    d += share * (x[at + 3] ?? 0);
  }
  forces[to] = a;
  forces[to + 1] = b;
  forces[to + 2] = c;
  forces[to + 3] = d;
}

function writeOne(forces: Float64Array, to: number, used: number, x: Float64Array, side: number): void {
  let sum = 0;
  for (let u = 0; u < used; u++) sum += (shares[u] ?? 0) * (x[(starts[u] ?? 0) + side] ?? 0);
  forces[to] = sum;
}
