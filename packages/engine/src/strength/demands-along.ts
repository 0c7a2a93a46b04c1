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
 * Visits the places of a straight member where forces can be greatest: both ends, and where a shear passes through zero
 * under even load. `forces` from `at` on: three forces and three moments on its first end, three forces on its second,
 * local axes. `room` is written over for each place.
 */
export function eachDemand(
  forces: Float64Array | readonly number[],
  at: number,
  lengthMm: number,
  room: DemandRoom,
  visit: () => void,
): void {
  const [ax, ay, az] = [forces[at] ?? 0, forces[at + 1] ?? 0, forces[at + 2] ?? 0];
  const along = -(ax + (forces[at + 6] ?? 0)) / lengthMm; // N/mm, from equilibrium of the member
  const across = -(ay + (forces[at + 7] ?? 0)) / lengthMm;
  const up = -(az + (forces[at + 8] ?? 0)) / lengthMm;
  const [my, mz] = [forces[at + 4] ?? 0, forces[at + 5] ?? 0];
  const inside = (x: number): void => {
    room.axialN = ax + along * x;
    room.shearStrongN = az + up * x;
    room.shearWeakN = ay + across * x;
    room.momentStrongNmm = my + az * x + (up * x * x) / 2;
    room.momentWeakNmm = -mz + ay * x + (across * x * x) / 2;
    visit();
  };
  room.torsionNmm = forces[at + 3] ?? 0;
  inside(0);
  inside(lengthMm);
  const [strong, weak] = [peak(az, up, lengthMm), peak(ay, across, lengthMm)];
  if (strong > 0) inside(strong);
  if (weak > 0) inside(weak);
}

/** Where the shear passes through zero, the moment has its peak; 0 where that is not between the ends. */
function peak(shearN: number, loadNPerMm: number, lengthMm: number): number {
  if (loadNPerMm === 0) return 0;
  const x = -shearN / loadNPerMm;
  return x > 0 && x < lengthMm ? x : 0;
}
