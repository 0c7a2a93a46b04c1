import type { Photo } from "@cornerway/schema";
import { fileAddress } from "../data/file.ts";
import { useRoom } from "../room/room-context.ts";
import "./photos.css";

/** Photos in a row, each to be saved whole. */
export function PhotoStrip({ photos }: { photos: readonly Photo[] }) {
  const { project } = useRoom();
  if (photos.length === 0) return null;
  return (
    <ul className="photo-strip">
      {photos.map(({ fileId }, at) => (
        <li key={fileId}>
          <a href={fileAddress(project.id, fileId)} download>
            <img
              src={fileAddress(project.id, fileId)}
              alt={`${at + 1} of ${photos.length}, to save whole`}
              loading="lazy"
            />
          </a>
        </li>
      ))}
    </ul>
  );
}
