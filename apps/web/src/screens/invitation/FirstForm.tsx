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
import { PageSheet } from "../../sheet/PageSheet.tsx";
import type { LinkFormProps } from "./form-contract.ts";

interface Words {
  name: string;
  email: string;
  password: string;
}

const shape = chosenPassword(
  z.object({ name: PersonName, email: z.email().max(254), password: z.string() }),
  ({ name, email }) => [name, email],
);

/** Nobody is known to the service yet: whoever holds its first link becomes its administrator. */
export function FirstForm({ send, error, sending }: LinkFormProps) {
  const { register, handleSubmit, formState } = useForm<Words>({
    resolver: zodResolver(shape),
    defaultValues: { name: "", email: "", password: "" },
  });
  const { name, email, password } = formState.errors;
  return (
    <PageSheet title="The first administrator" heading="Nobody is known here yet. You are the first.">
      <div className="page-columns">
        <form
          className="link-form"
          noValidate
          onSubmit={(event) => void handleSubmit((words) => send({ as: "first administrator", ...words }))(event)}
        >
          <PersonField label="Your name, as it stands on the sheets" fault={name && "A name is missing."}>
            {(bound) => <input {...bound} {...register("name")} autoComplete="name" />}
          </PersonField>
          <PersonField label="Address you sign in with" fault={email && "An address, such as name@office.example."}>
            {(bound) => <input {...bound} {...register("email")} type="email" autoComplete="username" />}
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
            {sending ? "Opening the desk" : "Become the administrator"}
          </Command>
        </form>
        <section className="link-words">
          <h2 className="caption">What an administrator does</h2>
          <p>Starts projects, asks people into them, and takes parts away. Everyone else comes by invitation.</p>
          <p>
            An administrator sees nothing of what is drawn, unless they have a part in the project, and never says who
            the engineer is: that is the owner's word.
          </p>
        </section>
      </div>
    </PageSheet>
  );
}
