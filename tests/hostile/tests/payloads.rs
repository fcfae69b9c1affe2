//! What opening any payload costs at most. The figures of ten million are printed by
//! `cargo xtask hostile`; here a fixed number of them is held to the memory, and none to a
//! time, which a busy machine would decide.

#![allow(clippy::print_stdout, reason = "a test says what it measured")]

use hangtrue_hostile::payload::{BYTES_MOST, dense, random};

#[test]
fn random_payloads_stay_within_the_memory() {
    let seen = random(60_000, 1, false);
    println!("{seen:?}");
    assert!(seen.opened > 100, "changed golden ones are read: {seen:?}");
    assert!(seen.bytes > 0 && seen.bytes <= BYTES_MOST, "{seen:?}");
}

#[test]
fn the_densest_payloads_stay_within_the_memory() {
    let seen = dense(false);
    println!("{seen:?}");
    assert_eq!(seen.opened, seen.tried, "each is an order");
    assert!(seen.bytes > 0 && seen.bytes <= BYTES_MOST, "{seen:?}");
}
