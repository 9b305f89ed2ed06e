//! Home practice: memory, evidence, tonight's queue with its reasons.
