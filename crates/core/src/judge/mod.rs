//! The judge: which reading is wrong, and which one reading would settle it.
