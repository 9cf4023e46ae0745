//! The rest of the messages.

use super::grid::*;
use super::samples::*;
use super::{Dump, say};
use crate::lesson::Lesson;
use solver::HeatStep;
use solver::road::PlaceKind;
use solver::study::Input;

pub(super) fn all(d: &mut Dump) {
    later(d);
    language(d);
    lesson(d);
    link(d);
    offline(d);
    page(d);
    plan(d);
    road(d);
    roadside(d);
    study(d);
    two(d);
    way(d);
    why(d);
}

fn later(d: &mut Dump) {
    say!(d w same_question(count in counts()));
    say!(d w same_sentence());
    say!(d w combine(count in counts()));
    say!(d w two_alike(first in ["⟨first⟩"], second in ["⟨second⟩"]));
    say!(d w meets(new in ["⟨new⟩"], before in ["⟨before⟩"]));
    say!(d w compare_both());
    say!(d w join_both());
    say!(d w combined(count in counts(), files in ["⟨files⟩"]));
    say!(d w take_apart());
    say!(d w in_legs(from in [3], to in [5], stage in ["⟨stage⟩"], slow in ["⟨slow⟩"], fast in ["⟨fast⟩"]));
    say!(d w fall_in_part(all in ["⟨all⟩"], blank in ["⟨blank⟩"]));
    say!(d w no_work_counted(length in ["⟨length⟩"]));
    say!(d w long_stroke(at in ["⟨at⟩"], shorter in ["⟨shorter⟩"], short in ["⟨short⟩"]));
}

fn language(d: &mut Dump) {
    say!(d w tag());
    say!(d w numerals());
    say!(d w languages());
    say!(d w unread());
}

fn lesson(d: &mut Dump) {
    say!(d c lessons_head());
    say!(d c lessons_invented());
    say!(d c lessons_said_for());
    say!(d c lesson_shows_label());
    say!(d c lesson_believed_label());
    say!(d c lesson_happens_label());
    say!(d c lesson_question_label());
    say!(d c lesson(lesson in Lesson::ALL));
}

fn link(d: &mut Dump) {
    say!(d w make_link());
    say!(d w link_copied());
    say!(d w link_made());
    say!(d w link_label());
    say!(d w link_offered());
    say!(d w use_link());
    say!(d w keep_mine());
    say!(d w link_taken());
    say!(d w back_to_mine());
    say!(d w link_broken());
    say!(d w save_project());
    say!(d w project_sentence());
    say!(d w project_name(road in ["", "⟨road⟩"]));
    say!(d w project_opened());
}

fn offline(d: &mut Dump) {
    say!(d w works_offline());
    say!(d w newer());
    say!(d w load_newer());
    say!(d w later());
    say!(d w forget_all());
    say!(d w forget_really());
    say!(d w save_page());
}

