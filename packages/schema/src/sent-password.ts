import { z } from "zod";

/** A password as it is sent; what it must be is said by `passwordFault`. */
export const SentPassword = z.string().min(1).max(512);
