import type { Verdict } from "@cornerway/schema";
import { verdictClass } from "./verdict-class.ts";

/** The shape of a verdict: never shown without its word beside it or in its label. */
export function VerdictSymbol({ verdict, sizePx = 17 }: { verdict: Verdict; sizePx?: number }) {
  return (
    <svg className={verdictClass(verdict)} width={sizePx} height={sizePx} viewBox="0 0 24 24" aria-hidden="true">
      <VerdictShape verdict={verdict} />
    </svg>
  );
}

function VerdictShape({ verdict }: { verdict: Verdict }) {
  switch (verdict) {
    case "works as built":
      return (
        <>
          <rect x="4" y="4" width="16" height="16" fill="none" stroke="currentColor" strokeWidth="1.7" />
          <path d="M2.4 2.4h5v5h-5zM16.6 2.4h5v5h-5zM2.4 16.6h5v5h-5zM16.6 16.6h5v5h-5z" fill="currentColor" />
        </>
      );
    case "works with steel":
      return (
        <g fill="none" stroke="currentColor">
          <path d="M7 2.6h10L22.4 12 17 21.4H7L1.6 12z" strokeWidth="1.8" strokeLinejoin="round" />
          <path d="M7.6 7.6h8.8M7.6 16.4h8.8M12 7.6v8.8" strokeWidth="2.6" strokeLinecap="square" />
        </g>
      );
    case "needs the engineer":
      return (
        <>
          <circle cx="12" cy="12" r="9.8" fill="none" stroke="currentColor" strokeWidth="1.8" />
          <path d="M2.2 12h19.6" stroke="currentColor" strokeWidth="1.6" />
          <g fill="currentColor">
            <circle cx="7" cy="15.2" r="1.15" />
            <circle cx="12" cy="15.2" r="1.15" />
            <circle cx="17" cy="15.2" r="1.15" />
            <circle cx="9.5" cy="18.4" r="1.15" />
            <circle cx="14.5" cy="18.4" r="1.15" />
          </g>
        </>
      );
    case "does not work":
      return (
        <g fill="none" stroke="currentColor">
          <path d="M3 3l6.6 6.6M14.4 14.4L21 21M21 3l-6.6 6.6M9.6 14.4L3 21" strokeWidth="4" />
          <path d="M9.2 12h5.6" strokeWidth="1.5" />
        </g>
      );
    case "not checked":
      return (
        <rect
          x="3.5"
          y="3.5"
          width="17"
          height="17"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.8"
          strokeDasharray="4.5 3.4"
        />
      );
  }
}
