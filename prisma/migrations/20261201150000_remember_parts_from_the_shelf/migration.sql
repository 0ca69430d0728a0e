-- A part used beside any visit is taken from the shelf at once, as far as that holds it: taken back, no more goes there than
-- came from there. Of uses recorded before, nobody knows: all of them counts.
alter table part_use add column from_shelf numeric(12, 3) check (from_shelf >= 0);
