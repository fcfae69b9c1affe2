//! The frame: what must be built before a door fits, and which ordered numbers that changes.
