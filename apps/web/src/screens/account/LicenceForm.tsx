import { Licence } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useStateLicence } from "../../data/account.ts";

/** An engineer states their licence; it is shown as stated by them and verified by nobody. */
export function LicenceForm({ licence }: { licence: Licence | null }) {
  const state = useStateLicence();
  const { register, handleSubmit, formState } = useForm<Licence>({
    resolver: zodResolver(Licence),
    defaultValues: licence ?? { number: "", jurisdiction: "" },
  });
  const { number, jurisdiction } = formState.errors;
  return (
    <form
      className="account-form"
      aria-labelledby="account-licence"
      noValidate
      onSubmit={(event) => void handleSubmit((words) => state.mutate({ licence: words }))(event)}
    >
      <h2 className="caption" id="account-licence">
        Licence, for engineers
      </h2>
      <PersonField label="Licence number" fault={number && "The number is missing."}>
        {(bound) => <input {...bound} {...register("number")} autoComplete="off" />}
      </PersonField>
      <PersonField label="Jurisdiction" fault={jurisdiction && "The jurisdiction is missing."}>
        {(bound) => <input {...bound} {...register("jurisdiction")} autoComplete="off" />}
      </PersonField>
      <p>Shown beside your name as stated by you. Nobody here verifies it.</p>
      <Refused error={state.error} />
      <div className="account-acts">
        <Command type="submit" onPress={() => undefined}>
          {licence === null ? "State the licence" : "State it so"}
        </Command>
        {licence !== null && (
          <Command quiet onPress={() => state.mutate({ licence: null })}>
            Take the statement back
          </Command>
        )}
      </div>
    </form>
  );
}
