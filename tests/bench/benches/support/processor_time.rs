//! Time on the processor instead of time on the wall, so that a busy machine
//! does not pass for a slow program. Waiting for the disk is not counted.

use criterion::measurement::{Measurement, ValueFormatter, WallTime};
use std::time::{Duration, Instant};

/// Nanoseconds that this thread has run, as Linux counts them; elsewhere the
/// time on the wall.
fn ran() -> Duration {
    let counted = std::fs::read_to_string("/proc/thread-self/schedstat").ok();
    let first = counted.as_deref().and_then(|text| text.split(' ').next());
    match first.and_then(|number| number.parse().ok()) {
        Some(nanoseconds) => Duration::from_nanos(nanoseconds),
        None => {
            static BEGAN: std::sync::OnceLock<Instant> = std::sync::OnceLock::new();
            BEGAN.get_or_init(Instant::now).elapsed()
        }
    }
}

pub struct ProcessorTime;

impl Measurement for ProcessorTime {
    type Intermediate = Duration;
    type Value = Duration;

    fn start(&self) -> Duration {
        ran()
    }

    fn end(&self, began: Duration) -> Duration {
        ran().saturating_sub(began)
    }

    fn add(&self, a: &Duration, b: &Duration) -> Duration {
        *a + *b
    }

    fn zero(&self) -> Duration {
        Duration::ZERO
    }

    fn to_f64(&self, value: &Duration) -> f64 {
        WallTime.to_f64(value)
    }

    fn formatter(&self) -> &dyn ValueFormatter {
        WallTime.formatter()
    }
}
