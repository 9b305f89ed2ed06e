//! The words people read, in English and Spanish, from `shared/messages`.
