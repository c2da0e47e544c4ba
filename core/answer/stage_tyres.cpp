#include "core/answer/stage_tyres.hpp"

#include <algorithm>
#include <cmath>

#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/patch/geometry.hpp"
#include "core/quantity/language.hpp"
#include "core/stage/decision.hpp"
#include "core/stage/plan.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::answer {
namespace {

// Where nothing else is known of the tyres that go into standing water.
constexpr GaugePressure soft_pressure = kilopascals(180.0);
constexpr Length widest_unknown = millimetres(255.0);  // water/estimate.hpp
constexpr double likelier_than_not = 0.5;
constexpr double hardly_ever = 0.005;  // less than a share that rounds to 1 %

constexpr Source plan_words{"stage-plan", "Dynamic programming with recourse at each halt",
                            "Treadwater's own model; CVaR after Rockafellar and Uryasev, 2002",
                            "2026", Standing::common_practice};
constexpr Source officials{"stage-officials", "Whether a stage runs, and at what speed",
                           "the event's officials and rules decide", "", Standing::common_practice};
constexpr Source own_notes{"stage-own-notes", "The crew's own notes",
                           "given here; they count before ours", "", Standing::common_practice};
constexpr Source wear_law{"wear-by-load", "J. F. Archard, Contact and Rubbing of Flat Surfaces",
                          "volume worn off by load and way; J. Appl. Phys. 24, 981", "1953",
                          Standing::memory};

struct Car {
  std::string name;
  std::optional<Mass> load;  // on a driven wheel
  std::optional<patch::TyreSize> size;
  std::optional<Length> width;
  std::optional<GaugePressure> pressure;
};

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
  // ---- the form ----

  void read_stages() {
    const std::size_t count = rows("stages");
    constexpr std::array<const char*, stage::weathers> fields = {"dry",      "damp", "wet",
                                                                 "standing", "snow", "ice"};
    for (std::size_t row = 0; row < count; ++row) {
      const auto at = [&](std::string_view field) { return row_path("stages", row, field); };
      stage::Stage s;
      if (const auto length = quantity<Length>(at("length"))) s.length = *length;
      if (const auto average = quantity<Speed>(at("average"))) s.average = *average;
      s.gravel = number(at("gravel")).value_or(0.0) / 100.0;
      s.abrasion = number(at("abrasion")).value_or(1.0);
      s.air = quantity<Temperature>(at("air"));
      names_.push_back(row_name("stages", row, "Stage #"));
      bool any = false;
      for (std::size_t w = 0; w < stage::weathers; ++w) {
        any = any || given(at(fields[w]));
        s.chances[w] = number(at(fields[w])).value_or(0.0) / 100.0;
      }
      if (!any) {
        s.chances[0] = 1.0;
        add_item(without_weather_, names_.back());
      }
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
      event_.stages.push_back(s);
    }
  }

  // What a person called a row, short enough to print.
  std::string row_name(std::string_view list, std::size_t row, const char* otherwise) const {
    const std::string said = plain_spaces(text(row_path(list, row, "name")));
    if (said.empty()) return filled(otherwise, {std::to_string(row + 1)});
    constexpr std::size_t mark = std::string_view("“").size();
    const std::string quoted = in_quotes(said);
    return quoted.substr(mark, quoted.size() - 2 * mark);
  }

  void read_sets() {
    const std::size_t count = rows("sets");
    double gravel = 0.0, tarmac = 0.0;
    for (const stage::Stage& s : event_.stages) {
      gravel = std::max(gravel, s.gravel);
      tarmac = std::max(tarmac, 1.0 - s.gravel);
    }
    for (std::size_t row = 0; row < count; ++row) {
      const auto at = [&](std::string_view field) { return row_path("sets", row, field); };
      const auto id = choice(at("kind"));
      const auto how_many = whole(at("count"));
      const auto tread = quantity<Length>(at("tread"));
      const auto used = number(at("used"));
      const auto life = quantity<Length>(at("life"));
      const auto coolest = quantity<Temperature>(at("coolest"));
      const auto hottest = quantity<Temperature>(at("hottest"));
      const auto kind = id ? stage::find_tyre_kind(*id) : std::optional<stage::TyreKind>();
      if (!kind) continue;
      stage::TyreSet set;
      set.kind = *kind;
      set.count = how_many.value_or(1);
      if (tread) set.worn = stage::worn(*kind, *tread);
      if (used) set.worn = std::max(set.worn, *used / 100.0);
      if (life) {
        scale_life(set.kind, *life, gravel > 0.0, tarmac > 0.0);
        set.kind.life_known = &own_notes;
      }
      if (read_own_pace(set.kind, row)) set.kind.pace_known = &own_notes;
      if (coolest) set.kind.coolest = *coolest;
      if (hottest) set.kind.hottest = *hottest;
      if (coolest || hottest) set.kind.window_known = &own_notes;
      if (set.kind.coolest > set.kind.hottest)
        problem(at(coolest ? "coolest" : "hottest"), "window",
                filled("It would work from # to #: give the lower temperature first.",
                       {write_air(set.kind.coolest), write_air(set.kind.hottest)}));
      const bool moulded_or_cut = kind->new_tread > metres(0.0);
      if (tread && !moulded_or_cut)
        caution(
            "slick_tread", Level::note, "",
            "A slick has no tread to measure, so its reading was not used: put in the life used.");
      else if (tread && *tread > kind->new_tread + standard::tread_gauge_error)
        caution("tread_deep", Level::note, "",
                filled("#: # is deeper than we take such a tyre new (#), and counted as new.",
                       {kind->label, write_depth(*tread, units_),
                        write_depth(kind->new_tread, units_)}));
      marks_.push_back(given(at("name")) ? row_name("sets", row, "#") : std::string());
      rows_.push_back(row);
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
      const auto slower = number(row_path("sets", row, fields[w]));
      if (!slower) continue;
      any = true;
      for (auto& ground : kind.pace) {
        stage::Pace& pace = ground[w];
        if (pace.low > 0.0) pace.low = pace.high = 1.0 + *slower / 100.0;
      }
    }
    return any;
  }

