//! The scenarios. Each file holds those of one subject.

use std::process::ExitCode;

use hangtrue_browser::scenario;

mod harness;
mod smoke;

fn main() -> ExitCode {
    hangtrue_browser::run(&[
        scenario!(harness::a_line_on_the_console_is_seen),
        scenario!(harness::a_policy_broken_is_seen),
        scenario!(harness::a_request_to_another_origin_is_seen),
        scenario!(harness::a_tap_on_what_is_covered_is_refused),
        scenario!(harness::a_stopped_server_refuses),
        scenario!(harness::roles_and_names_are_computed),
        scenario!(smoke::the_page_loads),
    ])
}
