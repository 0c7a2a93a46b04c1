import { mostPhotos, type Photo } from "@cornerway/schema";
import { useMutation } from "@tanstack/react-query";
import { Command } from "../controls/Command.tsx";
import { PersonField } from "../controls/PersonField.tsx";
import { Refused } from "../controls/Refused.tsx";
import { keepFile } from "../data/file.ts";
import { useRoom } from "../room/room-context.ts";
import { newUuid } from "../tools/new-uuid.ts";
import { PhotoStrip } from "./PhotoStrip.tsx";

/** Takes photos, on a phone with its camera, and has each kept at once; what they belong to is said with the act. */
export function PhotoField({
  label,
  photos,
  onPhotos,
}: {
  label: string;
  photos: readonly Photo[];
  onPhotos: (photos: readonly Photo[]) => void;
}) {
  const { project } = useRoom();
  const keep = useMutation({
    mutationFn: async (files: readonly File[]) => {
      const kept: Photo[] = [];
      for (const file of files) {
        const { id: fileId, digest } = await keepFile(project.id, newUuid(), file);
        kept.push({ fileId, digest });
      }
      return kept;
    },
    onSuccess: (kept) => onPhotos([...photos, ...kept].slice(0, mostPhotos)),
  });
  return (
    <div className="photo-field">
      <PersonField label={label}>
        {(bound) => (
          <input
            {...bound}
            type="file"
            accept="image/jpeg,image/png"
            capture="environment"
            multiple
            onChange={({ target }) => {
              const files = [...(target.files ?? [])];
              target.value = "";
              if (files.length > 0) keep.mutate(files);
            }}
          />
        )}
      </PersonField>
      {keep.isPending ? <p role="status">The photo is on its way.</p> : null}
      <PhotoStrip photos={photos} />
      {photos.length === 0 ? null : (
        <Command quiet onPress={() => onPhotos(photos.slice(0, -1))}>
          Leave the last photo out
        </Command>
      )}
      <Refused error={keep.error} />
    </div>
  );
}