  // A crew's own life in the dry moves the others with it. It is that of the ground the event is
  // on; where it is on both, that of the ground on which the kind lasts longest.
  static void scale_life(stage::TyreKind& kind, Length dry, bool gravel, bool tarmac) {
    const Length on_tarmac = tarmac ? kind.life[0][0] : metres(0.0);
    const Length on_gravel = gravel ? kind.life[1][0] : metres(0.0);
    const Length ours = std::max(on_tarmac, on_gravel);
    if (!(ours > metres(0.0))) return;
    for (auto& by_wetness : kind.life)
      for (Length& life : by_wetness) life = life * (dry / ours);
  }

  std::optional<int> whole(std::string_view path) {
    const auto n = number(path);
    if (!n) return std::nullopt;
    if (std::floor(*n) != *n) problem(path, "not_whole", "Put in a whole number.");
    return static_cast<int>(*n);
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
    event_.rules.most_sets = whole("most_sets");
    event_.rules.least_tread = quantity<Length>("least_tread").value_or(millimetres(1.6));
    // A slick has no tread to measure: unless the rules say it, the depth is asked of the others.
    if (!given("least_tread"))
      for (stage::TyreSet& set : event_.sets)
        if (!(set.kind.new_tread > metres(0.0))) set.kind.least_tread = event_.rules.least_tread;
    event_.rules.least_grooves = number("grooves").value_or(0.0) / 100.0;
    event_.rules.moulded_only = yes_no("moulded_only").value_or(false);
    event_.rules.no_studs = yes_no("no_studs").value_or(false);
    event_.rules.road_sections = yes_no("road_sections").value_or(false);
  }

  // Whatever a car's row leaves out is not compared for it.
  void read_cars() {
    const std::size_t count = rows("cars");
    for (std::size_t row = 0; row < count; ++row) {
      const auto at = [&](std::string_view field) { return row_path("cars", row, field); };
      if (!given(at("name")) && !given(at("size")) && !given(at("load")) && !given(at("pressure")))
        continue;
      Car car;
      car.name = row_name("cars", row, "Car #");
      const auto reading = given(at("size")) ? sidewall_text(at("size")) : std::nullopt;
      if (reading) car.size = patch::nominal_size(*reading);
      if (reading && !car.size)
        caution("size_unknown", Level::note, "",
                filled("#: its size gives no width here, so it is compared without.", {car.name}));
      if (car.size) car.width = car.size->section_width;
      car.load = quantity<Mass>(at("load"));
      car.pressure = quantity<GaugePressure>(at("pressure"));
      cars_.push_back(std::move(car));
    }
  }

  // ---- the answer ----

  void solve() {
    question_.progress = input_.progress;
    const auto found = stage::plan(event_, question_);
    if (!found) {
      for (const stage::Problem& p : found.error()) say_problem(p);
      return;
    }
    plan_ = *found;
    sets_ = plan_.sets.size();
    first_ = plan_.first.front().set;
    first_leg_ = 0;
    while (first_leg_ + 1 < event_.stages.size() &&
           event_.stages[first_leg_].halt_after < stage::Halt::tyre_zone)
      ++first_leg_;
    tell_losses();
    tell_decisions();
    tell_first();
    tell_carry();
    tell_stages();
    tell_wear();
    if (!without_weather_.empty())
      caution("weather_assumed", Level::care, "no weather was given for some stages",
              filled("No chances of the weather were given for #: taken as surely dry.",
                     {without_weather_}));
    judge_unsafe();
    judge_air();
    judge_rules();
    judge_water();
    tell_cars();
    tell_swing();
    tell_how_exact();
    caution("officials", Level::note, "",
            "Whether a stage runs, and what may be fitted, is for the event's officials and rules.",
            {&officials});
    const std::string first = set_name(first_);
    conclude(filled("Fit # now.", {first}), "#", "#");
    if (answer_.verdict->level != Level::note)
      answer_.verdict->text =
          filled(answer_.verdict->level == Level::care ? "Fit # now, with care: #."
                                                       : "Not fit as it stands, even with # on: #.",
                 {first, answer_.verdict->text});
    if (answer_.verdict->level == Level::unfit) {
      speak(answer_.verdict->text);
      return;
    }
    std::string stages;
    for (std::size_t i = 0; i <= first_leg_; ++i) add_item(stages, names_[i]);
    speak(filled("Fit # for #.", {first, stages}));
  }

