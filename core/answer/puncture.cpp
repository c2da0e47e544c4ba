#include "core/answer/puncture.hpp"

#include <algorithm>

#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/patch/geometry.hpp"
#include "core/patch/rating.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/tread_law.hpp"

namespace treadwater::answer {
namespace {

constexpr GaugePressure usual_pressure = kilopascals(230.0);
constexpr Temperature mild = celsius(15.0);
// Two readings nearer to each other in time show no leak that matters, and none that does not.
constexpr Duration long_enough = minutes(20.0);
// Less is left than it takes to find a place and stop: ours.
constexpr Duration too_short = minutes(5.0);
constexpr Source roadside{"roadside-stop", "Where to stop and how to change a wheel",
                          "car handbooks and road codes, in our words", "",
                          Standing::common_practice};

class Puncture : Teller {
 public:
  explicit Puncture(const Input& input) : Teller(puncture_sheet(), input) {}

  Answer run() {
    read_form();
    find_leak();
    judge_pressure();
    if (size_) judge_load();
    judge_tyre();
    if (leak_) tell_time();
    judge_repair();
    judge_way();
    tell_odds();
    say_at_the_roadside();
    if (answer_.ok()) finish();
    return std::move(answer_);
  }

 private:
  void read_form() {
    size_ = sidewall_text("size");
    set_ =
        std::max(quantity<GaugePressure>("set").value_or(usual_pressure), patch::least_pressure());
    first_ = quantity<GaugePressure>("first");
    second_ = quantity<GaugePressure>("second");
    apart_ = quantity<Duration>("apart");
    hole_ = quantity<Length>("hole");
    if (const auto id = choice("where")) where_ = *id;
    tread_ = quantity<Length>("tread");
    load_ = quantity<Mass>("load");
    way_ = quantity<Length>("way");
    if (const auto id = choice("help")) help_ = *id;
    driven_flat_ = yes_no("driven_flat").value_or(false);
    damaged_ = yes_no("damage").value_or(false);
    sealed_ = yes_no("sealant").value_or(false);
    // What is sealed is driven as such, where there is nothing better.
    if (sealed_ && (help_.empty() || help_ == "plain_flat")) help_ = "sealant_kit";
    runs_flat_ = help_ == "self_supporting" || help_ == "lubricated";
    age_ = tyre_age("date_code", size_);
    last_ = second_ ? second_ : first_;
    stop_below_ = air::do_not_drive_below(set_);
  }

  // ---- what it holds now ----

  // It is not to be driven on as it is.
  void refuse(const char* id, std::string_view reason, std::string_view why, SomeSources sources) {
    caution(id, Level::unfit, reason, why, sources);
    fixed_limit(id, "The soft tyre as it is", kilometres_per_hour(0.0), why, sources);
  }

  // Nor by any help that drives on it.
  void stop(const char* id, std::string_view reason, std::string_view why, SomeSources sources) {
    stopped_ = true;
    refuse(id, reason, why, sources);
  }

  void judge_pressure() {
    if (last_ && *last_ <= stop_below_ && !runs_flat_) {
      refuse("too_soft", "it is too soft to drive on",
             filled("At # it must not be driven on: the sidewall is destroyed within a short way.",
                    {write(*last_, units_)}),
             {&air::do_not_drive_source()});
    } else if (last_ && *last_ < set_ - standard::pressure_gauge_error) {
      caution("softer_than_set", Level::care, "it is softer than it should be",
              filled("It has #, and should have #. Inflate it before you drive on.",
                     {write(*last_, units_), write_at_least(set_, units_)}));
    }
    if (first_ && second_ && *second_ > *first_ + standard::pressure_gauge_error)
      caution("readings_rise", Level::care, "the second reading is the higher one",
              filled("It read # first and # later: it was inflated or it warmed up between them, "
                     "and that hides a leak. Let it stand and read it twice again.",
                     {write(*first_, units_), write(*second_, units_)}),
              {&air::natural_loss_source()});
    else if (!leak_ && !read_twice())
      caution("not_judged", Level::care, "a leak cannot be told from what was given",
              "Two readings with the time between them are needed, or the width of the hole: read "
              "the pressure now, and again in twenty minutes.");
  }

