#include "core/answer/stage_tyres.hpp"

#include <algorithm>
#include <cmath>
#include <deque>

#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/patch/geometry.hpp"
#include "core/stage/plan.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::answer {
namespace {

// Where nothing else is known of the tyres that go into standing water.
constexpr GaugePressure soft_pressure = kilopascals(180.0);

constexpr Source plan_words{"stage-plan", "Dynamic programming with recourse at each halt",
                            "Treadwater's own model; CVaR after Rockafellar and Uryasev, 2002",
                            "2026", Standing::common_practice};
constexpr Source own_notes{"stage-own-notes", "The crew's own notes",
                           "given here; they count before ours", "", Standing::common_practice};
constexpr Source wear_law{"wear-by-load", "J. F. Archard, Contact and Rubbing of Flat Surfaces",
                          "volume worn off by load and way; J. Appl. Phys. 24, 981", "1953",
                          Standing::memory};
constexpr Source officials{"stage-officials", "Whether a stage runs, and at what speed",
                           "the event's officials and rules decide", "", Standing::common_practice};

class StageTyres : Teller {
 public:
  explicit StageTyres(const Input& input) : Teller(stage_tyres_sheet(), input) {}

  Answer run() {
    read_stages();
    read_sets();
    read_rules();
    read_cars();
    if (answer_.ok()) solve();
    return std::move(answer_);
  }

 private:
  static std::string in_row(std::string_view list, std::size_t row, std::string_view field) {
    return row_path(list, row, field);
  }

  void read_stages() {
    const std::size_t count = rows("stages");
    constexpr std::array<const char*, stage::weathers> fields = {"dry",      "damp", "wet",
                                                                 "standing", "snow", "ice"};
    for (std::size_t row = 0; row < count; ++row) {
      const auto at = [&](std::string_view field) { return in_row("stages", row, field); };
      stage::Stage s;
      if (const auto length = quantity<Length>(at("length"))) s.length = *length;
      if (const auto average = quantity<Speed>(at("average"))) s.average = *average;
      s.gravel = number(at("gravel")).value_or(0.0) / 100.0;
      s.abrasion = number(at("abrasion")).value_or(1.0);
      s.air = quantity<Temperature>(at("air"));
      bool any = false;
      for (std::size_t w = 0; w < stage::weathers; ++w) {
        const auto chance = number(at(fields[w]));
        any = any || chance;
        s.chances[w] = chance.value_or(0.0) / 100.0;
      }
      if (!any) s.chances[0] = 1.0;
      const auto roughness = choice(at("roughness"));
      s.roughness = roughness == "rough"    ? stage::Roughness::rough
                    : roughness == "broken" ? stage::Roughness::broken
                                            : stage::Roughness::smooth;
      const auto halt = choice(at("halt"));
      s.halt_after = halt == "service"     ? stage::Halt::service
                     : halt == "tyre_zone" ? stage::Halt::tyre_zone
                     : halt == "regroup"   ? stage::Halt::regroup
                                           : stage::Halt::none;
      water_.push_back(quantity<Length>(at("water")));
      std::string name = plain_spaces(text(at("name")));
      if (name.empty()) name = filled("Stage #", {std::to_string(row + 1)});
      names_.push_back(std::move(name));
      event_.stages.push_back(s);
    }
  }

  void read_sets() {
    const std::size_t count = rows("sets");
    for (std::size_t row = 0; row < count; ++row) {
      const auto at = [&](std::string_view field) { return in_row("sets", row, field); };
      const auto id = choice(at("kind"));
      const auto how_many = number(at("count"));
      const auto tread = quantity<Length>(at("tread"));
      const auto life = quantity<Length>(at("life"));
      const auto kind = id ? stage::find_tyre_kind(*id) : std::optional<stage::TyreKind>();
      if (!kind) continue;
      stage::TyreSet set;
      set.kind = *kind;
      set.count = static_cast<int>(how_many.value_or(1.0));
      if (tread) set.worn = stage::worn(*kind, *tread);
      const bool own_life = life.has_value();
      if (own_life) scale_life(set.kind, *life);
      const bool own_pace = read_own_pace(set.kind, row);
      const auto coolest = quantity<Temperature>(at("coolest"));
      const auto hottest = quantity<Temperature>(at("hottest"));
      if (coolest) set.kind.coolest = *coolest;
      if (hottest) set.kind.hottest = *hottest;
      if (own_life) set.kind.life_known = &own_notes;
      if (own_pace) set.kind.pace_known = &own_notes;
      if (coolest || hottest) set.kind.window_known = &own_notes;
      kinds_.push_back(set.kind.id);
      // Tyres with figures of their own are another kind than the same without.
      if (own_life || own_pace || coolest || hottest)
        set.kind.id = own_ids_.emplace_back(filled("# #", {set.kind.id, std::to_string(row)}));
      event_.sets.push_back(std::move(set));
    }
  }

