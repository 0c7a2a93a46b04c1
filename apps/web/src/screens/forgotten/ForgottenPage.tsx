import { ResetAsked } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { useMutation } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { askNewPassword } from "../../data/link.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import "./forgotten.css";

/** Has a letter sent to an address; never says whether anyone is known by it. */
export function ForgottenPage() {
  const ask = useMutation({ mutationFn: askNewPassword });
  const { register, handleSubmit, formState } = useForm<ResetAsked>({
    resolver: zodResolver(ResetAsked),
    defaultValues: { email: "" },
  });
  const way = (
    <Link className="command" to="/">
      To the sign-in
    </Link>
  );
  if (ask.isSuccess)
    return (
      <PageSheet title="A new password" heading="Look at your letters" way={way}>
        <section className="forgotten" role="status">
          <p>If someone is known here by {ask.variables.email}, a letter with a link is on its way there.</p>
          <p>The link works once, within an hour. The present password stays good until then.</p>
          <Command onPress={() => ask.reset()}>Try another address</Command>
        </section>
      </PageSheet>
    );
  return (
    <PageSheet title="A new password" heading="The password is forgotten" way={way}>
      <form
        className="forgotten"
        noValidate
        onSubmit={(event) => void handleSubmit((words) => ask.mutate(words))(event)}
      >
        <PersonField
          label="Address you sign in with"
          fault={formState.errors.email && "An address, such as name@office.example."}
        >
          {(bound) => <input {...bound} {...register("email")} type="email" autoComplete="username" />}
        </PersonField>
        <Refused error={ask.error} />
        <Command next type="submit" onPress={() => undefined}>
          {ask.isPending ? "Sending the letter" : "Send me a link"}
        </Command>
      </form>
    </PageSheet>
  );
}
