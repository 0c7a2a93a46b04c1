import {
  Scheme,
  type Beam,
  type FreeLoad,
  type Lock,
  type Opening,
  type Pad,
  type Post,
  type Seat,
  type Tie,
} from "@cornerway/schema";
import demo from "../../../../shared/demo/scheme.json" with { type: "json" };

const post: Post = {
  ...{ id: "p1", tag: "P1", xUm: 3_000_000, yUm: -2_000_000, baseZUm: 0, topZUm: 2_896_000 },
  ...{ turnMdeg: 0, section: "HSS4x4x1/4" },
};
const beam: Beam = {
  ...{ id: "m1", tag: "BM1", section: "W8x31" },
  from: { xUm: 1_000_000, yUm: -2_500_000, zUm: 2_896_000 },
  to: { xUm: 5_000_000, yUm: -2_500_000, zUm: 2_896_000 },
};
const seat: Seat = {
  ...{ id: "s1", tag: "S1", upperId: "f1", lowerId: "g1", xUm: 2_000_000, yUm: -1_219_000 },
  ...{ lengthUm: 200_000, widthUm: 100_000, packingUm: 18_500, heldDown: false },
};
const tie: Tie = {
  ...{ id: "q1", tag: "TI1", aId: "g1", bId: "g2", xUm: 2_000_000, yUm: 1_219_000, zUm: 2_836_000 },
  carries: "in plan",
};
const lock: Lock = { id: "k1", tag: "L1", containerId: "g1", fitting: "front-right", kind: "hold-down" };
const free: FreeLoad = {
  ...{ id: "w100", tag: "Q1", containerId: "f2", surface: "floor", case: "imposed", note: "Water tank" },
  ...{ shape: "point", xUm: 2_000_000, yUm: 1_000_000, downN: 8000, alongXN: 0, alongYN: 0 },
};

const byId = <E extends { id: string }>(elements: readonly E[]): E[] =>
  elements.toSorted((a, b) => (a.id < b.id ? -1 : 1));

/** The demo's nine containers with one of everything the demo has none of. */
export const furnishedDemo: Scheme = Scheme.parse({
  ...demo,
  posts: [post],
  beams: [beam],
  seats: [seat],
  ties: [tie],
  locks: [lock],
  freeLoads: [free],
  uses: [{ id: "u1", containerId: "f3", surface: "floor", occupancy: "office" }],
  overrides: [{ id: "v1", elementId: "p1", yieldMpa: 345, source: "mill certificate" }],
});

export type Plant = {
  does: string;
  /** Ids of the elements it changes, told by whoever planted it. */
  ids: readonly string[];
  plant: (scheme: Scheme) => Scheme;
};

type Listed = "containers" | "openings" | "posts" | "pads" | "loads" | "beams" | "seats" | "ties" | "locks";

function changing<N extends Listed>(list: N, id: string, what: Partial<Scheme[N][number]>): Plant {
  const plant = (scheme: Scheme): Scheme => ({
    ...scheme,
    [list]: scheme[list].map((element) => (element.id === id ? { ...element, ...what } : element)),
  });
  return { does: `${id}: ${Object.keys(what).join(", ")}`, ids: [id], plant };
}

const adding = <N extends Listed>(list: N, element: Scheme[N][number]): Plant => ({
  does: `${element.id} is set`,
  ids: [element.id],
  plant: (scheme) => ({ ...scheme, [list]: byId([...scheme[list], element]) }),
});

const taking = (list: Listed, id: string): Plant => ({
  does: `${id} is taken away`,
  ids: [id],
  plant: (scheme) => ({ ...scheme, [list]: scheme[list].filter((element) => element.id !== id) }),
});

const window1: Opening = {
  ...{ id: "z1", tag: "W21", containerId: "g4", face: "left", use: "window", framed: true },
  ...{ offsetUm: 2_000_000, sillUm: 900_000, widthUm: 900_000, heightUm: 900_000 },
};
const pad1: Pad = {
  ...{ id: "z2", tag: "B21", xUm: -30_000_000, yUm: 0, topZUm: 0, turnMdeg: 0 },
  ...{ lengthUm: 600_000, widthUm: 600_000, depthUm: 400_000 },
};
const demoUnit = (id: string) => {
  const unit = furnishedDemo.containers.find((each) => each.id === id);
  if (unit === undefined) throw new Error(`the demo has no unit ${id}`);
  return unit;
};

/** Thirty changes of every kind, each on an element of its own, so that they can be planted one by one and together. */
export const thirtyPlants: readonly Plant[] = [
  changing("containers", "f1", { xUm: demoUnit("f1").xUm + 1_200_000 }),
  changing("containers", "t1", { turnMdeg: (demoUnit("t1").turnMdeg + 180_000) % 360_000 }),
  changing("containers", "g4", { plateTareKg: 3900 }),
  adding("containers", { ...demoUnit("t1"), id: "z9", tag: "T9", xUm: demoUnit("t1").xUm - 4_000_000 }),
  changing("openings", "d1", { widthUm: 1_100_000 }),
  changing("openings", "d2", { use: "window" }),
  changing("openings", "d4", { framed: false }),
  changing("openings", "d6", { heightUm: 1_900_000 }),
  changing("openings", "h1", { widthUm: 800_000 }),
  changing("openings", "o1", { cut: "after placing" }),
  changing("openings", "w5", { sillUm: 1_000_000 }),
  changing("openings", "w8", { offsetUm: 700_000 }),
  taking("openings", "w4"),
  taking("openings", "d9"),
  adding("openings", window1),
  changing("posts", "p1", { xUm: 3_300_000 }),
  adding("posts", { ...post, id: "z3", tag: "P9", xUm: 6_000_000 }),
  changing("pads", "b1", { lengthUm: 1_100_000 }),
  changing("pads", "b5", { settlementUm: 5000 }),
  taking("pads", "b10"),
  adding("pads", pad1),
  changing("loads", "f3-floor", { pressurePa: 4800 }),
  taking("loads", "g3-floor"),
  changing("beams", "m1", { section: "W10x33" }),
  changing("seats", "s1", { packingUm: 25_000 }),
  changing("ties", "q1", { carries: "in plan and upright" }),
  changing("locks", "k1", { kind: "made connection" }),
  {
    does: "w100 moves along",
    ids: ["w100"],
    plant: (scheme) => ({ ...scheme, freeLoads: scheme.freeLoads.map((load) => ({ ...load, xUm: 4_000_000 })) }),
  },
  {
    does: "the use of f3 changes",
    ids: ["u1"],
    plant: (scheme) => ({ ...scheme, uses: scheme.uses.map((use) => ({ ...use, occupancy: "light storage" })) }),
  },
  {
    does: "what is stated of p1 changes",
    ids: ["v1"],
    plant: (scheme) => ({ ...scheme, overrides: scheme.overrides.map((each) => ({ ...each, yieldMpa: 317 })) }),
  },
];
