import { useContext, type ReactNode } from "react";
import { AlsoChosen } from "./also-chosen.ts";
import type { RectPx } from "./px-path.ts";
import { inset, px } from "./px-path.ts";
import type { ElementKind } from "./contract.ts";

type DrawnElementProps = {
  id: string;
  kind: ElementKind;
  label: string;
  selected: boolean;
  /** The item Tab enters the tree at. */
  entry: boolean;
  level: 1 | 2;
  /** Bounds for the double outline that shows focus and choice; also the least target. */
  rect: RectPx;
  noteId?: string | undefined;
  /** An outline to draw the focus by where the bounds would not do, as a path on the field. */
  outline?: string | undefined;
  /** True in a drawing that is only looked at: no item, no focus. */
  still?: boolean | undefined;
  children: ReactNode;
};

/** An element of the drawing: a tree item that can be pointed at, focused and read out. */
export function DrawnElement({
  id,
  kind,
  label,
  selected: chosenLast,
  entry,
  level,
  rect,
  noteId,
  outline,
  still = false,
  children,
}: DrawnElementProps) {
  const also = useContext(AlsoChosen);
  const selected = chosenLast || also.has(id);
  if (still) return <g>{children}</g>;
  return (
    <g
      className="drawn-element"
      data-element={id}
      data-kind={kind}
      role="treeitem"
      aria-label={label}
      aria-level={level}
      aria-selected={selected}
      aria-details={noteId}
      tabIndex={entry ? 0 : -1}
    >
      {outline !== undefined && <FocusHalo outline={outline} selected={selected} />}
      {children}
      <UnseenTarget rect={rect} />
      {outline === undefined && (
        <g className={focusClass(selected)} aria-hidden="true">
          <OutlineRect rect={inset(rect, -3)} strokeWidth={1.6} />
          <OutlineRect rect={inset(rect, -6)} strokeWidth={0.75} />
        </g>
      )}
    </g>
  );
}

const focusClass = (selected: boolean): string => (selected ? "focus-outline chosen" : "focus-outline");

/** The double outline of a shape that is no rectangle: ink and paper in turn, laid under it. */
function FocusHalo({ outline, selected }: { outline: string; selected: boolean }) {
  return (
    <g className={focusClass(selected)} aria-hidden="true" fill="none" strokeLinejoin="miter">
      {halo.map(([width, colour]) => (
        <path key={width} d={outline} stroke={`var(${colour})`} strokeWidth={width} />
      ))}
    </g>
  );
}

const halo = [
  [13, "--ink"],
  [11.5, "--paper"],
  [8, "--ink"],
  [5, "--paper"],
] as const;

const leastTargetPx = 24;

/** Thin members get an unseen margin, so that they can be hit. */
function UnseenTarget({ rect }: { rect: RectPx }) {
  const growX = Math.max(0, (leastTargetPx - rect.widthPx) / 2);
  const growY = Math.max(0, (leastTargetPx - rect.heightPx) / 2);
  if (growX === 0 && growY === 0) return null;
  return (
    <rect
      x={px(rect.xPx - growX)}
      y={px(rect.yPx - growY)}
      width={px(rect.widthPx + 2 * growX)}
      height={px(rect.heightPx + 2 * growY)}
      fill="transparent"
    />
  );
}

function OutlineRect({ rect, strokeWidth }: { rect: RectPx; strokeWidth: number }) {
  return (
    <rect
      x={px(rect.xPx)}
      y={px(rect.yPx)}
      width={px(rect.widthPx)}
      height={px(rect.heightPx)}
      fill="none"
      stroke="var(--ink)"
      strokeWidth={strokeWidth}
    />
  );
}
