/** A failure whose message is one line that says what went wrong and what to do; it is shown as it stands, without a trace. */
export class StartFailure extends Error {}

/** Thrown through the steps when the user asked for the end before the service was up. */
export class Stopped extends Error {}