  // A crew's own pace in a weather, on whatever ground the kind may be used. What is not safe stays
  // so.
  bool read_own_pace(stage::TyreKind& kind, std::size_t row) {
    constexpr std::array<const char*, 4> fields = {"slower_dry", "slower_damp", "slower_wet",
                                                   "slower_standing"};
    bool any = false;
    for (std::size_t w = 0; w < fields.size(); ++w) {
      const auto slower = number(in_row("sets", row, fields[w]));
      if (!slower) continue;
      any = true;
      for (auto& ground : kind.pace) {
        stage::Pace& pace = ground[w];
        if (pace.low > 0.0) pace.low = pace.high = 1.0 + *slower / 100.0;
      }
    }
    return any;
  }

  // A crew's own life in the dry moves the others with it.
  static void scale_life(stage::TyreKind& kind, Length dry) {
    for (auto& by_wetness : kind.life) {
      const Length ours = by_wetness[0];
      if (!(ours > metres(0.0))) continue;
      for (Length& life : by_wetness) life = life * (dry / ours);
    }
  }

  void read_rules() {
    const auto attitude = choice("attitude");
    question_.attitude = attitude == "steady" ? stage::Attitude::steady
                         : attitude == "safe" ? stage::Attitude::safe
                                              : stage::Attitude::average;
    const auto drive = choice("drive");
    event_.drive = drive == "front" ? stage::Drive::front
                   : drive == "all" ? stage::Drive::all
                                    : stage::Drive::rear;
    event_.persistence = number("persistence").value_or(50.0) / 100.0;
    if (const auto most = number("most_sets")) event_.rules.most_sets = static_cast<int>(*most);
    event_.rules.least_tread = quantity<Length>("least_tread").value_or(millimetres(1.6));
    // A slick has no tread to measure: the rule is for what has one.
    const bool slicks = std::any_of(event_.sets.begin(), event_.sets.end(), [](const auto& set) {
      return !(set.kind.new_tread > metres(0.0));
    });
    if (slicks && !given("least_tread")) event_.rules.least_tread = metres(0.0);
    event_.rules.least_grooves = number("grooves").value_or(0.0) / 100.0;
    event_.rules.moulded_only = yes_no("moulded_only").value_or(false);
    event_.rules.no_studs = yes_no("no_studs").value_or(false);
    event_.rules.road_sections = yes_no("road_sections").value_or(false);
  }

  void solve() {
    question_.progress = input_.progress;
    const auto plan = stage::plan(event_, question_);
    if (!plan) {
      for (const stage::Problem& p : plan.error()) say_problem(p);
      return;
    }
    tell(*plan);
    tell_halts(*plan);
    tell_carry(*plan);
    tell_wear(*plan);
    judge_temperature(*plan);
    judge_water(*plan);
    compare_cars(*plan);
    tell_swing(*plan);
    caution("officials", Level::note, "",
            "Whether a stage runs, and what may be fitted, is for the event's officials and rules.",
            {&officials});
    const std::string first = set_name(*plan, plan->first.front().set);
    conclude(filled("Fit # now.", {first}), ("Fit " + first + " now, with care: #.").c_str(),
             ("Fit " + first + " now, but: #.").c_str());
    speak(filled("Fit # for #.", {first, names_.front()}));
  }

