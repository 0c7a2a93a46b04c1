import { NameChange } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useChangeName } from "../../data/account.ts";

/** The name that stands on what this person does from now on. */
export function NameForm({ name }: { name: string }) {
  const change = useChangeName();
  const { register, handleSubmit, formState } = useForm<NameChange>({
    resolver: zodResolver(NameChange),
    defaultValues: { name },
  });
  return (
    <form
      className="account-form"
      aria-labelledby="account-name"
      noValidate
      onSubmit={(event) => void handleSubmit((words) => change.mutate(words))(event)}
    >
      <h2 className="caption" id="account-name">
        Name
      </h2>
      <PersonField label="Name, as it stands on the sheets" fault={formState.errors.name && "A name is missing."}>
        {(bound) => <input {...bound} {...register("name")} autoComplete="name" />}
      </PersonField>
      <p>What you did before stays in the record under the name you had.</p>
      <Refused error={change.error} />
      <Command type="submit" onPress={() => undefined}>
        {change.isPending ? "Changing the name" : "Change the name"}
      </Command>
    </form>
  );
}
