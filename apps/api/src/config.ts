import { mostHelpers } from "@cornerway/engine";
import { isIP } from "node:net";
import { availableParallelism } from "node:os";
import path from "node:path";
import { z } from "zod";
import { fromFiles, withPassword } from "./from-files.ts";

const whole = (fallback: number, least: number, most: number) =>
  z.coerce.number().int().min(least).max(most).default(fallback);

/** One address, or a network as `10.0.0.0/8`. */
function isAddressOrNetwork(text: string): boolean {
  const [address = "", length, ...rest] = text.split("/");
  const most = isIP(address) === 4 ? 32 : 128;
  const inRange = length === undefined || (/^[0-9]{1,3}$/.test(length) && Number(length) <= most);
  return isIP(address) !== 0 && inRange && rest.length === 0;
}

const addresses = z
  .string()
  .default("")
  .transform((text) => text.split(",").flatMap((part) => (part.trim() === "" ? [] : [part.trim()])))
  .refine((all) => all.every(isAddressOrNetwork), "addresses or networks with commas between them, or nothing");

const Environment = z.object({
  DATABASE_URL: z.url({ protocol: /^postgres(ql)?$/ }),
  DATABASE_PASSWORD: z.string().min(1).optional(),
  HOST: z.string().min(1).default("127.0.0.1"),
  PORT: whole(3000, 0, 65_535),
  WEB_ROOT: z
    .string()
    .min(1)
    .default(path.resolve(import.meta.dirname, "../../web/dist")),
  LOG_LEVEL: z.enum(["fatal", "error", "warn", "info", "debug", "silent"]).default("info"),
  TRUST_PROXY: addresses,
  REQUESTS_PER_MINUTE: whole(1200, 1, 10_000_000),
  ASSESSMENT_SECONDS: whole(300, 1, 3600),
  ASSESSMENT_THREADS: whole(1, 1, 16),
  ASSESSMENT_HELPERS: whole(Math.min(availableParallelism() - 1, mostHelpers), 0, mostHelpers),
  WORKER: z.enum(["inside", "apart"]).default("inside"),
  PUBLIC_URL: z.url({ protocol: /^https?$/ }).optional(),
  SMTP_URL: z.url({ protocol: /^smtps?$/ }).optional(),
  MAIL_FROM: z.string().min(3).max(320).default("Cornerway <cornerway@localhost>"),
  MAIL_FOLDER: z
    .string()
    .min(1)
    .default(path.resolve(import.meta.dirname, "../../../.data/mail")),
  SECRETS_KEY: z
    .string()
    .regex(/^[0-9a-f]{64}$/, "64 hexadecimal digits")
    .optional(),
  WEBHOOKS_TO_LOOPBACK: z.enum(["yes", "no"]).default("no"),
  METRICS_HOST: z.string().min(1).default("127.0.0.1"),
  METRICS_PORT: z.coerce.number().int().min(0).max(65_535).optional(),
});

export interface Config {
  databaseUrl: string;
  /** Under which people reach the pages, for links in letters; where it listens when left out. */
  publicUrl: string | undefined;
  /** The server that letters are handed to; where it is left out they are laid into `mailFolder`. */
  smtpUrl: string | undefined;
  mailFrom: string;
  mailFolder: string;
  host: string;
  port: number;
  webRoot: string;
  logLevel: string;
  /**
   * Addresses and networks of one's own proxies. A caller's address is the last one named in `X-Forwarded-For` that is
   * none of these; what anyone else says of itself is not believed.
   */
  trustedProxies: readonly string[];
  requestsPerMinute: number;
  assessmentLimitMs: number;
  /** Assessments at once. */
  assessmentThreads: number;
  /** Threads that share each of them, one for each further core there is work for; each may hold 0.8 GB. */
  assessmentHelpers: number;
  /** True when this process also takes jobs from the queue; otherwise it only adds them. */
  workerInside: boolean;
  /** What the secrets of webhooks are sealed under, 32 bytes in hexadecimal; none are made where it is left out. */
  secretsKey: string | undefined;
  /** True where webhooks may be sent to this machine itself, unencrypted too: to try them out. */
  webhooksToLoopback: boolean;
  /** Where the numbers for those who watch the service are given, apart from the service itself; nowhere when left out. */
  metrics: { host: string; port: number } | undefined;
}

/**
 * The environment, read once; `NAME_FILE` names a file that holds the value of `NAME`. Throws one line that names every
 * variable that is not as it must be.
 */
export function readConfig(environment: NodeJS.ProcessEnv): Config {
  const read = Environment.safeParse(fromFiles(environment));
  if (!read.success)
    throw new Error(read.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`).join("; "));
  const { data } = read;
  return {
    databaseUrl: withPassword(data.DATABASE_URL, data.DATABASE_PASSWORD),
    publicUrl: data.PUBLIC_URL,
    smtpUrl: data.SMTP_URL,
    mailFrom: data.MAIL_FROM,
    mailFolder: data.MAIL_FOLDER,
    host: data.HOST,
    port: data.PORT,
    webRoot: data.WEB_ROOT,
    logLevel: data.LOG_LEVEL,
    trustedProxies: data.TRUST_PROXY,
    requestsPerMinute: data.REQUESTS_PER_MINUTE,
    assessmentLimitMs: data.ASSESSMENT_SECONDS * 1000,
    assessmentThreads: data.ASSESSMENT_THREADS,
    assessmentHelpers: data.ASSESSMENT_HELPERS,
    workerInside: data.WORKER === "inside",
    secretsKey: data.SECRETS_KEY,
    webhooksToLoopback: data.WEBHOOKS_TO_LOOPBACK === "yes",
    metrics: data.METRICS_PORT === undefined ? undefined : { host: data.METRICS_HOST, port: data.METRICS_PORT },
  };
}
