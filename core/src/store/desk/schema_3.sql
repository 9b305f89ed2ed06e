-- The teacher's desk, version 3: bounds of practice at home, and a test to aim at.

ALTER TABLE class ADD COLUMN minutes_least INTEGER NOT NULL DEFAULT 4;
ALTER TABLE class ADD COLUMN minutes_most INTEGER NOT NULL DEFAULT 16;
ALTER TABLE class ADD COLUMN evenings_least INTEGER NOT NULL DEFAULT 1;
ALTER TABLE class ADD COLUMN evenings_most INTEGER NOT NULL DEFAULT 7;
ALTER TABLE class ADD COLUMN test_on TEXT;
