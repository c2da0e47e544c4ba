// Prints small events, one a line of JSON: the plain numbers that a planner needs, and what ours
// makes of them. tests/solver/solver.test.mjs gives the same numbers to another solver.
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <nlohmann/json.hpp>

#include "core/quantity/splitmix.hpp"
#include "core/stage/plan.hpp"
#include "tests/support/stage_events.hpp"

using namespace treadwater;
using namespace treadwater::stage;
using Json = nlohmann::json;

namespace {

class Draw {
 public:
  explicit Draw(std::uint64_t start) : stream_(start) {}
  int whole(int from, int to) {
    return from + static_cast<int>(stream_.next() % static_cast<std::uint64_t>(to - from + 1));
  }

 private:
  SplitMix64 stream_;
};

constexpr std::size_t weathers_there = 3;

Event event_of(Draw& draw) {
  static constexpr const char* names[] = {"one", "two", "three"};
  Event event;
  const int kinds = draw.whole(2, 3);
  for (int k = 0; k < kinds; ++k) {
    Chances seconds{};
    for (std::size_t w = 0; w < weathers_there; ++w) seconds[w] = draw.whole(0, 3);
    event.sets.push_back(
        {testing::plain_kind(names[k], seconds, draw.whole(12, 60), draw.whole(40, 90)), 1,
         draw.whole(0, 4) / 10.0});
  }
  const int stages = draw.whole(1, 4);
  for (int i = 0; i < stages; ++i) {
    Chances chances{};
    int left = 100;
    for (std::size_t w = 0; w + 1 < weathers_there; ++w) {
      const int share = draw.whole(0, 3) == 0 ? 0 : draw.whole(0, left);
      chances[w] = share / 100.0;
      left -= share;
    }
    chances[weathers_there - 1] = left / 100.0;
    event.stages.push_back(testing::plain_stage(draw.whole(4, 16), chances,
                                                draw.whole(0, 2) > 0 ? Halt::service : Halt::none));
  }
  event.persistence = draw.whole(0, 10) / 10.0;
  if (draw.whole(0, 3) == 0) event.rules.most_sets = draw.whole(1, 2);
  event.rules.least_tread = millimetres(1.6);
  return event;
}

Json rows(const Chances& chances) { return {chances[0], chances[1], chances[2]}; }

Json numbers(const Event& event) {
  Json json;
  json["most_sets"] = event.rules.most_sets ? Json(*event.rules.most_sets) : Json();
  for (const TyreSet& set : event.sets)
    json["sets"].push_back({{"worn", set.worn}, {"life", usable_life(set.kind, event.rules)}});
  for (std::size_t i = 0; i < event.stages.size(); ++i) {
    const stage::Stage& s = event.stages[i];
    Json one = {{"chances", rows(s.chances)}, {"halt_after", s.halt_after >= Halt::tyre_zone}};
    if (i > 0)
      for (std::size_t w = 0; w < weathers_there; ++w)
        one["follows"].push_back(
            rows(weather_follows(event.stages[i - 1].chances, s.chances, event.persistence)[w]));
    for (const TyreSet& set : event.sets) {
      Json lost = Json::array(), wears = Json::array();
      for (std::size_t w = 0; w < weathers_there; ++w) {
        lost.push_back(seconds_lost(set.kind, s, Weather(w), false));
        wears.push_back(wear(set.kind, s, Weather(w)));
      }
      one["by_set"].push_back({{"refused", refusal(set.kind, s, event.rules, false).has_value()},
                               {"lost", std::move(lost)},
                               {"wear", std::move(wears)}});
    }
    json["stages"].push_back(std::move(one));
  }
  return json;
}

Json solved(const Event& event, Attitude attitude) {
  const auto made = plan(event, {attitude, 0.8, false});
  return made ? Json(made->first[0].loss) : Json();
}

}  // namespace

// plan_numbers COUNT
int main(int argc, char** argv) {
  Draw draw(20261125);
  for (int n = argc > 1 ? std::atoi(argv[1]) : 10; n > 0; --n) {
    const Event event = event_of(draw);
    Json json = numbers(event);
    json["average"] = solved(event, Attitude::average);
    json["steady"] = solved(event, Attitude::steady);
    std::cout << json.dump() << '\n';
  }
}
