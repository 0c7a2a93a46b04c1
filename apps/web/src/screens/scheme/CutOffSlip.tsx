import type { DraftSnapshot, DraftStore } from "../../data/draft/draft-store.ts";
import { unsentIn } from "../../data/draft/kept.ts";
import { Command } from "../../controls/Command.tsx";
import { useRoom } from "../../room/room-context.ts";
import "./cut-off.css";

const clock = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });

/** The line is down: since when, how many moves are kept here, that others do not see them. */
export function CutOffSlip({ store, draft }: { store: DraftStore; draft: DraftSnapshot }) {
  const { lineDownSince } = useRoom();
  const since = draft.cutOffSince ?? lineDownSince;
  if (since === null) return null;
  const kept = unsentIn(draft);
  return (
    <section className="cut-off" aria-label="Kept on this page" role="status">
      <p className="caption">Kept on this page</p>
      <p>
        The line to the office dropped at {clock.format(new Date(since))}. {keptSentence(kept, draft.keepsNothing)}
      </p>
      <Command onPress={() => store.retry()}>Try the line now</Command>
    </section>
  );
}

function keptSentence(kept: number, keepsNothing: boolean): string {
  if (kept === 0) return "What others draw does not arrive here yet.";
  const [moves, them] = kept === 1 ? ["One move is", "it"] : [`${kept} moves are`, "them"];
  const away = keepsNothing
    ? `This browser keeps nothing: closing the page loses ${them}.`
    : `This page may be closed: they wait in this browser.`.replace("they wait", kept === 1 ? "it waits" : "they wait");
  return `${moves} kept here and sent when it is back. Others do not see ${them} yet. ${away}`;
}
