// Ends with 0 when the service on this machine's PORT is ready: what a container is asked whether it is healthy.
const port = process.env["PORT"] || "3000";
const ready = await fetch(`http://127.0.0.1:${port}/ready`).then(
  (answer) => answer.ok,
  () => false,
);
process.exitCode = ready ? 0 : 1;
