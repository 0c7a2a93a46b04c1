import { describe, expect, it } from "vitest";
import { lineModel, solved, type Parts } from "./line-model.ts";

/*
 * A 40 ft box of sheets between continuous rails and posts of generic sections, held at three lower corners, 10 kN down at the fourth. All
 * six faces make a closed cell; with one side open what is left is an open section that has its bars and the warping of its walls: its
 * stiffness in twist drops by an order of magnitude (statics of thin walls, from memory).
 */
const [L, B, H, P] = [12_000, 2300, 2700, 10_000];
const sections = {
  top: { E: 200_000, G: 76_923, A: 684, Iy: 371_412, Iz: 371_412, J: 556_000 },
  bottom: { E: 200_000, G: 76_923, A: 1039.5, Iy: 3_477_144, Iz: 137_000, J: 7020 },
  post: { E: 200_000, G: 76_923, A: 3800, Iy: 7e6, Iz: 7e6, J: 30_000 },
};
const panels = {
  near: { nodes: ["000", "100", "101", "001"], Gt: 115_638 },
  far: { nodes: ["010", "110", "111", "011"], Gt: 115_638 },
  front: { nodes: ["000", "010", "011", "001"], Gt: 129_400 },
  rear: { nodes: ["100", "110", "111", "101"], Gt: 129_400 },
  roof: { nodes: ["001", "101", "111", "011"], Gt: 30_000 },
  floor: { nodes: ["000", "100", "110", "010"], Gt: 5000 },
} satisfies Parts["panels"];

function downMm(left: NonNullable<Parts["panels"]>): number {
  const corners = Object.fromEntries(
    [0, 1].flatMap((x) => [0, 1].flatMap((y) => [0, 1].map((z) => [`${x}${y}${z}`, [x * L, y * B, z * H] as const]))),
  ) as unknown as Parts["nodes"];
  const ids = Object.keys(corners);
  const beams = Object.fromEntries(
    ids.flatMap((i) =>
      ids
        .filter((j) => i < j && [...i].filter((digit, k) => digit !== j[k]).length === 1)
        .map((j) => [`${i}-${j}`, { i, j, section: i[2] === j[2] ? (i[2] === "1" ? "top" : "bottom") : "post" }]),
    ),
  );
  const s = solved(
    lineModel({
      ...{ nodes: corners, sections, beams, panels: left },
      supports: { "000": ["ux", "uy", "uz"], "100": ["uy", "uz"], "010": ["uz"] },
      load: { nodal: [{ node: "110", F: [0, 0, -P, 0, 0, 0] }] },
    }),
  );
  return -(s.displacements["110"]?.[2] ?? NaN);
}

describe("a box twisted by its fourth corner", () => {
  const closed = downMm(panels);

  it("goes down, closed, as its six sheets alone between rigid bars have it, P/4H² Σ ab/Gt, within 5 %: bars stretch a little, and bend", () => {
    const flexibility = (2 * L * H) / 115_638 + (2 * B * H) / 129_400 + (L * B) / 30_000 + (L * B) / 5000;
    const sheets = (P / (4 * H * H)) * flexibility;
    expect(Math.abs(closed / sheets - 1)).toBeLessThan(0.05);
  });

  it.each(["near", "far"] as const)("has less than a tenth of that stiffness with its %s side out", (side) => {
    const { [side]: _out, ...left } = panels;
    expect(downMm(left)).toBeGreaterThan(10 * closed);
  });
});
