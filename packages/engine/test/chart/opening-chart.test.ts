import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import type { ChartColumn, ChartStretch } from "../../src/chart/chart.ts";
import { PlaceJudge } from "../../src/chart/judge-place.ts";
import { trialGround } from "../../src/chart/trial-ground.ts";
import { checkBasisOf } from "../../src/checks/check-basis.ts";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import { verdictRank } from "../../src/marks/verdicts-of.ts";
import { chartedOpening, confirmOpening, openingChart } from "../../src/opening-chart.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { doorRequest, drawnChart } from "./drawn-chart.ts";

// One plain 20 ft unit on four pads under its own weight, 1.0 kPa of finishes and 2.4 kPa imposed, under gravity alone.

const plain = drawnUnit({ type: "1CC" });
const fineness = { apartMm: 1600, envelope: "all sets" } as const;
const { chart, steps } = drawnChart(plain, doorRequest, fineness);

/** Answers under every vector. */
function judgeOf(scheme: Scheme): PlaceJudge {
  const { edition } = scheme.site;
  const basis = {
    loads: designBasisFor(edition),
    factored: checkBasisOf(edition, "LRFD"),
    allowable: checkBasisOf(edition, "ASD"),
  };
  const answer = trialGround(scheme, doorRequest, { centreMm: 3029, widthMm: 900 }, basis, strengthMemory());
  if (!answer.accepted) throw new Error("the sample is accepted");
  return new PlaceJudge(answer.ground, "all sets");
}

const middleOf = (columns: readonly ChartColumn[]): ChartColumn => {
  const middle = columns[Math.floor(columns.length / 2)];
  if (middle === undefined) throw new Error("a chart has columns");
  return middle;
};

/** Two stretches next to one another of which neither is forbidden by geometry. */
function solvedBoundaries({ centreMm, stretches }: ChartColumn) {
  return stretches.flatMap((next, n): { centreMm: number; before: ChartStretch; next: ChartStretch }[] => {
    const before = stretches[n - 1];
    return before === undefined || next.why.kind === "member cut" ? [] : [{ centreMm, before, next }];
  });
}

describe("the chart of a plain 20 ft side", () => {
  it("comes column by column, the middle first, and tells how many are done", () => {
    expect(steps.map(({ done }) => done)).toEqual(steps.map((_, n) => n + 1));
    expect(steps[0]?.column.centreMm).toBe(chart.side.lengthMm / 2);
    expect(steps.at(-1)?.of).toBe(steps.length);
  });

  it("tells every width of every column in steps of 50 mm, each in one stretch", () => {
    for (const { mostMm, stretches } of chart.columns) {
      expect(stretches[0]?.fromMm).toBe(300);
      expect(stretches.at(-1)?.toMm).toBe(mostMm);
      stretches.slice(1).forEach((stretch, n) => expect(stretch.fromMm).toBe((stretches[n]?.toMm ?? 0) + 50));
    }
  });

  it("forbids nothing but the corner posts, at the width that reaches them: 2·(centre − 160 mm post)", () => {
    for (const { centreMm, stretches } of chart.columns) {
      const cut = stretches.find(({ why }) => why.kind === "member cut");
      const edge = Math.min(centreMm - chart.side.sheet.u0, chart.side.sheet.u1 - centreMm);
      expect(cut?.fromMm).toBe(Math.floor((2 * edge) / 50) * 50 + 50);
    }
  });

  it("never fares better for being wider: no exception on a plain wall away from bearings", () => {
    expect(chart.exceptions).toEqual([]);
    for (const { stretches } of chart.columns)
      stretches.slice(1).forEach(({ verdict }, n) => {
        expect(verdictRank[verdict]).toBeGreaterThanOrEqual(verdictRank[stretches[n]?.verdict ?? "not checked"]);
      });
  });

  it("is never cheaper for being wider, width by width, about a fixed centre in the middle and near an end", () => {
    const judge = judgeOf(plain);
    for (const [centreMm, mostMm] of [
      [3029, 5700],
      [1229, 2100],
    ] as const) {
      const widths = Array.from({ length: Math.floor((mostMm - 300) / 900) + 1 }, (_, n) => 300 + 900 * n);
      const ranks = widths.map((widthMm) => verdictRank[judge.answer({ centreMm, widthMm }).verdict]);
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
      expect(new Set(ranks).size).toBeGreaterThan(1);
    }
  });

  it("allows more in the middle than near an end, as the trade says of long sides", () => {
    const widest = ({ stretches }: ChartColumn): number =>
      stretches.findLast(({ verdict }) => verdict === "works with steel")?.toMm ?? 0;
    const ends = [chart.columns[0], chart.columns.at(-1)].flatMap((column) => column ?? []);
    for (const end of ends) expect(widest(middleOf(chart.columns))).toBeGreaterThan(widest(end));
  });

  it("says that gravity alone was solved, and names every vector and the stated framing", () => {
    expect(chart.basis.under).toBe("gravity loads only");
    expect(chart.basis.vectors).toHaveLength(7);
    expect(chart.basis.vectors.every(({ runs }) => runs.length > 0)).toBe(true);
    expect(chart.basis.framing).toEqual(["jambs tube 100x100x6", "header tube 100x100x6", "sill tube 100x100x6"]);
  });

  it("shows the pads under the corners with what they carry, and nothing above", () => {
    expect(chart.side.bearings.map(({ at, elementId }) => `${at} ${elementId}`)).toEqual([
      "below p-front-right",
      "below p-door-right",
    ]);
    for (const { forceN } of chart.side.bearings) expect(forceN).toBeGreaterThan(20_000);
  });

  it("is confirmed by full runs at both sides of every boundary of its middle column", () => {
    const boundaries = solvedBoundaries(middleOf(chart.columns));
    expect(boundaries.length).toBeGreaterThan(0);
    for (const { centreMm, before, next } of boundaries)
      for (const [widthMm, verdict] of [
        [before.toMm, before.verdict],
        [next.fromMm, next.verdict],
      ] as const) {
        const full = confirmOpening(plain, doorRequest, { centreMm, widthMm });
        if (!full.accepted) throw new Error("the sample is accepted");
        expect([widthMm, full.answer.verdict]).toEqual([widthMm, verdict]);
        expect(full.unit).toBe(verdict);
      }
  });
});