  // A finding about a stage or a set stands beside its row.
  void say_problem(const stage::Problem& p) {
    struct Place {
      std::string_view code, field;
    };
    constexpr Place places[] = {
        {"chances", "dry"},       {"average", "average"},     {"surface", "gravel"},
        {"abrasion", "abrasion"}, {"temperature", "air"},     {"count", "count"},
        {"worn", "tread"},        {"kind", "life"},           {"no-sets", "sets"},
        {"no-set-left", "sets"},  {"most-sets", "most_sets"}, {"least-tread", "least_tread"},
        {"too-many-sets", "sets"}};
    std::string_view field;
    for (const Place& place : places)
      if (place.code == p.code) field = place.field;
    if (p.stage >= 0)
      problem(
          row_path("stages", static_cast<std::size_t>(p.stage), field.empty() ? "length" : field),
          p.code, p.text);
    else if (p.set >= 0)
      problem(
          row_path("sets", rows_[static_cast<std::size_t>(p.set)], field.empty() ? "kind" : field),
          p.code, p.text);
    else
      problem(field.empty() ? "stages" : field, p.code, p.text);
  }

  const stage::TyreSet& entry(std::size_t set) const { return event_.sets[plan_.sets[set].entry]; }
  const stage::SetOnStage& on(std::size_t stage, std::size_t set) const {
    return plan_.on[stage * sets_ + set];
  }

  // "soft stage tyre B": by its mark; without one by its row, where there is another of its kind.
  std::string set_name(std::size_t set) const {
    const std::size_t e = plan_.sets[set].entry;
    std::string name = std::string(event_.sets[e].kind.name);
    bool alone = true;
    for (std::size_t other = 0; other < event_.sets.size(); ++other)
      alone = alone && (other == e || event_.sets[other].kind.id != event_.sets[e].kind.id);
    if (!marks_[e].empty())
      name = filled("# #", {name, marks_[e]});
    else if (!alone)
      name = filled("# of row #", {name, std::to_string(rows_[e] + 1)});
    if (event_.sets[e].count > 1)
      name = filled("# (set #)", {name, std::to_string(plan_.sets[set].number)});
    return name;
  }

  static std::string seconds_text(double seconds) {
    return filled("# s", {fixed(seconds, seconds < 10.0 ? 1 : 0)});
  }

  // "34 %"; what is not quite nothing or all is not written as if it were.
  static std::string chance_text(double chance) {
    if (chance > 0.0 && chance < hardly_ever) return "under 1 %";
    if (chance < 1.0 - 1e-9 && chance > 1.0 - hardly_ever) return "over 99 %";
    return filled("# %", {fixed(100.0 * chance, 0)});
  }

  std::string write_distance(Length l) const {
    return units_ == UnitSystem::metric
               ? filled("# km", {trimmed(in_metres(l) / 1000.0, 1)})
               : filled("# miles", {trimmed(in_metres(l) / exact::metres_per_mile, 1)});
  }

  std::string write_air(Temperature t) const {
    return units_ == UnitSystem::us ? filled("# °F", {fixed(in_celsius(t) * 1.8 + 32.0, 0)})
                                    : filled("# °C", {fixed(in_celsius(t), 0)});
  }

  void seconds_figure(const char* id, const char* label, double value, const char* note) {
    if (std::isfinite(value)) figure(id, label, value, "s", seconds_text(value), sources_, note);
  }

  void tell_losses() {
    sources_ = {&plan_words, &stage::persistence_source()};
    for (const stage::TyreSet& set : event_.sets)
      for (const Source* source : {set.kind.pace_known, set.kind.life_known, set.kind.window_known})
        if (source != nullptr) add_once(sources_, *source);
    const bool steady = question_.attitude == stage::Attitude::steady;
    const bool drawn = !plan_.every_path;
    seconds_figure("expected_lost", "Expected loss against the right tyre everywhere",
                   plan_.expected_lost, drawn && steady ? "An estimate, over drawn weathers." : "");
    seconds_figure("worst_lost", "Loss on the worst day", plan_.worst_lost,
                   drawn && steady ? "At most." : "");
    seconds_figure("tail_lost", "Loss on the worst fifth of days", plan_.tail_lost,
                   drawn && !steady ? "An estimate, over drawn weathers." : "");
    const std::string error = seconds_text(plan_.regret_error);
    figure("regret", "Expected loss against hindsight", plan_.regret, "s",
           seconds_text(plan_.regret), sources_,
           plan_.regret_is_bound ? filled("At most. Over drawn weathers, give or take #.", {error})
           : drawn               ? filled("Over drawn weathers, give or take #.", {error})
                                 : "Hindsight knows the weather, and keeps wear and rules.");
    seconds_figure("largest_regret", "Most that hindsight could save", plan_.largest_regret,
                   drawn ? "Of the weathers drawn." : "");
    figure("right_tyre", "All stages on the right tyre", plan_.right_tyre_seconds / 60.0, "min",
           filled("# min", {fixed(plan_.right_tyre_seconds / 60.0, 0)}), {&plan_words});
    caution("why", Level::note, "", entry(first_).kind.why, sources_);
  }

