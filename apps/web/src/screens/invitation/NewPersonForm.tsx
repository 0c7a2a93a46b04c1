import { PersonName } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { useForm } from "react-hook-form";
import { z } from "zod";
import { Command } from "../../controls/Command.tsx";
import { chosenPassword, passwordRule } from "../../controls/password-rule.ts";
import { PasswordField } from "../../controls/PasswordField.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { faultOf } from "../../data/field-faults.ts";
import type { InvitationLink, LinkFormProps } from "./form-contract.ts";

interface Words {
  name: string;
  password: string;
}

/** Someone new says what they are called and chooses a password. */
export function NewPersonForm({ link, send, error, sending }: LinkFormProps & { link: InvitationLink }) {
  const { register, handleSubmit, formState } = useForm<Words>({
    resolver: zodResolver(
      chosenPassword(z.object({ name: PersonName, password: z.string() }), ({ name }) => [name, link.email]),
    ),
    defaultValues: { name: "", password: "" },
  });
  const { name, password } = formState.errors;
  return (
    <form
      className="link-form"
      noValidate
      onSubmit={(event) => void handleSubmit((words) => send({ as: "new person", ...words }))(event)}
    >
      <PersonField label="Your name, as it stands on the sheets" fault={name && "A name is missing."}>
        {(bound) => <input {...bound} {...register("name")} autoComplete="name" />}
      </PersonField>
      <PasswordField
        label="A password"
        isNew
        fault={password?.message ?? faultOf(error, "/password")}
        given={register("password")}
      />
      <p>{passwordRule}</p>
      {faultOf(error, "/password") === undefined && <Refused error={error} />}
      <Command next type="submit" onPress={() => undefined}>
        {sending ? "Coming in" : `Come into ${link.projectName}`}
      </Command>
    </form>
  );
}
