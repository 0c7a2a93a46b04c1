import { useLayoutEffect, useRef } from "react";
import type { NoteSlot, NotesMarginProps } from "./contract.ts";
import { NoteItem } from "./NoteItem.tsx";
import "./notes-margin.css";

/** With more notes than this each says in two lines what is so, and the rest once it is chosen. */
const mostInFull = 4;

/** The notes as one draws, in the order of their height on the drawing. */
export function NotesMargin({
  heading,
  remark,
  notes,
  filters,
  chosenNumber,
  onChoose,
  slip,
  after,
  footer,
  onSlots,
}: NotesMarginProps) {
  const margin = useRef<HTMLElement>(null);
  useSlots(margin, onSlots);
  return (
    <section
      className={notes.length > mostInFull ? "notes-margin notes-dense" : "notes-margin"}
      ref={margin}
      aria-label={heading}
    >
      <header>
        <h2 className="caption">{heading}</h2>
        {remark !== undefined && <span className="notes-remark">{remark}</span>}
      </header>
      {filters}
      <div className="notes-scroll">
        {slip}
        {notes.map((note) => (
          <NoteItem
            key={note.markIds[0] ?? `number-${note.number}`}
            note={note}
            chosen={note.number === chosenNumber}
            onChoose={onChoose}
          />
        ))}
        {after}
      </div>
      {footer !== undefined && <footer>{footer}</footer>}
    </section>
  );
}

/**
 * Tells where each number stands after every layout that may have moved one: a note, a slip or the filters above them
 * that come, go or change their size. Measured while something is dragged only where that happens.
 */
function useSlots(margin: React.RefObject<HTMLElement | null>, onSlots: NotesMarginProps["onSlots"]): void {
  const told = useRef("");
  useLayoutEffect(() => {
    const outer = margin.current;
    const sheet = outer?.closest<HTMLElement>(".sheet");
    if (outer === null || sheet === null || sheet === undefined || onSlots === undefined) return undefined;
    const measure = () => {
      const slots = slotsIn(outer, sheet);
      const key = JSON.stringify(slots);
      if (key === told.current) return;
      told.current = key;
      onSlots(slots);
    };
    const scroll = outer.querySelector(".notes-scroll");
    const sizes = new ResizeObserver(measure);
    const watchSizes = () => {
      sizes.disconnect();
      if (scroll !== null) sizes.observe(scroll);
      for (const child of [outer, ...(scroll?.children ?? [])]) sizes.observe(child);
      measure();
    };
    const laid = new MutationObserver(watchSizes);
    if (scroll !== null) laid.observe(scroll, { childList: true });
    watchSizes();
    scroll?.addEventListener("scroll", measure, { passive: true });
    return () => {
      sizes.disconnect();
      laid.disconnect();
      scroll?.removeEventListener("scroll", measure);
    };
  }, [margin, onSlots]);
}

function slotsIn(margin: HTMLElement, sheet: HTMLElement): NoteSlot[] {
  const whole = sheet.getBoundingClientRect();
  const seen = margin.querySelector(".notes-scroll")?.getBoundingClientRect();
  return [...margin.querySelectorAll<HTMLElement>("[data-note-number]")].flatMap((circle) => {
    const box = circle.getBoundingClientRect();
    const middle = (box.top + box.bottom) / 2;
    if (seen !== undefined && (middle < seen.top || middle > seen.bottom)) return [];
    return [
      {
        number: Number(circle.dataset["noteNumber"]),
        xPx: Math.round(box.left - whole.left - 2),
        yPx: Math.round(middle - whole.top),
      },
    ];
  });
}
