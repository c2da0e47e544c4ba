#include "core/sheets/stage_tyres/timeline.hpp"

#include <algorithm>

#include "core/words/measure.hpp"

namespace treadwater::sheets::stage_tyres {
namespace {

constexpr double little_left = 0.15;  // of a life

stage::Weather likeliest(const stage::Chances& chances) {
  return static_cast<stage::Weather>(std::max_element(chances.begin(), chances.end()) -
                                     chances.begin());
}

}  // namespace

void draw_stages(const judge::StagesCase& stages, AnswerBuilder& answer) {
  Timeline timeline{"stages",
                    Phrase("Stage by stage"),
                    Phrase("What is likely to be on, and what is left of it."),
                    {}};
  const auto per_cent = [](double share) { return fixed(100.0 * share, 0); };
  for (std::size_t i = 0; i < stages.event.stages.size(); ++i) {
    const stage::Stage& s = stages.event.stages[i];
    const stage::WearLeft& left = stages.plan.left[i];
    timeline.steps.push_back(
        {stages.stages[i],
         say("#, likely #; #. About # % left, # % at least.",
             {say_stage_length(s.length, answer.units()), stage::weather_name(likeliest(s.chances)),
              stages.sets[stages.plan.likeliest_on(i)], per_cent(left.expected),
              per_cent(left.least)}),
         in_kilometres(s.length), left.least < little_left ? Level::care : Level::note});
  }
  answer.answer().timelines.push_back(std::move(timeline));
}

}  // namespace treadwater::sheets::stage_tyres
