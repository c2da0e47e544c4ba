#include "core/answer/stage_tyres.hpp"

#include <algorithm>
#include <cmath>

#include "core/answer/teller.hpp"
#include "core/stage/plan.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::answer {
namespace {

// Where nothing else is known of the tyres that go into standing water.
constexpr GaugePressure soft_pressure = kilopascals(180.0);

// Stages times sets, up to which these are worked out.
constexpr std::size_t most_to_search = 40;
constexpr std::size_t most_for_steady = 80;

constexpr Source plan_words{"stage-plan", "Dynamic programming with recourse at each halt",
                            "Treadwater's own model; CVaR after Rockafellar and Uryasev, 2002",
                            "2026", Standing::common_practice};
constexpr Source officials{"stage-officials", "Whether a stage runs, and at what speed",
                           "the event's officials and rules decide", "", Standing::common_practice};

class StageTyres : Teller {
 public:
  explicit StageTyres(const Input& input) : Teller(stage_tyres_sheet(), input) {}

  Answer run() {
    read_stages();
    read_sets();
    read_rules();
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
      if (life) scale_life(set.kind, *life);
      event_.sets.push_back(std::move(set));
    }
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
    event_.rules.no_studs = yes_no("no_studs").value_or(false);
    event_.rules.road_sections = yes_no("road_sections").value_or(false);
  }

  void solve() {
    // What would change the choice is found by solving many times over: not for a long event.
    question_.look_for_swing = event_.stages.size() * event_.sets.size() <= most_to_search;
    if (question_.attitude == stage::Attitude::steady &&
        event_.stages.size() * event_.sets.size() > most_for_steady) {
      question_.attitude = stage::Attitude::average;
      caution("steady_too_long", Level::care, "the steady choice was not worked out",
              "For so long an event the steady choice takes too long here: this is the one that is "
              "fastest on average. Plan it in two halves for the steady one.");
    }
    const auto plan = stage::plan(event_, question_);
    if (!plan) {
      for (const stage::Problem& p : plan.error()) say_problem(p);
      return;
    }
    tell(*plan);
    tell_halts(*plan);
    tell_wear(*plan);
    judge_cold(*plan);
    judge_water(*plan);
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

  void judge_cold(const stage::Plan& plan) {
    const stage::TyreKind& kind = event_.sets[plan.sets[plan.first.front().set].entry].kind;
    const stage::Stage& s = event_.stages.front();
    if (s.air && *s.air < kind.coolest)
      caution(
          "cold_tyres", Level::care, "it is cold for these tyres",
          "It is colder than this kind of tyre likes: expect little grip on the first kilometres.",
          {kind.window_known});
  }

  // The speed at which the set that is likely to be on floats in what was reported: as a slick, a
  // cut slick or a moulded tyre, at the tread it has now.
  void judge_water(const stage::Plan& plan) {
    const standard::RoadSurface* road = standard::find_road_surface("asphalt");
    for (std::size_t i = 0; i < likely_.size(); ++i) {
      if (!water_[i] || !(*water_[i] > metres(0.0)) || road == nullptr) continue;
      const stage::TyreSet& set = event_.sets[plan.sets[likely_[i]].entry];
      const double credit = !(set.kind.new_tread > metres(0.0)) ? 0.0
                            : set.kind.id == "cut-slick"        ? 0.5
                                                                : 1.0;
      const Length tread =
          set.kind.new_tread - (set.kind.new_tread - set.kind.least_tread) * set.worn;
      const auto onset = water::aquaplaning_onset(
          {soft_pressure, tread, credit, std::nullopt, *water_[i], road->texture});
      if (!onset) continue;
      const Speed held = floor_to_five(onset->low * water::hold_to_share, units_);
      caution("water_on_stage", Level::care, filled("water stands on #", {names_[i]}),
              filled("#: in # the # floats from about # on, sooner as it wears; hold to # there.",
                     {names_[i], write_water(*water_[i], units_), set_name(plan, likely_[i]),
                      speed_text(onset->low),
                      held > kilometres_per_hour(0.0) ? speed_text(held) : "a walk"}),
              {&water::estimate_source(), &water::film_source(), &water::clearing_source()});
    }
  }

  void tell_swing(const stage::Plan& plan) {
    if (!question_.look_for_swing)
      caution("swing_not_sought", Level::note, "",
              "What would change the choice was not sought: the event is too long for that here.");
    if (!plan.swing) return;
    const stage::Swing& swing = *plan.swing;
    caution(
        "swing", Level::note, "",
        swing.set
            ? filled("What would change it: if the chance of a wet road on # were # % and not # %, "
                     "fit "
                     "# first.",
                     {names_[swing.stage], fixed(100.0 * swing.wet_then, 0),
                      fixed(100.0 * swing.wet_now, 0), set_name(plan, *swing.set)})
            : filled(
                  "If the chance of a wet road on # were # % and not # %, no plan would be left.",
                  {names_[swing.stage], fixed(100.0 * swing.wet_then, 0),
                   fixed(100.0 * swing.wet_now, 0)}),
        {&plan_words});
  }

  stage::Event event_;
  stage::Question question_;
  std::vector<std::string> names_;
  std::vector<std::optional<Length>> water_;
  std::vector<std::size_t> likely_;  // the set likely to be on, stage by stage
  Sources sources_;
};

}  // namespace

Answer stage_tyres(const Input& input) { return StageTyres(input).run(); }

Sources stage_tyres_sources() {
  Sources all = {
      &plan_words,           &stage::persistence_source(), &officials, &water::estimate_source(),
      &water::film_source(), &water::clearing_source()};
  for (std::size_t i = 0; i < stage::tyre_kind_count; ++i) {
    const stage::TyreKind kind = stage::tyre_kind(i);
    for (const Source* source :
         {kind.pace_known, kind.life_known, kind.land_known, kind.window_known})
      if (source != nullptr) add_once(all, *source);
  }
  return all;
}

}  // namespace treadwater::answer
