#include "core/sheets/sayings.hpp"

#include "core/quantity/text.hpp"
#include "core/standard/date.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets {
namespace {

struct LimitSaying {
  Phrase label;
  Phrase why;
};

constexpr LimitSaying limit_sayings[] = {
#define TREADWATER_LIMIT(name, id, label, why) {label, why},
#include "core/judge/limits.inc"
#undef TREADWATER_LIMIT
};

const LimitSaying& saying_of(const judge::Limit& limit) {
  return limit_sayings[static_cast<std::size_t>(limit.what)];
}

std::string filled(Phrase phrase, const std::vector<std::string>& texts) {
  if (phrase.empty()) return {};
  std::vector<TextView> gaps;
  for (const std::string& text : texts) gaps.emplace_back(text);
  return say(phrase, gaps.data(), gaps.size());
}

std::vector<std::string> written(const judge::Values& values, UnitSystem units) {
  std::vector<std::string> texts;
  for (const judge::Value& value : values) texts.push_back(write(value, units));
  return texts;
}

std::vector<std::string> written(const judge::Found& found, UnitSystem units) {
  std::vector<std::string> texts = written(found.values, units);
  if (!found.about.empty()) {
    texts.push_back(label(found.about.front(), units));
    texts.push_back(speeds(found.about.front(), units));
  }
  return texts;
}

// Without whose it is.
std::string own_reason(const judge::Found& found, UnitSystem units) {
  return filled(found.what.row().reason,
                found.of_reason.empty() ? written(found, units) : written(found.of_reason, units));
}

std::string own_sentence(const judge::Found& found, UnitSystem units) {
  const Phrase phrase = found.what.row().sentence;
  // A whole sentence is used as it is.
  if (phrase.empty()) return found.values.empty() ? "" : write(found.values.front(), units);
  std::string said = filled(phrase, written(found, units));
  if (!found.values.empty() && found.values.front().as() == judge::Value::As::kind)
    said = at_head(said);
  return found.remark ? sentences({said, say(found.remark->row().sentence)}) : said;
}

}  // namespace

std::string write(const judge::Value& value, UnitSystem units) {
  using As = judge::Value::As;
  const double stored = value.stored();
  switch (value.as()) {
    case As::speed:
      return write(Speed::stored(stored), units);
    case As::mass:
      return write(Mass::stored(stored), units);
    case As::mass_at_least:
      return write_at_least(Mass::stored(stored), units);
    case As::mass_at_most:
      return write_at_most(Mass::stored(stored), units);
    case As::pressure:
      return write(GaugePressure::stored(stored), units);
    case As::pressure_at_least:
      return write_at_least(GaugePressure::stored(stored), units);
    case As::pressure_at_most:
      return write_at_most(GaugePressure::stored(stored), units);
    case As::temperature:
      return write(Temperature::stored(stored), units);
    case As::depth:
      return write_depth(Length::stored(stored), units);
    case As::water:
      return write_water(Length::stored(stored), units);
    case As::size:
      return write_size(Length::stored(stored), units, value.decimals());
    case As::rim:
      return write_rim(Length::stored(stored));
    case As::distance:
      return write_distance(Length::stored(stored), units);
    case As::estimated_distance:
      return write_estimated_distance(Length::stored(stored), units);
    case As::longest_distance:
      return write_longest_distance(Length::stored(stored), units);
    case As::rain:
      return write_rain(RainIntensity::stored(stored));
    case As::duration:
      return say_duration(Duration::stored(stored));
    case As::seconds:
      return trimmed(in_seconds(Duration::stored(stored)), 2);
    case As::duration_at_most:
      return say_duration_at_most(Duration::stored(stored));
    case As::way_at_least:
      return say_road_distance_at_least(Length::stored(stored), units);
    case As::way_at_most:
      return say_road_distance_at_most(Length::stored(stored), units);
    case As::odometer:
      return say_odometer(Length::stored(stored), units);
    case As::worn:
      return write_worn(Length::stored(stored), units);
    case As::month:
      return say_month_of(static_cast<long>(stored));
    case As::readings:
      return plural("# earlier reading", "# earlier readings", stored, {fixed(stored, 0)});
    case As::seconds_lost:
      return write_seconds(Duration::stored(stored));
    case As::kelvins:
      return write_kelvins(stored, units);
    case As::chance:
      return say_chance(stored);
    case As::speed_rounded_down:
      return write(floor_to_five(Speed::stored(stored), units), units);
    case As::hold_to:
      return say_hold_to(Speed::stored(stored), units);
    case As::number:
      return fixed(stored, value.decimals());
    case As::quoted:
      return in_quotes(value.text());
    case As::text:
    case As::kind:
      break;
  }
  return value.text();
}

std::string say_month_of(long day) {
  const standard::Date date = standard::date_of(day);
  return say_month(date.month, date.year);
}

