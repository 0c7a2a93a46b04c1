import type { MemberDemand } from "../checks/member-demand.ts";

/** Forces inside a straight member at x from its first end, from its twelve end forces; even load between the ends. */
export function demandsAlong(ends: readonly number[], lengthMm: number): MemberDemand[] {
  const [ax = 0, ay = 0, az = 0, at = 0, amy = 0, amz = 0, bx = 0, by = 0, bz = 0] = ends;
  const along = -(ax + bx) / lengthMm; // N/mm, from equilibrium of the member
  const across = -(ay + by) / lengthMm;
  const up = -(az + bz) / lengthMm;
  const inside = (x: number): MemberDemand => ({
    axialN: ax + along * x,
    shearStrongN: az + up * x,
    shearWeakN: ay + across * x,
    momentStrongNmm: amy + az * x + (up * x * x) / 2,
    momentWeakNmm: -amz + ay * x + (across * x * x) / 2,
    torsionNmm: at,
  });
  return [0, lengthMm, ...peak(az, up, lengthMm), ...peak(ay, across, lengthMm)].map(inside);
}

/** Where the shear passes through zero, the moment has its peak. */
function peak(shearN: number, loadNPerMm: number, lengthMm: number): number[] {
  if (loadNPerMm === 0) return [];
  const x = -shearN / loadNPerMm;
  return x > 0 && x < lengthMm ? [x] : [];
}
