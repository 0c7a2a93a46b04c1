export { DatabaseTrouble, type DatabaseTroubleCode } from "./database-trouble.ts";
export { migrate } from "./migrate.ts";
export { ensureServiceRole, SERVICE_ROLE } from "./service-role.ts";
export { startPostgres, type PostgresOptions, type RunningPostgres } from "./start-postgres.ts";
