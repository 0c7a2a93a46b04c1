import { ContainerNumber, containerTypes, type ContainerType } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useOfferContainer } from "../../data/survey.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { typeWords } from "./type-words.ts";

/** Offers a container by the number on its door, which is held against its own check digit as it is typed. */
export function OfferForm() {
  const { project, say } = useRoom();
  const offer = useOfferContainer(project.id);
  const [typed, type] = useState("");
  const [kind, choose] = useState<ContainerType>("1AAA");
  const read = ContainerNumber.safeParse(typed);
  const fault =
    typed.trim().length < 11 || read.success ? undefined : (read.error.issues[0]?.message ?? "Not a number.");
  const send = () => {
    if (!read.success) return;
    offer.mutate(
      { id: newUuid(), containerNumber: read.data, type: kind },
      {
        onSuccess: () => {
          type("");
          say("The container is offered.");
        },
      },
    );
  };
  return (
    <div className="survey-form">
      <PersonField label="Number of a container, as on its door" fault={fault}>
        {(bound) => (
          <input
            {...bound}
            value={typed}
            maxLength={20}
            autoCapitalize="characters"
            placeholder="CSQU 305438 3"
            onChange={({ target }) => type(target.value)}
          />
        )}
      </PersonField>
      <PersonField label="Type">
        {(bound) => (
          <select
            {...bound}
            value={kind}
            onChange={({ target }) => choose(containerTypes.find((known) => known === target.value) ?? kind)}
          >
            {containerTypes.map((known) => (
              <option key={known} value={known}>
                {typeWords(known)}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <Command onPress={send} asleepBecause={read.success ? undefined : "Write the whole number with its check digit."}>
        Offer this container
      </Command>
      <Refused error={offer.error} />
    </div>
  );
}
