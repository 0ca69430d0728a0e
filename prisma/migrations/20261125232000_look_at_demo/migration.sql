-- An invented shop that the people of another may look at; it goes with that one.
alter table shop add column demo_of uuid unique references shop (id) on delete cascade;
