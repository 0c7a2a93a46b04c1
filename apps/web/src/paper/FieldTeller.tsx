import { useLayoutEffect } from "react";
import type { ReactNode } from "react";
import type { Field } from "./use-field.ts";

/** Tells the sheet how large its field came out, so that levels and leaders meet the drawing. */
export function FieldTeller({
  field,
  onField,
  children,
}: {
  field: Field;
  onField: (field: Field) => void;
  children: ReactNode;
}) {
  useLayoutEffect(() => onField(field), [field, onField]);
  return children;
}
