import { archiveLimits, Digest, type ArchiveBroughtIn } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { useBringInArchive } from "../../data/archive.ts";
import { digestGroups } from "../../wording/digest-groups.ts";

const mb = archiveLimits.fileBytes / 1024 / 1024;

/** An administrator brings in a project from the archive another service made of it. */
export function ArchiveForm() {
  const bring = useBringInArchive();
  const [file, choose] = useState<File | null>(null);
  const [typed, type] = useState("");
  const key = typed.replaceAll(/\s/g, "").toLowerCase();
  const keyFault = key === "" || Digest.safeParse(key).success ? undefined : "A fingerprint has 64 signs, 0 to f.";
  const because = bring.isPending ? "It is being checked." : whyNot(file, keyFault);
  const press = () => {
    if (file !== null) bring.mutate({ file, key: key === "" ? null : key });
  };
  return (
    <section className="start-project" aria-labelledby="bring-in-archive">
      <h2 className="caption" id="bring-in-archive">
        Or bring one in from its archive
      </h2>
      <p>
        The archive is checked whole before any of it is kept: every file, every signature, every entry of its record.
        It comes as it is, marked with who signed it; nothing of it is signed anew. Nobody has a part in it until they
        are asked in.
      </p>
      <PersonField label={`Archive of a project, at most ${mb} MB`}>
        {(bound) => (
          <input
            {...bound}
            type="file"
            accept=".zip,application/zip"
            onChange={({ target }) => {
              choose(target.files?.[0] ?? null);
              bring.reset();
            }}
          />
        )}
      </PersonField>
      <PersonField label="Fingerprint of the key it must be signed by, as told to you some other way" fault={keyFault}>
        {(bound) => <input {...bound} value={typed} autoComplete="off" onChange={({ target }) => type(target.value)} />}
      </PersonField>
      <p>Without a fingerprint it can be found whole, and not from where it comes.</p>
      <Refused error={bring.error} />
      <Command onPress={press} asleepBecause={because}>
        {bring.isPending ? "Checking it" : "Bring it in"}
      </Command>
      {bring.data === undefined ? null : <BroughtIn told={bring.data} named={bring.variables.key !== null} />}
    </section>
  );
}

const whyNot = (file: File | null, keyFault: string | undefined): string | undefined => {
  if (file === null) return "Choose the archive first.";
  return file.size > archiveLimits.fileBytes ? `It is larger than ${mb} MB.` : keyFault;
};

function BroughtIn({ told, named }: { told: ArchiveBroughtIn; named: boolean }) {
  const { projectId, name, entries, signedBy, signedAt } = told;
  return (
    <div role="status">
      <p>
        {name} is here with {entries} entries of its record, brought in, signed {dayAndTimeOf(signedAt)} by the key{" "}
        <code className="digest">{digestGroups(signedBy, 16)}</code>
        {named ? ", the one you named." : ". Nothing was named to hold that key against: its origin is not proved."}
      </p>
      <Link className="command" to="/projects/$projectId/people" params={{ projectId }}>
        Ask people into {name}
      </Link>
    </div>
  );
}
