-- A student's store, version 2: evenings a week.

ALTER TABLE student ADD COLUMN evenings INTEGER NOT NULL DEFAULT 5;
