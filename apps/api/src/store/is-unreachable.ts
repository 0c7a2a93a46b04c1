import { Prisma } from "../generated/prisma/client.ts";

/** Prisma's codes for a database that is away, closing, or too busy to give a connection or a transaction in time. */
const unreachable = new Set(["P1001", "P1002", "P1008", "P1017", "P2024", "P2028"]);
/** Raw queries come back under one code for everything, so that only the words tell. 57P01 to 57P03: PostgreSQL is going down or coming up. */
const words = /ECONNREFUSED|ECONNRESET|EPIPE|Can't reach database|closed the connection|\bterminated\b|57P0[123]/;

/** True when an error means that the database could not be asked, so that trying again may help. */
export function isUnreachable(error: unknown): boolean {
  if (error instanceof Prisma.PrismaClientInitializationError) return true;
  if (error instanceof Prisma.PrismaClientKnownRequestError)
    return unreachable.has(error.code) || saysUnreachable(error);
  return saysUnreachable(error);
}

const saysUnreachable = (error: unknown): boolean =>
  error instanceof Error && words.test(`${"code" in error ? String(error.code) : ""} ${error.message}`);