  // The load is carried by its air, unless it is made to be driven without.
  void judge_load() {
    const auto rated = patch::greatest_load(*size_);
    if (!load_ || !rated) return;
    if (*load_ > rated->mass)
      return stop("overload", "it is overloaded",
                  filled("Overloaded: # on a tyre rated for #. No pressure makes up for that.",
                         {write_at_least(*load_, units_), write_at_most(rated->mass, units_)}),
                  {&standard::load_index_source()});
    const auto laws = patch::laws_of(*size_);
    if (!last_ || !laws || runs_flat_) return;
    const patch::LoadLaw law = laws->second.value_or(laws->law);
    const GaugePressure least =
        patch::pressure_needed(law, rated->mass, *load_) + standard::pressure_gauge_error;
    if (*last_ < least)
      stop("pressure_low", "the pressure is too low for the load",
           filled("Pressure too low for the load: #, and # needs at least # cold. Inflate to the "
                  "vehicle's placard before driving.",
                  {write(*last_, units_), write(*load_, units_), write_at_least(least, units_)}),
           {&patch::least_pressure_source()});
  }

  bool outside_tread() const {
    return where_ == "shoulder" || where_ == "sidewall" || where_ == "bead";
  }

  // What makes it unfit however well it holds its air.
  void judge_tyre() {
    if (damaged_)
      stop("damage", "cord, a bulge or cracks can be seen",
           "Cord in sight, a bulge or cracks: it may burst at any moment. Do not drive on it.",
           {&air::repair_source()});
    if (driven_flat_ && !runs_flat_)
      stop("driven_flat", "it was driven flat",
           "It was driven flat. That crushes the inside of the sidewall, where nobody sees it.",
           {&air::repair_source()});
    if (runs_flat_ && outside_tread())
      stop("hole_in_its_support", "the hole is in what carries it",
           "Without air a run-flat tyre stands on its sidewalls: with a hole there it is not to be "
           "driven on.",
           {&air::repair_source()});
    if (hole_ && *hole_ > air::repairable_hole && !runs_flat_)
      stop("hole", "the hole is too wide", "The hole is wider than 6 mm.", {&air::repair_source()});
    else if (!leak_ && (hole_ || outside_tread()))
      caution("hole_holds", Level::care, "there is a hole in it",
              "A hole that holds now may open at any time, when what sits in it flies out. Drive "
              "gently, and to a fitter only.");
    if (sealed_)
      caution("sealant_inside", Level::care, "sealant is inside",
              "Sealant is inside. Tell the fitter; the maker may refuse a repair.",
              {&air::repair_source()});
    judge_tread();
    if (age_) caution(caution_of_age(age_->least_years));
  }

  void judge_tread() {
    if (!tread_) return;
    const standard::TreadLaw& law = *standard::find_tread_law("elsewhere");
    if (*tread_ < law.least)
      stop("tread_law", "the tread is under the legal minimum",
           "The tread is under 1.6 mm: the tyre is worn out.", {&law.source});
    else
      caution(caution_of_low_tread(*tread_, units_));
  }

  // ---- how long ----

  bool read_twice() const { return first_ && second_ && apart_; }

  // From two readings and a clock, else through a hole of known size.
  void find_leak() {
    if (read_twice()) {
      const air::Conditions same{mild};
      const air::GaugeReading before{*first_, same}, after{*second_, same};
      const auto judged = air::judge_loss(air::AirHolder::tubeless, before, after, *apart_);
      leak_ = air::leak_between(before, after, *apart_);
      now_ = *second_;
      sources_ = {&air::leak_down_source(), &air::orifice_source()};
      if (after.pressure > before.pressure + standard::pressure_gauge_error)
        return;  // said by judge_pressure
      if (judged.kind == air::LossKind::natural && *apart_ >= long_enough)
        caution(
            "natural_loss", Level::note, "",
            "No more is lost than goes through the rubber of a sound tyre. Set the pressure and "
            "read it again in a week.",
            {&air::natural_loss_source()});
      else if (!leak_)
        caution(
            "leak_not_sure", Level::care, "it may be leaking",
            "The two readings differ by no more than a gauge may be wrong. Wait longer and read "
            "again.",
            {&air::natural_loss_source()});
      return;
    }
    const auto size = size_ ? patch::nominal_size(*size_) : std::optional<patch::TyreSize>();
    if (!hole_ || !size) return;
    leak_ = air::leak_through(*hole_, air::cavity_volume(*size), mild, air::any_hole);
    now_ = second_ ? *second_ : first_ ? *first_ : set_;
    sources_ = {&air::leak_down_source(), &air::orifice_source(), &air::discharge_source(),
                &air::cavity_source(), &air::cavity_fill_source()};
    caution(
        "open_hole", Level::note, "",
        "Reckoned for an open hole of that width. With the nail still in it the air may last far "
        "longer, or go at once when it flies out.",
        {&air::discharge_source()});
  }