fn page(d: &mut Dump) {
    say!(d w made_for(facts in ["", "⟨facts⟩"]));
    say!(d w to_truck());
    say!(d w to_class());
    say!(d w targets());
    say!(d w usual_targets());
    say!(d w large_targets());
    say!(d w purpose());
    say!(d w road_section());
    say!(d w descents_section());
    say!(d w sections());
    say!(d w skip_to_answer());
    say!(d w units());
    say!(d w metric());
    say!(d w imperial());
    say!(d w theme());
    say!(d w light());
    say!(d w night());
    say!(d w system());
    say!(d w choose_file());
    say!(d w or_drop());
    say!(d w drop_here());
    say!(d w stays_here());
    say!(d w demo_mark());
    say!(d w demo_sentence());
    say!(d w show_demo());
    say!(d w reverse());
    say!(d w reversed_mark());
    say!(d w course());
    say!(d w which_track(file in ["", "⟨file⟩"], count in counts()));
    say!(d w course_unusable());
    say!(d w leave_it());
    say!(d w which_order(count in counts()));
    say!(d w which_order_sentence());
    say!(d w join(count in counts()));
    say!(d w leg_up(name in ["", "⟨name⟩"]));
    say!(d w leg_down(name in ["", "⟨name⟩"]));
    say!(d w turn_leg());
    say!(d w leave_leg(name in ["", "⟨name⟩"]));
    say!(d "w.part_of" (from_m in measures(), to_m in measures(), units in units()) w => w.part_shown(from_m, to_m, units));
    say!(d w whole_road());
    say!(d "w.course_choice" (number in counts(), name in ["", "⟨name⟩"], route in flags(), length in ["", "⟨length⟩"]) w => w.course_choice(number, name, name.is_empty(), route, length));
    say!(d w phase(phase in phases()));
    say!(d w starting());
    say!(d w cancel());
    say!(d w close());
    say!(d w try_again());
    say!(d w trouble_head(trouble at &troubles()));
    say!(d w trouble(trouble at &troubles(), units in units()));
    say!(d w former_stays());
    say!(d w not_current());
    say!(d w check_entry());
    say!(d w export());
    say!(d w export_sentence());
    say!(d w export_name(road in ["", "⟨road⟩"]));
    say!(d w no_road());
    say!(d w no_road_sentence());
}

fn plan(d: &mut Dump) {
    say!(d w verdict(verdict in verdicts()));
    say!(d w engine_holds());
    say!(d w engine_holds_little());
    say!(d w holds_on_average());
    say!(d w brakes_touch());
    say!(d w heat_step(step in HeatStep::ALL));
    say!(d w stage_number(number in counts()));
    say!(d w retarder_off());
    say!(d w off());
    say!(d w gear_number(number in bytes()));
    say!(d w no_descent(partly_unassessed in flags()));
    say!(d w along_label());
    say!(d w no_safe_speed());
    say!(d w along_more(count in counts()));
    say!(d "w.other_mode_label" (day at &days()) w => w.other_mode_label(day.service_brakes));
    say!(d w same_choice());
    say!(d "w.choice_apart" (choice in ["", "⟨choice⟩"], more_s in measures()) w => w.apart(choice, more_s));
    say!(d w heavier_label());
    say!(d w mass_out_of_range());
    say!(d w heat_label());
    say!(d w brakes_at(hottest in ["⟨hottest⟩"], after_stop in ["⟨after_stop⟩"], limit in ["⟨limit⟩"]));
    say!(d w snub_between(from in ["⟨from⟩"], to in ["⟨to⟩"], on in ["⟨on⟩"], off in ["⟨off⟩"], count in numbers()));
    say!(d w parked());
    say!(d w cautions());
    say!(d w descents_head(count in counts()));
    say!(d w order());
    say!(d w worst_first());
    say!(d w road_order());
    say!(d w columns());
    say!(d w descent(number in counts()));
    say!(d w details_of(number in counts()));
}

fn road(d: &mut Dump) {
    say!(d w road_head());
    say!(d w both_ends(start in ["", "⟨start⟩"], end in ["", "⟨end⟩"]));
    say!(d "w.left_blank" (length in ["", "⟨length⟩"], lower in perhaps_texts()) w => lower.map_or_else(|| w.left_blank(length), |lower| w.left_blank_lower(length, lower)));
    say!(d w climbs_between(start in ["", "⟨start⟩"], end in ["", "⟨end⟩"]));
    say!(d w grade_holds(class in classes(), base in ["", "⟨base⟩"]));
    say!(d w roughness(before in ["", "⟨before⟩"], after in ["", "⟨after⟩"]));
    say!(d w findings_head(count in counts()));
    say!(d w no_findings());
    say!(d w file_error(error at &file_errors()));
    say!(d w finding(finding at &findings()));
    say!(d w unassessed_head(count in counts()));
    say!(d w unassessed(span at &spans()));
    say!(d w onward_from(place in ["", "⟨place⟩"]));
    say!(d w show_place(place in ["", "⟨place⟩"]));
}

