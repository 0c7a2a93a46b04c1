create table kept_row (name text primary key);
grant select, insert on kept_row to cornerway_service;
