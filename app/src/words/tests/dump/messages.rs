//! Every message of every trait, over its grid.

use super::grid::*;
use super::{Dump, say};
use crate::chart::{GradeStep, Reading, ReadoutCell};
use crate::class::Screen;
use crate::lesson::Lesson;
use crate::tell::Term;
use crate::words::say::capital;
use solver::HeatStep;
use solver::day::{Lead, Load, Surface};
use solver::road::PlaceKind;
use solver::study::Input;
use solver::truck::{Preset, RetarderKind};

pub(super) fn all(d: &mut Dump) {
    access(d);
    card(d);
    chart(d);
    class(d);
    descent(d);
    entry(d);
    exercise(d);
    export(d);
    language(d);
    later(d);
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

pub(super) fn access(d: &mut Dump) {
    say!(d w i_am_parked());
    say!(d w road_table());
    say!(d w road_table_heads());
    say!(d w between());
    say!(d w power_table());
    say!(d w power_heads());
    say!(d w holds(stage in ["", "⟨stage⟩"]));
    say!(d w window_ends());
    say!(d w ends_where_it_began());
    say!(d w leads_away(away in ["", "⟨away⟩"], towards in ["", "⟨towards⟩"]));
    say!(d w winds());
    say!(d w card_profile());
}

pub(super) fn card(d: &mut Dump) {
    say!(d w card_head());
    say!(d w to_card());
    say!(d w card_sentence());
    say!(d w print_card());
    say!(d w save_picture());
    say!(d w picture_name(road in ["", "⟨road⟩"], reversed in flags()));
    say!(d w save_rows());
    say!(d w marker_label());
    say!(d w counts_down());
    say!(d w markers_miss(start in ["", "⟨start⟩"], end in ["", "⟨end⟩"]));
    say!(d w card_is_old());
    say!(d w do_not_descend());
    say!(d w no_speed_for(numbers in ["", "⟨numbers⟩"], count in counts()));
    say!(d "w.facts_of" (facts in [["⟨mass⟩", "⟨retarder⟩", "⟨surface⟩", "⟨load⟩", "⟨air⟩", "⟨brakes⟩"]]) w => {
        let [mass, retarder, surface, load, air, brakes] = facts;
        w.facts_of(mass, retarder, surface, load, air, brakes)
    });
    say!(d w card_heads());
    say!(d w mile());
    say!(d w card_asks(grade in ["", "⟨grade⟩"], length in ["", "⟨length⟩"]));
    say!(d w know_snub(from in ["", "⟨from⟩"], to in ["", "⟨to⟩"]));
    say!(d w know_in_doubt(grade in ["", "⟨grade⟩"]));
    say!(d w know_easing(at in ["", "⟨at⟩"]));
    say!(d w know_begins_unknown());
    say!(d w know_slow_curves(count in counts(), speed in ["", "⟨speed⟩"], at in ["", "⟨at⟩"]));
    say!(d w know_slow_curve(speed in ["", "⟨speed⟩"], at in ["", "⟨at⟩"]));
    say!(d w know_posted(speed in ["⟨speed⟩"], km in ["⟨km⟩"], miles in ["⟨miles⟩"]));
    say!(d w know_ramp(at in ["", "⟨at⟩"]));
    say!(d w know_quiet(at in ["", "⟨at⟩"]));
    say!(d w know_at_foot(name in ["", "⟨name⟩"], at in ["", "⟨at⟩"]));
    say!(d w to_stop_at_foot());
    say!(d w know_cut_short());
    say!(d w card_more(count in counts()));
    say!(d w before_crest_head());
    say!(d w stop_at_check(at in ["", "⟨at⟩"]));
    say!(d w stop_where_allowed());
    say!(d w try_retarder());
    say!(d w look_ahead());
    say!(d "w.gear_before" (gear in gears(), stage in stages(), at in ["", "⟨at⟩"]) w => w.gear_before(gear.number(), stage.is_off(), &w.stage(stage), at));
    say!(d "w.gear_at_start" (gear in gears(), stage in stages()) w => w.gear_at_start(gear.number(), &w.stage(stage)));
    say!(d w shifting(in_legs in flags()));
    say!(d w in_trouble_head());
    say!(d w brake_now());
    say!(d w stay_in_gear());
    say!(d w any_way_up());
    say!(d w take_ramp(ramps in ["", "⟨ramps⟩"]));
    say!(d w warn_others());
    say!(d w no_places_entered());
    say!(d w card_cautions());
    say!(d w rows_name(road in ["", "⟨road⟩"], reversed in flags()));
}

pub(super) fn chart(d: &mut Dump) {
    say!(d w picture());
    say!(d w fill_by());
    say!(d w reading(reading in Reading::ALL));
    say!(d w grade_step(step in GradeStep::ALL));
    say!(d w zoom());
    say!(d w zoom_in());
    say!(d w zoom_out());
    say!(d w zoom_all());
    say!(d w lane(lane in lanes()));
    say!(d w after_stop());
    say!(d w bend_caps());
    say!(d w only_this());
    say!(d w not_assessed());
    say!(d w limit());
    say!(d w before_asked());
    say!(d w cursor());
    say!(d w cell_head(cell in ReadoutCell::ALL));
    say!(d w engine_carries());
    say!(d w grade_over(length in ["", "⟨length⟩"]));
    say!(d w nothing_said_here());
    say!(d w on_descent(number in counts(), to_foot in ["", "⟨to_foot⟩"]));
    say!(d w descent_begins(number in counts(), ahead in ["", "⟨ahead⟩"]));
    say!(d w no_descent_ahead());
    say!(d w bend(hairpin in flags(), side in ["⟨side⟩"], speed in ["⟨speed⟩"], radius in ["⟨radius⟩"]));
    say!(d w place_here(name in ["", "⟨name⟩"]));
    say!(d w place_ahead(name in ["", "⟨name⟩"], ahead in ["", "⟨ahead⟩"]));
    say!(d w strip());
    say!(d w plan_shape());
    say!(d w start());
    say!(d w end());
    say!(d w north());
}

pub(super) fn class(d: &mut Dump) {
    say!(d c screen(screen in Screen::ALL));
    say!(d c idea(screen in Screen::ALL));
    say!(d c notes(screen in Screen::ALL));
    say!(d c screens());
    say!(d c to_road_page());
    say!(d c show_notes());
    say!(d c keys());
    say!(d c class_caution());
    say!(d c grade_label());
    say!(d c mass_label());
    say!(d c stage_label());
    say!(d c forces_about());
    say!(d c holding_axis());
    say!(d c none_settles());
    say!(d c nothing_in_reserve());
    say!(d "c.reserve_kept" (reserve in ["", "⟨reserve⟩"], kept in perhaps_pairs()) w => w.class_reserve(reserve, kept.clone()));
    say!(d c print_screen());
    say!(d c profile_about());
    say!(d c truck_about());
    say!(d c driving());
    say!(d c no_ride());
    say!(d "c.start" () w => w.class_start());
    say!(d c stop());
    say!(d "c.step" () w => w.class_step());
    say!(d c anew());
    say!(d c slower());
    say!(d c faster());
    say!(d c arrow_hill());
    say!(d c arrow_engine());
    say!(d c arrow_retarder());
    say!(d c arrow_service());
    say!(d c arrow_resistance());
    say!(d c gauge_speed());
    say!(d c gauge_gear());
    say!(d c gauge_stage());
    say!(d c gauge_engine());
    say!(d c gauge_power());
    say!(d c gauge_brakes());
    say!(d "c.after_stop" () w => w.class_after_stop());
    say!(d c exercise_back());
    say!(d c exercise_on());
    say!(d c slips());
    say!(d c as_planned());
    say!(d c gear_high());
    say!(d c somewhat_heavier());
    say!(d c faster_by(speed in ["", "⟨speed⟩"]));
    say!(d c stage_lost());
    say!(d c hot_brakes());
    say!(d "c.they_part" (at_m in measures(), units in units()) w => w.they_part(&crate::format::distance(at_m, units)));
    say!(d c nowhere_apart());
    say!(d "c.time_apart" (sooner_s in measures()) w => w.time_apart(sooner_s > 0.0, &w.time(sooner_s.abs())));
    say!(d c no_time_apart());
    say!(d c compared(name in ["⟨name⟩"], time in ["⟨time⟩"], wrong in ["⟨wrong⟩"], right in ["⟨right⟩"]));
    say!(d c passes_limit(from in ["", "⟨from⟩"]));
    say!(d c forgiven());
}

pub(super) fn descent(d: &mut Dump) {
    say!(d w sign_label());
    say!(d w sign(grade in ["", "⟨grade⟩"], length in ["", "⟨length⟩"]));
    say!(d w advice_label());
    say!(d w no_advice());
    say!(d w falls_short(share in ["", "⟨share⟩"]));
    say!(d w more_than_asked(share in ["", "⟨share⟩"]));
    say!(d "w.advice_in_full" (advice at &advices(), told in [["⟨speed⟩", "⟨engine_speed⟩", "⟨reserve⟩", "⟨time⟩"]]) w => {
        let [speed, engine_speed, reserve, time] = told;
        let stage = advice.stage;
        w.advice_in_full(advice.gear.number(), stage.is_off(), &w.stage(stage), speed, engine_speed, reserve, time)
    });
    say!(d w way_label());
    say!(d w relief_label());
    say!(d w eases_over(span in ["", "⟨span⟩"], length in ["", "⟨length⟩"]));
    say!(d w grades_label());
    say!(d w mean_grade(grade in ["", "⟨grade⟩"]));
    say!(d w steepest_over(grade in ["⟨grade⟩"], length in ["⟨length⟩"], from in ["⟨from⟩"], doubt in ["⟨doubt⟩"]));
    say!(d w too_short_for_heights());
    say!(d w curves_label());
    say!(d "w.curve_count" (curves at &curves()) w => w.curve_count(curves.count, curves.hairpins));
    say!(d w slowest_curve(speed in ["⟨speed⟩"], at in ["⟨at⟩"], side in ["⟨side⟩"], radius in ["⟨radius⟩"]));
    say!(d w curves_estimated());
    say!(d w side(left in flags()));
    say!(d w climb_label());
    say!(d w climbs_in(gear in bytes(), speed in ["", "⟨speed⟩"]));
    say!(d w climbs_in_none());
    say!(d w cut_short());
    say!(d w brakes_arrive(heat in ["", "⟨heat⟩"]));
    say!(d w table_of(grade in ["", "⟨grade⟩"], height in ["", "⟨height⟩"]));
    say!(d w table_heads());
    say!(d w more_than_needed());
    say!(d w overruns());
    say!(d w above_speed(speed in ["", "⟨speed⟩"]));
    say!(d w not_usable());
    say!(d w unusable(why in unusable()));
    say!(d "w.table_legend" () w => w.table_meanings());
    say!(d w table_chosen());
    say!(d w whole_way(time in ["⟨time⟩"], fall in ["⟨fall⟩"], holding in ["⟨holding⟩"], service in ["⟨service⟩"]));
    say!(d w slowest_climb(speed in ["", "⟨speed⟩"]));
    say!(d w less_than(share in ["", "⟨share⟩"]));
    say!(d w share_and_fuel(share in ["", "⟨share⟩"], fuel in ["", "⟨fuel⟩"]));
}

pub(super) fn entry(d: &mut Dump) {
    say!(d w truck_head());
    say!(d w day_head());
    say!(d w preset_label());
    say!(d w preset(preset in Preset::ALL, units in units()));
    say!(d w own_truck());
    say!(d w more_entries());
    say!(d w assumed());
    say!(d w assumed_sentence());
    say!(d w entry(entry in entries()));
    say!(d w hint(entry in entries()));
    say!(d w not_a_number(typed in ["", "⟨typed⟩"]));
    say!(d w out_of_range(typed in ["", "⟨typed⟩"]));
    say!(d w enter_from(range in ["", "⟨range⟩"]));
    say!(d w truck_error(error at &truck_errors(), units in units()));
    say!(d w truck_file_error(error at &truck_file_errors(), units in units()));
    say!(d w gears());
    say!(d w gears_hint());
    say!(d w stages());
    say!(d w stages_hint());
    say!(d w retarder_table());
    say!(d w shaft_table_hint());
    say!(d w engine_table_hint());
    say!(d w retarder_label());
    say!(d w retarder(kind in RetarderKind::ALL));
    say!(d w transmission_label());
    say!(d w transmission(transmission in transmissions()));
    say!(d w load_label());
    say!(d w load(load in Load::ALL));
    say!(d w mass_stays(mass in ["", "⟨mass⟩"]));
    say!(d w gear_set_label());
    say!(d w gear_set(gears in counts(), overdrive in flags()));
    say!(d w own_gears());
    say!(d w tyre_label());
    say!(d w own_tyre());
    say!(d w curves_name());
    say!(d w curves_about(unit in ["", "⟨unit⟩"]));
    say!(d w own_trucks());
    say!(d w truck_name());
    say!(d w keep_truck());
    say!(d w rename_truck(name in ["", "⟨name⟩"]));
    say!(d w take_truck(name in ["", "⟨name⟩"]));
    say!(d w remove_truck(name in ["", "⟨name⟩"]));
    say!(d w undo());
    say!(d w remove());
    say!(d w no_name());
    say!(d w too_many_trucks());
    say!(d w save_truck());
    say!(d w open_truck());
    say!(d w truck_file_name(name in ["", "⟨name⟩"]));
    say!(d w axle_groups());
    say!(d "w.axle_group" (group at &axle_groups()) w => w.braked_axles(group));
    say!(d w surface_label());
    say!(d w surface(surface in Surface::ALL));
    say!(d w service_brakes_label());
    say!(d w service_brakes(service_brakes in service_brakes()));
    say!(d w lead_label());
    say!(d w lead(lead in Lead::ALL));
    say!(d w lead_hint(lead in Lead::ALL));
    say!(d w usual_day());
    say!(d w kept_here());
}

pub(super) fn exercise(d: &mut Dump) {
    say!(d c sheet_head(seed in numbers()));
    say!(d c blank_sheet());
    say!(d c answer_sheet());
    say!(d c another_set());
    say!(d c sheet_caution());
    say!(d c no_exercises());
    say!(d c stages_left_out());
    say!(d c exercise(number in counts(), exercise at &exercises()));
    say!(d c given_label());
    say!(d c room_label());
    say!(d c steps_label());
    say!(d "c.ask_control_speed" (it at &control_speeds(), mass in ["", "⟨mass⟩"], grade in ["", "⟨grade⟩"]) w => w.ask_control_speed(&w.gear(it.gear), &w.stage(it.stage), mass, grade));
    say!(d c ask_gear(mass in ["⟨mass⟩"], grade in ["⟨grade⟩"], reserve in ["⟨reserve⟩"]));
    say!(d c ask_work(mass in ["⟨mass⟩"], drop in ["⟨drop⟩"], length in ["⟨length⟩"], speed in ["⟨speed⟩"], share in ["⟨share⟩"]));
    say!(d c ask_time(length in ["⟨length⟩"], fast in ["⟨fast⟩"], slow in ["⟨slow⟩"]));
    say!(d "c.ask_heat" (it at &brake_heats(), length in ["⟨length⟩"], speed in ["⟨speed⟩"], power in ["⟨power⟩"]) w => w.ask_heat(it.place, it.axles, length, speed, power));
    say!(d c settles(speed in ["", "⟨speed⟩"], engine_speed in ["", "⟨engine_speed⟩"]));
    say!(d c slows_down());
    say!(d c gets_away_above(speed in ["", "⟨speed⟩"]));
    say!(d c gets_away());
    say!(d "c.gear_chosen" (tried at &gears_tried(), speed in ["⟨speed⟩"], engine_speed in ["⟨engine_speed⟩"], reserve in ["⟨reserve⟩"]) w => w.gear_chosen(&capital(&w.gear(tried.gear)), &w.stage(tried.stage), speed, engine_speed, reserve));
    say!(d c no_gear_keeps());
    say!(d c work_left(left in ["", "⟨left⟩"], service in ["", "⟨service⟩"]));
    say!(d c time_saved(time in ["", "⟨time⟩"], times in ["", "⟨times⟩"]));
    say!(d c warm_at_foot(foot in ["", "⟨foot⟩"], limit in ["", "⟨limit⟩"], over in flags()));
    say!(d c term(term in Term::ALL));
    say!(d "c.gear_at" (gear in gears(), speed in ["", "⟨speed⟩"]) w => w.gear_at(&capital(&w.gear(gear)), speed));
    say!(d c enough(enough in flags()));
}

pub(super) fn export(d: &mut Dump) {
    say!(d w mark_caution());
    say!(d w by_here(how in changes()));
    say!(d w crest_number(number in counts()));
    say!(d w hold(speed in ["", "⟨speed⟩"]));
    say!(d "w.mark_foot" (number in counts(), next in perhaps_bytes()) w => w.foot(number, next));
}

pub(super) fn later(d: &mut Dump) {
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

pub(super) fn language(d: &mut Dump) {
    say!(d w tag());
    say!(d w numerals());
    say!(d w languages());
    say!(d w unread());
}

pub(super) fn lesson(d: &mut Dump) {
    say!(d c lessons_head());
    say!(d c lessons_invented());
    say!(d c lessons_said_for());
    say!(d c lesson_shows_label());
    say!(d c lesson_believed_label());
    say!(d c lesson_happens_label());
    say!(d c lesson_question_label());
    say!(d c lesson(lesson in Lesson::ALL));
}

pub(super) fn link(d: &mut Dump) {
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

pub(super) fn offline(d: &mut Dump) {
    say!(d w works_offline());
    say!(d w newer());
    say!(d w load_newer());
    say!(d w later());
    say!(d w forget_all());
    say!(d w forget_really());
    say!(d w save_page());
}

pub(super) fn page(d: &mut Dump) {
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

pub(super) fn plan(d: &mut Dump) {
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

pub(super) fn road(d: &mut Dump) {
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

pub(super) fn roadside(d: &mut Dump) {
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

pub(super) fn study(d: &mut Dump) {
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

pub(super) fn two(d: &mut Dump) {
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

pub(super) fn way(d: &mut Dump) {
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

pub(super) fn why(d: &mut Dump) {
    say!(d w governs_label());
    say!(d w untouched_governs());
    say!(d "w.governed_by" (advice at &advices(), limit in ["⟨limit⟩"], reserve in ["⟨reserve⟩"], heat_limit in ["⟨heat_limit⟩"]) w => w.governed_by(advice.governs, advice.verdict, advice.stage.is_off(), limit, reserve, heat_limit));
    say!(d w no_speed_because(because in governs(), slowest in ["⟨slowest⟩"], reached in ["⟨reached⟩"], limit in ["⟨limit⟩"]));
    say!(d w else_another_road());
    say!(d w note(note in notes()));
}
