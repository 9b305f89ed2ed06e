//! The Surefoot window.
