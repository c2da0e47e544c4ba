#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets {

void AnswerBuilder::figure(const char* id, TextView label, double value, std::string_view unit,
                           TextView text, judge::SomeSources sources, TextView note,
                           std::optional<Band> band) {
  Figure figure{id, label.kept(), value, unit, {}, {}, text.kept(), note.kept(), sources.kept()};
  if (band) {
    figure.low = band->low;
    figure.high = band->high;
  }
  answer_.figures.push_back(std::move(figure));
}

void AnswerBuilder::speak(TextView text) {
  answer_.spoken.push_back({"radio", Phrase("To read out"), text.kept()});
}

void AnswerBuilder::take_problems(FormReader& form) { answer_.problems = form.take_problems(); }

void AnswerBuilder::tell(const judge::Findings& findings) {
  for (const judge::Found& found : findings.found)
    answer_.cautions.push_back(in_words(found, units_));
  for (const judge::Limit& limit : findings.limits)
    answer_.limits.push_back(in_words(limit, units_));
}

void AnswerBuilder::tell(const judge::HoldTo& hold) { answer_.hold_to = in_words(hold, units_); }

void AnswerBuilder::tell(const std::optional<judge::HoldTo>& hold,
                         const std::optional<judge::NoLimit>& none) {
  if (hold) tell(*hold);
  if (none) answer_.no_limit = in_words(*none, units_);
}

void AnswerBuilder::conclude(const judge::Verdict& verdict, const VerdictWords& words) {
  Verdict told{verdict.level, words.fit};
  if (verdict.level != Level::note) {
    const std::string why = reasons(verdict, units_);
    std::vector<TextView> gaps(words.values.begin(), words.values.end());
    gaps.emplace_back(why);
    told.text = sentences(
        {words.before,
         say(verdict.level == Level::care ? words.care : words.unfit, gaps.data(), gaps.size()),
         words.after});
  }
  // What is not fit has no leave to be driven without a limit.
  if (verdict.level == Level::unfit) answer_.no_limit.reset();
  answer_.verdict = std::move(told);
}

std::string reasons(const judge::Verdict& verdict, UnitSystem units) {
  std::string list;
  for (const judge::Found* found : verdict.why)
    list = list.empty() ? reason(*found, units) : say("#; #", {list, reason(*found, units)});
  return list;
}

}  // namespace treadwater::sheets
