import { useId, type ReactNode } from "react";
import { ink } from "../../look/ink.ts";
import { rectPath } from "../px-path.ts";
import "./first-acts.css";

/** One step of what a page is for: a small drawing of it, what is done, and by whom or why. */
export type FirstAct = { does: string; says: string; drawing: ReactNode };

/** What a page on which nothing stands yet is for, told by small drawings in the order of the work. */
export function FirstActs({ heading, acts }: { heading: string; acts: readonly FirstAct[] }) {
  const id = useId();
  return (
    <section className="first-acts" aria-labelledby={id}>
      <h2 className="caption" id={id}>
        {heading}
      </h2>
      <ol>
        {acts.map(({ does, says, drawing }, at) => (
          <li key={does}>
            <svg viewBox="0 0 200 124" width="200" height="124" aria-hidden="true">
              {drawing}
            </svg>
            <h3>
              <i aria-hidden="true">{at + 1}</i>
              {does}
            </h3>
            <p>{says}</p>
          </li>
        ))}
      </ol>
    </section>
  );
}

type BoxProps = { x: number; y: number; wide: number; high?: number; dashed?: boolean };

/** A container seen from its side: outline, its four fittings, and the folds of its sheet. One not there yet is dashed. */
export function SmallUnit({ x, y, wide, high = 42, dashed = false }: BoxProps) {
  const at = (fx: number, fy: number) => rectPath({ xPx: fx, yPx: fy, widthPx: 7, heightPx: 4.5 });
  const folds = Array.from({ length: Math.floor((wide - 16) / 7) }, (_, n) => x + 11 + n * 7);
  const line = dashed ? ink.graphite : ink.ink;
  return (
    <>
      <path
        d={rectPath({ xPx: x, yPx: y, widthPx: wide, heightPx: high })}
        fill={ink.paper}
        stroke={line}
        strokeWidth="1.5"
        strokeDasharray={dashed ? "6 4" : undefined}
      />
      {dashed ? null : (
        <path d={folds.map((fx) => `M${fx} ${y + 5}V${y + high - 5}`).join("")} stroke={ink.slate} strokeWidth="0.5" />
      )}
      <path
        d={at(x, y) + at(x + wide - 7, y) + at(x, y + high - 4.5) + at(x + wide - 7, y + high - 4.5)}
        fill={dashed ? "none" : ink.ink}
        stroke={line}
        strokeWidth="0.8"
      />
    </>
  );
}

/** The ground things stand on. */
export const SmallGround = ({ y = 112 }: { y?: number }) => (
  <>
    <path d={`M6 ${y}H194`} stroke={ink.ink} strokeWidth="2.4" strokeLinecap="round" />
    <path
      d={[18, 70, 128, 176].map((x) => `M${x} ${y + 3}l-5 6M${x + 5} ${y + 3}l-5 6M${x + 10} ${y + 3}l-5 6`).join("")}
      stroke={ink.pencil}
      strokeWidth="0.7"
    />
  </>
);
