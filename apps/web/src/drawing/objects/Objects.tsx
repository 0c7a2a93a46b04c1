import { memo } from "react";
import { useUnits } from "../../units/use-units.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import type { ElementSetting } from "../elevation/ElevationUnit.tsx";
import { sameDrawn } from "../same-drawn.ts";
import type { ObjectEye } from "./object-eye.ts";
import { objectInk, type InkPath } from "./object-ink.ts";
import type { SeenObject } from "./seen-objects.ts";

type ObjectsProps = { objects: readonly SeenObject[]; eye: ObjectEye } & Pick<
  ElementSetting,
  "nameOf" | "entryId" | "selectedId" | "still"
>;

/** Beams, seats, ties, locks and free loads, as items of a view's tree. */
export function Objects({ objects, eye, nameOf, entryId, selectedId, still }: ObjectsProps) {
  const units = useUnits();
  return objects.map(({ object, hidden }) => {
    const { paths, rect } = objectInk(object, eye, hidden, units);
    return (
      <DrawnElement
        key={object.id}
        id={object.id}
        kind={object.kind}
        {...nameOf(object.id)}
        level={1}
        selected={selectedId === object.id}
        entry={entryId === object.id}
        rect={rect}
        still={still}
      >
        <InkPaths paths={paths} />
      </DrawnElement>
    );
  });
}

/** Strokes as they are, drawn anew only when one of them changed. */
export const InkPaths = memo(function InkPaths({ paths }: { paths: readonly InkPath[] }) {
  return paths.map(({ d, fill = "none", stroke, width, dash }) => (
    <path
      key={`${d}${fill}${stroke ?? ""}`}
      d={d}
      fill={fill}
      stroke={stroke}
      strokeWidth={width}
      strokeDasharray={dash}
      strokeLinejoin="round"
    />
  ));
}, sameDrawn);
