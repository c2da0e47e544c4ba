#include "core/answer/sheets.hpp"

#include <iterator>

#include "core/answer/car_check.hpp"
#include "core/answer/cold_pressure.hpp"
#include "core/answer/field_list.hpp"
#include "core/answer/fitment.hpp"
#include "core/answer/heads.hpp"
#include "core/answer/puncture.hpp"
#include "core/answer/stage_tyres.hpp"
#include "core/answer/standing_water.hpp"
#include "core/answer/stopping.hpp"
#include "core/answer/tyre_check.hpp"
#include "core/answer/wear_log.hpp"

namespace treadwater::answer {

namespace {

constexpr Sheet first[] = {
    {heads::tyre_check, tyre_check_sheet, tyre_check, tyre_check_sources},
};

constexpr Sheet all[] = {
    {heads::tyre_check, tyre_check_sheet, tyre_check, tyre_check_sources},
    {heads::standing_water, standing_water_sheet, standing_water, standing_water_sources},
    {heads::car_check, car_check_sheet, car_check, car_check_sources},
    {heads::cold_pressure, cold_pressure_sheet, cold_pressure, cold_pressure_sources},
    {heads::fitment, fitment_sheet, fitment, fitment_sources},
    {heads::stopping, stopping_sheet, stopping, stopping_sources},
    {heads::puncture, puncture_sheet, puncture, puncture_sources},
    {heads::stage_tyres, stage_tyres_sheet, stage_tyres, stage_tyres_sources},
    {heads::field_list, field_list_sheet, field_list, field_list_sources},
    {heads::wear_log, wear_log_sheet, wear_log, wear_log_sources},
};

}  // namespace

Sheets all_sheets() { return {all, std::size(all)}; }
Sheets first_sheets() { return {first, std::size(first)}; }

const Sheet* find_sheet(Sheets sheets, std::string_view id) {
  for (const Sheet& sheet : sheets)
    if (sheet.head.id == id) return &sheet;
  return nullptr;
}

const std::vector<Way>& ways() {
  static const std::vector<Way> table = {
      {{"kerb", "At the kerb", "Kneeling beside a car, with its sidewall and a gauge.", {}},
       "tyre-check"},
      {{"stage",
        "At the stage",
        "A ruler in a puddle: how fast may each kind of tyre come through?",
        {{"tyres.0.tyre_kind", "gravel"}}},
       "standing-water"},
      {{"club",
        "On the club's page",
        "Fill it in for your cars, then share the link: it holds the whole sheet.",
        {}},
       "tyre-check"},
  };
  return table;
}

Sources sources_of(Sheets sheets) {
  Sources all;
  for (const Sheet& sheet : sheets)
    for (const Source* source : sheet.sources()) add_once(all, *source);
  return all;
}

}  // namespace treadwater::answer
