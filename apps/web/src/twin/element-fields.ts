import type { Container, Opening, Operation, Pad, Post, Scheme } from "@cornerway/schema";
import { moveUnit } from "../tools/move-unit.ts";
import { newElementId } from "../tools/new-element-id.ts";
import type { QuantityField } from "./quantity-field.ts";

/** The fields of a chosen element, and the operations that what is typed into them comes to. */
export interface ElementFields {
  fields: QuantityField[];
  operations: (values: Record<string, number>) => Operation[];
}

export function elementFields(scheme: Scheme, id: string): ElementFields | null {
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit !== undefined) return unitFields(scheme, unit);
  const opening = scheme.openings.find((cut) => cut.id === id);
  if (opening !== undefined) return openingFields(opening);
  const post = scheme.posts.find((standing) => standing.id === id);
  if (post !== undefined) return postFields(post);
  const pad = scheme.pads.find((lying) => lying.id === id);
  return pad === undefined ? null : padFields(pad);
}

function unitFields(scheme: Scheme, unit: Container): ElementFields {
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

function openingFields(opening: Opening): ElementFields {
  const { id } = opening;
  return {
    fields: [
      length("offsetUm", "Along", opening.offsetUm),
      length("sillUm", "Sill", opening.sillUm),
      length("widthUm", "Width", opening.widthUm),
      length("heightUm", "Height", opening.heightUm),
    ],
    operations: (values) => [
      {
        kind: "opening.shape",
        id,
        offsetUm: typed(values, "offsetUm", opening.offsetUm),
        sillUm: typed(values, "sillUm", opening.sillUm),
        widthUm: typed(values, "widthUm", opening.widthUm),
        heightUm: typed(values, "heightUm", opening.heightUm),
      },
    ],
  };
}

function postFields(post: Post): ElementFields {
  const { id } = post;
  return {
    fields: [
      length("xUm", "East", post.xUm),
      length("yUm", "North", post.yUm),
      length("baseZUm", "Foot", post.baseZUm),
      length("topZUm", "Head", post.topZUm),
    ],
    operations: (values) => {
      const place = { xUm: typed(values, "xUm", post.xUm), yUm: typed(values, "yUm", post.yUm) };
      const ends = { baseZUm: typed(values, "baseZUm", post.baseZUm), topZUm: typed(values, "topZUm", post.topZUm) };
      const moved = place.xUm !== post.xUm || place.yUm !== post.yUm;
      const cut = ends.baseZUm !== post.baseZUm || ends.topZUm !== post.topZUm;
      return [
        ...(moved ? [{ kind: "post.move", id, ...place } as const] : []),
        ...(cut ? [{ kind: "post.length", id, ...ends } as const] : []),
      ];
    },
  };
}

function padFields(pad: Pad): ElementFields {
  return {
    fields: [length("xUm", "East", pad.xUm), length("yUm", "North", pad.yUm), length("topZUm", "Top", pad.topZUm)],
    operations: (values) => [
      {
        kind: "pad.move",
        id: pad.id,
        xUm: typed(values, "xUm", pad.xUm),
        yUm: typed(values, "yUm", pad.yUm),
        topZUm: typed(values, "topZUm", pad.topZUm),
      },
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
