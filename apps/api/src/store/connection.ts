import type { Prisma } from "../generated/prisma/client.ts";

/** Reads and writes, inside a transaction or outside. */
export type Connection = Prisma.TransactionClient;
