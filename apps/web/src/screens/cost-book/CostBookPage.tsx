import type { ProjectCostBook } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useCostBook } from "../../data/cost-book.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { BookForm } from "./BookForm.tsx";
import "../../prices/prices.css";
import "./cost-book.css";

/** What the project pays for work and steel, each figure with its source. */
export function CostBookPage() {
  const { project } = useRoom();
  const costBook = useCostBook(project);
  const hidden = whyNot(project, "read-prices");
  if (hidden !== undefined) return <Page>{<p>{hidden}</p>}</Page>;
  if (costBook.isPending) return <Ruled label="Fetching the cost book" />;
  if (costBook.data === undefined) return <Trouble error={costBook.error} again={() => void costBook.refetch()} />;
  return (
    <Page>
      <Standing costBook={costBook.data} />
      <BookForm costBook={costBook.data} />
    </Page>
  );
}

function Page({ children }: { children: React.ReactNode }) {
  const { project } = useRoom();
  return (
    <PageSheet
      title={`${project.name}, cost book`}
      caption={`${project.client} · ${project.place}`}
      heading={`${project.name}: cost book`}
      way={
        <>
          <Link className="command command-quiet" to="/projects/$projectId/premium" params={{ projectId: project.id }}>
            What it comes to
          </Link>
          <Link className="command" to="/projects/$projectId" params={{ projectId: project.id }}>
            To the sheets
          </Link>
        </>
      }
    >
      {children}
    </PageSheet>
  );
}

/** Which book this is, whose, and what a figure without a source means. */
function Standing({ costBook: { number, changed } }: { costBook: ProjectCostBook }) {
  return (
    <p>
      {changed === null
        ? "Nobody has written into this book yet: every figure is for show. "
        : `Book ${number}, written by ${changed.by.name} on ${changed.at.slice(0, 10)}. `}
      A figure without a source is for show, and so is every price made with it. Each book written here is kept in the
      record; prices follow the newest, and what the owner agreed to by an older one stands no more.
    </p>
  );
}