  static std::string duration_text(Duration time) {
    const double seconds = in_seconds(time);
    if (seconds < 90.0) return filled("# s", {significant(seconds, 2)});
    if (seconds < 5400.0) return filled("# min", {significant(seconds / 60.0, 2)});
    if (seconds < 2.0 * 86400.0) return filled("# h", {significant(seconds / 3600.0, 2)});
    return filled("# days", {significant(seconds / 86400.0, 2)});
  }

  void time_figure(const char* id, const char* label, GaugePressure to) {
    const auto time = air::time_between(*leak_, now_, to);
    if (!time) return;
    const std::string at = write(to, units_);
    const bool there = !(time->latest > seconds(0.0));
    figure(id, filled(label, {at}), in_seconds(time->soonest), "s",
           there ? "now"
                 : filled("# to #", {duration_text(time->soonest), duration_text(time->latest)}),
           sources_, "", in_seconds(time->soonest), in_seconds(time->latest));
  }

  void tell_time() {
    if (const air::WarningRule* rule = air::find_warning_rule("un"))
      time_figure("time_to_warning", "Until a warning lamp is due, #",
                  air::warning_pressure(*rule, set_));
    sources_.push_back(&air::do_not_drive_source());
    time_figure("time_to_stop", "Until it must not be driven, #", stop_below_);
    time_figure("time_to_flat", "Until it is all but flat, #", kilopascals(10.0));
    const auto left = air::time_between(*leak_, now_, stop_below_);
    if (now_ > stop_below_ && left && read_twice() && !runs_flat_ && left->soonest < too_short)
      stop("leaking_fast", "it is losing air too fast to drive on",
           filled("It is too soft to drive on within #, less under load. Stop where it is safe.",
                  {duration_text(left->soonest)}),
           sources_);
    else if (now_ > stop_below_ && left)
      caution("leaking", Level::care, "it is losing air",
              filled("It can be driven on for # at most, less under load. Inflate it and watch it, "
                     "and do not set off on a longer way.",
                     {duration_text(left->soonest)}),
              sources_);
    draw_leak();
  }

  void draw_leak() {
    const auto curve = air::leak_curve(*leak_, now_);
    if (!curve) return;
    const double last = in_seconds(curve->back().time.latest);
    const bool hours = last > 3.0 * 3600.0;
    const bool whole_days = last > 4.0 * 86400.0;
    const double unit = whole_days ? 86400.0 : hours ? 3600.0 : 60.0;
    const auto shown = [&](GaugePressure p) {
      return units_ == UnitSystem::metric ? in_bars(p) : in_psi(p);
    };
    Chart chart;
    chart.id = "leak";
    chart.title = "The air that is left";
    chart.text = filled("From # down, between the soonest and the latest.", {write(now_, units_)});
    chart.x = {"Time from now", whole_days ? "days" : hours ? "h" : "min"};
    chart.y = {"Gauge pressure", units_ == UnitSystem::metric ? "bar" : "psi"};
    Series soonest{"reference", "Soonest", {}, {}, {}, {}};
    Series latest{"subject", "Latest", {}, {}, {}, {}};
    chart.table.columns = {"Pressure", "Soonest", "Latest"};
    int row = 0;
    for (const air::LeakPoint& point : *curve) {
      soonest.x.push_back(in_seconds(point.time.soonest) / unit);
      soonest.y.push_back(shown(point.pressure));
      latest.x.push_back(in_seconds(point.time.latest) / unit);
      latest.y.push_back(shown(point.pressure));
      if (row++ % 4 == 0)
        chart.table.rows.push_back({write(point.pressure, units_),
                                    duration_text(point.time.soonest),
                                    duration_text(point.time.latest)});
    }
    Series stop{"reference",
                "Do not drive under",
                {0.0, latest.x.back()},
                {shown(stop_below_), shown(stop_below_)},
                {},
                {}};
    chart.marks = {{0.0, shown(now_), "Now"}};
    chart.series = {std::move(latest), std::move(soonest), std::move(stop)};
    answer_.charts.push_back(std::move(chart));
  }

