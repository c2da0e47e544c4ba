#include "core/sheets/cold_pressure/charts.hpp"

#include "core/patch/contact.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/measured.hpp"

namespace treadwater::sheets::cold_pressure {
namespace {

template <class Q>
Axis axis(Phrase label, Q any, UnitSystem units) {
  return {label, std::string(shown(any, units).unit)};
}

Series curve(std::string_view role, Phrase label) { return {role, label, {}, {}, {}, {}}; }

void tell_cross_ply(const patch::TyreSize& size, GaugePressure set, Mass load,
                    AnswerBuilder& answer) {
  const auto found = patch::cross_ply_patch(size, set, set, weight(load));
  if (!found) return;
  const UnitSystem units = answer.units();
  const double high = in_square_centimetres(found->area_high);
  answer.figure("patch_area", Phrase("Contact area of a cross-ply"), high, "cm²",
                say("# to #", {write(found->area_low, units), write(found->area_high, units)}),
                {&patch::cross_ply_source(), &patch::cross_ply_stiffness_source()},
                Phrase("Two sources contradict each other, and neither was seen in print."),
                AnswerBuilder::Band{in_square_centimetres(found->area_low), high});
}

Table radial_patches(const patch::TyreSize& size, GaugePressure set, Mass load, Mass rated,
                     UnitSystem units) {
  Table table{"patch",
              Phrase("The contact patch, and what changes it"),
              Phrase("By equations for belted radials, which read up to 31 % long and large "
                     "against two measured tyres."),
              {Text(), Phrase("Long"), Phrase("Wide"), Phrase("Area")},
              {}};
  const auto row = [&](Text name, GaugePressure pressure, Mass carried, double degrees) {
    const auto shares = patch::camber_shares(degrees);
    if (!shares) return;
    const auto p = patch::contact_patch(size, pressure, carried, rated);
    table.rows.push_back({std::move(name), write_size(p.length * shares->length, units),
                          write_size(p.width * shares->width, units),
                          write(p.area * shares->area, units)});
  };
  row(say("# and #", {write_at_least(set, units), write(load, units)}), set, load, 0.0);
  row(Phrase("A fifth less pressure"), set * 0.8, load, 0.0);
  row(Phrase("A fifth more pressure"), set * 1.2, load, 0.0);
  row(Phrase("A fifth less load"), set, load * 0.8, 0.0);
  row(Phrase("A fifth more load"), set, load * 1.2, 0.0);
  row(Phrase("2 degrees of camber"), set, load, 2.0);
  row(Phrase("4 degrees of camber"), set, load, 4.0);
  return table;
}

}  // namespace

void draw_capacity(const judge::PressureNeed& need, Mass load, AnswerBuilder& answer) {
  if (!need.demand) return;
  constexpr int steps = 12;
  constexpr int steps_a_row = 3;
  const UnitSystem units = answer.units();
  const patch::Support& support = need.rated->support;
  const GaugePressure least = patch::least_pressure();
  Chart chart;
  chart.id = "capacity";
  chart.title = Phrase("Load it can carry");
  chart.text = say("What this tyre carries at each cold pressure, up to its rating of #.",
                   {write(support.greatest(), units)});
  chart.x = axis(Phrase("Cold pressure"), least, units);
  chart.y = axis(Phrase("Load"), load, units);
  chart.table.columns = {Phrase("Cold pressure"), Phrase("Load")};
  Series carried = curve("subject", Phrase("Carries"));
  for (int step = 0; step <= steps; ++step) {
    const double share = static_cast<double>(step) / steps;
    const GaugePressure p = least + (support.reference() - least) * share;
    const Mass m = support.least_capacity(p);
    carried.x.push_back(shown(p, units).value);
    carried.y.push_back(shown(m, units).value);
    if (step % steps_a_row == 0) chart.table.rows.push_back({write(p, units), write(m, units)});
  }
  chart.series = {std::move(carried)};
  chart.marks = {
      {shown(*need.pressure(), units).value, shown(load, units).value, Phrase("This load")}};
  answer.answer().charts.push_back(std::move(chart));
}

void draw_temperature(const judge::SettingJudged& judged, const judge::SettingCase& setting,
                      AnswerBuilder& answer) {
  const auto set = judged.to_set();
  if (!set) return;
  const UnitSystem units = answer.units();
  Chart chart;
  chart.id = "temperature";
  chart.title = Phrase("The same air, colder and hotter");
  chart.text = say("Set to # at #, this is what the gauge shows as the tyre cools and heats.",
                   {write_at_least(*set, units), write(setting.cold_day, units)});
  chart.x = axis(Phrase("Temperature of the tyre"), setting.cold_day, units);
  chart.y = axis(Phrase("Gauge pressure"), *set, units);
  chart.table.columns = {Phrase("Tyre"), Phrase("Gauge")};
  Series air_in_it = curve("subject", Phrase("The air in it"));
  for (int degrees = -20; degrees <= 100; degrees += 10) {
    const Temperature t = celsius(degrees);
    const GaugePressure p = air::carried_over({*set, {setting.cold_day}}, {t});
    air_in_it.x.push_back(shown(t, units).value);
    air_in_it.y.push_back(shown(p, units).value);
    chart.table.rows.push_back({write(t, units), write(p, units)});
  }
  chart.series = {std::move(air_in_it)};
  if (const auto need = judged.need.pressure()) {
    Series least = curve("reference", Phrase("Needed cold for the load"));
    const double level = shown(*need, units).value;
    least.x = {chart.series.front().x.front(), chart.series.front().x.back()};
    least.y = {level, level};
    chart.series.push_back(std::move(least));
  }
  chart.marks = {
      {shown(setting.cold_day, units).value, shown(*set, units).value, Phrase("Set here")}};
  answer.answer().charts.push_back(std::move(chart));
}

void tell_patches(const judge::SettingJudged& judged, const judge::SettingCase& setting,
                  AnswerBuilder& answer) {
  const auto set = judged.to_set();
  if (!set || !setting.size || !setting.load || setting.size->motorcycle) return;
  const auto size = patch::nominal_size(*setting.size);
  const auto rated = patch::greatest_load(*setting.size);
  if (!size || !rated) return;
  if (setting.size->construction == sidewall::Construction::cross_ply)
    tell_cross_ply(*size, *set, *setting.load, answer);
  if (setting.size->construction != sidewall::Construction::radial) return;
  const UnitSystem units = answer.units();
  answer.answer().tables.push_back(radial_patches(*size, *set, *setting.load, rated->mass, units));
  const auto p = patch::contact_patch(*size, *set, *setting.load, rated->mass);
  answer.figure(
      "patch_area", Phrase("Contact area at that pressure"), in_square_centimetres(p.area), "cm²",
      say("about #", {write(p.area, units)}),
      {&patch::contact_area_source(), &patch::contact_length_source(),
       &patch::contact_width_source(), &patch::stiffness_source(), &patch::measured_patch_source()},
      Phrase("Provisional: the stiffness constants are from memory."));
}

}  // namespace treadwater::sheets::cold_pressure
