/** When what a thread says is heard. An answer is large: it is read out of the message only then. */
export type Hearing = (hear: () => void) => void;

export const atOnce: Hearing = (hear) => hear();
