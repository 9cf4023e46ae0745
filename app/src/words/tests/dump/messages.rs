//! Every message of every trait, over its grid.

use super::grid::*;
use super::samples::*;
use super::{Dump, say};
use crate::chart::{GradeStep, Reading, ReadoutCell};
use crate::screen::Screen;
use crate::tell::Term;
use crate::tell::say::capital;
use solver::day::{Lead, Load, Surface};
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
}

fn access(d: &mut Dump) {
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

fn card(d: &mut Dump) {
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

fn chart(d: &mut Dump) {
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

fn class(d: &mut Dump) {
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

fn descent(d: &mut Dump) {
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

fn entry(d: &mut Dump) {
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

fn exercise(d: &mut Dump) {
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

fn export(d: &mut Dump) {
    say!(d w mark_caution());
    say!(d w by_here(how in changes()));
    say!(d w crest_number(number in counts()));
    say!(d w hold(speed in ["", "⟨speed⟩"]));
    say!(d "w.mark_foot" (number in counts(), next in perhaps_bytes()) w => w.foot(number, next));
}