  // For the sheet in the van: a row for the start and each halt, a column for each weather that may
  // be seen before it.
  void tell_decisions() {
    bool seen[stage::weathers] = {};
    for (const stage::AtHalt& halt : plan_.halts) seen[stage::index(halt.seen)] = true;
    Table table{
        "halts",
        "What to fit at each halt",
        "By the weather of the stage just run. “Else”: where the first is too worn by then, "
        "or the time already lost asks for it.",
        {"Before", "For"},
        {}};
    if (plan_.halts.empty()) {
      table.text = "There is no tyre change after the start.";
      table.columns.emplace_back("To fit");
    }
    for (std::size_t w = 0; w < stage::weathers; ++w)
      if (seen[w])
        table.columns.push_back(
            filled("If it was #", {stage::weather_name(static_cast<stage::Weather>(w))}));
    std::size_t next = 0;
    for (std::size_t i = 0, start = 0; i < event_.stages.size(); ++i) {
      const bool last = i + 1 == event_.stages.size();
      if (event_.stages[i].halt_after < stage::Halt::tyre_zone && !last) continue;
      Length length;
      for (std::size_t j = start; j <= i; ++j) length = length + event_.stages[j].length;
      std::vector<std::string> row{
          names_[start], start == i ? filled("1 stage, #", {write_distance(length)})
                                    : filled("# stages, #", {std::to_string(i - start + 1),
                                                             write_distance(length)})};
      if (start == 0) {
        row.resize(table.columns.size(), set_name(first_));
      } else {
        for (std::size_t w = 0; w < stage::weathers; ++w) {
          if (!seen[w]) continue;
          const bool here = next < plan_.halts.size() && plan_.halts[next].stage + 1 == start &&
                            stage::index(plan_.halts[next].seen) == w;
          row.push_back(here ? fits_text(plan_.halts[next++]) : "–");
        }
      }
      table.rows.push_back(std::move(row));
      start = i + 1;
    }
    answer_.tables.push_back(std::move(table));
  }

  std::string fits_text(const stage::AtHalt& halt) const {
    std::size_t second = sets_;
    for (std::size_t s = 0; s < sets_; ++s)
      if (s != halt.set && halt.fits[s] >= hardly_ever &&
          (second == sets_ || halt.fits[s] > halt.fits[second]))
        second = s;
    return second == sets_ ? set_name(halt.set)
                           : filled("#, else #", {set_name(halt.set), set_name(second)});
  }

  void tell_first() {
    Table table{"first",
                "What to fit now",
                "What each first choice loses, with the best that can follow.",
                {"To fit", "Loss", "Against the best"},
                {}};
    for (const stage::FirstChoice& choice : plan_.first)
      table.rows.push_back({set_name(choice.set), seconds_text(choice.loss),
                            filled("+#", {seconds_text(choice.regret)})});
    answer_.tables.push_back(std::move(table));
  }

  void tell_carry() {
    Table table{"carry",
                "Which sets to carry",
                "How likely each set is to go on at all, how it stands for the first stages, and "
                "what it is for.",
                {"Set", "Goes on", "Now", "For"},
                {}};
    const char* never = plan_.every_path ? "never: leave it at home" : "in no weather drawn";
    for (std::size_t s = 0; s < sets_; ++s)
      table.rows.push_back({set_name(s),
                            s == first_           ? std::string("in any weather")
                            : plan_.used[s] > 0.0 ? chance_text(plan_.used[s])
                                                  : std::string(never),
                            standing_now(s), std::string(entry(s).kind.why)});
    answer_.tables.push_back(std::move(table));
  }

  std::string standing_now(std::size_t set) const {
    const stage::TyreSet& of = entry(set);
    double worst = of.worn;
    for (std::size_t i = 0; i <= first_leg_; ++i) {
      const stage::Stage& s = event_.stages[i];
      if (const auto why =
              stage::refusal(of.kind, s, event_.rules, question_.attitude == stage::Attitude::safe))
        return filled("#: #", {names_[i], *why});
      double here = 0.0;
      for (std::size_t w = 0; w < stage::weathers; ++w)
        if (s.chances[w] > 0.0)
          here = std::max(here, stage::wear(of.kind, s, static_cast<stage::Weather>(w)));
      worst += here;
      if (worst > stage::usable_life(of.kind, event_.rules))
        return filled("#: worn out by then, if the weather is hard on it", {names_[i]});
    }
    for (const stage::FirstChoice& choice : plan_.first)
      if (plan_.sets[choice.set].entry == plan_.sets[set].entry) {
        if (set == first_) return "goes on";
        return choice.regret > 0.0 ? filled("# slower than the best", {seconds_text(choice.regret)})
                                   : filled("as good as #", {set_name(choice.set)});
      }
    return "not better than those above";
  }

