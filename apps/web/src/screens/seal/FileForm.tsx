import type { KeptFile } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { keepFile } from "../../data/file.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

/** Chooses a PDF and has it kept as it is. One choice, one id: sent again it is the same file. */
export function FileForm({
  label,
  command,
  asleepBecause,
  onKept,
}: {
  label: string;
  command: string;
  asleepBecause?: string | undefined;
  onKept: (file: KeptFile) => void;
}) {
  const { project } = useRoom();
  const [chosen, choose] = useState<{ id: string; file: File } | null>(null);
  const keep = useMutation({
    mutationFn: ({ id, file }: { id: string; file: File }) => keepFile(project.id, id, file),
    onSuccess: (kept) => {
      choose(null);
      onKept(kept);
    },
  });
  const because = chosen === null ? "Choose the PDF first." : keep.isPending ? "It is on its way." : undefined;
  return (
    <div className="seal-acts">
      <PersonField label={label}>
        {(bound) => (
          <input
            {...bound}
            type="file"
            accept="application/pdf,.pdf"
            onChange={({ target }) => {
              const file = target.files?.[0];
              choose(file === undefined ? null : { id: newUuid(), file });
            }}
          />
        )}
      </PersonField>
      <Command
        onPress={() => {
          if (chosen !== null) keep.mutate(chosen);
        }}
        asleepBecause={asleepBecause ?? because}
      >
        {command}
      </Command>
      <Refused error={keep.error} />
    </div>
  );
}
