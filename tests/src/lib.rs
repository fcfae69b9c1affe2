//! Helpers shared by the checks in this folder.
