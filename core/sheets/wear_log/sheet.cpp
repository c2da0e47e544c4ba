// The sheet `wear-log`: dated tread readings of a car's tyres -> how fast each wears, and when it
// will reach 3 mm and the legal minimum.
#include "core/sheets/sheet.hpp"

#include "core/judge/wear.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/wear_log/chart.hpp"
#include "core/sheets/wear_log/fields.hpp"
#include "core/sheets/wear_log/figures.hpp"

namespace treadwater::sheets::wear_log {

extern const SheetHead head;
const SheetHead head{"wear-log", Phrase("Keep a wear log"),
                     Phrase("From tread readings on several days: how fast does each tyre wear, "
                            "and when is it due?")};

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), sheets::describe(fields::place),
       sheets::describe(readings, {also(sheets::describe(tyre), tyre_column),
                                   also(sheets::describe(date), column::day),
                                   also(sheets::describe(depth), column::tread),
                                   also(sheets::describe(odometer), column::odometer)})},
      {"example",
       Phrase("An invented case: two tyres of the Pipit 1.4, a made-up small hatchback"),
       Phrase("Front left and rear left, measured four times."),
       {{"readings.0.tyre", "front-left"}, {"readings.0.date", "2025-04-12"},
        {"readings.0.depth", "7.6 mm"},    {"readings.0.odometer", "31000 km"},
        {"readings.1.tyre", "front-left"}, {"readings.1.date", "2025-10-18"},
        {"readings.1.depth", "6.2 mm"},    {"readings.1.odometer", "38900 km"},
        {"readings.2.tyre", "front-left"}, {"readings.2.date", "2026-05-02"},
        {"readings.2.depth", "4.9 mm"},    {"readings.2.odometer", "46100 km"},
        {"readings.3.tyre", "rear-left"},  {"readings.3.date", "2025-04-12"},
        {"readings.3.depth", "7.7 mm"},    {"readings.3.odometer", "31000 km"},
        {"readings.4.tyre", "rear-left"},  {"readings.4.date", "2026-05-02"},
        {"readings.4.depth", "6.8 mm"},    {"readings.4.odometer", "46100 km"}}}};
  return sheet;
}

namespace {

wear::Log& log_of(std::vector<judge::LoggedTyre>& tyres, std::optional<car::Corner> corner) {
  for (judge::LoggedTyre& one : tyres)
    if (one.corner == corner) return one.log;
  tyres.push_back({corner});
  return tyres.back().log;
}

void read_row(FormReader& form, std::size_t number, std::vector<judge::LoggedTyre>& tyres) {
  const FormReader::Row row = form.row(readings, number);
  const auto corner = row.read(tyre);
  const auto day = row.read(date);
  const auto tread = row.read(depth);
  const auto stands_at = row.read(odometer);
  if (!corner || !day || !tread) return;
  const long read_on = standard::days_since_1970(*day);
  // In another time zone it may be tomorrow.
  if (read_on > standard::days_since_1970(form.today()) + 1)
    row.problem(date, "in_the_future",
                say("Day: this day has not come yet on #, today by this device. The day of the "
                    "reading would do.",
                    {standard::write_iso_date(form.today())}));
  else
    log_of(tyres, *corner).add({read_on, *tread, stands_at});
}

std::vector<judge::LoggedTyre> read(FormReader& form) {
  const std::size_t count = form.rows(readings);
  if (count == 0 && form.ok())
    form.problem(readings, "missing",
                 Phrase("Readings are missing: two of one tyre, on two days, would do."));
  std::vector<judge::LoggedTyre> tyres;
  for (std::size_t number = 0; number < count; ++number) read_row(form, number, tyres);
  return tyres;
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  const standard::TreadLaw* law = form.read(fields::place).value_or(nullptr);
  const std::vector<judge::LoggedTyre> tyres = read(form);
  judge::Findings findings;
  std::vector<JudgedLog> logs;
  for (const judge::LoggedTyre& one : tyres) {
    logs.push_back({one, judge::judge_log(one, law, form.today(), findings)});
    tell_wear(one, logs.back().wear, law, form.today(), answer);
  }
  judge::judge_pairs(tyres, findings);
  if (!logs.empty() && law != nullptr) draw_wear(logs, *law, form.today(), answer);
  const bool whole = form.ok();
  answer.take_problems(form);
  answer.tell(findings);
  if (whole)
    answer.conclude(judge::verdict(findings, std::nullopt),
                    {Phrase("Nothing here needs a new tyre yet."), Phrase("Plan for it: #.")});
  return answer.take();
}

}  // namespace treadwater::sheets::wear_log
