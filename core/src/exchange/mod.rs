//! The files that travel: class pack, hand-in, carry file, seat code.
