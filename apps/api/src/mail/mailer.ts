/** A letter to one person, in plain text. */
export interface Letter {
  to: string;
  subject: string;
  text: string;
}

/** A way for letters to leave. `send` resolves once the letter is taken over and rejects when it is not; it never logs one. */
export interface Mailer {
  send(letter: Letter): Promise<void>;
  close(): void;
}