fn roadside(d: &mut Dump) {
    say!(d w places_head());
    say!(d w places_nav());
    say!(d w places_sentence(count in counts()));
    say!(d w put_here());
    say!(d w put_at());
    say!(d w put());
    say!(d w place_kind(kind in PlaceKind::ALL));
    say!(d w posted_limit());
    say!(d w kind_label());
    say!(d w name_label());
    say!(d w at_label());
    say!(d w limit_label());
    say!(d w set_the_limit());
    say!(d w quiet_zone_caution());
    say!(d w take_off());
    say!(d w not_on_part());
    say!(d "w.off_road" (first in ["", "⟨first⟩"], last in ["", "⟨last⟩"], units in units()) w => w.off_road(first, last, units.distance()));
    say!(d w no_stretch());
    say!(d w too_many_things());
    say!(d w show_all_places(count in counts()));
}

fn study(d: &mut Dump) {
    say!(d w change_label());
    say!(d w light_enough(mass in ["", "⟨mass⟩"]));
    say!(d w no_lighter_load());
    say!(d w more_retarding(share in ["", "⟨share⟩"]));
    say!(d w reserve_kept(kept in ["", "⟨kept⟩"], asked in ["", "⟨asked⟩"]));
    say!(d w cool_enough(at in ["", "⟨at⟩"]));
    say!(d w carried_label());
    say!(d w meets_rise(at in ["", "⟨at⟩"], speed in ["", "⟨speed⟩"]));
    say!(d w sure_label());
    say!(d w driven_so(runs in counts()));
    say!(d w in_none(runs in counts()));
    say!(d w in_all(runs in counts()));
    say!(d w in_some(some in counts(), runs in counts()));
    say!(d w speed_held(of in ["", "⟨of⟩"]));
    say!(d w limit_kept(of in ["", "⟨of⟩"]));
    say!(d w nine_of_ten(cool in ["", "⟨cool⟩"], hot in ["", "⟨hot⟩"]));
    say!(d w spread_from(inputs in ["", "⟨inputs⟩"]));
    say!(d w input(input in Input::ALL));
    say!(d w and_then());
    say!(d w too_long_to_be_sure());
    say!(d "w.studying" (share in shares()) w => w.studying(&crate::format::share(f64::from(share))));
    say!(d w not_yet());
    say!(d w lost_label());
    say!(d w stops_anywhere());
    say!(d w stops_until(until in ["", "⟨until⟩"]));
    say!(d w stops_nowhere());
    say!(d w brakes_hold());
    say!(d w brakes_hold_from(from in ["", "⟨from⟩"]));
    say!(d w brakes_hold_nowhere());
    say!(d w neither_from(from in ["", "⟨from⟩"]));
    say!(d w ramp_met(at in ["⟨at⟩"], lost_at in ["⟨lost_at⟩"], speed in ["⟨speed⟩"], needs in ["⟨needs⟩"]));
    say!(d w no_ramp_entered());
    say!(d w adjustment_label());
    say!(d w half_braked());
    say!(d w out_of_adjustment(axles in ["⟨axles⟩"], heat in ["⟨heat⟩"], over in ["⟨over⟩"]));
    say!(d w axles(place in axle_places()));
    say!(d w slowing_label());
    say!(d w slowing_sentence());
    say!(d w slowing_heads());
    say!(d w full_stage_from(from in ["", "⟨from⟩"], speed in ["", "⟨speed⟩"]));
    say!(d w rest_below(speed in ["", "⟨speed⟩"]));
    say!(d w brake_early());
    say!(d w standstill());
    say!(d w by_brakes_alone(way in ["", "⟨way⟩"], after in ["", "⟨after⟩"]));
    say!(d w curve_of(radius in ["", "⟨radius⟩"]));
    say!(d w place_to_stop());
    say!(d w town());
    say!(d w slowing_more(count in counts()));
    say!(d w driven_in_short(runs in counts()));
    say!(d w held_and_kept());
    say!(d w shares_held(held in ["", "⟨held⟩"], kept in ["", "⟨kept⟩"]));
    say!(d w evidence_head());
    say!(d w evidence_sentence());
    say!(d w evidence_count(rows in counts(), known in counts()));
    say!(d w evidence_heads());
    say!(d w evidence_difference());
    say!(d w evidence_missing());
    say!(d w measured_head());
    say!(d w measured_sentence());
    say!(d w measured_fields());
    say!(d w measured_place_hint());
    say!(d w measure());
    say!(d w measured_missing());
    say!(d w held_with(engine_speed in ["⟨engine_speed⟩"], power in ["⟨power⟩"], assumed in ["⟨assumed⟩"], share in ["⟨share⟩"]));
    say!(d w not_measured(why at &not_measured()));
    say!(d w use_measured());
    say!(d w undo_measured());
    say!(d "w.scale_in_use" (scale in measures()) w => w.scale_in_use(&crate::format::share(scale)));
}

