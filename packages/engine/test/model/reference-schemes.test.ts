import { emptyScheme, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { condensationCache, solveBuilding, type BuildingCombination } from "../../src/building.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ModelCase, ModelSection } from "../../src/model/analytical-model.ts";
import type { BuildingModel, PlacedUnit } from "../../src/model/building-model.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { usualAssumptions, type ModelAssumptions } from "../../src/model/model-assumptions.ts";
import { referenceJson, referenceModel } from "../analysis/reference-model.ts";

// Source: shared/reference/D01…D07.json. The buildings are drawn as schemes; sections, sheets and diaphragms are set as the
// files state them, holds in plan are the product's own. Judged as `how_to_judge` says: inside the band widened by 5 % of the
// value each way (10 % for rail moments); forces under 0.05 kN and displacements under 0.02 mm absolutely.

const given = referenceModel("D01").sections;
const section = (name: string): ModelSection => given[name] ?? usualAssumptions.sections.frame;
const assumptions: ModelAssumptions = {
  ...usualAssumptions,
  sections: {
    post: section("post"),
    topRail: section("toprail"),
    bottomRail: section("botrail"),
    bottomRailAtSeat: usualAssumptions.sections.bottomRailAtSeat,
    crossMember: section("cross"),
    frame: section("s100"),
    fold: usualAssumptions.sections.fold,
  },
  shortRail: { bottomRail: section("botrail"), bottomRailAtSeat: usualAssumptions.sections.bottomRailAtSeat },
  sideSheet: { shear: 115_638, upright: 340_585, along: 333 },
  frontSheet: { shear: 144_548, upright: 425_731, along: 650 },
};

const sizes = { "40HC": { type: "1AAA", L: 11_985, H: 2896 }, "20ST": { type: "1CC", L: 5853, H: 2591 } } as const;
const W = 2259;

interface ReferenceFile {
  results: Record<string, { values: { what: string; value: number; unit: string; band: [number, number] }[] }>;
  checks: Record<string, { applied_total_kN: number[] }>;
}

interface Drawn {
  kind: keyof typeof sizes;
  origin: [number, number, number];
  turn: 0 | 90;
}

const um = (mm: number): number => Math.round(mm * 1000);

function container(id: string, { kind, origin: [x, y, z], turn }: Drawn): Scheme["containers"][number] {
  const { type, L } = sizes[kind];
  const [dx, dy] = turn === 0 ? [L / 2, W / 2] : [-W / 2, L / 2];
  return { id, tag: id, type, xUm: um(x + dx), yUm: um(y + dy), zUm: um(z), turnMdeg: turn * 1000 };
}

const pad = (id: string, x: number, y: number, wide = 400): Scheme["pads"][number] => ({
  id,
  tag: id,
  xUm: um(x),
  yUm: um(y),
  topZUm: 0,
  lengthUm: um(wide),
  widthUm: um(wide),
  depthUm: um(300),
  turnMdeg: 0,
});

const units: Record<string, Record<string, Drawn>> = {
  D01: { A: { kind: "40HC", origin: [0, 0, 0], turn: 0 } },
  D02: { A: { kind: "40HC", origin: [0, 0, 0], turn: 0 } },
  D03: { A: { kind: "40HC", origin: [0, 0, 0], turn: 0 } },
  D04: { A: { kind: "40HC", origin: [0, 0, 0], turn: 0 }, B: { kind: "40HC", origin: [0, 0, 2896], turn: 0 } },
  D05: { A: { kind: "40HC", origin: [0, 0, 0], turn: 0 }, B: { kind: "40HC", origin: [3000, 0, 2896], turn: 0 } },
  D06: {
    A: { kind: "20ST", origin: [0, 0, 0], turn: 0 },
    B: { kind: "20ST", origin: [0, 3594, 0], turn: 0 },
    U: { kind: "20ST", origin: [2259, 0, 2591], turn: 90 },
  },
  D07: { A: { kind: "20ST", origin: [0, 0, 0], turn: 0 } },
};

function schemeOf(name: string): Scheme {
  const drawn = units[name] ?? {};
  const onGround = Object.entries(drawn).filter(([, { origin }]) => origin[2] === 0);
  const corners = onGround.flatMap(([id, { kind, origin }]) =>
    [0, sizes[kind].L].flatMap((x) => [0, W].map((y) => pad(`pad-${id}-${x}-${y}`, origin[0] + x, origin[1] + y))),
  );
  const left = { id: "opening", tag: "O1", containerId: "A", face: "right", sillUm: 0, framed: true } as const;
  const outer = (12_192 - 11_985) / 2;
  const whole = { sillUm: um(12.5 + 162), heightUm: um(2896 - 6 - 60 - 12.5 - 162) };
  const openings: Scheme["openings"] =
    name === "D02"
      ? [{ ...left, ...whole, use: "passage", offsetUm: um(1500 + outer), widthUm: um(3000) }]
      : name === "D03"
        ? [{ ...left, ...whole, use: "open-wall", framed: false, offsetUm: um(200), widthUm: um(11_792) }]
        : [];
  const postAt = (n: number, x: number): Scheme["posts"][number] => ({
    id: `post-${n}`,
    tag: `P${n}`,
    xUm: um(x),
    yUm: um(-39.5),
    baseZUm: um(12.5 + 162),
    topZUm: um(2896 - 6 - 60),
    turnMdeg: 0,
    section: "tube 100x100x6",
  });
  const posts = name === "D03" ? [postAt(1, 3995), postAt(2, 7990)] : [];
  const pads = [...corners, ...(name === "D03" ? [pad("pad-x1", 3995, -39.5), pad("pad-x2", 7990, -39.5)] : [])].sort(
    (a, b) => (a.id < b.id ? -1 : 1),
  );
  return {
    ...emptyScheme,
    site: { northMdeg: 0, groundZUm: 0, edition: "IBC 2021" },
    containers: Object.entries(drawn).map(([id, one]) => container(id, one)),
    openings,
    posts,
    pads,
    loads: [],
  };
}

/** The files' loads on the builder's own lines. */
function loadsOf(unit: PlacedUnit, kind: keyof typeof sizes, snow: boolean): Record<string, ModelCase> {
  const { L, H } = sizes[kind];
  const bay = L / Math.round(L / 308);
  const q = (
    beam: string,
    perFloor: number,
    bottom: number,
    top: number,
    sideways: number,
  ): [number, number, number] => {
    const end = /^(front|door)EndbottomRail/.test(beam);
    const floor = beam.startsWith("cross") ? bay * perFloor : end ? (bay / 2) * perFloor : 0;
    return [
      0,
      sideways,
      -(floor + (beam.startsWith("bottomRail") ? bottom : 0) + (beam.startsWith("topRail") ? top : 0)),
    ];
  };
  const right = new Set(
    unit.fragment.beams
      .filter(({ i }) => unit.fragment.nodes.find(({ id }) => id === i)?.y === -W / 2)
      .map(({ id }) => id),
  );
  const every = (pressure: number, bottom: number, top: number, wind = 0): ModelCase => ({
    beam_udl: unit.fragment.beams
      .filter(({ id }) => /^(cross|bottomRail|topRail|frontEndbottomRail|doorEndbottomRail)/.test(id))
      .map(({ id }) => ({
        beam: id,
        q: q(id, pressure, bottom, top, wind !== 0 && right.has(id) && /^(bottomRail|topRail)/.test(id) ? wind : 0),
      })),
  });
  return {
    D: every(0.7e-3, 0.5, 0.3),
    Q: every(2e-3, 0, 0),
    S: every(0, 0, snow ? (1e-3 * W) / 2 : 0),
    W: every(0, 0, 0, (1e-3 * H) / 2),
  };
}

const SNOWED: Record<string, string[]> = { D04: ["B"], D05: ["B"], D06: ["A", "B", "U"] };

function solved(name: string) {
  const drawn = units[name] ?? {};
  const combos = referenceModel(name).combos;
  const { model } = buildModel(analyse(schemeOf(name)), [], combos, assumptions);
  const loaded: BuildingModel = {
    ...model,
    units: model.units.map((unit) => ({
      ...unit,
      loadsKey: `${name} ${unit.id}`,
      loads: loadsOf(unit, drawn[unit.id]?.kind ?? "40HC", (SNOWED[name] ?? ["A"]).includes(unit.id)),
    })),
  };
  return { model: loaded, combos: solveBuilding(loaded, condensationCache(1e9)).combos };
}

const number = /-?\d+(?:\.\d+)?/g;

/** Our reading of a result by its words in the file; null for what is not read here (places of moments, level movements). */
function reading(what: string, name: string, model: BuildingModel, combo: BuildingCombination): number | null {
  const unitId = /unit (\w)/.exec(what)?.[1] ?? "";
  const unit = model.units.find(({ id }) => id === unitId);
  const side = what.includes("near") ? "right" : "left";
  const rail = what.includes("bottom rail") ? "bottomRail" : "topRail";
  const numbers = (what.replace(/unit \w/, "").match(number) ?? []).map(Number);
  const { L, H } = sizes[units[name]?.[unitId]?.kind ?? "40HC"];
  if (what.startsWith("ground reaction")) return what.endsWith("Fz") ? groundReaction(combo, model, numbers) : null;
  if (what.startsWith("bearing at")) return bearing(combo, model, numbers);
  if (unit === undefined) return null;
  const solution = combo.unit(unitId);
  const y = side === "right" ? -W / 2 : W / 2;
  const z = rail === "bottomRail" ? 90 : H - 40;
  if (what.startsWith("displacement"))
    return what.endsWith("uz") ? along(unit, solution.displacements, (numbers[0] ?? NaN) - L / 2, y, z) : null;
  if (what.includes("place of")) return null;
  const beams = unit.fragment.beams.filter(
    ({ id, i, j }) => id.startsWith(rail) && [i, j].every((node) => at(unit, node, y, z)),
  );
  const ends = beams.map(({ id }) => solution.memberEndForces[id] ?? []);
  if (what.includes("largest upright bending moment"))
    return Math.max(...ends.flatMap((f) => [Math.abs(f[4] ?? NaN), Math.abs(f[10] ?? NaN)])) / 1e6;
  if (what.includes("largest tension")) return Math.max(...ends.flatMap((f) => [-(f[0] ?? NaN), f[6] ?? NaN])) / 1e3;
  if (what.includes("largest compression"))
    return Math.min(...ends.flatMap((f) => [-(f[0] ?? NaN), f[6] ?? NaN])) / 1e3;
  if (what.includes("corner post")) {
    const x = what.includes("x = L") ? L / 2 : -L / 2;
    const foot = unit.fragment.beams.find(
      ({ id, i }) =>
        id.startsWith("post#") && unit.fragment.nodes.some((n) => n.id === i && n.x === x && n.y === y && n.z === 0),
    );
    return -(solution.memberEndForces[foot?.id ?? ""]?.[0] ?? NaN) / 1e3;
  }
  return null;
}

function at(unit: PlacedUnit, node: string, y: number, z: number): boolean {
  const found = unit.fragment.nodes.find(({ id }) => id === node);
  return found !== undefined && Math.abs(found.y - y) < 0.01 && Math.abs(found.z - z) < 0.01;
}

function along(
  unit: PlacedUnit,
  displacements: Readonly<Record<string, readonly number[]>>,
  x: number,
  y: number,
  z: number,
): number {
  const line = unit.fragment.nodes
    .filter((node) => Math.abs(node.y - y) < 0.01 && Math.abs(node.z - z) < 0.01)
    .sort((a, b) => a.x - b.x);
  const after = line.findIndex((node) => node.x >= x - 0.06);
  const [a, b] = [line[Math.max(after - 1, 0)], line[after]];
  if (a === undefined || b === undefined) return NaN;
  const share = a === b ? 0 : (x - a.x) / (b.x - a.x);
  return (displacements[a.id]?.[2] ?? NaN) * (1 - share) + (displacements[b.id]?.[2] ?? NaN) * share;
}

function sitePlace(model: BuildingModel, name: string): number[] {
  const [unitId = "", node = ""] = name.split(":");
  const unit = model.units.find(({ id }) => id === unitId);
  const found = unit?.fragment.nodes.find(({ id }) => id === node);
  if (unit === undefined || found === undefined) return [NaN, NaN, NaN];
  const [cos, sin] = unit.turnMdeg === 0 ? [1, 0] : [0, 1];
  return [cos * found.x - sin * found.y + unit.at[0], sin * found.x + cos * found.y + unit.at[1], found.z + unit.at[2]];
}

const near = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((value, c) => Math.abs(value - (b[c] ?? NaN)) < 20);

function groundReaction(combo: BuildingCombination, model: BuildingModel, place: number[]): number {
  const found = Object.entries(combo.frame.reactions).find(([node]) => near(sitePlace(model, node), place));
  return (found?.[1][2] ?? NaN) / 1e3;
}

function bearing(combo: BuildingCombination, model: BuildingModel, place: number[]): number {
  const link = model.links.find(({ j }) => near(sitePlace(model, j), place));
  return (combo.frame.links[link?.id ?? ""]?.[2] ?? NaN) / 1e3;
}

describe.each(Object.keys(units))("%s drawn as a scheme", (name) => {
  const { model, combos } = solved(name);
  const { results, checks } = referenceJson<ReferenceFile>(`${name}.json`);
  const rows = Object.entries(results).flatMap(([combo, { values }]) =>
    values.map((value) => [`${combo}: ${value.what}`, combo, value] as const),
  );

  it.each(rows)("%s lies in its band", (_, comboName, { what, value, unit, band }) => {
    const combo = combos[comboName];
    if (combo === undefined || "refused" in combo) throw new Error(combo?.refused ?? "no such combination");
    const own = reading(what, name, model, combo);
    if (own === null) return;
    const widening = Math.abs(value) * (what.includes("moment") ? 0.1 : 0.05) + (unit === "mm" ? 0.02 : 0.05);
    expect(own).toBeGreaterThanOrEqual(Math.min(...band, value) - widening);
    expect(own).toBeLessThanOrEqual(Math.max(...band, value) + widening);
  });

  it("its upright ground reactions sum to the load within 0.5 percent, and the building is in equilibrium", () => {
    for (const combo of Object.values(combos)) {
      if ("refused" in combo) throw new Error(combo.refused);
      const up = Object.values(combo.frame.reactions).reduce((sum, r) => sum + (r[2] ?? NaN), 0);
      const total = Math.abs(Object.values(checks)[0]?.applied_total_kN[2] ?? NaN) * 1e3;
      expect(Math.abs(up / total - 1)).toBeLessThan(0.005);
      expect(Math.max(...combo.frame.equilibrium.slice(0, 3).map(Math.abs))).toBeLessThan(1e-6 * total);
    }
  });
});
