//! Long jobs: they run outside the window's thread, show progress and can be stopped.

use crate::error::CallError;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
#[cfg(feature = "desk")]
use surefoot_desk::ImportReport;
use surefoot_record::Thing;
use ts_rs::TS;

/// A long job by its number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct JobId {
    /// Its number.
    pub job: u32,
}

/// The state of a long job. The screens ask about every 200 ms until there is a `result`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct JobState {
    /// Steps done.
    pub done: u32,
    /// Steps in all; 0 while unknown.
    pub total: u32,
    /// Its result, once it is over.
    pub result: Option<JobResult>,
}

/// The result of a long job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum JobResult {
    /// The sample class is ready.
    SampleReady,
    /// An import is over, or was stopped.
    #[cfg(feature = "desk")]
    Import {
        /// Its report.
        report: ImportReport,
    },
    /// It failed, or was stopped.
    Failed {
        /// Why.
        error: CallError,
    },
}

/// The progress of a job, and whether it should stop.
#[derive(Debug, Default)]
pub struct Progress {
    done: AtomicU32,
    total: AtomicU32,
    stop: AtomicBool,
}

impl Progress {
    /// Sets the number of steps in all.
    pub fn expect(&self, steps: usize) {
        self.total
            .store(u32::try_from(steps).unwrap_or(u32::MAX), Ordering::Relaxed);
    }

    /// Counts a step as done.
    pub fn step(&self) {
        self.done.fetch_add(1, Ordering::Relaxed);
    }

    /// Steps done and steps in all.
    #[must_use]
    pub fn state(&self) -> (u32, u32) {
        (
            self.done.load(Ordering::Relaxed),
            self.total.load(Ordering::Relaxed),
        )
    }

    /// Asks the job to stop.
    pub fn stop(&self) {
        self.stop.store(true, Ordering::Relaxed);
    }

    /// Whether the job was asked to stop.
    #[must_use]
    pub fn stopped(&self) -> bool {
        self.stop.load(Ordering::Relaxed)
    }
}

struct Job {
    progress: Arc<Progress>,
    result: Arc<Mutex<Option<JobResult>>>,
}

/// Runs jobs in threads of their own.
#[cfg(not(target_family = "wasm"))]
struct Runner(Option<tokio::runtime::Runtime>);

#[cfg(not(target_family = "wasm"))]
impl Runner {
    fn new() -> Result<Self, CallError> {
        let runtime = tokio::runtime::Builder::new_multi_thread()
            .worker_threads(1)
            .max_blocking_threads(4)
            .thread_name("surefoot-job")
            .build()
            .map_err(|e| CallError::Storage {
                detail: e.to_string(),
            })?;
        Ok(Self(Some(runtime)))
    }

    fn run(&self, work: impl FnOnce() + Send + 'static) {
        if let Some(runtime) = &self.0 {
            runtime.spawn_blocking(work);
        }
    }
}

#[cfg(not(target_family = "wasm"))]
impl Drop for Runner {
    fn drop(&mut self) {
        if let Some(runtime) = self.0.take() {
            runtime.shutdown_background();
        }
    }
}

/// Runs jobs at once: a browser's worker has one thread, which is not the page's.
#[cfg(target_family = "wasm")]
struct Runner;

#[cfg(target_family = "wasm")]
impl Runner {
    fn new() -> Result<Self, CallError> {
        Ok(Self)
    }

    fn run(&self, work: impl FnOnce() + Send + 'static) {
        work();
    }
}

/// The jobs of the program.
pub(crate) struct Jobs {
    runner: Runner,
    jobs: Mutex<BTreeMap<u32, Job>>,
}

/// Ended jobs whose results are kept.
const REMEMBERED: usize = 16;

impl Jobs {
    pub(crate) fn new() -> Result<Self, CallError> {
        Ok(Self {
            runner: Runner::new()?,
            jobs: Mutex::default(),
        })
    }

    pub(crate) fn start(
        &self,
        work: impl FnOnce(&Progress) -> Result<JobResult, CallError> + Send + 'static,
    ) -> JobId {
        let progress = Arc::new(Progress::default());
        let result = Arc::new(Mutex::new(None));
        let mut jobs = self.jobs.lock().unwrap_or_else(PoisonError::into_inner);
        let number = jobs.keys().last().map_or(1, |last| last + 1);
        while jobs.len() >= REMEMBERED {
            let over = jobs
                .iter()
                .find(|(_, job)| is_over(job))
                .map(|(number, _)| *number);
            match over {
                Some(over) => drop(jobs.remove(&over)),
                None => break,
            }
        }
        jobs.insert(
            number,
            Job {
                progress: Arc::clone(&progress),
                result: Arc::clone(&result),
            },
        );
        drop(jobs);
        self.runner.run(move || {
            // A panic ends the job too; otherwise the screens would wait for ever.
            let outcome = catch_unwind(AssertUnwindSafe(|| work(&progress)))
                .unwrap_or_else(|panic| Err(panicked(panic.as_ref())))
                .unwrap_or_else(|error| JobResult::Failed { error });
            *result.lock().unwrap_or_else(PoisonError::into_inner) = Some(outcome);
        });
        JobId { job: number }
    }

    /// Whether a job runs.
    pub(crate) fn any_running(&self) -> bool {
        let jobs = self.jobs.lock().unwrap_or_else(PoisonError::into_inner);
        jobs.values().any(|job| !is_over(job))
    }

    pub(crate) fn state(&self, id: JobId, stop: bool) -> Result<JobState, CallError> {
        let jobs = self.jobs.lock().unwrap_or_else(PoisonError::into_inner);
        let job = jobs
            .get(&id.job)
            .ok_or(CallError::NotFound { what: Thing::Job })?;
        if stop {
            job.progress.stop();
        }
        let (done, total) = job.progress.state();
        let result = job
            .result
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone();
        Ok(JobState {
            done,
            total,
            result,
        })
    }
}

fn panicked(panic: &(dyn std::any::Any + Send)) -> CallError {
    let words = (panic.downcast_ref::<&str>().copied())
        .or_else(|| panic.downcast_ref::<String>().map(String::as_str));
    CallError::Internal {
        detail: words.unwrap_or("a job ended in a panic").to_owned(),
    }
}

fn is_over(job: &Job) -> bool {
    job.result
        .lock()
        .unwrap_or_else(PoisonError::into_inner)
        .is_some()
}

impl Drop for Jobs {
    fn drop(&mut self) {
        // Jobs write in whole steps, so nobody needs to wait until they stop.
        for job in self
            .jobs
            .get_mut()
            .unwrap_or_else(PoisonError::into_inner)
            .values()
        {
            job.progress.stop();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::time::{Duration, Instant};

    fn result(jobs: &Jobs, job: JobId) -> JobResult {
        let begun = Instant::now();
        loop {
            if let Some(result) = jobs.state(job, false).unwrap().result {
                return result;
            }
            assert!(begun.elapsed() < Duration::from_secs(20), "still running");
            std::thread::sleep(Duration::from_millis(5));
        }
    }

    #[test]
    fn a_job_that_panics_ends_as_failed() {
        let jobs = Jobs::new().unwrap();
        let job = jobs.start(|_| panic!("no such row"));
        let error = CallError::Internal {
            detail: "no such row".into(),
        };
        assert_eq!(result(&jobs, job), JobResult::Failed { error });
        assert!(!jobs.any_running());
        let next = jobs.start(|_| Ok(JobResult::SampleReady));
        assert_eq!(result(&jobs, next), JobResult::SampleReady);
    }
}
