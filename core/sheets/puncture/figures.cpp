#include "core/sheets/puncture/figures.hpp"

#include "core/air/warning.hpp"
#include "core/quantity/text.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::puncture {
namespace {

constexpr GaugePressure all_but_flat = kilopascals(10.0);

std::string percent(double chance) {
  return chance < 0.0005 ? say("under 0.1 %") : say("# %", {significant(100.0 * chance, 2)});
}

}  // namespace

void tell_times(const judge::LeakFound& leak, const judge::SoftTyre& tyre, AnswerBuilder& answer) {
  const auto tell = [&](const char* id, Phrase label, GaugePressure to, Sources sources) {
    const auto time = air::time_between(leak.leak, leak.now, to);
    if (!time) return;
    const bool there = !(time->latest > seconds(0.0));
    const std::string text =
        there ? say("now")
              : say("# to #", {say_duration(time->soonest), say_duration(time->latest)});
    answer.figure(id, say(label, {write(to, answer.units())}), in_seconds(time->soonest), "s", text,
                  std::move(sources), {},
                  AnswerBuilder::Band{in_seconds(time->soonest), in_seconds(time->latest)});
  };
  if (const air::WarningRule* rule = air::find_warning_rule("un"))
    tell("time_to_warning", Phrase("Until a warning lamp is due, #"),
         air::warning_pressure(*rule, tyre.set), leak.sources);
  Sources sources = leak.sources;
  sources.push_back(&air::do_not_drive_source());
  tell("time_to_stop", Phrase("Until it must not be driven, #"), tyre.stop_below(), sources);
  tell("time_to_flat", Phrase("Until it is all but flat, #"), all_but_flat, sources);
}

void tell_way_home(const judge::WayHome& home, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  if (const auto distance = home.by.distance)
    answer.figure("get_home_distance", Phrase("How far on it at most"), in_kilometres(*distance),
                  "km", say_road_distance_at_most(*distance, units), home.sources, home.by.words);
  if (const auto pressure = home.by.pressure)
    answer.figure("get_home_pressure", Phrase("At a pressure of"), in_kilopascals(*pressure), "kPa",
                  write(*pressure, units), home.sources);
  if (const auto claimed = home.by.claimed)
    answer.figure("claimed_distance", Phrase("The furthest anybody claims"),
                  in_kilometres(*claimed), "km", say_road_distance(*claimed, units), home.sources,
                  Phrase("Not to be relied on."));
}

void tell_stage_stop(const judge::StageStop& stop, AnswerBuilder& answer) {
  const auto tell = [&](const char* id, Phrase label, const air::TimeLost& lost,
                        const Source& source, Phrase note) {
    const double least = in_seconds(lost.least);
    const double most = in_seconds(lost.most);
    answer.figure(id, label, (least + most) / 2.0, "s",
                  say("# to # s", {trimmed(least, 0), trimmed(most, 0)}), {&source}, note,
                  AnswerBuilder::Band{least, most});
  };
  if (stop.change)
    tell("change_lost", Phrase("Lost by changing the wheel"), *stop.change,
         air::wheel_change_source(), {});
  if (stop.drive_out)
    tell("drive_out_lost", Phrase("Lost by driving out"), *stop.drive_out, air::drive_out_source(),
         Phrase("On tarmac the two are even at 10 to 12 km; a works team changes no wheel with "
                "less than 7 or 8 km left."));
  answer.figure("triangle", Phrase("Triangle before the car, at least"), in_metres(stop.triangle),
                "m", write_distance(stop.triangle, answer.units()),
                {&air::stage_triangle_source()});
  if (stop.spares_left)
    answer.figure("spares_left", Phrase("Spares left after a change"), *stop.spares_left, "",
                  std::to_string(*stop.spares_left), {});
}

void tell_odds(const Odds& odds, Length way, AnswerBuilder& answer) {
  const double expected = air::expected_punctures(odds.rate, way);
  const double any = air::chance_of_more_than(0, expected);
  answer.figure("chance_of_one", Phrase("Chance of another on that way"), any, "", percent(any),
                {&air::puncture_rate_source()},
                Phrase("Good roads. Stages are worse by a factor nobody has published."));
  if (!odds.spares) return;
  const double stranded = air::chance_of_more_than(*odds.spares, expected);
  answer.figure("chance_stranded",
                say("Chance of more than # on that way", {std::to_string(*odds.spares)}), stranded,
                "", percent(stranded), {&air::puncture_rate_source()});
}

}  // namespace treadwater::sheets::puncture