  // A finding about a stage or a set stands beside its row; one that no row can mend is a
  // verdict's.
  void say_problem(const stage::Problem& p) {
    std::string path = "stages";
    if (p.stage >= 0)
      path = in_row("stages", static_cast<std::size_t>(p.stage),
                    p.code == "chances" ? "dry" : "length");
    else if (p.set >= 0)
      path = in_row("sets", static_cast<std::size_t>(p.set), "kind");
    else if (p.code == "no-sets")
      path = "sets";
    problem(path, p.code, p.text);
  }

  std::string set_name(const stage::Plan& plan, std::size_t set) const {
    const stage::CarriedSet& carried = plan.sets[set];
    const stage::TyreSet& entry = event_.sets[carried.entry];
    return entry.count > 1
               ? filled("# (set #)", {lower(entry.kind.label), std::to_string(carried.number)})
               : lower(entry.kind.label);
  }

  static std::string lower(std::string_view label) {
    std::string name(label);
    if (!name.empty() && name[0] >= 'A' && name[0] <= 'Z')
      name[0] = static_cast<char>(name[0] - 'A' + 'a');
    return name;
  }

  static std::string seconds_text(double seconds) {
    return filled("# s", {fixed(seconds, seconds < 10.0 ? 1 : 0)});
  }

  void seconds_figure(const char* id, const char* label, double value, const char* note) {
    if (std::isfinite(value)) figure(id, label, value, "s", seconds_text(value), sources_, note);
  }

  void tell(const stage::Plan& plan) {
    sources_ = {&plan_words, &stage::persistence_source()};
    for (const stage::TyreSet& set : event_.sets)
      for (const Source* source : {set.kind.pace_known, set.kind.life_known, set.kind.window_known})
        if (source != nullptr) add_once(sources_, *source);
    seconds_figure("expected_lost", "Expected loss against the right tyre everywhere",
                   plan.expected_lost, "");
    seconds_figure("worst_lost", "Loss on the worst day", plan.worst_lost, "");
    seconds_figure("tail_lost", "Loss on the worst fifth of days", plan.tail_lost, "");
    seconds_figure("regret", "Expected loss against hindsight", plan.regret,
                   plan.every_path ? "" : "Over sampled weathers.");
    Table table{"first",
                "What to fit now",
                "What each first choice loses, with the best that can follow.",
                {"Fit", "Loss", "Against the best"},
                {}};
    for (const stage::FirstChoice& choice : plan.first)
      table.rows.push_back({set_name(plan, choice.set), seconds_text(choice.loss),
                            filled("+#", {seconds_text(choice.regret)})});
    answer_.tables.push_back(std::move(table));
    if (plan.wear_levels != 0)
      caution("wear_rounded", Level::note, "",
              "The sets may wear out in so many ways that their wear was rounded up from stage to "
              "stage: they last at least as long as said, and a slightly better plan may exist.",
              {&plan_words});
    const std::string_view why = event_.sets[plan.sets[plan.first.front().set].entry].kind.why;
    caution("why", Level::note, "", why, sources_);
  }

  void tell_halts(const stage::Plan& plan) {
    if (plan.halts.empty()) return;
    Table table{"halts",
                "At each halt",
                "What to fit by the weather of the stage before it.",
                {"Halt", "If it was", "Fit", "Chance"},
                {}};
    for (const stage::AtHalt& halt : plan.halts)
      table.rows.push_back({filled("After #", {names_[halt.stage]}),
                            std::string(stage::weather_name(halt.seen)), set_name(plan, halt.set),
                            filled("# %", {fixed(100.0 * halt.chance, 0)})});
    answer_.tables.push_back(std::move(table));
  }

