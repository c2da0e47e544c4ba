#include "core/air/warning.hpp"

#include <algorithm>

#include "core/patch/load_capacity.hpp"

namespace treadwater::air {
namespace {

constexpr Source fmvss{"warning-us", "FMVSS 138, 49 CFR 571.138 S4.2",
                       "25 % below the placard or the floor of table 1, 20 min, 50 to 100 km/h",
                       "2005", Standing::published};
constexpr Source fmvss_car{"warning-us-car", "FMVSS 138, table 1, P-metric standard load",
                           "20 psi, as reported", "2005", Standing::secondary};
constexpr Source fmvss_extra{"warning-us-extra", "FMVSS 138, table 1, P-metric extra load",
                             "160 kPa, not seen in print", "2005", Standing::memory};
constexpr Source fmvss_truck{"warning-us-truck", "FMVSS 138, table 1, light truck tyres",
                             "35 psi for load ranges C, D and E, as the trade press reported",
                             "2005", Standing::secondary};
constexpr Source r141{"warning-un", "UN R141, in a national summary",
                      "one tyre 20 % below its warm pressure or 150 kPa, 10 min, from 40 km/h",
                      "2017", Standing::secondary};
constexpr Source r141_all{"warning-un-all", "UN R141, all tyres losing air together",
                          "20 % or 150 kPa as summarised; 60 min not seen in print", "2017",
                          Standing::memory};
constexpr Source stop{"do-not-drive", "Treadwater's own limit for driving on a soft tyre",
                      "two thirds of the set pressure, and 150 kPa", "2026",
                      Standing::common_practice};

constexpr WarningRule us(std::string_view id, Phrase title, double floor_kpa,
                         const Source& floor_from) {
  return {
      id,     title,      0.75, kilopascals(floor_kpa), minutes(20.0), kilometres_per_hour(50.0),
      &fmvss, &floor_from};
}

constexpr WarningRule un(std::string_view id, Phrase title, double within_minutes,
                         const Source& source) {
  return {
      id,      title,  0.80, kilopascals(150.0), minutes(within_minutes), kilometres_per_hour(40.0),
      &source, &source};
}

constexpr WarningRule rules[] = {
    un("un", Phrase("UN R141, one tyre"), 10.0, r141),
    un("un-all", Phrase("UN R141, all tyres together"), 60.0, r141_all),
    us("us", Phrase("FMVSS 138, car tyre"), 140.0, fmvss_car),
    us("us-extra", Phrase("FMVSS 138, extra load car tyre"), 160.0, fmvss_extra),
    us("us-truck", Phrase("FMVSS 138, light truck tyre"), 240.0, fmvss_truck),
};

}  // namespace

WarningRules warning_rules() { return {std::begin(rules), std::end(rules)}; }

const WarningRule* find_warning_rule(std::string_view id) {
  for (const WarningRule& rule : rules)
    if (rule.id == id) return &rule;
  return nullptr;
}

GaugePressure warning_pressure(const WarningRule& rule, GaugePressure set) {
  return std::max(set * rule.share, rule.floor);
}

GaugePressure do_not_drive_below(GaugePressure set) {
  return std::max(set * (2.0 / 3.0), std::min(set * 0.8, patch::least_pressure()));
}

const Source& do_not_drive_source() { return stop; }

}  // namespace treadwater::air
