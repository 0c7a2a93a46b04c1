// A thread that ends when it is asked for something.
import { parentPort } from "node:worker_threads";

parentPort?.once("message", () => process.exit(0));
