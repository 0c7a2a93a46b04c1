import type { Given, Project, Scheme } from "@cornerway/schema";
import { useEffect, useMemo } from "react";
import { useDecisions } from "../../data/decision.ts";
import { useQuestions } from "../../data/question.ts";
import { useRevision } from "../../data/revision.ts";
import { useSeal } from "../../data/seal.ts";
import { useStamps } from "../../data/stamp.ts";
import { useThread } from "../../data/thread.ts";
import type { ImpactGround } from "../../worker/impact-messages.ts";
import { useImpact } from "../../worker/use-impact.ts";
import { impactSentence } from "../../wording/impact-sentence.ts";
import { namesIn } from "../../wording/name-of.ts";

export interface UndoesWatchProps {
  project: Project;
  before: Scheme;
  /** The drawing as it would be; null while nothing is under way. */
  after: Scheme | null;
  /** Told what the edit would undo, in one line; null where it undoes nothing. */
  onSentence: (sentence: string | null) => void;
}

/** Reads what people gave once someone draws, and says what of it an edit under way would undo. Draws nothing itself. */
export default function UndoesWatch({ project, before, after, onSentence }: UndoesWatchProps) {
  const impact = useImpact(useGround(project, before), after);
  const sentence = useMemo(() => (impact === null ? null : impactSentence(impact, namesIn(before))), [impact, before]);
  useEffect(() => onSentence(sentence), [sentence, onSentence]);
  return null;
}

/** What the edit is held against; judgements come as they are read, and the drawing alone speaks until then. */
function useGround(project: Project, before: Scheme): ImpactGround {
  const revision = useRevision(project.id, project.revision).data;
  const given = useGiven(project);
  return useMemo(() => {
    const newest = revision === undefined ? null : { letter: revision.letter, scheme: revision.scheme };
    return { before, newest, given };
  }, [before, revision, given]);
}

function useGiven(project: Project): Given {
  const questions = useQuestions(project.id).data;
  const stamps = useStamps(project.id).data;
  const seal = useSeal(project.id).data;
  const decisions = useDecisions(project).data;
  const requests = useThread(project.id).data?.requests;
  return useMemo(
    () => ({
      ...(questions === undefined ? {} : { questions }),
      ...(stamps === undefined ? {} : { stamps }),
      ...(seal === undefined ? {} : { seal }),
      ...(decisions === undefined ? {} : { decisions }),
      ...(requests === undefined ? {} : { requests }),
    }),
    [questions, stamps, seal, decisions, requests],
  );
}
