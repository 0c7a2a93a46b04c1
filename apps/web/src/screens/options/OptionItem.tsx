import type { OptionNow, OptionPick, Scheme } from "@cornerway/schema";
import { dayOf } from "../../controls/calendar.ts";
import type { Side } from "../../drawing/contract.ts";
import { OptionFacts } from "./OptionFacts.tsx";
import { OptionPicture } from "./OptionPicture.tsx";
import { PickForm } from "./PickForm.tsx";

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
    <li className={picked === undefined ? "option-item" : "option-item option-picked"}>
      <OptionPicture scheme={scheme} side={side} pxPerM={pxPerM} />
      <h3>
        {option.place} {option.name}
      </h3>
      <OptionFacts option={option} />
      {picked === undefined ? (
        <PickForm setId={setId} option={option} />
      ) : (
        <p className="option-word">
          Picked by {picked.author.name} on {dayOf(picked.pickedAt)}.
          {picked.reason === null ? null : <em className={`hand-${picked.author.role}`}> {picked.reason}</em>}
        </p>
      )}
    </li>
  );
}
