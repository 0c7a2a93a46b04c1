import type { ProjectSummary, Scheme } from "@cornerway/schema";
import { useQueries } from "@tanstack/react-query";
import { fetchRevision, revisionKey } from "../../data/revision.ts";
import { ElevationView } from "../../drawing/elevation/ElevationView.tsx";
import { PencilTree } from "../../drawing/figures/ScaleFigures.tsx";
import { GroundLine } from "../../drawing/ground/GroundLine.tsx";
import { rectPath } from "../../drawing/px-path.ts";
import type { ViewTransform } from "../../drawing/view-transform.ts";
import { useUnits } from "../../units/use-units.ts";
import { dash, ink } from "../../look/ink.ts";
import { HatchDefs } from "../../look/HatchDefs.tsx";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";
import { extentOf } from "../../paper/lay-views.ts";
import { whoseTurn } from "../../wording/whose-turn.ts";

const heightPx = 290;
const groundPx = 262;
const gapM = 5;
const mostPxPerM = 26;
const widthPx = 1240;

/** All projects side by side at one scale, as one street: those that were sent as built up, the others as plots still free. */
export function Street({
  projects,
  onOpen,
}: {
  projects: ProjectSummary[];
  onOpen: (project: ProjectSummary) => void;
}) {
  const sent = projects.filter((project) => project.revision !== null);
  const revisions = useQueries({
    queries: sent.map(({ id, revision }) => ({
      queryKey: revisionKey(id, revision ?? ""),
      queryFn: () => fetchRevision(id, revision ?? ""),
    })),
  });
  const schemes = new Map(sent.map(({ id }, at) => [id, revisions[at]?.data?.scheme]));
  const houses = projects.flatMap((project): House[] => {
    if (project.revision === null) return [{ project, scheme: null, extent: plotExtent }];
    const scheme = schemes.get(project.id);
    return scheme === undefined ? [] : [{ project, scheme, extent: extentOf(scheme, "south") }];
  });
  if (houses.every(({ scheme }) => scheme === null)) return null;
  const { placed, pxPerM } = lineUp(houses.map(({ extent }) => extent));
  return (
    <section aria-label="The street, all to one scale">
      <svg className="desk-street" viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true">
        <HatchDefs />
        <GroundLine fromPx={0} toPx={widthPx} groundPx={groundPx} />
        {treesBetween(placed, houses, pxPerM).map((xPx) => (
          <PencilTree key={xPx} xPx={xPx} groundPx={groundPx} pxPerM={pxPerM} tallM={4.2} />
        ))}
        <ScaleBar pxPerM={pxPerM} />
        {houses.map(({ project, scheme }, at) => {
          const transform = { originXPx: placed[at] ?? 0, originYPx: groundPx, pxPerM };
          return (
            <g key={project.id} data-house={project.id}>
              {scheme === null ? (
                <FreePlot {...transform} />
              ) : (
                <ElevationView scheme={scheme} assessment={null} side="south" bare transform={transform} />
              )}
            </g>
          );
        })}
      </svg>
      <div className="desk-houses">
        {houses.map(({ project, extent }, at) => (
          <HouseWords
            key={project.id}
            project={project}
            fromPercent={(100 * ((placed[at] ?? 0) + (extent.uLow / 1000) * pxPerM)) / widthPx}
            onOpen={() => onOpen(project)}
          />
        ))}
      </div>
    </section>
  );
}

type Extent = ReturnType<typeof extentOf>;
/** A project and what it takes of the street; no scheme where none was sent yet. */
type House = { project: ProjectSummary; scheme: Scheme | null; extent: Extent };

/** A plot is as wide and high as one 20 ft unit (ISO 668: 6.058 × 2.896 m). */
const plotExtent: Extent = { uLow: -3029, uHigh: 3029, vLow: 0, vHigh: 2896 };

