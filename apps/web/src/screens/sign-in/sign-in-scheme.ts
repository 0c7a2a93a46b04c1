import { emptyScheme, type Container, type Opening, type Pad, type Scheme } from "@cornerway/schema";

/** A 40 ft high cube (ISO 668: 12.192 × 2.438 × 2.896 m) with its front end to the west, by its middle and foot in mm. */
const unit = (id: string, tag: string, xMm: number, zMm: number): Container => ({
  ...{ id, tag, type: "1AAA", turnMdeg: 0 },
  ...{ xUm: xMm * 1000, yUm: 0, zUm: zMm * 1000 },
});

type Cut = Pick<Opening, "id" | "tag" | "containerId" | "use"> & { mm: readonly [number, number, number, number] };

/** A framed opening in the south side: along, up, wide and high in mm. */
const cut = ({ mm: [along, up, wide, high], ...opening }: Cut): Opening => ({
  ...{ ...opening, face: "right", framed: true },
  ...{ offsetUm: along * 1000, sillUm: up * 1000, widthUm: wide * 1000, heightUm: high * 1000 },
});

const pad = (id: string, tag: string, xMm: number): Pad => ({
  ...{ id, tag, xUm: xMm * 1000, yUm: -1_150_000, topZUm: 0, turnMdeg: 0 },
  ...{ lengthUm: 900_000, widthUm: 900_000, depthUm: 500_000 },
});

/** Two units, the upper one shifted 3 m: one pair of its corners stands on no corner. */
export const signInScheme: Scheme = {
  ...emptyScheme,
  containers: [unit("f1", "F1", 3000, 2896), unit("g1", "G1", 0, 0)],
  openings: [
    cut({ id: "d1", tag: "D1", containerId: "g1", use: "door", mm: [700, 180, 1800, 2200] }),
    cut({ id: "w1", tag: "W1", containerId: "g1", use: "window", mm: [5200, 950, 2000, 1200] }),
    cut({ id: "w2", tag: "W2", containerId: "f1", use: "window", mm: [2000, 950, 1600, 1200] }),
    cut({ id: "w3", tag: "W3", containerId: "f1", use: "window", mm: [8800, 950, 1600, 1200] }),
  ],
  pads: [pad("b1", "B1", -6007), pad("b2", "B2", 6007)],
};
