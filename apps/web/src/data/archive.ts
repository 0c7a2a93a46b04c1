import { ArchiveBroughtIn } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { read } from "./api/client.ts";
import { sendFile } from "./file.ts";
import { keptProjectsKey } from "./people.ts";
import { readAgain } from "./read-again.ts";

/** An archive to bring in; `key` is the fingerprint its signer is known to have, by another way than the archive. */
export interface ArchiveToBringIn {
  file: File;
  key: string | null;
}

const addressOf = ({ key }: ArchiveToBringIn): string =>
  key === null ? "/api/archives" : `/api/archives?${new URLSearchParams({ key }).toString()}`;

/** Brings a project in from its archive. The service checks it whole before any of it is kept. */
export const useBringInArchive = () =>
  useMutation({
    mutationFn: (archive: ArchiveToBringIn) => read(ArchiveBroughtIn, sendFile(addressOf(archive), archive.file)),
    onSuccess: (_done, _given, _kept, { client }) => readAgain(client, { queryKey: keptProjectsKey }),
  });
