import { levelsOf, sectionModel, type SectionLine, type SectionModel } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { dash, ink, weight } from "../../look/ink.ts";
import { useUnits } from "../../units/use-units.ts";
import { DimensionString } from "../dimension/DimensionString.tsx";
import { GroundLine } from "../ground/GroundLine.tsx";
import { PadSection } from "../ground/PadSection.tsx";
import type { LayerPlace, ViewLayer } from "../contract.ts";
import { Lettering } from "../label/Lettering.tsx";
import type { BoxPx } from "../label/place-labels.ts";
import { LayerOn } from "../LayerOn.tsx";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { px, rectPath } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";
import { SectionCutDrawing } from "./SectionCutDrawing.tsx";
import { sectionExtent } from "./section-extent.ts";
import { heightRowPx, sectionLabels } from "./section-labels.ts";

type SectionViewProps = {
  scheme: Scheme;
  line: SectionLine;
  transform: ViewTransform;
  /** Inked over what is cut, under the lettering. */
  layer?: ViewLayer | undefined;
};

/** What the line cuts in ink, what stands beyond it in pencil. Only looked at: what is drawn is drawn on plan and elevation. */
export function SectionView({ scheme, line, transform: view, layer }: SectionViewProps) {
  const model = useMemo(() => sectionModel(scheme, line), [scheme, line]);
  const place = useMemo((): LayerPlace => ({ view: "section", model, transform: view, scheme }), [model, view, scheme]);
  const groundMm = scheme.site.groundZUm / 1000;
  const extent = sectionExtent(model, groundMm);
  const tags = [...model.cuts.map(({ placed }) => placed.container.tag)];
  const left = xToPx(view, extent.u0Mm);
  const right = xToPx(view, extent.u1Mm);
  return (
    <g
      className="section"
      role="img"
      aria-label={tags.length === 0 ? emptyWords : `Section through ${tags.join(", ")}`}
    >
      <SectionFrame scheme={scheme} view={view} leftPx={left} rightPx={right} />
      {model.beyond.map((face) => (
        <path
          key={face.placed.id}
          d={rectPath(rectToPx(view, face))}
          fill={ink.paper}
          stroke={ink.pencil}
          strokeWidth={weight.fine}
        />
      ))}
      <GroundLine fromPx={left - 18} toPx={right + 18} groundPx={yToPx(view, groundMm)} />
      {model.pads.map((place) => (
        <PadSection key={place.pad.id} rect={rectToPx(view, place)} seed={place.pad.id} />
      ))}
      {model.cuts.map((cut) => (
        <SectionCutDrawing key={cut.placed.id} cut={cut} view={view} />
      ))}
      {model.posts.map((place) => (
        <path key={place.post.id} d={rectPath(rectToPx(view, place))} fill={ink.prussian} />
      ))}
      <LayerOn layer={layer} place={place} />
      <SectionLettering scheme={scheme} model={model} view={view} rightPx={right} inked={layer?.covers(place)} />
    </g>
  );
}

const emptyWords = "Section: the line cuts no container";

/** Level lines, and the heights between them at the right. */
function SectionFrame({
  scheme,
  view,
  leftPx,
  rightPx,
}: {
  scheme: Scheme;
  view: ViewTransform;
  leftPx: number;
  rightPx: number;
}) {
  const levels = levelsOf(scheme).map(({ zMm }) => yToPx(view, zMm));
  return (
    <g aria-hidden="true">
      <path
        d={levels.map((y) => `M${px(leftPx - 18)} ${px(y)}H${px(rightPx + heightRowPx + 6)}`).join("")}
        stroke={ink.pencil}
        strokeWidth={0.6}
        strokeDasharray={dash.centre}
      />
      <DimensionString upright placesPx={levels} atPx={rightPx + heightRowPx} />
    </g>
  );
}

function SectionLettering({
  scheme,
  model,
  view,
  rightPx,
  inked,
}: {
  scheme: Scheme;
  model: SectionModel;
  view: ViewTransform;
  rightPx: number;
  inked: readonly BoxPx[] | undefined;
}) {
  const units = useUnits();
  const labels = useMemo(
    () => sectionLabels(model, levelsOf(scheme), view, rightPx, units, inked),
    [model, scheme, view, rightPx, units, inked],
  );
  return labels.map(({ key, text, spot, sizePx, colour, fontWeight }) => (
    <Lettering key={key} text={text} spot={spot} sizePx={sizePx} colour={colour} fontWeight={fontWeight} />
  ));
}
