import type { PlacedUnit } from "../model/building-model.ts";

/** The cross member that sags most, mm: under dead load, and under dead and imposed load together. */
export type CrossMemberSag = { readonly spanMm: number; readonly deadMm: number; readonly wholeMm: number };

/**
 * Cross members are pinned to the rails for upright bending: 5 q L⁴ / 384 E I, from the line load each has in the model.
 * Undefined for a container without any.
 */
export function crossMemberSag(
  unit: PlacedUnit,
  deadCase: string,
  cases: readonly string[],
): CrossMemberSag | undefined {
  const { fragment } = unit;
  const nodes = new Map(fragment.nodes.map((node) => [node.id, node]));
  const loadOn = (beamId: string, caseId: string): number =>
    (unit.loads[caseId]?.beam_udl ?? [])
      .filter(({ beam }) => beam === beamId)
      .reduce((sum, { q: [, , up] }) => sum - up, 0);
  const sags = fragment.beams
    .filter(({ id }) => id.startsWith("cross#"))
    .map(({ id, i, j, section }): CrossMemberSag => {
      const [from, to, bar] = [nodes.get(i), nodes.get(j), fragment.sections[section]];
      if (from === undefined || to === undefined || bar === undefined)
        throw new RangeError(`cross member ${id} is not whole`);
      const spanMm = Math.abs(to.y - from.y);
      const perNewtonMm = (5 * spanMm * spanMm * spanMm * spanMm) / (384 * bar.E * bar.Iy);
      const whole = cases.reduce((sum, one) => sum + loadOn(id, one), 0);
      return { spanMm, deadMm: perNewtonMm * loadOn(id, deadCase), wholeMm: perNewtonMm * whole };
    });
  return sags.toSorted((a, b) => b.wholeMm - a.wholeMm)[0];
}
