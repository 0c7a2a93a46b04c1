import type { Detail } from "@cornerway/engine";
import { useUnits } from "../../units/use-units.ts";
import { ViewTitle } from "../ViewTitle.tsx";
import { DetailDrawing } from "./DetailDrawing.tsx";
import { fittedDetails, type DetailRoomPx } from "./fit-details.ts";

/** The details of one element side by side, each with its own title and scale. Only looked at. */
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
  return (
    <g className="details">
      {fittedDetails(details, room).map(({ detail, view, leftPx, footPx, scale }, at) => (
        <g key={detail.subject} role="img" aria-label={titleOf(detail)}>
          <DetailDrawing detail={detail} view={view} units={units} />
          <ViewTitle
            number={firstNumber + at}
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
  subject === "seat" || subject === "pad" ? `${subject} ${tag}` : subject.replace(/ of (post|opening)$/, ` of ${tag}`);