fn two(d: &mut Dump) {
    say!(d w two_head());
    say!(d w keep_beside());
    say!(d w keep_beside_sentence());
    say!(d w two_next());
    say!(d w end_two());
    say!(d w swap());
    say!(d w swap_sentence());
    say!(d w two_heads());
    say!(d w two_row(row in two_rows()));
    say!(d w no_difference());
    say!(d w two_caution());
    say!(d w rate_labels());
    say!(d w rate_units(units in units()));
    say!(d w time(seconds in measures()));
    say!(d w rank(count in counts()));
    say!(d w ranked_head(done in counts(), count in counts()));
    say!(d w ranked_sentence());
    say!(d w ranking());
    say!(d w open_ranked());
    say!(d w beside_ranked());
    say!(d w ranked_ends());
    say!(d w ranked_labels());
    say!(d w rank_again());
}

fn way(d: &mut Dump) {
    say!(d "w.decided" (descent at &descents(), count in counts(), first in perhaps_told(), units in units()) w => w.decided_first(descent, count, first, units));
    say!(d w by_place(how in changes(), at in ["", "⟨at⟩"]));
    say!(d w asks(grade in ["⟨grade⟩"], length in ["⟨length⟩"], from in ["⟨from⟩"]));
    say!(d w engage(at_start in flags(), foot in ["", "⟨foot⟩"]));
    say!(d w engage_first(at_start in flags()));
    say!(d w chosen(lowest in flags(), asks in ["", "⟨asks⟩"]));
    say!(d w ruled_out_by(asks in ["", "⟨asks⟩"]));
    say!(d w not_assessed_on(span in ["", "⟨span⟩"]));
    say!(d w brakes_warmer(by in ["", "⟨by⟩"]));
    say!(d w doubted());
    say!(d w and_more(count in counts()));
    say!(d w brakes_at_places(needed in flags(), places in ["", "⟨places⟩"]));
    say!(d w in_doubt(grade in ["", "⟨grade⟩"]));
    say!(d w touches_label());
    say!(d w legs_label());
    say!(d w between_legs());
    say!(d w slowest_leg());
    say!(d w untouched_label());
    say!(d w no_untouched());
    say!(d w one_gear_label());
}

fn why(d: &mut Dump) {
    say!(d w governs_label());
    say!(d w untouched_governs());
    say!(d "w.governed_by" (advice at &advices(), limit in ["⟨limit⟩"], reserve in ["⟨reserve⟩"], heat_limit in ["⟨heat_limit⟩"]) w => w.governed_by(advice.governs, advice.verdict, advice.stage.is_off(), limit, reserve, heat_limit));
    say!(d w no_speed_because(because in governs(), slowest in ["⟨slowest⟩"], reached in ["⟨reached⟩"], limit in ["⟨limit⟩"]));
    say!(d w else_another_road());
    say!(d w note(note in notes()));
}
