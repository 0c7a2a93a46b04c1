import { describe, expect, it } from "vitest";
import { analyse } from "../../src/load-path/analysis.ts";
import { inOrder } from "../../src/geometry/in-order.ts";
import { runForces } from "../../src/flow/run-forces.ts";
import { Unrolled } from "../../src/flow/unrolled.ts";
import { unitPath } from "../../src/flow/unit-path.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { oneRun, ownWeight, pressed } from "../strength/one-run.ts";
import { carriedAt, solvedForceAt } from "./walls-cut.ts";

type Drawn = ReturnType<typeof drawnUnit>;

const turnedAcross = (drawn: Drawn): Drawn => ({
  ...drawn,
  containers: drawn.containers.map((one, n) => (n === 1 ? { ...one, turnMdeg: 90_000 } : one)),
});
const shifted = (drawn: Drawn, mm: number): Drawn => ({
  ...drawn,
  containers: drawn.containers.map((one, n) => (n === 1 ? { ...one, xUm: one.xUm + mm * 1000 } : one)),
});
const solvedOf = (scheme: Drawn) => oneRun(scheme, [ownWeight(scheme, 40_000), pressed(scheme, 3400)]);
const forcesOf = (scheme: Drawn) => {
  const { set, solved } = solvedOf(scheme);
  return runForces(analyse(inOrder(scheme)), set.built, solved);
};

const straight = drawnUnit({ above: 1 });
const crossing = turnedAcross(
  drawnUnit({ above: 1, openings: [{ face: "right", framed: true, fromMm: 1603.5, widthMm: 3000 }] }),
);
const overhanging = shifted(
  drawnUnit({ above: 1, openings: [{ face: "left", framed: false, fromMm: 7000, widthMm: 1200 }] }),
  3000,
);

describe.each([
  ["a straight stack", straight],
  ["a unit turned across another over a framed door", crossing],
  ["a unit shifted 3 m along another beside a bare opening", overhanging],
])("the tubes of %s", (_, scheme) => {
  const { set, solved } = solvedOf(scheme);

  it.each(scheme.containers.map(({ id }) => id))(
    "carry in %s, at every cut, what its elements do, to 1 in 10⁶",
    (id) => {
      const unit = set.built.model.units.find((one) => one.id === id);
      if (unit === undefined) throw new Error("drawn");
      const inside = solved.inside(id);
      const { flow, bundles } = unitPath(unit, inside);
      const paths = bundles.flatMap((bundle) => bundle.paths);
      const levels = [...new Set(flow.nodes.map(({ z }) => Math.round(z)))].toSorted((a, b) => a - b);
      const most = Math.max(...flow.sourcesN.map(Math.abs));
      levels.slice(1).forEach((level, n) => {
        if (level - (levels[n] ?? level) < 2) return;
        const zMm = (level + (levels[n] ?? 0)) / 2;
        const apart = carriedAt(flow, paths, zMm) - solvedForceAt(unit.fragment, inside, zMm);
        expect(Math.abs(apart), `${zMm} mm up`).toBeLessThan(1e-6 * most);
      });
    },
  );

  it("end at the pads with their reactions, to 1 in 10⁶", () => {
    const unit = set.built.model.units.find(({ id }) => id === "u1");
    if (unit === undefined) throw new Error("drawn");
    const { flow, ends, bundles } = unitPath(unit, solved.inside("u1"));
    const feet = ends.bearings.filter(({ z }) => z === 0);
    expect(feet).toHaveLength(4);
    for (const foot of feet) {
      const node = flow.nodeAt(foot);
      const arrives = bundles.filter(({ to }) => to === node).reduce((sum, { forceN }) => sum + forceN, 0);
      const [, , upN] = solved.bearing(`u1:${unit.fragment.nodes.find((one) => flow.nodeAt(one) === node)?.id ?? ""}`);
      expect(Math.abs(arrives / upN - 1)).toBeLessThan(1e-6);
    }
  });

  it("run, as strands, only where there is sheet or a rail, never over an opening", () => {
    for (const unit of set.built.model.units) {
      const path = unitPath(unit, solved.inside(unit.id));
      const unrolled = new Unrolled(path.flow);
      for (const { paths } of path.bundles)
        for (const tube of paths.filter((_tube, n) => n % 40 === 0))
          for (const point of unrolled.wayOf(tube).slice(1, -1)) {
            const onRail = point.zMm < 100 || point.zMm > 2800;
            expect(onRail || unrolled.hasSheet(point) || nearPost(path.flow.lines.halfLengthMm, unrolled, point)).toBe(
              true,
            );
          }
    }
  });
});

