import type { Detail } from "@cornerway/engine";
import { useState } from "react";
import { PaperButton } from "../../paper/PaperButton.tsx";
import { useUnits } from "../../units/use-units.ts";
import { ViewTitle } from "../ViewTitle.tsx";
import { DetailDrawing } from "./DetailDrawing.tsx";
import { detailsTogether, fittedDetails, type DetailRoomPx } from "./fit-details.ts";

/** The details of one element side by side, each with its own title and scale; where there is no room for all, the next on request. */
export function DetailsView({
  details,
  room,
  firstNumber,
}: {
  details: readonly Detail[];
  room: DetailRoomPx;
  /** The number the first of them bears among the views of the sheet. */
  firstNumber: number;
}) {
  const units = useUnits();
  const [first, setFirst] = useState(0);
  const from = (at: number) => details.slice(at, at + detailsTogether(details.slice(at), room));
  const shown = from(first);
  const next = first + shown.length < details.length ? first + shown.length : 0;
  const place = `${first + shown.length} of ${details.length}`;
  return (
    <g className="details">
      {details.length === shown.length ? null : (
        <PaperButton
          xPx={room.leftPx + room.widthPx - 134}
          yPx={room.topPx + 18}
          label={place}
          spoken={`Next details: ${from(next).map(titleOf).join(", ")}; now ${place}`}
          onPress={() => setFirst(next)}
        />
      )}
      {fittedDetails(shown, room).map(({ detail, view, leftPx, footPx, scale }, at) => (
        <g key={detail.subject} role="img" aria-label={titleOf(detail)}>
          <DetailDrawing detail={detail} view={view} units={units} />
          <ViewTitle
            number={firstNumber + first + at}
            title={titleOf(detail)}
            remark={isStated(detail) ? `${scale} · stated, not drawn` : scale}
            xPx={leftPx + 26}
            yPx={footPx - 24}
          />
        </g>
      ))}
    </g>
  );
}

/** Plates, welds and anchors are those the checks state, since no scheme draws them. */
const isStated = ({ welds }: Detail): boolean => welds.length > 0;

const titleOf = ({ subject, tag }: Detail): string =>
  / (post|opening|seat)$/.test(subject) ? subject.replace(/(post|opening|seat)$/, tag) : `${subject} ${tag}`;
