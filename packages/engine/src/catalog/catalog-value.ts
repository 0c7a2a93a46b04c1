import type { Certainty } from "@cornerway/schema";

/** One value with its unit, where it is from and how far that can be trusted. */
export type CatalogValue = {
  readonly value: number;
  readonly unit: "mm" | "kg" | "degree" | "ratio" | "m/s2";
  readonly source: string;
  readonly certainty: Certainty;
};

/** A value as a row of the catalogue: which thing, which of its properties. Plain data, fit to be digested. */
export type CatalogRow = CatalogValue & { readonly key: string; readonly property: string };
