import type { SchemeModel } from "@cornerway/engine";
import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { significant } from "./words.ts";

/** The model used as input, echoed: sections, members by section, strips, joints, supports; its picture is sheet S8. */
export function layModel(
  flow: CalculationFlow,
  { scheme }: SetSource,
  derived: Derived,
  { model, notes }: SchemeModel,
): void {
  flow.subject("Model and input");
  flow.paragraph(
    `Sheet S8 draws it. ${model.nodes.length} nodes, ${model.beams.length} members, ${model.panels.length} shear strips, ${model.links.length} bearings and joints, ${model.springs.length} springs, ${model.supports.length} supports. N, mm and MPa inside. A machine-readable copy comes from “cornerway assess scheme.json --model”.`,
  );
  flow.heading("Sections of the line model");
  flow.table({
    name: "Sections of the model",
    size: 7.4,
    columns: [
      { heading: "Section", share: 24 },
      ...["Members", "E, MPa", "A, mm²", "Iy, mm⁴", "Iz, mm⁴", "J, mm⁴"].map((name) => ({
        heading: name,
        share: 12,
        right: true,
      })),
    ],
    rows: Object.entries(model.sections).map(([name, section]) => [
      name,
      String(model.beams.filter((beam) => beam.section === name).length),
      ...[section.E, section.A, section.Iy, section.Iz, section.J].map(significant),
    ]),
  });
  flow.heading("What the model leaves out or takes another way than drawn");
  flow.table({
    name: "Notes of the model",
    columns: [
      { heading: "What", share: 40 },
      { heading: "Where", share: 60 },
    ],
    rows: notes.map((note) => [
      note.kind,
      ["unitId", "openingId", "elementId"]
        .flatMap((key) => {
          const id: unknown = Reflect.get(note, key);
          return typeof id === "string" ? [derived.tag(id)] : [];
        })
        .join(", "),
    ]),
  });
  flow.heading("Containers, as entered");
  flow.table({
    name: "Containers as entered",
    size: 7.6,
    columns: [
      { heading: "Tag", share: 8 },
      { heading: "Type", share: 10 },
      ...["x, m", "y, m", "Level, m", "Turn, °"].map((name) => ({ heading: name, share: 12, right: true })),
      { heading: "Doors", share: 14 },
      { heading: "Plate tare, kg", share: 14, right: true },
    ],
    rows: scheme.containers.map((unit) => [
      unit.tag,
      unit.type,
      ...[unit.xUm, unit.yUm, unit.zUm].map((um) => (um / 1_000_000).toFixed(3)),
      String(unit.turnMdeg / 1000),
      unit.doors ?? "as built",
      unit.plateTareKg === undefined ? "not surveyed" : String(unit.plateTareKg),
    ]),
  });
  flow.heading("Found or proved in place of the catalogue");
  flow.table({
    name: "Overrides",
    columns: [
      { heading: "Element", share: 14 },
      { heading: "Member", share: 20 },
      { heading: "Section", share: 20 },
      { heading: "Yield, MPa", share: 12, right: true },
      { heading: "Thickness, mm", share: 12, right: true },
      { heading: "Source", share: 24 },
    ],
    rows: scheme.overrides.map((found) => [
      derived.tag(found.elementId),
      found.member ?? "",
      found.section ?? "",
      found.yieldMpa === undefined ? "" : String(found.yieldMpa),
      found.thicknessUm === undefined ? "" : String(found.thicknessUm / 1000),
      found.source,
    ]),
  });
}
