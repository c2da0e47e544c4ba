#include "core/judge/age.hpp"

namespace treadwater::judge {
namespace {

Sources sources() { return {&standard::date_code_source(), &standard::age_advice_source()}; }

}  // namespace

void judge_age(const standard::TyreAge& age, standard::Date today, Findings& findings) {
  const std::string year = std::to_string(age.year);
  const Values made{std::to_string(age.week), year,
                    std::to_string(static_cast<int>(age.least_years)),
                    standard::write_iso_date(today)};
  if (age.least_years > standard::years_at_most) {
    if (age.before_2000)
      findings.add(finding::over_ten_years_by_decade, {year}, sources());
    else
      findings.add(finding::over_ten_years_by_week, made, sources());
  } else if (age.least_years > standard::years_of_care) {
    findings.add(finding::over_six_years_by_week, made, sources());
  }
}

void judge_age(double years, Findings& findings) {
  if (years > standard::years_at_most)
    findings.add(finding::over_ten_years, {}, sources());
  else if (years > standard::years_of_care)
    findings.add(finding::over_six_years, {}, sources());
}

void judge_age(const Text& tyre, double years, Findings& findings) {
  if (years > standard::years_at_most)
    findings.add(finding::named_over_ten_years, {tyre}, sources());
  else if (years > standard::years_of_care)
    findings.add(finding::named_over_six_years, {tyre}, sources());
}

void judge_marked_age(std::string_view date_code, standard::Date today, Findings& findings) {
  if (date_code.empty()) return;
  if (const auto age = standard::read_date_code(date_code, today))
    judge_age(age->least_years, findings);
}

}  // namespace treadwater::judge
