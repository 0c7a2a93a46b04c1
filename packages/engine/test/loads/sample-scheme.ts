import { defaultBasis, emptyScheme, type Container, type Scheme } from "@cornerway/schema";

/** A container by its place in mm; numbered in the order given. */
export type Placed = {
  readonly type: Container["type"];
  readonly xMm: number;
  readonly yMm: number;
  readonly zMm: number;
  readonly turn?: number;
};

/** Ids in the form the scheme asks for, sorted as they are numbered. */
export const idOf = (number: number): string => `unit-${String(number).padStart(2, "0")}`;

export function sampleScheme(placed: readonly Placed[], change: Partial<Scheme> = {}): Scheme {
  return {
    ...emptyScheme,
    site: { northMdeg: 0, groundZUm: 0, edition: "IBC 2021" },
    containers: placed.map(({ type, xMm, yMm, zMm, turn = 0 }, at) => ({
      id: idOf(at + 1),
      tag: `U${at + 1}`,
      type,
      xUm: Math.round(xMm * 1000),
      yUm: Math.round(yMm * 1000),
      zUm: Math.round(zMm * 1000),
      turnMdeg: turn * 1000,
    })),
    openings: [],
    posts: [],
    pads: [],
    loads: [],
    ...change,
  };
}

/** The same floors or roofs used for one thing. */
export const usesOf = (
  count: number,
  occupancy: Scheme["uses"][number]["occupancy"],
  surface: "floor" | "roof" = "floor",
): Scheme["uses"] =>
  Array.from({ length: count }, (_, at) => ({ id: `use-${at + 1}`, containerId: idOf(at + 1), surface, occupancy }));

/** A weight of 5 kN on the middle of a roof. */
export const tankOn = (number: number): Scheme["freeLoads"][number] => ({
  id: "tank",
  tag: "T",
  containerId: idOf(number),
  surface: "roof",
  case: "plant",
  note: "tank",
  shape: "point",
  xUm: 6_096_000,
  yUm: 1_219_000,
  downN: 5000,
  alongXN: 0,
  alongYN: 0,
});

/** On these hazards, else the project's defaults. */
export const on = (hazards: Scheme["basis"]["hazards"]): Pick<Scheme, "basis"> => ({
  basis: { ...defaultBasis, hazards },
});

/** Five small buildings whose totals are worked by hand. */
export const smallBuildings = {
  "one 40 ft high-cube": [{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }],
  "two side by side": [
    { type: "1AAA", xMm: 0, yMm: -1219, zMm: 0 },
    { type: "1AAA", xMm: 0, yMm: 1219, zMm: 0 },
  ],
  "two 20 ft stacked": [
    { type: "1CC", xMm: 0, yMm: 0, zMm: 0 },
    { type: "1CC", xMm: 0, yMm: 0, zMm: 2591 },
  ],
  "a step": [
    { type: "1AAA", xMm: 0, yMm: -1219, zMm: 0 },
    { type: "1AAA", xMm: 0, yMm: 1219, zMm: 0 },
    { type: "1AAA", xMm: 0, yMm: 1219, zMm: 2896 },
  ],
  "an overhang of 3 m": [
    { type: "1AAA", xMm: 0, yMm: 0, zMm: 0 },
    { type: "1AAA", xMm: 3000, yMm: 0, zMm: 2896 },
  ],
} as const satisfies Record<string, readonly Placed[]>;

export type SmallBuilding = keyof typeof smallBuildings;
