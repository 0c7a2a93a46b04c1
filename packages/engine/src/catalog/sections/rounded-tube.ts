import type { PlaneProperties } from "./section.ts";

export type TubeSizes = {
  readonly depthMm: number;
  readonly widthMm: number;
  readonly wallMm: number;
  /** Outside radius of the corners; the inside one is concentric. */
  readonly cornerMm: number;
};

/**
 * Properties of a rectangular tube with rounded corners: the outer rounded rectangle less the inner one. J by Bredt on the
 * wall's centreline with the open part Σ L t³/3. Derived.
 */
export function roundedTube({ depthMm: h, widthMm: b, wallMm: t, cornerMm: r }: TubeSizes): PlaneProperties {
  const outer = roundedRectangle(h, b, r);
  const inner = roundedRectangle(h - 2 * t, b - 2 * t, Math.max(r - t, 0));
  const areaMm2 = outer.area - inner.area;
  const [ixMm4, iyMm4] = [outer.ix - inner.ix, outer.iy - inner.iy];
  return {
    areaMm2,
    ixMm4,
    iyMm4,
    sxMm3: (2 * ixMm4) / h,
    syMm3: (2 * iyMm4) / b,
    zxMm3: outer.zx - inner.zx,
    zyMm3: outer.zy - inner.zy,
    rxMm: Math.sqrt(ixMm4 / areaMm2),
    ryMm: Math.sqrt(iyMm4 / areaMm2),
    jMm4: torsionConstant(h, b, t, r),
  };
}

type Rounded = { area: number; ix: number; iy: number; zx: number; zy: number };

function roundedRectangle(h: number, b: number, r: number): Rounded {
  const cut = spandrel(r);
  return {
    area: b * h - 4 * cut.area,
    ix: (b * h * h * h) / 12 - 4 * cut.secondMoment(h / 2),
    iy: (h * b * b * b) / 12 - 4 * cut.secondMoment(b / 2),
    zx: (b * h * h) / 4 - 4 * cut.firstMoment(h / 2),
    zy: (h * b * b) / 4 - 4 * cut.firstMoment(b / 2),
  };
}

/** The piece a rounded corner of radius r lacks, with its moments about an axis `half` from the outer edge. */
function spandrel(r: number) {
  const area = r * r * (1 - Math.PI / 4);
  const fromEdge = r === 0 ? 0 : (r * (5 / 6 - Math.PI / 4)) / (1 - Math.PI / 4);
  // About the edge: square r⁴/3 less the quarter circle π r⁴/16 + (π r²/4) r² − 2 r (r³/3).
  const aboutEdge = r * r * r * r * (1 / 3 - (Math.PI / 16 + Math.PI / 4 - 2 / 3));
  return {
    area,
    firstMoment: (half: number) => area * (half - fromEdge),
    secondMoment: (half: number) => {
      const own = aboutEdge - area * fromEdge * fromEdge;
      return own + area * (half - fromEdge) * (half - fromEdge);
    },
  };
}

function torsionConstant(h: number, b: number, t: number, r: number): number {
  const middle = Math.max(r - t / 2, 0);
  const [hm, bm] = [h - t, b - t];
  const length = 2 * (hm + bm) - 2 * middle * (4 - Math.PI);
  const enclosed = hm * bm - middle * middle * (4 - Math.PI);
  return (t * t * t * length) / 3 + (4 * enclosed * enclosed * t) / length;
}
