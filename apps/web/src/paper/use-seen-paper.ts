import type { Detail, SectionLine } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { laterPart } from "../controls/later-part.ts";
import { isLifted } from "../hand/lift.ts";
import { layViews, type LaidViews } from "./lay-views.ts";
import type { PaperSheetProps } from "./paper-sheet-props.ts";
import { showsDetails } from "./shows-details.ts";
import type { Field } from "./use-field.ts";
import { useLenses, type LookedAt } from "./use-lenses.ts";
import { useRested } from "./use-rested.ts";

/** Details and sections are of what is chosen or asked for: the first drawing does without. */
const useLookedCloser = laterPart(() => import("./looked-closer.ts"));

export interface SeenPaper {
  field: Field | null;
  /** The views as laid on the field; null before it has been. */
  laid: LaidViews | null;
  /** The same as one looks at them. */
  looking: LookedAt;
  /** The scheme when the hand last rested: what is slow to draw is drawn of it. */
  rested: Scheme;
  /** Of what is chosen. */
  details: readonly Detail[];
  /** True where they stand in the place of the picture. */
  covered: boolean;
  /** The line a section begins with. */
  firstSection: () => SectionLine | null;
}

/** What is seen of a scheme on the field: its views as laid, as looked at more closely, and details of what is chosen. */
export function useSeenPaper(
  { eye, hand, scheme, laidBy }: Pick<PaperSheetProps, "eye" | "hand" | "scheme" | "laidBy">,
  field: Field | null,
): SeenPaper {
  const { side, storey, picture, section, detailed } = eye;
  const { chosenId, held } = hand;
  const laid = useMemo(
    () => (field === null ? null : layViews(field, laidBy, side, storey, { picture, section })),
    [field, laidBy, side, storey, picture, section],
  );
  const looking = useLenses(laid, side);
  const closer = useLookedCloser();
  const rested = useRested(scheme, held !== null && !isLifted(held));
  const details = useMemo(
    () => (chosenId === null || closer === null ? [] : closer.detailsOf(rested, chosenId)),
    [closer, rested, chosenId],
  );
  return {
    ...{ field, laid, looking, rested, details },
    covered: showsDetails({ details, detailed }),
    firstSection: () => closer?.firstLine(scheme, "x", storey) ?? null,
  };
}
