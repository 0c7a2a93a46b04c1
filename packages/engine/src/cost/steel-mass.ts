import { steelKgPerMm3 } from "../catalog/materials.ts";
import type { Section } from "../catalog/sections/section.ts";

export type PlateMm = { readonly long: number; readonly wide: number; readonly thick: number };

export const plateKg = ({ long, wide, thick }: PlateMm): number => long * wide * thick * steelKgPerMm3;

export const kgPerM = ({ areaMm2 }: Section): number => areaMm2 * 1000 * steelKgPerMm3;
