import type { SignedHead } from "@cornerway/schema";
import { isSigned, signed, type SigningKey } from "./record-key.ts";

type Head = Pick<SignedHead, "project" | "number" | "head" | "time">;

/** Signs a tree head. */
export const signHead = (head: Head, key: SigningKey): SignedHead => ({
  ...head,
  fingerprint: key.stated.fingerprint,
  signature: signed(statement(head), key.privateKey),
});

/** True when the head was signed by that key. */
export const isHeadSigned = (head: SignedHead, publicKey: string): boolean =>
  isSigned(statement(head), head.signature, publicKey);

/** What a signature is over; `what` keeps a signature over one thing from passing for one over another. */
const statement = ({ project, number, head, time }: Head) => ({ head, number, project, time, what: "record head" });