// A head 180 + 2400 = 2580 mm up lies in the top rail of a unit 2591 mm high (ISO 668), wherever it is cut and however wide.
describe("the chart of an opening that is cut through its top rail", () => {
  it("is drawn all the same, and nothing works at any place", () => {
    const request = { ...doorRequest, heightUm: 2_400_000, framedWhereNeeded: true as const };
    const { columns } = drawnChart(plain, request, { apartMm: 1600, envelope: "deciding sets" }).chart;
    expect(columns.length).toBeGreaterThan(1);
    for (const { stretches } of columns)
      for (const { verdict, why } of stretches) {
        expect(verdict).toBe("does not work");
        expect(why.kind).toBe("member cut");
      }
  });
});

describe("a chart traced under the vectors that decide", () => {
  const traced = drawnChart(plain, doorRequest, { apartMm: 1600, envelope: "deciding sets" }).chart;

  it("has the verdicts of the chart traced under every vector, and looks at fewer of them", () => {
    const seen = ({ columns }: typeof chart) =>
      columns.map(({ centreMm, stretches }) => [
        centreMm,
        ...stretches.map(({ fromMm, toMm, verdict }) => `${fromMm}–${toMm} ${verdict}`),
      ]);
    expect(seen(traced)).toEqual(seen(chart));
    const count = ({ basis }: typeof chart) => basis.vectors.reduce((sum, { runs }) => sum + runs.length, 0);
    expect(count(traced)).toBeLessThan(count(chart) / 2);
  });

  it("confirms the widest that works: under every vector it has the verdict told", () => {
    const widest = traced.columns
      .flatMap(({ centreMm, stretches }) => stretches.map((stretch) => ({ centreMm, ...stretch })))
      .filter(({ why }) => why.kind === "within")
      .toSorted((a, b) => b.toMm - a.toMm)[0];
    if (widest === undefined) throw new Error("something works in a plain side");
    const { centreMm, toMm: widthMm, verdict } = widest;
    expect(chartedOpening(plain, doorRequest, { centreMm, widthMm })).toMatchObject({ verdict });
    expect(traced.confirmed).toBeGreaterThan(1);
    expect(traced.confirmed).toBeLessThan(traced.solved / 3);
  });
});

describe("a chart that is stopped", () => {
  it("solves nothing more and has no answer", () => {
    const tracing = openingChart(plain, doorRequest, fineness);
    expect(tracing.next().done).toBe(false);
    expect(tracing.return({ accepted: false, refusals: [] })).toEqual({
      done: true,
      value: { accepted: false, refusals: [] },
    });
    expect(tracing.next()).toEqual({ done: true, value: undefined });
  });
});

