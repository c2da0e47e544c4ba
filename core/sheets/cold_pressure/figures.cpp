#include "core/sheets/cold_pressure/figures.hpp"

#include "core/air/natural_loss.hpp"
#include "core/air/warning.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speed_load.hpp"

namespace treadwater::sheets::cold_pressure {
namespace {

void pressure(const char* id, Text label, GaugePressure p, Text text, Sources sources,
              AnswerBuilder& answer, Text note = {}) {
  answer.figure(id, std::move(label), in_kilopascals(p), "kPa", std::move(text), std::move(sources),
                std::move(note));
}

void as_it_is(const char* id, Text label, GaugePressure p, Sources sources, AnswerBuilder& answer,
              Text note = {}) {
  pressure(id, std::move(label), p, write(p, answer.units()), std::move(sources), answer,
           std::move(note));
}

void at_least(const char* id, Text label, GaugePressure p, Sources sources, AnswerBuilder& answer) {
  pressure(id, std::move(label), p, write_at_least(p, answer.units()), std::move(sources), answer);
}

// The US rule's floor for this kind of tyre; UN R141 for one tyre.
bool concerns(const air::WarningRule& rule, const std::optional<sidewall::Reading>& size) {
  if (rule.id == "un") return true;
  if (!size) return false;
  return rule.id == (size->light_truck ? "us-truck" : size->extra_load ? "us-extra" : "us");
}

// As read, as calculated, or as to be set.
std::string now_here(const judge::SettingJudged& judged, UnitSystem units) {
  if (!judged.cold) return write_at_least(*judged.set, units);
  return judged.read_warm ? write_at_most(*judged.cold, units) : write(*judged.cold, units);
}

}  // namespace

void tell_need(const judge::PressureNeed& need, const judge::SettingCase& setting,
               AnswerBuilder& answer) {
  if (!need.rated) return;
  const patch::GreatestLoad& greatest = need.rated->greatest;
  answer.figure(
      "load_rating", say("Load rating (index #)", {std::to_string(greatest.index)}),
      in_kilograms(greatest.sure), "kg", write(greatest.sure, answer.units()),
      {greatest.worked_out ? &patch::p_metric_capacity_source() : &standard::load_index_source()});
  if (!need.demand) return;
  const patch::RatedTyre& tyre = need.rated->support.tyre();
  const Sources laws = need.rated->support.sources();
  const auto by_law = [&](const char* id, Phrase label, const patch::LoadLaw& law) {
    at_least(id, label, patch::pressure_needed(law, tyre.greatest, *setting.load), {law.source},
             answer);
  };
  // An added part is not rounded up: rounded one by one they would add up to too much.
  const auto more = [&](const char* id, Phrase label, GaugePressure p, const Source& source) {
    if (p > GaugePressure()) as_it_is(id, label, p, {&source}, answer);
  };
  if (tyre.second_law) {
    by_law("need_first_law", Phrase("Needed by the US law"), tyre.law);
    by_law("need_second_law", Phrase("Needed by the European law"), *tyre.second_law);
  }
  at_least("need_load", Phrase("For the load"), need.demand->base, laws, answer);
  more("need_speed", Phrase("More for the speed"), need.demand->speed,
       standard::speed_pressure_source());
  more("need_camber", Phrase("More for the camber"), need.demand->camber,
       standard::camber_pressure_source());
  more("need_towing", Phrase("More for towing"), need.demand->towing,
       *standard::towing_rear_tyre().source);
  at_least("pressure_needed", Phrase("Least cold pressure in all"), need.demand->total(), laws,
           answer);
}

void tell_air(const judge::SettingJudged& judged, const judge::SettingCase& setting,
              AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  const Sources gas{&air::gas_law_source()};
  const Sources gas_and_air{&air::gas_law_source(), &air::atmosphere_source()};
  const std::string cold_day = write(setting.cold_day, units);
  if (judged.set_here)
    at_least("set_here", Phrase("Set here to have the right pressure there"), *judged.set_here,
             gas_and_air, answer);
  if (judged.read_warm)
    pressure("cold_equivalent", Phrase("The reading, once it is cold"), *judged.cold,
             write_at_most(*judged.cold, units), gas, answer,
             say("The same air at #.", {cold_day}));
  if (judged.cold_for_target)
    as_it_is("cold_setting", Phrase("Set cold for that hot pressure"), *judged.cold_for_target, gas,
             answer,
             say("At # here, to be # at #.",
                 {cold_day, write(*setting.hot_target, units), write(*setting.hot_tyre, units)}));
  if (judged.hot_at_setting)
    as_it_is("hot_at_setting", Phrase("At work, with what is to be set"), *judged.hot_at_setting,
             gas, answer);
  if (judged.at_stage)
    as_it_is("at_stage", Phrase("The same air there, cold"), *judged.at_stage, gas_and_air, answer,
             say("# here at #.", {now_here(judged, units), cold_day}));
}

void tell_warnings(const judge::SettingJudged& judged, const judge::SettingCase& setting,
                   AnswerBuilder& answer) {
  const auto set = judged.to_set();
  if (!set) return;
  for (const air::WarningRule& rule : air::warning_rules())
    if (concerns(rule, setting.size))
      as_it_is("warning_lamp", say("Warning lamp by #", {rule.title}),
               air::warning_pressure(rule, *set), {rule.source, rule.floor_from}, answer);
  at_least("do_not_drive", Phrase("Do not drive under"), air::do_not_drive_below(*set),
           {&air::do_not_drive_source()}, answer);
  const GaugePressure colder =
      air::carried_over({*set, {setting.cold_day}}, {setting.cold_day - kelvin_difference(10.0)});
  as_it_is("ten_kelvins", Phrase("Lost with every 10 °C colder"), *set - colder,
           {&air::gas_law_source()}, answer);
  const air::PressureBand month =
      air::natural_loss(air::AirHolder::tubeless, setting.cold_day, days(30.0));
  answer.figure(
      "natural_loss", Phrase("Lost through the rubber in a month"), in_kilopascals(month.high),
      "kPa", say("# to #", {write(month.low, answer.units()), write(month.high, answer.units())}),
      {&air::natural_loss_source()}, {},
      AnswerBuilder::Band{in_kilopascals(month.low), in_kilopascals(month.high)});
}

}  // namespace treadwater::sheets::cold_pressure
