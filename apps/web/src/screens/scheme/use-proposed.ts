import { applyOperations, type Operation, type Scheme } from "@cornerway/schema";
import { useCallback, useMemo, useState } from "react";
import type { Hand } from "../../hand/use-hand.ts";

/** The drawing as it would be by what is under way: dragged, typed, or asked whether it may go; null while nothing is. */
export function useProposed(draft: Scheme, hand: Hand) {
  const { chosenId, going, operations, removal, shown } = hand;
  const [typed, setTyped] = useState<{ ofId: string | null; operations: readonly Operation[] } | null>(null);
  const typing = useCallback(
    (next: readonly Operation[] | null) => setTyped(next === null ? null : { ofId: chosenId, operations: next }),
    [chosenId],
  );
  const typedNow = typed?.ofId === chosenId ? typed.operations : null;
  const isHeld = operations.length > 0;
  const proposed = useMemo(() => {
    if (going !== null) return drawn(draft, removal);
    if (isHeld) return shown;
    return typedNow === null ? null : drawn(draft, typedNow);
  }, [draft, going, removal, isHeld, shown, typedNow]);
  return { proposed, typing };
}

function drawn(scheme: Scheme, operations: readonly Operation[]): Scheme | null {
  const applied = applyOperations(scheme, operations);
  return applied.ok && operations.length > 0 ? applied.scheme : null;
}
