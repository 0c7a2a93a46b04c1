import { readFileSync } from "node:fs";
import path from "node:path";
import { parse } from "yaml";
import { z } from "zod";

const Service = z.object({
  command: z.array(z.string()).optional(),
  environment: z.record(z.string(), z.string()).default({}),
  secrets: z.array(z.string()).default([]),
  ports: z.array(z.string()).default([]),
  healthcheck: z.object({ test: z.array(z.string()) }).optional(),
  depends_on: z.record(z.string(), z.object({ condition: z.string() })).default({}),
});
export type ComposeService = z.infer<typeof Service>;

const Compose = z.object({
  services: z.record(z.string(), Service),
  secrets: z.record(z.string(), z.object({ file: z.string() })),
});

const CLONE = path.resolve(import.meta.dirname, "../../..");
const read = (name: string) => readFileSync(path.join(CLONE, name), "utf8");

/** docker-compose.yml as its reader sees it, merge keys resolved. */
export const readCompose = () => Compose.parse(parse(read("docker-compose.yml"), { merge: true }));

/** What the last stage of the Dockerfile takes over from the one that builds, as paths in the clone. */
export const copiedPaths = (): string[] =>
  [...read("Dockerfile").matchAll(/^COPY --from=build \/srv\/cornerway\/(\S+) \S+$/gm)].map(([, from = ""]) => from);

/** The APIs that the proxy passes requests on to. */
export const upstreams = (): string[] =>
  (/reverse_proxy ([^{]+)\{/.exec(read("proxy/Caddyfile"))?.[1] ?? "").trim().split(/\s+/);
