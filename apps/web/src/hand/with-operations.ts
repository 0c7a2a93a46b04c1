import { applyOperations, type Operation, type Scheme } from "@cornerway/schema";

/** The scheme with what is held; without it where the scheme would not take it. */
export function withOperations(scheme: Scheme, operations: readonly Operation[]): Scheme {
  if (operations.length === 0) return scheme;
  const applied = applyOperations(scheme, operations);
  return applied.ok ? applied.scheme : scheme;
}
