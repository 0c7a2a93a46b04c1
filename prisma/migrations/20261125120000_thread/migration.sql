create table "person" (
  "id" uuid not null,
  "name" text not null,
  "email" text not null,
  "password_hash" text not null,
  "created_at" timestamptz(3) not null default current_timestamp,
  constraint "person_pkey" primary key ("id"),
  constraint "person_email_lower" check ("email" = lower("email"))
);
create unique index "person_email_key" on "person" ("email");

create table "session" (
  "id" text not null,
  "person_id" uuid not null,
  "created_at" timestamptz(3) not null default current_timestamp,
  "expires_at" timestamptz(3) not null,
  constraint "session_pkey" primary key ("id"),
  constraint "session_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete cascade on update no action
);
create index "session_person_id_idx" on "session" ("person_id");

create table "project" (
  "id" uuid not null,
  "name" text not null,
  "place" text not null,
  "client" text not null,
  "opened_at" timestamptz(3) not null default current_timestamp,
  "last" integer not null default 0,
  "last_at" timestamptz(3) not null default current_timestamp,
  "frontier" text[] default array[]::text[],
  constraint "project_pkey" primary key ("id")
);

create table "membership" (
  "project_id" uuid not null,
  "person_id" uuid not null,
  "role" text not null,
  constraint "membership_pkey" primary key ("project_id", "person_id", "role"),
  constraint "membership_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action,
  constraint "membership_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete no action on update no action,
  constraint "membership_role" check ("role" in ('architect', 'engineer', 'checker', 'owner', 'reader'))
);
create index "membership_person_id_idx" on "membership" ("person_id");

