import { parentPort } from "node:worker_threads";

// A thread that takes a task and is lost in it, as an engine that does not come to an end would be.
parentPort.on("message", () => {
  for (;;);
});
