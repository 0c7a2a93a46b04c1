import type { RevisionPremium, Scheme } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { lastWord, useDecisions } from "../data/decision.ts";
import { usePremiumSince } from "../data/premium.ts";
import { useRoom } from "../room/room-context.ts";
import { moneyText } from "../wording/money.ts";
import { apartWords, notAssessedWords, uncheckedWords } from "./apart-words.ts";
import { DecisionForm } from "./DecisionForm.tsx";
import { ForShow } from "./ForShow.tsx";
import { PremiumBars } from "./PremiumBars.tsx";
import { premiumGroups } from "./premium-groups.ts";
import "./prices.css";

export interface RevisionPriceProps {
  priced: RevisionPremium;
  scheme: Scheme;
  /** The revision before, whose price stands beside it. */
  earlier: string | null;
}

/** What a revision costs over the plain stack: the sum, its parts, what stands apart, and the owner's word. */
export function RevisionPrice({ priced, scheme, earlier }: RevisionPriceProps) {
  const { project } = useRoom();
  const { premium, revision, contentDigest, premiumDigest, costBook, assessed } = priced;
  const decisions = useDecisions(project);
  const { currency, total, forShow } = premium;
  const subject = { revision, requestId: null, contentDigest, costBookDigest: costBook.digest, premiumDigest };
  const unknown = assessed ? undefined : notAssessedWords;
  const apart = [unknown, apartWords(premium), uncheckedWords(premium)].filter((words) => words !== undefined);
  return (
    <>
      <p className="price-total">{moneyText(total, currency)}</p>
      <p className="price-small">
        as drawn in revision {revision} <ForShow forShow={forShow} />
      </p>
      <PremiumBars groups={premiumGroups(premium, scheme)} currency={currency} />
      {apart.map((words) => (
        <p key={words}>{words}</p>
      ))}
      {earlier === null ? null : <Before letter={revision} earlier={earlier} />}
      <DecisionForm
        subject={subject}
        money={total}
        currency={currency}
        last={lastWord(decisions.data, { revision, requestId: null })}
        asleepBecause={whyNotYet(assessed, project.revision === revision)}
      />
      <p className="price-line">
        Counted over the same containers set corner over corner, uncut.{" "}
        <Link to="/projects/$projectId/premium" params={{ projectId: project.id }}>
          Line by line
        </Link>{" "}
        <Link to="/projects/$projectId/alternatives" params={{ projectId: project.id }}>
          Alternatives
        </Link>
      </p>
    </>
  );
}

function Before({ letter, earlier }: { letter: string; earlier: string }) {
  const { project } = useRoom();
  const since = usePremiumSince(project, letter, earlier).data;
  if (since === undefined) return null;
  const { totalBefore, currency } = since;
  return (
    <p>
      Revision {earlier} stood at {moneyText(totalBefore, currency)}, by the same rates.
    </p>
  );
}

function whyNotYet(assessed: boolean, current: boolean): string | undefined {
  if (!current) return "There is a newer revision.";
  return assessed ? undefined : "It is not checked yet.";
}
