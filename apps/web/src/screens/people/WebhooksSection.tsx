import { may } from "@cornerway/schema";
import type { Webhook } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useProjects } from "../../data/project.ts";
import { useDeliveries, useWebhookAct, useWebhooks } from "../../data/webhook.ts";
import { NewWebhookForm } from "./NewWebhookForm.tsx";

/** Addresses that are told of the project's record; for owner and architect, nothing for everyone else. */
export function WebhooksSection({ projectId }: { projectId: string }) {
  const roles = useProjects().data?.find(({ id }) => id === projectId)?.roles ?? [];
  return may(roles, "keep-webhooks") ? <Webhooks projectId={projectId} /> : null;
}

function Webhooks({ projectId }: { projectId: string }) {
  const webhooks = useWebhooks(projectId);
  const act = useWebhookAct(projectId);
  return (
    <section aria-labelledby="people-webhooks">
      <h2 className="caption" id="people-webhooks">
        Told of the record
      </h2>
      <p>
        Other services of yours can be told when something is written in the record: that it was, and where to read it,
        as far as whoever set the address here may see it.
      </p>
      <Refused error={webhooks.error ?? act.error} />
      {webhooks.data?.map((webhook) => (
        <Told
          key={webhook.id}
          projectId={projectId}
          webhook={webhook}
          onEnd={() => act.mutate({ act: "end", webhookId: webhook.id })}
          onResume={() => act.mutate({ act: "resume", webhookId: webhook.id })}
        />
      ))}
      <NewWebhookForm projectId={projectId} />
    </section>
  );
}

interface ToldProps {
  projectId: string;
  webhook: Webhook;
  onEnd: () => void;
  onResume: () => void;
}

function Told({
  projectId,
  webhook: { id, url, madeBy, madeAt, failures, stoppedAt, stoppedBecause },
  onEnd,
  onResume,
}: ToldProps) {
  const last = useDeliveries(projectId, id).data?.[0];
  return (
    <article className="webhook" aria-label={url}>
      <h3 className="digest">{url}</h3>
      <p>
        Set by {madeBy.name}, {dayAndTimeOf(madeAt)}.{" "}
        {last === undefined
          ? "Nothing told yet."
          : `Last told of entry ${last.entry}, ${dayAndTimeOf(last.at)}: ${last.error ?? `answered ${last.status}`}.`}
      </p>
      {stoppedAt !== null && (
        <p className="webhook-stopped" role="status">
          Stopped {dayAndTimeOf(stoppedAt)}: {stoppedBecause}.
        </p>
      )}
      {stoppedAt === null && failures > 0 && <p className="webhook-stopped">{failures} in a row did not arrive.</p>}
      <div className="people-acts">
        {stoppedAt !== null && (
          <Command quiet onPress={onResume}>
            Go on telling
          </Command>
        )}
        <Command quiet onPress={onEnd}>
          Take it away
        </Command>
      </div>
    </article>
  );
}
