import { useId } from "react";
import type { ReviewStampProps } from "./contract.ts";

type Pressed = Extract<ReviewStampProps, { state: "pressed" }>;

const widePx = 270;
const highPx = 64;

/** A pressed stamp: turned 4° against the clock, worn, dead to the pointer. */
export function StampImpression({ disposition, wording, revision, date, signer }: Pressed) {
  const worn = useId();
  const meaning = wording === undefined ? "" : `${disposition} · `;
  const below = `${meaning}Revision ${revision} · ${date} · ${signer}`.toUpperCase();
  const says = wording === undefined ? disposition : `${wording}, which is: ${disposition}`;
  return (
    <svg
      className="stamp-impression"
      viewBox={`0 0 ${widePx + 16} ${highPx + 30}`}
      width={widePx + 16}
      height={highPx + 30}
      role="img"
      aria-label={`Stamped: ${says}, revision ${revision}, ${date}, ${signer}`}
    >
      <defs>
        <filter id={worn} x="-5%" y="-10%" width="110%" height="120%">
          <feTurbulence type="fractalNoise" baseFrequency="0.55 0.7" numOctaves="2" seed="7" result="grain" />
          <feColorMatrix
            in="grain"
            type="matrix"
            values="0 0 0 0 0  0 0 0 0 0  0 0 0 0 0  0 0 0 -5.2 3.5"
            result="holes"
          />
          <feComposite in="SourceGraphic" in2="holes" operator="in" />
        </filter>
      </defs>
      <g
        transform={`translate(8 ${highPx / 2 + 15}) rotate(-4) translate(0 ${-highPx / 2})`}
        filter={`url(#${worn})`}
        fill="none"
        stroke="var(--mulberry)"
      >
        <rect x="2" y="2" width={widePx - 4} height={highPx - 4} strokeWidth="2.6" />
        <rect x="6.5" y="6.5" width={widePx - 13} height={highPx - 13} strokeWidth="0.9" />
        <text
          x={widePx / 2}
          y="34"
          textAnchor="middle"
          fontSize="19"
          fontWeight="700"
          letterSpacing="0.09em"
          fill="var(--mulberry)"
          stroke="none"
          textLength={widePx - 44}
          lengthAdjust="spacingAndGlyphs"
        >
          {(wording ?? disposition).toUpperCase()}
        </text>
        <text
          x={widePx / 2}
          y="51"
          textAnchor="middle"
          fontSize="10.5"
          fontWeight="600"
          letterSpacing="0.06em"
          fill="var(--mulberry)"
          stroke="none"
          {...(below.length > 44 ? { textLength: widePx - 30, lengthAdjust: "spacingAndGlyphs" } : {})}
        >
          {below}
        </text>
      </g>
    </svg>
  );
}
