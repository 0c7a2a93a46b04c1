import type { PathStroke, ElevationModel } from "@cornerway/engine";
import { useMemo } from "react";
import { Hexagon } from "../../look/Hexagon.tsx";
import { ink, weight } from "../../look/ink.ts";
import type { DimensionStrings } from "../dimension/strings.ts";
import { Lettering } from "../label/Lettering.tsx";
import type { BoxPx } from "../label/place-labels.ts";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { linePath, px } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";
import { useUnits } from "../../units/use-units.ts";
import { elevationLabels, tagSpots, type ElevationLabel, type TagSpot } from "./elevation-labels.ts";

type ElevationMarksProps = {
  model: ElevationModel;
  view: ViewTransform;
  strokes: readonly PathStroke[];
  strings: DimensionStrings;
  /** Where a layer inks, such as strands. */
  inked: readonly BoxPx[] | undefined;
  verdicts: ReadonlyMap<string, ElementVerdict>;
  rightPx: number | undefined;
};

/** The lettering of an elevation: tags of openings, names of units, forces, dimensions. */
export function ElevationMarks({ model, view, strokes, strings, inked, verdicts, rightPx }: ElevationMarksProps) {
  const tags = useMemo(() => tagSpots(model, view), [model, view]);
  const units = useUnits();
  const labels = useMemo(
    () => elevationLabels(model, view, strokes, units, { strings, inked, rightPx }),
    [model, view, strokes, units, strings, inked, rightPx],
  );
  return (
    <>
      {tags.map((spot) => (
        <Tag key={spot.id} spot={spot} verdict={verdicts.get(spot.id)?.verdict ?? "not checked"} />
      ))}
      <Leads labels={labels} />
      {labels.map(({ key, of, text, spot, sizePx, colour, fontWeight, trackingEm }) => (
        <Lettering
          key={key}
          of={of}
          text={text}
          spot={spot}
          sizePx={sizePx}
          colour={colour}
          fontWeight={fontWeight}
          trackingEm={trackingEm}
        />
      ))}
    </>
  );
}

/** Leaders of what stands aside of its place, each with a dot where it ends. */
function Leads({ labels }: { labels: readonly ElevationLabel[] }) {
  const leads = labels.flatMap(({ spot: { lead }, box, colour, key }) =>
    lead === undefined ? [] : [{ key, colour, lead, fromPx: lead.xPx < box.left ? box.left - 2 : box.right + 2 }],
  );
  return leads.map(({ key, colour, lead, fromPx }) => (
    <g key={key} className="figure-lead">
      <path d={linePath(fromPx, lead.yPx, lead.xPx, lead.yPx)} stroke={ink.paper} strokeWidth={3.4} />
      <path d={linePath(fromPx, lead.yPx, lead.xPx, lead.yPx)} stroke={colour} strokeWidth={weight.fine} />
      <circle cx={px(lead.xPx)} cy={px(lead.yPx)} r={1.8} fill={colour} />
    </g>
  ));
}

function Tag({ spot: { id, of, tag, xPx, yPx }, verdict }: { spot: TagSpot; verdict: ElementVerdict["verdict"] }) {
  const colour = verdict === "does not work" ? ink.rust : of === "post" ? ink.prussian : ink.ink;
  return (
    <g data-of={id}>
      <Hexagon tag={tag} xPx={xPx} yPx={yPx} colour={colour} unchecked={verdict === "not checked"} />
    </g>
  );
}
