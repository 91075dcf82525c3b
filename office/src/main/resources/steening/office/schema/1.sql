create table entry (
  arrival  integer primary key,
  id       text not null unique,
  device   text not null,
  sequence integer not null,
  well     text not null,
  text     text not null
) strict;

create index entry_by_device on entry (device, sequence);

-- other contents that came under an id already taken
create table quarantine (
  arrival integer primary key,
  id      text not null,
  text    text not null,
  unique (id, text)
) strict;

create table office (
  name  text primary key,
  value text not null
) strict, without rowid;

create trigger entry_is_never_changed before update on entry
begin select raise(abort, 'an entry is never changed'); end;

create trigger entry_is_never_deleted before delete on entry
begin select raise(abort, 'an entry is never deleted'); end;
