#include "core/sheets/stopping/rules.hpp"

#include <cmath>

namespace treadwater::sheets::stopping {
namespace {

// A rule is printed as the sum of its parts, each rounded to whole metres or feet.
Length printed_sum(const grip::RuleDistance& parts, UnitSystem units) {
  const auto whole = [&](Length part) { return std::round(shown_distance(part, units).value); };
  return distance_shown_as(whole(parts.thinking) + whole(parts.braking), units);
}

class RuleTable {
 public:
  explicit RuleTable(AnswerBuilder& answer) : answer_(answer) {}

  // With its two parts.
  void row(Phrase label, const grip::RuleDistance& parts, const Source& source) {
    add(label, write_whole_distance(parts.thinking, answer_.units()),
        write_whole_distance(parts.braking, answer_.units()), printed_sum(parts, answer_.units()),
        source);
  }
  void row(Phrase label, Length sum, const Source& source) { add(label, {}, {}, sum, source); }

  // The last row as a figure too.
  void figure(const char* id, Phrase label, Length sum, const Source& source) {
    answer_.figure(id, label, in_metres(sum), "m", write_whole_distance(sum, answer_.units()),
                   {&source});
  }

  void finish() { answer_.answer().tables.push_back(std::move(table_)); }

 private:
  void add(Phrase label, Text thinking, Text braking, Length sum, const Source& source) {
    table_.rows.push_back({label, std::move(thinking), std::move(braking),
                           write_whole_distance(sum, answer_.units()),
                           standing_name(source.standing)});
  }

  AnswerBuilder& answer_;
  Table table_{"taught",
               Phrase("What drivers are taught"),
               Phrase("For a car on a dry, level road, unless the row says otherwise."),
               {Phrase("Rule"), Phrase("Thinking"), Phrase("Braking"), Phrase("In all"),
                Phrase("How known")},
               {}};
};

void tell_highway_code(const judge::StopCase& stop, UnitSystem units, RuleTable& table) {
  const Phrase label("Highway Code, rule 126");
  const Source& source = grip::highway_code_source;
  const grip::RuleDistance code = grip::highway_code(stop.speed);
  const Length sum = printed_sum(code, units);
  table.row(label, code, source);
  table.figure("highway_code", label, sum, source);
  switch (grip::gap_road(stop.grip)) {
    case grip::GapRoad::dry:
      break;
    case grip::GapRoad::wet:
      table.row(Phrase("The same in the wet: double, at least"), sum * grip::highway_code_wet,
                source);
      break;
    case grip::GapRoad::ice:
      table.row(Phrase("The same on snow and ice: ten times"), sum * grip::highway_code_ice,
                source);
      break;
  }
}

void tell_driving_school(const judge::StopCase& stop, UnitSystem units, RuleTable& table) {
  const Phrase label("German driving schools");
  const Source& source = grip::driving_school_source;
  const auto normal = grip::driving_school(stop.speed, grip::Braking::normal);
  table.row(label, normal, source);
  table.figure("driving_school", label, printed_sum(normal, units), source);
  table.row(Phrase("The same, braking fully"),
            grip::driving_school(stop.speed, grip::Braking::full), source);
}

void tell_sight_distance(const judge::StopCase& stop, UnitSystem units, RuleTable& table) {
  const Phrase label("AASHTO stopping sight distance");
  const Source& source = grip::sight_distance_source;
  // The two printed forms differ by a rounding of their factors.
  const Length sight = units == UnitSystem::us ? grip::sight_distance_us(stop.speed)
                                               : grip::sight_distance_metric(stop.speed);
  table.row(label, sight, source);
  table.figure("sight_distance", label, sight, source);
  const auto on_grade = grip::sight_distance_on_grade(stop.speed, stop.grade);
  if (stop.grade != 0.0 && on_grade) table.row(Phrase("The same on this grade"), *on_grade, source);
}

}  // namespace

void tell_rules(const judge::StopCase& stop, AnswerBuilder& answer) {
  RuleTable table(answer);
  tell_highway_code(stop, answer.units(), table);
  tell_driving_school(stop, answer.units(), table);
  tell_sight_distance(stop, answer.units(), table);
  table.finish();
}

}  // namespace treadwater::sheets::stopping
