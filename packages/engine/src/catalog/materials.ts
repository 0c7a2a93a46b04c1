import type { Certainty } from "@cornerway/schema";

/** A steel as the checks use it, MPa. */
export type Steel = {
  readonly name: string;
  readonly fyMpa: number;
  readonly fuMpa: number;
  readonly source: string;
  readonly certainty: Certainty;
};

/** Modulus of elasticity, AISC 360 and AISI S100: 29 000 ksi, printed as 200 000 MPa. */
export const steelModulus = { valueMpa: 200_000, source: "AISC 360, symbols", certainty: "memory" } as const;

/** Shear modulus, AISC 360: 11 200 ksi, printed as 77 200 MPa. */
export const shearModulus = { valueMpa: 77_200, source: "AISC 360, symbols", certainty: "memory" } as const;

export const steelDensity = { valueKgPerM3: 7850, source: "EN 1991-1-1 Table A.4", certainty: "memory" } as const;
export const steelKgPerMm3 = steelDensity.valueKgPerM3 / 1e9;

export const poissonRatio = { value: 0.3, source: "AISC 360, AISI S100", certainty: "memory" } as const;

const mpaPerKsi = 6.894757;

/** E70 electrodes, 70 ksi. */
export const e70Mpa = 482.6;

export const steels = {
  /** What an old container is taken as without a record. */
  unproved: {
    name: "container steel, no record",
    fyMpa: 235,
    fuMpa: 360,
    source: "no published source; lowest structural grade in common use",
    certainty: "common practice",
  },
  /** What a container's sheet and pressed members would be, once a record says so. */
  weathering: {
    name: "weathering sheet, if proved",
    fyMpa: 343,
    fuMpa: 480,
    source: "JIS G 3125 SPA-H, older print",
    certainty: "memory",
  },
  tube: {
    name: "ASTM A500 grade C",
    fyMpa: 50 * mpaPerKsi,
    fuMpa: 62 * mpaPerKsi,
    source: "ASTM A500 grade C, rectangular",
    certainty: "memory",
  },
  wideFlange: {
    name: "ASTM A992",
    fyMpa: 50 * mpaPerKsi,
    fuMpa: 65 * mpaPerKsi,
    source: "ASTM A992, W shapes",
    certainty: "memory",
  },
  plate: {
    name: "ASTM A36",
    fyMpa: 36 * mpaPerKsi,
    fuMpa: 58 * mpaPerKsi,
    source: "ASTM A36, plates",
    certainty: "memory",
  },
} as const satisfies Record<string, Steel>;
