-- What a project pays for work and steel. Each change is a book of its own; before the first the book for show holds.
create table "cost_book" (
  "project_id" uuid not null,
  "number" integer not null,
  "book" jsonb not null,
  "digest" text not null,
  "author" jsonb not null,
  "changed_at" timestamptz(3) not null,
  constraint "cost_book_pkey" primary key ("project_id", "number"),
  constraint "cost_book_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);

-- The owner's word on the price of a revision, or of a request made on it.
create table "decision" (
  "project_id" uuid not null,
  "id" uuid not null,
  "revision" text not null,
  "request_id" uuid,
  "decision" text not null,
  "reason" text,
  "content_digest" text not null,
  "cost_book_digest" text not null,
  "premium_digest" text not null,
  "money" double precision not null,
  "currency" text not null,
  "for_show" boolean not null,
  "author" jsonb not null,
  "decided_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "decision_pkey" primary key ("project_id", "id"),
  constraint "decision_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);

do $$
declare
  kept text;
begin
  foreach kept in array array['cost_book', 'decision'] loop
    execute format('create trigger %I before update or delete on %I for each row execute function "refuse_alteration"()', kept || '_kept', kept);
    execute format('create trigger %I before truncate on %I for each statement execute function "refuse_alteration"()', kept || '_whole', kept);
    execute format('grant select, insert on %I to cornerway_service', kept);
  end loop;
end
$$;
