import type { Operation, Scheme } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";

export type Shift = { readonly dxMm: number; readonly dyMm: number };

/** Units moved in plan, each by its own way; pads that bear nothing but them go along. */
export function moveUnits(scheme: Scheme, analysis: Analysis, shifts: ReadonlyMap<string, Shift>): Operation[] {
  const units = scheme.containers.flatMap(({ id, xUm, yUm, zUm }): Operation[] => {
    const by = shifts.get(id);
    return by === undefined
      ? []
      : [{ kind: "container.move", id, xUm: xUm + um(by.dxMm), yUm: yUm + um(by.dyMm), zUm }];
  });
  const pads = scheme.pads.flatMap(({ id, xUm, yUm, topZUm }): Operation[] => {
    const by = commonShift(bornBy(analysis, id), shifts);
    return by === undefined ? [] : [{ kind: "pad.move", id, xUm: xUm + um(by.dxMm), yUm: yUm + um(by.dyMm), topZUm }];
  });
  return [...units, ...pads];
}

/** Units and posts that stand on a pad. */
function bornBy({ bearings, footings }: Analysis, padId: string): string[] {
  const units = bearings
    .filter(({ contacts }) => contacts.some(({ target }) => target.on === "pad" && target.elementId === padId))
    .map(({ unitId }) => unitId);
  const posts = [...footings].flatMap(([id, footing]) =>
    footing.on === "pad" && footing.elementId === padId ? [id] : [],
  );
  return [...units, ...posts];
}

/** The way of all of them, where they go the same way. */
function commonShift(ids: readonly string[], shifts: ReadonlyMap<string, Shift>): Shift | undefined {
  const [first, ...others] = ids.map((id) => shifts.get(id));
  if (first === undefined) return undefined;
  return others.every((by) => by?.dxMm === first.dxMm && by.dyMm === first.dyMm) ? first : undefined;
}

const um = (mm: number): number => Math.round(mm * 1000);
