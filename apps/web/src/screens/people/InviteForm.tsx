import { longestReadingDays, roles, usualReadingDays } from "@cornerway/schema";
import type { InvitationMade, Role } from "@cornerway/schema";
import { useState } from "react";
import { useForm, useWatch } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { endOfDay, inputDay } from "../../controls/input-day.ts";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useInvite } from "../../data/people.ts";
import { roleWords } from "../../wording/role-words.ts";

interface Words {
  email: string;
  role: Role;
  lastDay: string;
}

const dayMs = 86_400_000;

/** Asks someone in by their address; the link goes by letter, and is told here once. */
export function InviteForm({ projectId }: { projectId: string }) {
  const invite = useInvite(projectId);
  const [openedAt] = useState(() => Date.now());
  const { register, handleSubmit, control, formState, resetField } = useForm<Words>({
    defaultValues: { email: "", role: "architect", lastDay: inputDay(openedAt + usualReadingDays * dayMs) },
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
        <PersonField label="Last day" fault={formState.errors.lastDay && "The last day is missing."}>
          {(bound) => (
            <input
              {...bound}
              {...register("lastDay", { required: true })}
              type="date"
              min={inputDay(openedAt)}
              max={inputDay(openedAt + (longestReadingDays - 1) * dayMs)}
            />
          )}
        </PersonField>
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
function Told({ made: { invitation, path, letterSent } }: { made: InvitationMade }) {
  const address = `${location.origin}${path}`;
  return (
    <div className="people-told" role="status">
      <p>
        {letterSent
          ? `A letter with this link is on its way to ${invitation.email}.`
          : `The letter to ${invitation.email} did not leave. Hand the link over yourself.`}{" "}
        It is shown here once, and works once.
      </p>
      <PersonField label="Link">
        {(bound) => (
          <input {...bound} readOnly value={address} className="digest" onFocus={({ target }) => target.select()} />
        )}
      </PersonField>
    </div>
  );
}
