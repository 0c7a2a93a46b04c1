-- Whether someone is told by letter of what concerns them; no row means by no letter. `lettered_at` is when a daily one went last.
create table "notice_setting" (
  "person_id" uuid not null,
  "letters" text not null,
  "since" timestamptz(3) not null default current_timestamp,
  "lettered_at" timestamptz(3),
  constraint "notice_setting_pkey" primary key ("person_id"),
  constraint "notice_setting_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete cascade on update no action,
  constraint "notice_setting_letters" check ("letters" in ('none', 'at once', 'daily'))
);

-- Up to which entry someone has seen a project's record, and up to which letters have told them.
create table "notice_mark" (
  "project_id" uuid not null,
  "person_id" uuid not null,
  "seen" integer not null default 0,
  "lettered" integer not null default 0,
  constraint "notice_mark_pkey" primary key ("project_id", "person_id"),
  constraint "notice_mark_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action,
  constraint "notice_mark_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete cascade on update no action
);
create index "notice_mark_person_id_idx" on "notice_mark" ("person_id");

grant select, insert, update on "notice_setting", "notice_mark" to cornerway_service;
