#include "core/answer/wear_log.hpp"

#include <algorithm>
#include <cmath>

#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/tread_law.hpp"
#include "core/wear/rate.hpp"

namespace treadwater::answer {
namespace {

constexpr double days_a_year = 365.25;
constexpr double days_a_month = days_a_year / 12.0;
constexpr double far_away = 10.0 * days_a_year;  // no date is named beyond this

// An older reading says little of today: ours.
constexpr long still_good_days = 183;

// Tread does not grow: more of it is another tyre or a wrong reading, and which of them is not
// known. So one rise is asked for twice, each time to the safe side. The rate counts from the least
// rise that is none of the gauge (two readings, each its error out, the opposite ways, and the last
// digits of that): two tyres taken for one would wear too slowly. The age counts from one that no
// wrong reading is likely to make (ours): an old tyre taken for another would be too young.
constexpr Length more_than_read = standard::tread_gauge_error * 2.0 + millimetres(0.05);
constexpr Length another_tyre = millimetres(1.0);

// A pair of tyres on one axle, or one behind the other, further apart than this is worth a word.
constexpr Length uneven_pair = millimetres(1.5);
constexpr Source rotation{"wear-rotation", "Tread of the four tyres: differences worth acting on",
                          "1.5 mm across an axle, deeper tread to the rear", "",
                          Standing::common_practice};

struct Reading {
  long day = 0;
  Length depth;
  std::optional<double> kilometres;
};

struct Log {
  std::string_view tyre;
  std::string_view label;
  std::vector<Reading> readings;  // by day
  std::size_t since = 0;          // the first reading since the tread last rose
  std::optional<wear::Rate> by_day;
  std::optional<wear::Rate> by_distance;

  // Of one day, the least.
  Length least_of(long day) const {
    std::optional<Length> least;
    for (const Reading& r : readings)
      if (r.day == day) least = std::min(least.value_or(r.depth), r.depth);
    return least.value_or(Length());
  }
  Length latest() const { return least_of(readings.back().day); }

  // The last time that the least of a day was more than this over the least since the rise before.
  struct Rise {
    std::size_t at = 0;  // the first reading since; 0 where there was none
    Length before;
  };
  Rise last_rise(Length more_than) const {
    Length least = least_of(readings.front().day);
    Rise found{0, least};
    for (std::size_t i = 1; i < readings.size(); ++i) {
      if (readings[i].day == readings[i - 1].day) continue;
      const Length depth = least_of(readings[i].day);
      if (depth > least + more_than) {
        found = {i, least};
        least = depth;
      }
      least = std::min(least, depth);
    }
    return found;
  }

  std::vector<Reading> counted() const {
    return {readings.begin() + static_cast<std::ptrdiff_t>(since), readings.end()};
  }
};

std::string month_text(long day) {
  constexpr const char* names[] = {"January",   "February", "March",    "April",
                                   "May",       "June",     "July",     "August",
                                   "September", "October",  "November", "December"};
  const Date date = date_of(day);
  return filled("# #", {names[date.month - 1], std::to_string(date.year)});
}

class WearLog : Teller {
 public:
  explicit WearLog(const Input& input) : Teller(wear_log_sheet(), input) {}

  Answer run() {
    if (const auto id = choice("place")) law_ = standard::find_tread_law(*id);
    read_readings();
    for (Log& log : logs_) describe(log);
    compare();
    if (!logs_.empty() && law_ != nullptr) draw();
    if (answer_.ok())
      conclude("Nothing here needs a new tyre yet.", "Plan for it: #.", "Not fit as it stands: #.");
    return std::move(answer_);
  }

