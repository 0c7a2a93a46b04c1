import type { RecordPayload } from "@cornerway/schema";
import { Triangle } from "../../look/Triangle.tsx";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";

/** The sign of an entry, where the drawing has one for it. */
export function EntrySign({ payload }: { payload: RecordPayload | null }) {
  if (payload?.kind === "assessed") return <VerdictSymbol verdict={payload.verdict} sizePx={14} />;
  if (payload?.kind === "revision sent") return <Triangle letter={payload.letter} current sizePx={17} />;
  if (payload?.kind === "stamp pressed")
    return (
      <svg width="16" height="13" viewBox="0 0 16 13" aria-hidden="true">
        <path d="M1 1h14v11H1zM4.5 6l2.5 3 4.5-5.4" fill="none" stroke="var(--mulberry)" strokeWidth="1.6" />
      </svg>
    );
  return null;
}
