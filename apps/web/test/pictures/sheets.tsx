import { assess, changesOnElevation, changesOnPlan, detailsOf, isometricPlace, storeysOf } from "@cornerway/engine";
import type { ChartColumn, ChartSide, SectionLine } from "@cornerway/engine";
import { applyOperations, compareSchemes, Operation, Scheme, type Mark, type Verdict } from "@cornerway/schema";
import type { ReactElement } from "react";
import quarrySteps from "../../../../shared/demo/quarry-steps.json" with { type: "json" };
import twoPosts from "../../../../shared/demo/two-posts.json" with { type: "json" };
import type { Side } from "../../src/drawing/contract.ts";
import { cloudMarks } from "../../src/drawing/compare/cloud-marks.ts";
import { DetailsView } from "../../src/drawing/details/DetailsView.tsx";
import { ElevationView } from "../../src/drawing/elevation/ElevationView.tsx";
import { ProposedIsometric } from "../../src/drawing/isometric/ProposedIsometric.tsx";
import { IsometricView } from "../../src/drawing/isometric/IsometricView.tsx";
import { PlanView } from "../../src/drawing/plan/PlanView.tsx";
import { SectionView } from "../../src/drawing/section/SectionView.tsx";
import { sides } from "../../src/drawing/sides.ts";
import { layViews } from "../../src/paper/lay-views.ts";
import { firstLine } from "../../src/paper/section-line.ts";
import { UnfoldedPaper } from "../../src/paper/UnfoldedPaper.tsx";
import { ComparePaper } from "../../src/screens/compare/ComparePaper.tsx";
import { ChartField } from "../../src/screens/openings/ChartField.tsx";
import { chartScale } from "../../src/screens/openings/chart-scale.ts";
import { StatusPicture } from "../../src/screens/status/StatusPicture.tsx";
import { Spine } from "../../src/sheet/Spine.tsx";
import { UtilisationBar } from "../../src/working/UtilisationBar.tsx";
import { demoScheme } from "../support/demo-scheme.ts";

/** The drawing field of a sheet at 1440 × 900, px. */
const field = { leftPx: 150, topPx: 16, widthPx: 934, heightPx: 868 };

/** One stored drawing: what is drawn, and what in it comes after the rest. */
export interface StoredSheet {
  name: string;
  drawn: () => ReactElement;
}

const asked = (scheme: Scheme, operations: unknown): Scheme => {
  const applied = applyOperations(scheme, Operation.array().parse(operations));
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
};

const nothing = () => undefined;

/** The field of sheet 1: elevation, plan and the whole seen from the south-east. */
function Field({ scheme, side, storey }: { scheme: Scheme; side: Side; storey: number }) {
  const { elevation, plan, isometric } = layViews(field, scheme, side, storey);
  const shared = { scheme, assessment: assess(scheme), revisionLetters: ["A"] };
  return (
    <svg>
      <IsometricView {...shared} transform={isometric.transform} />
      <PlanView {...shared} transform={plan.transform} storey={storey} />
      <ElevationView {...shared} {...{ side, storey, figures: true, ...levelLines }} transform={elevation.transform} />
    </svg>
  );
}

const levelLines = { levelLinesFromPx: -66, levelLinesToPx: field.widthPx - 24 };

/** What stands in the third place instead. */
function Section({ scheme, line }: { scheme: Scheme; line: SectionLine }) {
  const { isometric } = layViews(field, scheme, "south", 0, { section: line });
  return (
    <svg>
      <SectionView scheme={scheme} line={line} transform={isometric.transform} />
    </svg>
  );
}

function Details({ scheme, of }: { scheme: Scheme; of: string }) {
  const { isometric } = layViews(field, scheme, "south", 0);
  return (
    <svg>
      <DetailsView details={detailsOf(scheme, of)} room={isometric.rect} firstNumber={3} />
    </svg>
  );
}

/** The field of sheet 3 with a request on it. */
function Asked({ scheme, proposed }: { scheme: Scheme; proposed: Scheme }) {
  const { elevation, plan, isometric } = layViews(field, proposed, "south", 0);
  const shared = { scheme, assessment: assess(scheme), revisionLetters: ["A"], proposed };
  return (
    <svg>
      <IsometricView {...shared} transform={isometric.transform} />
      <ProposedIsometric before={scheme} after={proposed} eye={isometricPlace} view={isometric.transform} />
      <PlanView {...shared} transform={plan.transform} storey={0} />
      <ElevationView {...shared} {...{ side: "south", figures: true, ...levelLines }} transform={elevation.transform} />
    </svg>
  );
}

/** The field of sheet 2, of columns written by hand: what the engine makes of them is tested there. */
function Chart({ scheme }: { scheme: Scheme }) {
  const [opening] = scheme.openings;
  if (opening === undefined) throw new RangeError("a demo has one opening at least");
  const others = scheme.openings.filter(
    ({ id, containerId, face }) => id !== opening.id && containerId === opening.containerId && face === opening.face,
  );
  const side: ChartSide = {
    ...{ lengthMm: 12_192, heightMm: 2896, sheet: { u0: 160, u1: 12_032, v0: 180, v1: 2780 }, keepZones: [], others },
    bearings: [{ at: "above", uMm: 3000, elementId: "f1", forceN: 145_000 }],
  };
  const place = { centreMm: 4200, widthMm: 1500 };
  return (
    <ChartField
      {...{ side, columns: writtenColumns, under: "all loads", tried: place, drawn: null, label: "Opening chart" }}
      {...{ widthPx: field.widthPx, heightPx: field.heightPx, sill: { fromMm: 180, toMm: 2380 } }}
      scale={chartScale(side, 3000, field.widthPx, field.heightPx)}
      tagOf={(id) => id.toUpperCase()}
      onTry={nothing}
    />
  );
}

