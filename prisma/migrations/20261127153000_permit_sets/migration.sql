-- Permit sets that were asked for. Their rows move on until they are done; what is printed is never altered after that.
create table "permit_set" (
  "project_id" uuid not null,
  "id" uuid not null,
  "letter" text not null,
  "units" text not null,
  "up_to" integer not null,
  "asked_by" jsonb not null,
  "asked_at" timestamptz(3) not null,
  "body_digest" text not null,
  "state" text not null default 'waiting',
  "started_at" timestamptz(3),
  "pages_done" integer not null default 0,
  "pages_of" integer not null default 0,
  "done_at" timestamptz(3),
  "why" text,
  "set_digest" text,
  "pdf" bytea,
  constraint "permit_set_pkey" primary key ("project_id", "id"),
  constraint "permit_set_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
create index "permit_set_state_idx" on "permit_set" ("state");

create function "refuse_printed"() returns trigger language plpgsql as $$
begin
  if old."state" <> 'waiting' then
    raise exception 'a set that is % is not altered', old."state" using errcode = 'restrict_violation';
  end if;
  return new;
end
$$;
create trigger "permit_set_printed" before update on "permit_set" for each row execute function "refuse_printed"();

grant select, insert, update on "permit_set" to cornerway_service;
