import { useLayoutEffect, useState } from "react";
import type { RefObject } from "react";
import type { KeptClear } from "../drawing/leaders/route-leaders.ts";

const none: readonly KeptClear[] = [];

/** Where words, figures and tags stand on the drawing, px of the sheet; measured anew, a frame later, when what is drawn changed. */
export function useLettered(place: RefObject<Element | null>, drawn: unknown): readonly KeptClear[] {
  const [lettered, setLettered] = useState(none);
  useLayoutEffect(() => {
    const frame = requestAnimationFrame(() => {
      const sheet = place.current?.closest(".sheet");
      if (sheet === null || sheet === undefined) return;
      const next = letteredOn(sheet);
      setLettered((last) => (JSON.stringify(last) === JSON.stringify(next) ? last : next));
    });
    return () => cancelAnimationFrame(frame);
  }, [place, drawn]);
  return lettered;
}

function letteredOn(sheet: Element): KeptClear[] {
  const whole = sheet.getBoundingClientRect();
  return [...sheet.querySelectorAll(".paper text, .paper .tag > path")].map((text) => {
    const box = text.getBoundingClientRect();
    return {
      leftPx: Math.round(box.left - whole.left),
      topPx: Math.round(box.top - whole.top),
      rightPx: Math.round(box.right - whole.left),
      footPx: Math.round(box.bottom - whole.top),
    };
  });
}