  // ---- stage by stage ----

  std::size_t likely_on(std::size_t stage) const {
    std::size_t best = 0;
    for (std::size_t s = 1; s < sets_; ++s)
      if (on(stage, s).on > on(stage, best).on) best = s;
    return best;
  }

  void tell_stages() {
    Timeline timeline{
        "stages", "Stage by stage", "What is likely to be on, and what is left of it.", {}};
    for (std::size_t i = 0; i < event_.stages.size(); ++i) {
      const stage::Stage& s = event_.stages[i];
      const auto likeliest = static_cast<stage::Weather>(
          std::max_element(s.chances.begin(), s.chances.end()) - s.chances.begin());
      const stage::WearLeft& left = plan_.left[i];
      timeline.steps.push_back(
          {names_[i],
           filled("#, likely #; #. About # % left, # % at least.",
                  {write_distance(s.length), stage::weather_name(likeliest), set_name(likely_on(i)),
                   fixed(100.0 * left.expected, 0), fixed(100.0 * left.least, 0)}),
           in_metres(s.length) / 1000.0, left.least < 0.15 ? Level::care : Level::note});
    }
    answer_.timelines.push_back(std::move(timeline));
  }

  static Length tread_at(const stage::TyreKind& kind, double worn) {
    return kind.new_tread > metres(0.0)
               ? kind.new_tread - (kind.new_tread - kind.least_tread) * std::min(1.0, worn)
               : metres(0.0);
  }

  void tell_wear() {
    Table table{
        "wear",
        "What is left of each set",
        "On the driven axle after each stage: expected, and in brackets at worst. A slick in "
        "shares of its life. Sets that never go on stay as they are.",
        {"After"},
        {}};
    for (std::size_t s = 0; s < sets_; ++s)
      if (plan_.used[s] > 0.0) table.columns.push_back(set_name(s));
    for (std::size_t i = 0; i < event_.stages.size(); ++i) {
      std::vector<std::string> row{names_[i]};
      for (std::size_t s = 0; s < sets_; ++s) {
        if (!(plan_.used[s] > 0.0)) continue;
        const stage::TyreKind& kind = entry(s).kind;
        const auto left = [&](double worn) {
          return kind.new_tread > metres(0.0) ? write_depth(tread_at(kind, worn), units_)
                                              : filled("# %", {fixed(100.0 * (1.0 - worn), 0)});
        };
        row.push_back(filled("# (#)", {left(on(i, s).worn), left(on(i, s).most_worn)}));
      }
      table.rows.push_back(std::move(row));
    }
    answer_.tables.push_back(std::move(table));
  }

  // ---- cautions ----

  // A set that may be on in weather in which its pace is not safe: never called fit in silence.
  void judge_unsafe() {
    std::vector<std::string> told;
    for (std::size_t s = 0; s < sets_; ++s) {
      const stage::TyreKind& kind = entry(s).kind;
      bool in[stage::weathers] = {};
      double most = 0.0;
      std::size_t where = event_.stages.size();
      for (std::size_t i = 0; i < event_.stages.size(); ++i) {
        if (!(on(i, s).on > 0.0)) continue;
        for (std::size_t w = 0; w < stage::weathers; ++w) {
          if (!(event_.stages[i].chances[w] > 0.0) ||
              stage::safe_in(kind, event_.stages[i], static_cast<stage::Weather>(w)))
            continue;
          in[w] = true;
          if (where == event_.stages.size() || on(i, s).unsafe > most) {
            most = on(i, s).unsafe;
            where = i;
          }
        }
      }
      if (where == event_.stages.size()) continue;
      std::string weathers;
      for (std::size_t w = 0; w < stage::weathers; ++w)
        if (in[w]) add_item(weathers, worded(stage::weather_name(static_cast<stage::Weather>(w))));
      const bool likely = most >= likelier_than_not;
      caution("unsafe_weather", likely ? Level::unfit : Level::care,
              filled(likely ? "# will likely be on in weather it is not safe in"
                            : "# may be on in weather it is not safe in",
                     {set_name(s)}),
              filled("#: its pace is not safe in this weather: #. Worst on #, where the chance of "
                     "meeting it on this set is #. Crawl there, or ask for the safe choice.",
                     {at_head(set_name(s)), weathers, names_[where], chance_text(most)}),
              {kind.pace_known});
    }
  }

