import { hatchFill } from "../look/hatch.ts";
import { moneyText } from "../wording/money.ts";
import type { PremiumGroup } from "./premium-groups.ts";

const widthPx = 360;
const rowPx = 40;
const barPx = 15;
const wordsPx = 18;
/** Of one letter of the words, at most. */
const letterPx = 8;
const topPx = 34;

/** The parts of a premium one after the other, on a ruled scale of money. */
export function PremiumBars({ groups, currency }: { groups: readonly PremiumGroup[]; currency: string }) {
  const total = groups.reduce((sum, { money }) => sum + money, 0);
  if (total <= 0) return null;
  const scale = widthPx / total;
  const heightPx = topPx + groups.length * rowPx;
  return (
    <svg
      className="price-bars"
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={groups.map(({ name, money }) => `${name} ${moneyText(money, currency)}`).join(", ")}
    >
      <Scale total={total} currency={currency} />
      {placed(groups).map(({ name, money, hand, before }, at) => (
        <Bar
          key={name}
          x={before * scale}
          y={topPx + at * rowPx}
          width={money * scale}
          label={`${name} ${moneyText(money, currency)}`}
          hand={hand}
        />
      ))}
    </svg>
  );
}

const placed = (groups: readonly PremiumGroup[]) => {
  let before = 0;
  return groups.map((group) => {
    const here = { ...group, before };
    before += group.money;
    return here;
  });
};

function Scale({ total, currency }: { total: number; currency: string }) {
  const parts = 6;
  return (
    <g>
      {Array.from({ length: parts }, (_, at) => (
        <rect
          key={at}
          x={(at * widthPx) / parts}
          y="1"
          width={widthPx / parts}
          height="5"
          fill={at % 2 === 0 ? "var(--ink)" : "var(--paper)"}
          stroke="var(--ink)"
          strokeWidth="0.75"
        />
      ))}
      <text x="0" y="21" fontSize="13" fill="var(--graphite)">
        0
      </text>
      <text x={widthPx} y="21" fontSize="13" textAnchor="end" fill="var(--graphite)">
        {moneyText(total, currency)}
      </text>
    </g>
  );
}

type BarProps = { x: number; y: number; width: number; label: string; hand: PremiumGroup["hand"] };

/** The words stand over the bar, from its start, or up to its end where they would pass the edge. */
function Bar({ x, y, width, label, hand }: BarProps) {
  const verdict = hand === "engineer" ? "needs the engineer" : "works with steel";
  const passesEdge = x + label.length * letterPx > widthPx;
  return (
    <g>
      <text
        x={passesEdge ? x + width : x}
        y={y + 13}
        fontSize="13.5"
        textAnchor={passesEdge ? "end" : "start"}
        fill="var(--ink)"
      >
        {label}
      </text>
      <rect
        x={x}
        y={y + wordsPx}
        width={width}
        height={barPx}
        fill={hatchFill(verdict, "small")}
        stroke={hand === "engineer" ? "var(--mulberry)" : "var(--prussian)"}
        strokeWidth="1.1"
      />
    </g>
  );
}
