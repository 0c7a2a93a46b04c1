import type { Revision } from "@cornerway/schema";
import { useRoom } from "../../room/room-context.ts";
import { useUnits } from "../../units/use-units.ts";
import { markWords } from "../../wording/mark-words.ts";

/** A mark of a revision by its id, as a sheet would note it, in one line. */
export function useMarkSentence({ result, scheme }: Revision): (markId: string) => string {
  const { project } = useRoom();
  const units = useUnits();
  return (markId) => {
    const mark = result?.marks.find(({ id }) => id === markId);
    if (mark === undefined) return "A mark that is no longer there.";
    const { heading, body } = markWords(mark, scheme, project.roles[0] ?? "reader", units);
    return `${heading}. ${body}`;
  };
}
