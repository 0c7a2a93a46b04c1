import { roles, type InvitationMade, type Role } from "@cornerway/schema";
import { useState } from "react";
import { useForm, useWatch } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { endOfDay } from "../../controls/input-day.ts";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useInvite } from "../../data/people.ts";
import { roleWords } from "../../wording/role-words.ts";
import { LastDayField, usualLastDay } from "./LastDayField.tsx";
import { LinkToldOnce } from "./LinkToldOnce.tsx";

interface Words {
  email: string;
  role: Role;
  lastDay: string;
}

/** Asks someone in by their address; the link goes by letter, and is told here once. */
export function InviteForm({ projectId }: { projectId: string }) {
  const invite = useInvite(projectId);
  const [openedAt] = useState(() => Date.now());
  const { register, handleSubmit, control, formState, resetField } = useForm<Words>({
    defaultValues: { email: "", role: "architect", lastDay: usualLastDay(openedAt) },
  });
  const role = useWatch({ control, name: "role" });
  const send = ({ email, lastDay }: Words) =>
    invite.mutate(
      { email, role, partEndsAt: role === "reader" ? endOfDay(lastDay) : null },
      { onSuccess: () => resetField("email") },
    );
  return (
    <form
      className="people-invite"
      aria-labelledby="people-invite"
      noValidate
      onSubmit={(event) => void handleSubmit(send)(event)}
    >
      <h2 className="caption" id="people-invite">
        Ask someone in
      </h2>
      <PersonField label="Their address" fault={formState.errors.email && "An address, such as name@office.example."}>
        {(bound) => (
          <input
            {...bound}
            {...register("email", { required: true, pattern: /^[^\s@]+@[^\s@]+\.[^\s@]+$/ })}
            type="email"
            autoComplete="off"
          />
        )}
      </PersonField>
      <PersonField label="Their part">
        {(bound) => (
          <select {...bound} {...register("role")}>
            {roles.map((one) => (
              <option key={one}>{one}</option>
            ))}
          </select>
        )}
      </PersonField>
      <p>{roleWords[role]}</p>
      {role === "reader" && (
        <LastDayField
          label="Last day"
          openedAt={openedAt}
          missing={formState.errors.lastDay !== undefined}
          field={register("lastDay", { required: true })}
        />
      )}
      <Refused error={invite.error} />
      <Command next type="submit" onPress={() => undefined}>
        {invite.isPending ? "Sending the letter" : `Ask them in as ${role}`}
      </Command>
      {invite.isSuccess && <Told made={invite.data} />}
    </form>
  );
}

/** The link, once: whoever asks in may hand it over by another way than the letter. */
const Told = ({ made: { invitation, path, letterSent } }: { made: InvitationMade }) => (
  <LinkToldOnce label="Link" path={path}>
    {letterSent
      ? `A letter with this link is on its way to ${invitation.email}.`
      : `The letter to ${invitation.email} did not leave. Hand the link over yourself.`}{" "}
    It is shown here once, and works once.
  </LinkToldOnce>
);
