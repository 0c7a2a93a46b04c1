import type { Pointer } from "@cornerway/schema";
import { useCallback, useEffect, useRef } from "react";
import type { Hand } from "../../hand/use-hand.ts";
import { useRoom } from "../../room/room-context.ts";
import type { SheetNumber } from "../../sheet/contract.ts";

const mostOperations = 20;
const everyMs = 120;
/** A hand that rests this long no longer points. */
const pointsForMs = 8_000;

/**
 * Tells the others which sheet is open here, what is chosen, what is being dragged and where the hand points; never more
 * often than needed. What it gives takes where the hand points, without drawing anything anew.
 */
export function usePresence(
  sheet: SheetNumber,
  { chosenId, operations, lift }: Pick<Hand, "chosenId" | "operations" | "lift">,
): (pointer: Pointer) => void {
  const { tell } = useRoom();
  const toldAt = useRef(0);
  const waits = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const pointer = useRef<Pointer | undefined>(undefined);
  const say = useCallback(() => {
    clearTimeout(waits.current);
    const wait = Math.max(0, everyMs - (Date.now() - toldAt.current));
    waits.current = setTimeout(() => {
      waits.current = undefined;
      toldAt.current = Date.now();
      const held = lift.now()?.operations ?? operations;
      const dragging = held.length === 0 || held.length > mostOperations ? null : [...held];
      const pointed = pointer.current === undefined ? {} : { pointer: pointer.current };
      tell({ sheet, selected: chosenId, dragging, ...pointed });
    }, wait);
  }, [tell, sheet, chosenId, operations, lift]);
  useEffect(() => {
    say();
    return () => {
      clearTimeout(waits.current);
      waits.current = undefined;
    };
  }, [say]);
  const sayNow = useRef(say);
  useEffect(() => {
    sayNow.current = say;
  }, [say]);
  const rests = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(rests.current), []);
  return useCallback((at) => {
    pointer.current = at;
    clearTimeout(rests.current);
    rests.current = setTimeout(() => {
      pointer.current = undefined;
      sayNow.current();
    }, pointsForMs);
    if (waits.current === undefined) sayNow.current();
  }, []);
}
