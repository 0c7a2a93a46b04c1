import { acts, mayDo, maySee, recordKinds, roles } from "@cornerway/schema";
import type { Role } from "@cornerway/schema";
import { actNames, entryNames } from "../../wording/act-names.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";

/** The two tables by which the service allows and shows: what each part may do, and what it may see. */
export const MayTables = () => (
  <>
    <p>
      An engineer reads, and does nothing else, until the owner has said who the engineer is. One person never both
      draws and judges in a project. An administrator of the service sees to its people, and sees nothing of what is
      drawn.
    </p>
    <div className="page-columns">
      <MayTable
        id="people-do"
        heading="What each part may do"
        rows={acts.map((act) => ({ name: actNames[act], may: mayDo[act] }))}
      />
      <MayTable
        id="people-see"
        heading="What each part sees in the record"
        rows={recordKinds.map((kind) => ({ name: entryNames[kind], may: maySee[kind] }))}
      />
    </div>
  </>
);

function MayTable({
  id,
  heading,
  rows,
}: {
  id: string;
  heading: string;
  rows: readonly { name: string; may: readonly Role[] }[];
}) {
  return (
    <section aria-labelledby={id}>
      <h2 className="caption" id={id}>
        {heading}
      </h2>
      <PageScroll label={`Table: ${heading}`}>
        <table className="people-may">
          <thead>
            <tr className="caption">
              <th scope="col">
                <span className="unseen">What</span>
              </th>
              {roles.map((role) => (
                <th scope="col" key={role}>
                  {role}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, may }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {roles.map((role) => (
                  <td key={role}>{may.includes(role) ? <Tick /> : <span className="unseen">no</span>}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
    </section>
  );
}

const Tick = () => (
  <svg width="13" height="11" viewBox="0 0 13 11" role="img" aria-label="yes">
    <path d="M1.5 6l3.4 3.6L11.5 1.4" fill="none" stroke="var(--ink)" strokeWidth="1.6" />
  </svg>
);
