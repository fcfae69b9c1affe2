//! What cannot be, and what is questioned: one rule, one file.
