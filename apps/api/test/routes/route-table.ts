import type { Act } from "@cornerway/schema";

/** What a route asks of its sender: an act in a project, to be signed in, to administer the service, or nothing. */
export type Asks = Act | "signed in" | "administrator" | "nothing";

export interface Row {
  route: string;
  asks: Asks;
  /** What whoever may is answered to a request that is refused for its content, so that nothing changes: 200 or 400 unless said. */
  allowed?: number;
}

const project = "/api/projects/:projectId";

/** Every route of the service. A new one has a row here, or the test that walks them fails. */
export const rows: readonly Row[] = [
  { route: "GET /health", asks: "nothing" },
  { route: "GET /ready", asks: "nothing" },
  { route: "GET /api/openapi.json", asks: "nothing" },
  { route: "GET /api/reference", asks: "nothing" },
  { route: "GET /api/reference.css", asks: "nothing" },
  { route: "POST /api/session", asks: "nothing" },
  { route: "GET /api/link", asks: "nothing", allowed: 410 },
  { route: "POST /api/link", asks: "nothing" },
  { route: "POST /api/link/use", asks: "nothing" },
  { route: "POST /api/new-password", asks: "nothing" },
  { route: "GET /api/session", asks: "signed in" },
  { route: "GET /api/account", asks: "signed in" },
  { route: "POST /api/account/name", asks: "signed in" },
  { route: "POST /api/account/licence", asks: "signed in" },
  { route: "POST /api/account/password", asks: "signed in" },
  { route: "GET /api/account/sessions", asks: "signed in" },
  { route: "DELETE /api/account/sessions/:sessionId", asks: "signed in" },
  { route: "DELETE /api/account/sessions", asks: "signed in", allowed: 204 },
  { route: "GET /api/tokens", asks: "signed in" },
  { route: "POST /api/tokens", asks: "signed in" },
  { route: "DELETE /api/tokens/:tokenId", asks: "signed in" },
  { route: "GET /api/projects", asks: "signed in" },
  { route: "POST /api/projects", asks: "administrator" },
  { route: "GET /api/administration/projects", asks: "administrator" },
  { route: `GET ${project}`, asks: "read-revisions" },
  { route: `GET ${project}/draft`, asks: "read-draft" },
  { route: `GET ${project}/draft/file`, asks: "read-draft" },
  { route: `POST ${project}/draft/file`, asks: "draw" },
  { route: `POST ${project}/draft/acts`, asks: "draw" },
  { route: `POST ${project}/draft/acts/:actId/undo`, asks: "draw" },
  { route: `GET ${project}/revisions`, asks: "read-revisions" },
  { route: `GET ${project}/revisions/:letter`, asks: "read-revisions" },
  { route: `GET ${project}/revisions/:letter/file`, asks: "read-revisions" },
  { route: `GET ${project}/revisions/:letter/assessment`, asks: "read-revisions" },
  { route: `GET ${project}/revisions/:letter/assessment/report`, asks: "read-revisions" },
  { route: `GET ${project}/revisions/:letter/assessment/working`, asks: "read-revisions" },
  { route: `GET ${project}/revisions/:letter/assessment/report`, asks: "read-revisions" },
  { route: `GET ${project}/revisions/:letter/assessment/working`, asks: "read-revisions" },
  { route: `POST ${project}/revisions/:letter/assessment/again`, asks: "run-assessment" },
  { route: `POST ${project}/revisions/:letter/assessment/stop`, asks: "run-assessment" },
  { route: `POST ${project}/revisions`, asks: "send-revision" },
  { route: `GET ${project}/thread`, asks: "read-revisions" },
  { route: `GET ${project}/notes`, asks: "read-revisions" },
  { route: `POST ${project}/notes`, asks: "write-note" },
  { route: `POST ${project}/notes/:noteId/settle`, asks: "settle-note" },
  { route: `GET ${project}/requests`, asks: "read-revisions" },
  { route: `POST ${project}/requests`, asks: "make-request" },
  { route: `GET ${project}/requests/:requestId/preview`, asks: "read-draft" },
  { route: `POST ${project}/requests/:requestId/answer`, asks: "answer-request" },
  { route: `POST ${project}/stamps`, asks: "press-stamp" },
  { route: `GET ${project}/questions`, asks: "read-revisions" },
  { route: `POST ${project}/questions`, asks: "ask-question" },
  { route: `POST ${project}/questions/:questionId/answer`, asks: "answer-question" },
  { route: `POST ${project}/questions/:questionId/steps`, asks: "ask-question" },
  { route: `GET ${project}/conditions`, asks: "read-revisions" },
  { route: `POST ${project}/conditions/:conditionId/met`, asks: "meet-condition" },
  { route: `POST ${project}/conditions/:conditionId/steps`, asks: "judge-condition" },
  { route: `GET ${project}/record`, asks: "read-record" },
  { route: `GET ${project}/live`, asks: "read-record", allowed: 101 },
  { route: `GET ${project}/members`, asks: "read-people" },
  { route: `GET ${project}/people`, asks: "read-people" },
  { route: `POST ${project}/invitations`, asks: "invite" },
  { route: `DELETE ${project}/invitations/:invitationId`, asks: "invite" },
  { route: `POST ${project}/people/:personId/confirm`, asks: "confirm-engineer" },
  { route: `POST ${project}/people/:personId/remove`, asks: "remove-person" },
  { route: `POST ${project}/people/:personId/expiry`, asks: "set-expiry" },
  { route: `GET ${project}/webhooks`, asks: "keep-webhooks" },
  { route: `POST ${project}/webhooks`, asks: "keep-webhooks" },
  { route: `DELETE ${project}/webhooks/:webhookId`, asks: "keep-webhooks" },
  { route: `POST ${project}/webhooks/:webhookId/resume`, asks: "keep-webhooks" },
  { route: `GET ${project}/webhooks/:webhookId/deliveries`, asks: "keep-webhooks" },
  // Last, because it ends the session that is asked with.
  { route: "DELETE /api/session", asks: "signed in", allowed: 204 },
];
