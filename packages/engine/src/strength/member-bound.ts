import type { Capacities } from "../checks/member-utilisation.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import { enlargement, type BowLimits } from "./bowed-demand.ts";

/**
 * What no place of a straight line can use more of a member than, from the forces at its ends alone: most lines in most runs are
 * far below what governs, and need not be gone through place by place.
 *
 * Along a line under even load axial force and shear run straight, so they are greatest at its ends; a moment stands off the
 * straight line between its ends by w L²/8 at most. Utilisations grow with the size of every force but for the step of H1-1 at a
 * fifth of the axial strength, and there p + mx + my is above both branches. Bows enlarge moments most under the greatest
 * compression. What is rounded on the way is added.
 */
export class MemberBound {
  private readonly pressed: number;
  private readonly pulled: number;
  private readonly strong: number;
  private readonly weak: number;
  private readonly shear: number;
  private readonly shearWeak: number;
  private readonly torsion: number;
  private readonly thin: boolean;
  private readonly limits: BowLimits;
  private readonly together: boolean;

  /** `together`: shears both ways and torsion add up, as in walls of an open outline. */
  constructor(capacities: Capacities, limits: BowLimits, together = false) {
    const { compression, tension, headPressed, footPressed, weak } = capacities;
    // where one of these is refused other forces count for more than themselves: nothing is left out then
    const stated = [compression, tension, headPressed, footPressed, weak].every((one) => one !== undefined);
    const per = (strength: number | undefined): number => (stated ? 1 / (strength ?? 0) : Infinity);
    this.pressed = per(compression);
    this.pulled = per(tension);
    this.strong = Math.max(per(headPressed), per(footPressed));
    this.weak = per(weak);
    this.shear = per(capacities.shear);
    this.shearWeak = per(capacities.shearWeak);
    this.torsion = per(capacities.torsion);
    this.thin = capacities.family === "cold-formed";
    this.limits = limits;
    this.together = together;
  }

  /** False only where no place of the line uses more than `use`. Forces as `DemandsAlong` takes them. */
  mayExceed(use: number, forces: ArrayLike<number>, at: number, lengthMm: number): boolean {
    return this.next(0, Int32Array.of(at), Float64Array.of(lengthMm), forces, use) === 0;
  }

  /**
   * The first line from number `n` on of which some place may use more than `use`; how many there are where none may. One loop
   * with all its arithmetic: numbers passed from function to function here were a tenth of all garbage (measured).
   */
  next(from: number, lines: Int32Array, lengthsMm: Float64Array, forces: ArrayLike<number>, use: number): number {
    const { pressed, pulled, strong, weak, thin } = this;
    const { strongN, weakN } = this.limits;
    let n = from;
    for (; n < lines.length; n++) {
      const at = lines[n] ?? 0;
      const lengthMm = lengthsMm[n] ?? 0;
      const n0 = forces[at] ?? 0;
      const n1 = -(forces[at + 6] ?? 0);
      const pressedN = Math.max(n0, n1, 0) + FORCE_ROUNDED;
      const p = Math.max(pressedN * pressed, (Math.max(-n0, -n1, 0) + FORCE_ROUNDED) * pulled);
      const y0 = forces[at + 1] ?? 0;
      const y1 = -(forces[at + 7] ?? 0);
      const z0 = forces[at + 2] ?? 0;
      const z1 = -(forces[at + 8] ?? 0);
      const vx = (Math.max(Math.abs(z0), Math.abs(z1)) + FORCE_ROUNDED) * this.shear;
      const vy = (Math.max(Math.abs(y0), Math.abs(y1)) + FORCE_ROUNDED) * this.shearWeak;
      const t = (Math.abs(forces[at + 3] ?? 0) + MOMENT_ROUNDED) * this.torsion;
      const strongNmm = mostAlong(forces[at + 4] ?? 0, z0, z1, lengthMm);
      const weakNmm = mostAlong(-(forces[at + 5] ?? 0), y0, y1, lengthMm);
      const mx = strongNmm * enlargement(pressedN, strongN) * strong;
      const my = weakNmm * enlargement(pressedN, weakN) * weak;
      const v = vx + vy + t;
      const bent = p + mx + my + (t > LEAST_TORSION ? v * v : 0);
      const sheared = thin ? Math.sqrt(mx * mx + vx * vx) : vx;
      // not ≤ where a refused strength makes it no number
      if (!(Math.max(bent, sheared, this.together ? v : Math.max(vx, vy, t)) * (1 + SOLUTION_ACCURACY) <= use)) break;
    }
    return n;
  }
}

/** No moment between the ends is greater; from the one at the first end and the shears at both. */
const mostAlong = (start: number, shear0: number, shear1: number, lengthMm: number): number => {
  const end = start + ((shear0 + shear1) / 2) * lengthMm;
  const sag = (Math.abs(shear1 - shear0) * lengthMm) / 8;
  return Math.max(Math.abs(start), Math.abs(end)) + sag + MOMENT_ROUNDED;
};

/** More than demands are rounded by: to a thousandth of a newton, and to a newton-millimetre. */
const [FORCE_ROUNDED, MOMENT_ROUNDED] = [1e-3, 1];
/** Torsion counts with other forces from a fifth of its strength on (AISC 360 H3.2). */
const LEAST_TORSION = 0.2;
