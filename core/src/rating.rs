//! A student's own view of a concept, and how the review went.