describe("a mirrored scheme", () => {
  it("has the mirrored chart: left for right, place by place and width by width", () => {
    const drawn = { face: "right", framed: true, fromMm: 4200, widthMm: 600 } as const;
    const sample = drawnUnit({ type: "1CC", openings: [drawn] });
    const mirrored: Scheme = {
      ...sample,
      openings: sample.openings.map((opening) => ({ ...opening, face: "left" as const })),
    };
    const coarse = { apartMm: 1600, envelope: "deciding sets" } as const;
    const right = drawnChart(sample, doorRequest, coarse).chart;
    const left = drawnChart(mirrored, { ...doorRequest, face: "left" }, coarse).chart;
    const seen = ({ columns }: typeof right) =>
      columns.map(({ centreMm, stretches }) => [
        centreMm,
        ...stretches.map(({ fromMm, toMm, verdict }) => `${fromMm}–${toMm} ${verdict}`),
      ]);
    expect(seen(left)).toEqual(seen(right));
  });
});

// The mirror plane stands across the building's length: what lies to the west lies to the east, each unit turned end for end so that
// its doors are where the mirror has them, and what was cut or is asked in its right side is in its left one, as far from its front end.
describe("a scheme mirrored end for end, a unit lying off the corners of the one below", () => {
  it("has the mirrored chart, door end and all that bears included", () => {
    const drawn = { face: "right", framed: true, fromMm: 4200, widthMm: 600 } as const;
    const plainly = drawnUnit({ type: "1CC", openings: [drawn], above: 1 });
    const sample: Scheme = {
      ...plainly,
      containers: plainly.containers.map((unit) => (unit.id === "u2" ? { ...unit, xUm: 900_000 } : unit)),
    };
    const mirrored: Scheme = {
      ...sample,
      containers: sample.containers.map((unit) => ({ ...unit, xUm: -unit.xUm, turnMdeg: 180_000 })),
      pads: sample.pads.map((pad) => ({ ...pad, xUm: -pad.xUm })),
      openings: sample.openings.map((opening) => ({ ...opening, face: "left" as const })),
    };
    const coarse = { apartMm: 2400, envelope: "deciding sets" } as const;
    const right = drawnChart(sample, doorRequest, coarse).chart;
    const left = drawnChart(mirrored, { ...doorRequest, face: "left" }, coarse).chart;
    const seen = ({ columns }: typeof right) =>
      columns.map(({ centreMm, stretches }) => [
        centreMm,
        ...stretches.map(({ fromMm, toMm, verdict }) => `${fromMm}–${toMm} ${verdict}`),
      ]);
    const borne = ({ side }: typeof right) =>
      side.bearings.map(({ uMm, at, forceN }) => `${Math.round(uMm)} ${at} ${Math.round(forceN)}`).toSorted();
    expect(borne(left)).toEqual(borne(right));
    expect(right.side.bearings.some(({ at }) => at === "above")).toBe(true);
    expect(seen(left)).toEqual(seen(right));
  });
});

describe("the distances of a drawn opening", () => {
  it("lead to the verdict told at the distance told, and to the present one 50 mm before it, by full runs", () => {
    const drawn = { face: "right", framed: true, fromMm: 2600, widthMm: 900 } as const;
    const sample = drawnUnit({ type: "1CC", openings: [drawn] });
    const request = { ...doorRequest, openingId: "o1" };
    const { distances } = drawnChart(sample, request, { apartMm: 1600, envelope: "deciding sets" }).chart;
    if (distances === undefined) throw new Error("the opening is drawn");
    const { answer, changes } = distances;
    expect([distances.centreMm, distances.widthMm]).toEqual([3050, 900]);
    expect(changes.map(({ way }) => way)).toEqual(expect.arrayContaining(["wider", "to the front end"]));
    const placeAt = (way: (typeof changes)[number]["way"], byMm: number) => {
      const along = way === "to the front end" ? -byMm : way === "to the door end" ? byMm : 0;
      const wider = way === "wider" ? byMm : way === "narrower" ? -byMm : 0;
      return { centreMm: 3050 + along, widthMm: 900 + wider };
    };
    for (const { way, byMm, answer: told } of changes) {
      expect(told.verdict, way).not.toBe(answer.verdict);
      const found = [byMm, byMm - 50].map((mm) => {
        const full = confirmOpening(sample, request, placeAt(way, mm));
        if (!full.accepted) throw new Error("the sample is accepted");
        return full.answer.verdict;
      });
      expect([way, ...found]).toEqual([way, told.verdict, answer.verdict]);
    }
  });
});
