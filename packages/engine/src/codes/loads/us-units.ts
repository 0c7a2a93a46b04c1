/** Exact by definition: 1 ft = 304.8 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s² (NIST SP 811). */
export const mmPerFt = 304.8;
export const nPerLb = 4.4482216152605;
export const paPerPsf = 47.88025898033584;
export const msPerMph = 0.44704;
export const kgPerM3PerPcf = 16.018463373960138;
export const nPerMPerPlf = 14.593902937206364;

export const feet = (lengthMm: number): number => lengthMm / mmPerFt;
export const psf = (pressurePa: number): number => pressurePa / paPerPsf;
export const squareFeet = (areaM2: number): number => areaM2 / ((mmPerFt / 1000) * (mmPerFt / 1000));
export const fromFeet = (lengthFt: number): number => lengthFt * mmPerFt;
export const fromPsf = (pressurePsf: number): number => pressurePsf * paPerPsf;
