import type { Operation, Scheme } from "@cornerway/schema";
import { Command } from "../controls/Command.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { listOf } from "../wording/list-of.ts";
import { namesIn } from "../wording/name-of.ts";
import { Adding } from "./adding/Adding.tsx";

export interface SeveralSlipProps {
  scheme: Scheme;
  ids: readonly string[];
  asleepBecause?: string | undefined;
  onDraw: (operations: Operation[]) => void;
  onRemove: () => void;
}

const mostNamed = 12;

/** Several things chosen: what they are, and what is done with all of them together. */
export function SeveralSlip({ scheme, ids, asleepBecause, onDraw, onRemove }: SeveralSlipProps) {
  const names = ids.map(namesIn(scheme));
  const more = names.length - mostNamed;
  return (
    <Slip label={`${ids.length} things chosen`}>
      <p>{more > 0 ? `${names.slice(0, mostNamed).join(", ")} and ${more} more` : listOf(names)}</p>
      <p className="lettered several-keys">Arrows and dragging move them together.</p>
      <Command quiet shortcut="Del" asleepBecause={asleepBecause} onPress={onRemove}>
        {`Take these ${ids.length} away`}
      </Command>
      {asleepBecause === undefined ? (
        <Adding scheme={scheme} ids={ids} onDraw={onDraw} onBeamByHand={() => undefined} />
      ) : null}
    </Slip>
  );
}
