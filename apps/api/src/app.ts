import fastify, { LogController, type FastifyInstance } from "fastify";
import type { Config } from "./config.ts";
import accessTokenPlugin from "./plugins/access-token.ts";
import databasePlugin from "./plugins/database.ts";
import descriptionPlugin from "./plugins/description.ts";
import livePlugin from "./plugins/live.ts";
import mailPlugin from "./plugins/mail.ts";
import metricsPlugin from "./plugins/metrics.ts";
import { answerBadAddress, answerBadRequestLine, longestParameter } from "./plugins/outside-routes.ts";
import partPlugin from "./plugins/part.ts";
import partsEndPlugin from "./plugins/parts-end.ts";
import problemsPlugin from "./plugins/problems.ts";
import rateLimitPlugin from "./plugins/rate-limit.ts";
import recordSigningPlugin from "./plugins/record-signing.ts";
import referencePlugin from "./plugins/reference.ts";
import requestIdPlugin from "./plugins/request-id.ts";
import requestLogPlugin from "./plugins/request-log.ts";
import schemeVersionPlugin from "./plugins/scheme-version.ts";
import securityPlugin from "./plugins/security.ts";
import signedInPlugin from "./plugins/signed-in.ts";
import socketsPlugin from "./plugins/sockets.ts";
import stoppingPlugin from "./plugins/stopping.ts";
import validationPlugin from "./plugins/validation.ts";
import webPlugin from "./plugins/web.ts";
import webhooksPlugin from "./plugins/webhooks.ts";
import workerPlugin from "./plugins/worker.ts";
import { requestIdOf } from "./request-id.ts";
import { allRoutes } from "./routes/all-routes.ts";
import { trustedProxies } from "./trusted-proxies.ts";

/** The largest body taken where a route says nothing else: a request of 200 operations with long names is about a third of it. */
const largestBodyBytes = 256 * 1024;

/** The whole service, ready to listen or to have requests injected. `log` takes the lines of its log. */
export async function buildApp(config: Config, log?: { write(line: string): void }): Promise<FastifyInstance> {
  const isTrusted = trustedProxies(config.trustedProxies);
  const app = fastify({
    bodyLimit: largestBodyBytes,
    routerOptions: { maxParamLength: longestParameter },
    frameworkErrors: answerBadAddress,
    clientErrorHandler: answerBadRequestLine,
    trustProxy: isTrusted,
    genReqId: requestIdOf(isTrusted),
    forceCloseConnections: "idle",
    logController: new LogController({ disableRequestLogging: true }),
    logger: { level: config.logLevel, ...(log === undefined ? {} : { stream: log }) },
  });
  app.removeContentTypeParser("text/plain"); // JSON is the only thing taken
  await app.register(requestIdPlugin);
  await app.register(stoppingPlugin);
  await app.register(validationPlugin);
  await app.register(problemsPlugin);
  await app.register(databasePlugin, { url: config.databaseUrl });
  await app.register(metricsPlugin, { at: config.metrics });
  if (config.workerInside) await app.register(workerPlugin, { config });
  const { publicUrl, smtpUrl, mailFrom, mailFolder } = config;
  await app.register(mailPlugin, { publicUrl, smtpUrl, mailFrom, mailFolder });
  await app.register(partsEndPlugin);
  await app.register(livePlugin, { url: config.databaseUrl });
  await app.register(socketsPlugin); // before the session is read, so that it is known to be a socket
  await app.register(securityPlugin);
  await app.register(schemeVersionPlugin);
  await app.register(accessTokenPlugin);
  await app.register(signedInPlugin);
  await app.register(partPlugin);
  await app.register(rateLimitPlugin, { requestsPerMinute: config.requestsPerMinute });
  await app.register(requestLogPlugin);
  await app.register(webPlugin, { webRoot: config.webRoot });
  await app.register(webhooksPlugin, { settings: config });
  await app.register(recordSigningPlugin, { secretsKey: config.secretsKey });
  await app.register(descriptionPlugin);
  await app.register(referencePlugin);
  for (const routes of allRoutes) await app.register(routes);
  return app;
}
