import path from "node:path";
import { z } from "zod";

const whole = (fallback: number, least: number, most: number) =>
  z.coerce.number().int().min(least).max(most).default(fallback);

const Environment = z.object({
  DATABASE_URL: z.url({ protocol: /^postgres(ql)?$/ }),
  HOST: z.string().min(1).default("127.0.0.1"),
  PORT: whole(3000, 0, 65_535),
  WEB_ROOT: z
    .string()
    .min(1)
    .default(path.resolve(import.meta.dirname, "../../web/dist")),
  LOG_LEVEL: z.enum(["fatal", "error", "warn", "info", "debug", "silent"]).default("info"),
  TRUST_PROXY: z.enum(["yes", "no"]).default("no"),
  REQUESTS_PER_MINUTE: whole(1200, 1, 10_000_000),
  ASSESSMENT_SECONDS: whole(60, 1, 3600),
  ASSESSMENT_THREADS: whole(1, 1, 16),
});

export interface Config {
  databaseUrl: string;
  host: string;
  port: number;
  webRoot: string;
  logLevel: string;
  /** True behind one proxy of one's own: the address of a caller is then the last one that proxy names. */
  trustProxy: boolean;
  requestsPerMinute: number;
  assessmentLimitMs: number;
  assessmentThreads: number;
}

/** The environment, read once. Throws one line that names every variable that is not as it must be. */
export function readConfig(environment: NodeJS.ProcessEnv): Config {
  const read = Environment.safeParse(environment);
  if (!read.success)
    throw new Error(read.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`).join("; "));
  const { data } = read;
  return {
    databaseUrl: data.DATABASE_URL,
    host: data.HOST,
    port: data.PORT,
    webRoot: data.WEB_ROOT,
    logLevel: data.LOG_LEVEL,
    trustProxy: data.TRUST_PROXY === "yes",
    requestsPerMinute: data.REQUESTS_PER_MINUTE,
    assessmentLimitMs: data.ASSESSMENT_SECONDS * 1000,
    assessmentThreads: data.ASSESSMENT_THREADS,
  };
}
