import "./scheme-file.css";

/** The draft, or a revision, as the service saves it: with the cautions and its content digest. */
export const SaveFile = ({ projectId, letter }: { projectId: string; letter: string | null }) => (
  <a
    className="command command-quiet"
    download
    href={`/api/projects/${projectId}/${letter === null ? "draft" : `revisions/${letter}`}/file`}
  >
    Take it as a file
  </a>
);
