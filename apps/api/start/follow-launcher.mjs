// Loaded into the server before anything else. The server runs in a session of its own, out of reach of Ctrl-C; when the
// process that launched it is gone, by whatever way, it asks itself to end as if told to.
process.once("disconnect", () => process.kill(process.pid, "SIGTERM"));
process.channel?.unref();
