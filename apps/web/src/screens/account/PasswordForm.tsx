import { passwordFault, PasswordChange } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { passwordRule } from "../../controls/password-rule.ts";
import { PasswordField } from "../../controls/PasswordField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useChangePassword } from "../../data/account.ts";
import { faultOf } from "../../data/field-faults.ts";

/** Changes the password of whoever knows the present one. */
export function PasswordForm({ person }: { person: { name: string; email: string } }) {
  const change = useChangePassword();
  const shape = PasswordChange.superRefine(({ next }, context) => {
    const fault = passwordFault(next, [person.name, person.email]);
    if (fault !== null) context.addIssue({ code: "custom", path: ["next"], message: fault });
  });
  const { register, handleSubmit, formState, reset } = useForm<PasswordChange>({
    resolver: zodResolver(shape),
    defaultValues: { present: "", next: "" },
  });
  const { present, next } = formState.errors;
  const [presentSaid, nextSaid] = [faultOf(change.error, "/present"), faultOf(change.error, "/next")];
  return (
    <form
      className="account-form"
      aria-labelledby="account-password"
      noValidate
      onSubmit={(event) => void handleSubmit((words) => change.mutate(words, { onSuccess: () => reset() }))(event)}
    >
      <h2 className="caption" id="account-password">
        Password
      </h2>
      <input type="hidden" autoComplete="username" value={person.email} readOnly />
      <PasswordField
        label="Present password"
        fault={present ? "The present password is missing." : presentSaid}
        given={register("present")}
      />
      <PasswordField label="New password" isNew fault={next?.message ?? nextSaid} given={register("next")} />
      <p>{passwordRule} Your other sign-ins end with the change.</p>
      {presentSaid === undefined && nextSaid === undefined && <Refused error={change.error} />}
      {change.isSuccess && (
        <p className="account-done" role="status">
          The password is changed, and your other sign-ins have ended.
        </p>
      )}
      <Command type="submit" onPress={() => undefined}>
        {change.isPending ? "Changing the password" : "Change the password"}
      </Command>
    </form>
  );
}
