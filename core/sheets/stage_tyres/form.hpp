// Reads the form of the sheet `stage-tyres` into an event to plan.
#pragma once

#include <vector>

#include "core/judge/stages.hpp"
#include "core/sheets/form_reader.hpp"
#include "core/stage/plan.hpp"

namespace treadwater::sheets::stage_tyres {

struct Form {
  UnitSystem units{};
  stage::Event event;
  stage::Question question;
  std::vector<Text> stage_names;
  std::vector<std::size_t> without_weather;  // stages for which no chances were given
  std::vector<std::optional<Length>> water;  // by stage
  // For each entry of Event::sets: the mark on it, and its row in the form.
  std::vector<Typed> marks;
  std::vector<std::size_t> rows;
  std::vector<judge::CarOnStages> cars;
};

Form read(FormReader& form, judge::Findings& findings);

// The planner's problems are shown beside the rows they are about.
void tell(const std::vector<stage::Problem>& problems, const Form& read, FormReader& form);

// "soft stage tyre B": by its mark; without one by its row, if there is another of its kind.
Text name_of(const stage::CarriedSet& set, const Form& read);

}  // namespace treadwater::sheets::stage_tyres
