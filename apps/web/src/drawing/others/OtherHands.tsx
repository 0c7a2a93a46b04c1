import type { PointMm, Scheme } from "@cornerway/schema";
import { Lettering } from "../label/Lettering.tsx";
import { hullOf, boundsOf } from "../objects/px-shapes.ts";
import { polygonPath, px } from "../px-path.ts";
import { project, toScreen, type Projection, type ViewTransform } from "../view-transform.ts";
import { elementCorners } from "./element-corners.ts";
import { pencilOf, type OtherHand } from "./other-hands.ts";

interface OtherHandsProps {
  hands: readonly OtherHand[];
  scheme: Scheme;
  projection: Projection;
  view: ViewTransform;
}

/** What others at this sheet have chosen and where they point, each in their own pencil with their name. */
export const OtherHands = ({ hands, scheme, projection, view }: OtherHandsProps) => {
  const toPx = (at: PointMm) => toScreen(view, project(projection, at));
  return (
    <g className="other-hands" pointerEvents="none" aria-hidden="true">
      {hands.map(({ key, name, role, selected, pointer }) => {
        const corners = selected === null ? [] : elementCorners(scheme, selected).map(toPx);
        const outline = corners.length === 0 ? null : hullOf(corners);
        const colour = pencilOf[role];
        const points = pointer?.projection === projection ? toPx(pointer.at) : null;
        const [called = name] = name.split(" ");
        return (
          <g key={key}>
            {outline === null ? null : <Chosen outline={outline} called={called} colour={colour} />}
            {points === null ? null : <Pencil {...points} called={outline === null ? called : ""} colour={colour} />}
          </g>
        );
      })}
    </g>
  );
};

type Drawn = { called: string; colour: string };

/** A line round the chosen thing, as one rings it in pencil. */
function Chosen({ outline, called, colour }: Drawn & { outline: Parameters<typeof polygonPath>[0] }) {
  const { xPx, yPx } = boundsOf([...outline]);
  return (
    <>
      <path
        d={polygonPath(outline)}
        fill="none"
        stroke={colour}
        strokeWidth={2}
        strokeDasharray="6 3"
        strokeLinejoin="round"
      />
      <Called {...{ called, colour }} xPx={xPx + 2} yPx={yPx - 5} />
    </>
  );
}

/** The point of a pencil laid on the drawing. */
const Pencil = ({ xPx, yPx, called, colour }: Drawn & { xPx: number; yPx: number }) => (
  <>
    <path
      d={`M${px(xPx)} ${px(yPx)}l3.4 -9.6l14 -14l6.2 6.2l-14 14Z M${px(xPx + 3.4)} ${px(yPx - 9.6)}l6.2 6.2`}
      fill="var(--paper)"
      stroke={colour}
      strokeWidth={1.2}
      strokeLinejoin="round"
    />
    <circle cx={px(xPx)} cy={px(yPx)} r={1.3} fill={colour} />
    {called === "" ? null : <Called {...{ called, colour }} xPx={xPx + 26} yPx={yPx - 12} />}
  </>
);

/** Their name, lettered beside what is theirs. */
const Called = ({ xPx, yPx, called, colour }: Drawn & { xPx: number; yPx: number }) => (
  <Lettering text={called} spot={{ xPx, yPx, anchor: "start" }} sizePx={11} colour={colour} fontWeight={600} />
);
