import { KeptFile } from "@cornerway/schema";
import { csrfToken } from "./csrf-token.ts";
import { NoAnswer } from "./http.ts";
import { read } from "./api/client.ts";

/** Where a kept file is saved from. */
export const fileAddress = (projectId: string, fileId: string): string => `/api/projects/${projectId}/files/${fileId}`;

/** Sends a file to be kept as it is, under an id made here; sent again it is the same file. */
export const keepFile = (projectId: string, id: string, file: File): Promise<KeptFile> =>
  read(KeptFile, sendFile(fileAddress(projectId, id), file));

/** Sends one file as a form, with what shows that this page sent it. */
export async function sendFile(address: string, file: File) {
  const body = new FormData();
  body.set("file", file);
  const headers = { "csrf-token": csrfToken.value };
  const asked = { method: "POST", headers, body, credentials: "same-origin" } as const;
  const response = await fetch(address, asked).catch((error: unknown) => {
    throw new NoAnswer(error);
  });
  const said: unknown = await response.json().catch(() => undefined); // no JSON is a refusal that `read` words
  return response.ok ? { data: said, response } : { error: said, response };
}
