//! Care of the door.

use hangtrue_core::hang::care::Work;

/// A piece of work told step by step.
#[derive(Debug)]
pub struct Guide {
    /// What it is.
    pub title: &'static str,
    /// What to mind before anything.
    pub caution: &'static str,
    /// The steps.
    pub steps: &'static [&'static str],
    /// When to stop.
    pub stop: &'static str,
}

/// Care.
#[derive(Debug)]
pub struct Care {
    /// Heading.
    pub heading: &'static str,
    /// Over the check before each use.
    pub before: &'static str,
    /// The check.
    pub before_list: [&'static str; 6],
    /// If one is not so.
    pub before_stop: &'static str,
    /// Over what is due.
    pub due: &'static str,
    /// When it was hung.
    pub hung: &'static str,
    /// How a day is written.
    pub day_hint: &'static str,
    /// How often it is opened.
    pub per_day: &'static str,
    /// Without the day it was hung.
    pub no_day: &'static str,
    /// In so many days, on this day.
    pub due_in: fn(i32, &str) -> String,
    /// A work.
    pub work: fn(Work) -> &'static str,
    /// The intervals are common practice.
    pub source: &'static str,
    /// Over the oil.
    pub oil: &'static str,
    /// What, where, where never.
    pub oil_list: [&'static str; 4],
    /// Over the guides.
    pub guides_heading: &'static str,
    /// The guides.
    pub guides: [Guide; 4],
    /// Its stop.
    pub stop: &'static str,
    /// What was done.
    pub done: &'static str,
    /// Over what is to be added.
    pub add_heading: &'static str,
    /// What was done; day; note.
    pub add_fields: [&'static str; 3],
    /// Put it into the record.
    pub add: &'static str,
    /// Take it out.
    pub drop: &'static str,
    /// That a service makes a new link.
    pub new_link: &'static str,
    /// What to order.
    pub sizes: &'static str,
    /// The door was ordered under these rules, which are not here: what is due goes by others.
    pub not_here: fn(&str) -> String,
    /// Width and height, panels, rollers, seals of sides and header: from the door's numbers.
    pub sizes_list: fn([&str; 2], u32, u32, [&str; 2]) -> [String; 4],
}