  // ---- may it be repaired ----

  void judge_repair() {
    const auto from_centre = quantity<Length>("from_centre");
    const auto repairs = number("repairs");
    const auto grooves = yes_no("between_grooves");
    const auto section = size_ ? size_->section_width : std::optional<Length>();
    if (where_.empty() || where_ == "unknown" || !section) return;
    const bool in_tread = where_ == "tread";
    if (in_tread && (!from_centre || !hole_ || !tread_)) {
      caution(
          "repair_not_judged", Level::note, "",
          "For whether it may be repaired, say how far the hole is from the middle of the tread, "
          "how wide it is, and the tread depth.");
      return;
    }
    air::Damage damage;
    damage.place = in_tread               ? air::Place::tread
                   : where_ == "shoulder" ? air::Place::shoulder
                   : where_ == "bead"     ? air::Place::bead
                                          : air::Place::sidewall;
    damage.from_centre = from_centre.value_or(metres(0.0));
    damage.hole = hole_.value_or(metres(0.0));
    damage.section_width = *section;
    damage.tread = tread_.value_or(millimetres(1.6));
    damage.driven_flat = driven_flat_;
    damage.cords_or_cracks = damaged_;
    damage.sealant_used = sealed_;
    damage.self_supporting = size_->run_flat || help_ == "self_supporting";
    damage.earlier_repairs = static_cast<int>(repairs.value_or(0.0));
    damage.between_outer_grooves = grooves;
    if (age_) damage.age_years = age_->least_years;
    damage.symbol = patch::speed_symbol(*size_);
    tell_repair(air::repair(damage));
    if (in_tread) draw_repair(damage);
  }

  static const char* verdict_words(air::Verdict verdict) {
    return verdict == air::Verdict::may   ? "may be, if a fitter finds the inside sound"
           : verdict == air::Verdict::ask ? "a fitter must decide"
                                          : "no";
  }

  void tell_repair(const air::Repair& found) {
    Table table{"repair", "May it be repaired?", "", {"Reason", "Says"}, {}};
    table.text = filled("By the British standard: #. By the US rule: #.",
                        {verdict_words(found.british), verdict_words(found.american)});
    Sources sources{&air::repair_source(), &air::american_repair_source()};
    for (const air::Reason* reason : found.reasons) {
      table.rows.push_back(
          {std::string(reason->text), reason->verdict == air::Verdict::no    ? "no repair"
                                      : reason->verdict == air::Verdict::ask ? "ask"
                                                                             : "how"});
      add_once(sources, *reason->source);
    }
    const bool never = found.british == air::Verdict::no || found.american == air::Verdict::no;
    caution(
        never ? "no_repair" : "repair", never ? Level::care : Level::note,
        never ? "it is not to be repaired" : "",
        never ? filled("Not to be repaired: #", {first_no(found)})
              : std::string("It may be repaired, from within, by a fitter who has looked inside."),
        sources);
    answer_.tables.push_back(std::move(table));
  }

  static std::string_view first_no(const air::Repair& found) {
    for (const air::Reason* reason : found.reasons)
      if (reason->verdict == air::Verdict::no) return reason->text;
    return "a fitter decides.";
  }

