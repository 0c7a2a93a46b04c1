import { textWidthPx } from "../drawing/label/text-width.ts";

/** A quiet way lettered on the drawing, with a target large enough for a finger. */
export function PaperButton({
  xPx,
  yPx,
  label,
  spoken = label,
  pressed,
  onPress,
}: {
  xPx: number;
  yPx: number;
  label: string;
  spoken?: string;
  /** For one of several: whether it is the one shown. */
  pressed?: boolean;
  onPress: () => void;
}) {
  const widthPx = Math.max(24, textWidthPx(label, 11));
  return (
    <g
      className="paper-button"
      role="button"
      tabIndex={0}
      aria-label={spoken}
      aria-pressed={pressed}
      onPointerDown={(event) => event.stopPropagation()}
      onClick={onPress}
      onKeyDown={(event) => {
        if (event.key === "Enter" || event.key === " ") onPress();
      }}
    >
      <rect x={xPx - 6} y={yPx - 18} width={widthPx + 12} height="32" fill="transparent" />
      <text
        x={xPx + widthPx / 2}
        y={yPx}
        textAnchor="middle"
        fontSize="11"
        fontWeight={pressed ? 700 : 400}
        textDecoration={pressed ? undefined : "underline"}
      >
        {label}
      </text>
    </g>
  );
}
