#include "core/sheets/puncture/leak_chart.hpp"

#include "core/words/measure.hpp"

namespace treadwater::sheets::puncture {
namespace {

// The unit of the time axis.
struct TimeUnit {
  Duration one;
  Text symbol;
};

TimeUnit unit_for(Duration longest) {
  if (longest > days(4.0)) return {days(1.0), Phrase("days")};
  if (longest > minutes(180.0)) return {minutes(60.0), std::string("h")};
  return {minutes(1.0), std::string("min")};
}

}  // namespace

void draw_leak(const judge::LeakFound& leak, GaugePressure stop_below, AnswerBuilder& answer) {
  const auto curve = air::leak_curve(leak.leak, leak.now);
  if (!curve) return;
  const UnitSystem units = answer.units();
  const TimeUnit unit = unit_for(curve->back().time.latest);
  Chart chart;
  chart.id = "leak";
  chart.title = Phrase("The air that is left");
  chart.text = say("From # down, between the soonest and the latest.", {write(leak.now, units)});
  chart.x = {Phrase("Time from now"), unit.symbol};
  chart.y = {Phrase("Gauge pressure"), std::string(shown(leak.now, units).unit)};
  Series soonest{"reference", Phrase("Soonest"), {}, {}, {}, {}};
  Series latest{"subject", Phrase("Latest"), {}, {}, {}, {}};
  chart.table.columns = {Phrase("Pressure"), Phrase("Soonest"), Phrase("Latest")};
  int row = 0;
  for (const air::LeakPoint& point : *curve) {
    const double pressure = shown(point.pressure, units).value;
    soonest.x.push_back(point.time.soonest / unit.one);
    soonest.y.push_back(pressure);
    latest.x.push_back(point.time.latest / unit.one);
    latest.y.push_back(pressure);
    if (row++ % 4 == 0)
      chart.table.rows.push_back({write(point.pressure, units), say_duration(point.time.soonest),
                                  say_duration(point.time.latest)});
  }
  const double limit = shown(stop_below, units).value;
  Series stop{"reference", Phrase("Do not drive under"), {0.0, latest.x.back()}, {limit, limit}, {},
              {}};
  chart.marks = {{0.0, shown(leak.now, units).value, Phrase("Now")}};
  chart.series = {std::move(latest), std::move(soonest), std::move(stop)};
  answer.answer().charts.push_back(std::move(chart));
}

}  // namespace treadwater::sheets::puncture
