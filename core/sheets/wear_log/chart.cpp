#include "core/sheets/wear_log/chart.hpp"

#include <algorithm>

#include "core/sheets/sayings.hpp"

namespace treadwater::sheets::wear_log {
namespace {

// Readings and line of each tyre, then the law; the table has one row per reading.
class WearChart {
 public:
  WearChart(long first_day, UnitSystem units)
      : first_day_(static_cast<double>(first_day)), units_(units) {
    chart_.id = "wear";
    chart_.title = Phrase("Tread over time");
    chart_.text = Phrase("Each tyre's readings, and the line they suggest.");
    chart_.x = {Phrase("Months since the first reading"), Phrase("months")};
    chart_.y = {Phrase("Tread depth"), std::string(shown_depth(Length(), units).unit)};
    chart_.table.columns = {Phrase("Tyre and day"), Phrase("Read"), Phrase("Line")};
  }

  void add(const JudgedLog& log) {
    Series series{"subject", log.tyre.name(), {}, {}, {}, {}};
    const std::vector<wear::Reading>& readings = log.tyre.log.readings();
    for (std::size_t i = 0; i < readings.size(); ++i) {
      const auto day = static_cast<double>(readings[i].day);
      put(series, day, readings[i].depth);
      const bool counts = log.wear.by_day && i >= log.wear.rise.at;
      chart_.table.rows.push_back({say("#, #", {log.tyre.name(), say_month_of(readings[i].day)}),
                                   write_depth(readings[i].depth, units_),
                                   counts ? line(*log.wear.by_day, day) : Text()});
    }
    chart_.series.push_back(std::move(series));
  }

  Chart with_law(const standard::TreadLaw& law, standard::Date today) && {
    Series least{"reference", say("Legal minimum, #", {law.place}), {}, {}, {}, {}};
    put(least, first_day_, law.least);
    put(least, static_cast<double>(standard::days_since_1970(today)), law.least);
    chart_.series.push_back(std::move(least));
    return std::move(chart_);
  }

 private:
  void put(Series& series, double day, Length depth) const {
    series.x.push_back((day - first_day_) / wear::days_a_month);
    series.y.push_back(shown_depth(depth, units_).value);
  }
  Text line(const wear::Rate& rate, double day) const {
    return write_worn(wear::depth_at(rate, day), units_);
  }

  Chart chart_;
  double first_day_;
  UnitSystem units_;
};

}  // namespace

void draw_wear(const std::vector<JudgedLog>& logs, const standard::TreadLaw& law,
               standard::Date today, AnswerBuilder& answer) {
  long first = logs.front().tyre.log.first_day();
  for (const JudgedLog& log : logs) first = std::min(first, log.tyre.log.first_day());
  WearChart chart(first, answer.units());
  for (const JudgedLog& log : logs) chart.add(log);
  answer.answer().charts.push_back(std::move(chart).with_law(law, today));
}

}  // namespace treadwater::sheets::wear_log