  void judge_air() {
    std::string unknown;
    for (std::size_t i = 0; i < event_.stages.size(); ++i)
      if (!event_.stages[i].air) add_item(unknown, names_[i]);
    for (std::size_t e = 0; e < event_.sets.size(); ++e) {
      std::string cold, hot;
      for (std::size_t i = 0; i < event_.stages.size(); ++i) {
        bool may_be_on = false;
        for (std::size_t s = 0; s < sets_; ++s)
          may_be_on = may_be_on || (plan_.sets[s].entry == e && on(i, s).on > 0.0);
        const auto& air = event_.stages[i].air;
        if (!may_be_on || !air) continue;
        if (*air < event_.sets[e].kind.coolest) add_item(cold, names_[i]);
        if (*air > event_.sets[e].kind.hottest) add_item(hot, names_[i]);
      }
      const stage::TyreKind& kind = event_.sets[e].kind;
      if (!cold.empty())
        caution("cold_tyres", Level::care, "it is cold for some tyres",
                filled("#: it is colder than the # it works from on #: expect little grip on the "
                       "first kilometres.",
                       {kind.label, write_air(kind.coolest), cold}),
                {kind.window_known});
      if (!hot.empty())
        caution("hot_tyres", Level::care, "it is hot for some tyres",
                filled("#: it is hotter than the # it works to on #: expect it to overheat and to "
                       "wear faster than said here.",
                       {kind.label, write_air(kind.hottest), hot}),
                {kind.window_known});
    }
    if (!unknown.empty())
      caution("air_unknown", Level::note, "",
              filled("No air temperature was given for #: whether tyres are too cold or too hot "
                     "there was not judged.",
                     {unknown}));
  }

  void judge_rules() {
    if (event_.rules.road_sections)
      caution("approval_mark", Level::note, "",
              "For the road sections look for the approval mark on every sidewall: its kind alone "
              "does not make a tyre legal.",
              {&officials});
    for (std::size_t e = 0; e < event_.sets.size(); ++e) {
      const stage::TyreKind& kind = event_.sets[e].kind;
      bool used = false;
      for (std::size_t s = 0; s < sets_; ++s)
        used = used || (plan_.sets[s].entry == e && plan_.used[s] > 0.0);
      if (used && 1.0 - kind.land_high < event_.rules.least_grooves - 1e-9)
        caution("grooves", Level::care, "the grooves must be measured",
                filled("#: some have fewer grooves than the # % asked for. Measure yours.",
                       {kind.label, fixed(100.0 * event_.rules.least_grooves, 0)}),
                {kind.land_known});
    }
  }

  // ---- standing water ----

  // Floats as a slick, a cut slick or a moulded tyre, at the tread it may be worn to after the
  // stage.
  std::optional<water::SpeedBand> onset(std::size_t stage, std::size_t set, const Car& car) const {
    const stage::TyreKind& kind = entry(set).kind;
    const bool paved = !(event_.stages[stage].gravel > 0.0);
    const standard::RoadSurface* road = standard::find_road_surface(paved ? "asphalt" : "loose");
    if (road == nullptr) return std::nullopt;
    const double credit = !(kind.new_tread > metres(0.0)) ? 0.0 : kind.moulded ? 1.0 : 0.5;
    return water::aquaplaning_onset({car.pressure.value_or(soft_pressure),
                                     tread_at(kind, on(stage, set).most_worn), credit, car.width,
                                     *water_[stage], road->texture});
  }

  Speed held(const water::SpeedBand& band) const {
    return floor_to_five(band.low * water::hold_to_share, units_);
  }
  std::string held_text(const water::SpeedBand& band) const {
    return held(band) > kilometres_per_hour(0.0) ? speed_text(held(band)) : "walking pace";
  }

  // The lowest pressure and the widest tyre of the cars: none of them floats before it.
  Car first_afloat() const {
    Car worst;
    for (const Car& car : cars_) {
      const GaugePressure p = car.pressure.value_or(soft_pressure);
      if (!worst.pressure || p < *worst.pressure) worst.pressure = p;
      if (car.width && (!worst.width || *car.width > *worst.width)) worst.width = car.width;
    }
    // A width that is not known is allowed for up to this one.
    for (const Car& car : cars_)
      if (!car.width && worst.width && *worst.width < widest_unknown) worst.width.reset();
    return worst;
  }

