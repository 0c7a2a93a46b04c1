import { useEffect } from "react";
import { useRoom } from "../../room/room-context.ts";

/** Tells the others that sheet 3 is open here, and what is looked at. */
export function useReviewPresence(selected: string | null): void {
  const { tell } = useRoom();
  useEffect(() => tell({ sheet: 3, selected, dragging: null }), [tell, selected]);
}
