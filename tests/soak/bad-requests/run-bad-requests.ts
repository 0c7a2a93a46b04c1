import fc from "fast-check";
import { badRequest, type ApiDocument, type BadRequest } from "./bad-request.ts";
import { runBadMessages } from "./bad-messages.ts";
import { faultsOf } from "./look-for-leaks.ts";
import type { Place, Sender } from "./place.ts";

export interface Report {
  requests: number;
  messages: number;
  /** Answers by status. */
  statuses: Record<string, number>;
  /** What was wrong, each with the request that showed it; none is what is asked for. */
  faults: string[];
}

const chunk = 250;
const atOnce = 8;
const mostShown = 20;
/** Of all, this share goes over sockets. */
const messageShare = 0.2;

/** Sends generated bad requests and messages, the same for the same seed, and looks at every answer. */
export async function runBadRequests(place: Place, { count, seed }: { count: number; seed: number }): Promise<Report> {
  const messages = Math.round(count * messageShare);
  const report: Report = { requests: count - messages, messages, statuses: {}, faults: [] };
  const document = place.app.swagger() as unknown as ApiDocument;
  for (let sent = 0; sent < report.requests; sent += chunk) {
    const senders = await place.senders();
    const arbitrary = badRequest(document, { ids: place.ids, senders: senders.length });
    const requests = fc.sample(arbitrary, { seed: seed + sent, numRuns: Math.min(chunk, report.requests - sent) });
    const send = async () => {
      for (let one = requests.pop(); one !== undefined; one = requests.pop())
        await sendOne(place, senders, one, report);
    };
    await Promise.all(Array.from({ length: atOnce }, send));
    if (report.faults.length >= mostShown) break;
  }
  report.faults.push(...(await runBadMessages(place, await place.senders(), { count: messages, seed })));
  report.faults.push(...faultsOfLog(place.log));
  return report;
}

async function sendOne({ app }: Place, senders: readonly Sender[], bad: BadRequest, report: Report): Promise<void> {
  const sender = senders[bad.sender];
  if (sender === undefined) throw new Error("no such sender");
  const { method, url, payload } = bad;
  const headers = { ...sender.headers, ...bad.headers };
  const options = { method: method as "GET", url, headers, ...(payload === undefined ? {} : { payload }) };
  const answer = await app.inject(options);
  report.statuses[answer.statusCode] = (report.statuses[answer.statusCode] ?? 0) + 1;
  const { statusCode: status, body } = answer;
  const type = String(answer.headers["content-type"] ?? "");
  const sent = `${url} ${payload ?? ""}`;
  for (const fault of faultsOf({ status, type, body, headers: answer.headers }, sender.strangers, sent))
    report.faults.push(
      `${fault}: ${sender.name} ${method} ${url.slice(0, 150)} ${JSON.stringify(bad.headers).slice(0, 200)} ${(payload ?? "").slice(0, 250)} → ${status} ${body.slice(0, 200)}`,
    );
}

/** Bad requests are no faults of the service, and secrets never stand in its log. */
function faultsOfLog(log: readonly string[]): string[] {
  const broken = log
    .filter((line) => /"level":(50|60)/.test(line))
    .map((line) => `a fault in the log: ${line.slice(0, 600)}`);
  const told = log.filter((line) => /cornerway_session=|a phrase that nobody guesses/.test(line));
  return [...broken.slice(0, mostShown), ...told.map((line) => `a secret in the log: ${line.slice(0, 300)}`)];
}
