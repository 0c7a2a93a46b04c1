import type { ReaderLinkMade } from "@cornerway/schema";
import { useState } from "react";
import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { endOfDay } from "../../controls/input-day.ts";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useMakeReaderLink } from "../../data/reader-link.ts";
import { LastDayField, usualLastDay } from "./LastDayField.tsx";
import { LinkToldOnce } from "./LinkToldOnce.tsx";

/** Makes a link for someone who reads without an account; it is told here once. */
export function ReaderLinkForm({ projectId }: { projectId: string }) {
  const make = useMakeReaderLink(projectId);
  const [openedAt] = useState(() => Date.now());
  const { register, handleSubmit, formState, resetField } = useForm({
    defaultValues: { name: "", lastDay: usualLastDay(openedAt) },
  });
  const send = ({ name, lastDay }: { name: string; lastDay: string }) =>
    make.mutate({ name: name.trim(), expiresAt: endOfDay(lastDay) }, { onSuccess: () => resetField("name") });
  return (
    <form
      className="people-invite"
      aria-labelledby="reader-link"
      noValidate
      onSubmit={(event) => void handleSubmit(send)(event)}
    >
      <h2 className="caption" id="reader-link">
        A link for the permit reviewer
      </h2>
      <p>
        Whoever holds it reads the revisions that were sent and what was decided on them, without an account, until its
        last day. Drafts, notes and prices stay out of sight, nothing can be written, and every opening is in the
        record.
      </p>
      <PersonField label="For whom" fault={formState.errors.name && "For whom it is: an office, a desk, a name."}>
        {(bound) => (
          <input
            {...bound}
            {...register("name", { validate: (name) => name.trim() !== "" })}
            autoComplete="off"
            maxLength={120}
          />
        )}
      </PersonField>
      <LastDayField
        label="Its last day"
        openedAt={openedAt}
        missing={formState.errors.lastDay !== undefined}
        field={register("lastDay", { required: true })}
      />
      <Refused error={make.error} />
      <Command next type="submit" onPress={() => undefined}>
        {make.isPending ? "Making the link" : "Make the link"}
      </Command>
      {make.isSuccess && <Told made={make.data} />}
    </form>
  );
}

const Told = ({ made: { link, path } }: { made: ReaderLinkMade }) => (
  <LinkToldOnce label="Link to read" path={path}>
    The link of {link.name}. It is shown here once; it opens as often as it is needed until its last day. Whoever has it
    can read, so send it to them alone.
  </LinkToldOnce>
);