  void judge_water() {
    Table table{"water",
                "Standing water",
                "Where each set that may be on starts to float, worn as it may be by then; at the "
                "lowest pressure and on the widest tyre of the cars.",
                {"Stage", "Set", "On", "Floats from", "Hold to"},
                {}};
    const Car car = first_afloat();
    const GaugePressure pressure = car.pressure.value_or(soft_pressure);
    bool beyond = false, loose = false;
    for (std::size_t i = 0; i < event_.stages.size(); ++i) {
      if (!water_[i] || !(*water_[i] > metres(0.0))) continue;
      if (!(event_.stages[i].chances[stage::index(stage::Weather::standing_water)] > 0.0))
        caution("water_not_in_chances", Level::care,
                filled("the chances of # leave out its water", {names_[i]}),
                filled("Water is reported on #, but its chance of standing water is 0: the plan "
                       "takes the stage as without. Put in a chance.",
                       {names_[i]}));
      if (*water_[i] >= water::deepest_to_enter) {
        caution("deep_water", Level::unfit, filled("the water on # is too deep", {names_[i]}),
                filled("#: water of # can stall or float a car. Report it; do not drive into it.",
                       {names_[i], write_water(*water_[i], units_)}),
                {&deep_water_advice()});
        continue;
      }
      beyond = beyond || *water_[i] > millimetres(10.0);
      loose = loose || event_.stages[i].gravel > 0.0;
      const std::size_t likely = likely_on(i);
      for (std::size_t s = 0; s < sets_; ++s) {
        if (s != likely && on(i, s).on < hardly_ever) continue;
        const auto band = onset(i, s, car);
        if (!band) continue;
        table.rows.push_back({names_[i], set_name(s), chance_text(on(i, s).on),
                              speed_text(band->low), held_text(*band)});
        if (s != likely) continue;
        const bool slick = !(entry(s).kind.new_tread > metres(0.0));
        caution(
            "water_on_stage", slick ? Level::unfit : Level::care,
            filled(slick ? "a slick floats in the water on #" : "water stands on #", {names_[i]}),
            filled(slick ? "#: in # the # floats from about # on, at #. Nothing clears the "
                           "water: change it, or do not go."
                         : "#: in # the # floats from about # on, at # and worn as it may be by "
                           "then. Hold to # there.",
                   {names_[i], write_water(*water_[i], units_), set_name(s), speed_text(band->low),
                    write(pressure, units_), held_text(*band)}),
            {&water::estimate_source(), &water::film_source(), &water::clearing_source()});
      }
    }
    if (table.rows.empty()) return;
    answer_.tables.push_back(std::move(table));
    bool every_pressure = !cars_.empty();
    for (const Car& each : cars_) every_pressure = every_pressure && each.pressure;
    if (!every_pressure)
      caution("pressure_assumed", Level::note, "",
              filled("Where no pressure was given, # stands for it in the water.",
                     {write(soft_pressure, units_)}));
    if (beyond)
      caution(
          "beyond_measured_water", Level::note, "",
          "Deeper than any published test (9.5 mm, 3/8 in): those floating speeds are carried on "
          "beyond the measurements.",
          {&water::estimate_source()});
    if (loose)
      caution("loose_water", Level::note, "",
              "The water formulas were made on paved roads: on loose ground those speeds are a "
              "guess.",
              {&water::estimate_source()});
  }

  // ---- a team ----

  // The plan again for each car, with lives shortened or lengthened by its load and width.
  void tell_cars() {
    if (cars_.size() < 2) return;
    std::size_t deepest = event_.stages.size();
    for (std::size_t i = 0; i < event_.stages.size(); ++i)
      if (water_[i] && *water_[i] > metres(0.0) &&
          (deepest == event_.stages.size() || *water_[i] > *water_[deepest]))
        deepest = i;
    const bool wet = deepest < event_.stages.size();
    Table table{"cars",
                "The cars of the team",
                "Wear and choice against the first car, whose lives these are, each with the same "
                "sets in its van.",
                {"Car", "Wears", "Fit now"},
                {}};
    if (wet) {
      table.text = filled(
          "Wear and choice against the first car, whose lives these are, each with the same sets "
          "in "
          "its van; and where the # floats in # on #.",
          {set_name(likely_on(deepest)), write_water(*water_[deepest], units_), names_[deepest]});
      table.columns.insert(table.columns.end(), {"Floats from", "Hold to"});
    }
    solve_cars();
    std::string others;
    for (const Car& car : cars_) {
      const Wearing* worn = nullptr;
      if (const auto factor = wear_factor(car))
        for (const Wearing& w : wearing_)
          if (w.factor == *factor) worn = &w;
      if (worn != nullptr && !same_kind(worn->set, first_)) add_item(others, car.name);
      table.rows.push_back({car.name,
                            worn != nullptr ? filled("× #", {fixed(worn->factor, 2)}) : "–",
                            worn == nullptr ? std::string("not known")
                            : worn->set     ? set_name(*worn->set)
                                            : std::string("no set lasts")});
      std::vector<std::string>& row = table.rows.back();
      if (const auto band = wet ? onset(deepest, likely_on(deepest), car) : std::nullopt)
        row.insert(row.end(), {speed_text(band->low), held_text(*band)});
      row.resize(table.columns.size(), "–");
    }
    answer_.tables.push_back(std::move(table));
    if (others.empty())
      caution("cars", Level::note, "",
              "Between the cars of the team wear is reckoned by load, width and diameter alone: a "
              "driver makes more difference. Where a set has little left, look at the heaviest "
              "car's tyres first.",
              {&wear_law});
    else
      caution("cars", Level::care, "not every car takes the same",
              filled("# should not take what the first car does: see the table of cars. Wear is "
                     "reckoned by load, width and diameter alone, roughly.",
                     {others}),
              {&wear_law});
  }

  // How much faster a tyre wears on it than on the first car; nothing without both loads. The
  // volume worn off goes with the load, and so the depth with load over width and circumference;
  // without both sizes, with the load alone.
  std::optional<double> wear_factor(const Car& car) const {
    const Car& own = cars_.front();
    if (&car == &own) return 1.0;
    if (!car.load || !own.load) return std::nullopt;
    double factor = *car.load / *own.load;
    if (car.size && own.size)
      factor *= own.size->section_width / car.size->section_width *
                (patch::overall_diameter(*own.size) / patch::overall_diameter(*car.size));
    return factor;
  }

  // The cars by how fast they wear tyres, and what is best on each. Between two that take the same
  // kind every car does, as far as is looked.
  struct Wearing {
    double factor;
    std::optional<std::size_t> set;
  };

