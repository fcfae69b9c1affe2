//! Reading a tape and writing it down, from outside the crate.

mod accepted;
mod arbitrary;
mod arithmetic;
mod languages;
mod refused;
mod round_trip;
mod sentences;
mod spoken;
