import { tellWebhook } from "../webhooks/tell-webhook.ts";
import type { Task } from "./task.ts";

/** Quick work: a few at once, none of which keeps the others waiting for long. */
export const quickTasks: readonly Task[] = [tellWebhook];