  bool same_kind(std::optional<std::size_t> a, std::optional<std::size_t> b) const {
    return a.has_value() == b.has_value() && (!a || plan_.sets[*a].entry == plan_.sets[*b].entry);
  }

  void solve_cars() {
    for (const Car& car : cars_) {
      const auto factor = wear_factor(car);
      bool there = !factor;
      for (const Wearing& w : wearing_) there = there || w.factor == *factor;
      if (!there) wearing_.push_back({*factor, first_});
    }
    std::sort(wearing_.begin(), wearing_.end(),
              [](const Wearing& a, const Wearing& b) { return a.factor < b.factor; });
    std::size_t own = 0;
    while (wearing_[own].factor != 1.0) ++own;
    const std::size_t last = wearing_.size() - 1;
    if (own > 0) wearing_[0].set = first_of_car(wearing_[0].factor);
    report(input_.progress, 0.96);
    if (own < last) wearing_[last].set = first_of_car(wearing_[last].factor);
    report(input_.progress, 0.98);
    between(0, own);
    between(own, last);
    report(input_.progress, 1.0);
  }

  void between(std::size_t low, std::size_t high) {
    if (high < low + 2) return;
    const std::size_t middle = (low + high) / 2;
    if (same_kind(wearing_[low].set, wearing_[high].set)) {
      for (std::size_t i = low + 1; i < high; ++i) wearing_[i].set = wearing_[low].set;
      return;
    }
    wearing_[middle].set = first_of_car(wearing_[middle].factor);
    between(low, middle);
    between(middle, high);
  }

  std::optional<std::size_t> first_of_car(double factor) const {
    stage::Event event = event_;
    for (stage::TyreSet& set : event.sets)
      for (auto& by_wetness : set.kind.life)
        for (Length& life : by_wetness) life = life / factor;
    stage::Question question = question_;
    question.only_first = true;
    question.progress = nullptr;
    const auto plan = stage::plan(event, question);
    if (!plan) return std::nullopt;
    return plan->first.front().set;
  }

  // ---- what would change it, and how exact it is ----

  void tell_swing() {
    const char* more = plan_.swing_complete
                           ? ""
                           : " The event is long, so not every change was looked at: a lesser one "
                             "may do it too.";
    const auto say = [&](const char* id, const std::string& text) {
      caution(id, Level::note, "", filled("##", {text, more}), {&plan_words});
    };
    if (plan_.swing) {
      const stage::Swing& swing = *plan_.swing;
      const std::string then = fixed(100.0 * swing.wet_then, 0);
      const std::string now = fixed(100.0 * swing.wet_now, 0);
      say("swing", swing.set ? filled("What would change it: if the chance of a wet road on # were "
                                      "# % and not # %, fit # first.",
                                      {names_[swing.stage], then, now, set_name(*swing.set)})
                             : filled("If the chance of a wet road on # were # % and not # %, no "
                                      "plan would be left.",
                                      {names_[swing.stage], then, now}));
    } else if (plan_.first.size() > 1) {
      say("swing",
          "No change in the forecast of one stage was found that makes another kind of "
          "tyre go on first.");
    }
    if (!plan_.air_swing) return;
    const stage::AirSwing& swing = *plan_.air_swing;
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
                              {by, set_name(*swing.set)}));
  }

  void tell_how_exact() {
    if (plan_.wear_levels != 0)
      caution("wear_rounded", Level::note, "",
              "The sets may wear out in so many ways that their wear was rounded up from stage to "
              "stage: they last at least as long as said, and a slightly better plan may exist.",
              {&plan_words});
    if (!plan_.every_path)
      caution("paths_drawn", Level::note, "",
              "The event is long: shares, wear and hindsight are over 1000 courses of weather, "
              "drawn alike each time. The choice itself does not rest on them.",
              {&plan_words});
    if (question_.attitude == stage::Attitude::steady)
      caution("time_step", Level::note, "",
              filled("The steady choice counts time in steps of #, which can only make the worst "
                     "fifth look worse.",
                     {seconds_text(plan_.time_step)}),
              {&stage::tail_source()});
  }

  stage::Event event_;
  stage::Question question_;
  std::vector<std::string> names_;  // of the stages
  std::string without_weather_;     // those for which none was given
  std::vector<std::optional<Length>> water_;
  std::vector<std::string> marks_;  // of the entries of sets; empty where there is none
  std::vector<std::size_t> rows_;   // of the form, by entry of sets
  std::vector<Car> cars_;
  std::vector<Wearing> wearing_;  // slowest first
  stage::Plan plan_;
  std::size_t sets_ = 0;
  std::size_t first_ = 0;
  std::size_t first_leg_ = 0;  // its last stage
  Sources sources_;
};

}  // namespace

Answer stage_tyres(const Input& input) { return StageTyres(input).run(); }

Sources stage_tyres_sources() {
  Sources all = {&plan_words,
                 &own_notes,
                 &deep_water_advice(),
                 &wear_law,
                 &officials,
                 &stage::persistence_source(),
                 &stage::tail_source(),
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
