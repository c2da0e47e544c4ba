// Puts an answer together: figures in the user's units and language, then the findings, the maximum
// speed, and the verdict.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/judge/verdict.hpp"
#include "core/sheets/answer.hpp"
#include "core/sheets/form_reader.hpp"
#include "core/sheets/sayings.hpp"

namespace treadwater::sheets {

// The sentence for each level of verdict. The gaps of `care` and `unfit` take `values` first, then
// the reasons; `before` and `after` are whole sentences around it.
struct VerdictWords {
  Text fit;
  Phrase care = Phrase("Fit only with care: #.");
  Phrase unfit = Phrase("Not fit as it stands: #.");
  std::vector<Text> values{};
  Text before{};
  Text after{};
};

class AnswerBuilder {
 public:
  AnswerBuilder(std::string_view sheet, UnitSystem units) : units_(units) {
    answer_.sheet = std::string(sheet);
  }

  UnitSystem units() const { return units_; }
  // Blocks (drawings, tables, charts …) go straight into it.
  Answer& answer() { return answer_; }
  Answer take() { return std::move(answer_); }

  struct Band {
    double low;
    double high;
  };
  void figure(const char* id, TextView label, double value, std::string_view unit, TextView text,
              judge::SomeSources sources, TextView note = {}, std::optional<Band> band = {});
  void speak(TextView text);  // the sentence to read out

  void take_problems(FormReader& form);
  void tell(const judge::Findings& findings);  // cautions and limits
  void tell(const judge::HoldTo& hold);
  void tell(const std::optional<judge::HoldTo>& hold, const std::optional<judge::NoLimit>& none);
  void conclude(const judge::Verdict& verdict, const VerdictWords& words);

 private:
  Answer answer_;
  UnitSystem units_;
};

// The reasons of a verdict: "the tread is worn; the pressure is too low".
std::string reasons(const judge::Verdict& verdict, UnitSystem units);

}  // namespace treadwater::sheets
