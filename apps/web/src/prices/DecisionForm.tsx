import type { DecisionShown, NewDecision } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../controls/Command.tsx";
import { PersonField } from "../controls/PersonField.tsx";
import { Refused } from "../controls/Refused.tsx";
import { useDecide } from "../data/decision.ts";
import { useRoom, whyNot } from "../room/room-context.ts";
import { newUuid } from "../tools/new-uuid.ts";
import { moneyText } from "../wording/money.ts";
import { WordGiven } from "./WordGiven.tsx";
import "./prices.css";

export interface DecisionFormProps {
  /** What is decided on, with the digests on this screen. */
  subject: Pick<NewDecision, "revision" | "requestId" | "contentDigest" | "costBookDigest" | "premiumDigest">;
  money: number;
  currency: string;
  last: DecisionShown | undefined;
  /** What is said to all while the owner has said nothing; else those who only read are told that. */
  notYet?: string;
  /** Why nothing is decided yet. */
  asleepBecause?: string | undefined;
}

/** The owner's two answers to a price, and what was said last; others read it. */
export function DecisionForm({ subject, money, currency, last, notYet, asleepBecause }: DecisionFormProps) {
  const { project, say } = useRoom();
  const decide = useDecide(project.id);
  const [declining, setDeclining] = useState(false);
  const [reason, setReason] = useState("");
  const [anew, setAnew] = useState(false);
  const mine = whyNot(project, "decide") === undefined;
  const stands = last !== undefined && last.stale.length === 0;
  const give = (decision: NewDecision["decision"]) =>
    decide.mutate(
      { id: newUuid(), ...subject, decision, reason: reason.trim() === "" ? null : reason.trim() },
      {
        onSuccess: () => {
          say(decision === "agree" ? "You agreed. It is in the record." : "You declined. It is in the record.");
          setAnew(false);
          setDeclining(false);
          setReason("");
        },
      },
    );
  // The revision is asked about once its stamp lets the work go on; before that the request is.
  const next = project.waitsFor === "owner" && (subject.requestId !== null || project.stamp !== null);
  const why = asleepBecause ?? (decide.isPending ? "It is on its way." : undefined);
  return (
    <div className="price-decision">
      {last === undefined ? null : <WordGiven shown={last} />}
      {last === undefined && (notYet !== undefined || !mine) ? (
        <p className="price-small">{notYet ?? "The owner has not decided on it."}</p>
      ) : null}
      {mine && stands && !anew ? (
        <Command quiet onPress={() => setAnew(true)}>
          Decide anew
        </Command>
      ) : null}
      {mine && (!stands || anew) ? (
        <div className="price-answers">
          <Command next={next} onPress={() => give("agree")} asleepBecause={why}>
            {agreeWords(money, currency)}
          </Command>
          <Command onPress={() => (declining ? give("decline") : setDeclining(true))} asleepBecause={why}>
            {declining ? "Decline it so" : "Decline"}
          </Command>
        </div>
      ) : null}
      {mine && declining ? (
        <PersonField label="Why not, if you like to say it">
          {(bound) => (
            <textarea
              {...bound}
              rows={2}
              maxLength={2000}
              value={reason}
              onChange={({ target }) => setReason(target.value)}
            />
          )}
        </PersonField>
      ) : null}
      <Refused error={decide.error} />
    </div>
  );
}

function agreeWords(money: number, currency: string): string {
  if (Math.round(money / 10) === 0) return "Agree";
  return money < 0 ? `Agree, it saves ${moneyText(-money, currency)}` : `Agree to ${moneyText(money, currency)}`;
}