  // The section seen from outside: its whole width, the band that may be repaired, the hole.
  void draw_repair(const air::Damage& damage) {
    const double width = in_millimetres(damage.section_width);
    const double band = in_millimetres(air::repairable_width(damage.section_width));
    const double hole = std::max(2.0, in_millimetres(damage.hole));
    const double at =
        std::min(width - hole, width / 2.0 + in_millimetres(damage.from_centre) - hole / 2.0);
    constexpr double high = 60.0;
    Drawing drawing;
    drawing.id = "repair_band";
    drawing.title = "Where it may be repaired, to scale";
    drawing.text =
        filled("The middle # of a section # wide, with the hole # from its middle.",
               {write_size(millimetres(band), units_), write_size(damage.section_width, units_),
                write_size(damage.from_centre, units_)});
    drawing.width = width;
    drawing.height = high;
    drawing.boxes = {
        {0.0, 0.0, width, high, 12.0, "reference", "Whole section"},
        {(width - band) / 2.0, 0.0, band, high, 0.0, "subject", "Band that may be repaired"},
        {at, high / 2.0 - hole / 2.0, hole, hole, hole / 2.0, "detail", "Hole"}};
    answer_.drawings.push_back(std::move(drawing));
  }

  // ---- how far ----

  void judge_way() {
    if (help_.empty()) return;
    if (help_ == "full_spare") {
      caution(
          "full_spare", Level::note, "",
          "On a sound full-size spare of the same size and pressure the car is as before. Check "
          "its pressure and its age, and tighten the bolts again after 50 km.",
          {&roadside});
      return;
    }
    constexpr std::string_view ids[] = {"self_supporting", "lubricated", "temporary_spare",
                                        "sealant_kit", "plain_flat"};
    int at = 0;
    while (ids[at] != help_) ++at;
    const auto way = static_cast<air::Way>(at);
    // A tyre that still holds air is driven on its air, not yet as a flat one.
    if (way == air::Way::plain_flat && !(last_ && *last_ <= stop_below_)) return;
    // Nor is what was refused driven on without air, or sealed.
    if (stopped_ && way != air::Way::temporary_spare) return;
    const auto rated = size_ ? patch::greatest_load(*size_) : std::optional<patch::GreatestLoad>();
    const double share = load_ && rated ? *load_ / rated->mass : 0.65;
    const air::GetHome home = air::get_home(way, share);
    Sources sources{home.source};
    if (way == air::Way::sealant_kit && outside_tread())
      return stop("kit_no_use", "a sealant kit does not close that hole", home.words, sources);
    if (way == air::Way::self_supporting) sources.push_back(&air::run_flat_load_source());
    fixed_limit("get_home", "On what you have", home.speed, home.words, sources);
    if (home.distance)
      figure("get_home_distance", "How far on it at most", in_kilometres(*home.distance), "km",
             distance_text(*home.distance), sources, home.words);
    if (home.pressure)
      figure("get_home_pressure", "At a pressure of", in_kilopascals(*home.pressure), "kPa",
             write(*home.pressure, units_), sources);
    if (home.claimed)
      figure("claimed_distance", "The furthest anybody claims", in_kilometres(*home.claimed), "km",
             distance_text(*home.claimed), sources, "Not to be relied on.");
    if (home.speed <= kilometres_per_hour(0.0))
      caution("stop_now", Level::unfit, "nothing here carries the car on",
              "Stop where it is safe. On a flat tyre the tyre and then the wheel are lost within a "
              "short way, and the car may be.",
              sources);
    else if (way_ && home.distance && *way_ > *home.distance)
      caution("too_far", Level::unfit, "the way is longer than it will carry you",
              filled("# to go, and it is good for # at most: do not set off for there.",
                     {distance_text(*way_), distance_text(*home.distance)}),
              sources);
    else
      caution("get_home", Level::care, "it only gets you to help",
              filled("Hold to # and go no further than to a fitter. #",
                     {speed_text(home.speed), home.words}),
              sources);
  }

  std::string distance_text(Length l) const {
    return units_ == UnitSystem::metric
               ? filled("# km", {significant(in_kilometres(l), 2)})
               : filled("# miles", {significant(in_metres(l) / exact::metres_per_mile, 2)});
  }

  // ---- the odds ----