std::string reason(const judge::Found& found, UnitSystem units) {
  const std::string own = own_reason(found, units);
  return own.empty() || found.of.names.empty() ? own : say("# (#)", {own, found.of.within});
}

std::string sentence(const judge::Found& found, UnitSystem units) {
  if (found.of.names.empty()) return own_sentence(found, units);
  return found.of.alike ? say("#: #", {found.of.names, own_sentence(found, units)})
                        : say("#: #.", {found.of.names, own_reason(found, units)});
}

std::string label(const judge::Limit& limit, UnitSystem units) {
  const Phrase named = saying_of(limit).label;
  const std::string own = named.empty() && limit.found ? reason(*limit.found, units)
                                                       : filled(named, written(limit.label, units));
  return limit.of.empty() ? own : say("#: #", {limit.of, own});
}

std::string say_water(const judge::RoadWater& water, UnitSystem units) {
  if (!water.is_known()) return {};
  const standard::WetnessWord* word = water.word ? &standard::wetness_word(*water.word) : nullptr;
  if (water.depth && !(water.depth->deep() < (word ? word->deep : Length())) &&
      !water.depth->none())
    return say("water #", {write_water(water.depth->deep(), units)});
  return say(word != nullptr && word->wetness != standard::Wetness::dry
                 ? word->name
                 : standard::wetness_word(water.is_wet() ? standard::Wetness::damp
                                                         : standard::Wetness::dry)
                       .name);
}

std::string say_stop_aloud(Speed from, Length longest, UnitSystem units) {
  return say("From # allow # to stop.",
             {say_speed_aloud(from, units), write_longest_distance(longest, units)});
}

std::string say_puddles_aloud(const judge::Limit& puddles, UnitSystem units) {
  return say("In puddles not above #.",
             {say_speed_aloud(floor_to_five(puddles.kept(), units), units)});
}

std::string say_onset(const water::SpeedBand& onset, UnitSystem units) {
  if (!water::told(onset.low)) return say("not below #", {write(water::fastest_on_roads, units)});
  if (!water::told(onset.central))
    return say("from #, in most cases not below #",
               {write(onset.low, units), write(water::fastest_on_roads, units)});
  if (!water::told(onset.high))
    return say("about # (# or more)", {write(onset.central, units), write(onset.low, units)});
  return say("about #", {say_band(onset.central, onset.low, onset.high, units)});
}

std::string speeds(const judge::Limit& limit, UnitSystem units) {
  using Shown = judge::Limit::Shown;
  if (limit.shown == Shown::onset) return say_onset({limit.low, limit.central, limit.high}, units);
  if (limit.shown == Shown::beyond) return say("over #", {write(limit.central, units)});
  if (!(limit.high > Speed())) return say("not at any speed");
  return limit.shown == Shown::band ? say_band(limit.central, limit.low, limit.high, units)
                                    : write(limit.central, units);
}

std::string why(const judge::Limit& limit, UnitSystem units) {
  if (limit.found) return sentence(*limit.found, units);
  const Phrase phrase = saying_of(limit).why;
  if (phrase.empty()) return limit.why.empty() ? "" : write(limit.why.front(), units);
  return filled(phrase, written(limit.why, units));
}

Caution in_words(const judge::Found& found, UnitSystem units) {
  return {std::string(judge::id_of(found.what)), found.level(), sentence(found, units),
          found.sources};
}

Limit in_words(const judge::Limit& limit, UnitSystem units) {
  const auto number = [&](Speed speed) {
    return limit.shown == judge::Limit::Shown::onset ? drawn(speed) : speed;
  };
  return {std::string(judge::id_of(limit)),
          label(limit, units),
          number(limit.central),
          number(limit.low),
          number(limit.high),
          limit.share_kept,
          speeds(limit, units),
          why(limit, units),
          limit.sources};
}

HoldTo in_words(const judge::HoldTo& hold, UnitSystem units) {
  const std::string_view id = judge::id_of(hold.governing);
  HoldTo told{hold.speed, write(hold.speed, units), std::string(id), why(hold.governing, units)};
  if (hold.stands_still())
    told.text = hold.in_water() ? Phrase("Do not drive into it") : Phrase("Do not drive on it yet");
  else if (id == judge::id_of(judge::LimitName::speed_symbol))
    told.why = sentences(
        {told.why, say("Nothing else that was judged bites first; the road's own limit comes "
                       "before it.")});
  return told;
}

NoLimit in_words(const judge::NoLimit& none, UnitSystem units) {
  NoLimit told{Phrase("Nothing here limits it below the road's own limit."), {}, {}};
  if (none.own) {
    told.own = none.own->speed;
    told.own_text =
        say("Its own limit is # (#).",
            {write(none.own->speed, units), within_sentence(label(none.own->governing, units))});
  }
  return told;
}

}  // namespace treadwater::sheets
