import type { Container, Operation, Scheme } from "@cornerway/schema";
import { moveUnit } from "../tools/move-unit.ts";
import { newElementId } from "../tools/new-element-id.ts";
import type { QuantityField } from "./quantity-field.ts";

/** The fields of a chosen element, and the operations that what is typed into them comes to. */
export interface ElementFields {
  fields: QuantityField[];
  operations: (values: Record<string, number>) => Operation[];
}

/** The numbers of a unit: where it lies and what its floor carries. */
export function unitForm(scheme: Scheme, unit: Container): ElementFields {
  return {
    fields: [
      length("xUm", "Centre, east", unit.xUm),
      length("yUm", "Centre, north", unit.yUm),
      length("zUm", "Level", unit.zUm),
      { name: "turnMdeg", label: "Turn", kind: "angle", value: unit.turnMdeg },
      pressure("imposed", "Imposed", loadOf(scheme, unit.id, "imposed")?.pressurePa ?? 0),
      pressure("finish", "Fit-out", loadOf(scheme, unit.id, "finish")?.pressurePa ?? 0),
    ],
    operations: (values) => [
      ...moveUnit(scheme, {
        ...unit,
        xUm: typed(values, "xUm", unit.xUm),
        yUm: typed(values, "yUm", unit.yUm),
        zUm: typed(values, "zUm", unit.zUm),
        turnMdeg: typed(values, "turnMdeg", unit.turnMdeg),
      }),
      ...changeLoad(scheme, unit.id, "imposed", values["imposed"]),
      ...changeLoad(scheme, unit.id, "finish", values["finish"]),
    ],
  };
}

const length = (name: string, label: string, value: number): QuantityField => ({ name, label, kind: "length", value });
const pressure = (name: string, label: string, value: number): QuantityField => ({
  name,
  label,
  kind: "pressure",
  value,
});

/** What was typed under a name, or what stands there. */
const typed = (values: Record<string, number>, name: string, standing: number): number => values[name] ?? standing;

const loadOf = (scheme: Scheme, containerId: string, which: "imposed" | "finish") =>
  scheme.loads.find((load) => load.containerId === containerId && load.surface === "floor" && load.case === which);

function changeLoad(
  scheme: Scheme,
  containerId: string,
  which: "imposed" | "finish",
  pressurePa: number | undefined,
): Operation[] {
  const load = loadOf(scheme, containerId, which);
  if (pressurePa === undefined || pressurePa === (load?.pressurePa ?? 0)) return [];
  if (load !== undefined) return [{ kind: "load.change", id: load.id, pressurePa }];
  return [
    { kind: "load.put", load: { id: newElementId("l"), containerId, surface: "floor", case: which, pressurePa } },
  ];
}
