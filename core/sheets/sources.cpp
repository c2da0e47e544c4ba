#include "core/sheets/sources.hpp"

#include "core/air/gas_law.hpp"
#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "core/car/axle_load.hpp"
#include "core/car/rules.hpp"
#include "core/car/wheel.hpp"
#include "core/grip/cornering.hpp"
#include "core/grip/friction.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/stopping.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/water.hpp"
#include "core/patch/beaded_edge.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/geometry.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/rating.hpp"
#include "core/stage/decision.hpp"
#include "core/stage/set_kind.hpp"
#include "core/stage/team.hpp"
#include "core/stage/weather.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/speed_symbol.hpp"
#include "core/standard/speedometer.hpp"
#include "core/standard/tread_law.hpp"
#include "core/standard/tyre_age.hpp"
#include "core/standard/tyre_kind.hpp"
#include "core/standard/wetness.hpp"
#include "core/water/crossing.hpp"
#include "core/water/film.hpp"
#include "core/water/onset.hpp"
#include "core/wear/rate.hpp"

namespace treadwater::sheets {
namespace {

using judge::Sources;
namespace advice = judge::advice;

Sources of_standards() {
  Sources all{&standard::load_index_source(),      &standard::speed_symbol_source(),
              &standard::speed_load_source(),      &standard::speed_pressure_source(),
              &standard::motorcycle_source(),      &standard::camber_source(),
              &standard::camber_pressure_source(), standard::towing_rear_tyre().source,
              &standard::speedometer_source(),     &standard::date_code_source(),
              &standard::age_advice_source()};
  for (const auto& surface : standard::road_surfaces()) judge::add_once(all, surface.source);
  for (const auto& word : standard::rain_words()) judge::add_once(all, word.source);
  for (const auto& word : standard::wetness_words) judge::add_once(all, word.source);
  for (const auto& law : standard::tread_laws()) {
    judge::add_once(all, law.source);
    if (law.winter_source) judge::add_once(all, *law.winter_source);
  }
  return all;
}

Sources of_tyres() {
  return {patch::european_standard_load().source,
          patch::european_at_marked_pressure(kilopascals(0.0)).source,
          patch::linear_at_marked_pressure(kilopascals(0.0)).source,
          patch::temporary_spare_law().source,
          patch::p_metric_standard_load().source,
          &patch::least_pressure_source(),
          &patch::p_metric_capacity_source(),
          &patch::index_fits_source(),
          &patch::beaded_edge_least_source(),
          &patch::beaded_edge_1909_source(),
          &patch::beaded_edge_1921_source(),
          &patch::beaded_edge_motorcycle_source(),
          &patch::beaded_edge_practice_source(),
          &patch::overall_diameter_source(),
          &patch::size_tolerance_source(),
          &patch::theoretical_rim_source(),
          &patch::section_on_rim_source(),
          &patch::rolling_circumference_source(),
          &patch::stiffness_source(),
          &patch::contact_length_source(),
          &patch::contact_width_source(),
          &patch::contact_area_source(),
          &patch::measured_patch_source(),
          &patch::cross_ply_source(),
          &patch::cross_ply_stiffness_source()};
}

Sources of_water() {
  Sources all = judge::onset_sources();
  for (const Source* source :
       {&water::footprint_source(), &water::rut_source(), &water::spin_up_source(),
        &water::crossing_advice_source(), &water::puddle_drag_source()})
    judge::add_once(all, *source);
  for (const auto& row : water::crossing_figures()) judge::add_once(all, row.source);
  for (const auto& model : water::onset_models()) judge::add_once(all, model.source);
  for (const auto model : {water::FilmModel::fhwa, water::FilmModel::fhwa_earlier_fit,
                           water::FilmModel::road_research, water::FilmModel::kinematic})
    judge::add_once(all, water::film_depth_source(model));
  return all;
}

Sources of_grip() {
  Sources all{
      &grip::limits_source,       &grip::stopping_source,       &grip::reaction_source,
      &grip::cornering_source,    &grip::side_share_source,     &grip::comfort_source,
      &grip::ellipse_source,      &grip::film_share_source,     &grip::braking_test_source,
      &grip::highway_code_source, &grip::driving_school_source, &grip::sight_distance_source,
      &grip::rubber_heat_source};
  // Every surface and tyre brings its own.
  for (const auto& surface : standard::friction_surfaces())
    for (const standard::TyreKind& kind : standard::tyre_kinds)
      for (const double film : {0.0, 0.5}) {
        grip::GripCase one;
        one.surface = &surface;
        one.tyre = grip::find_tyre_grip(kind.id);
        one.tread = millimetres(3.0);
        one.film = millimetres(film);
        for (const bool old : {false, true}) {
          one.old_or_hard = old;
          judge::add_once(all, grip::friction(one, kilometres_per_hour(80.0)).sources);
        }
      }
  return all;
}

Sources of_air() {
  Sources all{
      &air::gas_law_source(),      &air::atmosphere_source(),      &air::natural_loss_source(),
      &air::do_not_drive_source(), &air::leak_down_source(),       &air::orifice_source(),
      &air::discharge_source(),    &air::cavity_source(),          &air::cavity_fill_source(),
      &air::repair_source(),       &air::american_repair_source(), &air::run_flat_load_source(),
      &air::puncture_rate_source()};
  for (const air::WarningRule& rule : air::warning_rules()) {
    judge::add_once(all, *rule.source);
    judge::add_once(all, *rule.floor_from);
  }
  for (int way = 0; way <= static_cast<int>(air::Way::plain_flat); ++way)
    judge::add_once(all, *air::get_home(static_cast<air::Way>(way), 0.0).source);
  // Every reason against a repair brings its own.
  air::Damage worst;
  worst.place = air::Place::sidewall;
  worst.driven_flat = worst.self_supporting = worst.sealant_used = worst.cords_or_cracks = true;
  worst.earlier_repairs = 1;
  worst.age_years = 20.0;
  worst.symbol = standard::SpeedSymbol::V;
  for (const air::Reason* reason : air::repair(worst).reasons)
    judge::add_once(all, *reason->source);
  return all;
}

Sources of_cars() {
  return {&car::axle_load_source(),           &car::mixing_source(),
          &car::same_axle_source(),           &car::run_flat_source(),
          &car::pressure_difference_source(), &car::tread_difference_source(),
          &car::deeper_to_the_rear_source(),  &car::wear_pattern_source(),
          &car::winter_exception_source(),    &car::equivalent_mass_source(),
          &car::tyre_inertia_source(),        &car::density_source(),
          &car::wheel_hop_source(),           &wear::slope_source()};
}

Sources of_stages() {
  Sources all{&stage::persistence_source(), &stage::tail_source(), &stage::wear_by_load_source()};
  for (std::size_t i = 0; i < stage::set_kind_count; ++i) {
    const stage::SetKind kind = stage::set_kind(i);
    for (const Source* source :
         {kind.pace_known, kind.life_known, kind.land_known, kind.window_known})
      if (source != nullptr) judge::add_once(all, *source);
  }
  return all;
}

Sources of_advice() {
  return {&advice::hot_reading,       &advice::deep_water,    &advice::thin_film,
          &advice::wet_braking,       &advice::low_tread,     &advice::temporary_spare,
          &advice::winter_tread,      &advice::base_pressure, &advice::spare_on_board,
          &advice::placard_first,     &advice::size_change,   &advice::rim_width,
          &advice::who_decides,       &advice::roadside,      &advice::when_it_floats,
          &advice::tread_differences, &advice::stage_plan,    &advice::officials,
          &advice::own_notes};
}

}  // namespace

Sources all_sources() {
  Sources all;
  for (const Sources& some : {of_standards(), of_tyres(), of_water(), of_grip(), of_air(),
                              of_cars(), of_stages(), of_advice()})
    judge::add_once(all, some);
  return all;
}

}  // namespace treadwater::sheets
