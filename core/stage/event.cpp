#include "core/stage/event.hpp"

#include <algorithm>
#include <limits>

#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/words/say.hpp"

namespace treadwater::stage {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

// NaN is not within.
constexpr bool within(double x, double low, double high) { return x >= low && x <= high; }

struct Shares {
  double of[surfaces];
};
Shares shares(const Stage& stage) { return {{1.0 - stage.gravel, stage.gravel}}; }

bool in_window(const SetKind& kind, const Stage& stage) {
  return !stage.air || (*stage.air >= kind.coolest && *stage.air <= kind.hottest);
}

constexpr Phrase ground_words[weathers] = {Phrase("dry #"),        Phrase("damp #"),
                                           Phrase("wet #"),        Phrase("# under standing water"),
                                           Phrase("# under snow"), Phrase("# under ice")};

Phrase surface_name(std::size_t s) { return s == 0 ? Phrase("tarmac") : Phrase("gravel"); }

bool good_kind(const SetKind& kind) {
  bool good = kind.undriven_life >= 1.0 && within(kind.land_low, 0.0, kind.land_high) &&
              kind.land_high <= 1.0 && kind.least_tread >= Length{} &&
              (kind.new_tread > kind.least_tread || kind.new_tread == Length{});
  for (const auto& surface : kind.pace)
    for (const Pace& p : surface)
      good = good && (p.low == 0.0 || within(p.low, 1.0, 10.0)) && within(p.high, p.low, 10.0);
  for (const auto& surface : kind.life)
    for (const Length life : surface) good = good && within(in_metres(life), 0.0, 1e7);
  return good;
}

}  // namespace

std::vector<Problem> check(const Event& event) {
  std::vector<Problem> problems;
  const auto found = [&](std::string_view code, std::size_t stage, std::size_t set,
                         std::string text) {
    problems.push_back({code, static_cast<int>(stage), static_cast<int>(set), std::move(text)});
  };
  constexpr auto none = static_cast<std::size_t>(-1);

  if (event.stages.empty()) found("no-stages", none, none, say("Put in at least one stage."));
  std::size_t legs = 1;
  for (std::size_t i = 0; i < event.stages.size(); ++i) {
    const Stage& stage = event.stages[i];
    const std::string number = std::to_string(i + 1);
    const auto wrong = [&](std::string_view code, Phrase sentence, std::string_view gap = {}) {
      found(code, i, none, say(sentence, {number, gap}));
    };
    legs += stage.halt_after >= Halt::tyre_zone && i + 1 < event.stages.size() ? 1U : 0U;
    if (!within(in_metres(stage.length), 100.0, 200e3))
      wrong("length", Phrase("Stage #: its length must be 0.1 to 200 km."));
    if (!within(in_kilometres_per_hour(stage.average), 10.0, 250.0))
      wrong("average", Phrase("Stage #: its average speed must be 10 to 250 km/h."));
    if (!within(stage.gravel, 0.0, 1.0))
      wrong("surface", Phrase("Stage #: the share of gravel must be 0 to 100 %."));
    if (!within(stage.abrasion, 0.1, 10.0))
      wrong("abrasion", Phrase("Stage #: its abrasion must be 0.1 to 10, where 1 is normal."));
    if (stage.air && !within(in_celsius(*stage.air), -60.0, 60.0))
      wrong("temperature", Phrase("Stage #: the air must be -60 to 60 °C."));
    double sum = 0.0;
    bool each = true;
    for (const double chance : stage.chances) {
      each = each && within(chance, 0.0, 1.0);
      sum += chance;
    }
    if (!each)
      wrong("chances", Phrase("Stage #: every chance must be 0 to 100 %."));
    else if (!within(sum, 0.995, 1.005))
      wrong("chances", Phrase("Stage #: its chances sum to # %. They must sum to 100 %."),
            trimmed(100.0 * sum, 1));
  }
  if (event.stages.size() > most_stages || legs > most_legs)
    found("too-much", none, none,
          say("Put in at most # stages with # halts where tyres are changed. Leave out those that "
              "are done.",
              {std::to_string(most_stages), std::to_string(most_legs - 1)}));

  if (event.sets.empty()) found("no-sets", none, none, say("Put in at least one set of tyres."));
  std::size_t sets = 0;
  for (std::size_t i = 0; i < event.sets.size(); ++i) {
    const TyreSet& set = event.sets[i];
    if (!good_kind(set.kind))
      found("kind", none, i,
            say("“#”: pace must be 1 to 10 times the right tyre's, life and tread 0 or more, the "
                "undriven axle's life no less than the driven one's.",
                {set.kind.label}));
    if (!(set.count >= 1 && set.count <= 100))
      found("count", none, i, say("“#”: put in 1 to 100 sets of it.", {set.kind.label}));
    if (!within(set.worn, 0.0, 1.0))
      found("worn", none, i,
            say("“#”: the share of its life that is used must be 0 to 100 %.", {set.kind.label}));
    sets += static_cast<std::size_t>(std::clamp<int>(set.count, 0, static_cast<int>(legs)));
  }
  if (sets > most_sets)
    found("too-many-sets", none, none,
          say("Put in at most # sets. Leave out those you would hardly fit.",
              {std::to_string(most_sets)}));

  if (!within(event.persistence, 0.0, 1.0))
    found("persistence", none, none,
          say("How far the weather leans on the last stage must be 0 to 1."));
  const Rules& rules = event.rules;
  if (rules.most_sets && !(*rules.most_sets >= 1))
    found("most-sets", none, none, say("The rules must allow at least one set."));
  if (!within(in_millimetres(rules.least_tread), 0.0, 20.0))
    found("least-tread", none, none, say("The least tread must be 0 to 20 mm."));
  if (!within(rules.least_grooves, 0.0, 1.0))
    found("least-grooves", none, none, say("The least share of grooves must be 0 to 100 %."));
  return problems;
}

