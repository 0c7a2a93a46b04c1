import { memo } from "react";
import { pencilFill } from "../../look/hatch.ts";
import { ink } from "../../look/ink.ts";
import { px } from "../px-path.ts";

/** A person 1.75 m tall in pencil, standing at a px on the ground. */
export const ScaleFigure = memo(function ScaleFigure({
  xPx,
  groundPx,
  pxPerM,
  tallM = 1.75,
}: {
  xPx: number;
  groundPx: number;
  pxPerM: number;
  tallM?: number;
}) {
  const tall = tallM * pxPerM;
  const head = tall * 0.075;
  const y = (share: number) => px(groundPx - tall * share);
  const x = (share: number) => px(xPx + tall * share);
  const body =
    `M${x(-0.1)} ${y(0.76)}C${x(-0.1)} ${y(0.84)} ${x(0.1)} ${y(0.84)} ${x(0.1)} ${y(0.76)}` +
    `L${x(0.115)} ${y(0.5)}L${x(0.075)} ${y(0.47)}L${x(0.07)} ${y(0)}H${x(0.012)}L${x(0)} ${y(0.42)}L${x(-0.012)} ${y(0)}H${x(-0.07)}L${x(-0.075)} ${y(0.47)}L${x(-0.115)} ${y(0.5)}Z`;
  return (
    <g aria-hidden="true" fill={ink.paper} stroke={ink.graphite} strokeWidth={0.75} strokeLinejoin="round">
      <circle cx={px(xPx)} cy={y(0.93)} r={px(head)} />
      <path d={body} />
      <path d={body} fill={pencilFill.open} stroke="none" />
    </g>
  );
});

/** A tree in pencil: a trunk that forks and a crown of short arcs. */
export const PencilTree = memo(function PencilTree({
  xPx,
  groundPx,
  pxPerM,
  tallM = 4.6,
}: {
  xPx: number;
  groundPx: number;
  pxPerM: number;
  tallM?: number;
}) {
  const tall = tallM * pxPerM;
  const at = (u: number, v: number) => `${px(xPx + u * tall)} ${px(groundPx - v * tall)}`;
  const trunk =
    `M${at(-0.022, 0)}C${at(-0.012, 0.2)} ${at(-0.014, 0.3)} ${at(-0.02, 0.42)}M${at(0.022, 0)}C${at(0.014, 0.2)} ${at(0.016, 0.3)} ${at(0.02, 0.4)}` +
    `M${at(-0.02, 0.42)}L${at(-0.17, 0.66)}M${at(-0.012, 0.44)}L${at(-0.05, 0.78)}M${at(0.012, 0.42)}L${at(0.07, 0.76)}M${at(0.02, 0.4)}L${at(0.18, 0.62)}`;
  return (
    <g aria-hidden="true" fill="none" stroke={ink.graphite} strokeWidth={0.7} strokeLinecap="round" opacity={0.62}>
      <path d={trunk} />
      <path d={crown.map(([u, v, r, from, to]) => arc(at, u, v, r, from, to)).join("")} />
    </g>
  );
});

/** Arcs of the crown: centre across and up, radius (shares of the tree's height), from and to in turns. */
const crown: readonly (readonly [number, number, number, number, number])[] = [
  [-0.2, 0.56, 0.075, 0.32, 0.95],
  [-0.24, 0.68, 0.07, 0.25, 0.8],
  [-0.16, 0.8, 0.08, 0.2, 0.72],
  [-0.04, 0.89, 0.085, 0.08, 0.55],
  [0.09, 0.86, 0.08, -0.02, 0.42],
  [0.19, 0.76, 0.075, -0.1, 0.35],
  [0.23, 0.63, 0.075, -0.25, 0.22],
  [0.16, 0.52, 0.07, -0.4, 0.08],
  [-0.1, 0.66, 0.05, 0.1, 0.48],
  [0.02, 0.74, 0.055, 0.05, 0.45],
  [0.1, 0.64, 0.05, 0, 0.4],
  [-0.08, 0.78, 0.04, 0.1, 0.5],
  [-0.14, 0.52, 0.06, 0.5, 0.95],
  [0.05, 0.56, 0.045, -0.45, -0.05],
];

function arc(
  at: (u: number, v: number) => string,
  u: number,
  v: number,
  radius: number,
  from: number,
  to: number,
): string {
  const points = Array.from({ length: 9 }, (_, step) => {
    const turn = (from + ((to - from) * step) / 8) * 2 * Math.PI;
    const wobble = 1 + 0.1 * Math.sin(step * 2.4 + u * 40);
    return at(u + Math.cos(turn) * radius * wobble, v + Math.sin(turn) * radius * wobble * 0.9);
  });
  return `M${points.join("L")}`;
}
