// The rooms under the planner: weather, kinds of tyre, what forbids a set; and the plan's figures
// of every set. The planner itself is held against brute force in tests/property.
#include "core/stage/plan.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/stage_events.hpp"

using namespace treadwater;
using namespace treadwater::stage;
using namespace treadwater::testing;

namespace {

constexpr Chances dry{1.0};
constexpr Chances half_wet{0.5, 0.0, 0.5};
constexpr Rules no_rules{};

SetKind known(std::string_view id) {
  const auto kind = find_set_kind(id);
  REQUIRE(kind);
  return *kind;
}

std::string why_not(std::string_view id, const Stage& stage, const Rules& rules,
                    bool careful = false) {
  return refusal(known(id), stage, rules, careful).value_or("");
}

std::string first_code(const Event& event) {
  const auto problems = check(event);
  return problems.empty() ? "" : std::string(problems.front().code);
}

Event two_stages() {
  Event event;
  event.stages = {plain_stage(10.0, half_wet, Halt::service), plain_stage(10.0, half_wet)};
  event.sets = {{plain_kind("dry tyre", {0.0, 1.0, 4.0}, 25.0, 50.0)},
                {plain_kind("wet tyre", {2.0, 1.0, 0.0}, 20.0, 50.0)}};
  return event;
}

}  // namespace

TEST_CASE("every kind of tyre is sound, has its name and says where its figures are from") {
  for (std::size_t i = 0; i < set_kind_count; ++i) {
    const SetKind kind = set_kind(i);
    INFO(kind.id);
    CHECK(find_set_kind(kind.id) == kind);
    CHECK_FALSE(kind.name.empty());
    CHECK_FALSE(kind.why.empty());
    CHECK(kind.coolest < kind.hottest);
    CHECK(kind.pace_known != nullptr);
    CHECK(kind.life_known != nullptr);
    CHECK(kind.land_known != nullptr);
    CHECK(kind.window_known != nullptr);
    Event event = two_stages();
    event.sets = {{kind}};
    CHECK(check(event).empty());
  }
  CHECK_FALSE(find_set_kind("wooden"));
}

TEST_CASE("wear is read off the tread, and the least tread cuts a life short") {
  const SetKind wet = known("wet");  // 8 mm to 1.6 mm
  CHECK_THAT(worn(wet, millimetres(4.8)), WithinAbs(0.5, 1e-12));
  CHECK(worn(wet, millimetres(9.0)) == 0.0);
  CHECK(worn(wet, millimetres(1.0)) == 1.0);
  CHECK(worn(known("slick"), millimetres(0.0)) == 0.0);
  Rules rules;
  rules.least_tread = millimetres(3.2);
  CHECK_THAT(usable_life(wet, rules), WithinAbs(0.75, 1e-12));
  CHECK(usable_life(wet, no_rules) == 1.0);
  CHECK(usable_life(known("slick"), rules) < 0.0);
  SetKind worn_from_new = wet;
  worn_from_new.new_tread = worn_from_new.least_tread;
  CHECK(usable_life(worn_from_new, rules) == -1.0);
}

TEST_CASE("what the rules and the ground forbid is said") {
  const Stage tarmac = plain_stage(10.0, dry);
  Rules rules;
  rules.no_studs = true;
  CHECK_THAT(why_not("studded", tarmac, rules), ContainsSubstring("studs"));
  rules = {};
  rules.moulded_only = true;
  CHECK_THAT(why_not("slick", tarmac, rules), ContainsSubstring("moulded"));
  CHECK_THAT(why_not("cut-slick", tarmac, rules), ContainsSubstring("moulded"));
  CHECK(why_not("soft", tarmac, rules).empty());
  rules = {};
  rules.road_sections = true;
  CHECK_THAT(why_not("cut-slick", tarmac, rules), ContainsSubstring("road"));
  rules = {};
  rules.least_grooves = 0.25;
  CHECK_THAT(why_not("soft", tarmac, rules), ContainsSubstring("grooves"));
  CHECK(why_not("wet", tarmac, rules).empty());
  Stage rough = tarmac;
  rough.roughness = Roughness::rough;
  CHECK_THAT(why_not("soft", rough, no_rules), ContainsSubstring("rough"));
  Stage gravel = tarmac;
  gravel.gravel = 0.1;
  CHECK_THAT(why_not("slick", gravel, no_rules), ContainsSubstring("dry gravel"));
}

