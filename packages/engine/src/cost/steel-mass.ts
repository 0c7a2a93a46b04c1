import { steelDensity } from "../catalog/materials.ts";
import type { Section } from "../catalog/sections/section.ts";

export type PlateMm = { readonly long: number; readonly wide: number; readonly thick: number };

const kgPerMm3 = steelDensity.valueKgPerM3 / 1e9;

export const plateKg = ({ long, wide, thick }: PlateMm): number => long * wide * thick * kgPerMm3;

export const kgPerM = ({ areaMm2 }: Section): number => areaMm2 * 1000 * kgPerMm3;
