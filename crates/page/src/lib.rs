//! The whole screen as pure functions: [`Model`], [`update`] and [`view`].
//!
//! Nothing here touches a browser, so every screen is tested natively. Nothing
//! here validates, converts or formats a measurement either: the core does.

// No sum may panic: what comes from outside stops at the end of its scale (`saturating`), what is
// bounded by its own code says so (`wrapping`), and nothing is divided by nought (`checked`).
#![cfg_attr(not(test), warn(clippy::arithmetic_side_effects))]

mod address;
mod answers;
mod boot;
pub mod builder;
pub mod desk;
pub mod draft;
pub mod effect;
pub mod event;
pub mod field;
pub mod file;
pub mod guest;
pub mod hang;
mod language;
pub mod message;
pub mod model;
pub mod problems;
mod rest;
mod rules;
pub mod step;
pub mod text;
pub mod typeset;
mod update;
mod view;

pub use address::Address;
pub use boot::{Arrival, boot, boot_partial};
pub use effect::Effect;
pub use event::{Action, Event};
pub use hangtrue_core as core;
pub use hangtrue_link as link;
pub use language::language;
pub use model::{Environment, Model};
pub use step::Step;
pub use update::update;
pub use view::{first_screen, view};
