//! The main job through the one door, on real stores and real files.

mod bad_files;
mod student_days;
mod support;
mod teacher_desk;
mod whole_job;
