import type { ReactNode } from "react";
import { CautionLine } from "../controls/CautionLine.tsx";
import { HatchDefs } from "../look/HatchDefs.tsx";
import "./page-sheet.css";

/** A bordered sheet to read: a heading, the way back, and the caution at its foot. */
export function PageSheet({
  title,
  heading,
  caption,
  way,
  children,
}: {
  /** Of the browser's tab. */
  title: string;
  heading: string;
  caption?: string | undefined;
  /** Links and commands at the right of the heading. */
  way?: ReactNode;
  children: ReactNode;
}) {
  return (
    <main className="page-sheet">
      <title>{`${title} · Cornerway`}</title>
      <HatchDefs />
      <div className="page-sheet-paper">
        <header className="page-sheet-head">
          <div>
            {caption === undefined ? null : <p className="caption">{caption}</p>}
            <h1>{heading}</h1>
          </div>
          {way === undefined ? null : <div className="page-sheet-way">{way}</div>}
        </header>
        {children}
        <footer className="page-sheet-foot">
          <CautionLine />
          <p className="caption" aria-hidden="true">
            {title}
          </p>
        </footer>
      </div>
    </main>
  );
}
