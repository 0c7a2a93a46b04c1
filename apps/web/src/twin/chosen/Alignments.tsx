import { alignments } from "@cornerway/engine";
import type { Container, Operation, Scheme } from "@cornerway/schema";
import { useDeferredValue, useMemo } from "react";
import { Command } from "../../controls/Command.tsx";
import { alignUnit } from "../../tools/align-unit.ts";
import { useUnits } from "../../units/use-units.ts";
import { alignmentSentence } from "../../wording/alignment-sentence.ts";
import { namesIn } from "../../wording/name-of.ts";

interface AlignmentsProps {
  scheme: Scheme;
  unit: Container;
  onDraw: (operations: Operation[]) => void;
}

const mostListed = 4;
/** A unit is where an alignment would have it when it is this near, mm. */
const thereMm = 1;

/** Where the corners of a unit would land on fittings below it, each a press away. */
export default function Alignments({ scheme, unit, onDraw }: AlignmentsProps) {
  const units = useUnits();
  const calm = useDeferredValue(scheme);
  const found = useMemo(() => alignments(calm, unit.id), [calm, unit.id]);
  const nameOf = namesIn(scheme);
  const elsewhere = found.filter(({ dxMm, dyMm, gap }) => gap !== undefined || Math.hypot(dxMm, dyMm) > thereMm);
  if (elsewhere.length === 0) return null;
  return (
    <details className="alignments">
      <summary>{`${elsewhere.length} ${elsewhere.length === 1 ? "place" : "places"} where fittings land on fittings`}</summary>
      <ul>
        {elsewhere.slice(0, mostListed).map((alignment) => {
          const words = alignmentSentence(alignment, nameOf, units);
          return (
            <li key={words}>
              <Command quiet onPress={() => onDraw(alignUnit(scheme, unit, alignment))}>
                {words}
              </Command>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
