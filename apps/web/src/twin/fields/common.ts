import type { PartField } from "../part/part-field.ts";

export const lengthField = (path: string, label: string, group?: string): PartField => ({
  path,
  label,
  as: "quantity",
  quantity: "length",
  ...(group === undefined ? {} : { group }),
});

/** Choices whose words are their values. */
export const plain = (values: readonly string[]): (readonly [string, string])[] =>
  values.map((value) => [value, value]);

export const levelErrorField: PartField = {
  path: "levelErrorUm",
  label: "Level error",
  as: "small length",
  otherwise: "project's",
};

export const turnField: PartField = { path: "turnMdeg", label: "Turn", as: "quantity", quantity: "angle" };