  // Which sets the plan may call for, and how often at the halt where it does so most.
  void tell_carry(const stage::Plan& plan) {
    if (plan.sets.size() < 2) return;
    std::vector<double> most(plan.sets.size(), 0.0), here(plan.sets.size(), 0.0);
    most[plan.first.front().set] = 1.0;
    for (std::size_t i = 0; i < plan.halts.size(); ++i) {
      const stage::AtHalt& halt = plan.halts[i];
      if (i == 0 || plan.halts[i - 1].stage != halt.stage) here.assign(here.size(), 0.0);
      for (std::size_t s = 0; s < here.size(); ++s) {
        here[s] += halt.chance * halt.fits[s];
        most[s] = std::max(most[s], here[s]);
      }
    }
    Table table{"carry",
                "Which sets to carry",
                "How likely each is to go on, at the halt where that is likeliest.",
                {"Set", "Goes on"},
                {}};
    for (std::size_t s = 0; s < most.size(); ++s)
      table.rows.push_back(
          {set_name(plan, s), most[s] > 0.9995 ? "in any weather"
                              : most[s] > 0.0005
                                  ? filled("in # % of cases", {significant(100.0 * most[s], 2)})
                                  : "never: leave it at home"});
    answer_.tables.push_back(std::move(table));
  }

  // Stage by stage, with what is likeliest to be on and what is left of it.
  void tell_wear(const stage::Plan& plan) {
    Timeline timeline{
        "stages", "Stage by stage", "What is likely to be on, and what is left of it.", {}};
    std::size_t on = plan.first.front().set;
    for (std::size_t i = 0; i < event_.stages.size(); ++i) {
      const stage::Stage& s = event_.stages[i];
      stage::Weather likeliest = stage::Weather::dry;
      for (std::size_t w = 0; w < stage::weathers; ++w)
        if (s.chances[w] > s.chances[stage::index(likeliest)])
          likeliest = static_cast<stage::Weather>(w);
      const stage::WearLeft* left = i < plan.left.size() ? &plan.left[i] : nullptr;
      likely_.push_back(on);
      std::string text =
          filled("#, likely #; #.",
                 {write_distance(s.length), stage::weather_name(likeliest), set_name(plan, on)});
      if (left != nullptr)
        text += filled(" About # % left, # % at least.",
                       {fixed(100.0 * left->expected, 0), fixed(100.0 * left->least, 0)});
      const Level level = left != nullptr && left->least < 0.15 ? Level::care : Level::note;
      timeline.steps.push_back({names_[i], text, in_metres(s.length) / 1000.0, level});
      double chance = -1.0;
      for (const stage::AtHalt& halt : plan.halts)
        if (halt.stage == i && halt.chance > chance) chance = halt.chance, on = halt.set;
    }
    answer_.timelines.push_back(std::move(timeline));
  }

  std::string write_distance(Length l) const {
    return units_ == UnitSystem::metric
               ? filled("# km", {trimmed(in_metres(l) / 1000.0, 1)})
               : filled("# miles", {trimmed(in_metres(l) / exact::metres_per_mile, 1)});
  }

  // The stages whose air is outside the window of the set that is likely to be on.
  void judge_temperature(const stage::Plan& plan) {
    std::string cold, hot;
    Sources known;
    for (std::size_t i = 0; i < likely_.size(); ++i) {
      const stage::TyreKind& kind = event_.sets[plan.sets[likely_[i]].entry].kind;
      const auto& air = event_.stages[i].air;
      if (!air || (*air >= kind.coolest && *air <= kind.hottest)) continue;
      add_item(*air < kind.coolest ? cold : hot, names_[i]);
      if (kind.window_known != nullptr) add_once(known, *kind.window_known);
    }
    if (!cold.empty())
      caution(
          "cold_tyres", Level::care, "it is cold for these tyres",
          filled("#: colder than the tyres that are likely to be on want it. Expect little grip "
                 "on the first kilometres.",
                 {cold}),
          known);
    if (!hot.empty())
      caution(
          "hot_tyres", Level::care, "it is hot for these tyres",
          filled("#: hotter than the tyres that are likely to be on want it. They lose grip, and "
                 "wear faster than reckoned here.",
                 {hot}),
          known);
  }

