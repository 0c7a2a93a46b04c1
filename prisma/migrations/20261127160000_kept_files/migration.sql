-- Files as they came: calculations and sealed copies. Their bytes are never altered.
create table "kept_file" (
  "project_id" uuid not null,
  "id" uuid not null,
  "entry" integer not null,
  "name" text not null,
  "media_type" text not null,
  "digest" text not null,
  "size_bytes" integer not null,
  "bytes" bytea not null,
  "author" jsonb not null,
  "kept_at" timestamptz(3) not null,
  constraint "kept_file_pkey" primary key ("project_id", "id"),
  constraint "kept_file_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action,
  constraint "kept_file_whole" check (octet_length("bytes") = "size_bytes" and encode(sha256("bytes"), 'hex') = "digest")
);
create trigger "kept_file_kept" before update or delete on "kept_file" for each row execute function "refuse_alteration"();
create trigger "kept_file_whole" before truncate on "kept_file" for each statement execute function "refuse_alteration"();
grant select, insert on "kept_file" to cornerway_service;
