import { pickedOf, type OptionSetNow } from "@cornerway/schema";
import { useMemo } from "react";
import { useOptionsDrawn } from "../../data/option-set.ts";
import type { Side } from "../../drawing/contract.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { OfDraft } from "./OfDraft.tsx";
import { OptionItem } from "./OptionItem.tsx";
import { scaleOf } from "./option-scale.ts";

/** Alternatives side by side at one scale, and which of them was picked. */
export function OptionSetSection({ set, side }: { set: OptionSetNow; side: Side }) {
  const { project, draft } = useRoom();
  const ids = useMemo(() => set.options.map(({ id }) => id), [set.options]);
  const drawn = useOptionsDrawn(project.id, set.id, ids);
  const pxPerM = scaleOf([...drawn.values()], side);
  const picked = pickedOf(set);
  const heading = `${set.number} · ${set.name}`;
  return (
    <section className="option-set" aria-label={heading}>
      <h2>{heading}</h2>
      {set.options.length === 0 ? <p>No alternative is kept yet.</p> : null}
      <ol className="option-row">
        {set.options.map((option) => (
          <OptionItem
            key={option.id}
            {...{ setId: set.id, option, side, pxPerM }}
            scheme={drawn.get(option.id)}
            picked={picked?.optionId === option.id ? picked : undefined}
          />
        ))}
      </ol>
      {draft === null || whyNot(project, "keep-options") !== undefined ? null : (
        <OfDraft store={draft} set={set} drawn={drawn} />
      )}
    </section>
  );
}
