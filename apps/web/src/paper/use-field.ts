import { useCallback, useState } from "react";
import type { FieldPlace } from "../sheet/contract.ts";

export type Field = FieldPlace;

/** The size of the drawing field once the sheet has been laid out; null before. */
export function useField(): { field: Field | null; onField: (field: Field) => void } {
  const [field, setField] = useState<Field | null>(null);
  const onField = useCallback(
    (next: Field) => setField((last) => (last !== null && same(last, next) ? last : next)),
    [],
  );
  return { field, onField };
}

const same = (a: Field, b: Field) =>
  a.widthPx === b.widthPx && a.heightPx === b.heightPx && a.leftPx === b.leftPx && a.topPx === b.topPx;
