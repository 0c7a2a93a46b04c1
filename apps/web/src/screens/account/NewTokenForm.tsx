import { tokenScopes } from "@cornerway/schema";
import type { AccessTokenMade, TokenScope } from "@cornerway/schema";
import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { dateOf } from "../../controls/calendar.ts";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useMakeToken } from "../../data/token.ts";
import "./tokens.css";

interface Words {
  name: string;
  scopes: TokenScope[];
  days: string;
}

const scopeWords: Record<TokenScope, string> = {
  read: "read what you may see",
  draw: "draw, and send revisions",
  review: "write notes, and ask for changes",
};

/** How long a token is good for: never without an end. */
const lastings = [
  ["7", "a week"],
  ["30", "30 days"],
  ["90", "90 days"],
  ["365", "a year"],
] as const;

/** Makes a token; its secret is shown here once. */
export function NewTokenForm() {
  const make = useMakeToken();
  const { register, handleSubmit, formState, reset } = useForm<Words>({
    defaultValues: { name: "", scopes: ["read"], days: "90" },
  });
  const send = ({ name, scopes, days }: Words) =>
    make.mutate({ name: name.trim(), scopes, days: Number(days) }, { onSuccess: () => reset() });
  return (
    <form className="account-form token-form" noValidate onSubmit={(event) => void handleSubmit(send)(event)}>
      <PersonField label="What the new token is for" fault={formState.errors.name && "Say what it is for."}>
        {(bound) => (
          <input {...bound} {...register("name", { validate: (name) => name.trim() !== "" })} maxLength={80} />
        )}
      </PersonField>
      <fieldset className="token-scopes">
        <legend>It may</legend>
        {tokenScopes.map((scope) => (
          <label key={scope}>
            <input type="checkbox" value={scope} {...register("scopes", { validate: (all) => all.length > 0 })} />
            {scopeWords[scope]}
          </label>
        ))}
        {formState.errors.scopes && (
          <p className="field-fault" role="alert">
            Choose what it may do.
          </p>
        )}
      </fieldset>
      <PersonField label="It ends after">
        {(bound) => (
          <select {...bound} {...register("days")} defaultValue="90">
            {lastings.map(([days, words]) => (
              <option key={days} value={days}>
                {words}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <Refused error={make.error} />
      <Command type="submit" onPress={() => undefined}>
        {make.isPending ? "Making the token" : "Make a token"}
      </Command>
      {make.isSuccess && <Told made={make.data} />}
    </form>
  );
}

function Told({ made: { name, secret, expiresAt } }: { made: AccessTokenMade }) {
  return (
    <div className="token-told" role="status">
      <p>
        The token for {name} is shown here once. It ends on {dateOf(expiresAt)}.
      </p>
      <PersonField label="Token">
        {(bound) => (
          <input
            {...bound}
            readOnly
            value={secret ?? ""}
            className="digest"
            onFocus={({ target }) => target.select()}
          />
        )}
      </PersonField>
    </div>
  );
}