 private:
  void read_readings() {
    const std::size_t count = rows("readings");
    if (count == 0 && answer_.ok())
      problem("readings", "missing",
              "Readings are missing: two of one tyre, on two days, would do.");
    for (std::size_t row = 0; row < count; ++row) {
      const auto tyre = choice(row_path("readings", row, "tyre"));
      const auto day = date(row_path("readings", row, "date"));
      const auto depth = quantity<Length>(row_path("readings", row, "depth"));
      const auto odometer = quantity<Length>(row_path("readings", row, "odometer"));
      if (!tyre || !day || !depth) continue;
      if (days_since_1970(*day) > days_since_1970(today_) + 1) {
        problem(row_path("readings", row, "date"), "in_the_future",
                filled("Day: this day has not come yet on #, today by this device. The day of the "
                       "reading would do.",
                       {write_iso_date(today_)}));
        continue;
      }
      Reading reading{days_since_1970(*day), *depth, {}};
      if (odometer) reading.kilometres = in_metres(*odometer) / 1000.0;
      log_of(*tyre).readings.push_back(reading);
    }
    for (Log& log : logs_)
      std::stable_sort(log.readings.begin(), log.readings.end(),
                       [](const Reading& a, const Reading& b) { return a.day < b.day; });
  }

  Log& log_of(std::string_view tyre) {
    for (Log& log : logs_)
      if (log.tyre == tyre) return log;
    std::string_view label = tyre;
    for (const Choice& choice : find_field(sheet_, "readings.0.tyre")->choices)
      if (choice.value == tyre) label = choice.label;
    logs_.push_back({tyre, label, {}, 0, {}, {}});
    return logs_.back();
  }

  void describe(Log& log) {
    find_rise(log);
    std::vector<wear::Depth> days, distances;
    for (const Reading& r : log.counted()) {
      days.push_back({static_cast<double>(r.day), r.depth});
      if (r.kilometres) distances.push_back({*r.kilometres, r.depth});
    }
    log.by_day = wear::rate_of(days);
    if (!runs_back(log)) log.by_distance = wear::rate_of(distances);
    judge_depth(log);
    judge_age(log);
    if (!log.by_day) {
      caution("one_reading", Level::note, "",
              filled("#: two readings on two days are needed for a rate.", {log.label}));
      return;
    }
    say_odd(log, days);
    const bool shown = log.by_day->per_unit > millimetres(0.0);
    const bool certain = log.by_day->low > millimetres(0.0);
    if (!certain)
      caution(
          "no_wear_yet", Level::note, "",
          filled(shown ? "#: the wear so far is within the gauge's error, so dates are a guess. "
                         "Measure again in some months."
                       : "#: no wear can be seen in these readings. Check the gauge, and the "
                         "groove it stood in.",
                 {log.label}));
    rate_figure(log, "rate_by_time", *log.by_day, days_a_year, "a year", "mm/year");
    if (log.by_distance) {
      const bool miles = units_ != UnitSystem::metric;
      rate_figure(log, "rate_by_distance", *log.by_distance,
                  miles ? 10.0 * exact::metres_per_mile : 10000.0,
                  miles ? "in 10 000 miles" : "in 10 000 km", "mm/10 000 km");
    }
    if (!shown || law_ == nullptr) return;
    const bool any_winter = law_->winter && law_->winter->any_tyre;
    if (any_winter)
      until_figure(log, law_->winter->least_radial, *law_->winter_source, true);
    else
      until_figure(log, millimetres(3.0), tread_advice(), false);
    until_figure(log, law_->least, law_->source, true);
  }

  // Only the readings since the last rise count for the rate.
  void find_rise(Log& log) {
    const Log::Rise rise = log.last_rise(more_than_read);
    log.since = rise.at;
    if (log.since == 0) return;
    const Reading& first = log.readings[log.since];
    const bool seen_since = first.day != log.readings.back().day;
    caution("tread_rose", seen_since ? Level::note : Level::care,
            filled("# has more tread than before", {log.label}),
            filled("#: # in #, and # before that. Tread does not grow: another tyre stands there "
                   "now, or a reading is wrong. The rate counts from then on; earlier readings "
                   "left out: #. If the tyre is the same, measure again.",
                   {log.label, write_depth(log.least_of(first.day), units_), month_text(first.day),
                    write_depth(rise.before, units_), std::to_string(log.since)}));
  }