TEST_CASE("a pace that is not safe is refused to the careful only") {
  Stage stage = plain_stage(10.0, {0.9, 0.0, 0.0, 0.1});
  CHECK(why_not("soft", stage, no_rules).empty());
  CHECK_THAT(why_not("soft", stage, no_rules, true), ContainsSubstring("not safe"));
  CHECK_FALSE(safe_in(known("soft"), stage, Weather::standing_water));
  CHECK(safe_in(known("wet"), stage, Weather::standing_water));
  // Safe on tarmac, not on the part that is gravel.
  CHECK(safe_in(known("club"), stage, Weather::wet));
  stage.gravel = 0.2;
  CHECK_FALSE(safe_in(known("club"), stage, Weather::wet));
}

TEST_CASE("outside its temperature window a tyre goes at the slow end of its pace") {
  Stage stage = plain_stage(10.0, dry);  // 400 s
  const SetKind soft = known("soft");    // 0 to 2 % over, from 0 to 10 °C
  CHECK_THAT(seconds_lost(soft, stage, Weather::dry, false), WithinAbs(4.0, 1e-9));
  stage.air = celsius(5.0);
  CHECK_THAT(seconds_lost(soft, stage, Weather::dry, false), WithinAbs(4.0, 1e-9));
  for (const double air : {-1.0, 11.0}) {
    stage.air = celsius(air);
    CHECK_THAT(seconds_lost(soft, stage, Weather::dry, false), WithinAbs(8.0, 1e-9));
  }
}

TEST_CASE("what is no event is said, by its code") {
  CHECK(first_code(two_stages()).empty());
  Event full = two_stages();
  full.stages.resize(most_stages, full.stages.back());
  CHECK(first_code(full).empty());
  full.sets[0].worn = 1.005;
  CHECK(first_code(full) == "worn");
  const double nan = std::numeric_limits<double>::quiet_NaN();
  struct Case {
    const char* code;
    void (*spoil)(Event&, double);
  };
  const Case cases[] = {
      {"no-stages", [](Event& e, double) { e.stages.clear(); }},
      {"no-sets", [](Event& e, double) { e.sets.clear(); }},
      {"length", [](Event& e, double x) { e.stages[0].length = metres(x); }},
      {"average", [](Event& e, double x) { e.stages[0].average = kilometres_per_hour(x); }},
      {"surface", [](Event& e, double x) { e.stages[0].gravel = x; }},
      {"abrasion", [](Event& e, double x) { e.stages[0].abrasion = x; }},
      {"temperature", [](Event& e, double x) { e.stages[0].air = celsius(x); }},
      {"chances", [](Event& e, double x) { e.stages[0].chances[1] = x; }},
      {"count", [](Event& e, double) { e.sets[0].count = 0; }},
      {"worn", [](Event& e, double x) { e.sets[0].worn = x; }},
      {"kind", [](Event& e, double x) { e.sets[0].kind.pace[0][0].high = x; }},
      {"kind", [](Event& e, double x) { e.sets[0].kind.undriven_life = x; }},
      {"persistence", [](Event& e, double x) { e.persistence = x; }},
      {"least-tread", [](Event& e, double x) { e.rules.least_tread = metres(x); }},
      {"least-grooves", [](Event& e, double x) { e.rules.least_grooves = x; }},
      {"most-sets", [](Event& e, double) { e.rules.most_sets = 0; }},
      {"too-much", [](Event& e, double) { e.stages.resize(31, e.stages[0]); }},
      {"too-many-sets",
       [](Event& e, double) {
         e.stages.resize(10, e.stages[0]);
         e.sets.resize(13, e.sets[0]);
       }},
  };
  for (const Case& c : cases)
    for (const double x : {nan, -300.0}) {
      INFO(c.code << " at " << x);
      Event event = two_stages();
      c.spoil(event, x);
      CHECK(first_code(event) == c.code);
      CHECK_FALSE(plan(event, {}));
    }
}

TEST_CASE("another wet chance keeps the proportions of the rest") {
  const Chances now{0.3, 0.1, 0.4, 0.2};
  const Chances then = with_wet_chance(now, 0.3);
  CHECK_THAT(then[0], WithinAbs(0.525, 1e-12));
  CHECK_THAT(then[1], WithinAbs(0.175, 1e-12));
  CHECK_THAT(then[2], WithinAbs(0.2, 1e-12));
  CHECK_THAT(then[3], WithinAbs(0.1, 1e-12));
  CHECK(with_wet_chance(dry, 0.25) == Chances{0.75, 0.0, 0.25});
  CHECK(with_wet_chance({0.0, 0.0, 1.0}, 0.75) == Chances{0.25, 0.0, 0.75});
}

