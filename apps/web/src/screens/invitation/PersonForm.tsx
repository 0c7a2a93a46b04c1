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

export interface PersonWords {
  name: string;
  email: string;
  password: string;
}

const shape = chosenPassword(
  z.object({ name: PersonName, email: z.email().max(254), password: z.string() }),
  ({ name, email }) => [name, email],
);

/** Someone new says what they are called and chooses a password; the address too, where the link does not name it. */
export function PersonForm({
  knownEmail,
  command,
  error,
  onWords,
}: {
  /** Null where whoever comes chooses the address they sign in with. */
  knownEmail: string | null;
  command: string;
  error: unknown;
  onWords: (words: PersonWords) => void;
}) {
  const { register, handleSubmit, formState } = useForm<PersonWords>({
    resolver: zodResolver(shape),
    defaultValues: { name: "", email: knownEmail ?? "", password: "" },
  });
  const { name, email, password } = formState.errors;
  return (
    <form className="link-form" noValidate onSubmit={(event) => void handleSubmit(onWords)(event)}>
      <PersonField label="Your name, as it stands on the sheets" fault={name && "A name is missing."}>
        {(bound) => <input {...bound} {...register("name")} autoComplete="name" />}
      </PersonField>
      {knownEmail === null ? (
        <PersonField label="Address you sign in with" fault={email && "An address, such as name@office.example."}>
          {(bound) => <input {...bound} {...register("email")} type="email" autoComplete="username" />}
        </PersonField>
      ) : null}
      <PasswordField
        label="A password"
        isNew
        fault={password?.message ?? faultOf(error, "/password")}
        given={register("password")}
      />
      <p>{passwordRule}</p>
      {faultOf(error, "/password") === undefined && <Refused error={error} />}
      <Command next type="submit" onPress={() => undefined}>
        {command}
      </Command>
    </form>
  );
}