  // No distance is told from an odometer that runs back.
  bool runs_back(const Log& log) {
    std::optional<Reading> most;
    for (const Reading& r : log.counted()) {
      if (!r.kilometres) continue;
      if (most && r.day > most->day && *r.kilometres < *most->kilometres) {
        caution("odometer_back", Level::care,
                filled("# has an odometer that runs back", {log.label}),
                filled("#: the odometer stands at # on #, and stood at # on #. One of the two "
                       "readings is wrong, or of another day: no wear by distance is told.",
                       {log.label, distance_text(*r.kilometres), write_iso_date(date_of(r.day)),
                        distance_text(*most->kilometres), write_iso_date(date_of(most->day))}));
        return true;
      }
      if (!most || *r.kilometres > *most->kilometres) most = r;
    }
    return false;
  }

  std::string distance_text(double kilometres) const {
    return units_ == UnitSystem::metric
               ? filled("# km", {fixed(kilometres, 0)})
               : filled("# miles", {fixed(kilometres * 1000.0 / exact::metres_per_mile, 0)});
  }

  // The latest reading against the law and the 3 mm advice.
  void judge_depth(const Log& log) {
    if (law_ == nullptr) return;
    const Length latest = log.latest();
    const std::string now = write_depth(latest, units_);
    if (latest < law_->least)
      caution(
          "tread_law", Level::unfit, filled("# is under the legal minimum", {log.label}),
          filled("#: # at the latest reading, and the least the law allows (#) is #. Replace it.",
                 {log.label, now, law_->place, write_depth(law_->least, units_)}),
          {&law_->source});
    else if (latest <= law_->least + standard::tread_gauge_error)
      caution(
          "tread_at_law", Level::care, filled("# is at the legal minimum", {log.label}),
          filled(
              "#: #",
              {log.label,
               filled(
                   "Tread # is at the legal minimum of # (#), within what a gauge can be trusted "
                   "to. Replace it now.",
                   {now, write_depth(law_->least, units_), law_->place})}),
          {&law_->source});
    else if (latest <= millimetres(3.0))
      caution("tread_low", Level::care, filled("# is at or under 3 mm", {log.label}),
              filled("#: # at the latest reading. Wet grip falls away fast from here.",
                     {log.label, now}),
              {&tread_advice()});
    judge_winter(log);
  }

  // In the season what the law asks of any tyre, and what it asks of a winter tyre if it is one.
  void judge_winter(const Log& log) {
    if (!law_->winter) return;
    const standard::WinterRule& rule = *law_->winter;
    const bool now = standard::in_season(rule, {today_.month, today_.day});
    const Length latest = log.latest();
    if (latest < law_->least || latest > rule.least_radial + standard::tread_gauge_error) return;
    const bool under = latest < rule.least_radial;
    const Level level = !now ? Level::note : rule.any_tyre && under ? Level::unfit : Level::care;
    const std::string text =
        filled(rule.any_tyre ? "In winter any tyre (#) needs # #; this has #. Judged for #."
                             : "As a winter tyre (#) it needs # #, and has #. Judged for #.",
               {law_->place, write_depth(rule.least_radial, units_), rule.words,
                write_depth(latest, units_), write_iso_date(today_)});
    caution("winter_tread_law", level,
            filled(under ? "# is under the minimum for winter" : "# is at the minimum for winter",
                   {log.label}),
            filled("#: #", {log.label, text}), {&*law_->winter_source});
  }

  // A log is as old as its oldest reading of the same tyre, at least.
  void judge_age(const Log& log) {
    const long today = days_since_1970(today_);
    const long since = log.readings[log.last_rise(another_tyre).at].day;
    auto age = caution_of_age(static_cast<double>(today - since) / days_a_year);
    if (age) {
      age->reason = filled("# (#)", {age->reason, log.label});
      age->text = filled("#: #", {log.label, age->text});
      add_caution(answer_, *age);
    }
    if (today - log.readings.back().day > still_good_days)
      caution("old_reading", Level::care, filled("# was not measured lately", {log.label}),
              filled("#: the latest reading is of #, and says little of today. Measure again.",
                     {log.label, month_text(log.readings.back().day)}));
  }