  // The speed at which a set floats in what was reported: as a slick, a cut slick or a moulded
  // tyre, at the tread it has now.
  std::optional<water::SpeedBand> floats(const stage::Plan& plan, std::size_t set, Length depth,
                                         GaugePressure pressure,
                                         std::optional<Length> width) const {
    const std::size_t entry = plan.sets[set].entry;
    const stage::TyreSet& on = event_.sets[entry];
    const double credit = !(on.kind.new_tread > metres(0.0)) ? 0.0
                          : kinds_[entry] == "cut-slick"     ? 0.5
                                                             : 1.0;
    const Length tread = on.kind.new_tread - (on.kind.new_tread - on.kind.least_tread) * on.worn;
    const standard::RoadSurface* road = standard::find_road_surface("asphalt");
    if (road == nullptr) return std::nullopt;
    return water::aquaplaning_onset({pressure, tread, credit, width, depth, road->texture});
  }

  std::string held_text(const water::SpeedBand& onset) const {
    const Speed held = floor_to_five(onset.low * water::hold_to_share, units_);
    return held > kilometres_per_hour(0.0) ? speed_text(held) : "a walk";
  }

  void judge_water(const stage::Plan& plan) {
    for (std::size_t i = 0; i < likely_.size(); ++i) {
      if (!water_[i] || !(*water_[i] > metres(0.0))) continue;
      if (*water_[i] >= water::deepest_to_enter) {
        caution("deep_water", Level::unfit, filled("the water on # is too deep", {names_[i]}),
                filled("#: water of # can stall or float a car. Report it; do not drive into it.",
                       {names_[i], write_water(*water_[i], units_)}),
                {&deep_water_advice()});
        continue;
      }
      const auto onset = floats(plan, likely_[i], *water_[i], soft_pressure, std::nullopt);
      if (!onset) continue;
      caution("water_on_stage", Level::care, filled("water stands on #", {names_[i]}),
              filled("#: in # the # floats from about # on, sooner as it wears; hold to # there.",
                     {names_[i], write_water(*water_[i], units_), set_name(plan, likely_[i]),
                      speed_text(onset->low), held_text(*onset)}),
              {&water::estimate_source(), &water::film_source(), &water::clearing_source()});
    }
  }

  // ---- a team's other cars ----

  struct Car {
    std::string name;
    patch::TyreSize size;
    Mass load;
    GaugePressure pressure;
  };

  void read_cars() {
    const std::size_t count = rows("cars");
    for (std::size_t row = 0; row < count; ++row) {
      const auto at = [&](std::string_view field) { return in_row("cars", row, field); };
      if (!given(at("name")) && !given(at("size")) && !given(at("load")) && !given(at("pressure")))
        continue;
      const auto reading = sidewall_text(at("size"));
      const auto load = quantity<Mass>(at("load"));
      const auto pressure = quantity<GaugePressure>(at("pressure"));
      const auto size = reading ? patch::nominal_size(*reading) : std::optional<patch::TyreSize>();
      if (!given(at("size")))
        problem(at("size"), "missing",
                "Sidewall text is missing. Something like 165/70 R13 79T would do.");
      else if (reading && !size)
        problem(at("size"), "no_size",
                "Sidewall text: its width and height are not in it, and both are needed here.");
      if (!given(at("load")))
        problem(at("load"), "missing", "Load is missing. Something like 260 kg would do.");
      if (!given(at("pressure")))
        problem(at("pressure"), "missing", "Pressure is missing. Something like 1.8 bar would do.");
      std::string name = plain_spaces(text(at("name")));
      if (name.empty()) name = filled("Car #", {std::to_string(row + 1)});
      if (size && load && pressure) cars_.push_back({std::move(name), *size, *load, *pressure});
    }
  }

  // Wear goes with the load on what carries it: the volume worn off by the load, and so the depth
  // by load over width and circumference.
  static double wear_rate(const Car& car) {
    return in_kilograms(car.load) / (in_millimetres(car.size.section_width) *
                                     in_millimetres(patch::overall_diameter(car.size)));
  }

