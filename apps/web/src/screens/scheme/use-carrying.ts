import { useEffect, useRef } from "react";
import { laterPart } from "../../controls/later-part.ts";
import { useRoom } from "../../room/room-context.ts";
import { namesIn } from "../../wording/name-of.ts";
import { listOf } from "../../wording/list-of.ts";
import type { DraftHand } from "./use-draft-hand.ts";

const useCarry = laterPart(() => import("../../hand/carry.ts"));

/** By copy, cut and paste what is chosen is carried to another place on the draft, or to the draft of another project. */
export function useCarrying({ hand, draft, acts, mayDraw }: DraftHand): void {
  const { say } = useRoom();
  const carry = useCarry();
  const latest = useRef<Carrying | null>(null);
  const carrying: Carrying | null = carry && {
    copied: () => (hand.chosenIds.length === 0 ? null : carry.carriedText(draft.scheme, hand.chosenIds)),
    say: () => say(`${listOf(hand.chosenIds.map(namesIn(draft.scheme)))} copied, to be laid on any sheet.`),
    takeAway: () => hand.remove(),
    lay: (text) => {
      if (!mayDraw) return acts.setCannot("Only the architect draws.");
      const group = carry.readCarried(text);
      const drawn = "cannot" in group ? group : carry.pasteGroup(group, draft.scheme, hand.chosenId);
      if ("cannot" in drawn) acts.setCannot(drawn.cannot);
      else hand.finish(drawn);
    },
  };
  useEffect(() => {
    latest.current = carrying;
  });
  useEffect(() => listen(() => latest.current), []);
}

interface Carrying {
  /** The chosen things as text; null where nothing is chosen. */
  copied: () => string | null;
  say: () => void;
  takeAway: () => void;
  lay: (text: string) => void;
}

/** Returns how to stop listening. Text that is selected, and fields, keep the clipboard for themselves. */
function listen(now: () => Carrying | null): () => void {
  const take = (event: ClipboardEvent): Carrying | null => {
    const carrying = now();
    const text = carrying?.copied() ?? null;
    if (carrying === null || text === null || isOfText(event) || getSelection()?.isCollapsed === false) return null;
    event.clipboardData?.setData("text/plain", text);
    event.preventDefault();
    carrying.say();
    return carrying;
  };
  const copy = (event: ClipboardEvent) => void take(event);
  const cut = (event: ClipboardEvent) => take(event)?.takeAway();
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (text === "" || isOfText(event)) return;
    event.preventDefault();
    now()?.lay(text);
  };
  document.addEventListener("copy", copy);
  document.addEventListener("cut", cut);
  document.addEventListener("paste", paste);
  return () => {
    document.removeEventListener("copy", copy);
    document.removeEventListener("cut", cut);
    document.removeEventListener("paste", paste);
  };
}

const isOfText = ({ target }: Event): boolean =>
  target instanceof Element && target.closest("input, textarea, select, [contenteditable]") !== null;
