import { cautionLine, cautions, emptyScheme, type Scheme } from "@cornerway/schema";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { chartCommand, type ChartAsked } from "../../src/cli/chart-command.ts";
import { chartHeads } from "../../src/cli/chart-csv.ts";

const pad = (id: string, xUm: number, yUm: number): Scheme["pads"][number] => ({
  ...{ id, tag: `B${id.charCodeAt(0) - 96}`, xUm, yUm, topZUm: 0, turnMdeg: 0 },
  ...{ lengthUm: 1_200_000, widthUm: 1_200_000, depthUm: 400_000 },
});
const scheme: Scheme = {
  ...emptyScheme,
  containers: [{ id: "u1", tag: "U1", type: "1D", xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 }],
  openings: [
    {
      ...{ id: "w1", tag: "W1", containerId: "u1", face: "right", use: "window", framed: true },
      ...{ offsetUm: 1_200_000, sillUm: 900_000, widthUm: 600_000, heightUm: 900_000 },
    },
  ],
  pads: [
    pad("a", -1_400_000, -1_129_500),
    pad("b", -1_400_000, 1_129_500),
    pad("c", 1_400_000, -1_129_500),
    pad("d", 1_400_000, 1_129_500),
  ],
};
const fineness = { apartMm: 800, envelope: "deciding sets" } as const;
const run = (asked: Omit<ChartAsked, "fineness">, apartMm: number = fineness.apartMm) =>
  chartCommand({ name: "scheme.json", value: scheme }, { ...asked, fineness: { ...fineness, apartMm } });

describe("cornerway chart", () => {
  const csv = run({ of: "W1", as: "csv" });

  it("writes CSV that reads back: units in the heads, every width of every place once, the caution in each row", () => {
    expect([csv.err, csv.code]).toEqual(["", 0]);
    const [heads, ...rows] = parse(csv.out);
    expect(heads).toEqual([...chartHeads]);
    expect(chartHeads.slice(0, 3).every((head) => head.endsWith("(mm)"))).toBe(true);
    const byPlace = new Map<string, number[][]>();
    for (const [centre = "", from, to] of rows)
      byPlace.set(centre, [...(byPlace.get(centre) ?? []), [Number(from), Number(to)]]);
    for (const stretches of byPlace.values())
      stretches.slice(1).forEach(([from], n) => expect(from).toBe((stretches[n]?.[1] ?? NaN) + 50));
    expect(rows.every((row) => row.at(-1) === cautionLine)).toBe(true);
  });

  it("says of what works under gravity alone that it is not checked, with the verdict under these loads beside it", () => {
    const rows = parse(csv.out).slice(1);
    const works = rows.filter(([, , , , under]) => under === "works with steel");
    expect(works.length).toBeGreaterThan(0);
    for (const [, , , verdict, , loads] of works)
      expect([verdict, loads]).toEqual(["not checked", "gravity loads only"]);
  });

  it("writes text with the caution line first, every caution, the opening as drawn and what is assumed", () => {
    const { out } = run({ of: "W1", as: "text" }, 2400);
    expect(out.startsWith(`${cautionLine}\n`)).toBe(true);
    for (const caution of cautions) expect(out).toContain(caution);
    expect(out).toContain("0.600 m wide at 1.500 m");
    expect(out).toContain("ASSUMED");
  });

  it("names what it does not know", () => {
    expect(run({ of: "Z9", as: "text" })).toEqual({
      out: "",
      err: "scheme.json: /containers: no container or opening is named Z9\n",
      code: 1,
    });
  });
});