create table "draft" (
  "project_id" uuid not null,
  "number" integer not null default 0,
  "content_digest" text not null,
  "scheme" jsonb not null,
  constraint "draft_pkey" primary key ("project_id"),
  constraint "draft_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);

create table "draft_act" (
  "project_id" uuid not null,
  "id" uuid not null,
  "number" integer not null,
  "entry" integer not null,
  "person_id" uuid not null,
  "person_name" text not null,
  "body_digest" text not null,
  "content_digest" text not null,
  "undoes" uuid,
  "writes" text[],
  "operations" jsonb not null,
  "inverse" jsonb not null,
  constraint "draft_act_pkey" primary key ("project_id", "id"),
  constraint "draft_act_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
create unique index "draft_act_project_id_number_key" on "draft_act" ("project_id", "number");

create table "revision" (
  "project_id" uuid not null,
  "id" uuid not null,
  "ordinal" integer not null,
  "letter" text not null,
  "draft_number" integer not null,
  "content_digest" text not null,
  "scheme" jsonb not null,
  "container_count" integer not null,
  "remark" text,
  "author" jsonb not null,
  "sent_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "revision_pkey" primary key ("project_id", "id"),
  constraint "revision_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
create unique index "revision_project_id_ordinal_key" on "revision" ("project_id", "ordinal");
create unique index "revision_project_id_letter_key" on "revision" ("project_id", "letter");

create table "assessment" (
  "project_id" uuid not null,
  "letter" text not null,
  "state" text not null,
  "verdict" text not null,
  "result" jsonb,
  "result_digest" text,
  "engine_version" text not null,
  "why" text,
  "done_at" timestamptz(3) not null,
  constraint "assessment_pkey" primary key ("project_id", "letter"),
  constraint "assessment_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action,
  constraint "assessment_state" check ("state" in ('done', 'failed')),
  constraint "assessment_whole" check (("state" = 'done') = ("result" is not null and "result_digest" is not null))
);

create table "note" (
  "project_id" uuid not null,
  "id" uuid not null,
  "entry" integer not null,
  "element_id" text not null,
  "mark_id" text,
  "revision" text,
  "answers" uuid,
  "text" text not null,
  "author" jsonb not null,
  "written_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "note_pkey" primary key ("project_id", "id"),
  constraint "note_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);

create table "note_settlement" (
  "project_id" uuid not null,
  "note_id" uuid not null,
  "author" jsonb not null,
  "settled_at" timestamptz(3) not null,
  constraint "note_settlement_pkey" primary key ("project_id", "note_id"),
  constraint "note_settlement_project_id_note_id_fkey" foreign key ("project_id", "note_id") references "note" ("project_id", "id") on delete no action on update no action
);

create table "change_request" (
  "project_id" uuid not null,
  "id" uuid not null,
  "number" integer not null,
  "revision" text not null,
  "content_digest" text not null,
  "text" text not null,
  "operations" jsonb not null,
  "author" jsonb not null,
  "made_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "change_request_pkey" primary key ("project_id", "id"),
  constraint "change_request_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
create unique index "change_request_project_id_number_key" on "change_request" ("project_id", "number");

create table "request_answer" (
  "project_id" uuid not null,
  "request_id" uuid not null,
  "state" text not null,
  "act_id" uuid,
  "reason" text,
  "author" jsonb not null,
  "answered_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "request_answer_pkey" primary key ("project_id", "request_id"),
  constraint "request_answer_project_id_request_id_fkey" foreign key ("project_id", "request_id") references "change_request" ("project_id", "id") on delete no action on update no action,
  constraint "request_answer_state" check ("state" in ('taken in', 'declined'))
);

create table "stamp" (
  "project_id" uuid not null,
  "id" uuid not null,
  "revision" text not null,
  "disposition" text not null,
  "text" text not null,
  "content_digest" text not null,
  "result_digest" text not null,
  "author" jsonb not null,
  "pressed_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "stamp_pkey" primary key ("project_id", "id"),
  constraint "stamp_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);
create unique index "stamp_project_id_revision_key" on "stamp" ("project_id", "revision");

create table "record_entry" (
  "project_id" uuid not null,
  "number" integer not null,
  "at" timestamptz(3) not null,
  "actor_id" uuid not null,
  "actor_role" text not null,
  "kind" text not null,
  "payload_digest" text not null,
  "leaf" text not null,
  "head" text not null,
  constraint "record_entry_pkey" primary key ("project_id", "number"),
  constraint "record_entry_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action
);

create table "record_payload" (
  "project_id" uuid not null,
  "number" integer not null,
  "actor_name" text not null,
  "salt" text not null,
  "payload" jsonb not null,
  constraint "record_payload_pkey" primary key ("project_id", "number"),
  constraint "record_payload_project_id_number_fkey" foreign key ("project_id", "number") references "record_entry" ("project_id", "number") on delete no action on update no action
);

create table "rate_window" (
  "key" text not null,
  "count" integer not null,
  "ends_at" timestamptz(3) not null,
  constraint "rate_window_pkey" primary key ("key")
);

-- The record has no gaps: an entry follows the one before it or is not written.
create function "record_entry_follows"() returns trigger language plpgsql as $$
declare
  previous integer;
begin
  select coalesce(max("number"), 0) into previous from "record_entry" where "project_id" = new."project_id";
  if new."number" <> previous + 1 then
    raise exception 'record entry % of project % does not follow %', new."number", new."project_id", previous using errcode = 'CW002';
  end if;
  return new;
end
$$;
create trigger "record_entry_follows" before insert on "record_entry" for each row execute function "record_entry_follows"();

-- One person never judges a drawing they make.
create function "membership_excludes"() returns trigger language plpgsql as $$
begin
  if new."role" in ('architect', 'engineer', 'checker') and exists (
    select 1 from "membership" m where m."project_id" = new."project_id" and m."person_id" = new."person_id"
      and m."role" in ('architect', 'engineer', 'checker') and m."role" <> new."role"
  ) then
    raise exception 'one person cannot be % beside another drawing or judging role', new."role" using errcode = 'CW003';
  end if;
  return new;
end
$$;
create trigger "membership_excludes" before insert or update on "membership" for each row execute function "membership_excludes"();

-- What was once agreed is never altered: rows are added and read, nothing else.
create function "refuse_alteration"() returns trigger language plpgsql as $$
begin
  raise exception 'table % only takes new rows', tg_table_name using errcode = 'CW001';
end
$$;

do $$
declare
  kept text;
begin
  foreach kept in array array[
    'draft_act', 'revision', 'assessment', 'note', 'note_settlement', 'change_request', 'request_answer', 'stamp',
    'record_entry', 'record_payload'
  ] loop
    execute format('create trigger %I before update or delete on %I for each row execute function "refuse_alteration"()', kept || '_kept', kept);
    execute format('create trigger %I before truncate on %I for each statement execute function "refuse_alteration"()', kept || '_whole', kept);
    execute format('grant select, insert on %I to cornerway_service', kept);
  end loop;
end
$$;

grant usage on schema public to cornerway_service;
grant select on "person", "membership" to cornerway_service;
grant select, insert, delete on "session" to cornerway_service;
grant select on "project" to cornerway_service;
grant update ("last", "last_at", "frontier") on "project" to cornerway_service;
grant select on "draft" to cornerway_service;
grant update ("number", "content_digest", "scheme") on "draft" to cornerway_service;
grant select, insert, update, delete on "rate_window" to cornerway_service;
