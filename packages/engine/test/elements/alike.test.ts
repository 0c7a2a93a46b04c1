import { expect, it } from "vitest";
import { AlikeElements } from "../../src/elements/alike.ts";
import { member, type MemberFacts } from "../../src/elements/member.ts";
import { shearPanel, type PanelFacts } from "../../src/elements/shear-panel.ts";
import { memberAxes } from "../../src/model/member-axes.ts";
import { panelAxes } from "../../src/model/panel-axes.ts";
import type { Vector } from "../../src/numerics/vector.ts";

const section = { E: 200_000, G: 76_923, A: 1039.5, Iy: 3_477_144, Iz: 135_767, J: 7017 };

function line(end: Vector, change: Partial<MemberFacts> = {}): MemberFacts {
  const axes = memberAxes([0, 0, 0], end, undefined);
  if (axes === null) throw new Error("the line has a length");
  return { nodes: [0, 1], axes, section, released: [], armI: null, armJ: null, ...change };
}

function sheet(width: number, change: Partial<PanelFacts> = {}): PanelFacts {
  const axes = panelAxes([
    [0, 0, 0],
    [width, 0, 0],
    [width, 0, 2400],
    [0, 0, 2400],
  ]);
  if (axes === null) throw new Error("the sheet is a rectangle");
  const stiffness = { shearStiffness: 40_000, uprightStiffness: 300, alongStiffness: 2 };
  return { nodes: [0, 1, 2, 3], axes, ...stiffness, arms: null, ...change };
}

const LINES = [
  line([300, 0, 0]),
  line([310, 0, 0]),
  line([0, 0, 300]),
  line([-300, 0, 0]),
  line([300, 0, 0], { section: { ...section, A: 900 } }),
  line([300, 0, 0], { released: [4] }),
  line([300, 0, 0], { released: [5] }),
  line([300, 0, 0], { armI: [0, 0, 50] }),
  line([300, 0, 0], { armJ: [0, 0, 50] }),
];
const SHEETS = [
  sheet(300),
  sheet(310),
  sheet(300, { shearStiffness: 30_000 }),
  sheet(300, { uprightStiffness: 0 }),
  sheet(300, { alongStiffness: 0 }),
  sheet(300, {
    arms: [
      [0, 0, 9],
      [0, 0, 9],
      [0, 0, 9],
      [0, 0, 9],
    ],
  }),
];

it("members of every kind are what each is made alone, the first time and again between other nodes", () => {
  const alike = new AlikeElements();
  for (const nodes of [[0, 1] as const, [5, 3] as const])
    for (const facts of LINES) expect(alike.member({ ...facts, nodes })).toEqual(member({ ...facts, nodes }));
});

it("sheets of every kind are what each is made alone, the first time and again between other corners", () => {
  const alike = new AlikeElements();
  for (const nodes of [[0, 1, 2, 3] as const, [9, 4, 7, 6] as const])
    for (const facts of SHEETS) expect(alike.panel({ ...facts, nodes })).toEqual(shearPanel({ ...facts, nodes }));
});

it("members of one kind share one stiffness", () => {
  const alike = new AlikeElements();
  const [first, second] = [line([300, 0, 0]), line([300, 0, 0], { nodes: [7, 8] })].map((facts) => alike.member(facts));
  expect(second?.matrix).toBe(first?.matrix);
});

it("members of equal sections share one stiffness, whoever drew up the section", () => {
  const alike = new AlikeElements();
  const [first, second] = [{ ...section }, { ...section }].map((own) =>
    alike.member(line([300, 0, 0], { section: own })),
  );
  expect(second?.matrix).toBe(first?.matrix);
});

it("kinds are forgotten once there are very many, and made again as they were", () => {
  const alike = new AlikeElements();
  const before = alike.member(line([300, 0, 0]));
  for (let n = 0; n < 2500; n++) alike.member(line([1000 + n, 0, 0]));
  alike.forgetIfMany();
  const after = alike.member(line([300, 0, 0]));
  expect(after.matrix).not.toBe(before.matrix);
  expect(after).toEqual(before);
});

const LINE_ENDS: readonly Vector[] = [
  [300, 0, 0],
  [0, 0, 300],
  [0, 0, -300],
  [0, -2438, 0],
  [300, 20, 0],
];

it("axes of members are what each has alone, also where another lies alike", () => {
  const alike = new AlikeElements();
  for (const start of [
    [0, 0, 0],
    [0, 0, 0],
    [512, -64, 32],
  ] as const)
    for (const [x, y, z] of LINE_ENDS)
      for (const up of [undefined, [1, 0, 1], [0, 1, 1]] as const) {
        const end: Vector = [start[0] + x, start[1] + y, start[2] + z];
        expect(alike.memberAxes(start, end, up)).toEqual(memberAxes(start, end, up));
      }
  expect(alike.memberAxes([1, 1, 1], [1, 1, 1], undefined)).toBeNull();
});

it("axes of sheets are what each has alone, and what is no rectangle has none", () => {
  const alike = new AlikeElements();
  const corners = (width: number, height: number, skew: number) =>
    [
      [7, 3, 0],
      [7 + width, 3, 0],
      [7 + width + skew, 3, height],
      [7, 3, height],
    ] as const;
  for (const [width, height, skew] of [
    [300, 2400, 0],
    [300, 2400, 0],
    [300, 1200, 0],
    [300, 2400, 90],
    [210, 2400, 90],
  ] as const)
    expect(alike.panelAxes(corners(width, height, skew))).toEqual(panelAxes(corners(width, height, skew)));
  expect(alike.panelAxes(corners(300, 2400, 90))).toBeNull();
});
