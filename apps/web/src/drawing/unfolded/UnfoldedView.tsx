import { useMemo } from "react";
import { faceTitle } from "./face-title.ts";
import { ink } from "../../look/ink.ts";
import type { ViewProps } from "../contract.ts";
import { ElementTree } from "../ElementTree.tsx";
import { entryElement } from "../entry-element.ts";
import { Lettering } from "../label/Lettering.tsx";
import { rectToPx } from "../paper-to-px.ts";
import { useElementWords } from "../use-element-words.ts";
import { fromScreen } from "../view-transform.ts";
import { FlatFaceDrawing } from "./FlatFaceDrawing.tsx";
import { FoldLines } from "./FoldLines.tsx";
import { siteUnderPaper, type UnfoldedModel } from "./unfolded-model.ts";

type UnfoldedViewProps = ViewProps & { model: UnfoldedModel };

/** One unit folded open: each face from outside with what is cut in it, dimensioned from its fittings. */
export function UnfoldedView({ model, ...props }: UnfoldedViewProps) {
  const { transform: view, selectedId = null } = props;
  const { verdicts, nameOf } = useElementWords(props);
  const shown = useMemo(
    () => model.flats.flatMap(({ openings }) => openings.map(({ opening }) => opening.id)),
    [model],
  );
  const entryId = entryElement(shown, selectedId);
  return (
    <g className="unfolded">
      <FoldLines model={model} view={view} />
      <ElementTree
        label={`${model.container.tag} unfolded`}
        locate={(id, _kind, at) => {
          const found = siteUnderPaper(model, fromScreen(view, at), faceOf(model, id));
          return found ?? { at: { xMm: 0, yMm: 0, zMm: 0 } };
        }}
        onElementPointerDown={props.onElementPointerDown}
        onElementFocus={props.onElementFocus}
      >
        {model.flats.map((flat) => (
          <FlatFaceDrawing
            key={flat.face}
            flat={flat}
            model={model}
            view={view}
            selectedId={selectedId}
            entryId={entryId}
            verdicts={verdicts}
            nameOf={nameOf}
            still={false}
          />
        ))}
      </ElementTree>
      <g pointerEvents="none">
        {model.flats.map((flat) => {
          const { xPx, yPx } = rectToPx(view, flat.outline);
          return (
            <Lettering
              key={flat.face}
              text={faceTitle[flat.face]}
              spot={{ xPx: xPx + 2, yPx: yPx - 6, anchor: "start" }}
              sizePx={11}
              colour={ink.graphite}
              trackingEm={0.06}
            />
          );
        })}
      </g>
    </g>
  );
}

const faceOf = ({ flats }: UnfoldedModel, id: string) =>
  flats.find(({ openings }) => openings.some(({ opening }) => opening.id === id))?.face;