/** On an upright beside an opening that runs from post to post there is no sheet, but a post. */
function nearPost(halfLengthMm: number, unrolled: Unrolled, { sMm }: { sMm: number }): boolean {
  const { halfWidthMm } = unrolled.flow.lines;
  const corners = [0, 2 * halfLengthMm, 2 * (halfLengthMm + halfWidthMm), 4 * halfLengthMm + 2 * halfWidthMm];
  const round = 4 * (halfLengthMm + halfWidthMm);
  const s = ((sMm % round) + round) % round;
  return [...corners, round].some((corner) => Math.abs(s - corner) < 0.1);
}

describe("strands", () => {
  it("are none in a straight stack: four straight strokes a unit, and each takes up its quarter", () => {
    const { strands, path } = forcesOf(straight);
    expect(strands).toEqual([]);
    const posts = path.filter(({ via }) => via === "corner post");
    expect(posts).toHaveLength(8);
    expect(posts.every(({ leavesCorners }) => !leavesCorners)).toBe(true);
    // by hand: a unit weighs 40 kN and 3.4 kPa on 12.192 × 2.438 m = 101.06 kN; a quarter is 35.27 kN, of two units 70.53
    for (const { elementId, forceTopKn, forceFootKn } of posts) {
      expect(forceTopKn).toBeCloseTo(elementId === "u1" ? 35.265 : 0, 2);
      expect(forceFootKn).toBeCloseTo(elementId === "u1" ? 70.531 : 35.265, 2);
    }
  });

  it("leave a seat with all that comes down on it, in shares that are alike", () => {
    const { strands, path } = forcesOf(crossing);
    const seatsKn = path.filter(({ via }) => via === "seat").map(({ forceFootKn }) => forceFootKn);
    const total = seatsKn.reduce((sum, kn) => sum + kn, 0);
    const from = strands.filter(({ unitId, id }) => unitId === "u1" && !id.includes("round"));
    const carried = from.reduce((sum, { forceKn }) => sum + forceKn, 0);
    expect(carried).toBeLessThanOrEqual(total + 0.01);
    // what is thinner than a quarter of a share is left out of the drawing
    expect(carried).toBeGreaterThan(0.9 * total);
  });

  it("of a mirrored scheme are the mirrored strands", () => {
    const side = (face: "left" | "right") =>
      shifted(drawnUnit({ above: 1, openings: [{ face, framed: true, fromMm: 2000, widthMm: 2200 }] }), 2500);
    const told = (face: "left" | "right") =>
      forcesOf(side(face))
        .strands.map(({ wall, forceKn, points }) => ({
          wall: face === "right" ? wall : ({ left: "right", right: "left" }[wall as string] ?? wall),
          kn: Math.round(forceKn * 100) / 100,
          from: Math.round((points[0]?.xMm ?? 0) / 10),
          to: Math.round((points.at(-1)?.zMm ?? 0) / 10),
        }))
        .map((one) => JSON.stringify(one))
        .toSorted();
    expect(told("left")).toEqual(told("right"));
    expect(told("left").length).toBeGreaterThan(3);
  });
});

describe("forces of one run", () => {
  const { path, reactions, deflected, members } = forcesOf(overhanging);

  it("stand on the ground with all that acts", () => {
    const sum = reactions.reduce((total, { upKn }) => total + upKn, 0);
    // two units of 40 kN + 3.4 kPa · 29.724 m²
    expect(sum).toBeCloseTo(2 * (40 + 3.4 * 12.192 * 2.438), 2);
    expect(
      path.filter(({ via }) => via === "pad").reduce((total, { forceFootKn }) => total + forceFootKn, 0),
    ).toBeCloseTo(sum, 2);
  });

  it("name every member once, with what presses, pulls, shears and bends it most", () => {
    const names = members.map(({ ownerId, part, place }) => `${ownerId} ${part} ${place}`);
    expect(new Set(names).size).toBe(names.length);
    const post = members.find(
      ({ ownerId, part, place }) => ownerId === "u1" && part === "front corner post" && place === "left",
    );
    const foot =
      path.find(({ id }) => id === "corner:u1:top-front-left") ??
      path.find(({ id }) => id.startsWith("corner:u1:") && id.includes("front") && id.includes("left"));
    expect(post?.pressed.value).toBeCloseTo(foot?.forceFootKn ?? NaN, 1);
  });

  it("move most where the overhang ends or a floor spans, and the factor draws that as long as is said", () => {
    expect(deflected.largest?.mm).toBeGreaterThan(0);
    const { largest, lines } = deflected;
    const most = Math.max(
      ...lines.flatMap(({ points }) => points.map(({ movedMm: { xMm, yMm, zMm } }) => Math.hypot(xMm, yMm, zMm))),
    );
    expect(most).toBeCloseTo(largest?.mm ?? NaN, 2);
  });
});
