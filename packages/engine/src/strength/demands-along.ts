import type { MemberDemand } from "../checks/member-demand.ts";

/** A demand that is written over from place to place. */
export type DemandRoom = { -readonly [K in keyof MemberDemand]: MemberDemand[K] };

export const demandRoom = (): DemandRoom => ({
  axialN: 0,
  shearStrongN: 0,
  shearWeakN: 0,
  momentStrongNmm: 0,
  momentWeakNmm: 0,
  torsionNmm: 0,
});

/**
 * The places of a straight member where forces can be greatest, one after another: both ends, and where a shear passes through
 * zero under even load.
 */
export class DemandsAlong {
  /** How many places there are. */
  count = 0;
  private readonly places = new Float64Array(4);
  /** At the first end: three forces, torsion, two moments; then the load along three axes, N/mm. */
  private readonly line = new Float64Array(9);

  /**
   * `forces` from `at` on: three forces and three moments on the first end of the member, three forces on its second, local
   * axes.
   */
  take(forces: ArrayLike<number>, at: number, lengthMm: number): void {
    const { line, places } = this;
    for (let c = 0; c < 6; c++) line[c] = forces[at + c] ?? 0;
    // from equilibrium of the member
    for (let c = 0; c < 3; c++) line[6 + c] = -((line[c] ?? 0) + (forces[at + 6 + c] ?? 0)) / lengthMm;
    places[0] = 0;
    places[1] = lengthMm;
    this.count = 2;
    const strong = peak(line[2] ?? 0, line[8] ?? 0, lengthMm);
    if (strong > 0) places[this.count++] = strong;
    const weak = peak(line[1] ?? 0, line[7] ?? 0, lengthMm);
    if (weak > 0) places[this.count++] = weak;
  }

  /** Writes the demand at one of the places. */
  write(n: number, room: DemandRoom): void {
    this.writeAt(this.places[n] ?? 0, room);
  }

  /** Writes the demand at x from the first end, mm. */
  writeAt(x: number, room: DemandRoom): void {
    const { line } = this;
    const [ay, az] = [line[1] ?? 0, line[2] ?? 0];
    const [across, up] = [line[7] ?? 0, line[8] ?? 0];
    room.axialN = (line[0] ?? 0) + (line[6] ?? 0) * x;
    room.shearStrongN = az + up * x;
    room.shearWeakN = ay + across * x;
    room.torsionNmm = line[3] ?? 0;
    room.momentStrongNmm = (line[4] ?? 0) + az * x + (up * x * x) / 2;
    room.momentWeakNmm = -(line[5] ?? 0) + ay * x + (across * x * x) / 2;
  }
}

/** Where the shear passes through zero, the moment has its peak; 0 where that is not between the ends. */
function peak(shearN: number, loadNPerMm: number, lengthMm: number): number {
  if (loadNPerMm === 0) return 0;
  const x = -shearN / loadNPerMm;
  return x > 0 && x < lengthMm ? x : 0;
}