  void say_odd(const Log& log, const std::vector<wear::Depth>& days) {
    if (days.size() < 4) return;  // of fewer, no one can say which is odd
    for (const wear::Depth& reading : days)
      if (wear::is_odd(*log.by_day, reading))
        caution(
            "odd_reading", Level::note, "",
            filled("#: the reading of # in # lies well off the others. The rate passes it over; "
                   "measure again.",
                   {log.label, write_depth(reading.depth, units_),
                    month_text(static_cast<long>(reading.at))}));
  }

  std::string wear_text(Length lost) const {
    return units_ == UnitSystem::us ? filled("#/32 in", {fixed(in_thirty_seconds(lost), 1)})
                                    : filled("# mm", {fixed(in_millimetres(lost), 1)});
  }

  void rate_figure(const Log& log, const char* id, const wear::Rate& rate, double units,
                   const char* per, const char* unit) {
    const auto at_least_none = [](Length l) { return std::max(l, millimetres(0.0)); };
    const Length central = at_least_none(rate.per_unit * units);
    const Length low = at_least_none(rate.low * units);
    const Length high = at_least_none(rate.high * units);
    figure(id, filled("#: wear #", {log.label, per}), in_millimetres(central), unit,
           filled("# (# to #)", {wear_text(central), wear_text(low), wear_text(high)}),
           {&wear::slope_source()},
           "The band is ours: the spread of the readings and the gauge's error.",
           in_millimetres(low), in_millimetres(high));
  }

  void until_figure(const Log& log, Length depth, const Source& source, bool legal) {
    const wear::Until by_day = wear::until(*log.by_day, depth);
    const double now = static_cast<double>(days_since_1970(today_));
    const auto named = [&](const std::optional<double>& at) -> std::string {
      if (!at || *at >= now + far_away) return "years away";
      const std::string month = month_text(static_cast<long>(*at));
      return *at < now ? filled("# (past)", {month}) : month;
    };
    if (log.by_day->depth_there <= depth) return;
    std::string text = filled("#, from # on", {named(by_day.central), named(by_day.earliest)});
    if (log.by_distance) {
      const wear::Until far = wear::until(*log.by_distance, depth);
      const bool miles = units_ != UnitSystem::metric;
      if (far.central && far.earliest) {
        const double unit = miles ? exact::metres_per_mile / 1000.0 : 1.0;
        text += filled(
            "; about # # more, # at least",
            {significant((*far.central - log.by_distance->zero) / unit, 2), miles ? "miles" : "km",
             significant((*far.earliest - log.by_distance->zero) / unit, 2)});
      }
    }
    const double months =
        by_day.central ? (*by_day.central - now) / days_a_month : far_away / days_a_month;
    figure("until", filled("#: down to #", {log.label, write_depth(depth, units_)}), months,
           "months", text, {&source, &wear::slope_source()});
    if (!legal || !by_day.earliest) return;
    const std::string least = write_depth(depth, units_);
    const std::string earliest = month_text(static_cast<long>(*by_day.earliest));
    if (by_day.central && *by_day.central < now)
      caution("law_passed", Level::care,
              filled("# is under the legal minimum by now, as fast as it wore", {log.label}),
              filled("#: as fast as it wore it came down to # in #, and that is past. Measure it "
                     "before you drive.",
                     {log.label, least, month_text(static_cast<long>(*by_day.central))}),
              {&source});
    else if (*by_day.earliest < now)
      caution("law_passed", Level::care,
              filled("# may be under the legal minimum by now", {log.label}),
              filled("#: it may have come down to # as early as #, and that is past. Measure it "
                     "before you drive.",
                     {log.label, least, earliest}),
              {&source});
    else if (*by_day.earliest < now + 3.0 * days_a_month)
      caution("law_soon", Level::care,
              filled("# may be at the legal minimum within three months", {log.label}),
              filled("#: may be down to # as soon as #. Measure it every two weeks.",
                     {log.label, least, earliest}),
              {&source});
  }

