//! The scenarios. Each file holds those of one subject.

// A panic here is a failed scenario, and indexing JSON gives null where there is nothing.
#![allow(clippy::indexing_slicing)]

use std::process::ExitCode;

use hangtrue_browser::scenario;

mod harness;
mod patch;
mod smoke;

fn main() -> ExitCode {
    hangtrue_browser::run(&[
        scenario!(harness::a_line_on_the_console_is_seen),
        scenario!(harness::a_policy_broken_is_seen),
        scenario!(harness::a_request_to_another_origin_is_seen),
        scenario!(harness::a_tap_on_what_is_covered_is_refused),
        scenario!(harness::a_stopped_server_refuses),
        scenario!(harness::roles_and_names_are_computed),
        scenario!(patch::any_tree_becomes_any_other),
        scenario!(patch::the_same_again_touches_nothing),
        scenario!(patch::focus_and_selection_stay),
        scenario!(patch::rows_with_keys_stay_themselves),
        scenario!(patch::what_is_typed_stays),
        scenario!(patch::a_composition_is_left_alone),
        scenario!(patch::choices_follow_the_model),
        scenario!(patch::what_a_person_opened_stays_open),
        scenario!(patch::text_from_a_stranger_stays_text),
        scenario!(patch::a_shadow_root_is_a_root_too),
        scenario!(smoke::the_page_loads),
    ])
}