const why = { kind: "within", partId: "g1 jamb", use: 0.5, run: "1.4D" } as const;
/** Works with steel up to a width that rises and falls along the wall, then not; needs the engineer between in four places. */
const writtenColumns: ChartColumn[] = Array.from({ length: 29 }, (_, at): ChartColumn => {
  const steelMm = 600 + 250 * Math.min(at % 8, 8 - (at % 8));
  const engineerMm = at >= 12 && at < 16 ? steelMm + 400 : steelMm;
  const stretch = (fromMm: number, toMm: number, verdict: Verdict) =>
    fromMm === toMm ? [] : [{ fromMm, toMm, verdict, why }];
  return {
    centreMm: 500 + at * 400,
    mostMm: 3000,
    stretches: [
      ...stretch(300, steelMm, "works with steel"),
      ...stretch(steelMm, engineerMm, "needs the engineer"),
      ...stretch(engineerMm, 3000, "does not work"),
    ],
  };
});

/** What sheets 6 and 7 draw: utilisation as a length, and the stitches of the record. */
const Lengths = () => (
  <div>
    {[0.01, 0.5, 0.999, 1, 1.12, 110].map((utilisation) => (
      <UtilisationBar key={utilisation} utilisation={utilisation} />
    ))}
  </div>
);
const Stitches = () => (
  <Spine
    {...{ draftMoves: 3, currentLetter: "B", entriesBefore: 6, entries: 20 }}
    revisions={[
      { letter: "B", date: "19 Feb", entriesSince: 4 },
      { letter: "A", date: "28 Jan", entriesSince: 10 },
    ]}
  />
);

/** The field of sheet 4. */
function Compared({ before, after }: { before: Scheme; after: Scheme }) {
  const views = layViews(field, after, "south", 0);
  const { elements } = compareSchemes(before, after);
  const numberOf = new Map(elements.map(({ id }, at) => [id, at + 1]));
  const seen = {
    elevation: changesOnElevation(elements, before, after, "south"),
    plan: changesOnPlan(elements, before, after, 0),
  };
  return (
    <ComparePaper
      {...{ field, views, schemes: { before, after }, letters: { before: "A", after: "B" }, share: 1 }}
      assessments={{ before: null, after: null }}
      side="south"
      storey={0}
      marks={{
        elevation: cloudMarks(seen.elevation, numberOf, views.elevation.transform, []),
        plan: cloudMarks(seen.plan, numberOf, views.plan.transform, []),
      }}
      revisionLetters={["A", "B"]}
      chosenId={null}
      chosenNumber={null}
      onChoose={nothing}
      onSide={nothing}
    />
  );
}

/** Every sheet of a demo that draws the building, by the name it is stored under. */
export function sheetsOf(demo: string, scheme: Scheme): StoredSheet[] {
  const top = storeysOf(scheme).length - 1;
  const { marks } = assess(scheme);
  const [unit] = scheme.containers;
  const [opening] = scheme.openings;
  const along = firstLine(scheme, "x", 0);
  if (unit === undefined || opening === undefined || along === null) throw new RangeError("a demo has one of each");
  return [
    ...sides.map((side, at) => ({
      name: `${demo}-1-${side}`,
      drawn: () => <Field {...{ scheme, side, storey: Math.min(at, top) }} />,
    })),
    { name: `${demo}-1-section`, drawn: () => <Section scheme={scheme} line={along} /> },
    { name: `${demo}-1-details`, drawn: () => <Details scheme={scheme} of={opening.id} /> },
    { name: `${demo}-1-unfolded`, drawn: () => <Unfolded scheme={scheme} unitId={unit.id} /> },
    { name: `${demo}-2`, drawn: () => <Chart scheme={scheme} /> },
    {
      name: `${demo}-5`,
      drawn: () => <StatusPicture scheme={scheme} assessment={assess(scheme)} inTheWay={numbered(marks)} />,
    },
  ];
}

const numbered = (marks: readonly Mark[]) => marks.slice(0, 3).map((mark) => ({ id: mark.id, mark }));

const Unfolded = ({ scheme, unitId }: { scheme: Scheme; unitId: string }) => (
  <UnfoldedPaper
    {...{ field, scheme, assessment: assess(scheme), unitId, chosenId: null, inHand: false }}
    {...{ noteNumbers: new Map(), answeredMarkIds: new Set() }}
    {...{ onPress: nothing, onMove: nothing, onDrop: nothing, onFocusElement: nothing, onFold: nothing }}
  />
);

/** Two posts under the top unit of the main demo: asked for on sheet 3 with their details, taken in on sheet 4. */
export function sheetsOfRequest(): StoredSheet[] {
  const proposed = asked(demoScheme, twoPosts);
  const [post] = proposed.posts;
  if (post === undefined) throw new RangeError("the request sets posts");
  return [
    { name: "main-3", drawn: () => <Asked scheme={demoScheme} proposed={proposed} /> },
    { name: "main-3-details", drawn: () => <Details scheme={proposed} of={post.id} /> },
    { name: "main-4", drawn: () => <Compared before={demoScheme} after={proposed} /> },
  ];
}

/** What is drawn of no scheme. */
export const sheetsWithout: StoredSheet[] = [
  { name: "6-lengths", drawn: () => <Lengths /> },
  { name: "7-stitches", drawn: () => <Stitches /> },
];

export const quarryStepsScheme: Scheme = Scheme.parse(quarrySteps);
