import { containerDimensions } from "@cornerway/engine";
import { chartVerdict, elementNames, type Opening, type Operation, type Scheme } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { KeysSlip, type KeyLine } from "../../room/KeysSlip.tsx";
import { MarginFoot } from "../../room/MarginFoot.tsx";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { SheetFrame } from "../../sheet/SheetFrame.tsx";
import type { ChartPlace } from "../../worker/chart-messages.ts";
import { verdictWords } from "../../look/verdict-class.ts";
import { useOpeningChart } from "../../worker/use-opening-chart.ts";
import { requestOf, standingChoice, type ChartChoice } from "./chart-choice.ts";
import { answerAt } from "./chart-regions.ts";
import { ChartMargin } from "./ChartMargin.tsx";
import { ChartPaper } from "./ChartPaper.tsx";
import { ChartTable } from "./ChartTable.tsx";
import { newPlace, useTried } from "./use-tried.ts";
import { useOpeningWays } from "./use-opening-ways.ts";
import { WallStrip } from "./WallStrip.tsx";
import "./openings.css";

const keyLines: readonly KeyLine[] = [
  ["arrows left, right", "move what is tried 10 mm"],
  ["Shift + arrows", "move it 305 mm, a cross-member bay"],
  ["[ ] and arrows up, down", "smaller, larger by 50 mm"],
  ["Enter", "draw what is tried"],
  ["T", "the chart as a table, and back"],
];

type OpeningsOfProps = {
  readonly scheme: Scheme;
  readonly letter: string | null;
  readonly draftMoves: number;
  /** Draws the opening so, or all of a way to settle it as one act; absent where nobody draws. */
  readonly draw?: ((operations: Operation[], tag: string) => void) | undefined;
  readonly drawAsleepBecause?: string | undefined;
};

/** Sheet 2: the opening chart of one wall of one container, traced as one looks. */
export function OpeningsOf({ scheme, letter, draftMoves, draw, drawAsleepBecause }: OpeningsOfProps) {
  const { project, say } = useRoom();
  const [chosen, choose] = useState<ChartChoice | null>(null);
  const [asTable, showTable] = useState(false);
  const [keysShown, showKeys] = useState(false);
  const [pxPerM, setPxPerM] = useState(50);
  const choice = useMemo(() => standingChoice(scheme, chosen), [scheme, chosen]);
  const choiceKey = JSON.stringify(choice);
  const request = useMemo(() => (choice === null ? null : requestOf(scheme, choice)), [scheme, choice]);
  const live = useOpeningChart(scheme, request);
  const names = useMemo(() => elementNames(scheme), [scheme]);
  const tagOf = (id: string): string => names.get(id) ?? (id.startsWith("~") ? "the new opening" : id);
  const opening = scheme.openings.find(({ id }) => id === choice?.openingId);
  const container = scheme.containers.find(({ id }) => id === choice?.containerId);
  const lengthMm =
    container === undefined || choice === null ? 0 : containerDimensions(container.type).face(choice.face).u1;
  const under = scheme.basis.hazards === null ? "gravity loads only" : "all loads";
  const columns = live.so?.columns ?? [];
  const tried = useTried({
    key: `${choiceKey} ${opening?.offsetUm ?? ""} ${opening?.widthUm ?? ""}`,
    from: opening === undefined ? newPlace({ lengthMm }) : placeOf(opening),
    ...{ lengthMm, columns, under, tagOf, say },
  });
  const moved = opening !== undefined && !samePlace(placeOf(opening), tried.place);
  const isBuiltThere = answerAt(columns, tried.place)?.stretch.verdict === "works as built";
  const drawIt =
    moved && draw !== undefined
      ? () =>
          draw(
            [
              {
                kind: "opening.change",
                opening: { ...opening, ...offsetOf(tried.place), framed: opening.framed || !isBuiltThere },
              },
            ],
            opening.tag,
          )
      : undefined;
  const ways = useOpeningWays(scheme, opening?.id ?? null, {
    onTake: draw && ((operations) => draw(operations, opening?.tag ?? "")),
    asleepBecause: drawAsleepBecause,
  });
  useSheetKeys({
    ...tried.keys,
    t: () => showTable(!asTable),
    ...(drawIt && drawAsleepBecause === undefined && { Enter: drawIt }),
    "?": () => showKeys(!keysShown),
    Escape: () =>
      keysShown ? showKeys(false) : tried.set(opening === undefined ? newPlace({ lengthMm }) : placeOf(opening)),
  });
  const name = `${container?.tag ?? "–"}, ${choice?.face ?? ""} side${opening === undefined ? "" : `, ${opening.tag}`}`;
  const found = answerAt(columns, opening === undefined ? tried.place : placeOf(opening));
  const verdict = found === null ? "not checked" : chartVerdict(found.stretch.verdict, under);
  return (
    <SheetFrame
      title={`Sheet 2, Openings, ${project.name}`}
      spine={<RoomSpine draftMoves={draftMoves} currentLetter={letter} />}
      levels={choice === null ? null : <WallStrip scheme={scheme} choice={choice} onChoose={choose} />}
      field={(place) => (
        <>
          {choice === null ? (
            <section className="no-openings">
              <h2>No container stands here yet</h2>
              <p>The chart of openings stands on a wall. Set the first container on sheet 1.</p>
            </section>
          ) : (
            <ChartPaper
              {...{ scheme, place, live, under, tagOf, name, opening, asTable }}
              request={request}
              onScale={setPxPerM}
              tried={tried.place}
              onTry={tried.set}
              table={<ChartTable {...{ columns, under, tagOf }} caption={`Opening chart of ${name}`} />}
            />
          )}
          <div className="chart-tools">
            <Command quiet shortcut="T" onPress={() => showTable(!asTable)}>
              {asTable ? "As a drawing" : "As a table"}
            </Command>
          </div>
          {keysShown ? <KeysSlip lines={keyLines} onClose={() => showKeys(false)} /> : null}
        </>
      )}
      margin={
        choice === null ? undefined : (
          <ChartMargin
            {...{ live, columns, under, name, tagOf }}
            ways={verdict.startsWith("works") ? { ...ways, offer: undefined } : ways}
            tried={tried.place}
            onTry={tried.set}
            footer={<MarginFoot pxPerM={pxPerM} onKeys={() => showKeys(true)} />}
            draw={
              drawIt === undefined
                ? null
                : { label: `Draw ${opening?.tag ?? ""} so`, onPress: drawIt, asleepBecause: drawAsleepBecause }
            }
          />
        )
      }
      titleBlock={
        <RoomTitleBlock
          sheet={2}
          scale="as noted"
          revision={letter}
          verdict={verdict}
          verdictLine={found === null ? "Not traced yet" : verdictWords(verdict)}
          remark={found !== null && under === "gravity loads only" ? "gravity alone" : undefined}
        />
      }
    />
  );
}

const placeOf = ({ offsetUm, widthUm }: Opening): ChartPlace => ({
  centreMm: (offsetUm + widthUm / 2) / 1000,
  widthMm: widthUm / 1000,
});

const offsetOf = ({ centreMm, widthMm }: ChartPlace): Pick<Opening, "offsetUm" | "widthUm"> => ({
  offsetUm: Math.round((centreMm - widthMm / 2) * 1000),
  widthUm: Math.round(widthMm * 1000),
});

const samePlace = (a: ChartPlace, b: ChartPlace): boolean => a.centreMm === b.centreMm && a.widthMm === b.widthMm;
