import type { RecordEntry } from "@cornerway/schema";
import { Triangle } from "../../look/Triangle.tsx";
import { PartStrip } from "../../sheet/PartStrip.tsx";

/** The entries one looks for first: what was sent, stamped, printed and issued, each by its sign. */
export function RecordStrip({
  entries,
  onEntry,
}: {
  entries: readonly RecordEntry[];
  onEntry: (number: number) => void;
}) {
  const parts = entries.flatMap(({ number, payload }) => {
    const sign = signOf(payload);
    return sign === null
      ? []
      : [
          {
            id: String(number),
            name: (
              <>
                {sign}
                <small>entry {number}</small>
              </>
            ),
          },
        ];
  });
  return <PartStrip heading="Entries" parts={parts} onChoose={(id) => onEntry(Number(id))} />;
}

function signOf(payload: RecordEntry["payload"]) {
  switch (payload?.kind) {
    case "revision sent":
      return <Triangle letter={payload.letter} sizePx={24} />;
    case "stamp pressed":
      return <span>Stamp {payload.stamp.revision}</span>;
    case "set printed":
      return <span>Set</span>;
    case "issued for seal":
      return <span>Issued</span>;
    default:
      return null;
  }
}
