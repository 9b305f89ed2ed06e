//! The two SQLite stores: a student's, and the teacher's desk.
