#include "core/sheets/stage_tyres/form.hpp"

#include <algorithm>
#include <cmath>

#include "core/judge/advice.hpp"
#include "core/patch/geometry.hpp"
#include "core/quantity/text.hpp"
#include "core/sheets/stage_tyres/fields.hpp"

namespace treadwater::sheets::stage_tyres {
namespace {

using Row = FormReader::Row;

template <class Where>
std::optional<int> whole(Where& where, const NumberField& field, std::optional<double> number) {
  if (!number) return std::nullopt;
  if (std::floor(*number) != *number)
    where.problem(field, "not_whole", Phrase("Put in a whole number."));
  return static_cast<int>(*number);
}

// The name given to a row, otherwise its number.
Text name_or(const Row& row, const TextField& field, Phrase otherwise, std::size_t number) {
  const Typed typed = row.name(field);
  if (!typed.empty()) return typed;
  return say(otherwise, {std::to_string(number + 1)});
}

// ---- stages ----

void read_stage(const Row& row, std::size_t number, Form& read) {
  stage::Stage s;
  if (const auto given = row.read(length)) s.length = *given;
  if (const auto given = row.read(average)) s.average = *given;
  s.gravel = row.read(gravel).value_or(0.0) / 100.0;
  s.abrasion = row.read(abrasion).value_or(1.0);
  s.air = row.read(air);
  read.stage_names.push_back(name_or(row, stage_name, Phrase("Stage #"), number));
  bool any = false;
  for (std::size_t w = 0; w < stage::weathers; ++w) {
    any = any || row.given(chances[w]);
    s.chances[w] = row.read(chances[w]).value_or(0.0) / 100.0;
  }
  if (!any) {
    s.chances[stage::index(stage::Weather::dry)] = 1.0;
    read.without_weather.push_back(number);
  }
  s.roughness = row.read(roughness).value_or(stage::Roughness::smooth);
  s.halt_after = row.read(halt).value_or(stage::Halt::none);
  read.water.push_back(row.read(water));
  read.event.stages.push_back(s);
}

// ---- sets ----

// A crew's own pace in a weather, on every surface the kind may be used on. What is not safe stays
// so.
bool read_own_pace(const Row& row, stage::SetKind& of) {
  bool any = false;
  for (std::size_t w = 0; w < std::size(slower); ++w) {
    const auto given = row.read(slower[w]);
    if (!given) continue;
    any = true;
    for (auto& ground : of.pace) {
      stage::Pace& pace = ground[w];
      if (pace.low > 0.0) pace.low = pace.high = 1.0 + *given / 100.0;
    }
  }
  return any;
}

// A crew's own life in the dry scales the others. It is for the event's surface; if the event has
// both, for the surface on which the kind lasts longest.
void scale_life(stage::SetKind& of, Length dry, const std::vector<stage::Stage>& all) {
  double most_gravel = 0.0, most_tarmac = 0.0;
  for (const stage::Stage& s : all) {
    most_gravel = std::max(most_gravel, s.gravel);
    most_tarmac = std::max(most_tarmac, 1.0 - s.gravel);
  }
  const auto life_on = [&](stage::Surface ground) { return of.life[stage::index(ground)][0]; };
  const Length on_tarmac = most_tarmac > 0.0 ? life_on(stage::Surface::tarmac) : Length();
  const Length on_gravel = most_gravel > 0.0 ? life_on(stage::Surface::gravel) : Length();
  const Length ours = std::max(on_tarmac, on_gravel);
  if (!(ours > Length())) return;
  for (auto& by_wetness : of.life)
    for (Length& one : by_wetness) one = one * (dry / ours);
}

void read_set(const Row& row, std::size_t number, Form& read, judge::Findings& findings) {
  const Source* const own_notes = &judge::advice::own_notes;
  const auto of_kind = row.read(kind);
  const auto count = whole(row, how_many, row.read(how_many));
  const auto left = row.read(tread);
  const auto life_used = row.read(used);
  const auto own_life = row.read(life);
  const auto from = row.read(coolest);
  const auto to = row.read(hottest);
  if (!of_kind) return;
  stage::TyreSet set;
  set.kind = *of_kind;
  set.count = count.value_or(1);
  if (left) set.worn = stage::worn(*of_kind, *left);
  if (life_used) set.worn = std::max(set.worn, *life_used / 100.0);
  if (own_life) {
    scale_life(set.kind, *own_life, read.event.stages);
    set.kind.life_known = own_notes;
  }
  if (read_own_pace(row, set.kind)) set.kind.pace_known = own_notes;
  if (from) set.kind.coolest = *from;
  if (to) set.kind.hottest = *to;
  if (from || to) set.kind.window_known = own_notes;
  if (set.kind.coolest > set.kind.hottest)
    row.problem(from ? coolest : hottest, "window",
                say("It would work from # to #: give the lower temperature first.",
                    {write(set.kind.coolest, read.units), write(set.kind.hottest, read.units)}));
  if (left) judge::judge_set_tread(*of_kind, *left, findings);
  read.marks.push_back(row.name(mark));
  read.rows.push_back(number);
  read.event.sets.push_back(std::move(set));
}

// ---- rules ----

void read_rules(FormReader& form, Form& read) {
  read.question.attitude = form.read(attitude).value_or(stage::Attitude::average);
  read.event.drive = form.read(drive).value_or(stage::Drive::rear);
  read.event.persistence = form.read(persistence).value_or(50.0) / 100.0;
  stage::Rules& rules = read.event.rules;
  rules.most_sets = whole(form, most_sets, form.read(most_sets));
  rules.least_tread = form.read(least_tread).value_or(millimetres(1.6));
  // A slick has no tread to measure: unless the rules give it, the others' depth is needed.
  if (!form.given(least_tread))
    for (stage::TyreSet& set : read.event.sets)
      if (set.kind.slick()) set.kind.least_tread = rules.least_tread;
  rules.least_grooves = form.read(grooves).value_or(0.0) / 100.0;
  rules.moulded_only = form.read(moulded_only).value_or(false);
  rules.no_studs = form.read(no_studs).value_or(false);
  rules.road_sections = form.read(road_sections).value_or(false);
}

// ---- cars ----

// Whatever a car's row leaves out is not compared.
void read_car(const Row& row, std::size_t number, Form& read, judge::Findings& findings) {
  if (!row.given(car_name) && !row.given(size) && !row.given(load) && !row.given(pressure)) return;
  judge::CarOnStages car;
  car.name = name_or(row, car_name, Phrase("Car #"), number);
  const auto text = row.read(size);
  if (text) car.wears.size = patch::nominal_size(*text);
  if (text && !car.wears.size) findings.add(judge::finding::size_unknown, {car.name});
  if (car.wears.size) car.width = car.wears.size->section_width;
  car.wears.load = row.read(load);
  car.pressure = row.read(pressure);
  read.cars.push_back(std::move(car));
}

}  // namespace

Form read(FormReader& form, judge::Findings& findings) {
  Form read;
  read.units = form.units();
  for (std::size_t i = 0, count = form.rows(stages); i < count; ++i)
    read_stage(form.row(stages, i), i, read);
  for (std::size_t i = 0, count = form.rows(sets); i < count; ++i)
    read_set(form.row(sets, i), i, read, findings);
  read_rules(form, read);
  for (std::size_t i = 0, count = form.rows(cars); i < count; ++i)
    read_car(form.row(cars, i), i, read, findings);
  read.question.progress = form.input().progress;
  return read;
}

void tell(const std::vector<stage::Problem>& problems, const Form& read, FormReader& form) {
  struct Place {
    std::string_view code;
    const AnyField& field;
  };
  static constexpr Place places[] = {
      {"chances", chances[0]}, {"average", average},     {"surface", gravel},
      {"abrasion", abrasion},  {"temperature", air},     {"count", how_many},
      {"worn", tread},         {"kind", life},           {"no-sets", sets},
      {"no-set-left", sets},   {"most-sets", most_sets}, {"least-tread", least_tread},
      {"too-many-sets", sets}};
  for (const stage::Problem& problem : problems) {
    const AnyField* field = nullptr;
    for (const Place& place : places)
      if (place.code == problem.code) field = &place.field;
    const auto in_row = [&](const ListField& list, std::size_t number, const AnyField& otherwise) {
      form.row(list, number).problem(field ? *field : otherwise, problem.code, problem.text);
    };
    if (problem.stage >= 0)
      in_row(stages, static_cast<std::size_t>(problem.stage), length);
    else if (problem.set >= 0)
      in_row(sets, read.rows[static_cast<std::size_t>(problem.set)], kind);
    else
      form.problem(field ? *field : stages, problem.code, problem.text);
  }
}

Text name_of(const stage::CarriedSet& set, const Form& read) {
  const std::vector<stage::TyreSet>& all = read.event.sets;
  const stage::TyreSet& of = all[set.entry];
  const bool alone = std::count_if(all.begin(), all.end(), [&](const stage::TyreSet& other) {
                       return other.kind.id == of.kind.id;
                     }) == 1;
  std::string name = say(of.kind.name);
  if (!read.marks[set.entry].empty())
    name = joined({name, " ", read.marks[set.entry].text()});
  else if (!alone)
    name = say("# of row #", {name, std::to_string(read.rows[set.entry] + 1)});
  if (of.count > 1) name = say("# (set #)", {name, std::to_string(set.number)});
  return name;
}

}  // namespace treadwater::sheets::stage_tyres