  const Log* find_log(std::string_view tyre) const {
    for (const Log& log : logs_)
      if (log.tyre == tyre) return &log;
    return nullptr;
  }

  // Across an axle and from front to back.
  void compare() {
    const auto pair = [&](std::string_view one, std::string_view other, const char* advice) {
      const Log* a = find_log(one);
      const Log* b = find_log(other);
      if (a == nullptr || b == nullptr) return;
      const Length gap = a->latest() - b->latest();
      if (std::fabs(in_millimetres(gap)) < in_millimetres(uneven_pair)) return;
      const Log& deeper = gap > millimetres(0.0) ? *a : *b;
      const Log& lower = gap > millimetres(0.0) ? *b : *a;
      caution(
          "uneven_tread", Level::note, "",
          filled(advice, {lower.label, wear_text(deeper.latest() - lower.latest()), deeper.label}),
          {&rotation});
    };
    constexpr const char* across =
        "# has # less tread than #: have pressures and wheel alignment looked at.";
    constexpr const char* along =
        "# has # less tread than #. Tyres may change places front to back if the maker and the "
        "direction arrow allow; the deeper tread belongs on the rear axle.";
    pair("front-left", "front-right", across);
    pair("rear-left", "rear-right", across);
    pair("front-left", "rear-left", along);
    pair("front-right", "rear-right", along);
  }

  void draw() {
    Chart chart;
    chart.id = "wear";
    chart.title = "Tread over time";
    chart.text = "Each tyre's readings, and the line they suggest.";
    const bool us = units_ == UnitSystem::us;
    chart.x = {"Months since the first reading", "months"};
    chart.y = {"Tread depth", us ? "1/32 in" : "mm"};
    long first = logs_.front().readings.front().day;
    for (const Log& log : logs_) first = std::min(first, log.readings.front().day);
    const auto months = [&](double day) {
      return (day - static_cast<double>(first)) / days_a_month;
    };
    const auto shown = [&](Length l) { return us ? in_thirty_seconds(l) : in_millimetres(l); };
    chart.table.columns = {"Tyre and day", "Read", "Line"};
    for (const Log& log : logs_) {
      Series series;
      series.role = "subject";
      series.label = std::string(log.label);
      for (std::size_t i = 0; i < log.readings.size(); ++i) {
        const Reading& r = log.readings[i];
        const auto day = static_cast<double>(r.day);
        series.x.push_back(months(day));
        series.y.push_back(shown(r.depth));
        chart.table.rows.push_back(
            {filled("#, #", {log.label, month_text(r.day)}), write_depth(r.depth, units_),
             log.by_day && i >= log.since ? wear_text(wear::depth_at(*log.by_day, day)) : ""});
      }
      chart.series.push_back(std::move(series));
    }
    Series least;
    least.role = "reference";
    least.label = filled("Legal minimum, #", {law_->place});
    least.x = {0.0, months(static_cast<double>(days_since_1970(today_)))};
    least.y = {shown(law_->least), shown(law_->least)};
    chart.series.push_back(std::move(least));
    answer_.charts.push_back(std::move(chart));
  }

  const standard::TreadLaw* law_ = nullptr;
  std::vector<Log> logs_;
};

}  // namespace

Answer wear_log(const Input& input) { return WearLog(input).run(); }

Sources wear_log_sources() {
  Sources all = {&wear::slope_source(), &tread_advice(), &rotation, &date_code_source(),
                 &age_advice_source()};
  for (const auto& law : standard::tread_laws()) {
    add_once(all, law.source);
    if (law.winter_source) add_once(all, *law.winter_source);
  }
  return all;
}

}  // namespace treadwater::answer
