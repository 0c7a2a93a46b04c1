import { useForm } from "react-hook-form";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { faultOf } from "../../data/field-faults.ts";
import { useMakeWebhook } from "../../data/webhook.ts";
import "./webhooks.css";

/** Sets an address that is told; the secret it verifies with is shown here once. */
export function NewWebhookForm({ projectId }: { projectId: string }) {
  const make = useMakeWebhook(projectId);
  const { register, handleSubmit, formState, reset } = useForm({ defaultValues: { url: "" } });
  const said = faultOf(make.error, "/url");
  const fault = formState.errors.url ? "An address, such as https://office.example/told." : said && `${said}.`;
  return (
    <form
      className="people-invite webhook-form"
      noValidate
      onSubmit={(event) => void handleSubmit(({ url }) => make.mutate(url.trim(), { onSuccess: () => reset() }))(event)}
    >
      <PersonField label="Address to be told, https" fault={fault}>
        {(bound) => (
          <input
            {...bound}
            {...register("url", { validate: (url) => URL.canParse(url.trim()) })}
            type="url"
            inputMode="url"
            maxLength={2000}
            autoComplete="off"
          />
        )}
      </PersonField>
      {said === undefined && <Refused error={make.error} />}
      <Command type="submit" onPress={() => undefined}>
        {make.isPending ? "Setting the address" : "Have it told"}
      </Command>
      {make.isSuccess && (
        <div className="people-told" role="status">
          <p>What is sent there is signed with this secret. It is shown here once.</p>
          <PersonField label="Secret">
            {(bound) => (
              <input
                {...bound}
                readOnly
                value={make.data.secret ?? ""}
                className="digest"
                onFocus={({ target }) => target.select()}
              />
            )}
          </PersonField>
        </div>
      )}
    </form>
  );
}