/** A plot on which nothing was sent yet: where a first unit could stand, dashed in pencil. */
function FreePlot({ originXPx, originYPx, pxPerM }: ViewTransform) {
  const widthPlotPx = ((plotExtent.uHigh - plotExtent.uLow) / 1000) * pxPerM;
  const tallPx = (plotExtent.vHigh / 1000) * pxPerM;
  const rect = { xPx: originXPx - widthPlotPx / 2, yPx: originYPx - tallPx, widthPx: widthPlotPx, heightPx: tallPx };
  return (
    <path d={rectPath(rect)} fill="none" stroke={ink.graphite} strokeWidth={1.1} strokeDasharray={dash.proposed} />
  );
}

/** A tree in every second gap of the street, never more than three. */
const treesBetween = (placed: readonly number[], houses: readonly House[], pxPerM: number): number[] =>
  houses
    .map(({ extent }, at) => (placed[at] ?? 0) + (extent.uHigh / 1000 + gapM / 2) * pxPerM)
    .filter((xPx, at) => at % 2 === 0 && xPx < widthPx - 20)
    .slice(0, 3);

const metresPerFoot = 0.3048;

/** The scale of the street, top right: two lengths of five metres, or of ten where the street is long; in feet double. */
function ScaleBar({ pxPerM }: { pxPerM: number }) {
  const units = useUnits();
  const isLong = 10 * pxPerM <= widthPx / 8;
  const [figure, unit] = units === "US" ? [isLong ? 40 : 20, "ft"] : [isLong ? 10 : 5, "m"];
  const stepM = units === "US" ? figure * metresPerFoot : figure;
  const fromPx = widthPx - 2 * stepM * pxPerM - 24;
  return (
    <g
      className="street-scale"
      transform={`translate(${fromPx} 34)`}
      fontSize={11}
      fill="var(--graphite)"
      textAnchor="middle"
    >
      <text x={0} y={-24} fontSize={9.5} letterSpacing="0.08em" textAnchor="start">
        THE STREET, ALL TO ONE SCALE
      </text>
      {[0, 1, 2].map((step) => (
        <text key={step} x={step * stepM * pxPerM} y={-6}>
          {step * figure}
          {step === 2 ? ` ${unit}` : ""}
        </text>
      ))}
      <rect width={stepM * pxPerM} height={4} fill="var(--ink)" stroke="var(--ink)" />
      <rect x={stepM * pxPerM} width={stepM * pxPerM} height={4} fill="var(--slip)" stroke="var(--ink)" />
    </g>
  );
}

function HouseWords({
  project,
  fromPercent,
  onOpen,
}: {
  project: ProjectSummary;
  fromPercent: number;
  onOpen: () => void;
}) {
  return (
    <div className="desk-house" style={{ left: `${fromPercent}%` }}>
      <button type="button" className="desk-open" onClick={onOpen}>
        {project.name}
      </button>
      {project.revision === null ? (
        <p className="lettered">nothing was sent yet</p>
      ) : (
        <>
          <p className="lettered">
            {project.containers} {project.containers === 1 ? "container" : "containers"} · {project.revision}
          </p>
          <p className={verdictClass(project.verdict)}>
            <VerdictSymbol verdict={project.verdict} sizePx={16} />
            {verdictWords(project.verdict)}
          </p>
        </>
      )}
      <p className="lettered">{whoseTurn(project)}</p>
    </div>
  );
}

/** Where each building's origin stands so that they follow one another along the street. */
function lineUp(extents: readonly Extent[]): { placed: number[]; pxPerM: number } {
  const widthsM = extents.map(({ uLow, uHigh }) => (uHigh - uLow) / 1000);
  const tallestM = Math.max(...extents.map(({ vHigh }) => vHigh / 1000));
  const wholeM = widthsM.reduce((sum, width) => sum + width, 0) + gapM * (widthsM.length + 1);
  const pxPerM = Math.min(mostPxPerM, widthPx / wholeM, (groundPx - 20) / tallestM);
  let fromM = gapM;
  const placed = extents.map(({ uLow }, at) => {
    const originXPx = (fromM - uLow / 1000) * pxPerM;
    fromM += (widthsM[at] ?? 0) + gapM;
    return originXPx;
  });
  return { placed, pxPerM };
}
