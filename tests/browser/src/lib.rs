//! Drives the built site (`dist/`) in real browsers over WebDriver.
//!
//! A scenario is an `async fn(&mut Browser) -> Result<()>` in a file under `tests/`. The suite runs
//! it once an engine, each time with a fresh browser, a fresh profile and a server of its own, and
//! afterwards fails it for any line left on the console and for any request to another origin.
//! Waiting is polling with a deadline, never a pause; nothing is tried a second time.

// Indexing JSON gives null where there is nothing: it does not panic.
#![allow(clippy::indexing_slicing)]

mod browser;
mod camera;
mod command;
mod driver;
mod engine;
mod screen;
mod server;
mod suite;

pub use browser::Browser;
pub use camera::{Camera, Frame};
pub use engine::{Engine, Feature};
pub use screen::{Media, Screen};
pub use server::{Server, Site, folder_of_target, root};
pub use suite::{Scenario, run};
