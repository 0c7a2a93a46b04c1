import { readFileSync, writeFileSync } from "node:fs";
import { readScheme } from "@cornerway/schema";
import type { AnalyticalModel, ModelNode } from "../../src/model/analytical-model.ts";
import { mergeBuilding } from "../../src/model/merge-building.ts";
import { schemeModel } from "../../src/model/scheme-model.ts";
import { stackedModel, stackedScheme } from "./stacked-building.ts";

// Writes an oblique view of a scheme's line model as SVG, or of a bench building's:
// node --conditions=development --import tsx draw-model.ts FILE [SCHEME.json | COUNT]
const [file = "model.svg", what = "8"] = process.argv.slice(2);
writeFileSync(file, drawing(what.endsWith(".json") ? modelIn(what) : benchModel(Number(what))));

function benchModel(count: number): AnalyticalModel {
  return mergeBuilding(stackedModel(stackedScheme(count)));
}

function modelIn(place: string): AnalyticalModel {
  const reading = readScheme(JSON.parse(readFileSync(place, "utf8")));
  if (!reading.ok) throw new Error(`${place} is no scheme: ${JSON.stringify(reading.fields)}`);
  return schemeModel(reading.scheme).model;
}

type Point = readonly [number, number];

/** Members blue, frames and added steel red, sheets grey, bearings and supports black. */
function drawing(model: AnalyticalModel): string {
  const nodes = new Map(model.nodes.map((node) => [node.id, project(node)]));
  const at = (id: string): Point => nodes.get(id) ?? [0, 0];
  const sheets = model.panels.map(
    ({ nodes: corners }) =>
      `<polygon points="${corners.map((id) => at(id).join(",")).join(" ")}" fill="#8883" stroke="#8886" stroke-width="4"/>`,
  );
  const beams = model.beams.map(({ i, j, section }) =>
    line(at(i), at(j), /frame|Frame|fold|added/.test(section) ? "#c33" : "#257", section === "fold" ? 6 : 14),
  );
  const ties = model.springs.flatMap(({ i, j }) => (j === undefined ? [] : [line(at(i), at(j), "#090", 20)]));
  const links = model.links.map(({ j }) => dot(at(j), 60, "#000"));
  const supports = model.supports.map(({ node }) => dot(at(node), 90, "#000"));
  const all = [...nodes.values()];
  const [x0, y0] = [Math.min(...all.map(([x]) => x)) - 300, Math.min(...all.map(([, y]) => y)) - 300];
  const [w, h] = [Math.max(...all.map(([x]) => x)) - x0 + 300, Math.max(...all.map(([, y]) => y)) - y0 + 300];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${[x0, y0, w, h].map(Math.round).join(" ")}">${[...sheets, ...beams, ...ties, ...links, ...supports].join("\n")}</svg>\n`;
}

/** Cavalier view from the south, receding to the right. */
function project({ x, y, z }: ModelNode): Point {
  return [Math.round(x + 0.45 * y), Math.round(-z - 0.3 * y)];
}

function line([x1, y1]: Point, [x2, y2]: Point, colour: string, width: number): string {
  return `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="${colour}" stroke-width="${width}"/>`;
}

function dot([x, y]: Point, radius: number, colour: string): string {
  return `<circle cx="${x}" cy="${y}" r="${radius}" fill="${colour}"/>`;
}
