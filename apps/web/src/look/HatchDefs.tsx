import { memo } from "react";
import { hatchId, type HatchHand, type HatchSize } from "./hatch.ts";
import { ink } from "./ink.ts";

/** The hatches of the sheet, once per page. Angles stay fixed to the sheet, whatever the member's angle. */
export const HatchDefs = memo(function HatchDefs() {
  return (
    <svg width="0" height="0" className="hatch-defs" aria-hidden="true" focusable="false">
      <defs>
        {hands.flatMap((hand) => sizes.map((size) => <HatchSet key={`${hand}-${size}`} hand={hand} size={size} />))}
        <PencilHatch id="pencil-open" pitch={5} strokeWidth={0.5} opacity={0.6} />
        <PencilHatch id="pencil-close" pitch={3.4} strokeWidth={0.55} opacity={0.7} />
      </defs>
    </svg>
  );
});

const hands: readonly HatchHand[] = ["ink", "pencil"];
const sizes: readonly HatchSize[] = ["normal", "small", "wide"];

/** Pitch in px of each hatch by size: upright lines, pairs, stipple, cross-hatch. */
const pitch = {
  normal: { upright: 7, pair: 12, stipple: 8, cross: 5.5 },
  small: { upright: 4, pair: 6.5, stipple: 5, cross: 3.6 },
  wide: { upright: 7, pair: 12, stipple: 8, cross: 9 },
} as const;

function HatchSet({ hand, size }: { hand: HatchHand; size: HatchSize }) {
  const { upright, pair, stipple, cross } = pitch[size];
  const press = hand === "ink" ? 1 : 0.62;
  const opacity = (size === "wide" ? 0.62 : 1) * (hand === "ink" ? 1 : 0.85);
  const second = size === "small" ? 3 : 5;
  const first = size === "small" ? 1 : 2;
  const dot = (size === "small" ? 0.8 : 1.05) * (hand === "ink" ? 1 : 0.8);
  return (
    <>
      <pattern id={hatchId("works as built", size, hand)} width={upright} height="8" patternUnits="userSpaceOnUse">
        <path d={`M${first} 0V8`} stroke={ink.slate} strokeWidth={0.7 * press} opacity={opacity} />
      </pattern>
      <pattern
        id={hatchId("works with steel", size, hand)}
        width={pair}
        height={pair}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path
          d={`M${first} 0V${pair}M${second} 0V${pair}`}
          stroke={ink.prussian}
          strokeWidth={0.9 * press}
          opacity={opacity}
        />
      </pattern>
      <pattern
        id={hatchId("needs the engineer", size, hand)}
        width={stipple}
        height={stipple}
        patternUnits="userSpaceOnUse"
      >
        <circle cx={stipple / 4} cy={stipple / 4} r={dot} fill={ink.mulberry} opacity={opacity} />
        <circle cx={(stipple * 3) / 4} cy={(stipple * 3) / 4} r={dot} fill={ink.mulberry} opacity={opacity} />
      </pattern>
      <pattern
        id={hatchId("does not work", size, hand)}
        width={cross}
        height={cross}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d={`M0 .6H${cross}M.6 0V${cross}`} stroke={ink.rust} strokeWidth={1 * press} opacity={opacity} />
      </pattern>
    </>
  );
}

function PencilHatch(props: { id: string; pitch: number; strokeWidth: number; opacity: number }) {
  return (
    <pattern
      id={props.id}
      width={props.pitch}
      height={props.pitch}
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(38)"
    >
      <path d={`M1 0V${props.pitch}`} stroke={ink.graphite} strokeWidth={props.strokeWidth} opacity={props.opacity} />
    </pattern>
  );
}