std::optional<std::string> refusal(const SetKind& kind, const Stage& stage, const Rules& rules,
                                   bool careful) {
  if (rules.no_studs && kind.studded) return say("studs are not allowed");
  if (rules.moulded_only && !kind.moulded) return say("only moulded treads are allowed");
  if (rules.road_sections && !kind.road_legal) return say("not legal on the road sections");
  // A kind is refused if none of its tyres has enough grooves; the tyre itself must be measured.
  if (1.0 - kind.land_low < rules.least_grooves - 1e-9) return say("too few grooves for the rules");
  if (!(usable_life(kind, rules) > 0.0)) return say("less tread than the rules ask for, even new");
  if (stage.roughness > kind.roughest) return say("the stage is too rough for it");
  const Shares share = shares(stage);
  for (std::size_t w = 0; w < weathers; ++w)
    for (std::size_t s = 0; s < surfaces; ++s) {
      if (!(stage.chances[w] > 0.0) || !(share.of[s] > 0.0)) continue;
      const Pace& pace = kind.pace[s][w];
      const bool never = !(pace.low > 0.0) || !(kind.life[s][wetness(Weather(w))] > Length{});
      if (never || (careful && !pace.safe))
        return say(never ? Phrase("it is not for # (a chance of # %)")
                         : Phrase("it is not safe on # (a chance of # %)"),
                   {say(ground_words[w], {surface_name(s)}), trimmed(100.0 * stage.chances[w], 1)});
    }
  return std::nullopt;
}

double usable_life(const SetKind& kind, const Rules& rules) {
  if (!(rules.least_tread > kind.least_tread)) return 1.0;
  const double depth = in_metres(kind.new_tread - kind.least_tread);
  return depth > 0.0 ? in_metres(kind.new_tread - rules.least_tread) / depth : -1.0;
}

bool safe_in(const SetKind& kind, const Stage& stage, Weather weather) {
  const Shares share = shares(stage);
  bool safe = true;
  for (std::size_t s = 0; s < surfaces; ++s)
    safe = safe && (!(share.of[s] > 0.0) || kind.pace[s][index(weather)].safe);
  return safe;
}

double right_tyre_seconds(const Stage& stage) {
  return in_metres(stage.length) * exact::seconds_per_hour /
         (1000.0 * in_kilometres_per_hour(stage.average));
}

double seconds_lost(const SetKind& kind, const Stage& stage, Weather weather, bool careful) {
  const bool slow = careful || !in_window(kind, stage);
  const Shares share = shares(stage);
  double factor = 0.0;
  for (std::size_t s = 0; s < surfaces; ++s) {
    if (!(share.of[s] > 0.0)) continue;
    const Pace& pace = kind.pace[s][index(weather)];
    if (!(pace.low > 0.0) || (careful && !pace.safe)) return infinity;
    factor += share.of[s] * ((slow ? pace.high : 0.5 * (pace.low + pace.high)) - 1.0);
  }
  return factor * right_tyre_seconds(stage);
}

double wear(const SetKind& kind, const Stage& stage, Weather weather) {
  const Shares share = shares(stage);
  double used = 0.0;
  for (std::size_t s = 0; s < surfaces; ++s) {
    if (!(share.of[s] > 0.0)) continue;
    const Length life = kind.life[s][wetness(weather)];
    if (!(life > Length{})) return infinity;
    used += share.of[s] * (stage.length / life);
  }
  return used * stage.abrasion;
}

double worst_wear(const SetKind& kind, const Stage& stage) {
  double worst = 0.0;
  for (std::size_t w = 0; w < weathers; ++w)
    if (stage.chances[w] > 0.0) worst = std::max(worst, wear(kind, stage, Weather(w)));
  return worst;
}

}  // namespace treadwater::stage
