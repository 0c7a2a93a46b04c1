import type { ProjectSummary, Scheme } from "@cornerway/schema";
import { useQueries } from "@tanstack/react-query";
import { fetchRevision, revisionKey } from "../../data/revision.ts";
import { ElevationView } from "../../drawing/elevation/ElevationView.tsx";
import { PencilTree } from "../../drawing/figures/ScaleFigures.tsx";
import { GroundLine } from "../../drawing/ground/GroundLine.tsx";
import { useUnits } from "../../units/use-units.ts";
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

/** All projects that were ever sent, side by side at one scale, as one street. */
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
  const houses = sent.flatMap((project, at) => {
    const scheme = revisions[at]?.data?.scheme;
    return scheme === undefined ? [] : [{ project, scheme }];
  });
  if (houses.length === 0) return null;
  const { placed, pxPerM } = lineUp(houses.map(({ scheme }) => scheme));
  return (
    <section aria-label="The street, all to one scale">
      <svg className="desk-street" viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true">
        <HatchDefs />
        <GroundLine fromPx={0} toPx={widthPx} groundPx={groundPx} />
        {treesBetween(placed, houses, pxPerM).map((xPx) => (
          <PencilTree key={xPx} xPx={xPx} groundPx={groundPx} pxPerM={pxPerM} tallM={4.2} />
        ))}
        <ScaleBar pxPerM={pxPerM} />
        {houses.map(({ project, scheme }, at) => (
          <g key={project.id} data-house={project.id}>
            <ElevationView
              scheme={scheme}
              assessment={null}
              side="south"
              bare
              transform={{ originXPx: placed[at] ?? 0, originYPx: groundPx, pxPerM }}
            />
          </g>
        ))}
      </svg>
      <div className="desk-houses">
        {houses.map(({ project, scheme }, at) => (
          <HouseWords
            key={project.id}
            project={project}
            fromPercent={(100 * ((placed[at] ?? 0) + (extentOf(scheme, "south").uLow / 1000) * pxPerM)) / widthPx}
            onOpen={() => onOpen(project)}
          />
        ))}
      </div>
    </section>
  );
}

type House = { project: ProjectSummary; scheme: Scheme };

/** A tree in every second gap of the street, never more than three. */
const treesBetween = (placed: readonly number[], houses: readonly House[], pxPerM: number): number[] =>
  houses
    .map(({ scheme }, at) => (placed[at] ?? 0) + (extentOf(scheme, "south").uHigh / 1000 + gapM / 2) * pxPerM)
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
      <p className="lettered">
        {project.containers} {project.containers === 1 ? "container" : "containers"} · {project.revision}
      </p>
      <p className={verdictClass(project.verdict)}>
        <VerdictSymbol verdict={project.verdict} sizePx={16} />
        {verdictWords(project.verdict)}
      </p>
      <p className="lettered">{whoseTurn(project)}</p>
    </div>
  );
}

/** Where each building's origin stands so that they follow one another along the street. */
function lineUp(schemes: Scheme[]): { placed: number[]; pxPerM: number } {
  const extents = schemes.map((scheme) => extentOf(scheme, "south"));
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
