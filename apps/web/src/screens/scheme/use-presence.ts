import { useEffect, useRef } from "react";
import type { Hand } from "../../hand/use-hand.ts";
import { useRoom } from "../../room/room-context.ts";
import type { SheetNumber } from "../../sheet/contract.ts";

const mostOperations = 20;
const everyMs = 120;

/** Tells the others which sheet is open here, what is chosen and what is being dragged; never more often than needed. */
export function usePresence(sheet: SheetNumber, hand: Pick<Hand, "chosenId" | "operations">): void {
  const { tell } = useRoom();
  const { chosenId, operations } = hand;
  const toldAt = useRef(0);
  useEffect(() => {
    const dragging = operations.length === 0 || operations.length > mostOperations ? null : operations;
    const wait = Math.max(0, everyMs - (Date.now() - toldAt.current));
    const timer = setTimeout(() => {
      toldAt.current = Date.now();
      tell({ sheet, selected: chosenId, dragging });
    }, wait);
    return () => clearTimeout(timer);
  }, [tell, sheet, chosenId, operations]);
}
