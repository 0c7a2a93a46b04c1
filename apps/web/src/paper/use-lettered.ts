import { useLayoutEffect, useState } from "react";
import type { RefObject } from "react";
import type { KeptClear } from "../drawing/leaders/route-leaders.ts";

export interface Lettered {
  /** Words, figures and tags: nothing runs through them. */
  lettered: readonly KeptClear[];
  /** Openings on the elevation: a number beside one hides nothing of it. */
  openings: readonly KeptClear[];
}

const none: Lettered = { lettered: [], openings: [] };

/** Where words and openings stand on the drawing, px of the sheet; measured anew, a frame later, when what is drawn changed. */
export function useLettered(place: RefObject<Element | null>, drawn: unknown): Lettered {
  const [lettered, setLettered] = useState(none);
  useLayoutEffect(() => {
    const frame = requestAnimationFrame(() => {
      const sheet = place.current?.closest(".sheet");
      if (sheet === null || sheet === undefined) return;
      const next = {
        lettered: boxesOf(sheet, ".paper text, .paper .tag > path"),
        openings: boxesOf(sheet, '.paper .elevation [data-kind="opening"]'),
      };
      setLettered((last) => (JSON.stringify(last) === JSON.stringify(next) ? last : next));
    });
    return () => cancelAnimationFrame(frame);
  }, [place, drawn]);
  return lettered;
}

function boxesOf(sheet: Element, selector: string): KeptClear[] {
  const whole = sheet.getBoundingClientRect();
  return [...sheet.querySelectorAll(selector)].map((drawn) => {
    const box = drawn.getBoundingClientRect();
    return {
      leftPx: Math.round(box.left - whole.left),
      topPx: Math.round(box.top - whole.top),
      rightPx: Math.round(box.right - whole.left),
      footPx: Math.round(box.bottom - whole.top),
    };
  });
}
