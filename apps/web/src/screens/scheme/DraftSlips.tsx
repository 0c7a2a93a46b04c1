import { lazy, Suspense, useEffect } from "react";
import type { DraftSnapshot, DraftStore } from "../../data/draft/draft-store.ts";
import { Command } from "../../controls/Command.tsx";
import type { Hand } from "../../hand/use-hand.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { Slip } from "../../sheet/Slip.tsx";
import {
  ChosenSlip,
  NewBeamSlip,
  NewOpeningSlip,
  NewPostSlip,
  NewUnitSlip,
  OpenWallSlip,
  RemoveSlip,
  SeveralSlip,
} from "./twin-slips.ts";
import { CutOffSlip } from "./CutOffSlip.tsx";
import type { useDraftActs } from "./use-draft-acts.ts";

const AskedSlip = lazy(async () => ({ default: (await import("./AskedSlip.tsx")).AskedSlip }));
const ConflictSlip = lazy(async () => ({ default: (await import("./ConflictSlip.tsx")).ConflictSlip }));

export interface DraftSlipsProps {
  store: DraftStore;
  draft: DraftSnapshot;
  hand: Hand;
  acts: ReturnType<typeof useDraftActs>;
  /** What the engine said when it broke. */
  broke: string | null;
  /** What stands on what would go. */
  standing: readonly string[];
  /** What the edit under way would undo. */
  undoes: string | null;
}

/** What is laid first in the margin of the draft: what asks for an answer, then what is in hand or chosen. */
export function DraftSlips({ store, draft, hand, acts, broke, standing, undoes }: DraftSlipsProps) {
  const { project } = useRoom();
  const asleepBecause = whyNot(project, "draw");
  const trouble = acts.cannot ?? draft.refused;
  return (
    <>
      <CutOffSlip store={store} draft={draft} />
      <Suspense fallback={null}>
        <AskedSlip />
        {draft.conflicts.map((conflict) => (
          <ConflictSlip
            key={conflict.act.id}
            conflict={conflict}
            scheme={draft.scheme}
            onAnswer={(answer) => store.answerConflict(conflict.act.id, answer)}
          />
        ))}
      </Suspense>
      {trouble === null ? null : (
        <CannotSlip
          why={trouble}
          onAway={() => (acts.cannot === null ? store.dismissRefusal() : acts.setCannot(null))}
        />
      )}
      {broke === null ? null : (
        <Slip label="!">
          <p>The engine stopped on this scheme, so nothing is checked. The drawing is safe: {broke}</p>
          <Command onPress={() => acts.undo()}>Take the last move back</Command>
        </Slip>
      )}
      <Suspense fallback={null}>
        {asleepBecause === undefined ? <InHand draft={draft} hand={hand} /> : null}
        {hand.going === null ? null : (
          <RemoveSlip
            scheme={draft.scheme}
            ids={hand.going}
            standing={standing}
            undoes={undoes}
            onRemove={() => hand.remove(hand.going ?? [])}
            onKeep={() => hand.setGoing(null)}
          />
        )}
        {leavesChosen.has(hand.tool) && hand.held?.kind !== "beam" && hand.going === null ? (
          <Chosen draft={draft} hand={hand} asleepBecause={asleepBecause} />
        ) : null}
      </Suspense>
    </>
  );
}

/** With these in hand what was last shifted or turned stays chosen, and its typed twin beside it. */
const leavesChosen: ReadonlySet<Hand["tool"]> = new Set([null, "shift", "turn"]);

function Chosen({
  draft,
  hand,
  asleepBecause,
}: Pick<DraftSlipsProps, "draft" | "hand"> & { asleepBecause: string | undefined }) {
  const shared = {
    scheme: moving(hand) ? hand.shown : draft.scheme,
    asleepBecause,
    onDraw: hand.finish,
    onRemove: () => hand.remove(),
  };
  if (hand.chosenIds.length > 1) return <SeveralSlip {...shared} ids={hand.chosenIds} />;
  if (hand.chosenId === null) return null;
  return (
    <ChosenSlip
      {...shared}
      id={hand.chosenId}
      onBeamByHand={() => hand.hold({ kind: "beam", from: null, operations: [] })}
    />
  );
}

/** While something is moved its numbers move along. */
const moving = ({ held }: Hand) => held !== null && movingKinds.has(held.kind);
const movingKinds: ReadonlySet<string> = new Set(["element", "steps", "group", "edges"]);

function InHand({ draft, hand }: Pick<DraftSlipsProps, "draft" | "hand">) {
  const { tool, held, chosenId } = hand;
  const unit = draft.scheme.containers.find(({ id }) => id === chosenId);
  const draw = (operations: Parameters<Hand["finish"]>[0]) => {
    hand.finish(operations);
    hand.take(null);
  };
  if (held?.kind === "beam") return <NewBeamSlip from={held.from} />;
  if (tool === "stack" && held?.kind === "unit")
    return <NewUnitSlip unit={held.unit} onChange={hand.holdUnit} onSet={hand.setHeldUnit} />;
  if (tool === "cut" && held === null && unit !== undefined)
    return <NewOpeningSlip scheme={draft.scheme} unit={unit} onDraw={draw} />;
  if (tool === "open-wall" && unit !== undefined)
    return <OpenWallSlip scheme={draft.scheme} unit={unit} onDraw={draw} />;
  if (tool === "post") return <NewPostSlip scheme={draft.scheme} unitId={chosenId} onDraw={draw} />;
  return null;
}

/** Says why something would not go; goes away by itself with the next move. */
function CannotSlip({ why, onAway }: { why: string; onAway: () => void }) {
  const { say } = useRoom();
  useEffect(() => say(why), [say, why]);
  return (
    <Slip label="Not drawn">
      <p>{why}</p>
      <Command quiet onPress={onAway}>
        Take the slip away
      </Command>
    </Slip>
  );
}
