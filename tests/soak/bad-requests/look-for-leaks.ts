import { problemCodes } from "@cornerway/schema";

export interface Answer {
  status: number;
  type: string;
  body: string;
  headers: Record<string, unknown>;
}

/** Words of the inside: traces, files, statements, programs. */
const inside =
  /node_modules|\bat \S+ \(|\.[tj]s:\d+|\/(work|root|home|srv|tmp)\/|\b(select|insert into|update) ["\w].*\b(from|values|set)\b|\bprisma\b|postgres|SQLSTATE|violates|duplicate key|invalid input syntax|graphile|ECONN|ENOENT|TypeError|RangeError|ZodError|FST_/i;

/** Everything that is wrong with an answer to a bad request; nothing for a good one. `strangers` are words of what the sender may not see. */
export function faultsOf(
  { status, type, body, headers }: Answer,
  strangers: readonly string[],
  sent: string,
): string[] {
  const faults: string[] = [];
  if (status >= 500) faults.push(`answered ${status}`);
  const trace = inside.exec(body);
  if (trace !== null && !sent.includes(trace[0])) faults.push(`tells of the inside: ${trace[0]}`);
  for (const word of strangers) if (body.includes(word)) faults.push(`tells ${word} to someone who may not see it`);
  if (status >= 400) faults.push(...faultsOfProblem(type, body));
  for (const name of ["content-security-policy", "x-content-type-options", "referrer-policy", "request-id"])
    if (headers[name] === undefined) faults.push(`lacks the header ${name}`);
  if (headers["server"] !== undefined || headers["x-powered-by"] !== undefined) faults.push("names its software");
  return faults;
}

function faultsOfProblem(type: string, body: string): string[] {
  if (body === "") return []; // to HEAD
  if (!type.startsWith("application/problem+json")) return [`a refusal is ${type}`];
  const code: unknown = (JSON.parse(body) as { code?: unknown }).code;
  return problemCodes.some((known) => known === code) ? [] : [`an unknown problem ${String(code)}`];
}
