import { useLayoutEffect, useRef, useState } from "react";
import { HatchDefs } from "../look/HatchDefs.tsx";
import type { FieldPlace, SheetFrameProps } from "./contract.ts";
import "./sheet-frame.css";

/**
 * The sheet: binding edge, border with centring marks, levels and tray at the left, drawing field, notes and title block
 * at the right. In the document the regions stand in the order they are walked through by keyboard.
 */
export function SheetFrame({ title, spine, levels, tray, field, margin, titleBlock, overlay }: SheetFrameProps) {
  const sheet = useRef<HTMLDivElement>(null);
  const drawing = useRef<HTMLDivElement>(null);
  const place = usePlace(sheet, drawing);
  return (
    <div className="desk">
      <HatchDefs />
      <div className="sheet" ref={sheet}>
        {margin !== undefined && (
          <a className="to-the-notes" href="#notes">
            To the notes
          </a>
        )}
        <div className="sheet-border" aria-hidden="true">
          <i className="centring centring-top" />
          <i className="centring centring-foot" />
          <i className="centring centring-right" />
        </div>
        <header className="sheet-title" data-region="title block">
          <h1 className="unseen">{title}</h1>
          {titleBlock}
        </header>
        <section
          className="sheet-levels"
          data-region="levels"
          aria-label={levels == null && tray == null ? undefined : "Levels, parts and tools"}
        >
          {levels}
          {tray}
        </section>
        <main className="sheet-field" data-region="drawing" ref={drawing}>
          <p className="larger-sheet">Draw on a larger sheet. Here the drawing is only shown.</p>
          {place !== null && field(place)}
        </main>
        {margin !== undefined && (
          <div className="sheet-margin" id="notes" data-region="notes" tabIndex={-1}>
            {margin}
          </div>
        )}
        {spine !== undefined && (
          <div className="sheet-spine" data-region="revisions">
            {spine}
          </div>
        )}
        {overlay !== undefined && (
          <svg className="sheet-overlay" aria-hidden="true">
            {overlay}
          </svg>
        )}
      </div>
    </div>
  );
}

type Box = React.RefObject<HTMLElement | null>;

/** Size of the field and its place on the sheet, px; null until it has been laid out. */
function usePlace(sheet: Box, drawing: Box): FieldPlace | null {
  const [place, setPlace] = useState<FieldPlace | null>(null);
  useLayoutEffect(() => {
    const outer = sheet.current;
    const inner = drawing.current;
    if (outer === null || inner === null) return undefined;
    const measure = () => {
      // A printer's page is as wide as it is: what is measured while printing is not how the sheet was laid out.
      if (matchMedia("print").matches) return;
      setPlace((before) => samePlace(before, placeOf(outer, inner)));
      keepLaid(outer);
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(inner);
    watch.observe(outer);
    return () => watch.disconnect();
  }, [sheet, drawing]);
  return place;
}

/** Sheets narrower than this stand in one column, px; those larger than this print on the larger paper. */
const [leastLaidPx, largePx] = [1008, { width: 1450, height: 960 }];

/** Keeps the columns and rows the sheet came out with, so that it prints as it stands. */
function keepLaid(sheet: HTMLElement): void {
  const { width, height } = sheet.getBoundingClientRect();
  if (width < leastLaidPx) return void delete sheet.dataset["laid"];
  const { gridTemplateColumns, gridTemplateRows } = getComputedStyle(sheet);
  sheet.dataset["laid"] = width > largePx.width || height > largePx.height ? "large" : "as screen";
  sheet.style.setProperty("--laid-columns", gridTemplateColumns);
  sheet.style.setProperty("--laid-rows", gridTemplateRows);
}

function placeOf(outer: HTMLElement, inner: HTMLElement): FieldPlace {
  const whole = outer.getBoundingClientRect();
  const part = inner.getBoundingClientRect();
  return {
    widthPx: Math.round(part.width),
    heightPx: Math.round(part.height),
    leftPx: part.left - whole.left,
    topPx: part.top - whole.top,
  };
}

const samePlace = (before: FieldPlace | null, after: FieldPlace): FieldPlace =>
  before !== null &&
  before.widthPx === after.widthPx &&
  before.heightPx === after.heightPx &&
  before.leftPx === after.leftPx &&
  before.topPx === after.topPx
    ? before
    : after;
