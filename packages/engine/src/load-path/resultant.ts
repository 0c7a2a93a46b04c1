/** A vertical force at a place in plan, kN and mm. */
export type PointForce = { readonly forceKn: number; readonly xMm: number; readonly yMm: number };

/** The sum of vertical forces and where it acts. With no force it acts at the origin. */
export function resultantOf(forces: readonly PointForce[]): PointForce {
  const forceKn = forces.reduce((sum, force) => sum + force.forceKn, 0);
  if (forceKn === 0) return { forceKn: 0, xMm: 0, yMm: 0 };
  const momentX = forces.reduce((sum, force) => sum + force.forceKn * force.xMm, 0);
  const momentY = forces.reduce((sum, force) => sum + force.forceKn * force.yMm, 0);
  return { forceKn, xMm: momentX / forceKn, yMm: momentY / forceKn };
}
