import type { CatalogValue } from "./catalog-value.ts";

/** Weight of one kilogram, newtons. */
export const gravity = {
  value: 9.81,
  unit: "m/s2",
  source: "standard gravity 9.80665 (3rd CGPM, 1901), rounded to three figures",
  certainty: "published",
} as const satisfies CatalogValue;
