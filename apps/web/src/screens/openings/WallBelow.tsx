import type { ChartSide } from "@cornerway/engine";
import { linePath, px, rectPath, type RectPx } from "../../drawing/px-path.ts";
import { Hexagon } from "../../look/Hexagon.tsx";
import { ink, weight } from "../../look/ink.ts";
import type { ChartFieldProps } from "./chart-field-props.ts";
import type { ChartScale } from "./chart-scale.ts";

/** The wall in its true proportions under the chart: members that must stay, openings, what is tried. */
export function WallBelow({ side, scale, tried, drawn, sill }: ChartFieldProps) {
  const box = boxIn(scale);
  const whole = box(0, side.lengthMm, 0, side.heightMm);
  const half = tried.widthMm / 2;
  const hole = box(tried.centreMm - half, tried.centreMm + half, sill.fromMm, sill.toMm);
  return (
    <g aria-hidden="true">
      <path d={rectPath(whole)} fill={ink.paper} />
      <Folds side={side} scale={scale} />
      {side.keepZones.map(({ member, u0, u1, v0, v1 }, n) => (
        <path
          key={`${member} ${n}`}
          d={rectPath(box(u0, u1, v0, v1))}
          fill={ink.shade}
          stroke={ink.ink}
          strokeWidth={weight.fine}
        />
      ))}
      <Fittings side={side} scale={scale} />
      {side.others.map((opening) => {
        const { offsetUm, widthUm, sillUm, heightUm, id, tag } = opening;
        const rect = box(offsetUm / 1000, (offsetUm + widthUm) / 1000, sillUm / 1000, (sillUm + heightUm) / 1000);
        return (
          <g key={id}>
            <path d={rectPath(rect)} fill={ink.slip} stroke={ink.ink} strokeWidth={weight.edge} />
            <Hexagon tag={tag} xPx={rect.xPx + rect.widthPx / 2} yPx={rect.yPx + rect.heightPx / 2} />
          </g>
        );
      })}
      <path
        d={rectPath(hole)}
        fill={ink.slip}
        stroke={ink.prussian}
        strokeWidth={weight.profile}
        strokeDasharray="7 4"
      />
      <Hexagon tag={drawn?.opening.tag ?? "new"} xPx={hole.xPx + hole.widthPx / 2} yPx={hole.yPx + hole.heightPx / 2} />
      <path d={rectPath(whole)} fill="none" stroke={ink.ink} strokeWidth={weight.profile} />
    </g>
  );
}

const boxIn =
  (scale: ChartScale) =>
  (u0: number, u1: number, v0: number, v1: number): RectPx => ({
    xPx: scale.xPx(u0),
    yPx: scale.upPx(v1),
    widthPx: (u1 - u0) * scale.pxPerMm,
    heightPx: (v1 - v0) * scale.pxPerMm,
  });

type Wall = { readonly side: ChartSide; readonly scale: ChartScale };

/** Corrugation pitch of a side sheet, mm; common practice, no published source. */
const PITCH_MM = 278;

function Folds({ side: { sheet }, scale }: Wall) {
  const count = Math.floor((sheet.u1 - sheet.u0) / PITCH_MM);
  const lines = Array.from({ length: count }, (_, n) => scale.xPx(sheet.u0 + (n + 0.5) * PITCH_MM));
  return (
    <path
      d={lines.map((x) => linePath(x, scale.upPx(sheet.v1), x, scale.upPx(sheet.v0))).join("")}
      stroke={ink.slate}
      strokeWidth={weight.hair}
      strokeOpacity={0.6}
    />
  );
}

/** Corner fittings seen on a side, mm: ISO 1161, from memory. */
const FITTING = { alongMm: 178, upMm: 118 };

function Fittings({ side: { lengthMm, heightMm }, scale }: Wall) {
  const box = boxIn(scale);
  const corners = [0, lengthMm - FITTING.alongMm].flatMap((u) =>
    [0, heightMm - FITTING.upMm].map((v) => [u, v] as const),
  );
  return corners.map(([u, v]) => {
    const { xPx, yPx, widthPx, heightPx } = box(u, u + FITTING.alongMm, v, v + FITTING.upMm);
    return <rect key={`${u} ${v}`} x={px(xPx)} y={px(yPx)} width={px(widthPx)} height={px(heightPx)} fill={ink.ink} />;
  });
}
