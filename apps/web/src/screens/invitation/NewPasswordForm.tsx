import type { OpenedLink } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { useForm } from "react-hook-form";
import { z } from "zod";
import { Command } from "../../controls/Command.tsx";
import { chosenPassword, passwordRule } from "../../controls/password-rule.ts";
import { PasswordField } from "../../controls/PasswordField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { faultOf } from "../../data/field-faults.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import type { LinkFormProps } from "./form-contract.ts";

/** Whoever came by the letter to their address chooses a new password. */
export function NewPasswordForm({
  link: { name, email },
  send,
  error,
  sending,
}: LinkFormProps & { link: Extract<OpenedLink, { kind: "new-password" }> }) {
  const { register, handleSubmit, formState } = useForm<{ password: string }>({
    resolver: zodResolver(chosenPassword(z.object({ password: z.string() }), () => [name, email])),
    defaultValues: { password: "" },
  });
  return (
    <PageSheet title="A new password" heading={`${name}, choose a new password`}>
      <form
        className="link-form"
        noValidate
        onSubmit={(event) => void handleSubmit(({ password }) => send({ as: "new password", password }))(event)}
      >
        <input type="hidden" autoComplete="username" value={email} readOnly />
        <PasswordField
          label={`A new password for ${email}`}
          isNew
          fault={formState.errors.password?.message ?? faultOf(error, "/password")}
          given={register("password")}
        />
        <p>{passwordRule} With it every other sign-in of yours ends.</p>
        {faultOf(error, "/password") === undefined && <Refused error={error} />}
        <Command next type="submit" onPress={() => undefined}>
          {sending ? "Setting the password" : "Set the password and open the desk"}
        </Command>
      </form>
    </PageSheet>
  );
}
