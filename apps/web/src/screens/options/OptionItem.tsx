import type { OptionNow, OptionPick, Scheme } from "@cornerway/schema";
import { dayOf } from "../../controls/calendar.ts";
import type { Side } from "../../drawing/contract.ts";
import { OptionFacts } from "./OptionFacts.tsx";
import { OptionPicture } from "./OptionPicture.tsx";
import { PickForm } from "./PickForm.tsx";
import { WithdrawForm } from "./WithdrawForm.tsx";

export interface OptionItemProps {
  setId: string;
  option: OptionNow;
  scheme: Scheme | undefined;
  side: Side;
  pxPerM: number;
  /** The pick that counts, where it is this one. */
  picked: OptionPick | undefined;
}

/** One of the small multiples: the drawing, what it comes to, and the word on it. */
export function OptionItem({ setId, option, scheme, side, pxPerM, picked }: OptionItemProps) {
  return (
    <li className={classOf(option, picked)}>
      <OptionPicture scheme={scheme} side={side} pxPerM={pxPerM} />
      <h3>
        {option.place} {option.name}
      </h3>
      <OptionFacts option={option} />
      {option.withdrawn !== null ? (
        <Word
          said={`Withdrawn by ${option.withdrawn.author.name} on ${dayOf(option.withdrawn.withdrawnAt)}.`}
          by={option.withdrawn}
        />
      ) : picked !== undefined ? (
        <Word said={`Picked by ${picked.author.name} on ${dayOf(picked.pickedAt)}.`} by={picked} />
      ) : (
        <>
          <PickForm setId={setId} option={option} />
          <WithdrawForm setId={setId} option={option} />
        </>
      )}
    </li>
  );
}

/** What was said of an alternative, with the reason in the hand of whoever gave it. */
const Word = ({ said, by }: { said: string; by: Pick<OptionPick, "author" | "reason"> }) => (
  <p className="option-word">
    {said}
    {by.reason === null ? null : <em className={`hand-${by.author.role}`}> {by.reason}</em>}
  </p>
);

function classOf(option: OptionNow, picked: OptionPick | undefined): string {
  if (option.withdrawn !== null) return "option-item option-withdrawn";
  return picked === undefined ? "option-item" : "option-item option-picked";
}
