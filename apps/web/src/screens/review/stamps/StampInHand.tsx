import type { Disposition, NewCondition, Revision } from "@cornerway/schema";
import { useState } from "react";
import { PasswordOnce } from "../../../controls/PasswordOnce.tsx";
import { useAccount } from "../../../data/account.ts";
import { usePressStamp } from "../../../data/stamp.ts";
import { useRoom } from "../../../room/room-context.ts";
import { ReviewStamp } from "../../../sheet/ReviewStamp.tsx";
import { newUuid } from "../../../tools/new-uuid.ts";
import { namesIn } from "../../../wording/name-of.ts";
import { nextLetter } from "../../../wording/next-letter.ts";
import { ConditionFields, whyNotConditions } from "../../../controls/ConditionFields.tsx";
import { useStampAsleep } from "./use-stamp-asleep.ts";

export interface StampInHandProps {
  revision: Revision;
  /** The item it will be on; null for the revision as a whole. */
  elementId: string | null;
  signer: string;
  onCannot: (why: string) => void;
  onAside: () => void;
}

/** The stamp while it is chosen: straight and live, with its conditions and the password asked again. */
export function StampInHand({ revision, elementId, signer, onCannot, onAside }: StampInHandProps) {
  const { project, say } = useRoom();
  const press = usePressStamp(project.id);
  const wording = useAccount().data?.stampWording ?? {};
  // Refused, nothing is written: whatever is pressed next is still this one stamp.
  const [id] = useState(newUuid);
  const [chosen, choose] = useState<Disposition | null>(null);
  const [text, setText] = useState("");
  const [conditions, setConditions] = useState<NewCondition[]>([]);
  const [password, setPassword] = useState("");
  const { letter, contentDigest, resultDigest, scheme } = revision;
  const name = elementId === null ? `Revision ${letter}` : `${namesIn(scheme)(elementId)}, revision ${letter}`;
  const dispatch = () => {
    if (chosen === null || press.isPending) return;
    if (resultDigest === null) return onCannot("This revision is not checked yet, so it cannot be stamped.");
    const why = whyNotYet({ chosen, text, conditions, password });
    if (why !== undefined) return onCannot(why);
    const on = elementId === null ? {} : { elementId };
    const with_ = chosen === "No exceptions taken" ? {} : { conditions };
    const said = { id, revision: letter, disposition: chosen, text: text.trim(), ...on, ...with_ };
    press.mutate(
      { stamp: { ...said, contentDigest, resultDigest }, password },
      {
        onSuccess: () => {
          say(`${name} stamped: ${chosen}.`);
          onAside();
        },
        onError: (error) => onCannot(error.message),
      },
    );
  };
  return (
    <ReviewStamp
      state="choosing"
      revision={letter}
      subject={elementId === null ? `${name} · ${scheme.containers.length} containers` : name}
      chosen={chosen}
      onChoose={choose}
      wording={wording}
      next={nextAfter(letter)}
      asleepBecause={useStampAsleep(revision, elementId)}
      signer={signer}
      text={text}
      onText={setText}
      onPress={dispatch}
      onAside={onAside}
    >
      {chosen === null || chosen === "No exceptions taken" ? null : (
        <ConditionFields conditions={conditions} owing={["architect", "owner"]} onChange={setConditions} />
      )}
      <PasswordOnce error={press.error} onPassword={setPassword} />
    </ReviewStamp>
  );
}

interface Written {
  chosen: Disposition;
  text: string;
  conditions: readonly NewCondition[];
  password: string;
}

function whyNotYet({ chosen, text, conditions, password }: Written): string | undefined {
  if (text.trim() === "") return "Say on the stamp what is to be done.";
  if (chosen === "Make corrections noted" && conditions.length === 0) return "Name each correction as a condition.";
  if (chosen !== "No exceptions taken" && whyNotConditions(conditions) !== undefined)
    return whyNotConditions(conditions);
  return password === "" ? "Give your password once more to press the stamp." : undefined;
}

const nextAfter = (letter: string): Record<Disposition, string> => ({
  "No exceptions taken": "On, as it is.",
  "Make corrections noted": "On, with each correction in.",
  "Revise and resubmit": `Back to me as revision ${nextLetter(letter)}.`,
  Rejected: "Stops here.",
});
