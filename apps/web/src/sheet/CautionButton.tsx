import { useId, useState } from "react";
import { cautionLine, cautions } from "@cornerway/schema";
import "./caution-button.css";

/** The one line that is never hidden; it opens the five cautions on a slip laid over the sheet. */
export function CautionButton() {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <div className="caution">
      <button
        type="button"
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
        onKeyDown={(event) => {
          if (event.key === "Escape" && open) {
            event.stopPropagation();
            setOpen(false);
          }
        }}
      >
        {cautionLine}
      </button>
      <ol id={id} className="caution-slip" hidden={!open}>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ol>
    </div>
  );
}
