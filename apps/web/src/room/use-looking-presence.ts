import { useEffect } from "react";
import type { SheetNumber } from "../sheet/contract.ts";
import { useRoom } from "./room-context.ts";

/** Tells the others which sheet is open here and what is looked at, where nothing is dragged. */
export function useLookingPresence(sheet: SheetNumber, selected: string | null): void {
  const { tell } = useRoom();
  useEffect(() => tell({ sheet, selected, dragging: null }), [tell, sheet, selected]);
}
