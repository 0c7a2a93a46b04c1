import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useCostBook } from "../../data/cost-book.ts";
import { useDraft } from "../../data/draft/use-draft.ts";
import { useRoom } from "../../room/room-context.ts";
import { useAssessment } from "../../worker/use-assessment.ts";
import { PremiumItems } from "./PremiumItems.tsx";

/** The draft as it is now, counted in this browser at every move. */
export function DraftPremium({ store }: { store: DraftStore }) {
  const { project } = useRoom();
  const { scheme } = useDraft(store);
  const book = useCostBook(project).data?.book ?? null;
  const { assessed } = useAssessment(scheme, book);
  if (assessed === null || assessed.premium === null) return <p>{assessed?.broke ?? "It is being counted."}</p>;
  return <PremiumItems premium={assessed.premium} scheme={assessed.scheme} />;
}
