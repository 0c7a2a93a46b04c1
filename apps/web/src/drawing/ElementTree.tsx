import type { FocusEvent, PointerEvent, ReactNode } from "react";
import { elementKinds, type ElementKind, type PickedElement, type ViewProps } from "./contract.ts";
import { edgesOf } from "./opening-handles.ts";
import type { ScreenPoint } from "./view-transform.ts";
import "./drawing.css";

type Handlers = Pick<ViewProps, "onElementPointerDown" | "onElementFocus">;

type ElementTreeProps = Handlers & {
  label: string;
  /** Site place of a px of the field on an element, in the depth the view gives it. */
  locate: (id: string, kind: ElementKind, at: ScreenPoint) => Pick<PickedElement, "at" | "face">;
  still?: boolean | undefined;
  children: ReactNode;
};

/** The tree of a view's elements. One set of handlers for all of them, so that a redraw makes no new ones. */
export function ElementTree({ label, locate, still = false, children, ...on }: ElementTreeProps) {
  if (still) return <g>{children}</g>;
  return (
    <g
      className="element-tree"
      role="tree"
      aria-label={label}
      onPointerDown={(event) => {
        const found = elementOf(event.target);
        if (found === null || on.onElementPointerDown === undefined) return;
        const place = locate(found.id, found.kind, fieldPoint(event));
        on.onElementPointerDown({ ...found, ...place, edges: edgesOf(event.target) }, event);
      }}
      onFocus={(event: FocusEvent<SVGGElement>) => tell(event.target, on.onElementFocus)}
    >
      {children}
    </g>
  );
}

function tell(target: EventTarget, to: ((id: string) => void) | undefined): void {
  const found = elementOf(target);
  if (found !== null) to?.(found.id);
}

function elementOf(target: EventTarget): { id: string; kind: ElementKind } | null {
  const drawn = target instanceof Element ? target.closest<SVGGElement>("[data-element]") : null;
  const id = drawn?.dataset["element"];
  const kind = elementKinds.find((each) => each === drawn?.dataset["kind"]);
  return id === undefined || kind === undefined ? null : { id, kind };
}

/** Pointer place in px of the svg the tree is drawn in. */
function fieldPoint(event: PointerEvent<SVGGElement>): ScreenPoint {
  const matrix = event.currentTarget.getScreenCTM();
  if (matrix === null) return { xPx: event.clientX, yPx: event.clientY };
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return { xPx: x, yPx: y };
}
