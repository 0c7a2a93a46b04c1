import type { Beam, Lock, Opening, Scheme, Seat, Tie } from "@cornerway/schema";
import { schemeOf, unitAt } from "./schemes.ts";

/** Two 40 ft units side by side, one turned across them, with one of each joint and a window. */
export const opening: Opening = {
  id: "o1",
  tag: "W1",
  containerId: "g1",
  face: "right",
  use: "window",
  offsetUm: 3_000_000,
  sillUm: 900_000,
  widthUm: 2_000_000,
  heightUm: 1_200_000,
  framed: true,
};
export const seat: Seat = {
  id: "s1",
  tag: "S1",
  upperId: "f1",
  lowerId: "g1",
  xUm: 0,
  yUm: -1_189_000,
  lengthUm: 200_000,
  widthUm: 100_000,
  packingUm: 18_500,
  heldDown: false,
};
export const tie: Tie = {
  id: "t1",
  tag: "TI1",
  aId: "g1",
  bId: "g2",
  xUm: 0,
  yUm: 1_219_000,
  zUm: 2_836_000,
  carries: "in plan",
};
export const lock: Lock = { id: "k1", tag: "L1", containerId: "g1", fitting: "front-right", kind: "hold-down" };
export const beam: Beam = {
  id: "m1",
  tag: "BM1",
  from: { xUm: -2_000_000, yUm: -3_000_000, zUm: 2_896_000 },
  to: { xUm: 2_000_000, yUm: -3_000_000, zUm: 2_896_000 },
  section: "W8x31",
};

export const furnished: Scheme = {
  ...schemeOf([unitAt("g1", "G1", 0, 0, 0), unitAt("g2", "G2", 0, 2438, 0), unitAt("f1", "F1", 0, 1219, 2896, 90)]),
  openings: [opening],
  seats: [seat],
  ties: [tie],
  locks: [lock],
  beams: [beam],
};
