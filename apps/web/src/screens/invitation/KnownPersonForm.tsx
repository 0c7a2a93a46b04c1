import { Link } from "@tanstack/react-router";
import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { PasswordField } from "../../controls/PasswordField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import type { InvitationLink, LinkFormProps } from "./form-contract.ts";

/** Someone who has an account under the address signs in with it. */
export function KnownPersonForm({ link, send, error, sending }: LinkFormProps & { link: InvitationLink }) {
  const { register, handleSubmit, formState } = useForm({ defaultValues: { password: "" } });
  return (
    <form
      className="link-form"
      noValidate
      onSubmit={(event) => void handleSubmit(({ password }) => send({ as: "known person", password }))(event)}
    >
      <p>{link.email} has an account here already. Its password brings you in.</p>
      <PasswordField
        label="Password"
        fault={formState.errors.password && "The password is missing."}
        given={register("password", { required: true })}
      />
      <Refused error={error} />
      <Command next type="submit" onPress={() => undefined}>
        {sending ? "Coming in" : `Come into ${link.projectName}`}
      </Command>
      <Link className="command command-quiet" to="/forgotten">
        The password is forgotten
      </Link>
    </form>
  );
}
