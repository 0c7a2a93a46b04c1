import type { Six } from "../model/analytical-model.ts";
import type { Element } from "./element.ts";

/** Six uncoupled springs from a node to the ground, global axes. Freedoms without stiffness are left out. */
export function groundSpring(node: number, stiffness: Six): Element {
  const parts = acting(stiffness);
  const matrix = new Float64Array(parts.length * parts.length);
  parts.forEach(({ k }, p) => (matrix[p * parts.length + p] = k));
  return { freedoms: Int32Array.from(parts, ({ c }) => node * 6 + c), matrix };
}

/** Six uncoupled springs between two nodes, global axes: the force on j is −k·(u(j) − u(i)). */
export function nodeSpring(i: number, j: number, stiffness: Six): Element {
  const parts = acting(stiffness);
  const size = 2 * parts.length;
  const matrix = new Float64Array(size * size);
  parts.forEach(({ k }, p) => {
    const q = parts.length + p;
    matrix[p * size + p] = k;
    matrix[q * size + q] = k;
    matrix[p * size + q] = -k;
    matrix[q * size + p] = -k;
  });
  return {
    freedoms: Int32Array.from([...parts.map(({ c }) => i * 6 + c), ...parts.map(({ c }) => j * 6 + c)]),
    matrix,
  };
}

function acting(stiffness: Six): { c: number; k: number }[] {
  return stiffness.map((k, c) => ({ c, k })).filter(({ k }) => k > 0);
}
