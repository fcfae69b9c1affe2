//! The scenarios. Each file holds those of one subject.

// A panic here is a failed scenario, and indexing JSON gives null where there is nothing.
#![allow(clippy::indexing_slicing)]

use std::process::ExitCode;

use hangtrue_browser::scenario;

mod access;
mod builder;
mod camera;
mod desk;
mod desk_files;
mod desk_many;
mod desk_sent;
mod desk_ways;
mod drafts;
mod embed;
mod embed_frame;
mod embed_host;
mod faults;
mod fits;
mod fitting;
mod focus;
mod hang;
mod hang_kept;
mod harness;
mod history;
mod injection;
mod injection_ruled;
mod languages;
mod links;
mod memory;
mod offline;
mod orders;
mod paper;
mod partial;
mod patch;
mod picture;
mod pictures;
mod second_reader;
mod semantics;
mod share;
mod smoke;
mod states;
mod tape;
mod targets;
mod typing;
mod walk;

fn main() -> ExitCode {
    hangtrue_browser::run(&[
        scenario!(harness::a_line_on_the_console_is_seen),
        scenario!(harness::a_policy_broken_is_seen),
        scenario!(harness::a_request_to_another_origin_is_seen; Requests),
        scenario!(harness::a_finger_touches; Touch),
        scenario!(harness::media_are_what_they_are_set_to),
        scenario!(harness::a_tap_on_what_is_covered_is_refused),
        scenario!(harness::a_stopped_server_refuses),
        scenario!(harness::a_wait_goes_over_pages_that_are_left),
        scenario!(harness::roles_and_names_are_computed),
        scenario!(patch::any_tree_becomes_any_other),
        scenario!(patch::the_same_again_touches_nothing),
        scenario!(patch::focus_and_selection_stay),
        scenario!(patch::rows_with_keys_stay_themselves),
        scenario!(patch::what_is_typed_stays),
        scenario!(patch::a_composition_is_left_alone; Composition),
        scenario!(patch::choices_follow_the_model),
        scenario!(patch::what_a_person_opened_stays_open),
        scenario!(patch::text_from_a_stranger_stays_text),
        scenario!(patch::a_shadow_root_is_a_root_too),
        scenario!(patch::what_others_changed_is_made_anew),
        scenario!(patch::a_change_that_asks_for_another),
        scenario!(smoke::the_page_loads),
        scenario!(walk::by_touch),
        scenario!(walk::by_keyboard_alone),
        scenario!(typing::a_field_that_is_touched_stays_where_it_is),
        scenario!(typing::enter_leads_to_the_next_place),
        scenario!(typing::the_caret_survives),
        scenario!(typing::echo_and_tape_follow_each_key),
        scenario!(typing::the_fraction_keys_keep_the_focus),
        scenario!(typing::a_lost_space_is_offered_back),
        scenario!(history::back_loses_nothing),
        scenario!(history::a_reload_brings_back_the_same_screen_and_text),
        scenario!(history::a_change_comes_back_to_the_check),
        scenario!(links::a_damaged_link_says_so_and_the_draft_stays),
        scenario!(injection::in_a_link_and_a_draft),
        scenario!(injection::at_the_desk),
        scenario!(injection::in_a_profile),
        scenario!(injection::in_a_profile_on_every_screen),
        scenario!(injection_ruled::in_the_element),
        scenario!(injection_ruled::at_the_desk),
        scenario!(injection::on_real_paper; Print),
        scenario!(injection::where_the_door_is_hung),
        scenario!(links::a_hostile_fragment_stays_text),
        scenario!(links::a_doors_record_leads_to_its_own_page),
        scenario!(partial::four_dimensions_without_the_second_module),
        scenario!(faults::a_trap_is_told_and_the_draft_is_safe),
        scenario!(faults::where_wasm_may_not_run_the_page_says_so),
        scenario!(faults::a_module_that_is_not_whole_is_told),
        scenario!(faults::without_storage_and_worker_the_order_is_made; OpaqueSelf),
        scenario!(faults::a_full_storage_is_told),
        scenario!(faults::a_clock_wrong_by_years_dates_nothing),
        scenario!(faults::an_unknown_language_is_english; Languages),
        scenario!(faults::without_javascript_the_page_says_so; NoScript),
        scenario!(faults::a_tab_killed_at_every_step),
        scenario!(memory::its_end_is_told_and_the_draft_is_safe),
        scenario!(offline::all_of_it_works_without_a_network),
        scenario!(offline::a_second_visit_asks_the_network_for_nothing),
        scenario!(offline::a_page_that_was_passed_over_asks),
        scenario!(offline::a_dealers_rules_hold_without_a_network),
        scenario!(offline::from_the_home_screen_with_the_dealers_rules),
        scenario!(offline::a_newer_build_waits_for_a_tap),
        scenario!(offline::a_newer_build_waits_at_the_desk),
        scenario!(offline::a_newer_build_waits_where_a_door_is_hung),
        scenario!(offline::a_first_build_is_no_newer_one),
        scenario!(offline::a_newer_build_moves_nothing),
        scenario!(offline::a_build_that_is_not_whole_leaves_the_old_one),
        scenario!(offline::the_worker_that_removes_itself),
        scenario!(drafts::a_killed_tab_comes_back_as_it_was),
        scenario!(drafts::several_by_truck_opened_and_deleted),
        scenario!(drafts::two_tabs_keep_both),
        scenario!(drafts::storage_that_fails_is_told_once),
        scenario!(drafts::what_the_browser_threw_away_is_kept_again),
        scenario!(targets::of_the_walk),
        scenario!(targets::elsewhere),
        scenario!(tape::in_millimetres_and_each_language),
        scenario!(tape::dragged_and_stepped),
        scenario!(tape::the_phone_stays_awake_and_trembles),
        scenario!(tape::what_scrolls_the_page_leaves_the_reading),
        scenario!(desk::a_phoned_in_order_by_keyboard_alone),
        scenario!(desk::a_call_is_not_left_without_a_question),
        scenario!(desk::the_walk_knows_the_way),
        scenario!(desk_sent::a_mail_beside_the_call_names_what_was_misheard),
        scenario!(desk_sent::what_opened_by_itself_leaves_an_empty_box),
        scenario!(desk_sent::by_a_dealers_rules),
        scenario!(desk_sent::thirty_characters_and_a_damaged_link),
        scenario!(desk_sent::the_six_characters_name_the_number),
        scenario!(desk_sent::two_orders_for_one_truck),
        scenario!(desk_files::an_order_is_saved_and_opened_again_whole),
        scenario!(desk_files::files_are_dropped_anywhere),
        scenario!(desk_files::a_code_in_a_picture),
        scenario!(desk_files::the_walk_saves_and_opens_a_file),
        scenario!(desk_ways::the_demo_orders_by_every_way),
        scenario!(desk_ways::the_demo_orders_by_voice),
        scenario!(camera::a_code_held_before_it_is_read; Film),
        scenario!(camera::without_a_code_it_goes_on_looking_until_told; Camera),
        scenario!(camera::that_there_is_none_is_told; Camera),
        scenario!(camera::a_refusal_says_what_else_can_be_done; Camera),
        scenario!(desk_many::dropped_mapped_checked_and_saved),
        scenario!(desk_many::pasted_and_chosen),
        scenario!(desk_many::it_stops_and_goes_on; Compiler),
        scenario!(desk_many::ten_thousand_keep_the_page_answering; Compiler),
        scenario!(desk_many::on_a_phone_too),
        scenario!(embed::a_page_gets_an_order_and_nothing_else_happens),
        scenario!(embed::nothing_is_loaded_until_it_is_near),
        scenario!(embed::two_on_a_page_are_two),
        scenario!(embed::removed_and_put_back_it_goes_on),
        scenario!(embed::in_two_versions_the_first_stays_and_says_so),
        scenario!(embed::nothing_is_left_behind),
        scenario!(embed::a_form_sends_the_link),
        scenario!(embed::a_profile_that_cannot_be_used_says_where),
        scenario!(embed::order_unit_and_theme_are_taken),
        scenario!(embed_host::the_page_itself_goes_by_a_profile),
        scenario!(embed_host::the_hanging_page_goes_by_a_profile),
        scenario!(embed_host::nothing_moves; LayoutShift),
        scenario!(embed_host::clashing_styles_change_nothing),
        scenario!(embed_host::under_the_strictest_policy),
        scenario!(embed_host::where_wasm_may_not_run),
        scenario!(embed_host::what_is_not_what_it_was_does_not_run),
        scenario!(embed_host::without_javascript; NoScript),
        scenario!(embed_host::in_a_frame),
        scenario!(embed_host::the_promised_parts_and_properties),
        scenario!(embed_host::too_large_a_profile_is_refused),
        scenario!(embed_frame::the_frame_grows_and_shrinks_with_the_walk),
        scenario!(embed_frame::nobody_else_is_heard),
        scenario!(hang::from_the_walk_to_the_record),
        scenario!(hang::every_screen),
        scenario!(hang::every_screen_in_spanish_and_french),
        scenario!(hang_kept::a_trap_leaves_a_way_out),
        scenario!(hang_kept::a_record_opens_without_a_network),
        scenario!(hang::the_slider_moves_the_door_in_the_drawing),
        scenario!(languages::a_change_in_the_middle_keeps_text_caret_and_draft),
        scenario!(languages::an_order_is_read_in_its_readers_language),
        scenario!(languages::the_browser_s_own_comes_first; Languages),
        scenario!(embed_host::in_a_react_page),
        scenario!(builder::a_profile_is_made_shown_and_taken_away),
        scenario!(builder::a_profile_that_is_opened_is_edited),
        scenario!(builder::what_is_wrong_stands_at_its_field),
        scenario!(builder::it_speaks_spanish_and_french),
        scenario!(pictures::every_screen),
        scenario!(pictures::every_screen_in_spanish),
        scenario!(pictures::every_screen_in_french),
        scenario!(pictures::many_orders),
        scenario!(hang::sticker_and_card_are_read_from_paper; Print),
        scenario!(paper::one_page_in_letter_and_a4; Print),
        scenario!(paper::a_notice_is_not_printed; Print),
        scenario!(paper::one_page_in_each_language; Print),
        scenario!(paper::what_has_no_room_is_cut_by_the_page_not_by_the_paper),
        scenario!(paper::the_button_prints),
        scenario!(picture::the_code_on_the_screen_is_read),
        scenario!(second_reader::reads_what_the_page_shows),
        scenario!(second_reader::reads_each_level_blurred_turned_and_stained),
        scenario!(second_reader::reads_nothing_where_there_is_no_code),
        scenario!(picture::voice),
        scenario!(picture::an_order_that_was_sent),
        scenario!(share::mail_and_message_hold_the_order),
        scenario!(share::copied_by_a_press_or_by_hand),
        scenario!(share::a_note_that_is_cut_says_so),
        scenario!(share::the_share_sheet_gets_line_and_link),
        scenario!(share::an_opened_order_asks_before_it_replaces_a_draft),
        scenario!(access::the_measure_measures),
        scenario!(access::the_walk),
        scenario!(access::beside_the_walk),
        scenario!(access::the_desk),
        scenario!(access::hanging_the_door),
        scenario!(access::the_builder),
        scenario!(access::the_print_sheet),
        scenario!(focus::at_every_stop_of_the_walk),
        scenario!(focus::at_every_stop_of_the_desk),
        scenario!(focus::at_every_stop_of_hanging),
        scenario!(focus::at_every_stop_of_the_builder),
        scenario!(fitting::spaced_text_on_the_walk),
        scenario!(fitting::beside_a_scroll_bar),
        scenario!(fitting::spaced_text_elsewhere),
        scenario!(fitting::an_enlarged_walk),
        scenario!(fitting::an_enlarged_desk_and_builder),
        scenario!(fitting::an_enlarged_page_of_hanging),
        scenario!(fitting::contrast_colours_and_stillness_of_the_walk),
        scenario!(fitting::contrast_colours_and_stillness_of_hanging),
        scenario!(fitting::contrast_colours_and_stillness_elsewhere),
        scenario!(semantics::every_state_of_the_walk),
        scenario!(semantics::every_state_beside_it),
        scenario!(semantics::every_state_of_the_desk),
        scenario!(semantics::every_state_of_hanging),
        scenario!(semantics::every_state_of_the_builder),
        scenario!(semantics::a_new_screen_is_heard_from_its_heading),
        scenario!(semantics::a_reading_is_spoken_once),
        scenario!(semantics::a_reading_of_hanging_is_spoken),
        scenario!(semantics::the_summary_leads_to_the_field),
    ])
}
