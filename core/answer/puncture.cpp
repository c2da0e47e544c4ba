#include "core/answer/puncture.hpp"

#include <algorithm>

#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/patch/geometry.hpp"
#include "core/patch/rating.hpp"
#include "core/standard/instrument.hpp"

namespace treadwater::answer {
namespace {

constexpr GaugePressure usual_pressure = kilopascals(230.0);
constexpr Temperature mild = celsius(15.0);
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
    set_ = quantity<GaugePressure>("set").value_or(usual_pressure);
    first_ = quantity<GaugePressure>("first");
    second_ = quantity<GaugePressure>("second");
    apart_ = quantity<Duration>("apart");
    hole_ = quantity<Length>("hole");
    if (const auto id = choice("where")) where_ = *id;
    tread_ = quantity<Length>("tread");
    load_ = quantity<Mass>("load");
    way_ = quantity<Length>("way");
    if (const auto id = choice("help")) help_ = *id;
    last_ = second_ ? second_ : first_;
    stop_below_ = air::do_not_drive_below(set_);
  }

  // ---- what it holds now ----

  // A tyre made to run flat is judged by its way home alone.
  void judge_pressure() {
    const bool runs_flat = help_ == "self_supporting" || help_ == "lubricated";
    if (last_ && *last_ <= stop_below_ && !runs_flat) {
      const std::string why =
          filled("At # it must not be driven on: the sidewall is destroyed within a short way.",
                 {write(*last_, units_)});
      caution("too_soft", Level::unfit, "it is too soft to drive on", why,
              {&air::do_not_drive_source()});
      fixed_limit("too_soft", "The soft tyre as it is", kilometres_per_hour(0.0), why,
                  {&air::do_not_drive_source()});
    }
    if (first_ && second_ && *second_ > *first_ + standard::pressure_gauge_error)
      caution("readings_rise", Level::care, "the second reading is the higher one",
              filled("It read # first and # later: it was inflated or it warmed up between them, "
                     "and that hides a leak. Let it stand and read it twice again.",
                     {write(*first_, units_), write(*second_, units_)}),
              {&air::natural_loss_source()});
    else if (!leak_ && !(first_ && second_ && apart_))
      caution("not_judged", Level::care, "a leak cannot be told from what was given",
              "Two readings with the time between them are needed, or the width of the hole: read "
              "the pressure now, and again in twenty minutes.");
  }

  // ---- how long ----

  // From two readings and a clock, else through a hole of known size.
  void find_leak() {
    if (first_ && second_ && apart_) {
      const air::Conditions same{mild};
      const air::GaugeReading before{*first_, same}, after{*second_, same};
      const auto judged = air::judge_loss(air::AirHolder::tubeless, before, after, *apart_);
      leak_ = air::leak_between(before, after, *apart_);
      now_ = *second_;
      sources_ = {&air::leak_down_source(), &air::orifice_source()};
      if (after.pressure > before.pressure + standard::pressure_gauge_error)
        return;  // said by judge_pressure
      if (judged.kind == air::LossKind::natural)
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
    if (now_ > stop_below_ && left)
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
    const auto driven_flat = yes_no("driven_flat");
    const auto damaged = yes_no("damage");
    const auto sealed = yes_no("sealant");
    std::string code = plain_spaces(text("date_code"));
    if (code.empty() && size_) code = size_->date_code;
    std::optional<double> age;
    if (!code.empty()) {
      const auto read = read_date_code(code, today_);
      if (read)
        age = read->least_years;
      else
        problem("date_code", read.error().code, read.error().text);
    }
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
    damage.driven_flat = driven_flat.value_or(false);
    damage.cords_or_cracks = damaged.value_or(false);
    damage.sealant_used = sealed.value_or(false);
    damage.self_supporting = size_->run_flat || help_ == "self_supporting";
    damage.earlier_repairs = static_cast<int>(repairs.value_or(0.0));
    damage.between_outer_grooves = grooves;
    damage.age_years = age;
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
    const auto rated = size_ ? patch::greatest_load(*size_) : std::optional<patch::GreatestLoad>();
    const double share = load_ && rated ? *load_ / rated->mass : 0.65;
    const air::GetHome home = air::get_home(way, share);
    Sources sources{home.source};
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
    if (answer_.hold_to && answer_.hold_to->speed > kilometres_per_hour(0.0))
      speak(filled("Soft tyre, #: hold to #, to the nearest help.",
                   {size_->canonical, spoken_speed(answer_.hold_to->speed)}));
    else if (answer_.hold_to)
      speak(filled("Soft tyre, #: stopped, needs help.", {size_->canonical}));
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
  Sources all = {&air::leak_down_source(),       &air::orifice_source(),
                 &air::discharge_source(),       &air::cavity_source(),
                 &air::cavity_fill_source(),     &air::do_not_drive_source(),
                 &air::natural_loss_source(),    &air::repair_source(),
                 &air::american_repair_source(), &air::run_flat_load_source(),

                 &air::puncture_rate_source(),   &roadside};
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
