//! The calls, on real stores and real files.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test that cannot go on fails"
)]

mod bad_files;
mod class_folder;
mod class_folder_devices;
mod class_folder_weeks;
mod desk_lock;
mod disks;
#[cfg(unix)]
mod document_folder;
mod keeping;
mod modes;
mod moves;
mod one_seat;
mod own_ways;
mod pack_once;
mod printing;
#[cfg(unix)]
mod provider;
mod removal;
mod reports;
mod second_device;
mod shared_tablet;
mod student_days;
mod support;
mod teacher_desk;
mod whole_job;
mod zips;