  void compare_cars(const stage::Plan& plan) {
    if (cars_.empty()) return;
    std::size_t deepest = names_.size();
    for (std::size_t i = 0; i < likely_.size(); ++i)
      if (water_[i] && *water_[i] > metres(0.0) && *water_[i] < water::deepest_to_enter &&
          (deepest == names_.size() || *water_[i] > *water_[deepest]))
        deepest = i;
    Table table{
        "cars",
        "The cars of the team",
        deepest < names_.size()
            ? filled("The set for all is the one above: the weather decides. Wear is against "
                     "the first car; floating is in # on #, with the set likely to be on.",
                     {write_water(*water_[deepest], units_), names_[deepest]})
            : "The set for all is the one above: the weather decides. Wear is against the "
              "first car. No standing water was reported.",
        {"Car", "Wears", "Floats from", "Hold to"},
        {}};
    for (const Car& car : cars_) {
      std::string from = "–", held = "–";
      if (deepest < names_.size())
        if (const auto onset = floats(plan, likely_[deepest], *water_[deepest], car.pressure,
                                      car.size.section_width))
          from = speed_text(onset->low), held = held_text(*onset);
      table.rows.push_back(
          {car.name, filled("# times", {fixed(wear_rate(car) / wear_rate(cars_.front()), 2)}), from,
           held});
    }
    answer_.tables.push_back(std::move(table));
    caution("cars", Level::note, "",
            "Between the cars of the team wear is reckoned by load, width and diameter alone: a "
            "driver makes more difference. Where a set has little left, look at the heaviest car's "
            "tyres first.",
            {&wear_law});
  }

  void tell_swing(const stage::Plan& plan) {
    const char* more = plan.swing_complete
                           ? ""
                           : " The event is long, so not every change was looked at: a lesser one "
                             "may do it too.";
    const auto say = [&](const char* id, const std::string& text) {
      caution(id, Level::note, "", filled("##", {text, more}), {&plan_words});
    };
    if (plan.swing) {
      const stage::Swing& swing = *plan.swing;
      const std::string then = fixed(100.0 * swing.wet_then, 0);
      const std::string now = fixed(100.0 * swing.wet_now, 0);
      say("swing", swing.set ? filled("What would change it: if the chance of a wet road on # were "
                                      "# % and not # %, fit # first.",
                                      {names_[swing.stage], then, now, set_name(plan, *swing.set)})
                             : filled("If the chance of a wet road on # were # % and not # %, no "
                                      "plan would be left.",
                                      {names_[swing.stage], then, now}));
    } else if (plan.first.size() > 1) {
      say("swing",
          "No change in the forecast of one stage was found that makes another kind of "
          "tyre go on first.");
    }
    if (!plan.air_swing) return;
    const stage::AirSwing& swing = *plan.air_swing;
    const double kelvins = std::fabs(swing.kelvins);
    const std::string by = units_ == UnitSystem::us ? filled("# °F", {fixed(kelvins * 1.8, 0)})
                                                    : filled("# °C", {fixed(kelvins, 0)});
    if (!swing.set)
      say("air_swing", filled(swing.kelvins < 0.0 ? "If it were # colder, no plan would be left."
                                                  : "If it were # warmer, no plan would be left.",
                              {by}));
    else
      say("air_swing", filled(swing.kelvins < 0.0 ? "If it were # colder all day, fit # first."
                                                  : "If it were # warmer all day, fit # first.",
                              {by, set_name(plan, *swing.set)}));
  }

  stage::Event event_;
  std::vector<std::string_view> kinds_;  // of each entry, as chosen
  std::deque<std::string> own_ids_;
  std::vector<Car> cars_;
  stage::Question question_;
  std::vector<std::string> names_;
  std::vector<std::optional<Length>> water_;
  std::vector<std::size_t> likely_;  // the set likely to be on, stage by stage
  Sources sources_;
};

}  // namespace

Answer stage_tyres(const Input& input) { return StageTyres(input).run(); }

Sources stage_tyres_sources() {
  Sources all = {&own_notes,
                 &wear_law,
                 &deep_water_advice(),
                 &plan_words,
                 &stage::persistence_source(),
                 &officials,
                 &water::estimate_source(),
                 &water::film_source(),
                 &water::clearing_source()};
  for (std::size_t i = 0; i < stage::tyre_kind_count; ++i) {
    const stage::TyreKind kind = stage::tyre_kind(i);
    for (const Source* source :
         {kind.pace_known, kind.life_known, kind.land_known, kind.window_known})
      if (source != nullptr) add_once(all, *source);
  }
  return all;
}

}  // namespace treadwater::answer
