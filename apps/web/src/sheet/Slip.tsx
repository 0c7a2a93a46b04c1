import type { SlipProps } from "./contract.ts";
import "./slip.css";

/** Lighter paper laid on the sheet: something that asks for an answer. */
export function Slip({ label, author, hand, number, children }: SlipProps) {
  return (
    <section
      className={hand === undefined ? "slip" : `slip slip-${hand}`}
      aria-label={label}
      id={number === undefined ? undefined : `note-${number}`}
    >
      {number !== undefined && (
        <span className="slip-number" data-note-number={number} aria-hidden="true">
          {number}
        </span>
      )}
      <header>
        <span className="caption">{label}</span>
        {author !== undefined && <span className="slip-author">{author}</span>}
      </header>
      {children}
    </section>
  );
}