TEST_CASE("two sets of one kind with lives of their own are two kinds") {
  Event event = two_stages();
  event.stages = {plain_stage(30.0, dry)};
  SetKind lasting = plain_kind("tyre", {}, 40.0, 80.0);
  const SetKind frail = plain_kind("tyre", {}, 20.0, 40.0);
  event.sets = {{lasting}, {frail}};
  for (const bool frail_first : {false, true}) {
    if (frail_first) std::swap(event.sets[0], event.sets[1]);
    const auto answer = plan(event, {});
    REQUIRE(answer);
    CHECK(answer->sets[answer->first[0].set].entry == (frail_first ? 1U : 0U));
  }
  event.sets = {{frail}, {frail}};
  CHECK_FALSE(plan(event, {}));
}

TEST_CASE("the plan says of every set how likely it is on, and how far it is worn") {
  Event event = two_stages();
  event.persistence = 1.0;  // the second stage is as the first
  const auto answer = plan(event, {});
  REQUIRE(answer);
  REQUIRE(answer->sets.size() == 2);
  REQUIRE(answer->on.size() == 4);
  // The first stage: the dry tyre loses 20 s on average, the wet one 10 s. The second by what was
  // seen.
  CHECK(answer->on[0].on == 0.0);
  CHECK(answer->on[1].on == 1.0);
  CHECK_THAT(answer->on[2].on, WithinAbs(0.5, 1e-12));
  CHECK_THAT(answer->on[3].on, WithinAbs(0.5, 1e-12));
  CHECK_THAT(answer->used[0], WithinAbs(0.5, 1e-12));
  CHECK_THAT(answer->used[1], WithinAbs(1.0, 1e-12));
  // 10 km of 20 in the dry, of 50 in the wet, then another 10 of 50.
  CHECK_THAT(answer->on[1].worn, WithinAbs(0.5 * (10.0 / 20.0 + 10.0 / 50.0), 1e-4));
  CHECK_THAT(answer->on[1].most_worn, WithinAbs(10.0 / 20.0, 1e-4));
  CHECK_THAT(answer->on[3].worn, WithinAbs(answer->on[1].worn + 0.5 * 10.0 / 50.0, 1e-4));
  // Dry on the second stage, after a dry first one; never wet.
  CHECK_THAT(answer->on[2].worn, WithinAbs(0.5 * 10.0 / 25.0, 1e-4));
  CHECK(answer->on[2].unsafe == 0.0);
}

TEST_CASE("the chance of being on in weather that is not safe is the plan's own") {
  Event event;
  event.stages = {plain_stage(5.0, {0.9, 0.0, 0.0, 0.1})};
  event.sets = {{known("soft")}};
  const auto answer = plan(event, {});
  REQUIRE(answer);
  CHECK_THAT(answer->on[0].unsafe, WithinAbs(0.1, 1e-12));
  CHECK_FALSE(plan(event, {Attitude::safe}));
}

TEST_CASE("the first choices alone are those of the whole plan") {
  const Event event = two_stages();
  Question question;
  const auto whole = plan(event, question);
  question.only_first = true;
  const auto alone = plan(event, question);
  REQUIRE(whole);
  REQUIRE(alone);
  REQUIRE(alone->first.size() == whole->first.size());
  for (std::size_t i = 0; i < alone->first.size(); ++i) {
    CHECK(alone->first[i].set == whole->first[i].set);
    CHECK(alone->first[i].loss == whole->first[i].loss);
  }
  CHECK(alone->on.empty());
}

TEST_CASE("where no set will do, it says why and only names what is safe") {
  Event event = two_stages();
  event.stages = {plain_stage(5.0, {0.0, 0.0, 0.0, 0.0, 1.0})};
  event.sets = {{known("slick")}};
  const auto answer = plan(event, {});
  REQUIRE_FALSE(answer);
  const std::string text = answer.error()[0].text;
  CHECK_THAT(text, ContainsSubstring("tarmac under snow"));
  CHECK_THAT(text, ContainsSubstring("studded tyre") || ContainsSubstring("winter tyre"));
  CHECK_THAT(text, !ContainsSubstring("soft stage tyre"));
}