  void tell_odds() {
    const auto spares = number("spares");
    const auto one_in = number("one_in");
    const auto a_year = quantity<Length>("a_year");
    if (!way_) return;
    air::PunctureRate rate;
    if (one_in) rate.one_in = months(*one_in);
    if (a_year) rate.a_year = *a_year;
    const double expected = air::expected_punctures(rate, *way_);
    const auto percent = [](double chance) {
      return chance < 0.0005 ? std::string("under 0.1 %")
                             : filled("# %", {significant(100.0 * chance, 2)});
    };
    const double any = air::chance_of_more_than(0, expected);
    figure("chance_of_one", "Chance of another on that way", any, "", percent(any),
           {&air::puncture_rate_source()},
           "Good roads. Stages are worse by a factor nobody has published.");
    if (!spares) return;
    const double stranded = air::chance_of_more_than(static_cast<int>(*spares), expected);
    figure("chance_stranded", filled("Chance of more than # on that way", {fixed(*spares, 0)}),
           stranded, "", percent(stranded), {&air::puncture_rate_source()});
  }

  void say_at_the_roadside() {
    caution("roadside", Level::note, "",
            "Stop well off the road, on firm level ground, people out and away from the traffic. "
            "Handbrake on, and jack only where the handbook says. Leave a nail in until it can be "
            "mended. Never let air out of a hot tyre, and never get under the car.",
            {&roadside});
  }

  void finish() {
    hold_to();
    conclude("No leak was found in these readings.", "Only to help: #.", "Stop: #.");
    if (answer_.verdict->level == Level::unfit)
      speak(filled("Soft tyre, #: stopped, needs help.", {size_->canonical}));
    else if (answer_.hold_to)
      speak(filled("Soft tyre, #: hold to #, to the nearest help.",
                   {size_->canonical, spoken_speed(answer_.hold_to->speed)}));
  }

  std::optional<sidewall::Reading> size_;
  GaugePressure set_ = usual_pressure;
  std::optional<GaugePressure> first_;
  std::optional<GaugePressure> second_;
  std::optional<GaugePressure> last_;  // the latest of them
  std::optional<Duration> apart_;
  std::optional<Length> hole_;
  std::string_view where_;
  std::string_view help_;
  bool driven_flat_ = false;
  bool damaged_ = false;
  bool sealed_ = false;
  bool runs_flat_ = false;  // made to, and judged by its way home alone
  bool stopped_ = false;    // not to be driven on
  std::optional<TyreAge> age_;
  std::optional<Length> tread_;
  std::optional<Mass> load_;
  std::optional<Length> way_;
  std::optional<air::Leak> leak_;
  GaugePressure now_;
  GaugePressure stop_below_;
  Sources sources_;
};

}  // namespace

Answer puncture(const Input& input) { return Puncture(input).run(); }

Sources puncture_sources() {
  Sources all = {&air::leak_down_source(),
                 &air::orifice_source(),
                 &air::discharge_source(),
                 &air::cavity_source(),
                 &air::cavity_fill_source(),
                 &air::do_not_drive_source(),
                 &air::natural_loss_source(),
                 &air::repair_source(),
                 &air::american_repair_source(),
                 &air::run_flat_load_source(),
                 &air::puncture_rate_source(),
                 &roadside,
                 &tread_advice(),
                 &date_code_source(),
                 &age_advice_source(),
                 &standard::load_index_source(),
                 &patch::least_pressure_source(),
                 &standard::find_tread_law("elsewhere")->source};
  // Every reason against a repair, and every way home, brings its own.
  for (int way = 0; way <= static_cast<int>(air::Way::plain_flat); ++way)
    add_once(all, *air::get_home(static_cast<air::Way>(way), 0.0).source);
  air::Damage worst;
  worst.place = air::Place::sidewall;
  worst.driven_flat = worst.self_supporting = worst.sealant_used = worst.cords_or_cracks = true;
  worst.earlier_repairs = 1;
  worst.age_years = 20.0;
  worst.symbol = standard::SpeedSymbol::V;
  for (const air::Reason* reason : air::repair(worst).reasons) add_once(all, *reason->source);
  return all;
}

}  // namespace treadwater::answer
