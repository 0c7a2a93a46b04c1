import type { Scheme } from "@cornerway/schema";
import { useEffect, useRef } from "react";
import { useRoom } from "../../room/room-context.ts";
import { tallySentence } from "../../wording/tally-sentence.ts";
import type { Did } from "./use-draft-acts.ts";
import type { Assessed } from "../../worker/latest-assessment.ts";

/** After each move one polite sentence: what moved, and how many notes of which verdict stand now. */
export function useSayMove(drawn: Did | null, assessed: Assessed | null, scheme: Scheme): void {
  const { say } = useRoom();
  const said = useRef<Did | null>(null);
  useEffect(() => {
    if (drawn === null || drawn === said.current || assessed?.scheme !== scheme) return;
    said.current = drawn;
    const tally = tallySentence(assessed.assessment?.marks ?? []);
    drawn.sentence().then(
      (sentence) => say(`${sentence} ${tally}`),
      () => say(`Drawn; its words could not be fetched. ${tally}`),
    );
  }, [drawn, assessed, scheme, say]);
}
