import { useMemo } from "react";
import { useUnits } from "../units/use-units.ts";
import type { ViewProps } from "./contract.ts";
import { elementNamer, type ElementNamer } from "./element-namer.ts";
import { elementVerdicts, type ElementVerdict } from "./marks/element-verdicts.ts";

export type ElementWords = {
  answered: ReadonlySet<string>;
  verdicts: ReadonlyMap<string, ElementVerdict>;
  nameOf: ElementNamer;
};

const noneAnswered: ReadonlySet<string> = new Set();
const noNumbers: ReadonlyMap<string, number> = new Map();

/** What a view says of its elements: their verdicts and the names they are read out by. */
export function useElementWords(
  props: Pick<ViewProps, "scheme" | "assessment" | "answeredMarkIds" | "noteNumbers">,
): ElementWords {
  const { scheme, assessment, answeredMarkIds: answered = noneAnswered, noteNumbers = noNumbers } = props;
  const verdicts = useMemo(() => elementVerdicts(assessment, answered), [assessment, answered]);
  const units = useUnits();
  const nameOf = useMemo(
    () => elementNamer(scheme, verdicts, noteNumbers, units),
    [scheme, verdicts, noteNumbers, units],
  );
  return { answered, verdicts, nameOf };
}
