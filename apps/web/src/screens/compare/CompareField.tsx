import type { Pair, Revision, Scheme } from "@cornerway/schema";
import type { ViewClouds } from "../../drawing/compare/cloud-layer.tsx";
import type { LaidViews } from "../../paper/lay-views.ts";
import type { Eye } from "../../paper/use-eye.ts";
import type { FieldPlace } from "../../sheet/contract.ts";
import { ChangeTable } from "./ChangeTable.tsx";
import { ComparePaper } from "./ComparePaper.tsx";
import { ScaleSlider } from "./ScaleSlider.tsx";
import type { NumberedLine } from "./use-clouds.ts";
import type { Compared } from "./use-compared.ts";
import { WholeTable } from "./WholeTable.tsx";

interface CompareFieldProps {
  place: FieldPlace;
  /** Null until the field is measured. */
  views: LaidViews | null;
  revisions: Pair<Revision>;
  schemes: Pair<Scheme>;
  letters: Pair<string>;
  revisionLetters: readonly string[];
  eye: Eye;
  compared: Compared;
  numbered: readonly NumberedLine[];
  marks: ViewClouds;
  /** How much of the later one is drawn by the slider, and how much is seen now. */
  share: number;
  seenShare: number;
  onShare: (share: number) => void;
  asTable: boolean;
  onDrawing: () => void;
  chosenId: string | null;
  chosenNumber: number | null;
  onChoose: (id: string | null) => void;
}

/** The field of sheet 4: one revision over the other with the slider between them, or the same as a table. */
export function CompareField(props: CompareFieldProps) {
  const { place, views, revisions, letters, compared, eye, asTable } = props;
  const { before, after } = revisions;
  if (asTable) return <ChangeTable {...{ letters, compared }} numbered={props.numbered} onClose={props.onDrawing} />;
  return (
    <>
      {views === null ? null : (
        <ComparePaper
          {...{ field: place, views, letters, schemes: props.schemes, marks: props.marks }}
          assessments={{ before: before.result, after: after.result }}
          side={eye.side}
          storey={eye.storey}
          share={props.seenShare}
          revisionLetters={props.revisionLetters}
          chosenId={props.chosenId}
          chosenNumber={props.chosenNumber}
          onChoose={props.onChoose}
          onSide={eye.turnTo}
        />
      )}
      <section className="compare-panel" aria-label="The two revisions">
        <ScaleSlider letters={letters} share={props.share} onShare={props.onShare} />
        <WholeTable letters={letters} whole={compared.whole} />
      </section>
    </>
  );
}
