//! Concepts, strands, "I can" statements, prerequisites and alignments.
