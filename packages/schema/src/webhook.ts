import { z } from "zod";
import { Digest, PersonId, ProjectId } from "./ids.ts";
import { SignedHead } from "./record-bundle.ts";
import { Actor } from "./record-entry.ts";
import { Moment, RevisionLetter } from "./review.ts";

/** An address that is told of a project's record, to the extent that whoever made it may see it. */
export const Webhook = z
  .strictObject({
    id: z.uuid(),
    url: z.string(),
    madeBy: z.strictObject({ id: PersonId, name: z.string() }),
    madeAt: Moment,
    /** Entries in a row that could not be told, whatever was tried. */
    failures: z.int().min(0),
    /** Since when nothing is sent any more, and why; null while it works. */
    stoppedAt: Moment.nullable(),
    stoppedBecause: z.string().nullable(),
  })
  .meta({ id: "Webhook" });
export type Webhook = z.infer<typeof Webhook>;

export const NewWebhook = z.strictObject({ url: z.url().max(2000) }).meta({ id: "NewWebhook" });
export type NewWebhook = z.infer<typeof NewWebhook>;

/** `secret` is shown this once; null when the answer is given again under the same Idempotency-Key. */
export const WebhookMade = Webhook.extend({ secret: z.string().nullable() }).meta({ id: "WebhookMade" });
export type WebhookMade = z.infer<typeof WebhookMade>;

/** One try to tell one entry: the status that came back, or why none did. */
export const WebhookDelivery = z
  .strictObject({
    id: z.uuid(),
    entry: z.int().min(1),
    attempt: z.int().min(1),
    at: Moment,
    status: z.int().nullable(),
    error: z.string().nullable(),
    ms: z.int().min(0),
  })
  .meta({ id: "WebhookDelivery" });
export type WebhookDelivery = z.infer<typeof WebhookDelivery>;

/** What is sent: that an entry was written, and where to read it. The entry itself is asked for with an access token. */
export const WebhookWord = z
  .strictObject({
    webhook: z.uuid(),
    project: ProjectId,
    entry: z.strictObject({
      number: z.int().min(1),
      at: Moment,
      kind: z.string(),
      actor: Actor,
      head: Digest,
      /** The revision it is about, when it is about one. */
      revision: RevisionLetter.nullable(),
    }),
    /** The head after that entry, signed: kept apart from the service, it shows later that nothing before it was altered. */
    signedHead: SignedHead,
    read: z.string(),
    caution: z.string(),
  })
  .meta({ id: "WebhookWord" });
export type WebhookWord = z.infer<typeof WebhookWord>;
