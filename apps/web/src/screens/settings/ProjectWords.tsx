import type { Project } from "@cornerway/schema";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictWords } from "../../look/verdict-class.ts";
import { whoseTurn } from "../../wording/whose-turn.ts";

/** What the project is called, whose it is, and where it stands. */
export const ProjectWords = ({ project }: { project: Project }) => (
  <table className="settings-words">
    <tbody>
      <tr>
        <th scope="row">Name</th>
        <td>{project.name}</td>
      </tr>
      <tr>
        <th scope="row">Place</th>
        <td>{project.place}</td>
      </tr>
      <tr>
        <th scope="row">Owner</th>
        <td>{project.client}</td>
      </tr>
      <tr>
        <th scope="row">Your part</th>
        <td>{project.roles.join(", ")}</td>
      </tr>
      <tr>
        <th scope="row">Revision</th>
        <td>{project.revision ?? "none sent yet"}</td>
      </tr>
      <tr>
        <th scope="row">Stands</th>
        <td>
          <VerdictSymbol verdict={project.verdict} sizePx={14} /> {verdictWords(project.verdict)}, {whoseTurn(project)}
        </td>
      </tr>
      <tr>
        <th scope="row">Record</th>
        <td>{project.last} entries</td>
      </tr>
    </tbody>
  </table>
);
