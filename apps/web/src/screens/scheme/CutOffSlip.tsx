import type { DraftSnapshot, DraftStore } from "../../data/draft/draft-store.ts";
import { Command } from "../../controls/Command.tsx";
import { useRoom } from "../../room/room-context.ts";
import "./cut-off.css";

const clock = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });

/** The line is down: since when, how many moves are kept here, that others do not see them. */
export function CutOffSlip({ store, draft }: { store: DraftStore; draft: DraftSnapshot }) {
  const { lineDownSince } = useRoom();
  const since = draft.cutOffSince ?? lineDownSince;
  if (since === null) return null;
  const kept = draft.pending.length;
  return (
    <section className="cut-off" aria-label="Kept on this page" role="status">
      <p className="caption">Kept on this page</p>
      <p>
        The line to the office dropped at {clock.format(new Date(since))}. {keptSentence(kept)}
      </p>
      <Command onPress={() => store.retry()}>Try the line now</Command>
    </section>
  );
}

const keptSentence = (kept: number) =>
  kept === 0
    ? "What others draw does not arrive here yet."
    : `${kept === 1 ? "One move is" : `${kept} moves are`} kept here and sent when it is back. Others do not see ${kept === 1 ? "it" : "them"} yet. Closing this page loses ${kept === 1 ? "it" : "them"}.`;
