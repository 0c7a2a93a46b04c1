import { integerRoom, numberRoom } from "../numerics/number-room.ts";
import type { Vector } from "../numerics/vector.ts";
import type { PanelAxes } from "../model/panel-axes.ts";
import { type Element, freedomsOf } from "./element.ts";
import { moveStiffness } from "./rigid-arm.ts";

export interface PanelFacts {
  readonly nodes: readonly [number, number, number, number];
  readonly axes: PanelAxes;
  /** N/mm, and N/mm per mm of width (upright) and of height (along). */
  readonly shearStiffness: number;
  readonly uprightStiffness: number;
  readonly alongStiffness: number;
  readonly arms: readonly [Vector, Vector, Vector, Vector] | null;
}

/** A corrugated sheet between four corners: constant shear flow, edges as struts and ties, nothing out of its plane. */
export interface ShearPanel extends Element {
  readonly facts: PanelFacts;
  /** Strain g per unit of each of the element's freedoms. */
  readonly strainOf: Float64Array;
}

/**
 * Gt·b·h·g² with g = (mean u1 top − mean u1 bottom)/h + (mean u2 right − mean u2 left)/b, and struts Ev·b/(2h) on both
 * upright edges, ties Eh·h/(2b) on the other two. Source: energy of one constant strain (derived); test: the hinged
 * picture frame, flow H/b and sway H·h/(Gt·b).
 */
export function shearPanel(facts: PanelFacts): ShearPanel {
  const { axes, arms } = facts;
  const translations = numberRoom(144);
  const strain = strainVector(axes);
  addOuter(translations, strain, facts.shearStiffness * axes.widthMm * axes.heightMm);
  const strut = (facts.uprightStiffness * axes.widthMm) / (2 * axes.heightMm);
  const tie = (facts.alongStiffness * axes.heightMm) / (2 * axes.widthMm);
  addStrut(translations, 0, 3, axes.e2, strut);
  addStrut(translations, 1, 2, axes.e2, strut);
  addStrut(translations, 0, 1, axes.e1, tie);
  addStrut(translations, 3, 2, axes.e1, tie);
  if (arms === null) return { facts, freedoms: translationsOf(facts.nodes), matrix: translations, strainOf: strain };
  return {
    facts,
    freedoms: freedomsOf(facts.nodes),
    matrix: withArms(translations, arms),
    strainOf: strainWithArms(strain, arms),
  };
}

/** The sheet between other corners, alike in all else and without arms. */
export function onNodes({ matrix, strainOf }: ShearPanel, facts: PanelFacts): ShearPanel {
  return { facts, freedoms: translationsOf(facts.nodes), matrix, strainOf };
}

/** The shear flow q = Gt·g in N/mm. */
export function panelFlow({ facts, freedoms, strainOf }: ShearPanel, movement: Float64Array): number {
  let strain = 0;
  for (let i = 0; i < freedoms.length; i++) strain += (strainOf[i] ?? 0) * (movement[freedoms[i] ?? 0] ?? 0);
  return facts.shearStiffness * strain;
}

/** Signs of a corner's movement in the two means: bottom left, bottom right, top right, top left. */
const ACROSS = [-1, -1, 1, 1] as const;
const ALONG = [-1, 1, 1, -1] as const;

function strainVector({ e1, e2, widthMm, heightMm }: PanelAxes): Float64Array {
  const strain = numberRoom(12);
  for (let corner = 0; corner < 4; corner++) {
    const across = (ACROSS[corner] ?? 0) / (2 * heightMm);
    const along = (ALONG[corner] ?? 0) / (2 * widthMm);
    for (let c = 0; c < 3; c++) strain[corner * 3 + c] = across * (e1[c] ?? 0) + along * (e2[c] ?? 0);
  }
  return strain;
}

/** A bar between two corners that resists only the change of their distance along `direction`. */
function addStrut(k: Float64Array, from: number, to: number, direction: Vector, stiffness: number): void {
  if (stiffness === 0) return;
  for (let a = 0; a < 3; a++) {
    for (let b = 0; b < 3; b++) {
      const value = stiffness * (direction[a] ?? 0) * (direction[b] ?? 0);
      add(k, from * 3 + a, from * 3 + b, value);
      add(k, to * 3 + a, to * 3 + b, value);
      add(k, from * 3 + a, to * 3 + b, -value);
      add(k, to * 3 + a, from * 3 + b, -value);
    }
  }
}

function add(k: Float64Array, row: number, column: number, value: number): void {
  k[row * 12 + column] = (k[row * 12 + column] ?? 0) + value;
}

function addOuter(k: Float64Array, b: Float64Array, stiffness: number): void {
  if (stiffness === 0) return;
  for (let i = 0; i < 12; i++) {
    const factor = stiffness * (b[i] ?? 0);
    if (factor === 0) continue;
    for (let j = 0; j < 12; j++) k[i * 12 + j] = (k[i * 12 + j] ?? 0) + factor * (b[j] ?? 0);
  }
}

function translationsOf(nodes: readonly number[]): Int32Array {
  const freedoms = integerRoom(12);
  nodes.forEach((node, corner) => {
    for (let c = 0; c < 3; c++) freedoms[corner * 3 + c] = node * 6 + c;
  });
  return freedoms;
}

function withArms(translations: Float64Array, arms: readonly [Vector, Vector, Vector, Vector]): Float64Array {
  const k = new Float64Array(576);
  for (let i = 0; i < 12; i++) {
    for (let j = 0; j < 12; j++) k[spread(i) * 24 + spread(j)] = translations[i * 12 + j] ?? 0;
  }
  arms.forEach((arm, corner) => moveStiffness(k, 24, corner * 6, arm));
  return k;
}

function strainWithArms(strain: Float64Array, arms: readonly [Vector, Vector, Vector, Vector]): Float64Array {
  const wide = new Float64Array(24);
  strain.forEach((value, i) => (wide[spread(i)] = value));
  arms.forEach(([x, y, z], corner) => {
    const [a = 0, b = 0, c = 0] = wide.subarray(corner * 6, corner * 6 + 3);
    wide.set([y * c - z * b, z * a - x * c, x * b - y * a], corner * 6 + 3);
  });
  return wide;
}

/** Place of a translation among six freedoms per corner. */
function spread(translation: number): number {
  return Math.floor(translation / 3) * 6 + (translation % 3);
}
