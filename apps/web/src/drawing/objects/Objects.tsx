import type { SeenObject } from "@cornerway/engine";
import { memo } from "react";
import { dash } from "../../look/ink.ts";
import { useUnits } from "../../units/use-units.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { itemOf, type ElementSetting } from "../element-setting.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { ObjectEye } from "./object-eye.ts";
import { objectInk, type InkPath } from "./object-ink.ts";

type ObjectsProps = { objects: readonly SeenObject[]; eye: ObjectEye } & Pick<
  ElementSetting,
  "nameOf" | "entryId" | "selectedId" | "still"
>;

/** Beams, seats, ties, locks and free loads, as items of a view's tree. */
export function Objects({ objects, eye, ...setting }: ObjectsProps) {
  const units = useUnits();
  return objects.map(({ object, hidden }) => {
    const { paths, rect } = objectInk(object, eye, hidden, units);
    return (
      <DrawnElement
        key={object.id}
        {...itemOf(setting, object.id, object.kind)}
        rect={rect}
        outline={eye.kind === "isometric" && object.kind === "beam" ? paths[0]?.d : undefined}
      >
        <InkPaths paths={paths} />
      </DrawnElement>
    );
  });
}

/** The same strokes as someone proposes them: outlines dashed. */
export const asProposed = (paths: readonly InkPath[]): InkPath[] =>
  paths.map((path) => (path.stroke === undefined ? path : { ...path, dash: dash.proposed }));

/** Strokes as they are, drawn anew only when one of them changed. */
export const InkPaths = memo(function InkPaths({ paths }: { paths: readonly InkPath[] }) {
  return paths.map(({ d, fill = "none", stroke, width, dash: dashes }) => (
    <path
      key={`${d}${fill}${stroke ?? ""}`}
      d={d}
      fill={fill}
      stroke={stroke}
      strokeWidth={width}
      strokeDasharray={dashes}
      strokeLinejoin="round"
    />
  ));
}, sameDrawn);
