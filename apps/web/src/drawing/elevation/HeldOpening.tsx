import { containerDimensions, faceFrame, placeContainer, pointOnFace, type PaperRect } from "@cornerway/engine";
import type { Container, Opening } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { useUnits } from "../../units/use-units.ts";
import type { Side } from "../contract.ts";
import { DimensionLines } from "../dimension/DimensionLines.tsx";
import { dimensionString, together } from "../dimension/strings.ts";
import { placeLabels } from "../label/place-labels.ts";
import { Lettering } from "../label/Lettering.tsx";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { project, type ViewTransform } from "../view-transform.ts";
import { OpeningDrawing } from "./OpeningDrawing.tsx";

type HeldOpeningProps = { opening: Opening; unit: Container; side: Side; view: ViewTransform };

/** Px from an edge of the opening out to the string along it. */
const stringOffPx = 14;

/** An opening in hand, with how wide and high it is and how far it lies from the ends of its wall. */
export function HeldOpening({ opening, unit, side, view }: HeldOpeningProps) {
  const units = useUnits();
  const { cut, wall } = rectsOnPaper(opening, unit, side);
  const rect = rectToPx(view, cut);
  const strings = together([
    dimensionString([wall.u0Mm, cut.u0Mm, cut.u1Mm, wall.u1Mm], {
      ...{ key: "along", units, atPx: rect.yPx - stringOffPx, toPx: (atMm: number) => xToPx(view, atMm) },
    }),
    dimensionString([wall.z0Mm, cut.z0Mm, cut.z1Mm, wall.z1Mm], {
      ...{ key: "up", units, upright: true, toPx: (atMm: number) => yToPx(view, atMm) },
      atPx: rect.xPx + rect.widthPx + stringOffPx,
    }),
  ]);
  return (
    <g className="held-opening" aria-hidden="true" pointerEvents="none">
      <OpeningDrawing use={opening.use} rect={rect} pen={{ line: ink.ink, fill: ink.slip }} />
      <DimensionLines lines={strings.lines} />
      {placeLabels(strings.labels, []).map(({ key, text, spot, sizePx, colour, fontWeight }) => (
        <Lettering key={key} text={text} spot={spot} sizePx={sizePx} colour={colour} fontWeight={fontWeight} />
      ))}
    </g>
  );
}

/** The opening and the face it is cut in, from outer edge to outer edge, as the side shows them. */
function rectsOnPaper({ face, ...opening }: Opening, unit: Container, side: Side): { cut: PaperRect; wall: PaperRect } {
  const frame = faceFrame(placeContainer(unit), face);
  const onPaper = (u0Mm: number, v0Mm: number, u1Mm: number, v1Mm: number): PaperRect => {
    const [a, b] = [project(side, pointOnFace(frame, u0Mm, v0Mm)), project(side, pointOnFace(frame, u1Mm, v1Mm))];
    return {
      ...{ u0Mm: Math.min(a.uMm, b.uMm), u1Mm: Math.max(a.uMm, b.uMm) },
      ...{ z0Mm: Math.min(a.vMm, b.vMm), z1Mm: Math.max(a.vMm, b.vMm) },
    };
  };
  const whole = containerDimensions(unit.type).face(face);
  const [u0Mm, v0Mm] = [opening.offsetUm / 1000, opening.sillUm / 1000];
  return {
    cut: onPaper(u0Mm, v0Mm, u0Mm + opening.widthUm / 1000, v0Mm + opening.heightUm / 1000),
    wall: onPaper(whole.u0, whole.v0, whole.u1, whole.v1),
  };
}
